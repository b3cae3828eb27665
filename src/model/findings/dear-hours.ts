/** Use that moved into hours at which a unit costs more. */

import { toCivilDate } from '../calendar/civil.ts';
import { type Finding, sureOf, yearOfDays } from '../shapes/finding.ts';
import { meanOf } from '../units/sums.ts';
import { clockPrices } from './clock-prices.ts';
import { heatingDegrees, type MeterDays, type Prices } from './meter-days.ts';
import { findLineChange } from './two-lines.ts';

const LEAST_DAYS = 21;
/** A rise of the price paid below this share is chance and season. */
const LEAST_SHARE = 0.05;

/**
 * Day from which the pence paid over the plain mean price of the day's hours stand higher on days as cold as before,
 * since a longer run of the heating spreads its units over other hours. Units [kWh] are zero: no more
 * is used, it only costs more.
 */
export function findDearHours(days: MeterDays, own: Prices): Finding[] {
  const prices = clockPrices(days, own);
  if (!prices) return [];
  const used = Array.from({ length: days.count }, (_, day) => day).filter((day) => days.dayKWh[day]! > 0);
  // Pence a day over the plain mean price: unlike the price itself they follow a straight line with the cold.
  const premium = used.map((day) => premiumPence(days, prices, day));
  const weatherKnown = used.every((day) => Number.isFinite(days.outdoorC[day]));
  const below = used.map((day) => (weatherKnown ? heatingDegrees(days.outdoorC[day]!) : 0));
  const shift = findLineChange(below, premium, LEAST_DAYS);
  if (!shift) return [];
  const since = used.slice(shift.at);
  const plainPence = meanOf(since.map((day) => days.dayKWh[day]! * plainPrice(days, prices, day)));
  const share = shift.change / plainPence;
  if (share < LEAST_SHARE) return [];
  // Each day since by itself: what it cost beyond the line of the days before, in its own weather.
  const { at, before } = shift;
  const pence = since.reduce(
    (sum, _, i) => sum + premium[at + i]! - before.intercept - before.slope * below[at + i]!,
    0,
  );
  if (pence <= 0) return [];
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
      seen: { share, pencePerDay: pence / since.length },
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

/** Plain mean price of a day's hours, p/kWh. */
function plainPrice(days: MeterDays, prices: Float64Array, day: number): number {
  let sum = 0;
  for (let i = day * days.perDay; i < (day + 1) * days.perDay; i++) sum += prices[i]!;
  return sum / days.perDay;
}

/** What a day's units cost beyond the plain mean price, pence; below zero where they fall on cheap hours. */
function premiumPence(days: MeterDays, prices: Float64Array, day: number): number {
  let pence = 0;
  for (let i = day * days.perDay; i < (day + 1) * days.perDay; i++) pence += days.kWh[i]! * prices[i]!;
  return pence - plainPrice(days, prices, day) * days.dayKWh[day]!;
}
