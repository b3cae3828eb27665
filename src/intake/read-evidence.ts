/** Reads whatever is handed over: a file at once, a paper after its words have been found. */
import type { IntakeChoices, IntakeContext, IntakeResult } from './intake.ts';
import { isPaper } from './paper/gather-sheets.ts';
import { readFile } from './read-file.ts';
import { readPaper } from './read-paper.ts';

export const readEvidence = (
  fileName: string,
  bytes: Uint8Array,
  choices: IntakeChoices,
  context: IntakeContext,
): IntakeResult | Promise<IntakeResult> =>
  isPaper(bytes) ? readPaper(fileName, bytes, choices, context) : readFile(fileName, bytes, choices, context);
