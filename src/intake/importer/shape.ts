/** What a shape of file has to answer. One shape, one file, registered in `shapes/index.ts`. */

import type { Series } from '../../model/shapes/evidence.ts';
import type { Wording } from '../../model/shapes/told.ts';
import type { Sheet } from '../layout/sheet.ts';
import type { IntakeChoices, IntakeContext } from '../terms/choices.ts';
import type { IntervalDays } from '../terms/preview.ts';
import type { RemarkBook } from '../terms/remark-book.ts';

export interface Fit {
  /** 0 to 1; below a third it is not offered by itself. */
  readonly fit: number;
  /** Told, or a text of words' tables. */
  readonly reason: Wording;
}

export interface ShapeInput {
  readonly sheet: Sheet;
  readonly choices: IntakeChoices;
  readonly context: IntakeContext;
  readonly book: RemarkBook;
}

export interface ShapeReading {
  readonly choices: IntakeChoices;
  readonly series: readonly Series[];
  readonly intervals: readonly IntervalDays[];
  readonly firstDays: readonly { readonly at: string; readonly value: number | null }[];
  readonly dataRows: number;
  /** Columns of the amounts; absent where the whole sheet is one record. */
  readonly valueColumns?: readonly number[];
  /** Columns of which something beside the amounts was made, such as the readings and prices of bills. */
  readonly detailColumns?: readonly number[];
}

export interface IntakeShape {
  readonly name: string;
  detect(sheet: Sheet): Fit;
  parse(input: ShapeInput): ShapeReading;
}

export const nothingRead = (choices: IntakeChoices, dataRows: number): ShapeReading => ({
  choices,
  series: [],
  intervals: [],
  firstDays: [],
  dataRows,
});
