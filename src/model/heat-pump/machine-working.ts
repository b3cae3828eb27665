/** The sums behind the machine's factors. */
import type { Demand, Figure } from '../shapes/appraisal.ts';
import type { Boundary } from '../shapes/household.ts';
import { type Told, tell, type Wording } from '../shapes/told.ts';
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
      name: tell('factor-for-rooms'),
      value: spaceAsGiven.value,
      grade: spaceAsGiven.grade,
      origin: spaceAsGiven.origin,
    });
    inputs.push({
      name: tell('water-over-rooms'),
      value: factor.value / spaceAsGiven.value,
      grade: 'assumed',
      origin: factor.origin,
    });
  } else {
    const given = use === 'rooms' ? spaceAsGiven : factor;
    inputs.push({ name: tell('factor-as-given'), value: given.value, grade: given.grade, origin: given.origin });
  }
  if (moved) {
    inputs.push({
      name: tell('flow-held-for'),
      value: flow.givenC,
      unit: '°C',
      grade: flow.given ? 'estimated' : 'assumed',
      origin: tell(flow.given ? 'typed-flow' : 'usual-for-emitters'),
    });
    inputs.push({
      name: tell('flow-now'),
      value: flow.designC,
      unit: '°C',
      grade: 'estimated',
      origin: tell('what-if'),
    });
  }
  if (isStepped) {
    const { title: name, result } = step.working;
    inputs.push({
      name,
      value: result.value,
      unit: tell('of-the-factor'),
      grade: 'estimated',
      origin: step.working.formula,
    });
  }
  inputs.push({ name: tell('boundary'), value: settled.boundary, grade: 'estimated', origin: SEPEMO });
  const formula = formulaOf(factor, moved);
  return {
    title: tell(use === 'rooms' ? 'room-factor' : 'water-factor'),
    formula: isStepped ? tell('stepped', { formula }) : formula,
    inputs,
    result: { value, unit: '' },
    source: sourceOf(factor, settled, moved),
    ...(isStepped ? { steps: [step.working] } : {}),
  };
}

function formulaOf(factor: SettledFactor, moved: boolean): Told {
  if (factor.from === 'derived') return tell('room-factor-by-ratio');
  const start = factor.from === 'field' ? 'field-mean' : 'as-given';
  return tell(moved ? `${start}-moved` : start);
}

function sourceOf(factor: SettledFactor, settled: SettledFactors, moved: boolean): Wording {
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
function electricityLines(parts: Pick<WholeParts, 'spaceKWh' | 'waterKWh' | 'extras' | 'space' | 'water'>) {
  const { space, water } = parts;
  return [
    line(tell('electricity-for-rooms'), parts.spaceKWh, space.grade, tell('rooms-by-factor')),
    line(tell('electricity-for-water'), parts.waterKWh, water.grade, tell('water-by-factor')),
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
    title: tell('whole-factor'),
    formula: tell('heat-by-electricity'),
    inputs: [
      line(tell('heat-for-rooms'), demand.space.value, demand.space.grade, tell('heat-needed-origin')),
      line(tell('heat-for-water'), demand.water.value, demand.water.grade, tell('heat-needed-origin')),
      ...(immersionKWh > 0 ? [line(tell('heat-of-immersion'), immersionKWh, 'assumed', tell('its-electricity'))] : []),
      ...electricityLines(parts),
    ],
    result: { value: parts.whole, unit: '' },
    source: SEPEMO,
    steps: [parts.space.working, parts.water.working, ...parts.extras.map((extra) => extra.working)],
  };
}
