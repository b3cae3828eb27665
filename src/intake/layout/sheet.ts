/** A table with its parts told apart: title lines, heading row, data rows, and what each column holds. */
import { isDated } from '../dates/read-stamp.ts';
import { epochOf } from '../dates/stamp-reader.ts';
import { countAsNumber, isMissing, readAwkwardNumber } from '../numbers/read-number.ts';
import { rewriteCells } from '../text/rewrite-cells.ts';
import { cellAt, cellCount, cellText, rowTexts, type Table } from '../text/table.ts';
import { carryDates, carryDittos } from './carry-dates.ts';
import { plainClocks } from './clock-fractions.ts';
import { plainTemperatures } from './coded-temperatures.ts';
import { type ColumnFacts, columnFacts, isDateColumn } from './column-facts.ts';
import { plainCorrections } from './corrections.ts';
import { joinDateParts, joinYearAbove, joinYearOutline } from './date-parts.ts';
import { findHeadingRow, joinHeadings, undatedAbove, widthOf } from './find-headings.ts';
import { HEAT_PUMP, plainWords } from './headings.ts';
import { joinBrackets } from './join-brackets.ts';
import { nameByPartner, nameLogColumns, namePumps } from './log-headings.ts';
import {
  isOfReadings,
  nameEnds,
  nameIndex,
  nameMeter,
  pairLastReadings,
  preferredDate,
  setStillAside,
} from './name-by-neighbours.ts';
import { nameParts, nameTakenOfRoof } from './name-parts.ts';
import { nameProducts } from './name-products.ts';
import { splitNumberedMonths, splitSpans, splitYears } from './spans.ts';
import { type TurnedDates, turnBackDates } from './turned-dates.ts';
import { unfoldAcross } from './unfold-across.ts';
import { joinMonthToDays, joinYearToDays } from './year-to-days.ts';

export interface Sheet {
  readonly fileName: string;
  readonly table: Table;
  readonly columns: readonly ColumnFacts[];
  /** Row of the headings, -1 where there are none. */
  readonly headingRow: number;
  readonly firstRow: number;
  /** Lines before the headings. */
  readonly preamble: readonly { readonly line: number; readonly text: string }[];
  /** How dates are written: as dates, as day numbers of a spreadsheet, or as seconds or milliseconds since 1970. */
  readonly dateForm: 'calendar' | 'serial' | 'seconds' | 'milliseconds';
  /** Order of day and month, where the installer said it. */
  readonly dayFirst?: boolean;
  /** Dates of which a spreadsheet turned day and month. */
  readonly turned?: TurnedDates;
  /** Whether people where the home is write the month first. */
  readonly isMonthFirstHere?: boolean;
  /** Column of the dates, -1 where none was found. */
  readonly dateColumn: number;
  /** What all its rows are of, where their headings name the hours of a day. */
  readonly register?: string;
  /** Where the sheet comes from a workbook: all its sheets with rows, and which of them this is. */
  readonly workbook?: {
    readonly sheets: readonly string[];
    readonly sheet: string;
    /** Whether it is the one that is taken where none is named. */
    readonly isFirst: boolean;
    /** Numbers stand there as numbers, so that no decimal sign is in doubt. */
    readonly hasNumbers: boolean;
  };
}

const SAMPLE_ROWS = 300;
const SEARCHED_COLUMNS = 40;
/** No title is longer; a file whose data begin later is none that could be read. */
const SEARCHED_ROWS = 20_000;

export function layOutSheet(fileName: string, written: Table): Sheet {
  const joined = joinBrackets(written) ?? written;
  const whole = carryDittos(joined) ?? joined;
  const turned = turnBackDates(whole);
  return turned ? { ...layOut(fileName, turned.table), turned } : layOut(fileName, whole);
}

function layOut(fileName: string, written: Table): Sheet {
  const unfolded =
    plainCorrections(written) ??
    unfoldAcross(written, fileName) ??
    plainTemperatures(written) ??
    plainClocks(written) ??
    written;
  const spanned = splitSpans(unfolded) ?? unfolded;
  const table = joinYearToDays(spanned) ?? spanned;
  const sample = Math.min(table.rowCount, SAMPLE_ROWS);
  const dateColumn = findDateColumn(table, sample);
  if (dateColumn >= 0) {
    const carried = carryDates(table, dateColumn, isDated);
    return carried ? layOut(fileName, carried) : finishSheet(fileName, table, dateColumn, 'calendar');
  }
  const joined =
    joinDateParts(table) ??
    joinYearOutline(table) ??
    joinYearAbove(table) ??
    joinMonthToDays(table) ??
    splitYears(table) ??
    splitNumberedMonths(table);
  if (joined) return layOut(fileName, joined);
  const coarse = coarserStamps(table, sample);
  if (coarse) return layOut(fileName, coarse);
  const numeric = findNumericDateColumn(table, sample);
  if (numeric) return finishSheet(fileName, table, numeric.column, numeric.form);
  return finishSheet(fileName, table, -1, 'calendar');
}

