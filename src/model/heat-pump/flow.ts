/** Flow temperatures: the one designed for, the mean one over a season, and what a change does to the factor. */
import type { Household } from '../shapes/household.ts';
import { tell } from '../shapes/told.ts';

type Machine = Household['machine'];

/** Design flow temperature where none is given, °C. Common practice, no source. */
export const CUSTOMARY_FLOW_C = { radiators: 50, floor: 35 } as const;

/** Ratio of the declared SCOP at 35 °C to that at 55 °C design flow: median of 123 declared brine units. */
const DECLARED_RATIO_35_TO_55 = 1.32;
export const FLOW_SOURCE = tell('flow-source');

/** Design flow temperature [°C]: as typed, else the customary one of the emitters. */
export function designFlow(machine: Machine): { flowC: number; given: boolean } {
  if (machine.flowC) return { flowC: machine.flowC.value, given: true };
  return { flowC: CUSTOMARY_FLOW_C[machine.emitters ?? 'radiators'], given: false };
}

/**
 * Seasonal factor [1] when the design flow temperature changes from `fromC` to `toC` [°C].
 * F' = F × 1.32^((from − to) / 20), that is 1.4 % a kelvin of *design* flow under weather compensation; a kelvin of
 * the flow as it runs is worth 2 to 2.5 %. Valid for 25 to 65 °C. Source: FLOW_SOURCE.
 */
export function factorAtFlow(factor: number, fromC: number, toC: number): number {
  return factor * DECLARED_RATIO_35_TO_55 ** ((fromC - toC) / 20);
}

/**
 * Mean flow temperature of a season weighted by heat [°C] under weather compensation, rooms at 20 °C.
 * T = 20 + k (T_design − 20), k = 0.643 for radiators (exponent 1.3) and 0.599 for floor heating (1.1).
 * Valid for 30 to 60 °C. Source: bin method over the average climate of EN 14825 (a year of 4,910 h) reckoned for
 * design flows of 35 (floor), 45, 50 and 55 °C; its means are 28.98, 36.04, 39.28 and 42.53 °C.
 */
export function seasonMeanFlow(designFlowC: number, emitters: 'radiators' | 'floor'): number {
  return 20 + (emitters === 'floor' ? 0.599 : 0.643) * (designFlowC - 20);
}
