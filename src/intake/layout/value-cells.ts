/** Number columns of the rows that have a date, as typed arrays; what is no number is named by line. */

import type { Told } from '../../model/shapes/told.ts';
import { type DecimalDecision, decideDecimal } from '../numbers/decide-decimal.ts';
import { countAsNumber, isMissing, readNumber, readPlainNumber } from '../numbers/read-number.ts';
import type { EnergyUnit, IntakeChoices } from '../terms/choices.ts';
import { type Progress, ROWS_A_STEP } from '../terms/progress.ts';
import type { RemarkBook } from '../terms/remark-book.ts';
import { LEAST_KWH_A_DAY, MOST_KWH_A_DAY, ratioOf } from '../terms/units.ts';
import { cellAt, cellText } from '../text/table.ts';
import { type ColumnFacts, isNumberColumn } from './column-facts.ts';
import { slotOfHeading, unitOfSign } from './headings.ts';
import type { Sheet } from './sheet.ts';
import { stepOf } from './sheet-step.ts';
import { isInOtherLanguage } from './titles.ts';

export function columnName({ columns, register }: Sheet, column: number): string {
  const heading = columns[column]?.heading;
  if (register !== undefined && heading && slotOfHeading(heading) !== undefined) return register;
  return heading || `column ${column + 1}`;
}

/** Decimal sign of a column, with the remarks that doubt deserves. */
export function settleDecimal(sheet: Sheet, column: number, choices: IntakeChoices, book: RemarkBook): '.' | ',' {
  if (choices.decimal !== undefined) return choices.decimal;
  const others = sheet.columns
    .filter((c) => isNumberColumn(c) && c.index !== column && !c.counting)
    .map((c) => c.index);
  const decision: DecimalDecision = decideDecimal(sheet.table, column, firstNumberRow(sheet), others.slice(0, 6));
  const tooMany = decision.state === 'asked' ? signByAmount(sheet, column, decision) : undefined;
  const apart = decision.state === 'asked' ? signByRise(sheet, column, decision) : undefined;
  const isComma =
    decision.state === 'asked' &&
    apart === undefined &&
    decision.found.includes(',') &&
    isInOtherLanguage(sheet) &&
    !decision.hasHundreds &&
    (isOfDaysAtMost(sheet, sheet.columns[column]!) || isMuch(sheet.columns[column]!));
  const decimal = apart ?? (isComma ? ',' : (tooMany ?? decision.decimal));
  const where = { column: columnName(sheet, column), found: decision.found, expected: decimal };
  const row = decision.row >= 0 ? { row: sheet.table.lineOfRow[decision.row]! } : {};
  if (decision.state === 'asked' && !apart && !isComma && !(tooMany && isOfDaysAtMost(sheet, sheet.columns[column]!)))
    book.add('decimal-asked', 'question', { ...row, ...where });
  if (decision.state === 'mixed') book.add('decimal-mixed', 'question', { ...row, ...where });
  if ((decision.state === 'decided' || tooMany || isComma) && decimal === ',' && !book.has('decimal-comma'))
    book.add('decimal-comma', 'note', { column: where.column });
  return decimal;
}

/** Sums over the data are written with the sign of the data. */
const firstNumberRow = ({ headingRow, firstRow }: Sheet): number => (headingRow < 0 ? firstRow : headingRow + 1);

/** Decimal sign of columns that are read together: the first that writes any sign tells. */
export function settleDecimals(
  sheet: Sheet,
  columns: readonly ColumnFacts[],
  choices: IntakeChoices,
  book: RemarkBook,
): '.' | ',' {
  const writesSign = ({ index }: ColumnFacts) =>
    decideDecimal(sheet.table, index, firstNumberRow(sheet), []).state !== 'plain';
  const told = columns.length > 1 ? columns.find(writesSign) : undefined;
  return settleDecimal(sheet, (told ?? columns[0]!).index, choices, book);
}

/** More than this of a large unit in a row is no home's: thousands of kWh, m³ or kW. A judgement. */
const TOO_MANY = 5000;
const LARGE_UNITS = new Set(['kWh', 'MWh', 'GJ', 'Gcal', 'm³', 'kW']);

const isLarge = (unit: string | undefined): boolean => unit !== undefined && LARGE_UNITS.has(unit);
/** A few of these may be all of a month or a year; 1.234 kWh or m³ would be no home's. */
const isMuch = ({ meaning: { unit } }: ColumnFacts): boolean => isLarge(unit) && unit !== 'kWh' && unit !== 'm³';

/** Rows of a day or less, in a large unit that is written: thousands of it would be no home's, those of Wh or W may be. */
function isOfDaysAtMost(sheet: Sheet, { meaning }: ColumnFacts): boolean {
  const { kind, minutes } = stepOf(sheet);
  const isNamed = isLarge(meaning.unit) || meaning.carrier === 'outdoor-temperature';
  return isNamed && (kind === 'time' || kind === 'day') && minutes !== undefined && minutes <= 1440;
}

/** Where a sign could be either, a thousands sign may make more than a home can use; a counter may show that much. */
function signByAmount(sheet: Sheet, column: number, { found }: DecimalDecision): '.' | ',' | undefined {
  const { meaning, largest } = sheet.columns[column]!;
  const isAmount = meaning.role !== 'reading' && LARGE_UNITS.has(meaning.unit ?? 'kWh');
  const sign = /[.,]/.exec(found)?.[0];
  const thousands = Math.max(largest, largest < TOO_MANY ? largest * 1000 : largest);
  return isAmount && thousands > TOO_MANY && (sign === '.' || sign === ',') ? sign : undefined;
}

