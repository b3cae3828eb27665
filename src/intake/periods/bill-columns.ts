/** The columns of a bill beside its energy: found by what their words say, named where nothing is made of them. */

import { meteredUnits } from '../../model/bill/energy.ts';
import { tell } from '../../model/shapes/told.ts';
import type { ShapeInput } from '../importer/shape.ts';
import type { BillPart } from '../layout/bill-headings.ts';
import { registerWord } from '../layout/bill-headings.ts';
import { type ColumnFacts, isNumberColumn } from '../layout/column-facts.ts';
import { mayBeMoney } from '../layout/column-words.ts';
import { plainWords } from '../layout/headings.ts';
import { quantityColumns } from '../layout/quantity-columns.ts';
import type { Dates } from '../layout/read-dates.ts';
import type { Sheet } from '../layout/sheet.ts';
import { isColumnOfUnits } from '../layout/stated-energy.ts';
import { columnName, readValues } from '../layout/value-cells.ts';
import { PART_OF } from '../layout/vocabulary.ts';
import { listNames, type RemarkBook } from '../terms/remark-book.ts';
import { isVolumeOfGas } from '../terms/units.ts';

/** Columns of numbers that say one thing of a bill. */
export const billPartColumns = (sheet: Sheet, part: BillPart): ColumnFacts[] =>
  sheet.columns.filter((c) => c.meaning.bill === part && isNumberColumn(c));

/** A column without a register's word is that of the only register. */
export const isOfRegister = (column: ColumnFacts, register: string | undefined): boolean =>
  (registerWord(plainWords(column.heading)) ?? register) === register;

/** Gas by volume beside its energy in kWh: one use in two units. */
export function volumesBeside(sheet: Sheet): ColumnFacts[] {
  const numbers = sheet.columns.filter((c) => isNumberColumn(c) && c.meaning.role === 'value');
  const inKWh = numbers.some((c) => c.meaning.unit === 'kWh' && (c.meaning.carrier ?? 'gas') === 'gas');
  return inKWh ? numbers.filter((c) => c.meaning.unit !== undefined && isVolumeOfGas(c.meaning.unit)) : [];
}

export interface Readings {
  readonly opening: Float64Array;
  readonly closing: Float64Array;
}

/** Both readings of each row, where the column is the closing one and another has the opening. */
export function readingsOf(
  sheet: Sheet,
  closing: ColumnFacts,
  dates: Dates,
  decimal: '.' | ',',
  book: RemarkBook,
): Readings | undefined {
  if (closing.meaning.bill !== 'closing') return undefined;
  const register = registerWord(plainWords(closing.heading));
  const opening = billPartColumns(sheet, 'opening').find((c) => isOfRegister(c, register));
  if (!opening) return undefined;
  const values = (column: ColumnFacts) =>
    readValues(sheet, column.index, dates.rows, dates.count, decimal, tell('meter-reading'), book);
  return { opening: values(opening), closing: values(closing) };
}

/** What was used between two readings, in the meter's unit; NaN where one is missing. */
export const valuesBetween = ({ opening, closing }: Readings): Float64Array =>
  closing.map((after, i) =>
    Number.isNaN(after) || Number.isNaN(opening[i]!)
      ? Number.NaN
      : meteredUnits({ name: 'meter', opening: opening[i]!, closing: after })!,
  );

/** Of what is left out all is named. */
const LONGEST_ACCOUNT = 400;

/** Names the columns that nothing was made of. Amounts left out for others are named already. */
export function remarkUnread({ sheet, choices, book }: ShapeInput, used: readonly (number | undefined)[]): void {
  const best = sheet.columns[used.find((index) => index !== undefined && index > 0) ?? 0]!;
  const named =
    choices.columns?.value === undefined ? quantityColumns(sheet, used).filter((c) => !mayBeMoney(c, best)) : [];
  const unread = sheet.columns.filter(
    (c) =>
      c.heading !== '' &&
      !c.isOtherMoney &&
      c.missing < c.sampled &&
      !isColumnOfUnits(c) &&
      !used.includes(c.index) &&
      !named.includes(c) &&
      !book.has('cost-of-several', columnName(sheet, c.index)) &&
      !['index', 'calorific'].includes(c.meaning.role) &&
      // Of a part it is known what it means.
      !(c.meaning.role === 'beside' && PART_OF.test(plainWords(c.heading))),
  );
  if (unread.length === 0) return;
  const found = listNames(
    unread.map((c) => columnName(sheet, c.index)),
    LONGEST_ACCOUNT,
  );
  book.add('columns-not-understood', 'note', { found, count: unread.length });
}
