/** Reads the registers of a file one after another with the same shape, and brings their series together. */

import { isTemperature, type Series } from '../model/shapes/evidence.ts';
import type { IntakeShape, ShapeReading } from './importer/shape.ts';
import type { IntakeChoices, IntakeContext } from './intake.ts';
import { isNumberColumn } from './layout/column-facts.ts';
import { plainWords } from './layout/headings.ts';
import { quantityColumns } from './layout/quantity-columns.ts';
import type { RegisterSheets } from './layout/register-rows.ts';
import type { Sheet } from './layout/sheet.ts';
import { columnName } from './layout/value-cells.ts';
import { OUT_OF_DOORS, POWER, RATE_REGISTER } from './layout/vocabulary.ts';
import { decideDecimal } from './numbers/decide-decimal.ts';
import { SHAPES } from './shapes/index.ts';
import { listNames, type RemarkBook } from './terms/remark-book.ts';
import { isOfDegrees, isPower } from './terms/units.ts';

export function readRegisters(
  registers: RegisterSheets,
  shape: IntakeShape,
  choices: IntakeChoices,
  context: IntakeContext,
  book: RemarkBook,
): ShapeReading {
  const { column } = registers;
  const moments = registers.sheets.filter(({ sheet }) => isOfMoment(sheet, registers.sheets));
  // What stands still under words that are not known is none either, beside what moves.
  const isEmpty = ({ sheet }: { sheet: Sheet }) => quantityColumns(sheet, [sheet.dateColumn]).length === 0;
  const isAllEmpty = registers.sheets.every(isEmpty);
  const sheets = registers.sheets.filter((one) => !moments.includes(one) && (isAllEmpty || !isEmpty(one)));
  const without = registers.sheets.filter((one) => !sheets.includes(one));
  const leftOut = [...registers.leftOut, ...without.map(({ register }) => register)];
  book.add('registers-by-column', 'note', {
    column: columnName(sheets[0]!.sheet, column),
    found: listNames(sheets.map((s) => s.register)),
  });
  if (registers.isNetted) book.add('ways-in-turn', 'note', { column: columnName(sheets[0]!.sheet, column) });
  if (leftOut.length > 0)
    book.add('columns-left-out', 'note', {
      found: listNames(leftOut),
      expected: listNames(sheets.map((s) => s.register)),
    });
  let settled = choices;
  const readings: ShapeReading[] = [];
  // The shape was chosen by the first.
  const kind = kindOf(registers.sheets[0]!.sheet);
  for (const { sheet } of sheets) {
    const own = kindOf(sheet) === kind ? shape : bestShape(sheet, shape);
    const reading = own.parse({ sheet, choices: settled, context, book });
    // What the first register settled holds for the file, so that nothing is asked twice.
    settled = {
      ...settled,
      ...ofTheFile(writesSign(sheet) ? reading.choices : { ...reading.choices, decimal: settled.decimal }),
    };
    readings.push(reading);
  }
  let number = 0;
  const renamed = readings.map((reading) => {
    const names = new Map(reading.series.map((s) => [s.id, `series-${++number}`]));
    return {
      series: reading.series.map((s) => ({ ...s, id: names.get(s.id)! })),
      intervals: reading.intervals.map((i) => ({ ...i, seriesId: names.get(i.seriesId)! })),
    };
  });
  const strange = strangeTemperatures(renamed.flatMap((r) => r.series));
  const isKept = ({ id }: Series) => !strange.some((one) => one.id === id);
  const kept = renamed.flatMap((r) => r.series).filter(isKept);
  if (strange.length > 0 && kept.length === 0)
    book.add('places-several', 'refusal', { found: listNames(strange.map(({ name }) => name)) });
  else if (strange.length > 0)
    book.add('columns-left-out', 'note', {
      found: listNames(strange.map(({ name }) => name)),
      expected: listNames(kept.map(({ name }) => name)),
    });
  const units = new Set(readings.map((r) => r.choices.unit));
  const first = readings.find((r) => r.series.length > 0) ?? readings[0]!;
  const { carrier: _carrier, role: _role, unit, ...rest } = first.choices;
  return {
    choices: { ...rest, ...(units.size === 1 && unit !== undefined ? { unit } : {}) },
    series: kept,
    intervals: renamed.flatMap((r) => r.intervals).filter(({ seriesId }) => !strange.some(({ id }) => id === seriesId)),
    firstDays: first.firstDays,
    dataRows: readings.reduce((sum, r) => sum + r.dataRows, 0),
    ...(readings.every((r) => r.valueColumns) ? { valueColumns: readings.flatMap((r) => r.valueColumns ?? []) } : {}),
  };
}

