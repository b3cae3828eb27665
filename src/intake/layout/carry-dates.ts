/** A date that stands in the first row of its day only, as merged cells leave it, holds for the times below it. */
import { isClock } from '../dates/read-clock.ts';
import { rewriteCells } from '../text/rewrite-cells.ts';
import { cellCount, cellText, isEmptyCell, type Table } from '../text/table.ts';

const LEAST_CARRIED = 3;
const SEARCHED_COLUMNS = 6;

/**
 * @param isDate whether a cell is a date
 * @returns undefined where nearly every row has its own date, or a time stands above the first: dates may end their days
 */
export function carryDates(table: Table, dateColumn: number, isDate: (cell: string) => boolean): Table | undefined {
  if (!hasBareRows(table, dateColumn)) return undefined;
  const carried = new Map<number, string>();
  let last: string | undefined;
  let dates = 0;
  for (let row = 0; row < table.rowCount; row++) {
    const cell = cellText(table, row, dateColumn);
    if (isDate(cell)) {
      last = cell;
      dates++;
    } else if (cell === '' && hasClock(table, row, dateColumn)) {
      if (last === undefined) return undefined;
      carried.set(row, last);
    }
  }
  if (carried.size < LEAST_CARRIED || carried.size < dates) return undefined;
  return rewriteCells(table, (row, column) => {
    const date = column === dateColumn ? carried.get(row) : undefined;
    return date === undefined ? undefined : [date];
  });
}

/** Whether a date is missing in enough rows; in most files it is in none, and no cell need be read for that. */
function hasBareRows(table: Table, dateColumn: number): boolean {
  let bare = 0;
  for (let row = 0; row < table.rowCount && bare < LEAST_CARRIED; row++)
    if (isEmptyCell(table, row, dateColumn)) bare++;
  return bare === LEAST_CARRIED;
}

function hasClock(table: Table, row: number, dateColumn: number): boolean {
  for (let column = 0; column < Math.min(SEARCHED_COLUMNS, cellCount(table, row)); column++)
    if (column !== dateColumn && isClock(cellText(table, row, column))) return true;
  return false;
}
