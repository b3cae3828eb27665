/** Two tables side by side on one sheet: a column of dates, an empty column, and dates that go on otherwise. */

import { cellText } from '../text/table.ts';
import { type ColumnFacts, isDateColumn, isNumberColumn } from './column-facts.ts';
import type { Sheet } from './sheet.ts';

const SAMPLE_ROWS = 300;

/** Whether a second table stands beside the first, whose rows are of other days. */
export function hasTableBeside({ columns, table, firstRow, dateColumn }: Sheet): boolean {
  const isEmpty = (c: ColumnFacts) => c.heading === '' && c.missing === c.sampled;
  const gap = columns.find((c) => c.index > dateColumn && isEmpty(c));
  const other = gap && columns.find((c) => c.index > gap.index && isDateColumn(c));
  if (!other || dateColumn < 0) return false;
  const hasNumbers = (from: number, before: number) =>
    columns.some((c) => c.index > from && c.index < before && isNumberColumn(c));
  if (!hasNumbers(dateColumn, gap.index) || !hasNumbers(other.index, columns.length)) return false;
  const end = Math.min(table.rowCount, firstRow + SAMPLE_ROWS);
  for (let row = firstRow; row < end; row++)
    if (cellText(table, row, dateColumn) !== cellText(table, row, other.index)) return true;
  return false;
}