/** kWh in one of the units of counters whose rise tells; of a m³ of gas about. */
const KWH_IN = new Map<EnergyUnit | undefined, number>([
  ['kWh', 1],
  ['m³', 11],
]);

/**
 * Decimal sign of a counter that sets thousands apart as its language does: as decimals it would rise by less than any
 * home uses, as thousands by what homes do.
 */
function signByRise(sheet: Sheet, column: number, { found }: DecimalDecision): '.' | ',' | undefined {
  const { table, firstRow } = sheet;
  const { meaning } = sheet.columns[column]!;
  const kWh = meaning.role === 'reading' ? KWH_IN.get(meaning.unit) : undefined;
  const { minutes } = stepOf(sheet);
  const sign = isInOtherLanguage(sheet) ? '.' : ',';
  if (kWh === undefined || minutes === undefined || !found.includes(sign)) return undefined;
  if (sign === ',' && table.separator === ';') return undefined;
  const rows = Array.from({ length: table.rowCount - firstRow }, (_, i) => cellText(table, firstRow + i, column));
  const readings = rows.map((cell) => countAsNumber(cell.replaceAll(sign, ''))).filter((one) => !Number.isNaN(one));
  const rise = (Math.max(...readings) - Math.min(...readings)) * kWh;
  const perDay = (rise / (readings.length - 1) / minutes) * 1440;
  const isOfHome = perDay / 1000 < LEAST_KWH_A_DAY && perDay >= LEAST_KWH_A_DAY && perDay <= MOST_KWH_A_DAY;
  return isOfHome ? (sign === ',' ? '.' : ',') : undefined;
}

const DIGIT_NINE = 57;

/** Amounts of a column, with those of its other phases added and those of its own making taken off. */
export function readAmounts(sheet: Sheet, facts: ColumnFacts, ...rest: RestOfReading): Float64Array {
  const values = readValues(sheet, facts.index, ...rest);
  for (const phase of facts.phases ?? []) {
    const more = readValues(sheet, phase, ...rest);
    for (let i = 0; i < values.length; i++) values[i]! += more[i]!;
  }
  for (const part of facts.less ?? []) {
    const own = readValues(sheet, part, ...rest);
    for (let i = 0; i < values.length; i++) values[i]! -= own[i]!;
  }
  // Rounding in the file may leave less than nothing.
  if (facts.less) for (let i = 0; i < values.length; i++) if (values[i]! < 0) values[i] = 0;
  return values;
}
type RestOfReading = Parameters<typeof readValues> extends [Sheet, number, ...infer Rest] ? Rest : never;

/** What loggers and weather services write where there is no value; no home sends out that much, no place is so cold. */
const isSentinel = (value: number): boolean => value === -9999 || value === -99_999 || value === -999.9;

/** A number with another unit behind it than its column's is converted, or is missing where that cannot be. */
export function readValues(
  sheet: Sheet,
  column: number,
  rows: Uint32Array,
  count: number,
  decimal: '.' | ',',
  expectedTold: Told,
  book: RemarkBook,
  onProgress?: Progress,
): Float64Array {
  const { table } = sheet;
  const { codes, cellFrom, cellTo } = table;
  const values = new Float64Array(count);
  const facts = sheet.columns[column];
  const columnUnit = unitOfSign(facts?.suffix ?? '') ?? facts?.meaning.unit;
  for (let i = 0; i < count; i++) {
    if (i % ROWS_A_STEP === 0) onProgress?.(i / count);
    const cell = cellAt(table, rows[i]!, column);
    const from = cell < 0 ? 0 : cellFrom[cell]!;
    const to = cell < 0 ? 0 : cellTo[cell]!;
    const plain = readPlainNumber(codes, from, to, decimal);
    if (!Number.isNaN(plain)) {
      values[i] = plain;
      continue;
    }
    const value = readNumber(table.text, from, to, decimal);
    values[i] = isSentinel(value) ? Number.NaN : value;
    if (!Number.isNaN(value)) {
      if (table.text.charCodeAt(to - 1) <= DIGIT_NINE) continue;
      const written = cellText(table, rows[i]!, column);
      // "1.2k", as people round.
      if (/\dk$/.test(written)) {
        values[i] = value * 1000;
        continue;
      }
      const unit = unitOfSign(/[^\d.,\s]+\d?$/.exec(written)?.[0] ?? '');
      if (unit === undefined || columnUnit === undefined || unit === columnUnit) continue;
      const ratio = ratioOf(unit, columnUnit);
      values[i] = value * (ratio ?? Number.NaN);
      const where = { row: table.lineOfRow[rows[i]!]!, column: columnName(sheet, column) };
      book.tally(ratio === undefined ? 'unit-mixed' : 'unit-converted', 'note', {
        ...where,
        found: written.slice(0, 40),
        expected: columnUnit,
      });
      continue;
    }
    const text = cellText(table, rows[i]!, column);
    if (isMissing(text)) {
      const cut = cell < 0 && rows[i] === table.rowCount - 1 && table.openEnd;
      if (cut)
        book.add('row-cut-off', 'note', { row: table.lineOfRow[rows[i]!]!, found: cellText(table, rows[i]!, 0) });
      continue;
    }
    book.tally('number-unreadable', 'note', {
      row: table.lineOfRow[rows[i]!]!,
      column: columnName(sheet, column),
      found: text.slice(0, 40),
      expectedTold,
    });
  }
  return values;
}
