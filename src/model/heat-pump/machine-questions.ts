/** What has to be asked about the machine's figures, as data; the sentences are in `words`. */
import type { Question } from '../shapes/appraisal.ts';
import type { Given, Household } from '../shapes/household.ts';
import type { FieldFactor } from '../shapes/reference.ts';
import { CUSTOMARY_FLOW_C, factorAtFlow } from './flow.ts';

type Machine = Household['machine'];

/** A heat pump gives at least the electricity it takes, so that no seasonal factor lies below this. */
export const LEAST_FACTOR = 1;
const MOST_FACTOR = 8;

const isPossible = (factor: number) => Number.isFinite(factor) && factor >= LEAST_FACTOR && factor <= MOST_FACTOR;

export type MachineQuestionCode =
  | 'factor-refused'
  | 'factor-from-field'
  | 'factor-above-field'
  | 'factor-above-flow'
  | 'boundary-not-named'
  | 'water-factor-derived'
  | 'water-factor-above-space';

/** The factor if it lies between 1 and 8; else none, and the reason as a question. */
export function acceptFactor(
  given: Given<number> | undefined,
  field: 'machine.spaceFactor' | 'machine.waterFactor',
  questions: Question[],
): Given<number> | undefined {
  if (!given || isPossible(given.value)) return given;
  questions.push({
    code: 'factor-refused' satisfies MachineQuestionCode,
    weight: 'refusal',
    stage: 'machine',
    field,
    data: { found: given.value, low: LEAST_FACTOR, high: MOST_FACTOR },
  });
  return undefined;
}

/**
 * Questions about figures that can be reckoned with, yet want asking:
 * `factor-above-field`, `factor-above-flow`, `boundary-not-named`, `factor-from-field`, `water-factor-derived`, `water-factor-above-space`.
 */
export function askAboutFactors(
  machine: Machine,
  space: Given<number> | undefined,
  water: Given<number> | undefined,
  field: FieldFactor,
  derivedWater: number,
): Question[] {
  const questions: Question[] = [];
  const ask = (code: MachineQuestionCode, weight: Question['weight'], where: string, data: Question['data']) =>
    questions.push({ code, weight, stage: 'machine', field: where, data });
  const { low, middle, high } = field;
  if (!space) ask('factor-from-field', 'question', 'machine.spaceFactor', { low, middle, high });
  if (space && space.value > high && space.grade !== 'measured') {
    ask('factor-above-field', 'question', 'machine.spaceFactor', { typed: space.value, low, middle, high });
  } else if (space && machine.flowC && space.grade !== 'measured') {
    // The field's homes are taken to be at the customary flow of radiators: no source says at which they are.
    const flowC = machine.flowC.value;
    const highAtFlow = factorAtFlow(high, CUSTOMARY_FLOW_C.radiators, flowC);
    if (space.value > highAtFlow) {
      ask('factor-above-flow', 'question', 'machine.spaceFactor', { typed: space.value, flowC, high: highAtFlow });
    }
  }
  if ((space || water) && !machine.boundary) ask('boundary-not-named', 'question', 'machine.boundary', { taken: 'H3' });
  if (space && !water) {
    ask('water-factor-derived', 'note', 'machine.waterFactor', { typed: space.value, derived: derivedWater });
  }
  if (space && water && water.value > space.value) {
    ask('water-factor-above-space', 'question', 'machine.waterFactor', { space: space.value, water: water.value });
  }
  return questions;
}
