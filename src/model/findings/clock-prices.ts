/** What a unit costs by the clock, for seeing whether use moved into dear hours. */

import { toCivilDate, toDayNumber, weekdayIndex } from '../calendar/civil.ts';
import type { CivilDate } from '../shapes/dates.ts';
import type { TariffVersion } from '../shapes/tariff.ts';
import { seriesPriceOn } from '../tariff/series-prices.ts';
import { inclVat, versionOn } from '../tariff/slot-price.ts';
import type { MeterDays, Prices } from './meter-days.ts';
import { bandPrices, bandsOf } from './slot-prices.ts';

const SATURDAY = 5;

/** Whether a unit's price hangs on how much was used as well as on the hour: then the hour alone gives none. */
export const isPricedByAmount = ({ bands }: TariffVersion): boolean =>
  bands.length > 1 && bands.some(({ blocks }) => blocks);

/**
 * Price of each reading [p/kWh, VAT included] by the tariff in force at its time; null where it is the same at all hours
 * or hangs on the amount. Where the prices are dated or changed in these days, each hour of the clock has its mean price
 * on weekdays and at weekends, so that a move of use is seen and no move of prices.
 */
export function clockPrices(days: MeterDays, own: Pick<Prices, 'versions' | 'zone'>): Float64Array | null {
  const known = pricesInForce(days, own);
  if (!known) return null;
  const { inForce, used } = known;
  const prices = used.length > 1 || used[0]!.series ? meanByClock(days, inForce) : inForce;
  return prices.every((price) => price === prices[0]) ? null : prices;
}

/**
 * How dear the hours of a load are beside all the units of these days: its mean price over theirs, each half-hour at the
 * price in force. `loadAt` [kWh] by place of the reading and of its day. 1 where the hours say nothing of the price.
 */
export function dearnessOf(
  days: MeterDays,
  own: Pick<Prices, 'versions' | 'zone'>,
  loadAt: (place: number, day: number) => number,
): number {
  const known = pricesInForce(days, own);
  if (!known) return 1;
  let [load, loadPence, all, allPence] = [0, 0, 0, 0];
  known.inForce.forEach((price, place) => {
    const kWh = loadAt(place, Math.floor(place / days.perDay));
    load += kWh;
    loadPence += kWh * price;
    all += days.kWh[place]!;
    allPence += days.kWh[place]! * price;
  });
  return load > 0 && allPence > 0 ? loadPence / load / (allPence / all) : 1;
}

/** Units [kWh] of the days from `from` to `to` (exclusive) that were read, at the prices in force [pence]; null where those hang on the amount. */
export function costOfDays(days: MeterDays, own: Pick<Prices, 'versions' | 'zone'>, from: CivilDate, to: CivilDate) {
  const known = pricesInForce(days, own);
  if (!known) return null;
  const [first, end] = [toDayNumber(from), toDayNumber(to)];
  const cost = { kWh: 0, pence: 0, days: 0 };
  days.dayNumber.forEach((number, day) => {
    if (number < first || number >= end) return;
    cost.days += 1;
    for (let i = day * days.perDay; i < (day + 1) * days.perDay; i++) {
      cost.kWh += days.kWh[i]!;
      cost.pence += days.kWh[i]! * known.inForce[i]!;
    }
  });
  return cost;
}

/** Price of each reading as it was in force [p/kWh]; null without a tariff, or where the price hangs on the amount. */
function pricesInForce(days: MeterDays, { versions = [], zone }: Pick<Prices, 'versions' | 'zone'>) {
  if (versions.length === 0 || days.count === 0) return null;
  const ofDay = Array.from(days.dayNumber, (day) => versionOn({ versions }, toCivilDate(day)));
  const used = [...new Set(ofDay)];
  if (used.some(isPricedByAmount)) return null;
  const { perDay, dayNumber } = days;
  const prices = new Float64Array(days.kWh.length);
  for (const version of used) {
    const bands = bandsOf(days, version, zone);
    const ofBand = bandPrices(version);
    for (let i = 0; i < prices.length; i++) {
      const day = Math.floor(i / perDay);
      if (ofDay[day] !== version) continue;
      const dated = version.series ? datedPrice(version, dayNumber[day]!, i % perDay, perDay) : Number.NaN;
      prices[i] = Number.isFinite(dated) ? dated : (ofBand[bands[i]!] ?? 0);
    }
  }
  return { inForce: prices, used };
}

/** Price of a half-hour, or of the two of an hour, of a day of 24 hours; NaN where the series has none. */
function datedPrice(version: TariffVersion, dayNumber: number, slot: number, perDay: number): number {
  const each = 48 / perDay;
  let sum = 0;
  for (let half = slot * each; half < (slot + 1) * each; half++) sum += seriesPriceOn(version.series!, dayNumber, half);
  return inclVat(version, sum / each);
}

function meanByClock({ dayNumber, perDay }: MeterDays, prices: Float64Array): Float64Array {
  const placeOf = (i: number) =>
    (weekdayIndex(dayNumber[Math.floor(i / perDay)]!) >= SATURDAY ? perDay : 0) + (i % perDay);
  const sums = new Float64Array(2 * perDay);
  const counts = new Float64Array(2 * perDay);
  for (let i = 0; i < prices.length; i++) {
    sums[placeOf(i)]! += prices[i]!;
    counts[placeOf(i)]! += 1;
  }
  return prices.map((_, i) => sums[placeOf(i)]! / counts[placeOf(i)]!);
}
