/** What is said of a sheet that fits no layout, and what would help. */
import type { Wording } from '../../model/shapes/told.ts';
import { listNames, type RemarkBook } from '../terms/remark-book.ts';
import { lacksYear } from './date-parts.ts';
import { isOtherFuel, plainWords } from './headings.ts';
import type { Sheet } from './sheet.ts';
import { namedLevel } from './tank-level.ts';
import { columnName } from './value-cells.ts';
import { DEGREE_DAYS } from './vocabulary.ts';

/** Says why a sheet fits no layout. @param reason why the layout that fits best fits no better */
export function remarkNoFit(sheet: Sheet, reason: Wording, book: RemarkBook): void {
  const columns = listNames(sheet.columns.map((c) => columnName(sheet, c.index)));
  const isOfDegreeDays = (text: string) => DEGREE_DAYS.test(plainWords(text));
  const other = sheet.columns.find(({ heading }) => isOtherFuel(plainWords(heading)));
  const extreme = sheet.columns.find(({ meaning: { role }, numbers }) => /^(max|min)imum$/.test(role) && numbers > 0);
  const tank = namedLevel(sheet);
  if (other) book.add('other-fuel', 'refusal', { column: columnName(sheet, other.index) });
  else if (sheet.columns.some(({ heading }) => isOfDegreeDays(heading)) || isOfDegreeDays(sheet.fileName))
    book.add('degree-days', 'refusal');
  else if (sheet.dateColumn < 0 && lacksYear(sheet.table)) book.add('no-year', 'refusal');
  else if (sheet.firstRow >= sheet.table.rowCount) book.add('no-rows', 'refusal', { found: columns });
  else if (extreme && sheet.dateColumn >= 0)
    book.add('weather-extreme-only', 'refusal', { column: columnName(sheet, extreme.index) });
  else if (tank && sheet.dateColumn >= 0) book.add('tank-level', 'refusal', { column: columnName(sheet, tank.index) });
  else if (sheet.columns.length < 2) book.add('no-table', 'refusal');
  else if (sheet.dateColumn < 0) book.add('no-dates', 'refusal', { found: columns });
  else book.add('no-shape-fits', 'refusal', { found: columns, expectedTold: reason });
}
