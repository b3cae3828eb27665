/**
 * Text as rows and cells without a string for each cell: where each begins and ends is kept in typed arrays,
 * so that ten years of half-hours are split in a few milliseconds and read straight from the text.
 */

import { ROWS_A_STEP } from '../terms/progress.ts';

export interface Table {
  readonly text: string;
  /** The text by its letters, which are read several times as quickly from here; of plain ASCII the bytes. */
  readonly codes: Codes;
  readonly separator: string;
  readonly rowCount: number;
  /** First cell of each row, with one entry past the end. */
  readonly rowStart: Uint32Array;
  /** Line of the file that a row begins on, counted from 1. */
  readonly lineOfRow: Uint32Array;
  readonly cellFrom: Uint32Array;
  readonly cellTo: Uint32Array;
  /** Cells in which a doubled quote stands for one. */
  readonly escaped: ReadonlySet<number>;
  /** Whether the last row lacks its line end, as in a file cut off. */
  readonly openEnd: boolean;
}

export type Codes = Uint8Array | Uint16Array;

/** One byte a letter where that is enough, as for all of Western Europe but for a few signs. */
export function codesOf(text: string): Codes {
  const narrow = new Uint8Array(text.length);
  for (let i = 0; i < narrow.length; i++) {
    const code = text.charCodeAt(i);
    if (code > 0xff) return wideCodesOf(text);
    narrow[i] = code;
  }
  return narrow;
}

function wideCodesOf(text: string): Uint16Array {
  const wide = new Uint16Array(text.length);
  for (let i = 0; i < wide.length; i++) wide[i] = text.charCodeAt(i);
  return wide;
}

const QUOTE = 34;
const NEWLINE = 10;
const RETURN = 13;
const SPACE = 32;
const HARD_SPACE = 160;
/** A cell over more lines than this is a stray quote, not a cell. */
const MAX_LINES_IN_CELL = 20;
/** More blank cells at the end of a row than this are the width of a spreadsheet, not columns of the file. */
const MOST_BLANK = 100;
/** Offsets of more cells than this would not fit in the memory we allow an import. */
export const MAX_CELLS = 12_000_000;

/** Cells cut so far. */
interface Cut {
  cellFrom: Uint32Array<ArrayBuffer>;
  cellTo: Uint32Array<ArrayBuffer>;
  cells: number;
  /** Up to the last one with something in it. */
  filled: number;
  /** Line of the file that comes next. */
  line: number;
  readonly escaped: Set<number>;
}

/** Splits the text, whose codes are read once more unless they are known; undefined where it has more cells than we take. `onProgress` is called every 16,384 rows. */
export function splitTable(
  text: string,
  separator: string,
  start: number,
  onProgress?: (share: number) => void,
  codes = codesOf(text),
): Table | undefined {
  const end = codes.length;
  const size = Math.max(64, (end - start) >> 3);
  const line = 1 + countLines(text, 0, start, Number.POSITIVE_INFINITY);
  const [cellFrom, cellTo] = [new Uint32Array(size), new Uint32Array(size)];
  const cut: Cut = { cellFrom, cellTo, cells: 0, filled: 0, line, escaped: new Set() };
  let rowStart = new Uint32Array(Math.max(16, (end - start) >> 4));
  let lineOfRow = new Uint32Array(rowStart.length);
  let rows = 0;
  let at = start;
  while (at < end) {
    if (rows + 1 >= rowStart.length) {
      rowStart = grown(rowStart);
      lineOfRow = grown(lineOfRow);
    }
    if (rows % ROWS_A_STEP === 0) onProgress?.(at / end);
    rowStart[rows] = cut.cells;
    lineOfRow[rows] = cut.line;
    at = cutRow(text, codes, separator, at, cut);
    if (at < 0) return undefined;
    if (cut.cells - cut.filled > MOST_BLANK) cut.cells = cut.filled;
    if (cut.filled > rowStart[rows]!) rows++;
    else cut.cells = rowStart[rows]!;
  }
  rowStart[rows] = cut.cells;
  const last = codes[end - 1];
  return {
    text,
    codes,
    separator,
    rowCount: rows,
    rowStart: rowStart.subarray(0, rows + 1),
    lineOfRow: lineOfRow.subarray(0, rows),
    cellFrom: cut.cellFrom.subarray(0, cut.cells),
    cellTo: cut.cellTo.subarray(0, cut.cells),
    escaped: cut.escaped,
    openEnd: last !== NEWLINE && last !== RETURN,
  };
}

/** Cuts one row, and answers where the next begins; -1 where there are more cells than we take. */
function cutRow(text: string, codes: Codes, separator: string, start: number, cut: Cut): number {
  const end = codes.length;
  const between = separator.charCodeAt(0);
  const highest = Math.max(between, RETURN);
  let { cellFrom, cellTo, cells } = cut;
  cut.filled = cells;
  let at = start;
  for (;;) {
    if (cells >= cellFrom.length) {
      if (cells >= MAX_CELLS) return -1;
      cellFrom = cut.cellFrom = grown(cellFrom);
      cellTo = cut.cellTo = grown(cellTo);
    }
    while (at < end && codes[at] === SPACE) at++;
    let from = at;
    let to = at;
    const closing = codes[at] === QUOTE ? closingQuote(text, at, end, separator) : -1;
    if (closing >= 0) {
      from = at + 1;
      to = closing;
      if (sawDoubledQuote) cut.escaped.add(cells);
      cut.line += countLines(text, from, to, Number.POSITIVE_INFINITY);
      at = closing + 1;
    }
    for (; at < end; at++) {
      const code = codes[at]!;
      if (code <= highest && (code === between || code === NEWLINE || code === RETURN)) break;
    }
    if (closing < 0) {
      to = at;
      while (to > from && isSpace(codes[to - 1]!)) to--;
    }
    cellFrom[cells] = from;
    cellTo[cells] = to;
    cells++;
    if (to > from) cut.filled = cells;
    if (at >= end || codes[at] !== between) break;
    at++;
  }
  cut.cells = cells;
  // At a line end or at the end of the text.
  if (at >= end) return at;
  cut.line++;
  return codes[at] === RETURN && codes[at + 1] === NEWLINE ? at + 2 : at + 1;
}

