/** Says of each row without a date what it is: totals, headings again, a last row cut off, or a row we cannot read. */

import { countAsNumber } from '../numbers/read-number.ts';
import { ROWS_A_STEP } from '../terms/progress.ts';
import type { RemarkBook } from '../terms/remark-book.ts';
import { cellCount, cellText, rowTexts } from '../text/table.ts';
import type { Dates } from './read-dates.ts';
import type { Sheet } from './sheet.ts';
import { TOTALS } from './vocabulary.ts';

export function explainStrays(sheet: Sheet, dates: Dates, book: RemarkBook, onStep?: () => void): void {
  const { table } = sheet;
  const columnName = sheet.columns[sheet.dateColumn]?.heading || `column ${sheet.dateColumn + 1}`;
  const heading = sheet.headingRow >= 0 ? rowTexts(table, sheet.headingRow).join('\u0000') : undefined;
  let undated = 0;
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
      book.tally('date-impossible', 'note', { row: line, column: columnName, found });
    } else if (heading !== undefined && cells.join('\u0000') === heading)
      book.tally('heading-repeated', 'note', { row: line });
    else if (stray.isSum || cells.some((cell) => TOTALS.test(cell)))
      book.tally('totals-skipped', 'note', { row: line, found: text });
    else if (isLast && table.openEnd && cellCount(table, row) < sheet.columns.length)
      book.add('row-cut-off', 'note', { row: line, found: text });
    else {
      if (cells.some((cell) => countAsNumber(cell) >= 0)) undated++;
      if (found === '' || cells.length < 2) book.tally('row-skipped', 'note', { row: line, found: text });
      else book.tally('date-unreadable', 'note', { row: line, column: columnName, found });
    }
  }
  const early = afterEarly - sheet.firstRow;
  if (early > 0) book.add('rows-early', 'note', { row: table.lineOfRow[sheet.firstRow]!, count: early });
  if (undated * 2 > dates.count && dates.count > 0) book.add('rows-undated', 'refusal', { count: undated });
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
