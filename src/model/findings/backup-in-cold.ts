/** An electric heater that helps on the coldest days: use rises much faster there than on days that are only cold. */

import { toCivilDate } from '../calendar/civil.ts';
import { fitLine } from '../demand/least-squares.ts';
import { type Finding, sureOf } from '../shapes/finding.ts';
import { meanOf } from '../units/sums.ts';
import { dearnessOf } from './clock-prices.ts';
import {
  correlationOf,
  heatingDegrees,
  knownWeather,
  type MeterDays,
  median,
  type Prices,
  unitsAndCost,
} from './meter-days.ts';

/** Days on which the rooms are heated, and of those the ones that a heater may help on, mean of the day, °C. */
const HEATED_C = 12;
export const COLDEST_C = 3.5;
const LEAST_DAYS = { mild: 30, coldest: 5 } as const;
/** Beyond the line of the milder days: a machine takes more in the cold by itself, and frost on it. */
const LEAST_SHARE = 0.2;
const LEAST_T = 5;
const ABOUT_DAYS = 14;
const LEAST_ABOUT = 4;
/** Excess that falls with the cold is none of a heater's. */
const LEAST_FALL = 0.35;
const LEAST_HELPED = 3;
/** A machine alone takes little more at its coldest than on milder days, kW. Common practice, no source. */
const LEAST_KW = 1.4;

/**
 * Units [kWh] on the coldest days beyond the straight line through the other heated days (3.5 to 12 °C), where they grow with
 * the cold. On the house's meter plug-in heaters look the same.
 */
export function findBackupInCold(days: MeterDays, prices: Prices): Finding[] {
  const heated = knownWeather(days).filter((day) => days.outdoorC[day]! < HEATED_C);
  const mild = heated.filter((day) => days.outdoorC[day]! >= COLDEST_C);
  const coldest = heated.filter((day) => days.outdoorC[day]! < COLDEST_C);
  if (mild.length < LEAST_DAYS.mild) return [];
  const below = (day: number) => heatingDegrees(days.outdoorC[day]!);
  const line = fitLine(
    mild.map(below),
    mild.map((day) => days.dayKWh[day]!),
  );
  const onLine = (day: number) => line.intercept + line.slope * below(day);
  // What changed from month to month is none of a heater's: each cold day is held against the mild days about it.
  const aboutIt = (day: number) =>
    mild.filter((one) => Math.abs(days.dayNumber[one]! - days.dayNumber[day]!) <= ABOUT_DAYS);
  const cold = coldest.filter((day) => aboutIt(day).length >= LEAST_ABOUT);
  if (cold.length < LEAST_DAYS.coldest) return [];
  const usual = (day: number) => onLine(day) + meanOf(aboutIt(day).map((one) => days.dayKWh[one]! - onLine(one)));
  const excess = cold.map((day) => days.dayKWh[day]! - usual(day));
  const share = meanOf(excess) / meanOf(cold.map(usual));
  const byCold = correlationOf(
    excess,
    cold.map((day) => days.outdoorC[day]!),
  );
  const apart = meanOf(cold.map(below)) - meanOf(mild.map(below));
  const error = Math.sqrt(line.variance / cold.length + (line.slopeError * apart) ** 2);
  const t = meanOf(excess) / error;
  if (!(share >= LEAST_SHARE) || t < LEAST_T || !(byCold <= -LEAST_FALL)) return [];
  const helped = cold.filter((_, i) => excess[i]! > 2 * Math.sqrt(line.variance));
  if (helped.length < LEAST_HELPED || risesBy(days, mild, helped) < LEAST_KW) return [];
  const kWh = helped.reduce((sum, day) => sum + days.dayKWh[day]! - usual(day), 0);
  const isHelped = new Set(helped);
  const dearness = dearnessOf(days, prices, (place, day) => (isHelped.has(day) ? days.kWh[place]! : 0));
  return [
    {
      code: 'backup-in-cold',
      meter: days.meter,
      from: toCivilDate(days.dayNumber[helped[0]!]!),
      to: toCivilDate(days.dayNumber[helped.at(-1)!]! + 1),
      sure: sureOf(0.6 + Math.min(0.3, t / 60)),
      grade: 'estimated',
      seen: {
        days: helped.length,
        belowC: Math.max(...helped.map((day) => days.outdoorC[day]!)),
        kWhPerDay: kWh / helped.length,
        coldCorrelation: byCold,
      },
      ...unitsAndCost(kWh, kWh, prices, dearness),
      ...(days.meter === 'whole-house' ? { may: ['backup-heater' as const, 'plug-in-heaters' as const] } : {}),
      ask: days.meter === 'whole-house' ? ['plug-in-heaters', 'heater-switch'] : ['heater-switch'],
      check: ['heater-hours', 'heater-control', 'heating-curve'],
      cautions: ['electrical'],
    },
  ];
}

/** How much higher the day's greatest reading is on the days that a heater may have helped on, the middle of each, kW. */
function risesBy({ kWh, perDay, hours }: MeterDays, mild: readonly number[], helped: readonly number[]): number {
  const most = (places: readonly number[]) =>
    median(places.map((day) => Math.max(...kWh.subarray(day * perDay, (day + 1) * perDay)))) / hours;
  return most(helped) - most(mild);
}
