/** Rows that are named by seasons, or by years that begin within those of the calendar: "2024/25" says no first day. */
import { cellText } from '../text/table.ts';
import type { Sheet } from './sheet.ts';

const SEASON = /^(?:[a-z]{2,12}\.? ?)?((?:19|20)?\d\d) ?[/–-] ?((?:19|20)?\d\d)$/i;
const SEARCHED_COLUMNS = 3;
/** More years no home has been metered. */
const SAMPLE_ROWS = 60;

/** The first of them, where most rows have no other date; "2009/10" is a month where none of its neighbours is a season. */
export function seasonOf({ table, dateColumn, firstRow }: Sheet): string | undefined {
  for (const column of dateColumn >= 0 ? [dateColumn] : Array.from({ length: SEARCHED_COLUMNS }, (_, c) => c)) {
    const first = Math.max(0, firstRow - 1);
    const cells = Array.from({ length: Math.min(SAMPLE_ROWS, table.rowCount - first) }, (_, i) =>
      cellText(table, first + i, column),
    );
    const seasons = cells.filter((cell) => {
      const [, year, next] = SEASON.exec(cell) ?? [];
      return year !== undefined && Number(next) % 100 === (Number(year) + 1) % 100;
    });
    const mayBeMonths = seasons.length < 2 && seasons.every((one) => Number(SEASON.exec(one)![2]) <= 12);
    if (!mayBeMonths && seasons.length * 2 >= cells.length) return seasons[0];
  }
  return undefined;
}
