/** Which two factors are reckoned with, at which boundary, and how far the real ones may stray. */
import type { Question } from '../shapes/appraisal.ts';
import type { Boundary, Given, Household } from '../shapes/household.ts';
import type { FieldFactor, Reference } from '../shapes/reference.ts';
import { tell, type Wording } from '../shapes/told.ts';
import { designFlow, FLOW_SOURCE, factorAtFlow } from './flow.ts';
import { acceptFactor, askAboutFactors } from './machine-questions.ts';
import { waterToSpaceRatio } from './water-ratio.ts';

export type FactorFrom = 'typed' | 'derived' | 'field';
export interface SettledFactor extends Omit<Given<number>, 'origin'> {
  readonly origin: Wording;
  readonly from: FactorFrom;
}

export interface SettledFactors {
  readonly space: SettledFactor;
  readonly water: SettledFactor;
  readonly boundary: Boundary;
  readonly field: FieldFactor;
  /** Room factor before a changed flow temperature, and the flow it holds for. */
  readonly spaceAsGiven: SettledFactor;
  readonly flow: { readonly designC: number; readonly givenC: number; readonly given: boolean };
  readonly questions: readonly Question[];
}

const FIELD_BOUNDARY: Boundary = 'H4';
/** A figure without its boundary is most likely a declared SCOP, which lies nearest to H3. */
const UNNAMED_BOUNDARY: Boundary = 'H3';

/**
 * Factors [1] for rooms and hot water: as typed; hot water derived from the rooms where only those were typed; both
 * from the field where neither was. A field figure is for rooms and hot water together, so it stands for both.
 * A flow temperature other than the one designed for moves the room factor (`factorAtFlow`), never the hot water.
 */
export function settleFactors(machine: Household['machine'], reference: Reference, flowC?: number): SettledFactors {
  const questions: Question[] = [];
  const typedSpace = acceptFactor(machine.spaceFactor, 'machine.spaceFactor', questions);
  const typedWater = acceptFactor(machine.waterFactor, 'machine.waterFactor', questions);
  const field = reference.fieldFactor[machine.source];
  const design = designFlow(machine);
  const emitters = machine.emitters ?? 'radiators';
  const fromField: SettledFactor = { value: field.middle, grade: 'assumed', origin: field.source, from: 'field' };
  const spaceAsGiven: SettledFactor = typedSpace ? { ...typedSpace, from: 'typed' } : fromField;
  const ratio = waterToSpaceRatio(machine.source, design.flowC, emitters);
  const derived = Math.max(1, spaceAsGiven.value * ratio);
  const water = settleWater(typedWater, typedSpace !== undefined, fromField, {
    value: derived,
    grade: 'assumed',
    origin: tell('by-carnot', { ratio, flowC: design.flowC }),
    from: 'derived',
  });
  questions.push(...askAboutFactors(machine, typedSpace, typedWater, field, derived));
  const wantedC = flowC ?? design.flowC;
  return {
    space: atFlow(spaceAsGiven, design.flowC, wantedC),
    water,
    boundary: typedSpace || typedWater ? (machine.boundary ?? UNNAMED_BOUNDARY) : FIELD_BOUNDARY,
    field,
    spaceAsGiven,
    flow: { designC: wantedC, givenC: design.flowC, given: design.given },
    questions,
  };
}

function settleWater(
  typed: Given<number> | undefined,
  spaceTyped: boolean,
  fromField: SettledFactor,
  derived: SettledFactor,
): SettledFactor {
  if (typed) return { ...typed, from: 'typed' };
  return spaceTyped ? derived : fromField;
}

function atFlow(factor: SettledFactor, fromC: number, toC: number): SettledFactor {
  if (fromC === toC) return factor;
  const value = Math.max(1, factorAtFlow(factor.value, fromC, toC));
  const grade = factor.grade === 'assumed' ? 'assumed' : 'estimated';
  return {
    ...factor,
    value,
    grade,
    origin: tell('moved-flow', { origin: factor.origin, fromC, toC, source: FLOW_SOURCE }),
  };
}
