/** Built-in prices as tariffs: what the tool reckons with until the household's own prices are typed. */

import { compareDates } from '../calendar/civil.ts';
import type { CivilDate } from '../shapes/dates.ts';
import type { DeliveredPrice, PriceQuarter, TwoRate } from '../shapes/reference.ts';
import type { PricedTariff } from '../shapes/tariff.ts';
import { tell } from '../shapes/told.ts';

/** The quarter that a date falls in; after the last one the newest, before the first one the oldest. */
export function quarterOn(
  quarters: readonly PriceQuarter[],
  fuel: PriceQuarter['fuel'],
  date: CivilDate,
): PriceQuarter {
  const ofFuel = quarters.filter((quarter) => quarter.fuel === fuel).sort((a, b) => (a.from < b.from ? -1 : 1));
  const found = ofFuel.findLast((quarter) => quarter.from <= date) ?? ofFuel[0];
  if (!found) throw new RangeError(`no built-in price for ${fuel}`);
  return found;
}

/** The price of a delivered fuel that began last by a date; of two that began together the shorter span, being the closer one. Undefined where none is built in. */
export function deliveredPriceOn(
  prices: readonly DeliveredPrice[],
  fuel: DeliveredPrice['fuel'],
  date: CivilDate,
): DeliveredPrice | undefined {
  const ofFuel = prices
    .filter((price) => price.fuel === fuel)
    .sort((a, b) => compareDates(a.from, b.from) || compareDates(b.to, a.to));
  return ofFuel.findLast((price) => price.from <= date) ?? ofFuel[0];
}

/** A published quarter as a flat tariff, VAT included; graded assumed, since it is nobody's own price. */
export function tariffFromQuarter(quarter: PriceQuarter): PricedTariff {
  return {
    id: `built-in-${quarter.fuel}-${quarter.from}`,
    name: tell('published-price', { months: { from: quarter.from, to: quarter.to } }),
    fuel: quarter.fuel,
    origin: quarter.source,
    grade: 'assumed',
    versions: [
      {
        from: quarter.from,
        standingPencePerDay: quarter.standingPencePerDay,
        vat: { rate: 0.05, included: true },
        bands: [{ name: tell('all-hours'), pencePerKWh: quarter.pencePerKWh, times: 'rest' }],
      },
    ],
    until: quarter.to,
  };
}

/** The illustrative day and night pair as a tariff, VAT included; graded assumed. */
export function twoRateTariff(twoRate: TwoRate): PricedTariff {
  return {
    id: `built-in-two-rate-${twoRate.from}`,
    name: tell('assumed-day-and-night', { months: { from: twoRate.from, to: twoRate.to } }),
    fuel: 'electricity',
    origin: twoRate.source,
    grade: 'assumed',
    versions: [
      {
        from: twoRate.from,
        standingPencePerDay: twoRate.standingPencePerDay,
        vat: { rate: 0.05, included: true },
        bands: [
          {
            name: tell('night'),
            pencePerKWh: twoRate.nightPence,
            times: [{ from: twoRate.nightFrom, to: twoRate.nightTo }],
          },
          { name: tell('day'), pencePerKWh: twoRate.dayPence, times: 'rest' },
        ],
      },
    ],
    until: twoRate.to,
  };
}
