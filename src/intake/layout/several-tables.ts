/** Several tables on one sheet, side by side or one below the other, each with dates and headings of its own. */
import { monthOfName } from '../dates/month-names.ts';
import { readStamp } from '../dates/read-stamp.ts';
import { createStampReader, UNREADABLE } from '../dates/stamp-reader.ts';
import { pickRows, tableOfRows } from '../text/rewrite-cells.ts';
import { cellCount, cellText, rowTexts, type Table } from '../text/table.ts';
import { isDateColumn, numberEitherWay } from './column-facts.ts';
import { meaningOf, plainWords, unitOfWords } from './headings.ts';
import type { Sheet } from './sheet.ts';

export interface PartTable {
  readonly name: string;
  readonly table: Table;
}

const SEARCHED_ROWS = 40;
const SAMPLE_ROWS = 300;

/** The tables of a sheet; of one table itself, with those beside it that go on with it or are of the same days joined to it. */
export function tablesOf(table: Table): readonly PartTable[] {
  return (besideEachOther(table) ?? [{ name: '', table }]).flatMap(({ name, table: own }) =>
    belowEachOther(own).map((part) => ({ ...part, name: [name, part.name].filter((word) => word !== '').join(' ') })),
  );
}

const reader = createStampReader();
const isDated = (cell: string): boolean =>
  cell.length >= 5 && readStamp(cell, 0, cell.length, true, reader) !== UNREADABLE;
const isDateLike = (cell: string): boolean => isDated(cell) || monthOfName(cell.replace(/\.$/, '')) > 0;
const isWords = (cell: string): boolean => cell !== '' && !isDated(cell) && Number.isNaN(numberEitherWay(cell));

const known = new Map<string, boolean>();
/** Whether dates stand below such a heading; the few headings of a file are asked about once. */
function isOfDates(heading: string): boolean {
  if (heading.length < 3 || heading.length > 40 || /\d/.test(heading)) return false;
  let is = known.get(heading);
  if (is === undefined) {
    if (known.size > 1000) known.clear();
    is = ['stamp', 'from', 'time'].includes(meaningOf(heading).role);
    known.set(heading, is);
  }
  return is;
}

/** Where each table begins in a row of headings that has several columns of dates, each with words after it. */
function startsIn(table: Table, row: number): readonly number[] {
  const heads = rowTexts(table, row);
  const first = heads.findIndex(isOfDates);
  if (first < 0) return [];
  const starts = heads
    .map((_, c) => c)
    .filter((c) => c >= first && isOfDates(heads[c]!) && (heads[c] === heads[first] || heads[c - 1] === ''))
    .filter((c) => isWords(heads[c + 1] ?? ''));
  const isFilled = (c: number) =>
    [1, 2, 3].some((down) => row + down < table.rowCount && isDateLike(cellText(table, row + down, c)));
  if (starts.length < 2 || !starts.every(isFilled)) return [];
  // The end of a bill, with which the next begins, is no other table's.
  const at = (down: number, c: number) => (row + down < table.rowCount ? cellText(table, row + down, c) : '');
  return [1, 2, 3].some((down) => at(down, starts[1]!) !== '' && at(down, starts[1]!) === at(down + 1, starts[0]!))
    ? []
    : starts;
}

function besideEachOther(table: Table): readonly PartTable[] | undefined {
  for (let row = 0; row < Math.min(SEARCHED_ROWS, table.rowCount - 1); row++) {
    const starts = startsIn(table, row);
    if (starts.length > 1) return splitBeside(table, row, starts);
  }
  return undefined;
}

