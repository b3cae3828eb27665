/** What stands once for several rows: a date of which merged cells left the first, and what marks like " repeat. */
import { isClock } from '../dates/read-clock.ts';
import { rewriteCells } from '../text/rewrite-cells.ts';
import { cellCount, cellText, rowsWithoutDigit, type Table } from '../text/table.ts';

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
  for (const row of rowsWithoutDigit(table, dateColumn))
    if (cellText(table, row, dateColumn) === '' && ++bare === LEAST_CARRIED) return true;
  return false;
}

function hasClock(table: Table, row: number, dateColumn: number): boolean {
  for (let column = 0; column < Math.min(SEARCHED_COLUMNS, cellCount(table, row)); column++)
    if (column !== dateColumn && isClock(cellText(table, row, column))) return true;
  return false;
}

/** Longer tables nobody writes by hand. */
export const MOST_BY_HAND = 2000;
const DITTO = /^(?:["〃”″]|''|-?"-?|ditto|do\.)$/i;

/** The cell above in place of each mark that repeats it; undefined where there are none. */
export function carryDittos(table: Table): Table | undefined {
  if (table.rowCount > MOST_BY_HAND || !/["〃”″]|''|ditto|\bdo\./i.test(table.text)) return undefined;
  const carried = new Map<number, string>();
  for (let row = 1; row < table.rowCount; row++)
    for (let column = 0; column < cellCount(table, row); column++) {
      if (!DITTO.test(cellText(table, row, column)) || column >= cellCount(table, row - 1)) continue;
      const above = carried.get(table.rowStart[row - 1]! + column) ?? cellText(table, row - 1, column);
      if (above !== '') carried.set(table.rowStart[row]! + column, above);
    }
  if (carried.size === 0) return undefined;
  return rewriteCells(table, (row, column) => {
    const above = carried.get(table.rowStart[row]! + column);
    return above === undefined ? undefined : [above];
  });
}
