/** Says of each row without a date what it is: totals, headings again, a last row cut off, or a row we cannot read. */

import { isTemperature, type Series } from '../../model/shapes/evidence.ts';
import { sumOf } from '../../model/units/sums.ts';
import { countAsNumber } from '../numbers/read-number.ts';
import type { IntakeChoices } from '../terms/choices.ts';
import { ROWS_A_STEP } from '../terms/progress.ts';
import { type RemarkBook, tellNumber } from '../terms/remark-book.ts';
import { cellCount, cellText, rowTexts } from '../text/table.ts';
import { saysCorrection } from './corrections.ts';
import { askTotal } from './doubt-total.ts';
import type { Dates } from './read-dates.ts';
import type { Sheet } from './sheet.ts';
import { columnName } from './value-cells.ts';
import { TOTALS } from './vocabulary.ts';

/** More unread rows than this share are asked about rather than noted. A judgement. */
const MOST_UNREAD = 0.04;

/** Asks where more than a few rows gave no amount in the worst of the columns taken; where all are one record, in all cells. */
export function askUnread(
  sheet: Sheet,
  { dataRows, valueColumns }: { readonly dataRows: number; readonly valueColumns?: readonly number[] },
  choices: IntakeChoices,
  book: RemarkBook,
): void {
  const first = book.list().find(({ code }) => code === 'number-unreadable');
  if (!first || choices.leaveUnread) return;
  const columns = valueColumns ?? sheet.columns.map(({ index }) => index);
  const unread = columns.map((index) => book.counted('number-unreadable', columnName(sheet, index)));
  const count = valueColumns ? Math.max(...unread) : sumOf(unread);
  const all = valueColumns ? dataRows : dataRows * columns.length;
  const { row, found } = first;
  if (count > all * MOST_UNREAD) book.add('unread-asked', 'question', { row, found, count, ...tellNumber(all) });
}

/** Values that replaced others of the same time are asked about where they move the sum by more than this share. A judgement. */
const MOST_REPLACED = 0.01;

/** Asks where rows of one time differ by so much that which of them is right matters. */
export function askReplaced(series: readonly Series[], choices: IntakeChoices, book: RemarkBook): void {
  const replaced = book.list().filter(({ code }) => code === 'duplicate-different');
  const effectKWh = sumOf(replaced.map((one) => Math.abs(one.effectKWh ?? 0)));
  const totals = series.filter(({ carrier }) => !isTemperature(carrier)).map(({ total }) => Math.abs(total));
  const [first] = replaced;
  if (!first || choices.leaveUnread || book.refused() || !totals.some((total) => effectKWh > total * MOST_REPLACED))
    return;
  const { row, from } = first;
  book.add('unread-doubled-asked', 'question', { row, ...(from === undefined ? {} : { from }), effectKWh });
}

export function explainStrays(
  sheet: Sheet,
  dates: Dates,
  choices: IntakeChoices,
  book: RemarkBook,
  onStep?: () => void,
): void {
  const { table } = sheet;
  const column = columnName(sheet, sheet.dateColumn);
  const heading = sheet.headingRow >= 0 ? rowTexts(table, sheet.headingRow).join('\u0000') : undefined;
  let undated = 0;
  let isCorrected = false;
  let firstUndated: { row: number; found: string } | undefined;
  let afterEarly = sheet.firstRow;
  for (const [i, stray] of dates.strays.entries()) {
    if (i % ROWS_A_STEP === 0) onStep?.();
    const { row } = stray;
    const line = table.lineOfRow[row]!;
    const found = cellText(table, row, sheet.dateColumn).slice(0, 60);
    const cells = rowTexts(table, row);
    const text = cells
      .filter((cell) => cell !== '')
      .join(' ')
      .slice(0, 60);
    const isLast = row === table.rowCount - 1;
    // Weather stations have been read for centuries; a lone old year is a slip.
    if (stray.isEarly && row === afterEarly) {
      afterEarly++;
    } else if (stray.impossible) {
      undated++;
      firstUndated ??= { row: line, found };
      book.tally('date-impossible', 'note', { row: line, column, found });
    } else if (heading !== undefined && cells.join('\u0000') === heading)
      book.tally('heading-repeated', 'note', { row: line });
    else if (stray.isSum || cells.some((cell) => TOTALS.test(cell)))
      book.tally('totals-skipped', 'note', { row: line, found: text });
    else if (isLast && table.openEnd && cellCount(table, row) < sheet.columns.length)
      book.add('row-cut-off', 'note', { row: line, found: text });
    else {
      if (cells.some((cell) => !Number.isNaN(countAsNumber(cell)))) {
        undated++;
        isCorrected ||= saysCorrection(text);
        firstUndated ??= { row: line, found: text };
      }
      if (found === '' || cells.length < 2) book.tally('row-skipped', 'note', { row: line, found: text });
      else book.tally('date-unreadable', 'note', { row: line, column, found });
    }
  }
  askTotal(sheet, dates, choices, book);
  const early = afterEarly - sheet.firstRow;
  if (early > 0) book.add('rows-early', 'note', { row: table.lineOfRow[sheet.firstRow]!, count: early });
  const all = dates.count + undated;
  if (dates.count === 0) return;
  if (undated * 2 > dates.count) book.add('rows-undated', 'refusal', { count: undated });
  // What corrects others is asked about however many they are.
  else if ((isCorrected || undated > all * MOST_UNREAD) && !choices.leaveUnread)
    book.add('unread-asked', 'question', { ...firstUndated, count: undated, ...tellNumber(all) });
}

export function remarkPreamble(sheet: Sheet, book: RemarkBook): void {
  const first = sheet.preamble[0];
  if (!first) return;
  book.add('preamble-skipped', 'note', {
    row: first.line,
    found: first.text.slice(0, 60),
    count: new Set(sheet.preamble.map(({ line }) => line)).size,
  });
}