function splitBeside(table: Table, headingRow: number, starts: readonly number[]): readonly PartTable[] {
  const all = Array.from({ length: table.rowCount }, (_, row) => ({
    line: table.lineOfRow[row]!,
    cells: rowTexts(table, row),
  }));
  const heads = all[headingRow]!.cells;
  const below = all.slice(headingRow + 1);
  const own = (cells: readonly string[], block: number) => {
    const next = starts[block + 1];
    return cells.slice(block === 0 ? 0 : starts[block], next !== undefined && heads[next - 1] === '' ? next - 1 : next);
  };
  const filled = (cells: readonly string[]) => cells.filter((cell) => cell !== '');
  const over = headingRow === 0 ? [] : all[headingRow - 1]!.cells;
  const titles = starts.map((_, block) => filled(own(over, block))[0] ?? '');
  const hasTitles = filled(titles).length > 1;
  const above = all.slice(0, headingRow - (hasTitles ? 1 : 0));
  const words = starts.map((start, block) => filled(heads.slice(start + 1, starts[block + 1])).join(', '));
  const datesOf = starts.map((start) => below.map(({ cells }) => cells[start] ?? ''));
  if (datesOf.every((dates) => dates.every((date, i) => date === '' || date === datesOf[0]![i]))) {
    // One table with a date too many: its columns bear the titles over them.
    const joined = (cells: readonly string[], title: (block: number) => string = () => '') =>
      starts.flatMap((start, block) =>
        block === 0
          ? own(cells, 0).map((cell, c) => (c > start && cell !== '' ? title(0) + cell : cell))
          : own(cells, block)
              .slice(1)
              .map((cell) => (cell === '' ? '' : title(block) + cell)),
      );
    const named = joined(heads, (block) => (hasTitles ? `${titles[block]} ` : ''));
    return [
      {
        name: '',
        table: tableOfRows([
          ...above,
          { ...all[headingRow]!, cells: named },
          ...below.map((row) => ({ ...row, cells: joined(row.cells) })),
        ]),
      },
    ];
  }
  const parts = starts.map((_, block) => {
    const rows = below
      .map((row) => ({ ...row, cells: own(row.cells, block) }))
      .filter((_, i) => datesOf[block]![i] !== '');
    const titled = hasTitles ? [{ ...all[headingRow - 1]!, cells: [titles[block]!] }] : [];
    return {
      name: titles[block] || words[block]!,
      heads: [...above, ...titled, { ...all[headingRow]!, cells: own(heads, block) }],
      rows,
    };
  });
  const dated = datesOf.flat().filter(isDated);
  const goesOn =
    new Set(words).size === 1 && new Set(dated).size === dated.length && new Set(titles.map(withoutTime)).size === 1;
  if (goesOn && dated.length > 0)
    return [{ name: '', table: tableOfRows([...parts[0]!.heads, ...parts.flatMap(({ rows }) => rows)]) }];
  return parts.map(({ name, heads: own, rows }) => ({ name, table: tableOfRows([...own, ...rows]) }));
}

/** Whether a second column of dates has the heading of the first and other dates, so that a table stands beside it that was not told apart. */
export function hasDatesTwice({ columns, table, firstRow, dateColumn }: Sheet): boolean {
  const at = (row: number, column: number) => (row < table.rowCount ? cellText(table, row, column) : '');
  const rows = Array.from({ length: Math.min(SAMPLE_ROWS, table.rowCount - firstRow) }, (_, i) => firstRow + i);
  const heading = columns[dateColumn]?.heading ?? '';
  return columns.some(
    (c) =>
      c.index > dateColumn &&
      heading !== '' &&
      c.heading === heading &&
      isDateColumn(c) &&
      rows.some((row) => ![at(row, dateColumn), at(row + 1, dateColumn), ''].includes(at(row, c.index))),
  );
}

const withoutTime = (title: string): string =>
  title
    .split(/\s+/)
    .filter((word) => !/\d/.test(word) && monthOfName(word) === 0)
    .join(' ');

