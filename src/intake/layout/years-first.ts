/** Dates of two digits thrice, "23-01-24": the year stands last, unless the rows are in order only where it stands first. */
import { yearOf } from '../../model/calendar/civil.ts';
import type { IntakeChoices, IntakeContext } from '../terms/choices.ts';
import type { RemarkBook } from '../terms/remark-book.ts';
import { rewriteCells } from '../text/rewrite-cells.ts';
import { cellText } from '../text/table.ts';
import { isDateColumn } from './column-facts.ts';
import type { Sheet } from './sheet.ts';
import { columnName } from './value-cells.ts';

const DATE = /^(\d\d)([-./])(\d\d)\2(\d\d)(?!\d)/;
const SAMPLE_ROWS = 400;
/** Fewer rows are in any order by chance. */
const LEAST_ROWS = 3;
/** Bills and readings of a home are not older. A judgement. */
const EARLIEST = 2010;
/** Years by which the one reading is of late where the other is of long ago. A judgement. */
const FAR_LATER = 5;

/**
 * The sheet with such years written out; asked where both orders make sense and
 * a dash, as the year first has it, parts them, or the year last would lie far back.
 */
export function writeOutYears(
  sheet: Sheet,
  choices: IntakeChoices,
  { today }: Pick<IntakeContext, 'today'>,
  book: RemarkBook,
): Sheet {
  const { table, firstRow, dateColumn } = sheet;
  const rows: RegExpExecArray[] = [];
  const end = Math.min(table.rowCount, firstRow + SAMPLE_ROWS);
  for (let row = firstRow; row < end && dateColumn >= 0; row++) {
    const match = DATE.exec(cellText(table, row, dateColumn));
    if (match) rows.push(match);
    else if (row - firstRow > LEAST_ROWS && rows.length === 0) return sheet;
  }
  if (rows.length < LEAST_ROWS || rows.length < (end - firstRow) * 0.8) return sheet;
  const [first, mark, last] = [numbersAt(rows, 1), rows[0]![2]!, numbersAt(rows, 4)];
  const month = numbersAt(rows, 3);
  const asFirst = order(first, month, last);
  const asLast = order(last, month, first) || order(last, first, month);
  const likely = (years: readonly number[]) =>
    years.every((year) => year + 2000 >= EARLIEST && year + 2000 <= yearOf(today));
  if (!asFirst || !likely(first)) return sheet;
  const isCertain = !asLast || !likely(last);
  const later = Math.max(...first) - Math.max(...last);
  const mayBe = later >= FAR_LATER || (mark === '-' && later > -FAR_LATER);
  if (!isCertain && !mayBe && choices.yearFirst === undefined) return sheet;
  const isFirst = choices.yearFirst ?? isCertain;
  const found = { column: columnName(sheet, dateColumn), row: table.lineOfRow[firstRow]!, found: rows[0]![0] };
  if (!isCertain && choices.yearFirst === undefined) book.add('year-first-asked', 'question', found);
  if (!isFirst) return sheet;
  if (choices.yearFirst === undefined) book.add('year-first', 'note', found);
  const columns = sheet.columns.filter(isDateColumn).map(({ index }) => index);
  return {
    ...sheet,
    table: rewriteCells(table, (row, column) => {
      const cell = row >= firstRow && columns.includes(column) ? cellText(table, row, column) : '';
      return DATE.test(cell) ? [cell.replace(DATE, '20$1-$3-$4')] : undefined;
    }),
  };
}

const numbersAt = (rows: readonly RegExpExecArray[], group: number): number[] => rows.map((row) => Number(row[group]));

/** Whether all are dates and follow each other, forwards or back. */
function order(years: readonly number[], months: readonly number[], days: readonly number[]): boolean {
  if (months.some((month) => month < 1 || month > 12) || days.some((day) => day < 1 || day > 31)) return false;
  const all = years.map((year, i) => (year * 100 + months[i]!) * 100 + days[i]!);
  return [1, -1].some((way) => all.every((day, i) => i === 0 || (day - all[i - 1]!) * way >= 0));
}
