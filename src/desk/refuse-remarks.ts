/** Refuses a file of which intake says that it cannot be taken, with intake's own sentence. */
import type { IntakePreview } from '../intake/intake.ts';
import { withoutPeople } from '../intake/layout/without-people.ts';
import type { Remark } from '../model/shapes/evidence.ts';
import { answerSentence } from '../words/answers.ts';
import { remarkSentence } from '../words/remarks.ts';
import { say } from '../words/say.ts';
import { DeskError } from './desk-error.ts';
import { remarkWithoutPeople } from './mask-people.ts';
import { ManyRefusals } from './parse-household.ts';

const whereOf = (remark: Remark): string =>
  [
    remark.file,
    ...(remark.row === undefined ? [] : [say('line {row}', { row: String(remark.row) })]),
    ...(remark.column === undefined ? [] : [say('column {column}', { column: remark.column })]),
  ].join(', ');

/** Refuses to keep a file while a question of intake is open; each with how it is answered outside the window. */
export function refuseQuestions(
  remarks: readonly Remark[],
  preview?: IntakePreview,
  people: readonly string[] = [],
): void {
  const [first, ...others] = remarks
    .filter(({ weight }) => weight === 'question')
    .map((remark) => ({
      code: remark.code,
      message: remarkSentence(remarkWithoutPeople(remark, people)),
      where: whereOf(remarkWithoutPeople(remark, people)),
      // A heading that is the key of an answer stands there as it is written.
      remedy: answerSentence(remark, preview),
    }));
  if (first) throw new ManyRefusals([first, ...others]);
}

/**
 * `understood` is whether anything usable came out; nothing usable is a refusal even without a remark that says so.
 * `people` are words of the file that are somebody's.
 */
export function refuseRemarks(
  remarks: readonly Remark[],
  fileName: string,
  understood: boolean,
  people: readonly string[] = [],
): void {
  const found = remarks.find(({ weight }) => weight === 'refusal');
  if (found) {
    const refusal = remarkWithoutPeople(found, people);
    throw new DeskError({ code: refusal.code, message: remarkSentence(refusal), where: whereOf(refusal) });
  }
  if (!understood) {
    const own = withoutPeople(fileName, people);
    throw new DeskError({
      code: 'not-understood',
      message: say('Nothing in {fileName} could be read as readings, bills, weather or a tariff.', { fileName: own }),
      where: own,
      remedy: say('Look at the columns in the preview, and choose the type of file, the unit or the columns there.'),
    });
  }
}