/** Rows of headings, known by the words above the dates of the first, and titles that stand for headings of their own. */
function headingsIn(table: Table): readonly number[] {
  const rows: number[] = [];
  const isOther = (cells: readonly string[]) =>
    cells.length === 1
      ? cells[0]!.split(' ').filter((word) => unitOfWords(plainWords(word)) === undefined).length === 1 &&
        meaningOf(cells[0]!).carrier !== undefined
      : cells.some((cell) => ['value', 'reading'].includes(meaningOf(cell).role));
  let column = -1;
  for (let row = 0; row + 1 < table.rowCount; row++) {
    if (column < 0 && row > SEARCHED_ROWS) return [];
    if (column >= 0 && !startsWithLetter(table, row, column)) continue;
    const from = Math.max(0, column);
    const before = column < 0 ? cellCount(table, row) : column + 1;
    for (let c = from; c < before; c++) {
      if (!startsWithLetter(table, row, c) || /\d/.test(cellText(table, row, c))) continue;
      if (column < 0 && !isOfDates(cellText(table, row, c))) continue;
      const cells = rowTexts(table, row).filter((cell) => cell !== '');
      if (cells.length < (column < 0 ? 2 : 1) || !cells.every(isHead)) continue;
      if (!isDateLike(cellText(table, row + 1, c)) || monthOfName(cells[0]!) > 0) continue;
      // Below an empty line a row of words over dates is one of headings, whatever it speaks of.
      const isApart = row > 0 && table.lineOfRow[row]! > table.lineOfRow[row - 1]! + 1;
      const isOfOwn = cells.length > 1 && (isApart || isOfDates(cellText(table, row, c)));
      if (column >= 0 && !isOther(cells) && !isOfOwn) continue;
      column = c;
      rows.push(row);
      break;
    }
  }
  return rows;
}

/** Of a year, a column may be named by that alone. */
const isHead = (cell: string): boolean => isWords(cell) || /^(19|20)\d\d$/.test(cell);

function startsWithLetter(table: Table, row: number, column: number): boolean {
  const cell = table.rowStart[row]! + column;
  const from = table.cellFrom[cell]!;
  const code = table.codes[from]!;
  // Digits and signs, with which nearly all begin, come before the letters.
  if (!(code >= 65) || cell >= table.rowStart[row + 1]! || from >= table.cellTo[cell]!) return false;
  return code > 191 || ((code | 32) >= 97 && (code | 32) <= 122);
}

function belowEachOther(table: Table): readonly PartTable[] {
  const headings = headingsIn(table);
  const whole = [{ name: '', table }];
  if (headings.length < 2) return whole;
  const titleOf = (row: number): string => {
    const cells = row === 0 ? [] : rowTexts(table, row - 1).filter((cell) => cell !== '');
    return cells.length === 1 && isHead(cells[0]!) ? cells[0]! : '';
  };
  const startOf = (row: number) => (titleOf(row) === '' ? row : row - 1);
  const hasDates = headings.every((row) => rowTexts(table, row + 1).some(isDated));
  const range = (from: number, before: number) => Array.from({ length: before - from }, (_, i) => from + i);
  // What goes on under the same headings is one table, as on the next page.
  const lastTitle = new Map<string, string>();
  const isTitle = (row: number) => rowTexts(table, row).filter((cell) => cell !== '').length === 1;
  const parts = Map.groupBy(headings, (row) => {
    const heads = rowTexts(table, isTitle(row) ? headings[0]! : row)
      .map(plainWords)
      .join('\n');
    const title = isTitle(row) ? cellText(table, row, 0) : titleOf(row) || (lastTitle.get(heads) ?? '');
    lastTitle.set(heads, title);
    return `${hasDates ? withoutTime(title) : title}\n${heads}`;
  });
  if (parts.size < 2) return whole;
  const before = range(0, startOf(headings[0]!));
  const ofDates = rowTexts(table, headings[0]!).findIndex(isOfDates);
  return [...parts.values()].map((rows) => {
    const own = rows.flatMap((row) => {
      const next = headings[headings.indexOf(row) + 1];
      const its = range(startOf(row), next === undefined ? table.rowCount : startOf(next));
      return isTitle(row) ? [its[0]!, headings[0]!, ...its.slice(1)] : its;
    });
    const heads = rowTexts(table, rows[0]!).filter((cell, c) => cell !== '' && (isTitle(rows[0]!) || c !== ofDates));
    return {
      name: (isTitle(rows[0]!) ? '' : titleOf(rows[0]!)) || heads.join(', '),
      table: pickRows(table, [...before, ...own]),
    };
  });
}
