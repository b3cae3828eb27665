/** Use that moved into hours at which a unit costs more. */
import { toCivilDate } from '../calendar/civil.ts';
import { type Finding, sureOf, yearOfDays } from './finding.ts';
import type { MeterDays, Prices } from './meter-days.ts';
import { bandPrices, bandsOf } from './slot-prices.ts';
import { findLineChange } from './two-lines.ts';

const LEAST_DAYS = 21;
const LEAST_F = 10;
const LEAST_T = 6;
/** A rise of the price paid below this share is chance and season. */
const LEAST_SHARE = 0.05;
const HEATING_BELOW_C = 15.5;

/**
 * Day from which the price paid a unit, over the plain mean price of the day's hours, stands higher on days as cold as
 * before, since a longer run of the heating spreads its units over other hours. Units [kWh] are zero: no more
 * is used, it only costs more.
 */
export function findDearHours(days: MeterDays, { version }: Prices): Finding[] {
  if (!version || new Set(version.bands.map(({ pencePerKWh }) => pencePerKWh)).size < 2) return [];
  const bands = bandsOf(days, version);
  const prices = bandPrices(version);
  const used = Array.from({ length: days.count }, (_, day) => day).filter((day) => days.dayKWh[day]! > 0);
  const plain = (day: number) => meanPrice(days, bands, prices, day, () => 1);
  const ratio = used.map((day) => meanPrice(days, bands, prices, day, (i) => days.kWh[i]!) / plain(day));
  const weatherKnown = used.every((day) => Number.isFinite(days.outdoorC[day]));
  const below = used.map((day) => (weatherKnown ? Math.max(0, HEATING_BELOW_C - days.outdoorC[day]!) : 0));
  const shift = findLineChange(below, ratio, LEAST_DAYS);
  if (!shift || shift.f < LEAST_F || shift.t < LEAST_T || shift.change / shift.was < LEAST_SHARE) return [];
  const since = used.slice(shift.at);
  const pence = since.reduce((sum, day) => sum + shift.change * plain(day) * days.dayKWh[day]!, 0);
  const first = days.dayNumber[since[0]!]!;
  const end = days.dayNumber[since.at(-1)!]! + 1;
  return [
    {
      code: 'dear-hours',
      meter: days.meter,
      from: toCivilDate(first),
      to: toCivilDate(end),
      sure: sureOf(0.6 + Math.min(0.3, shift.t / 60)),
      grade: weatherKnown ? 'estimated' : 'assumed',
      seen: { priceShareBefore: shift.was, priceShareAfter: shift.was + shift.change, share: shift.change / shift.was },
      kWh: 0,
      pence,
      kWhYear: 0,
      penceYear: yearOfDays(pence, end - first),
      ask: ['timer-changed', 'tariff-changed', 'water-times'],
      check: ['timer', 'meter-clock'],
      cautions: [],
    },
  ];
}

function meanPrice(
  days: MeterDays,
  bands: Int8Array,
  prices: readonly number[],
  day: number,
  weight: (i: number) => number,
): number {
  let total = 0;
  let sum = 0;
  for (let i = day * days.perDay; i < (day + 1) * days.perDay; i++) {
    const price = prices[bands[i]!];
    if (price === undefined) continue;
    total += weight(i);
    sum += weight(i) * price;
  }
  return sum / total;
}