const isSpace = (code: number): boolean => code === SPACE || code === HARD_SPACE || code === 9;

function grown(array: Uint32Array<ArrayBuffer>): Uint32Array<ArrayBuffer> {
  const larger = new Uint32Array(array.length * 2);
  larger.set(array);
  return larger;
}

/** Whether the cell that `closingQuote` last closed holds a doubled quote; kept here so that a cell costs no object. */
let sawDoubledQuote = false;

/** Offset of the quote that closes a cell, or -1 where none does within a sensible number of lines. */
function closingQuote(text: string, opening: number, end: number, separator: string): number {
  let at = opening + 1;
  sawDoubledQuote = false;
  for (;;) {
    at = text.indexOf('"', at);
    if (at < 0 || at >= end) return -1;
    if (text.charCodeAt(at + 1) !== QUOTE) break;
    sawDoubledQuote = true;
    at += 2;
  }
  if (isDitto(text, opening, at, separator)) return -1;
  return countLines(text, opening, at, MAX_LINES_IN_CELL) > MAX_LINES_IN_CELL ? -1 : at;
}

/** Whether both quotes are marks that repeat the cell above: each a cell of its own in lines of as many cells that begin with a figure. */
function isDitto(text: string, opening: number, closing: number, separator: string): boolean {
  const next = text[opening + 1];
  if (next !== separator && next !== '\n' && next !== '\r') return false;
  const cellsAround = (at: number): readonly string[] => {
    const from = text.lastIndexOf('\n', at) + 1;
    const to = text.indexOf('\n', at);
    return text.slice(from, to < 0 ? text.length : to).split(separator);
  };
  const [one, other] = [cellsAround(opening), cellsAround(closing)];
  const areMarks = (cells: readonly string[]) =>
    /^\d/.test(cells[0]!) && cells.every((cell) => cell.trim() === '"' || !cell.includes('"'));
  return one.length === other.length && text.lastIndexOf('\n', closing) > opening && areMarks(one) && areMarks(other);
}

/** Line ends between two offsets; stops counting once past `enough`. */
function countLines(text: string, from: number, to: number, enough: number): number {
  let lines = 0;
  for (let i = from; i < to && lines <= enough; i++) {
    const code = text.charCodeAt(i);
    if (code === NEWLINE || (code === RETURN && text.charCodeAt(i + 1) !== NEWLINE)) lines++;
  }
  return lines;
}

export const cellCount = (table: Table, row: number): number => table.rowStart[row + 1]! - table.rowStart[row]!;

/** Cells of the longest row. */
export function mostCells({ rowStart, rowCount }: Table): number {
  let most = 0;
  for (let row = 0, from = 0; row < rowCount; row++) {
    const next = rowStart[row + 1]!;
    if (next - from > most) most = next - from;
    from = next;
  }
  return most;
}

/** Place of a cell in the offset arrays, or -1 where the row is too short. */
export function cellAt(table: Table, row: number, column: number): number {
  const cell = table.rowStart[row]! + column;
  return cell < table.rowStart[row + 1]! ? cell : -1;
}

/** No date, figure or note is longer; a file of quotation marks alone is one cell of millions. */
const LONGEST_CELL = 1000;

/** The cell as text, without quotes and outer spaces; empty where the row is too short. */
export function cellText(table: Table, row: number, column: number): string {
  const cell = cellAt(table, row, column);
  if (cell < 0) return '';
  const from = table.cellFrom[cell]!;
  const raw = table.text.slice(from, Math.min(table.cellTo[cell]!, from + LONGEST_CELL));
  return (table.escaped.has(cell) ? raw.replaceAll('""', '"') : raw).trim();
}

const looked = new WeakMap<Table, Map<number, readonly number[]>>();

/** Rows in which a column does not begin with a digit: few where readings stand, and looked for only once. */
export function rowsWithoutDigit(table: Table, column: number): readonly number[] {
  const known = looked.get(table) ?? new Map<number, readonly number[]>();
  const rows = known.get(column) ?? findWithoutDigit(table, column);
  looked.set(table, known.set(column, rows));
  return rows;
}

function findWithoutDigit({ codes, rowCount, rowStart, cellFrom, cellTo }: Table, column: number): number[] {
  const rows: number[] = [];
  for (let row = 0; row < rowCount; row++) {
    const cell = rowStart[row]! + column;
    const from = cellFrom[cell]!;
    const code = codes[from]!;
    const isDigit = code >= 48 && code <= 57 && cell < rowStart[row + 1]! && from < cellTo[cell]!;
    if (!isDigit) rows.push(row);
  }
  return rows;
}

export function rowTexts(table: Table, row: number): string[] {
  return Array.from({ length: cellCount(table, row) }, (_, column) => cellText(table, row, column));
}