/**
 * Temperatures of the same days from several places, of which nobody knows which is the home's: all of them, or all but
 * the one that is said to be out of doors.
 */
function strangeTemperatures(series: readonly Series[]): readonly Series[] {
  const weather = series.filter(({ carrier }) => carrier === 'outdoor-temperature');
  const meet = weather.filter((one) =>
    weather.some((other) => other !== one && other.from < one.to && one.from < other.to),
  );
  const said = meet.filter(({ name }) => OUT_OF_DOORS.test(plainWords(name)));
  return said.length === 1 ? meet.filter((one) => one !== said[0]) : meet;
}

/** Roles of numbers that say when or which. */
const NO_QUANTITY = new Set<string>(['index', 'time', 'stamp', 'from', 'to']);

/** A file may hold counters, powers and temperatures one below the other, each laid out in its own way. */
function kindOf({ columns }: Sheet): 'degrees' | 'power' | 'amount' {
  const kinds = columns.filter(isNumberColumn).map(({ heading, meaning: { unit, carrier, role } }) => {
    if (isOfDegrees(unit) || (carrier !== undefined && isTemperature(carrier))) return 'degrees';
    const words = plainWords(heading);
    const mayBePower = POWER.test(words) && !RATE_REGISTER.test(words);
    return isPower(unit) || (unit === undefined && !NO_QUANTITY.has(role) && mayBePower) ? 'power' : 'amount';
  });
  return kinds.find((kind) => kind !== 'amount') ?? 'amount';
}

/** The power of what another register counts is the same use once more. */
const isOfMoment = (sheet: Sheet, all: RegisterSheets['sheets']): boolean =>
  kindOf(sheet) === 'power' &&
  all.some((other) => kindOf(other.sheet) === 'amount' && energyOf(other.sheet) === energyOf(sheet));

function energyOf({ columns }: Sheet): string | undefined {
  const { carrier = 'electricity', seriesRole = 'import' } =
    columns.find((c) => isNumberColumn(c) && (c.meaning.unit !== undefined || c.meaning.carrier !== undefined))
      ?.meaning ?? {};
  return `${carrier} ${seriesRole}`;
}

const bestShape = (sheet: Sheet, other: IntakeShape): IntakeShape =>
  SHAPES.reduce((best, one) => (one.detect(sheet).fit > best.detect(sheet).fit ? one : best), other);

/** A register of whole numbers says nothing of the decimal sign of the others. */
const writesSign = ({ columns, table, firstRow }: Sheet): boolean =>
  columns.some((c) => isNumberColumn(c) && decideDecimal(table, c.index, firstRow, []).state !== 'plain');

function ofTheFile({ dayFirst, decimal, stamp, clock, toInclusive }: IntakeChoices): IntakeChoices {
  return {
    ...(dayFirst === undefined ? {} : { dayFirst }),
    ...(decimal === undefined ? {} : { decimal }),
    ...(stamp === undefined ? {} : { stamp }),
    ...(clock === undefined ? {} : { clock }),
    ...(toInclusive === undefined ? {} : { toInclusive }),
  };
}
