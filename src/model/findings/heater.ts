/** Immersion or backup heaters: even steps near a rated power. */
import { type Finding, sureOf } from '../shapes/finding.ts';
import { daysAndCost, type EvenLoad, hoursEach, isOfCompressor } from './even-loads.ts';
import type { MeterDays, Prices } from './meter-days.ts';

/**
 * Powers of heaters sold for cylinders and heat pumps [kW], with the mains between 225 and 245 V about the rated 240;
 * common practice, no source. Heaters of 1 and 2 kW are left out: compressors run at such powers. With 2 kW among them
 * 9 made homes in 100 without a heater were said to have one. On the house's meter other powers have too many owners.
 */
export const SEEN_KW = { 'heat-pump': [3, 6, 9], 'whole-house': [3] } as const;
const LOW_SHARE = 0.86;
const HIGH_SHARE = 1.06;
/** Alike enough, where the power is seen to stay level, and where the steps are too short to show it. */
const LEAST_LIKENESS = { level: 0.45, short: 0.75 } as const;
/** What is there for fewer days is mostly an oven or a compressor in the cold. */
const LEAST_DAYS = 10;
/** A compressor's power rises as the cylinder gets hot. */
const MOST_RAMP = 0.06;
/** A compressor of such a power runs at all hours, not at one. */
const MOST_ELSEWHERE = 1;
/** A machine's own round has nearly the same power just before and after. */
const MOST_DRIFT = 0.3;
/** Outside the weekly one, a heater left on is on most days; what is seldom on the house's meter may be an oven. */
const LEAST_OFTEN = 0.4;
/** Longer runs of such power on the meter of the whole house are rather a charger, hours. */
const LONGEST_HOURS = { 'heat-pump': 12, 'whole-house': 4.2 } as const;

function ratedPower(powerKW: number, meter: MeterDays['meter']): number | null {
  return SEEN_KW[meter].find((rated) => powerKW >= rated * LOW_SHARE && powerKW <= rated * HIGH_SHARE) ?? null;
}

/** Whether an even load is one of a heater: near a rated power, alike, level, at its own hour, not for half a night. */
export function isHeater(load: EvenLoad, days: MeterDays): boolean {
  if (ratedPower(load.powerKW, days.meter) === null) return false;
  const weekly = isWeekly(load, days);
  const span = days.dayNumber[load.days.at(-1)!]! - days.dayNumber[load.days[0]!]! + 1;
  return (
    (load.ramp === null
      ? load.likeness >= LEAST_LIKENESS.short
      : load.likeness >= LEAST_LIKENESS.level && Math.abs(load.ramp) <= MOST_RAMP) &&
    load.elsewhere <= MOST_ELSEWHERE &&
    hoursEach(load) <= LONGEST_HOURS[days.meter] &&
    (weekly ||
      (load.drift <= MOST_DRIFT &&
        load.days.length >= Math.max(LEAST_DAYS, LEAST_OFTEN * span) &&
        !isOfCompressor(load, days)))
  );
}

/** Whether it came four times at least, and most gaps between its days are whole weeks. */
export function isWeekly(load: EvenLoad, days: MeterDays): boolean {
  const gaps = load.days.slice(1).map((day, i) => days.dayNumber[day]! - days.dayNumber[load.days[i]!]!);
  return gaps.length >= 3 && gaps.filter((gap) => gap % 7 === 0).length >= 0.7 * gaps.length;
}

/**
 * A heater's days, hours and units [kWh]. Once a week it is most likely the weekly heating of the cylinder.
 */
export function findHeater(days: MeterDays, loads: readonly EvenLoad[], prices: Prices): Finding[] {
  return loads
    .filter((load) => isHeater(load, days))
    .map((load): Finding => {
      const weekly = isWeekly(load, days);
      const rated = ratedPower(load.powerKW, days.meter)!;
      const onMachine = days.meter === 'heat-pump' ? 0.2 : 0;
      return {
        code: weekly ? 'weekly-pasteurisation' : 'heater-running',
        meter: days.meter,
        sure: sureOf(0.35 + 0.4 * load.likeness + onMachine + Math.min(0.05, load.days.length / 400)),
        grade: 'estimated',
        seen: {
          powerKW: load.powerKW,
          ratedKW: rated,
          days: load.days.length,
          hours: load.kWh / load.powerKW,
          hour: load.hour,
        },
        ...daysAndCost(load, days, prices),
        // Once a week is as it was estimated: nobody at home is asked about it.
        ask: weekly ? [] : ['heater-switch', 'baths'],
        check: weekly ? ['pasteurisation-setting'] : ['heater-hours', 'heater-control', 'pasteurisation-setting'],
        cautions: ['electrical', 'scalding', 'legionella'],
      };
    });
}
