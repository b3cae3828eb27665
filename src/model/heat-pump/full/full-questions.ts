/** What has to be asked about a machine's worked-out year, as data; the sentences are in `words`. */
import type { Question } from '../../shapes/appraisal.ts';
import type { Household } from '../../shapes/household.ts';
import type { FieldFactor } from '../../shapes/reference.ts';
import type { Settled } from './settle.ts';
import type { FullYear } from './year.ts';

export type FullQuestionCode =
  | 'points-assumed'
  | 'points-bent'
  | 'brine-too-cold'
  | 'capacity-short'
  | 'full-above-field'
  | 'array-depth-refused';

/** Entering brine below this wants asking about. MIS 3005-D designs for 0 °C, from memory. */
const LEAST_BRINE_C = 0;
/** Resistance beyond this share of the heat wants asking about. A judgement. */
const MUCH_BACKUP = 0.01;

/** `points-assumed`, `points-bent`, `brine-too-cold`, `capacity-short`, `full-above-field`, and what the source had to refuse. */
export function askAboutFull(
  { machine }: Household,
  settled: Settled,
  full: FullYear,
  whole: number,
  field: FieldFactor,
): Question[] {
  const questions: Question[] = [...settled.questions];
  const ask = (code: FullQuestionCode, weight: Question['weight'], where: string, data: Question['data']) =>
    questions.push({ code, weight, stage: 'machine', field: where, data });
  if (!machine.full?.ratedPoints) ask('points-assumed', 'question', 'machine.full.ratedPoints', {});
  if (settled.bent) ask('points-bent', 'question', 'machine.full.ratedPoints', {});
  if (machine.source === 'ground' && full.coldestSourceC < LEAST_BRINE_C) {
    ask('brine-too-cold', 'question', 'machine.full.ground', { coldestC: full.coldestSourceC });
  }
  const typedShare = machine.backupShare?.value ?? 0;
  if (full.backupShare > typedShare + MUCH_BACKUP) {
    ask('capacity-short', 'question', 'machine.full.capacityKW', { share: full.backupShare });
  }
  const { low, middle, high } = field;
  if (whole > high) ask('full-above-field', 'question', 'machine.full', { reckoned: whole, low, middle, high });
  return questions;
}
