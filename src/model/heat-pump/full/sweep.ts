/** What drives the machine's year: one thing changed step by step, the rest as it is. Data for charts. */

import type { Boundary } from '../../shapes/household.ts';
import { degreeDaysFromMeans } from '../../weather/degree-days.ts';
import type { RateBuckets } from '../../year/share-out.ts';
import { spaceShareByDay } from '../../year/spread-over-year.ts';
import { runYear } from './run-year.ts';
import { type SettleInput, settleFull } from './settle.ts';
import { type FullYear, USES } from './year.ts';

/** What is changed: design flow °C, room °C, hot water °C, or the array against its usual size. */
export type SweepDriver = 'flow' | 'room' | 'hot-water' | 'array';

export interface SweepPoint {
  /** Value of what is changed, in its own unit. */
  readonly value: number;
  readonly factors: Readonly<Record<Boundary, number>> | null;
  /** Heat for rooms and hot water, and all electricity of the year, kWh. */
  readonly heatKWh: number;
  readonly electricityKWh: number;
  /** Unit cost, pence a year, where prices were given. */
  readonly costPence: number | null;
  readonly meanFlowC: number;
  readonly meanSourceC: number;
  readonly coldestSourceC: number;
}

export interface SweepInput extends SettleInput {
  readonly prices?: RateBuckets;
  /** Instead of the emitters that the home has. */
  readonly emitters?: 'radiators' | 'floor';
}

export const FLOW_STEPS_C: readonly number[] = [35, 40, 45, 50, 55, 60, 65];
export const ROOM_STEPS_C: readonly number[] = [18, 19, 20, 21, 22, 23];
export const HOT_WATER_STEPS_C: readonly number[] = [45, 48, 50, 52, 55, 60];
export const ARRAY_STEPS: readonly number[] = [0.5, 0.75, 1, 1.25, 1.5, 2];

/**
 * Factors [1], electricity [kWh] and cost [pence] of a year for each value of one driver.
 * A warmer room asks for more heat (degree days to a base moved with it) and warmer water from the same emitters; hotter
 * water in the cylinder is lifted further for the same heat; a larger array cools the ground less, in proportion.
 */
export function sweepDriver(input: SweepInput, driver: SweepDriver, values: readonly number[]): SweepPoint[] {
  return values.map((value) => {
    const { input: yearInput } = settleFull(changed(input, driver, value));
    const year = runYear(yearInput);
    const { year: sum } = year;
    return {
      value,
      factors: sum.factors,
      heatKWh: sum.spaceHeatKWh + sum.waterHeatKWh + sum.resistanceHeatKWh,
      electricityKWh: year.electricityKWh,
      costPence: input.prices ? unitCost(year, input.prices) : null,
      meanFlowC: year.means.flowC,
      meanSourceC: year.means.sourceC,
      coldestSourceC: year.coldestSourceC,
    };
  });
}

/** The same against the design flow for radiators and for floor heating, 35 to 65 °C in steps of 5. */
export function sweepEmitters(input: SweepInput): { readonly radiators: SweepPoint[]; readonly floor: SweepPoint[] } {
  const along = (emitters: 'radiators' | 'floor') => sweepDriver({ ...input, emitters }, 'flow', FLOW_STEPS_C);
  return { radiators: along('radiators'), floor: along('floor') };
}

/** Unit cost [pence] of every half-hour's electricity at its price. */
export function unitCost({ bySlot }: FullYear, { bucketOfSlot, pencePerKWh, penceOfSlot }: RateBuckets): number {
  let pence = 0;
  for (const use of USES) {
    const line = bySlot[use];
    for (let slot = 0; slot < line.length; slot++) {
      pence += line[slot]! * (penceOfSlot?.[slot] ?? pencePerKWh[bucketOfSlot[slot]!]!);
    }
  }
  return pence;
}

function changed(input: SweepInput, driver: SweepDriver, value: number): SettleInput {
  const { household, whatIf, emitters } = input;
  const machine = emitters ? { ...household.machine, emitters } : household.machine;
  const typed = { value, grade: 'assumed' as const, origin: 'what if' };
  const base: SettleInput = { ...input, household: { ...household, machine } };
  if (driver === 'flow') return { ...base, whatIf: { ...whatIf, flowC: value } };
  if (driver === 'room') return warmer(base, value);
  if (driver === 'hot-water') {
    return { ...base, household: { ...base.household, hotWater: { ...household.hotWater, hotC: typed } } };
  }
  const ground = { kind: 'vertical' as const, ...machine.full?.ground, size: typed };
  return { ...base, household: { ...base.household, machine: { ...machine, full: { ...machine.full, ground } } } };
}

/** The home with its rooms at another temperature, °C. */
function warmer(input: SettleInput, roomC: number): SettleInput {
  const { demand, year } = input;
  const baseC = demand.baseC + roomC - demand.roomC;
  const before = degreeDaysFromMeans(year.dailyMeanC, demand.baseC);
  const times = before > 0 ? degreeDaysFromMeans(year.dailyMeanC, baseC) / before : 1;
  const space = { ...demand.space, value: demand.space.value * times };
  return { ...input, demand: { ...demand, space, baseC, roomC }, spaceShare: spaceShareByDay(year, baseC) };
}
