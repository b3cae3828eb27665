/** Files that name the register of each row in a column: one table for each register, so that each is read by itself. */
import { readAwkwardNumber } from '../numbers/read-number.ts';
import { cellText, type Table } from '../text/table.ts';
import { type ColumnFacts, isDateColumn, isMarkColumn, isNumberColumn, isWordColumn } from './column-facts.ts';
import { carrierOfWords, plainWords, unitOfWords } from './headings.ts';
import { layOutSheet, type Sheet } from './sheet.ts';

export interface RegisterSheet {
  /** As written in the column. */
  readonly register: string;
  readonly sheet: Sheet;
}

export interface RegisterSheets {
  readonly column: number;
  readonly sheets: readonly RegisterSheet[];
}

const MOST_REGISTERS = 8;
/** Rows looked at to see whether stamps repeat. */
const SAMPLE_ROWS = 4000;
const REGISTER_WORDS =
  /\b(import|export|day|night|peak|off.?peak|low|high|normal|rate|register|electric(ity)?|elec|gas|heat|consum(ption|ed)|generat(ion|ed)|feed.?in|returned|delivered|received|input|output|solar|pv|economy|a[+-]|r\d|t\d|l\d)(?!\w)/;

/** Undefined where no column tells registers apart, or where each moment stands there once only. */
export function splitByRegister(sheet: Sheet): RegisterSheets | undefined {
  if (sheet.dateColumn < 0) return undefined;
  for (const column of sheet.columns) {
    if (column.index === sheet.dateColumn || isDateColumn(column) || isMarkColumn(column)) continue;
    const isCode = isNumberColumn(column) && /\b(register|channel|rate|meter)\b/i.test(column.heading);
    if (!isWordColumn(column) && !isCode) continue;
    const groups = groupRows(sheet, column.index);
    if (!groups || groups.size < 2) continue;
    if (!isCode && ![...groups.keys()].every((word) => REGISTER_WORDS.test(plainWords(word)))) continue;
    if (!momentsRepeat(sheet)) continue;
    const sheets = [...groups].map(([register, rows]) => ({ register, sheet: sheetOf(sheet, column, register, rows) }));
    return { column: column.index, sheets };
  }
  return undefined;
}

/** Rows of each word; rows without one go with none. Undefined where there are too many words for registers. */
function groupRows(sheet: Sheet, column: number): Map<string, number[]> | undefined {
  const { table, firstRow, dateColumn } = sheet;
  const groups = new Map<string, number[]>();
  for (let row = firstRow; row < table.rowCount; row++) {
    const word = cellText(table, row, column);
    // A row without a date is no reading: headings again, totals.
    if (word === '' || cellText(table, row, dateColumn) === '') continue;
    if (word === sheet.columns[column]?.heading || readsAsTotal(table, row)) continue;
    const group = groups.get(word);
    if (group) group.push(row);
    else if (groups.size >= MOST_REGISTERS) return undefined;
    else groups.set(word, [row]);
  }
  return groups;
}

const readsAsTotal = (table: Table, row: number): boolean =>
  /^(grand |sub ?)?(total|sum)/i.test(cellText(table, row, 0));

/** Whether most moments stand in several rows: one for each register. */
function momentsRepeat(sheet: Sheet): boolean {
  const { table, firstRow, dateColumn, columns } = sheet;
  const clock = columns.find((c) => c.clocks > 0 && c.index !== dateColumn)?.index;
  const end = Math.min(table.rowCount, firstRow + SAMPLE_ROWS);
  const moments = new Set<string>();
  for (let row = firstRow; row < end; row++)
    moments.add(`${cellText(table, row, dateColumn)} ${clock === undefined ? '' : cellText(table, row, clock)}`);
  if (moments.size <= (end - firstRow) * 0.75) return true;
  // Registers one after another, each longer than the sample, repeat its moments further down.
  if (table.rowCount <= end) return false;
  let again = 0;
  let looked = 0;
  for (let row = end; row < table.rowCount && looked < SAMPLE_ROWS; row += 7, looked++)
    if (moments.has(`${cellText(table, row, dateColumn)} ${clock === undefined ? '' : cellText(table, row, clock)}`))
      again++;
  return again > 100;
}

function sheetOf(sheet: Sheet, column: ColumnFacts, register: string, rows: readonly number[]): Sheet {
  const { table, firstRow } = sheet;
  const heads = Array.from({ length: firstRow }, (_, row) => row);
  const own = layOutSheet(sheet.fileName, pickRows(table, [...heads, ...rows]));
  const words = plainWords(register);
  const carrier =
    carrierOfWords(words) ?? (/^a\+|consum|received/.test(words) ? { carrier: 'electricity' as const } : undefined);
  const unit = unitBeside(own, column.index);
  return {
    ...own,
    columns: own.columns.map((c): ColumnFacts => {
      if (c.index === column.index) return { ...c, meaning: { role: 'index' } };
      if (!isNumberColumn(c) || ['cost', 'rate', 'calorific', 'quality', 'beside'].includes(c.meaning.role)) return c;
      const heading = [c.heading, Number.isNaN(readAwkwardNumber(register, '.')) ? register : `register ${register}`];
      return {
        ...c,
        heading: heading.filter((word) => word !== '').join(', '),
        meaning: {
          ...c.meaning,
          ...(carrier && (c.meaning.carrier === undefined || 'seriesRole' in carrier) ? carrier : {}),
          ...(c.meaning.unit === undefined && unit !== undefined ? { unit } : {}),
        },
      };
    }),
    ...(sheet.workbook ? { workbook: sheet.workbook } : {}),
  };
}

/** A column of one and the same unit in every row of the register. */
function unitBeside(sheet: Sheet, registerColumn: number) {
  for (const c of sheet.columns) {
    if (c.index === registerColumn || !isWordColumn(c)) continue;
    const word = cellText(sheet.table, sheet.firstRow, c.index);
    const unit = word.length <= 12 ? unitOfWords(plainWords(word)) : undefined;
    if (unit !== undefined) return unit;
  }
  return undefined;
}

/** The same text, with only some of its rows. */
export function pickRows(table: Table, rows: readonly number[]): Table {
  let cells = 0;
  for (const row of rows) cells += table.rowStart[row + 1]! - table.rowStart[row]!;
  const rowStart = new Uint32Array(rows.length + 1);
  const lineOfRow = new Uint32Array(rows.length);
  const cellFrom = new Uint32Array(cells);
  const cellTo = new Uint32Array(cells);
  const escaped = new Set<number>();
  let at = 0;
  rows.forEach((row, i) => {
    rowStart[i] = at;
    lineOfRow[i] = table.lineOfRow[row]!;
    for (let cell = table.rowStart[row]!; cell < table.rowStart[row + 1]!; cell++) {
      if (table.escaped.has(cell)) escaped.add(at);
      cellFrom[at] = table.cellFrom[cell]!;
      cellTo[at++] = table.cellTo[cell]!;
    }
  });
  rowStart[rows.length] = at;
  return { ...table, rowCount: rows.length, rowStart, lineOfRow, cellFrom, cellTo, escaped };
}
