/** A table with its parts told apart: title lines, heading row, data rows, and what each column holds. */
import { readStamp } from '../dates/read-stamp.ts';
import { createStampReader, epochOf, READ, UNREADABLE } from '../dates/stamp-reader.ts';
import { countAsNumber, isMissing, readAwkwardNumber } from '../numbers/read-number.ts';
import { rewriteCells } from '../text/rewrite-cells.ts';
import { cellAt, cellCount, cellText, rowTexts, type Table } from '../text/table.ts';
import { carryDates, carryDittos } from './carry-dates.ts';
import { plainClocks } from './clock-fractions.ts';
import { plainTemperatures } from './coded-temperatures.ts';
import {
  type ColumnFacts,
  columnFacts,
  isClockColumn,
  isDateColumn,
  isNumberColumn,
  numberEitherWay,
} from './column-facts.ts';
import { joinDateParts, joinYearAbove, joinYearOutline } from './date-parts.ts';
import { carrierOfWords, HEAT_PUMP, plainWords, unitOfWords } from './headings.ts';
import { joinBrackets } from './join-brackets.ts';
import { nameByPartner, nameLogColumns, namePumps } from './log-headings.ts';
import { nameParts, nameTakenOfRoof } from './name-parts.ts';
import { nameProducts } from './name-products.ts';
import { splitNumberedMonths, splitSpans, splitYears } from './spans.ts';
import { type TurnedDates, turnBackDates } from './turned-dates.ts';
import { unfoldAcross } from './unfold-across.ts';
import { AMOUNT, METER, TOTALS } from './vocabulary.ts';

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
  const unfolded = unfoldAcross(written, fileName) ?? plainTemperatures(written) ?? plainClocks(written) ?? written;
  const table = splitSpans(unfolded) ?? unfolded;
  const sample = Math.min(table.rowCount, SAMPLE_ROWS);
  const dateColumn = findDateColumn(table, sample);
  if (dateColumn >= 0) {
    const carried = carryDates(table, dateColumn, isDateCell);
    return carried ? layOut(fileName, carried) : finishSheet(fileName, table, dateColumn, 'calendar');
  }
  const joined =
    joinDateParts(table) ??
    joinYearOutline(table) ??
    joinYearAbove(table) ??
    splitYears(table) ??
    splitNumberedMonths(table);
  if (joined) return layOut(fileName, joined);
  const coarse = coarserStamps(table, sample);
  if (coarse) return layOut(fileName, coarse);
  const numeric = findNumericDateColumn(table, sample);
  if (numeric) return finishSheet(fileName, table, numeric.column, numeric.form);
  return finishSheet(fileName, table, -1, 'calendar');
}

const isDateCell = (cell: string): boolean =>
  cell.length >= 5 && readStamp(cell, 0, cell.length, true, createStampReader()) !== UNREADABLE;

