/** Tables with dates, months or days of the month across and hours, years or months down: one row a cell instead. */
import { monthOfName } from '../dates/month-names.ts';
import { quarterOfName } from '../dates/quarter-names.ts';
import { isClock } from '../dates/read-clock.ts';
import { readStamp } from '../dates/read-stamp.ts';
import { createStampReader, READ, type StampKind } from '../dates/stamp-reader.ts';
import { isMissing } from '../numbers/read-number.ts';
import { cellCount, cellText, rowTexts, splitTable, type Table } from '../text/table.ts';
import { plainWords, unitOfWords } from './headings.ts';
import { TOTALS } from './vocabulary.ts';

const SEARCHED_ROWS = 40;
/** Fewer dates side by side may be the two ends of a bill and others. A judgement. */
const LEAST_ACROSS = 6;
const MOSTLY = 0.9;
const MOST_CELLS = 400_000;

/** What stands across, and the stamp of a cell by the words above and left of it; undefined where they make none. */
interface Across {
  readonly columns: readonly number[];
  /** Whether the words on the left are times of the day rather than part of a date. */
  readonly hasHours: boolean;
  readonly stampOf: (above: string, left: string) => string | undefined;
  /** What the heads say beside the years. */
  readonly value?: string;
  /** Columns on the left that say of what a row is. */
  readonly names?: readonly number[];
}

/** Undefined where nothing of the kind stands across, or where a row does not say when it was. */
export function unfoldAcross(table: Table): Table | undefined {
  for (let row = 0; row < Math.min(table.rowCount, SEARCHED_ROWS); row++) {
    const heads = rowTexts(table, row).map((head) => (head.startsWith('#') ? '' : head));
    const year = yearOf(table, row);
    const across = heads.length >= 3 ? findAcross(heads, () => rowsBelow(table, row), year) : undefined;
    if (across && (table.rowCount - row) * across.columns.length <= MOST_CELLS) return unfold(table, row, across);
  }
  return undefined;
}

/** What stands on the left of each row below, sums and remarks left off. */
function rowsBelow(table: Table, row: number): string[] {
  return Array.from({ length: table.rowCount - row - 1 }, (_, i) => row + 1 + i)
    .filter((at) => !isRemark(table, at))
    .map((at) => cellText(table, at, 0))
    .filter((left) => left !== '' && !TOTALS.test(left));
}

/** A row of words with nothing beside them. */
function isRemark(table: Table, row: number): boolean {
  for (let column = 1; column < cellCount(table, row); column++) if (cellText(table, row, column) !== '') return false;
  return true;
}

/** The one year that the titles and the corner name. */
function yearOf(table: Table, headingRow: number): string | undefined {
  const titles = Array.from({ length: headingRow }, (_, row) => rowTexts(table, row).join(' '));
  const years = new Set([...titles, cellText(table, headingRow, 0)].join(' ').match(/(?<!\d)20\d\d(?!\d)/g));
  return years.size === 1 ? [...years][0] : undefined;
}

const two = (n: number | string): string => String(n).padStart(2, '0');
const isYear = (text: string): boolean => /^(19[9]\d|20\d\d)$/.test(text);
const YEAR_WITHIN = /(?<!\d)(19[9]\d|20\d\d)(?!\d)/;
const isHour = (text: string): boolean => isClock(text, true) || /^\d{1,2}$/.test(text);

function monthNumber(text: string): number {
  return /^\d{1,2}$/.test(text) && Number(text) <= 12 ? Number(text) : monthOfName(text.replace(/\.$/, ''));
}

