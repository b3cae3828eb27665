/** Where the headings of a table stand, and what they call each column. */
import { readAwkwardNumber } from '../numbers/read-number.ts';
import { pickRows } from '../text/rewrite-cells.ts';
import { cellCount, cellText, rowsWithoutDigit, rowTexts, type Table } from '../text/table.ts';
import { numberEitherWay } from './column-facts.ts';
import { carrierOfWords, plainWords, unitOfWords } from './headings.ts';
import { TOTALS } from './vocabulary.ts';

/**
 * Rows directly above the first one with a date that hold its numbers under a heading of their own, such as "Jan (from the
 * 14th)": data whose dates cannot be read, and no headings.
 */
export function undatedAbove(table: Table, dated: number): number {
  const isNumber = (cell: string) => !Number.isNaN(readAwkwardNumber(cell, '.')) && !/^(19|20)\d\d$/.test(cell);
  const data = rowTexts(table, dated);
  for (let rows = 1; rows <= 3 && rows < dated; rows++) {
    const cells = rowTexts(table, dated - rows);
    const above = rowTexts(table, dated - rows - 1);
    const hasNumbers = cells.length === data.length && cells.some((cell, i) => isNumber(cell) && isNumber(data[i]!));
    // Where the data bear no units, numbers with one are how many of it are meant.
    const areOfUnits = areUnits(cells) && !data.some((cell) => unitOfWords(plainWords(cell)) !== undefined);
    if (!hasNumbers || areOfUnits || isSum(cells)) return 0;
    const isHeading =
      above.length === cells.length && above.every((cell) => cell !== '' && !/^[-+]?[\d.,]+$/.test(cell));
    if (isHeading) return rows;
  }
  return 0;
}

const RULER = /^[:|+]*[-=_*]+[:|+]*$/;
/** With one of these or nothing a ruled line begins. */
const RULING: ReadonlySet<number> = new Set([...':|+-=_*'].map((sign) => sign.charCodeAt(0)));
function mayRule({ codes, cellFrom, cellTo, rowStart }: Table, row: number): boolean {
  const cell = rowStart[row]!;
  return RULING.has(codes[cellFrom[cell]!]!) || cellFrom[cell] === cellTo[cell];
}

/** The table without the lines of dashes that are drawn below its headings and around its parts; undefined where there are none. */
export function withoutRulers(table: Table): Table | undefined {
  const rulers = new Set(rowsWithoutDigit(table, 0).filter((row) => isRuler(table, row)));
  if (rulers.size === 0) return undefined;
  return pickRows(
    table,
    Array.from({ length: table.rowCount }, (_, row) => row).filter((row) => !rulers.has(row)),
  );
}

function isRuler(table: Table, row: number): boolean {
  // Most lines begin with something else, and of them no texts are made.
  if (!mayRule(table, row)) return false;
  const cells = rowTexts(table, row).filter((cell) => cell !== '');
  // A row of single dashes has nothing in it.
  return cells.some((cell) => cell.length > 1) && cells.every((cell) => RULER.test(cell));
}

/** The row above the data with at least two words in it; a row of units between may stand below it. */
export function findHeadingRow(table: Table, firstRow: number): number {
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

/** How many of a unit one is, as a row of units says: "100 ft³". */
const COUNTED = /^1(0+|[,.' ]000) ?[x×*]? ?(?=\D)([^\d]*[³23]?)$/;
const isCounted = (cell: string): boolean =>
  unitOfWords(plainWords(COUNTED.exec(cell.replace(/^[[(](.*)[\])]$/, '$1'))?.[2] ?? '')) !== undefined;

/** Sums may stand above the data. */
const isSum = (cells: readonly string[]): boolean =>
  TOTALS.test(cells[0]!) &&
  cells
    .slice(1)
    .every((cell) => !Number.isNaN(readAwkwardNumber(cell, '.')) || !Number.isNaN(readAwkwardNumber(cell, ',')));

export function widthOf(table: Table, firstRow: number, headingRow: number): number {
  let width = headingRow >= 0 ? cellCount(table, headingRow) : 0;
  for (let row = firstRow; row < Math.min(table.rowCount, firstRow + 50); row++)
    width = Math.max(width, cellCount(table, row));
  return Math.min(width, 400);
}

export function joinHeadings(table: Table, headingRow: number, firstRow: number, width: number): string[] {
  if (headingRow < 0) return Array.from({ length: width }, () => '');
  const rows = Array.from({ length: firstRow - headingRow }, (_, i) => rowTexts(table, headingRow + i)).filter(
    (cells, i) =>
      !isSum(cells.filter((cell) => cell !== '')) &&
      (i === 0 || !cells.some((cell) => isAmount(cell) && !isCounted(cell))),
  );
  const [top, below] = rows;
  if (top && below && rows.length === 2 && below[0] === '') rows[0] = carryMerged(top, below, width) ?? top;
  const over = headingsOver(table, headingRow, width);
  return Array.from({ length: width }, (_, column) =>
    [
      over[column] ?? '',
      ...rows
        .map((cells) => cells[column] ?? '')
        .map((cell) => (isCounted(cell) && /^\d/.test(cell) ? `(${cell})` : cell)),
    ]
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
