/** "Heat (kWh, total)" without quotes falls into two cells, and all names behind it stand over the wrong column. */
import { rewriteCells } from '../text/rewrite-cells.ts';
import { cellCount, rowTexts, type Table } from '../text/table.ts';

const SEARCHED_ROWS = 20;

/** Undefined where no heading row is too wide by just the cells that its brackets hold together. */
export function joinBrackets(table: Table): Table | undefined {
  for (let row = 0; row + 1 < Math.min(table.rowCount, SEARCHED_ROWS); row++) {
    const [width, below] = [cellCount(table, row), cellCount(table, row + 1)];
    if (below < 2 || width <= below || cellCount(table, Math.min(row + 2, table.rowCount - 1)) !== below) continue;
    const joined = bracketsOf(rowTexts(table, row));
    if (joined.filter((cell) => cell !== undefined).length !== below) continue;
    return rewriteCells(table, (at, column) => {
      const cell = joined[column];
      return at === row ? (cell === undefined ? [] : [cell]) : undefined;
    });
  }
  return undefined;
}

/** Each cell with those that close its bracket; undefined in the place of these. */
function bracketsOf(cells: readonly string[]): readonly (string | undefined)[] {
  const joined: (string | undefined)[] = [];
  let open = -1;
  for (const [at, cell] of cells.entries()) {
    const isInside = open >= 0;
    if (isInside) joined[open] = `${joined[open]}, ${cell}`;
    joined[at] = isInside ? undefined : cell;
    const depth = cell.split('(').length - cell.split(')').length;
    if (depth > 0 && !isInside) open = at;
    else if (depth < 0) open = -1;
  }
  return joined;
}
