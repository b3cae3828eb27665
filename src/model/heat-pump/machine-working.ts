/** The sums behind the machine's factors. */
import type { Demand, Figure } from '../shapes/appraisal.ts';
import type { Boundary } from '../shapes/household.ts';
import type { Wording } from '../shapes/told.ts';
import type { Working, WorkingInput } from '../shapes/working.ts';
import type { ExtraLine } from './extras.ts';
import type { FactorsAtMiddle } from './field-step.ts';
import { FLOW_SOURCE } from './flow.ts';
import type { SettledFactor, SettledFactors } from './settle-factors.ts';

const SEPEMO = 'SEPEMO-Build D4.2, Concept for evaluation of SPF, version 2.2, 2012';

/** How the factor in the middle of what homes get, `value`, comes from that of the design, `factor`. */
export function factorWorking(
  use: 'rooms' | 'hot water',
  value: number,
  factor: SettledFactor,
  { design: settled, step }: FactorsAtMiddle,
): Working {
  const { flow, spaceAsGiven } = settled;
  const isStepped = step !== null && value !== factor.value;
  const moved = use === 'rooms' && flow.designC !== flow.givenC;
  const inputs: WorkingInput[] = [];
  if (factor.from === 'derived') {
    inputs.push({
      name: 'Factor for rooms',
      value: spaceAsGiven.value,
      grade: spaceAsGiven.grade,
      origin: spaceAsGiven.origin,
    });
    inputs.push({
      name: 'Hot water over rooms',
      value: factor.value / spaceAsGiven.value,
      grade: 'assumed',
      origin: factor.origin,
    });
  } else {
    const given = use === 'rooms' ? spaceAsGiven : factor;
    inputs.push({ name: 'Factor as given', value: given.value, grade: given.grade, origin: given.origin });
  }
  if (moved) {
    inputs.push({
      name: 'Flow it holds for',
      value: flow.givenC,
      unit: '°C',
      grade: flow.given ? 'estimated' : 'assumed',
      origin: flow.given ? 'design flow temperature' : 'usual for these emitters',
    });
    inputs.push({ name: 'Flow now', value: flow.designC, unit: '°C', grade: 'estimated', origin: 'what if' });
  }
  if (isStepped) {
    const { title: name, result } = step.working;
    inputs.push({ name, value: result.value, unit: 'of the factor', grade: 'estimated', origin: step.working.formula });
  }
  inputs.push({ name: 'Boundary', value: settled.boundary, grade: 'estimated', origin: SEPEMO });
  return {
    title: `Seasonal factor for ${use}`,
    formula: `${formulaOf(factor, moved)}${isStepped ? ' × from the design to what homes get' : ''}`,
    inputs,
    result: { value, unit: '' },
    source: sourceOf(factor, settled, moved),
    ...(isStepped ? { steps: [step.working] } : {}),
  };
}

function formulaOf(factor: SettledFactor, moved: boolean): string {
  if (factor.from === 'derived') return 'factor for rooms × ratio of Carnot limits';
  const start = factor.from === 'field' ? 'mean or median of metered homes' : 'as given';
  return moved ? `${start} × 1.32 ^ ((flow it holds for − flow now) / 20)` : start;
}

function sourceOf(factor: SettledFactor, settled: SettledFactors, moved: boolean): string {
  if (moved) return FLOW_SOURCE;
  return factor.from === 'field' ? settled.field.source : SEPEMO;
}

export interface WholeParts {
  readonly spaceKWh: number;
  readonly waterKWh: number;
  readonly immersionKWh: number;
  readonly electricityKWh: number;
  readonly whole: number;
  readonly extras: readonly ExtraLine[];
  readonly demand: Demand;
  readonly space: Figure;
  readonly water: Figure;
  readonly boundary: Boundary;
}

/** Electricity by line, as inputs of a sum: rooms, hot water, then what stands outside the boundary. */
export function electricityLines(parts: Pick<WholeParts, 'spaceKWh' | 'waterKWh' | 'extras' | 'space' | 'water'>) {
  const { space, water } = parts;
  return [
    line('Electricity for rooms', parts.spaceKWh, space.grade, 'heat for rooms / factor for rooms'),
    line('Electricity for hot water', parts.waterKWh, water.grade, 'heat for hot water / factor for hot water'),
    ...parts.extras.map((extra) => line(extra.working.title, extra.kWh, extra.grade, extra.working.formula)),
  ];
}

const line = (name: Wording, value: number, grade: WorkingInput['grade'], origin: Wording): WorkingInput => ({
  name,
  value,
  unit: 'kWh',
  grade,
  origin,
});

export function wholeWorking(parts: WholeParts): Working {
  const { demand, immersionKWh } = parts;
  return {
    title: 'Factor for the whole house, as the meter sees it (H4)',
    formula: '(heat for rooms + heat for hot water + heat of the weekly immersion) / all electricity',
    inputs: [
      line('Heat for rooms', demand.space.value, demand.space.grade, 'heat needed'),
      line('Heat for hot water', demand.water.value, demand.water.grade, 'heat needed'),
      ...(immersionKWh > 0 ? [line('Heat of the weekly immersion', immersionKWh, 'assumed', 'its electricity')] : []),
      ...electricityLines(parts),
    ],
    result: { value: parts.whole, unit: '' },
    source: SEPEMO,
    steps: [parts.space.working, parts.water.working, ...parts.extras.map((extra) => extra.working)],
  };
}
