/** What runs all night, and the day from which it was more. */

import { toCivilDate } from '../calendar/civil.ts';
import { type Finding, sureOf, yearOfDays } from '../shapes/finding.ts';
import { sumOf } from '../units/sums.ts';
import { SUMMER_C } from './behaviour.ts';
import { dearnessOf } from './clock-prices.ts';
import {
  heatingDegrees,
  knownWeather,
  leastOf,
  type MeterDays,
  median,
  type Prices,
  unitsAndCost,
} from './meter-days.ts';
import { changeKind, findLineChange } from './two-lines.ts';

const LEAST_DAYS = 21;
/** Two hours of the day's lowest readings, so that one odd reading does not speak for the day. */
const LOW_HOURS = 2;
/** Days without heating before and since, of a meter that heating is on; the rise on them is at least this share of all. */
const LEAST_WARM = 8;
const WARM_SHARE = 0.6;
/** Nearly as many times, natural logarithm. */
const ALIKE = 0.2;
/** A rise below this is a router and a few chargers, kW. */
const LEAST_KW = 0.05;

/** Mean of the lowest readings of each day, kW. */
export function dailyLow(days: MeterDays): Float64Array {
  const take = LOW_HOURS / days.hours;
  return Float64Array.from({ length: days.count }, (_, day) => {
    const least = leastOf(take, days.perDay, (i) => days.kWh[day * days.perDay + i]!);
    return sumOf(least) / LOW_HOURS;
  });
}

/**
 * A rise of the lowest readings [kW] on days as cold as before, the same on cold days and on mild ones: what grows with
 * the cold is heating. Needs the outdoor temperature; where the meter `heats`, days without heating on both sides as well.
 */
export function findBaseLoad(days: MeterDays, prices: Prices, heats: boolean): Finding[] {
  const known = knownWeather(days);
  const low = dailyLow(days);
  const values = known.map((day) => low[day]!);
  const below = known.map((day) => heatingDegrees(days.outdoorC[day]!));
  const change = findLineChange(below, values, LEAST_DAYS);
  if (!change || change.change < LEAST_KW) return [];
  if (changeKind(change, below, values, below) !== 'steady') return [];
  const { at, was, change: riseKW } = change;
  if (heats && !(warmRise(low, known, below, at) >= WARM_SHARE * riseKW)) return [];
  // Where the meter heats, a summer's rise may be heating that was left on.
  const isSummer = heats && median(known.slice(at).map((day) => days.outdoorC[day]!)) > SUMMER_C;
  const first = days.dayNumber[known[at]!]!;
  const end = days.dayNumber[known.at(-1)!]! + 1;
  const kWh = riseKW * 24 * (known.length - at);
  const kWhYear = yearOfDays(riseKW * 24, 1);
  const dearness = dearnessOf(days, prices, (_, day) => (day >= known[at]! ? riseKW * days.hours : 0));
  return [
    {
      code: 'base-load-rose',
      meter: days.meter,
      from: toCivilDate(first),
      to: toCivilDate(end),
      sure: sureOf(0.6 + Math.min(0.3, change.t / 60)),
      grade: 'estimated',
      seen: { riseW: riseKW * 1000, beforeW: was * 1000, afterW: (was + riseKW) * 1000 },
      ...unitsAndCost(kWh, isSummer ? kWh : kWhYear, prices, dearness),
      ...mayBe(isSummer, countsAlike(riseKW / was, days, known, at)),
      // No tub stands on the heat pump's own meter; heating left on in summer does.
      ...(days.meter === 'heat-pump'
        ? { ask: ['heating-in-summer', 'settings-changed'], check: ['pipes-warm', 'pump-always-on'] }
        : {
            ask: [
              ...(isSummer ? (['heating-in-summer'] as const) : []),
              'new-appliance',
              'tub-or-pool',
              'settings-changed',
            ],
            check: ['sub-meter', 'pump-always-on', ...(isSummer ? (['pipes-warm'] as const) : [])],
          }),
      cautions: ['electrical'],
    },
  ];
}

const mayBe = (isSummer: boolean, isMeter: boolean): Pick<Finding, 'may'> => {
  if (isSummer) return { may: ['summer-heating', 'base-load'] };
  return isMeter ? { may: ['base-load', 'meter-wrong'] } : {};
};

/** Whether all that is used rose by nearly as many times as what runs all night: then it may be the meter. */
function countsAlike(lowShare: number, days: MeterDays, known: readonly number[], at: number): boolean {
  const change = findLineChange(
    known.map((day) => heatingDegrees(days.outdoorC[day]!)),
    known.map((day) => days.dayKWh[day]!),
    LEAST_DAYS,
  );
  if (!change || Math.abs(change.at - at) > LEAST_DAYS) return false;
  return Math.abs(Math.log((1 + change.change / change.was) / (1 + lowShare))) <= ALIKE;
}

/** Rise of the lowest readings [kW] on days without heating; NaN where there are too few of them before or since. */
function warmRise(low: Float64Array, known: readonly number[], below: readonly number[], at: number): number {
  const warm = (from: number, to: number) =>
    known.slice(from, to).flatMap((day, i) => (below[from + i] === 0 ? [low[day]!] : []));
  const [before, since] = [warm(0, at), warm(at, known.length)];
  return Math.min(before.length, since.length) >= LEAST_WARM ? median(since) - median(before) : Number.NaN;
}
