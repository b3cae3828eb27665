/** A file that is no table of text: it is recognised by its first bytes and read as a whole. */
import type { IntakeChoices, IntakeContext } from '../terms/choices.ts';
import type { IntakePreview } from '../terms/preview.ts';
import type { RemarkBook } from '../terms/remark-book.ts';
import type { ShapeReading } from './shape.ts';

export interface FormInput {
  readonly fileName: string;
  readonly bytes: Uint8Array;
  readonly choices: IntakeChoices;
  readonly context: IntakeContext;
  readonly book: RemarkBook;
}

export interface FormReading extends ShapeReading {
  /** Columns and first rows as a person would write them down, for the table in the preview. */
  readonly columns: readonly string[];
  readonly rows: IntakePreview['rows'];
  /** What the file says of itself, where that may tell what its data are. */
  readonly titles?: string;
}

export interface IntakeForm {
  readonly name: string;
  readonly reason: string;
  matches(bytes: Uint8Array): boolean;
  /** Undefined where it is none of this form after all. */
  read(input: FormInput): FormReading | undefined;
}

export const nothingOfForm = (choices: IntakeChoices): FormReading => ({
  choices,
  series: [],
  intervals: [],
  firstDays: [],
  dataRows: 0,
  columns: [],
  rows: [],
});

/** First bytes as plain letters, with the marks and noughts of UTF-8 and UTF-16 taken out. */
export function firstLetters(bytes: Uint8Array, length: number): string {
  let letters = '';
  for (let i = 0; i < Math.min(bytes.length, length); i++) {
    const b = bytes[i]!;
    if (b >= 32 && b < 127) letters += String.fromCharCode(b);
    else if (b === 10 || b === 13 || b === 9) letters += ' ';
  }
  return letters.trimStart();
}
