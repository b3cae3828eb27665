/** What drives the running cost: one thing moved at a time, all else as it is, each step reckoned by the whole model. */
import type { Appraisal, WhatIf } from '../appraisal/appraisal.ts';
import { type AppraiseInput, appraise } from '../appraisal/appraise.ts';
import { findSideBySide } from '../appraisal/beside.ts';
import { HOT_C } from '../demand/assumptions.ts';
import { designFlow } from '../heat-pump/flow.ts';
import type { Household } from '../household/household.ts';

export type DriverName = 'flow' | 'room' | 'water-temperature' | 'water-use' | 'array';

export interface DriverPoint {
  /** °C; for hot water used and for the array, today's or the usual size as 1. */
  readonly at: number;
  readonly costPence: number;
  /** Seasonal factor of rooms and hot water together, at H4. */
  readonly factor: number;
}

export interface Driver {
  readonly name: DriverName;
  readonly today: number;
  /** Ascending; today's is one of them. */
  readonly points: readonly DriverPoint[];
}

export interface EmitterCase {
  readonly emitters: 'radiators' | 'floor';
  readonly flowC: number;
  readonly today: boolean;
  readonly cost: Appraisal['systems'][number]['cost'];
  readonly factor: number;
}

export interface WhatDrives {
  readonly emitters: readonly EmitterCase[];
  readonly drivers: readonly Driver[];
}

type Case = Pick<AppraiseInput, 'household' | 'series' | 'reference' | 'asOf'>;
interface Step {
  readonly household?: Household;
  readonly whatIf?: WhatIf;
}

const FLOWS_C = [35, 40, 45, 50, 55, 60, 65];
const HOT_WATER_C = [45, 50, 55, 60, 65];
const WATER_SHARES = [0.5, 0.75, 1, 1.25, 1.5, 2];
const ARRAY_SIZES = [0.5, 0.75, 1, 1.25, 1.5, 2];
const ROOM_STEPS_K = [-3, -2, -1, 0, 1, 2, 3];
const COOLEST_ROOM_C = 10;
const WARMEST_ROOM_C = 30;
/** Ranges of the two emitters stand side by side, so they are drawn; a line through many steps needs its middle only. */
const EMITTER_DRAWS = 500;

/**
 * Cost [pence a year] and factor [1] of the heat pump against flow temperature, room temperature and hot water, and with
 * radiators against a warm floor. Temperature of the hot water and size of the array only where the factor is worked out
 * the full way, since a typed factor does not know of them; how much hot water is used otherwise.
 */
export function reckonWhatDrives(now: Case): WhatDrives {
  const { machine } = now.household;
  const today = appraise({ ...now, draws: 0 });
  const sweep = (name: DriverName, current: number, values: readonly number[], step: (at: number) => Step): Driver => ({
    name,
    today: current,
    points: [...new Set([...values, current])]
      .sort((a, b) => a - b)
      .map((at) => pointAt(at, at === current ? today : appraise({ ...now, ...step(at), draws: 0 }))),
  });
  const room = Math.round(today.demand.roomC * 2) / 2;
  const drivers = [
    sweep('flow', designFlow(machine).flowC, FLOWS_C, (flowC) => ({ whatIf: { flowC } })),
    sweep('room', today.demand.roomC, ROOM_STEPS_K.map((kelvin) => room + kelvin).filter(isRoom), (roomC) => ({
      whatIf: { roomC },
    })),
  ];
  if (machine.way === 'full') {
    drivers.push(
      sweep('water-temperature', now.household.hotWater.hotC?.value ?? HOT_C, HOT_WATER_C, hotWaterStep(now, today)),
    );
    if (machine.source === 'ground' && !machine.full?.brineMonthlyC) {
      drivers.push(sweep('array', machine.full?.ground?.size?.value ?? 1, ARRAY_SIZES, (size) => arrayStep(now, size)));
    }
  } else if (today.demand.water.value > 0) {
    drivers.push(sweep('water-use', 1, WATER_SHARES, (waterShare) => ({ whatIf: { waterShare } })));
  }
  return { emitters: emitterCases(now), drivers };
}

const isRoom = (roomC: number) => roomC >= COOLEST_ROOM_C && roomC <= WARMEST_ROOM_C;

function pointAt(at: number, appraisal: Appraisal): DriverPoint {
  return { at, costPence: findSideBySide(appraisal).pump.cost.value, factor: appraisal.machine.whole.value };
}

const moved = (value: number) => ({ value, grade: 'assumed' as const, origin: 'what if' });

/** A hotter or cooler cylinder that gives the same heat at the tap: less of hotter water is drawn. */
function hotWaterStep(now: Case, today: Appraisal): (hotC: number) => Step {
  return (hotC) => {
    const { household } = now;
    const changed = { ...household, hotWater: { ...household.hotWater, hotC: moved(hotC) } };
    const { value } = appraise({ ...now, household: changed, draws: 0 }).demand.water;
    return { household: changed, whatIf: value > 0 ? { waterShare: today.demand.water.value / value } : {} };
  };
}

function arrayStep({ household }: Case, size: number): Step {
  const { machine } = household;
  const ground = { ...(machine.full?.ground ?? { kind: 'vertical' as const }), size: moved(size) };
  return { household: { ...household, machine: { ...machine, full: { ...machine.full, ground } } } };
}

/** Both emitters at their flow: today's as it is, the other at the flow that is usual for it. */
function emitterCases(now: Case): EmitterCase[] {
  const { machine } = now.household;
  const present = machine.emitters ?? 'radiators';
  return (['radiators', 'floor'] as const).map((emitters) => {
    const today = emitters === present;
    const flowC = today ? designFlow(machine).flowC : designFlow({ source: machine.source, emitters }).flowC;
    const appraisal = appraise({ ...now, ...(today ? {} : emitterStep(now, emitters, flowC)), draws: EMITTER_DRAWS });
    const { cost } = findSideBySide(appraisal).pump;
    return { emitters, flowC, today, cost, factor: appraisal.machine.whole.value };
  });
}

/** The typed factor moves with the flow; one that is worked out knows the emitters as well. */
function emitterStep({ household }: Case, emitters: 'radiators' | 'floor', flowC: number): Step {
  const { machine } = household;
  if (machine.way !== 'full') return { whatIf: { flowC } };
  return { household: { ...household, machine: { ...machine, emitters, flowC: moved(flowC) } } };
}
