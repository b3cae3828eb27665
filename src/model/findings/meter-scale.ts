/** A day from which everything that the meter counts is so many times what it was: the meter, not the house. */

import { toCivilDate } from '../calendar/civil.ts';
import { type Finding, sureOf } from '../shapes/finding.ts';
import { meanOf } from '../units/sums.ts';
import { heatingDegrees, knownWeather, type MeterDays, type Prices, unitsAndCost } from './meter-days.ts';
import { findTwoLines } from './two-lines.ts';

const LEAST_DAYS = 21;
/** Less than this, up or down, may be the house. */
const LEAST_TIMES = 1.38;
/** What always runs, the middle and the top have grown alike within this share. */
const ALIKE = 0.16;
const LEAST_OF = 0.2;
const LEAST_WARM = 6;
/**
 * Without warm days on both sides, standby is seen by itself only between a machine's runs: then the least, the lower, the
 * middle, the upper and the greatest readings of days as cold must have grown alike, and by more than a house can.
 */
const COLD_TIMES = 1.45;
const COLD_ALIKE = 0.16;
const QUANTILES = [0.02, 0.1, 0.25, 0.5, 0.75, 0.9, 0.98] as const;

/**
 * Change point after which the least, the usual and the greatest of the readings are all the same number of times what they
 * were on days as cold: no machine and no household changes its smallest and its largest load alike. Units [kWh] are
 * those counted beyond, taking what was before for right; which of the two is wrong only a test of the meter shows.
 */
export function findMeterScale(days: MeterDays, prices: Prices): Finding[] {
  const known = knownWeather(days);
  if (known.length < 2 * LEAST_DAYS) return [];
  const use = known.map((day) => days.dayKWh[day]!);
  const lines = findTwoLines(
    known.map((day) => heatingDegrees(days.outdoorC[day]!)),
    use,
    LEAST_DAYS,
  );
  if (!lines) return [];
  const [before, after] = alikeDays(days, known, lines.at);
  if (before.length < LEAST_DAYS / 2) return [];
  const times = meanUse(days, after) / meanUse(days, before);
  if (!(Math.abs(Math.log(times)) >= Math.log(LEAST_TIMES))) return [];
  // Standby and a tank's round are seen by themselves only on days without heating.
  const warm = (places: readonly number[]) => places.filter((day) => heatingDegrees(days.outdoorC[day]!) === 0);
  const [warmBefore, warmSince] = [warm(known.slice(0, lines.at)), warm(known.slice(lines.at))];
  const isCold = Math.min(warmBefore.length, warmSince.length) < LEAST_WARM;
  const ratios = [
    times,
    greatestUse(days, after) / greatestUse(days, before),
    ...(isCold
      ? quantileRatios(days, before, after)
      : [
          leastUse(days, warmSince) / leastUse(days, warmBefore),
          greatestUse(days, warmSince) / greatestUse(days, warmBefore),
        ]),
  ];
  const alike = isCold ? COLD_ALIKE : ALIKE;
  if (!ratios.every((one) => Number.isFinite(one) && Math.abs(Math.log(one / times)) <= alike)) return [];
  if (isCold && Math.abs(Math.log(times)) < Math.log(COLD_TIMES)) return [];
  const since = known.slice(lines.at);
  const kWh = since.reduce((sum, day) => sum + days.dayKWh[day]! * (1 - 1 / times), 0);
  return [
    {
      code: 'meter-scale',
      meter: days.meter,
      from: toCivilDate(days.dayNumber[since[0]!]!),
      to: toCivilDate(days.dayNumber[since.at(-1)!]! + 1),
      sure: sureOf(0.95 - Math.max(...ratios.map((one) => Math.abs(Math.log(one / times))))),
      grade: 'estimated',
      seen: { times },
      ...unitsAndCost(kWh, kWh, prices),
      ask: ['meter-exchanged'],
      check: ['meter-test', 'supplier-bill'],
      cautions: ['electrical'],
    },
  ];
}

/** For each later day the earlier one nearest in outdoor temperature, within a kelvin. */
function alikeDays({ outdoorC }: MeterDays, known: readonly number[], at: number): [number[], number[]] {
  const earlier = known.slice(0, at);
  const pairs = known.slice(at).flatMap((day) => {
    const near = earlier.reduce((best, one) =>
      Math.abs(outdoorC[one]! - outdoorC[day]!) < Math.abs(outdoorC[best]! - outdoorC[day]!) ? one : best,
    );
    return Math.abs(outdoorC[near]! - outdoorC[day]!) <= 1 ? [[near, day] as const] : [];
  });
  return [pairs.map(([near]) => near), pairs.map(([, day]) => day)];
}

/** How many times each share of the readings is what it was, from the least to the greatest. */
function quantileRatios({ kWh, perDay }: MeterDays, before: readonly number[], after: readonly number[]): number[] {
  const sorted = (places: readonly number[]) =>
    Float64Array.from(places.flatMap((day) => [...kWh.subarray(day * perDay, (day + 1) * perDay)])).sort();
  const [was, is] = [sorted(before), sorted(after)];
  return QUANTILES.map((share) => is[Math.floor(share * is.length)]! / was[Math.floor(share * was.length)]!);
}

const meanUse = ({ dayKWh }: MeterDays, places: readonly number[]) => meanOf(places.map((day) => dayKWh[day]!));

/** What machine and house take when nothing runs: the least fifth of the readings. */
function leastUse({ kWh, perDay }: MeterDays, places: readonly number[]): number {
  const sorted = places.flatMap((day) => [...kWh.subarray(day * perDay, (day + 1) * perDay)]).sort((a, b) => a - b);
  return meanOf(sorted.slice(0, Math.max(1, Math.floor(LEAST_OF * sorted.length))));
}

/** The greatest reading of a day, the upper quarter of the days left out. */
function greatestUse({ kWh, perDay }: MeterDays, places: readonly number[]): number {
  const most = places.map((day) => Math.max(...kWh.subarray(day * perDay, (day + 1) * perDay))).sort((a, b) => a - b);
  return meanOf(most.slice(most.length >> 2, Math.ceil(0.75 * most.length)));
}
