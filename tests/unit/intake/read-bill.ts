/** A bill of lines on one page, each with its amount at the right, read as a home in Britain has it. */
import { type PlacedText, writePdf } from '../../../sample-bills/write-pdf.ts';
import { intakeContext } from '../../../src/desk/take-in.ts';
import type { IntakeChoices } from '../../../src/intake/intake.ts';
import { readPaper } from '../../../src/intake/read-paper.ts';

export type Line = readonly [label: string, amount?: string];

export function setLines(lines: readonly Line[]): PlacedText[] {
  return lines.flatMap(([label, amount], i) => {
    const at = { y: 60 + i * 20, size: 11 };
    return [{ text: label, x: 50, ...at }, ...(amount === undefined ? [] : [{ text: amount, x: 480, ...at }])];
  });
}
export const context = intakeContext('Europe/London', '2026-11-25');
export const read = async (bytes: Uint8Array, choices: IntakeChoices = {}) =>
  (await readPaper('bill.pdf', bytes, choices, context)).preview;
export const readLines = (lines: readonly Line[], choices: IntakeChoices = {}) =>
  read(writePdf([setLines(lines)]), choices);
