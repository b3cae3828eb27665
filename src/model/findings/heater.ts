/** Immersion or backup heaters: even steps near a rated power. */
import { toCivilDate } from '../calendar/civil.ts';
import type { EvenLoad } from './even-loads.ts';
import { type Finding, sureOf, yearOfDays } from './finding.ts';
import type { MeterDays, Prices } from './meter-days.ts';
import { median } from './meter-days.ts';

/**
 * Powers of heaters sold for cylinders and heat pumps [kW], with the mains between 225 and 245 V about the rated 240.
 * Common practice, no source.
 */
const RATED_KW = [1, 2, 3, 6, 9] as const;
const LOW_SHARE = 0.86;
const HIGH_SHARE = 1.06;
const LEAST_LIKENESS = 0.6;
const LEAST_DAYS = 4;
/** A compressor that starts and stops all day has more steps than this a day. */
const MOST_A_DAY = 3;
/** Longer runs of such power on the meter of the whole house are rather a charger, hours. */
const LONGEST_HOURS = { 'heat-pump': 12, 'whole-house': 4.2 } as const;

export function ratedPower(powerKW: number): number | null {
  return RATED_KW.find((rated) => powerKW >= rated * LOW_SHARE && powerKW <= rated * HIGH_SHARE) ?? null;
}

/** Whether an even load is one of a heater: power near a rated one, alike, seldom, and not for half a night. */
export function isHeater(load: EvenLoad, days: MeterDays): boolean {
  const rated = ratedPower(load.powerKW);
  if (rated === null || (days.meter === 'whole-house' && rated !== 3)) return false;
  const hours = median(load.steps.map(({ kWh, powerKW }) => kWh / powerKW));
  return (
    load.likeness >= LEAST_LIKENESS &&
    load.days.length >= LEAST_DAYS &&
    load.steps.length / load.days.length <= MOST_A_DAY &&
    hours <= LONGEST_HOURS[days.meter]
  );
}

/** Whether most gaps between the days are whole weeks. */
function isWeekly(load: EvenLoad, days: MeterDays): boolean {
  const gaps = load.days.slice(1).map((day, i) => days.dayNumber[day]! - days.dayNumber[load.days[i]!]!);
  return gaps.length >= 3 && gaps.filter((gap) => gap % 7 === 0).length >= 0.7 * gaps.length;
}

/**
 * A heater's days, hours and units [kWh]. Once a week it is most likely the weekly heating of the cylinder.
 * On the whole house's meter only 3 kW is called a heater: other powers have too many owners.
 */
export function findHeater(days: MeterDays, loads: readonly EvenLoad[], prices: Prices): Finding[] {
  return loads
    .filter((load) => isHeater(load, days))
    .map((load): Finding => {
      const first = days.dayNumber[load.days[0]!]!;
      const last = days.dayNumber[load.days.at(-1)!]! + 1;
      const weekly = isWeekly(load, days);
      const kWhYear = yearOfDays(load.kWh, last - first);
      const rated = ratedPower(load.powerKW)!;
      const onMachine = days.meter === 'heat-pump' ? 0.2 : 0;
      return {
        code: weekly ? 'weekly-pasteurisation' : 'heater-running',
        meter: days.meter,
        from: toCivilDate(first),
        to: toCivilDate(last),
        sure: sureOf(0.35 + 0.4 * load.likeness + onMachine + Math.min(0.05, load.days.length / 400)),
        grade: 'estimated',
        seen: {
          powerKW: load.powerKW,
          ratedKW: rated,
          days: load.days.length,
          hours: load.kWh / load.powerKW,
          hour: median(load.steps.map(({ slot }) => slot * days.hours)),
        },
        kWh: load.kWh,
        pence: load.kWh * prices.pencePerKWh,
        kWhYear,
        penceYear: kWhYear * prices.pencePerKWh,
        ask: ['heater-switch', 'baths'],
        check: weekly ? ['pasteurisation-setting'] : ['heater-hours', 'heater-control', 'pasteurisation-setting'],
        cautions: ['electrical', 'scalding', 'legionella'],
      };
    });
}
