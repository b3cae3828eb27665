/** The grades in words. Their shapes (filled, half-filled, open, dashed circle) are drawn by the charts. */
import type { Grade } from '../model/shapes/working.ts';
import { phrase, say } from './say.ts';

/** A stage or a field that has nothing yet is `missing`. */
export type ShownGrade = Grade | 'missing';

const NAMES: Readonly<Record<ShownGrade, string>> = {
  measured: phrase('measured'),
  estimated: phrase('estimated'),
  assumed: phrase('assumed'),
  missing: phrase('not there yet'),
};
const MEANINGS: Readonly<Record<ShownGrade, string>> = {
  measured: phrase('Read from a meter, a bill or a rating plate.'),
  estimated: phrase('Worked out from something that was measured.'),
  assumed: phrase('Taken from a table, since nobody has told us.'),
  missing: phrase('Not there yet.'),
};

export function gradeName(grade: ShownGrade): string {
  return say(NAMES[grade]);
}
export function gradeMeaning(grade: ShownGrade): string {
  return say(MEANINGS[grade]);
}
