/** Order of day and month, decided from every date of a column, since one date alone often cannot tell. */
import { cellAt, type Table } from '../text/table.ts';
import { readStamp } from './read-stamp.ts';
import { createStampReader } from './stamp-reader.ts';

export interface DayFirstEvidence {
  /** Dates whose first number is over 12, and whose second is. */
  readonly dayFirst: number;
  readonly monthFirst: number;
  /** Dates that can be read both ways and differ. */
  readonly either: number;
  readonly rowOfDayFirst: number;
  readonly rowOfMonthFirst: number;
  readonly rowOfEither: number;
}

/** Rows looked at before it is believed that the column is in year-month-day order throughout. */
const CLEAR_ROWS = 50;

export function weighDayFirst(
  table: Table,
  column: number,
  firstRow: number,
  lastRow = table.rowCount,
): DayFirstEvidence {
  const reader = createStampReader();
  let dayFirst = 0;
  let monthFirst = 0;
  let either = 0;
  let rowOfDayFirst = -1;
  let rowOfMonthFirst = -1;
  let rowOfEither = -1;
  // The first of January is the same either way.
  let isCalendar = false;
  for (let row = firstRow; row < lastRow; row++) {
    const cell = cellAt(table, row, column);
    if (cell < 0) continue;
    readStamp(table.text, table.cellFrom[cell]!, table.cellTo[cell]!, true, reader);
    const { first, second } = reader;
    if (first === 0 && row - firstRow > CLEAR_ROWS && !isCalendar) break;
    isCalendar ||= first > 0;
    if (first === 0 || first > 31 || second > 31) continue;
    if (first > 12 && second <= 12) {
      if (dayFirst++ === 0) rowOfDayFirst = row;
    } else if (second > 12 && first <= 12) {
      if (monthFirst++ === 0) rowOfMonthFirst = row;
    } else if (first !== second && first <= 12) {
      if (either++ === 0) rowOfEither = row;
    }
  }
  return { dayFirst, monthFirst, either, rowOfDayFirst, rowOfMonthFirst, rowOfEither };
}

/** With full stops between them dates are written day first everywhere. */
export const isDotted = (date: string): boolean => /\d\.\d{1,2}\.\d/.test(date);

/** Zones whose people write the month first. */
export const writesMonthFirst = (zone: string): boolean =>
  /^America\/|^US\//.test(zone) &&
  !/Toronto|Montreal|Halifax|Sao_Paulo|Argentina|Mexico|Bogota|Lima|Santiago/.test(zone);
