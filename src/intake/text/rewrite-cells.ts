/** A table with some of its cells written anew, taken out or cut in two; the others still lie in its text. */
import { cellCount, codesOf, type Table } from './table.ts';

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
