/** A table with some of its cells written anew, taken out or cut in two; the others still lie in its text. */
import { cellCount, codesOf, splitTable, type Table } from './table.ts';

/** @param rewrite what stands in place of a cell: none, one or two texts; undefined leaves it as it is */
export function rewriteCells(
  table: Table,
  rewrite: (row: number, column: number) => readonly string[] | undefined,
): Table {
  const added: string[] = [];
  let length = table.text.length;
  const most = table.cellFrom.length + table.rowCount;
  const rowStart = new Uint32Array(table.rowCount + 1);
  const cellFrom = new Uint32Array(most);
  const cellTo = new Uint32Array(most);
  const escaped = new Set<number>();
  let at = 0;
  for (let row = 0; row < table.rowCount; row++) {
    rowStart[row] = at;
    for (let column = 0; column < cellCount(table, row); column++) {
      const cell = table.rowStart[row]! + column;
      const texts = rewrite(row, column);
      if (texts === undefined) {
        if (table.escaped.has(cell)) escaped.add(at);
        cellFrom[at] = table.cellFrom[cell]!;
        cellTo[at++] = table.cellTo[cell]!;
        continue;
      }
      for (const text of texts) {
        added.push(text);
        cellFrom[at] = length;
        length += text.length;
        cellTo[at++] = length;
      }
    }
  }
  rowStart[table.rowCount] = at;
  const text = table.text + added.join('');
  return { ...table, text, codes: codesOf(text), rowStart, cellFrom, cellTo, escaped };
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

/** A table of rows made anew, each with the line of the file it comes from. */
export function tableOfRows(rows: readonly { readonly line: number; readonly cells: readonly string[] }[]): Table {
  const lines = rows.map(({ cells }) => cells.map((cell) => cell.replaceAll(/[\t\r\n"]/g, ' ')).join('\t'));
  const table = splitTable(`${lines.join('\n')}\n`, '\t', 0)!;
  // Rows without anything in them are left out of a table.
  const filled = rows.filter(({ cells }) => cells.some((cell) => cell.trim() !== ''));
  return { ...table, lineOfRow: Uint32Array.from(filled.slice(0, table.rowCount), ({ line }) => line) };
}