function findAcross(
  heads: readonly string[],
  below: () => readonly string[],
  year: string | undefined,
): Across | undefined {
  const columns = heads.map((_, c) => c).filter((c) => c > 0 && heads[c] !== '' && !TOTALS.test(heads[c]!));
  const all = (fits: (head: string) => boolean) => columns.length > 0 && columns.every((c) => fits(heads[c]!));
  // The rows are looked through only where something stands across, since most tables are long and have nothing.
  let known: readonly string[] | undefined;
  const left = () => {
    known ??= below();
    return known;
  };
  const down = (fits: (text: string) => boolean) => left().length > 1 && left().every(fits);
  const days = columns.filter((c) => kindOf(heads[c]!) === 'day');
  // Remarks may stand beside the days.
  if (days.length >= 3 && days.length >= columns.length * MOSTLY && down(isHour))
    return { columns: days, hasHours: true, stampOf: (above) => above };
  if (columns.length === 12 && columns.every((c, i) => monthOfName(heads[c]!.replace(/\.$/, '')) === i + 1)) {
    if (down(isYear))
      return {
        columns,
        hasHours: false,
        stampOf: (above, of) => `${of}-${two(monthOfName(above.replace(/\.$/, '')))}`,
      };
    if (year !== undefined && down((text) => /^\d{1,2}\.?$/.test(text)) && left().length >= 28 && left().length <= 31)
      return {
        columns,
        hasHours: false,
        stampOf: (above, of) => `${year}-${two(monthOfName(above.replace(/\.$/, '')))}-${two(Number.parseInt(of, 10))}`,
      };
  }
  if (columns.length === 4 && columns.every((c, i) => quarterOfName(heads[c]!) === i + 1) && down(isYear))
    return { columns, hasHours: false, stampOf: (above, of) => `${of} Q${quarterOfName(above)}` };
  const years = new Set(columns.map((c) => YEAR_WITHIN.exec(heads[c]!)?.[0]));
  const ofYears = new Set(columns.map((c) => heads[c]!.replace(YEAR_WITHIN, '').trim()));
  const areYears = columns.length >= 2 && years.size === columns.length && !years.has(undefined) && ofYears.size === 1;
  if (areYears && left().length >= 3 && down((text) => quarterOfName(text) > 0))
    return {
      columns,
      hasHours: false,
      stampOf: (above, of) => `${YEAR_WITHIN.exec(above)![0]} Q${quarterOfName(of)}`,
      value: [...ofYears][0]!,
    };
  if (areYears && left().length >= 3 && down((text) => monthNumber(text) > 0))
    return {
      columns,
      hasHours: false,
      stampOf: (above, of) => `${YEAR_WITHIN.exec(above)![0]}-${two(monthNumber(of))}`,
      value: [...ofYears][0]!,
    };
  const areMonths = columns.length >= 2 && all((head) => kindOf(head) === 'month');
  if (areMonths && down((text) => /^\d{1,2}\.?$/.test(text)) && left().length >= 28 && left().length <= 31)
    return {
      columns,
      hasHours: false,
      stampOf: (above, of) => `${monthText(above, undefined)}-${two(Number.parseInt(of, 10))}`,
    };
  const dated = columns.filter((c) => ['month', 'day'].includes(kindOf(heads[c]!) ?? ''));
  // Above what a row is of there may be nothing.
  const names = heads.map((_, c) => c).filter((c) => c < dated[0]! && (heads[c] !== '' || c === 0));
  if (
    dated.length >= LEAST_ACROSS &&
    names.filter((c) => c > 0).length + dated.length >= columns.length &&
    down((text) => kindOf(text) === undefined && !isHour(text))
  )
    return { columns: dated, hasHours: false, stampOf: (above) => above, names };
  const areDays = columns.length >= 28 && columns.length <= 31 && columns.every((c, i) => Number(heads[c]) === i + 1);
  if (areDays && down((text) => monthText(text, year) !== undefined))
    return { columns, hasHours: false, stampOf: (above, of) => `${monthText(of, year)}-${two(above)}` };
  return undefined;
}

const reader = createStampReader();
const kindOf = (text: string): StampKind | undefined =>
  text.length >= 6 && readStamp(text, 0, text.length, true, reader) === READ ? reader.kind : undefined;

/** "2025-03" of "March 2025", or of "March" in a year that is known. */
function monthText(text: string, year: string | undefined): string | undefined {
  if (kindOf(text) === 'month') return new Date(reader.civilMinute * 60_000).toISOString().slice(0, 7);
  const month = monthNumber(text);
  return month > 0 && year !== undefined ? `${year}-${two(month)}` : undefined;
}

function unfold(
  table: Table,
  headingRow: number,
  { columns, hasHours, stampOf, value: said = '', names = [] }: Across,
): Table | undefined {
  const lines: string[] = [];
  const lineOfRow: number[] = [];
  const put = (row: number, cells: readonly string[]) => {
    lines.push(cells.map((cell) => cell.replaceAll(/[\t\r\n"]/g, ' ')).join('\t'));
    lineOfRow.push(table.lineOfRow[row]!);
  };
  for (let row = 0; row < headingRow; row++) put(row, rowTexts(table, row));
  const corner = cellText(table, headingRow, 0);
  const value = said !== '' ? said : unitOfWords(plainWords(corner)) === undefined ? 'Value' : `Value ${corner}`;
  const named = names.map((c) => cellText(table, headingRow, c) || 'Type');
  put(headingRow, hasHours ? ['Date', 'Time', value] : [...named, 'Date', value]);
  for (const column of columns)
    for (let row = headingRow + 1; row < table.rowCount; row++) {
      const left = cellText(table, row, 0);
      if (left === '' || TOTALS.test(left) || isRemark(table, row) || cellCount(table, row) <= column) continue;
      const cell = cellText(table, row, column);
      // The thirtieth of February is an empty cell.
      if (!hasHours && isMissing(cell)) continue;
      const stamp = stampOf(cellText(table, headingRow, column), left);
      if (stamp === undefined) return undefined;
      put(row, hasHours ? [stamp, left, cell] : [...names.map((c) => cellText(table, row, c)), stamp, cell]);
    }
  const unfolded = splitTable(`${lines.join('\n')}\n`, '\t', 0);
  return unfolded && { ...unfolded, lineOfRow: Uint32Array.from(lineOfRow.slice(0, unfolded.rowCount)) };
}
