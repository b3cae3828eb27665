/** What drives the running cost: one thing moved at a time, all else as it is, each step reckoned by the whole model. */

import { type AppraisedYears, appraiseYears } from '../appraise.ts';
import { findSideBySide } from '../comparison/beside.ts';
import { designFlow } from '../heat-pump/flow.ts';
import type { Appraisal, Figure, WhatIf } from '../shapes/appraisal.ts';
import { tell } from '../shapes/told.ts';
import { effectOf, type Stood } from './effect.ts';
import { type Case, type DriverName, listEffects, listSweeps, moved, type Step, type Sweep } from './sweeps.ts';

export type { DriverName } from './sweeps.ts';

export interface DriverPoint {
  /** °C; for hot water used and for the array, the household's or the usual size as 1. */
  readonly at: number;
  readonly costPence: number;
  /** Seasonal factor of rooms and hot water together, at H4. */
  readonly factor: number;
}

export interface Driver {
  readonly name: DriverName;
  /** Where it stands in what is shown. */
  readonly now: number;
  /** Ascending; the one that is shown is among them. */
  readonly points: readonly DriverPoint[];
  /** What is said of it, pence a year more: one step, or for the array half the size and half as much again. */
  readonly effects: readonly Figure[];
}

export interface EmitterCase {
  readonly emitters: 'radiators' | 'floor';
  readonly flowC: number;
  /** Whether it is the one that is shown. */
  readonly now: boolean;
  readonly cost: Figure;
  readonly factor: number;
}

export interface WhatDrives {
  /** What it started from. */
  readonly whatIf: WhatIf;
  readonly emitters: readonly EmitterCase[];
  /** Pence a year more with the other emitters. */
  readonly emittersApart: Figure;
  readonly drivers: readonly Driver[];
}

/**
 * Cost [pence a year] and factor [1] of the heat pump against flow temperature, room temperature and hot water, and with
 * radiators against a warm floor, each moved by itself from what is shown. Temperature of the hot water and size of the
 * array only where the factor is worked out the full way, since a typed factor does not know of them; how much hot water
 * is used otherwise. Some thirty years are reckoned: it pauses after each, so that a screen can do other things between.
 */
export function* stepWhatDrives(shown: Case): Generator<void, WhatDrives> {
  const { machine } = shown.household;
  const now = appraiseYears(shown);
  yield;
  const drivers: Driver[] = [];
  for (const sweep of listSweeps(shown, now.appraisal)) drivers.push(yield* runSweep(shown, now, sweep));
  const emitters = machine.emitters ?? 'radiators';
  const other = emitters === 'floor' ? 'radiators' : 'floor';
  const otherFlowC = designFlow({ source: machine.source, emitters: other }).flowC;
  const flowC = shown.whatIf.flowC ?? designFlow(machine).flowC;
  const turned = appraiseYears({ ...shown, ...emitterStep(shown, other, otherFlowC) });
  const cases = [
    emitterCase(emitters, flowC, true, now.appraisal),
    emitterCase(other, otherFlowC, false, turned.appraisal),
  ];
  const nameOf = (one: EmitterCase) => tell(`${one.emitters}-at`, { flowC: one.flowC });
  return {
    whatIf: shown.whatIf,
    emitters: cases.toSorted((a, b) => Number(a.emitters === 'floor') - Number(b.emitters === 'floor')),
    emittersApart: effectOf(
      tell('other-emitters'),
      { name: nameOf(cases[0]!), years: now },
      { name: nameOf(cases[1]!), years: turned },
      1,
    ),
    drivers,
  };
}

function* runSweep(shown: Case, now: AppraisedYears, sweep: Sweep): Generator<void, Driver> {
  const values = [...new Set([...sweep.values, sweep.now])].sort((a, b) => a - b);
  const wanted = listEffects(sweep, values);
  const stood = new Map<number, Stood>();
  for (const at of values) {
    // A line through the steps needs their middles only; what is said of them has its range.
    const draws = wanted.some(({ here, there }) => at === here || at === there) ? {} : { draws: 0 };
    const years = at === sweep.now ? now : appraiseYears({ ...shown, ...sweep.step(at), ...draws });
    stood.set(at, { name: sweep.nameOf(at), years });
    yield;
  }
  return {
    name: sweep.name,
    now: sweep.now,
    points: values.map((at) => pointAt(at, stood.get(at)!.years.appraisal)),
    effects: wanted.map(({ title, here, there, times }) =>
      effectOf(title, stood.get(here)!, stood.get(there)!, times, sweep.source),
    ),
  };
}

function pointAt(at: number, appraisal: Appraisal): DriverPoint {
  return { at, costPence: findSideBySide(appraisal).pump.cost.value, factor: appraisal.machine.whole.value };
}

function emitterCase(
  emitters: EmitterCase['emitters'],
  flowC: number,
  now: boolean,
  appraisal: Appraisal,
): EmitterCase {
  return { emitters, flowC, now, cost: findSideBySide(appraisal).pump.cost, factor: appraisal.machine.whole.value };
}

/** The other emitters at the flow that is usual for them. A typed factor moves with the flow; one worked out knows both. */
function emitterStep({ household, whatIf }: Case, emitters: EmitterCase['emitters'], flowC: number): Step {
  const { machine } = household;
  if (machine.way !== 'full') return { whatIf: { ...whatIf, flowC } };
  const { flowC: _, ...rest } = whatIf;
  return { household: { ...household, machine: { ...machine, emitters, flowC: moved(flowC) } }, whatIf: rest };
}
