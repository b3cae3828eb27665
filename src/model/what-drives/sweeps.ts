/** Each thing that drives the cost: where it stands, the steps to reckon, and what is to be said of them. */

import { type AppraiseInput, appraiseYears } from '../appraise.ts';
import { designFlow, FLOW_SOURCE } from '../heat-pump/flow.ts';
import type { Appraisal, WhatIf } from '../shapes/appraisal.ts';
import { type Told, tell } from '../shapes/told.ts';
import { HOT_C } from '../shapes/usual-home.ts';

export type DriverName = 'flow' | 'room' | 'water-temperature' | 'water-use' | 'array';

export type Case = Pick<AppraiseInput, 'household' | 'series' | 'reference' | 'asOf' | 'draws'> & {
  readonly whatIf: WhatIf;
};
export type Step = Partial<Pick<Case, 'household' | 'whatIf'>>;
/** One thing moved by itself. */
export interface Sweep {
  readonly name: DriverName;
  readonly now: number;
  readonly values: readonly number[];
  readonly step: (at: number) => Step;
  readonly nameOf: (at: number) => Told;
  /** What the steps rest on, where it is a published rule. */
  readonly source?: Told;
}

const FLOWS_C = [35, 40, 45, 50, 55, 60, 65];
const HOT_WATER_C = [45, 50, 55, 60, 65];
const WATER_SHARES = [0.5, 0.75, 1, 1.25, 1.5, 2];
const ARRAY_SIZES = [0.5, 0.75, 1, 1.25, 1.5, 2];
const HALF = 0.5;
const HALF_AGAIN = 1.5;
const ROOM_STEPS_K = [-3, -2, -1, 0, 1, 2, 3];
const COOLEST_ROOM_C = 10;
const WARMEST_ROOM_C = 30;

/** What is moved for this home, in the order shown. */
export function listSweeps(shown: Case, now: Appraisal): Sweep[] {
  const { household, whatIf } = shown;
  const { machine } = household;
  const room = Math.round(now.demand.roomC * 2) / 2;
  const flowC = whatIf.flowC ?? designFlow(machine).flowC;
  const sweeps: Sweep[] = [
    {
      name: 'flow',
      now: flowC,
      values: FLOWS_C,
      step: (at) => ({ whatIf: { ...whatIf, flowC: at } }),
      nameOf: (at) => tell('heating-water-at', { flowC: at }),
      ...(machine.way === 'full' ? {} : { source: tell('middle-only', { source: FLOW_SOURCE }) }),
    },
    {
      name: 'room',
      now: now.demand.roomC,
      values: ROOM_STEPS_K.map((kelvin) => room + kelvin).filter(isRoom),
      step: (roomC) => ({ whatIf: { ...whatIf, roomC } }),
      nameOf: (at) => tell('rooms-at', { roomC: at }),
    },
  ];
  if (machine.way === 'full') {
    sweeps.push({
      name: 'water-temperature',
      now: household.hotWater.hotC?.value ?? HOT_C,
      values: HOT_WATER_C,
      step: hotWaterStep(shown, now),
      nameOf: (at) => tell('hot-water-at', { hotC: at }),
    });
    if (machine.source === 'ground' && !machine.full?.brineMonthlyC) {
      sweeps.push({
        name: 'array',
        now: machine.full?.ground?.size?.value ?? 1,
        values: ARRAY_SIZES,
        step: (size) => arrayStep(shown, size),
        nameOf: (at) => tell('pipes-times', { size: at }),
      });
    }
  } else if (now.demand.water.value > 0) {
    sweeps.push({
      name: 'water-use',
      now: whatIf.waterShare ?? 1,
      values: WATER_SHARES,
      step: (waterShare) => ({ whatIf: { ...whatIf, waterShare } }),
      nameOf: (at) => tell('hot-water-times', { share: at }),
    });
  }
  return sweeps;
}

export interface WantedEffect {
  readonly title: Told;
  readonly here: number;
  readonly there: number;
  readonly times: number;
}

/** What is said of each: a step of a usual size, from the steps on both sides of what is shown. */
export function listEffects({ name, now }: Sweep, values: readonly number[]): WantedEffect[] {
  const index = values.indexOf(now);
  const below = values[Math.max(0, index - 1)]!;
  const above = values[Math.min(values.length - 1, index + 1)]!;
  const step = (title: Told, by: number) => {
    const [here, there] = by < 0 ? [above, below] : [below, above];
    return [{ title, here, there, times: by / (there - here) }];
  };
  switch (name) {
    case 'flow':
      return step(tell('water-5-cooler'), -5);
    case 'room':
      return step(tell('room-1-warmer'), 1);
    case 'water-temperature':
      return step(tell('hot-water-5-hotter'), 5);
    case 'water-use':
      return step(tell('half-again-hot-water'), HALF * now);
    case 'array':
      return [
        { title: tell('half-the-pipe'), here: now, there: HALF, times: 1 },
        { title: tell('half-again-pipe'), here: now, there: HALF_AGAIN, times: 1 },
      ];
  }
}

const isRoom = (roomC: number) => roomC >= COOLEST_ROOM_C && roomC <= WARMEST_ROOM_C;

export const moved = (value: number) => ({ value, grade: 'assumed' as const, origin: tell('what-if') });

/** A hotter or cooler cylinder that gives the same heat at the tap: less of hotter water is drawn. */
function hotWaterStep(shown: Case, now: Appraisal): (hotC: number) => Step {
  return (hotC) => {
    const { household, whatIf } = shown;
    const changed = { ...household, hotWater: { ...household.hotWater, hotC: moved(hotC) } };
    const { value } = appraiseYears({ ...shown, household: changed, draws: 0 }).appraisal.demand.water;
    const waterShare = value > 0 ? ((whatIf.waterShare ?? 1) * now.demand.water.value) / value : 0;
    return { household: changed, whatIf: { ...whatIf, waterShare } };
  };
}

function arrayStep({ household }: Case, size: number): Step {
  const { machine } = household;
  const ground = { ...(machine.full?.ground ?? { kind: 'vertical' as const }), size: moved(size) };
  return { household: { ...household, machine: { ...machine, full: { ...machine.full, ground } } } };
}
