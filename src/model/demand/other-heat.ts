/** Heat for the rooms that no meter of the main heating sees. */
import type { Household } from '../shapes/household.ts';
import { OTHER_HEAT_SHARE } from './demand-assumptions.ts';

/**
 * Heat of a second heater beside what the main one makes [kWh a year] = main × share/(1 − share), share 0.1.
 * Source: SAP 10.2 Table 11, from memory. Solar panels for hot water bring the rooms nothing.
 */
export function otherHeatKWh(household: Household, spaceKWh: number): number {
  const { otherHeat } = household.present;
  if (!otherHeat || otherHeat === 'none' || otherHeat === 'solar thermal') return 0;
  const share = OTHER_HEAT_SHARE[otherHeat];
  return (spaceKWh * share) / (1 - share);
}