/** Leftmost of the columns that hold most dates. */
function findDateColumn(table: Table, sample: number): number {
  const counts = new Array<number>(SEARCHED_COLUMNS).fill(0);
  let rows = 0;
  for (let row = 0; row < sample; row++) {
    const width = Math.min(cellCount(table, row), SEARCHED_COLUMNS);
    if (width >= 2) rows++;
    for (let column = 0; column < width; column++) if (isDated(cellText(table, row, column))) counts[column]!++;
  }
  const most = Math.max(...counts);
  if (most === 0 || (rows > 0 && most < rows * 0.3 && most < 3)) return -1;
  return counts.findIndex((n) => n >= most * 0.9);
}

/** Microseconds and nanoseconds since 1970 as milliseconds, which keep all that matters of them. */
function coarserStamps(table: Table, sample: number): Table | undefined {
  const digits = (row: number, column: number) => /^1\d{15}(?:\d{3})?$/.exec(cellText(table, row, column))?.[0];
  for (let column = 0; column < 3; column++) {
    let fine = 0;
    for (let row = 0; row < sample; row++) if (digits(row, column)) fine++;
    if (fine < 3 || fine < sample * 0.8) continue;
    return rewriteCells(
      table,
      (row, at) => (at === column ? digits(row, at) && [digits(row, at)!.slice(0, 13)] : undefined) || undefined,
    );
  }
  return undefined;
}

/** Days of 2000 to 2050 counted from 1900 as spreadsheets do, or seconds since 1970; the whole column must be such and rise or fall. */
function findNumericDateColumn(table: Table, sample: number): { column: number; form: Sheet['dateForm'] } | undefined {
  for (let column = 0; column < 3; column++) {
    const values: number[] = [];
    let others = 0;
    for (let row = 0; row < sample; row++) {
      const value = countAsNumber(cellText(table, row, column));
      if (Number.isNaN(value)) others++;
      else values.push(value);
    }
    if (values.length < 3 || others > values.length) continue;
    const within = (low: number, high: number) => values.every((v) => v >= low && v < high);
    // Several registers of one moment stand one below the other.
    const moves =
      values.every((v, i) => i === 0 || v >= values[i - 1]!) || values.every((v, i) => i === 0 || v <= values[i - 1]!);
    if (!moves || values.at(-1) === values[0]) continue;
    if (within(36_526, 55_153)) return { column, form: 'serial' };
    const form = epochOf(Math.min(...values), Math.max(...values));
    if (form) return { column, form };
  }
  return undefined;
}

function finishSheet(fileName: string, table: Table, dateColumn: number, dateForm: Sheet['dateForm']): Sheet {
  const isDate = (row: number) => {
    const cell = cellText(table, row, dateColumn);
    return dateForm === 'calendar' ? isDated(cell) : !Number.isNaN(countAsNumber(cell));
  };
  const looksLikeData = (row: number) =>
    dateColumn >= 0 && row < table.rowCount && isDate(row) && hasValue(table, row, dateColumn);
  let firstRow = 0;
  const end = Math.min(table.rowCount, SEARCHED_ROWS);
  // A title with a date and a number in it is followed by other titles or by the headings, data by the same ones again.
  const areAlike = (row: number, other: number) =>
    rowTexts(table, row).join('\t') === rowTexts(table, other).join('\t');
  const goesOn = (row: number) =>
    row + 1 >= table.rowCount ||
    [1, 2].some(
      (down) =>
        looksLikeData(row + down) || (row > 0 && looksLikeData(row + down + 1) && areAlike(row - 1, row + down)),
    );
  const isFirst = (row: number) => looksLikeData(row) && goesOn(row);
  while (firstRow < end && !isFirst(firstRow)) firstRow++;
  if (firstRow >= end) {
    firstRow = 0;
    while (firstRow < end && !looksLikeData(firstRow)) firstRow++;
  }
  // Without dates the first row is taken for headings, so that the preview can show the file.
  if (firstRow >= end) {
    firstRow = Math.min(1, table.rowCount);
    if (dateColumn >= 0) for (let row = 0; row < end; row++) if (isDate(row)) return lay(row);
  }
  return lay(firstRow);

  function lay(first: number): Sheet {
    return describeSheet(fileName, table, dateColumn, dateForm, first);
  }
}

