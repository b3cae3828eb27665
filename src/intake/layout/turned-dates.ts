/**
 * A spreadsheet of another country takes 03/04 for a date of its own order and leaves 23/04 as text: what is a date then
 * has day and month changed about, and never a day after the twelfth.
 */
import { sumOf } from '../../model/units/sums.ts';
import { civilDay } from '../dates/stamp-reader.ts';
import { rewriteCells } from '../text/rewrite-cells.ts';
import { cellAt, cellText, mostCells, type Table } from '../text/table.ts';

export interface TurnedDates {
  /** With the dates turned back where that puts the rows in order. */
  readonly table: Table;
  readonly isCertain: boolean;
  readonly count: number;
  /** Of the first such date. */
  readonly line: number;
  readonly found: string;
}

const SEARCHED_COLUMNS = 6;
/** Fewer of either kind may be chance. A judgement. */
const LEAST = 6;
const DATE = /^(\d{4})-(\d\d)-(\d\d)(?=$|[T ])/;
/** No title is longer; a column without dates for so many rows has none. */
const MOST_ABOVE = 20_000;
const TEXT = /^(\d{1,2})[/.-](\d{1,2})[/.-](\d{4}|\d{2})(?=$|[, ])/;

/** Undefined where no column has such dates. */
export function turnBackDates(table: Table): TurnedDates | undefined {
  const width = Math.min(SEARCHED_COLUMNS, mostCells(table));
  const columns = Array.from({ length: width }, (_, column) => mixedDates(table, column)).filter(
    (one) => one !== undefined,
  );
  const first = columns.find(({ rows, texts }) => rows.length >= LEAST && texts >= LEAST);
  if (!first) return undefined;
  const isCertain = columns.some(
    ({ asWritten, turned }) => stepsBack(turned) <= turned.length * 0.01 && wayOf(turned) < wayOf(asWritten) / 2,
  );
  // The ends of the same rows were turned with their beginnings.
  const turn = (row: number, at: number) => {
    const cell = columns.some(({ column }) => column === at) ? cellText(table, row, at) : '';
    return DATE.test(cell) ? [cell.replace(DATE, '$1-$3-$2')] : undefined;
  };
  return {
    table: isCertain ? rewriteCells(table, turn) : table,
    isCertain,
    count: sumOf(columns.map(({ rows }) => rows.length)),
    line: table.lineOfRow[first.rows[0]!]!,
    found: cellText(table, first.rows[0]!, first.column),
  };
}

interface MixedDates {
  readonly column: number;
  /** Rows with a date that may be turned. */
  readonly rows: readonly number[];
  readonly texts: number;
  /** Days of all rows. */
  readonly asWritten: readonly number[];
  readonly turned: readonly number[];
}

/** A column of both forms, in which no date is of a day after the twelfth and every text is. */
function mixedDates(table: Table, column: number): MixedDates | undefined {
  const rows: number[] = [];
  const asWritten: number[] = [];
  const turned: number[] = [];
  let texts = 0;
  for (let row = 0; row < table.rowCount; row++) {
    if (row === MOST_ABOVE && asWritten.length === 0) return undefined;
    const at = cellAt(table, row, column);
    if (at < 0 || !hasTwoSigns(table, at)) continue;
    const cell = cellText(table, row, column);
    const [, year, month, day] = (DATE.exec(cell) ?? []).map(Number);
    const [, first, second, written] = (TEXT.exec(cell) ?? []).map(Number);
    if (year !== undefined) {
      if (day! > 12) return undefined;
      rows.push(row);
      asWritten.push(civilDay(year, month!, day!));
      turned.push(civilDay(year, day!, month!));
    } else if (first !== undefined) {
      if (first > 12 === second! > 12) return undefined;
      texts++;
      const civil = civilDay(2000 + (written! % 100), Math.min(first, second!), Math.max(first, second!));
      asWritten.push(civil);
      turned.push(civil);
    }
  }
  return rows.length > 0 && texts > 0 ? { column, rows, texts, asWritten, turned } : undefined;
}

const SHORTEST = '1/2/25'.length;

/** As between the parts of a date; of the numbers of a long file no texts are made. */
function hasTwoSigns({ codes, cellFrom, cellTo }: Table, cell: number): boolean {
  const [from, to] = [cellFrom[cell]!, cellTo[cell]!];
  let signs = 0;
  // - . /
  if (to - from >= SHORTEST)
    for (let i = from; i < to && signs < 2; i++) if (codes[i]! >= 45 && codes[i]! <= 47) signs++;
  return signs === 2;
}

/** How often the rows step back in time, written from the oldest or from the newest. */
function stepsBack(days: readonly number[]): number {
  let [down, up] = [0, 0];
  for (let i = 1; i < days.length; i++) {
    if (days[i]! < days[i - 1]!) down++;
    if (days[i]! > days[i - 1]!) up++;
  }
  return Math.min(down, up);
}

/** Days gone through from row to row. */
const wayOf = (days: readonly number[]): number =>
  days.reduce((way, day, i) => way + (i === 0 ? 0 : Math.abs(day - days[i - 1]!)), 0);
