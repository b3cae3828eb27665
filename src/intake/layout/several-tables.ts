/** Several tables on one sheet, side by side or one below the other, each with dates and headings of its own. */
import { isDated } from '../dates/read-stamp.ts';
import { tableOfRows } from '../text/rewrite-cells.ts';
import { cellText, rowTexts, type Table } from '../text/table.ts';
import { isDateColumn } from './column-facts.ts';
import type { Sheet } from './sheet.ts';
import {
  belowEachOther,
  isDateLike,
  isOfDates,
  isWords,
  type PartTable,
  SEARCHED_ROWS,
  withoutTime,
} from './tables-below.ts';

const SAMPLE_ROWS = 300;

/** The tables of a sheet; of one table itself, with those beside it that go on with it or are of the same days joined to it. */
export function tablesOf(table: Table): readonly PartTable[] {
  return (besideEachOther(table) ?? [{ name: '', table }]).flatMap(({ name, table: own }) =>
    belowEachOther(own).map((part) => ({ ...part, name: [name, part.name].filter((word) => word !== '').join(' ') })),
  );
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
