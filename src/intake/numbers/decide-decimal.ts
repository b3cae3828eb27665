/** Decimal point or decimal comma, decided from a whole column and never cell by cell. */
import { type Codes, cellAt, cellText, type Table } from '../text/table.ts';

export interface DecimalEvidence {
  /** Cells that can only be read with this decimal sign. */
  readonly point: number;
  readonly comma: number;
  /** Cells like 3.456 or 3,456: thousands or thousandths. */
  readonly eitherPoint: number;
  readonly eitherComma: number;
  /** Cells like 456, as numbers below a thousand stand beside 3,456. */
  readonly whole: number;
  /** Row of the first cell of the rarer kind, where both occur. */
  readonly firstPointRow: number;
  readonly firstCommaRow: number;
}

const POINT = 46;
const COMMA = 44;

/** Looks at every cell of the column from `firstRow` on. */
function weighDecimals(table: Table, column: number, firstRow: number): DecimalEvidence {
  const { codes, cellFrom, cellTo, rowCount } = table;
  let point = 0;
  let comma = 0;
  let eitherPoint = 0;
  let eitherComma = 0;
  let whole = 0;
  let firstPointRow = -1;
  let firstCommaRow = -1;
  for (let row = firstRow; row < rowCount; row++) {
    const cell = cellAt(table, row, column);
    if (cell < 0) continue;
    const from = cellFrom[cell]!;
    const to = cellTo[cell]!;
    let points = 0;
    let commas = 0;
    let last = -1;
    for (let i = from; i < to; i++) {
      const code = codes[i];
      if (code === POINT) {
        points++;
        last = i;
      } else if (code === COMMA) {
        commas++;
        last = i;
      }
    }
    if (last < 0) {
      if (to - from === 3 && isDigit(codes[from]!) && codes[from] !== 48) whole++;
      continue;
    }
    const verdict = judge(codes, from, to, last, points, commas);
    if (verdict === 'point') {
      if (point++ === 0) firstPointRow = row;
    } else if (verdict === 'comma') {
      if (comma++ === 0) firstCommaRow = row;
    } else if (verdict === 'either point') eitherPoint++;
    else if (verdict === 'either comma') eitherComma++;
  }
  return { point, comma, eitherPoint, eitherComma, whole, firstPointRow, firstCommaRow };
}

/**
 * Whether numbers with a point stand there and nothing that could speak against it, as in nearly all files: then a sure one
 * tells, and none of the others need be weighed.
 */
function isPlainlyPoint(table: Table, column: number, firstRow: number): boolean {
  const { codes, cellFrom, cellTo, rowStart, rowCount } = table;
  let isSure = false;
  for (let row = firstRow; row < rowCount; row++) {
    const cell = rowStart[row]! + column;
    if (cell >= rowStart[row + 1]!) continue;
    const from = cellFrom[cell]!;
    const to = cellTo[cell]!;
    const point = onlyPoint(codes, from, to);
    if (point === SPOILT) return false;
    if (!isSure && point !== NONE) isSure = judge(codes, from, to, point, 1, 0) === 'point';
  }
  return isSure;
}

const NONE = -1;
const SPOILT = -2;

/** Where the point of a cell stands; `NONE` without one, `SPOILT` with two or with a comma. */
function onlyPoint(codes: Codes, from: number, to: number): number {
  let point = NONE;
  for (let i = from; i < to; i++) {
    const code = codes[i]!;
    // Digits and letters come after both signs.
    if (code > POINT) continue;
    if (code === COMMA || (code === POINT && point !== NONE)) return SPOILT;
    if (code === POINT) point = i;
  }
  return point;
}

type Verdict = 'point' | 'comma' | 'either point' | 'either comma' | 'none';

function judge(codes: Codes, from: number, to: number, last: number, points: number, commas: number): Verdict {
  if (points > 0 && commas > 0) {
    if (points > 1 && commas > 1) return 'none';
    return codes[last] === POINT ? 'point' : 'comma';
  }
  if (points > 1) return 'comma';
  if (commas > 1) return 'point';
  let before = 0;
  let nought = false;
  for (let i = last - 1; i >= from && isDigit(codes[i]!); i--) {
    before++;
    nought = codes[i] === 48;
  }
  let after = 0;
  for (let i = last + 1; i < to && isDigit(codes[i]!); i++) after++;
  if (before + after === 0) return 'none';
  // Nobody groups what an exponent follows.
  const hasExponent = ((codes[last + after + 1] ?? 0) | 32) === 101 && last + after + 1 < to;
  const grouped = after === 3 && before >= 1 && before <= 3 && !nought && !hasExponent;
  if (points === 1) return grouped ? 'either point' : 'point';
  return grouped ? 'either comma' : 'comma';
}

const isDigit = (code: number): boolean => code >= 48 && code <= 57;

export interface DecimalDecision {
  readonly decimal: '.' | ',';
  readonly state: 'plain' | 'decided' | 'asked' | 'mixed';
  /** Row and cell that show the doubt. */
  readonly row: number;
  readonly found: string;
  /** Whether numbers of three digits stand beside the doubtful ones, which then may be thousands. */
  readonly hasHundreds?: boolean;
}

/** Decides for one column, with the other number columns of the file as second witness. */
export function decideDecimal(
  table: Table,
  column: number,
  firstRow: number,
  otherColumns: readonly number[],
): DecimalDecision {
  if (isPlainlyPoint(table, column, firstRow)) return { decimal: '.', state: 'decided', row: -1, found: '' };
  const own = weighDecimals(table, column, firstRow);
  if (own.point > 0 && own.comma > 0) {
    const decimal = own.point >= own.comma ? '.' : ',';
    const row = decimal === '.' ? own.firstCommaRow : own.firstPointRow;
    return { decimal, state: 'mixed', row, found: cellText(table, row, column) };
  }
  if (own.point > 0) return { decimal: '.', state: 'decided', row: -1, found: '' };
  if (own.comma > 0) return { decimal: ',', state: 'decided', row: -1, found: '' };
  for (const other of otherColumns) {
    if (other === column) continue;
    const witness = weighDecimals(table, other, firstRow);
    if (witness.point > 0 && witness.comma === 0) return { decimal: '.', state: 'decided', row: -1, found: '' };
    if (witness.comma > 0 && witness.point === 0) return { decimal: ',', state: 'decided', row: -1, found: '' };
  }
  if (own.eitherPoint + own.eitherComma === 0) return { decimal: '.', state: 'plain', row: -1, found: '' };
  const row = firstRowWithSign(table, column, firstRow);
  // Thousandths of a kWh are what meters write; a lone comma in a comma-separated file is a thousands sign.
  const decimal = own.eitherPoint > 0 ? '.' : table.separator === ',' ? '.' : ',';
  return { decimal, state: 'asked', row, found: cellText(table, row, column), hasHundreds: own.whole > 0 };
}

function firstRowWithSign(table: Table, column: number, firstRow: number): number {
  for (let row = firstRow; row < table.rowCount; row++) if (/[.,]/.test(cellText(table, row, column))) return row;
  return firstRow;
}
