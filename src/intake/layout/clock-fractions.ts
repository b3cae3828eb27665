/** Clock times as the fraction of a day, as a spreadsheet writes them without their form: 0.020833333 is 00:30. */
import { clockTimeOf } from '../../model/calendar/civil.ts';
import { rewriteCells } from '../text/rewrite-cells.ts';
import { cellText, rowTexts, type Table } from '../text/table.ts';
import { plainWords } from './headings.ts';
import { CLOCK_TIME, withoutBrackets } from './vocabulary.ts';

const FRACTION = /^0?[.,]\d+$|^0$/;
const SEARCHED_ROWS = 20;
const SAMPLE_ROWS = 100;
/** Hours of a day. */
const LEAST_CLOCKS = 24;
/** Of a minute; fractions are written with few digits now and then. */
const ROUNDING = 0.1;

/** The table with clock times; undefined where no column under a word for the time holds such fractions alone. */
export function plainClocks(table: Table): Table | undefined {
  for (let heading = 0; heading < Math.min(SEARCHED_ROWS, table.rowCount - 3); heading++) {
    const column = rowTexts(table, heading).findIndex((cell) => CLOCK_TIME.test(withoutBrackets(plainWords(cell))));
    if (column < 0 || !holdsFractions(table, heading + 1, column)) continue;
    return rewriteCells(table, (row, at) => {
      const minutes = row > heading && at === column ? minutesOf(cellText(table, row, at)) : undefined;
      return minutes === undefined ? undefined : [clockTimeOf(minutes)];
    });
  }
  return undefined;
}

function holdsFractions(table: Table, first: number, column: number): boolean {
  const minutes = new Set<number | undefined>();
  for (let row = first; row < Math.min(table.rowCount, first + SAMPLE_ROWS); row++)
    minutes.add(minutesOf(cellText(table, row, column)));
  return minutes.size >= LEAST_CLOCKS && !minutes.has(undefined);
}

function minutesOf(cell: string): number | undefined {
  const minutes = FRACTION.test(cell) ? Number(cell.replace(',', '.')) * 1440 : Number.NaN;
  return Math.abs(minutes - Math.round(minutes)) < ROUNDING ? Math.round(minutes) : undefined;
}
