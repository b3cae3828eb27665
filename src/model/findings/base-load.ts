/** What runs all night, and the day from which it was more. */
import { toCivilDate } from '../calendar/civil.ts';
import { fitLine } from '../demand/least-squares.ts';
import { withoutSlope } from './cold-line.ts';
import { type Finding, sureOf, yearOfDays } from './finding.ts';
import { findLevelShift } from './level-shift.ts';
import type { MeterDays, Prices } from './meter-days.ts';
import { knownWeather } from './meter-days.ts';

const LEAST_DAYS = 21;
/** Two hours of the day's lowest readings, so that one odd reading does not speak for the day. */
const LOW_HOURS = 2;
/** A rise below this is a router and a few chargers, kW. */
const LEAST_KW = 0.05;
const LEAST_T = 6;
/** A line that does not start higher by this many standard errors rose with the cold only: that is heating. */
const LEAST_OWN_T = 2.5;
/** Outdoor temperature below which a home is heated, for taking the cold out of the night's use, °C. */
const HEATING_BELOW_C = 15.5;

/** Mean of the lowest readings of each day, kW. */
export function dailyLow(days: MeterDays): Float64Array {
  const take = LOW_HOURS / days.hours;
  return Float64Array.from({ length: days.count }, (_, day) => {
    const sorted = days.kWh.slice(day * days.perDay, (day + 1) * days.perDay).sort();
    let sum = 0;
    for (let i = 0; i < take; i++) sum += sorted[i]!;
    return sum / LOW_HOURS;
  });
}

/**
 * A rise of the lowest readings [kW] that does not follow the cold: level shift of what is left when the line against
 * degrees below 15.5 °C is taken out, confirmed by the two lines' own beginnings. Needs the outdoor temperature.
 */
export function findBaseLoad(days: MeterDays, prices: Prices): Finding[] {
  const known = knownWeather(days);
  const low = dailyLow(days);
  const values = known.map((day) => low[day]!);
  const below = known.map((day) => Math.max(0, HEATING_BELOW_C - days.outdoorC[day]!));
  const shift = findLevelShift(withoutSlope(values, below), LEAST_DAYS);
  if (!shift || shift.t < LEAST_T || shift.after - shift.before < LEAST_KW) return [];
  const { at } = shift;
  const before = fitLine(below.slice(0, at), values.slice(0, at));
  const after = fitLine(below.slice(at), values.slice(at));
  const riseKW = after.intercept - before.intercept;
  const ownT = riseKW / Math.hypot(before.interceptError, after.interceptError);
  if (riseKW < LEAST_KW || ownT < LEAST_OWN_T) return [];
  const first = days.dayNumber[known[at]!]!;
  const end = days.dayNumber[known.at(-1)!]! + 1;
  const kWh = riseKW * 24 * (end - first);
  const kWhYear = yearOfDays(kWh, end - first);
  return [
    {
      code: 'base-load-rose',
      meter: days.meter,
      from: toCivilDate(first),
      to: toCivilDate(end),
      sure: sureOf(0.6 + Math.min(0.3, ownT / 40)),
      grade: 'estimated',
      seen: { riseW: riseKW * 1000, beforeW: before.intercept * 1000, afterW: after.intercept * 1000 },
      kWh,
      pence: kWh * prices.pencePerKWh,
      kWhYear,
      penceYear: kWhYear * prices.pencePerKWh,
      ask: ['new-appliance', 'tub-or-pool', 'settings-changed'],
      check: days.meter === 'heat-pump' ? ['pump-always-on'] : ['sub-meter', 'pump-always-on'],
      cautions: ['electrical'],
    },
  ];
}