/** Leftmost of the columns that hold most dates. */
function findDateColumn(table: Table, sample: number): number {
  const counts = new Array<number>(SEARCHED_COLUMNS).fill(0);
  let rows = 0;
  for (let row = 0; row < sample; row++) {
    const width = Math.min(cellCount(table, row), SEARCHED_COLUMNS);
    if (width >= 2) rows++;
    for (let column = 0; column < width; column++) if (isDateCell(cellText(table, row, column))) counts[column]!++;
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
    return dateForm === 'calendar' ? isDateCell(cell) : !Number.isNaN(countAsNumber(cell));
  };
  const looksLikeData = (row: number) =>
    dateColumn >= 0 && row < table.rowCount && isDate(row) && hasValue(table, row, dateColumn);
  let firstRow = 0;
  const end = Math.min(table.rowCount, SEARCHED_ROWS);
  // A title with a date and a number in it is followed by other titles or by the headings.
  const goesOn = (row: number) =>
    row + 1 >= table.rowCount || looksLikeData(row + 1) || (row + 2 < table.rowCount && looksLikeData(row + 2));
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

/** An "index" that goes up by more than one is a reading where nothing else is an amount. */
function nameIndex(columns: readonly ColumnFacts[]): ColumnFacts[] {
  const isOther = (c: ColumnFacts) => isNumberColumn(c) && ['value', 'reading'].includes(c.meaning.role);
  const isIndex = (c: ColumnFacts) =>
    isNumberColumn(c) && (c.rising || c.falling) && !c.counting && /^index$/i.test(c.heading.trim());
  if (columns.some(isOther)) return [...columns];
  return columns.map((c) => (isIndex(c) ? { ...c, meaning: { ...c.meaning, role: 'reading' } } : c));
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
  const isDated = (row: number) =>
    isDateCell(cellText(table, row, dateColumn)) &&
    cellCount(table, row) === cellCount(table, first) &&
    rowTexts(table, row).filter((cell) => cell !== '').length > 1;
  while (dateColumn >= 0 && rows < first && isDated(first - rows - 1)) rows++;
  return rows;
}

/**
 * Rows directly above the first one with a date that hold its numbers under a heading of their own, such as "Jan (from the
 * 14th)": data whose dates cannot be read, and no headings.
 */
function undatedAbove(table: Table, dated: number): number {
  const isNumber = (cell: string) => !Number.isNaN(readAwkwardNumber(cell, '.')) && !/^(19|20)\d\d$/.test(cell);
  const data = rowTexts(table, dated);
  for (let rows = 1; rows <= 3 && rows < dated; rows++) {
    const cells = rowTexts(table, dated - rows);
    const above = rowTexts(table, dated - rows - 1);
    const hasNumbers = cells.length === data.length && cells.some((cell, i) => isNumber(cell) && isNumber(data[i]!));
    if (!hasNumbers || isSum(cells)) return 0;
    const isHeading =
      above.length === cells.length && above.every((cell) => cell !== '' && !/^[-+]?[\d.,]+$/.test(cell));
    if (isHeading) return rows;
  }
  return 0;
}

/** The row above the data with at least two words in it; a row of units between may stand below it. */
function findHeadingRow(table: Table, firstRow: number): number {
  for (let row = firstRow - 1; row >= Math.max(0, firstRow - 3); row--) {
    const cells = rowTexts(table, row).filter((cell) => cell !== '');
    if (cells.length < 2 || isSum(cells)) continue;
    const above = row > 0 ? rowTexts(table, row - 1) : [];
    // A row of numbers below words has a date that cannot be read.
    if (cells.slice(1).some(isAmount) && above.filter((cell) => cell !== '').length > 1 && !above.some(isAmount))
      continue;
    const isUnitRow =
      (cellText(table, row, 0) === '' ||
        FORM_OF_A_DATE.test(cellText(table, row, 0)) ||
        areUnits(rowTexts(table, row))) &&
      above.length === cellCount(table, row) &&
      above[0] !== '' &&
      !areUnits(above);
    return isUnitRow ? row - 1 : row;
  }
  return -1;
}

/** How a date or a clock is written, as a row of units says above its dates. */
const FORM_OF_DATES = /^[dmyjatsh][dmyjatsh.:/ -]{3,}$/i;

/** A form in which a date is written, such as "dd/mm/yyyy": no name of a column, whatever stands beside it. */
const FORM_OF_A_DATE =
  /^[[(]?(?:dd?|tt?|jj?|mm?|yy(?:yy)?|jjjj|aa(?:aa)?)(?:[./-](?:dd?|tt?|jj?|mm?|yy(?:yy)?|jjjj|aa(?:aa)?)){1,2}\b/i;

/** What else stands in a row of units: clocks, and units of what is no energy. */
const OTHER_UNIT = /^(utc|gmt|local|%|v|a|hz|h|s|min)$/i;

/** Whether every cell of a row is a unit, a form of dates or empty. */
function areUnits(cells: readonly string[]): boolean {
  const filled = cells.filter((cell) => cell !== '' && cell !== '-');
  const isUnit = (cell: string) => {
    const bare = cell.replace(/^[[(](.*)[\])]$/, '$1').trim();
    return (
      FORM_OF_DATES.test(bare) ||
      OTHER_UNIT.test(bare) ||
      (bare.length <= 8 && unitOfWords(plainWords(bare)) !== undefined)
    );
  };
  return filled.length > 0 && filled.every(isUnit);
}

/** A number that names no year. */
const isAmount = (cell: string): boolean => !Number.isNaN(numberEitherWay(cell)) && !/^(19|20)\d\d$/.test(cell);

/** Sums may stand above the data. */
const isSum = (cells: readonly string[]): boolean =>
  TOTALS.test(cells[0]!) &&
  cells
    .slice(1)
    .every((cell) => !Number.isNaN(readAwkwardNumber(cell, '.')) || !Number.isNaN(readAwkwardNumber(cell, ',')));

function widthOf(table: Table, firstRow: number, headingRow: number): number {
  let width = headingRow >= 0 ? cellCount(table, headingRow) : 0;
  for (let row = firstRow; row < Math.min(table.rowCount, firstRow + 50); row++)
    width = Math.max(width, cellCount(table, row));
  return Math.min(width, 400);
}

function joinHeadings(table: Table, headingRow: number, firstRow: number, width: number): string[] {
  if (headingRow < 0) return Array.from({ length: width }, () => '');
  const rows = Array.from({ length: firstRow - headingRow }, (_, i) => rowTexts(table, headingRow + i)).filter(
    (cells, i) => !isSum(cells.filter((cell) => cell !== '')) && (i === 0 || !cells.some(isAmount)),
  );
  const [top, below] = rows;
  if (top && below && rows.length === 2 && below[0] === '') rows[0] = carryMerged(top, below, width) ?? top;
  const over = headingsOver(table, headingRow, width);
  return Array.from({ length: width }, (_, column) =>
    [over[column] ?? '', ...rows.map((cells) => cells[column] ?? '')]
      .filter((cell) => cell !== '')
      .join(' ')
      .replaceAll(/\s+/g, ' ')
      .slice(0, 120),
  );
}

/** Where headings repeat, the merged ones above tell them apart, each over its column and the empty ones after it. */
function headingsOver(table: Table, headingRow: number, width: number): readonly string[] {
  if (headingRow === 0) return [];
  const [above, own] = [rowTexts(table, headingRow - 1), rowTexts(table, headingRow)];
  return above[0] !== '' && own[0] !== '' ? [] : (carryMerged(above, own, width) ?? []);
}

/**
 * Each heading over its column and the empty ones after it; undefined where those below neither repeat nor stand below
 * two energies.
 */
function carryMerged(above: readonly string[], own: readonly string[], width: number): string[] | undefined {
  const below = own.filter((cell) => cell !== '');
  const named = above.filter((cell, column) => cell !== '' && (column > 0 || own[0] === ''));
  const ofEnergies = new Set(named.flatMap((cell) => carrierOfWords(plainWords(cell))?.carrier ?? [])).size > 1;
  const isMerged = named.length < above.length - 1 || above.length < width;
  const isTold = new Set(below).size < below.length || (ofEnergies && isMerged);
  if (!isTold || new Set(named).size < 2 || named.some(isAmount)) return undefined;
  let last = '';
  return Array.from({ length: width }, (_, column) => {
    if ((above[column] ?? '') !== '') last = above[column]!;
    return last;
  });
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

/** A moment that stands in every row alike tells of the file, where another column of dates goes on. */
function setStillAside(table: Table, rows: readonly number[], columns: readonly ColumnFacts[]): ColumnFacts[] {
  const isStill = (c: ColumnFacts) =>
    rows.every((row) => cellText(table, row, c.index) === cellText(table, rows[0]!, c.index));
  const still = rows.length < 3 ? [] : columns.filter((c) => isDateColumn(c) && isStill(c));
  if (!columns.some((c) => isDateColumn(c) && !still.includes(c))) return [...columns];
  return columns.map((c) => (still.includes(c) ? { ...c, dates: 0, words: c.sampled, meaning: { role: 'index' } } : c));
}

/** So many rows of a list of bills begin where another ends. A judgement. */
const MOSTLY_CHAINED = 0.7;

/** Two columns of dates of which the one goes on where the other left off are the ends of a period, whatever their names. */
function nameEnds(table: Table, rows: readonly number[], columns: readonly ColumnFacts[]): readonly ColumnFacts[] {
  const dates = columns.filter(isDateColumn);
  if (dates.length < 2 || rows.length < 3 || dates.some((c) => ['from', 'to'].includes(c.meaning.role))) return columns;
  const text = (row: number, c: ColumnFacts) => cellText(table, row, c.index);
  const reader = createStampReader();
  const dayOf = (cell: string, dayFirst: boolean) =>
    readStamp(cell, 0, cell.length, dayFirst, reader) === READ && reader.kind === 'day'
      ? reader.civilMinute
      : Number.NaN;
  const isBefore = (from: string, to: string) => [true, false].some((first) => dayOf(from, first) < dayOf(to, first));
  const isChain = (from: ColumnFacts, to: ColumnFacts, step: 1 | -1) => {
    const links = rows.filter(
      (row, i) => rows[i + step] !== undefined && text(row, to) === text(rows[i + step]!, from),
    );
    return (
      links.length >= (rows.length - 1) * MOSTLY_CHAINED &&
      rows.every((row) => isBefore(text(row, from), text(row, to)))
    );
  };
  const pairs = dates.flatMap((from) => dates.filter((to) => to !== from).map((to) => [from, to] as const));
  const named = pairs.find(([a, b]) => /\bfrom$/.test(plainWords(a.heading)) && /\bto$/.test(plainWords(b.heading)));
  const pair = named ?? pairs.find(([from, to]) => isChain(from, to, 1) || isChain(from, to, -1));
  if (!pair) return columns;
  const roles = new Map<ColumnFacts, 'from' | 'to'>([
    [pair[0], 'from'],
    [pair[1], 'to'],
  ]);
  return columns.map((c) => (roles.has(c) ? { ...c, meaning: { ...c.meaning, role: roles.get(c)! } } : c));
}

/**
 * Among several date columns the one named as start comes first, then one named as date, then the leftmost. Where rows
 * share their day and a moment stands beside it, the moment tells them apart.
 */
const OF_ISSUE =
  /\b(bill|invoice|issued?|created?|printed|paid|payment|due|posted|statement|upload\w*|export(ed)?|download\w*|rechnungs ?datum|facture|factura|fattura|factuur\w*|faktura\w*)\b(?! ?period)/;

function preferredDate(
  table: Table,
  rows: readonly number[],
  columns: readonly ColumnFacts[],
  dateColumn: number,
): number {
  const all = columns.filter(isDateColumn);
  // When a bill or a file was made says least of when something was used.
  const own = all.filter((c) => c.meaning.role !== 'to' && !OF_ISSUE.test(plainWords(c.heading)));
  const dates = own.length > 0 ? own : all;
  const named = dates.find((c) => c.meaning.role === 'from') ?? dates.find((c) => c.meaning.role === 'stamp');
  const other = dates.find((c) => c.meaning.role !== 'to');
  const best = named ?? other;
  if (best?.dateKind !== 'day' || columns.some(isClockColumn)) return best?.index ?? dateColumn;
  const differ = ({ index }: ColumnFacts) => new Set(rows.map((row) => cellText(table, row, index))).size;
  const reader = createStampReader();
  const minuteOf = (row: number, { index }: ColumnFacts) => {
    const cell = cellText(table, row, index);
    return readStamp(cell, 0, cell.length, true, reader) === UNREADABLE ? Number.NaN : reader.civilMinute;
  };
  const isNear = (c: ColumnFacts) => rows.every((row) => Math.abs(minuteOf(row, c) - minuteOf(row, best)) < 2 * 1440);
  const moments = dates.filter((c) => c.dateKind === 'time' && c.meaning.role !== 'to');
  return moments.find((c) => differ(c) > 2 * differ(best) && isNear(c))?.index ?? best.index;
}

/** Amounts hardly change so little from row to row as a counter does that has run for years. A judgement. */
const RUN_FOR_YEARS = 10;

/** "Date read": the rows are readings of the meters. */
const isOfReadings = (c: ColumnFacts): boolean =>
  isDateColumn(c) &&
  /\b(date (of )?(meter )?read(ing)?|(meter )?read(ing)? (date|taken))\b/.test(plainWords(c.heading));

/** "Gas meter" above numbers that go up, as those of a counter do, shows readings; an exchange begins near nought. */
function nameMeter(c: ColumnFacts, isListOfReadings: boolean): ColumnFacts {
  const words = plainWords(c.heading);
  const isMeter =
    (METER.test(words) || isListOfReadings) && !AMOUNT.test(words) && ['value', 'unknown'].includes(c.meaning.role);
  const goesOn = c.numbers - 1 - c.falls;
  if (!isMeter || !isNumberColumn(c) || c.falls > 1 || goesOn < 2 || goesOn <= 2 * c.falls || c.rises === 0) return c;
  const beganAnew = (c.falls === 1 || goesOn > c.rises) && c.smallest < c.largest / 5;
  if (!beganAnew && c.smallest < RUN_FOR_YEARS * (c.largest - c.smallest)) return c;
  return { ...c, meaning: { ...c.meaning, role: 'reading' } };
}

const LAST = /\blast (meter )?(read(ing)?s?|index|register)\b/;

/** Gives such a column its part of a bill; other tables come back as they are. */
function pairLastReadings(columns: readonly ColumnFacts[]): readonly ColumnFacts[] {
  const has = (part: 'opening' | 'closing') => columns.some((c) => c.meaning.bill === part);
  const bill = has('closing') ? 'opening' : has('opening') ? 'closing' : undefined;
  if (bill === undefined) return columns;
  return columns.map((c) =>
    c.meaning.bill === undefined && LAST.test(plainWords(c.heading))
      ? { ...c, meaning: { ...c.meaning, role: 'reading', bill } }
      : c,
  );
}
