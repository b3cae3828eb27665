/** The even loads of a meter, from both ways of looking. */
import { type EvenLoad, findEvenLoads } from './even-loads.ts';
import { findFloorLoads } from './floor-loads.ts';
import { isHeater } from './heater.ts';
import type { MeterDays } from './meter-days.ts';

const HOURS_ABOUT = 2.5;

/**
 * Even loads step by step; on the machine's own meter those of the low profiles as well, where they show a heater that
 * the steps have missed or seen on fewer days. On the house's meter too much else stands in a fortnight's profile.
 */
export function loadsOf(days: MeterDays): EvenLoad[] {
  const loads = findEvenLoads(days);
  if (days.meter !== 'heat-pump') return loads;
  const heaters = loads.filter((load) => isHeater(load, days));
  const floors = findFloorLoads(days)
    .filter((load) => isHeater(load, days))
    .filter((floor) => !heaters.some((heater) => isSame(heater, floor) && heater.kWh >= floor.kWh));
  return [...loads.filter((load) => !floors.some((floor) => isSame(load, floor))), ...floors];
}

/** Loads of the same hours and days. */
function isSame(a: EvenLoad, b: EvenLoad): boolean {
  const apart = Math.abs(a.hour - b.hour);
  const overlaps = a.days[0]! <= b.days.at(-1)! && b.days[0]! <= a.days.at(-1)!;
  return overlaps && Math.min(apart, 24 - apart) <= HOURS_ABOUT && Math.abs(a.powerKW / b.powerKW - 1) < 0.1;
}
