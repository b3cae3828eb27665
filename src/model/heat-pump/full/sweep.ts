/** What drives the machine's year: one thing changed, the rest as it is. */

import { tell } from '../../shapes/told.ts';
import { runYear } from './run-year.ts';
import { type SettleInput, settleFull } from './settle.ts';

/** What is changed: design flow °C, hot water °C, or the array against its usual size. */
export type SweepDriver = 'flow' | 'hot-water' | 'array';

/**
 * Electricity of a year [kWh] with one driver at another value.
 * Hotter water in the cylinder is lifted further for the same heat; a larger array cools the ground less, in proportion.
 */
export const electricityWith = (input: SettleInput, driver: SweepDriver, value: number): number =>
  runYear(settleFull(changed(input, driver, value)).input).electricityKWh;

function changed(base: SettleInput, driver: SweepDriver, value: number): SettleInput {
  const { household, whatIf } = base;
  const { machine } = household;
  const typed = { value, grade: 'assumed' as const, origin: tell('what-if') };
  if (driver === 'flow') return { ...base, whatIf: { ...whatIf, flowC: value } };
  if (driver === 'hot-water') {
    return { ...base, household: { ...household, hotWater: { ...household.hotWater, hotC: typed } } };
  }
  const ground = { kind: 'vertical' as const, ...machine.full?.ground, size: typed };
  return { ...base, household: { ...household, machine: { ...machine, full: { ...machine.full, ground } } } };
}