function describeSheet(
  fileName: string,
  table: Table,
  dateColumn: number,
  dateForm: Sheet['dateForm'],
  dated: number,
): Sheet {
  const upper = dated - datedAbove(table, dated, dateColumn);
  const firstRow = upper - undatedAbove(table, upper);
  const headingRow = findHeadingRow(table, firstRow);
  const width = widthOf(table, firstRow, headingRow);
  const headings = joinHeadings(table, headingRow, firstRow, width);
  const rows = sampleRows(table, firstRow);
  const found = setStillAside(
    table,
    rows,
    headings.map((heading, index) => {
      const facts = columnFacts(table, index, rows, heading);
      // What was fitted later has its numbers further down.
      return facts.missing < facts.sampled ? facts : columnFacts(table, index, laterRows(table, index, rows), heading);
    }),
  );
  // What lies between two dates is an amount.
  const facts = namePumps(nameEnds(table, rows, found));
  const hasEnds = facts.some((c) => c.meaning.role === 'to' && isDateColumn(c));
  const preamble = titleLines(table, Math.max(0, headingRow < 0 ? firstRow : headingRow));
  // A longer line above may speak of a tariff for heat pumps.
  const titles = preamble.map(({ text }) => plainWords(text)).filter((text) => text.split(' ').length <= 4);
  const names = [plainWords(fileName.replaceAll(/[-_.]/g, ' ')), ...titles];
  const ofPump = names.some((name) => (HEAT_PUMP.test(name) || /\b[agw]shp\b/.test(name)) && !/tarif/.test(name));
  const named = nameIndex(
    pairLastReadings(
      nameByPartner(nameLogColumns(hasEnds ? facts : facts.map((c) => nameMeter(c, facts.some(isOfReadings))), ofPump)),
    ),
  );
  const columns = nameTakenOfRoof(nameParts(nameProducts(table, rows, named)));
  const best = dateForm === 'calendar' ? preferredDate(table, rows, columns, dateColumn) : dateColumn;
  return { fileName, table, columns, headingRow, firstRow, preamble, dateForm, dateColumn: best };
}

/** Lines above the table; of a row of names over a row of values each pair is a title. */
function titleLines(table: Table, end: number): Sheet['preamble'] {
  const rows = Array.from({ length: end }, (_, row) => rowTexts(table, row));
  return rows.flatMap((cells, row) => {
    const line = table.lineOfRow[row]!;
    const isOver = (names: readonly string[] | undefined, values: readonly string[] | undefined) =>
      names !== undefined &&
      values !== undefined &&
      names.length >= 3 &&
      names.length === values.length &&
      !names.some((name) => /\d{3}/.test(name)) &&
      values.some((value) => /\d{3}/.test(value));
    if (isOver(cells, rows[row + 1])) return [];
    const names = rows[row - 1];
    if (isOver(names, cells)) return cells.map((value, i) => ({ line, text: `${names![i]}: ${value}` }));
    return [{ line, text: cells.join(' ').trim() }];
  });
}

/** A data row has something besides its date: a number, a clock time or a sign that the value is missing. */
function hasValue(table: Table, row: number, dateColumn: number): boolean {
  const width = cellCount(table, row);
  if (width < 2) return false;
  for (let column = 0; column < width; column++) {
    if (column === dateColumn) continue;
    const cell = cellText(table, row, column);
    if (isMissing(cell)) continue;
    if (!Number.isNaN(readAwkwardNumber(cell, '.')) || !Number.isNaN(readAwkwardNumber(cell, ','))) return true;
  }
  return false;
}

/** Rows directly above the first with a date and a number that have a date too and are as wide: their numbers cannot be read. */
function datedAbove(table: Table, first: number, dateColumn: number): number {
  let rows = 0;
  const isAlike = (row: number) =>
    isDated(cellText(table, row, dateColumn)) &&
    cellCount(table, row) === cellCount(table, first) &&
    rowTexts(table, row).filter((cell) => cell !== '').length > 1;
  while (dateColumn >= 0 && rows < first && isAlike(first - rows - 1)) rows++;
  return rows;
}

function sampleRows(table: Table, firstRow: number): number[] {
  const rows: number[] = [];
  for (let row = firstRow; row < Math.min(table.rowCount, firstRow + SAMPLE_ROWS); row++) rows.push(row);
  return rows;
}

/** As many rows from the first one on that has something in the column; those given where none has. */
function laterRows(table: Table, column: number, rows: readonly number[]): readonly number[] {
  for (let row = (rows.at(-1) ?? table.rowCount) + 1; row < table.rowCount; row++) {
    const cell = cellAt(table, row, column);
    // Nearly all are empty, without a text to be looked at.
    if (cell < 0 || table.cellFrom[cell] === table.cellTo[cell]) continue;
    if (!isMissing(cellText(table, row, column))) return sampleRows(table, row);
  }
  return rows;
}
