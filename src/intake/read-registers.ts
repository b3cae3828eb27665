/** Reads the registers of a file one after another with the same shape, and brings their series together. */

import type { IntakeShape, ShapeReading } from './importer/shape.ts';
import type { IntakeChoices, IntakeContext } from './intake.ts';
import { isNumberColumn } from './layout/column-facts.ts';
import type { RegisterSheets } from './layout/register-rows.ts';
import type { Sheet } from './layout/sheet.ts';
import { columnName } from './layout/value-cells.ts';
import { decideDecimal } from './numbers/decide-decimal.ts';
import type { RemarkBook } from './terms/remark-book.ts';

export function readRegisters(
  registers: RegisterSheets,
  shape: IntakeShape,
  choices: IntakeChoices,
  context: IntakeContext,
  book: RemarkBook,
): ShapeReading {
  const { sheets, column, leftOut } = registers;
  book.add('registers-by-column', 'note', {
    column: columnName(sheets[0]!.sheet, column),
    found: sheets
      .map((s) => s.register)
      .join(', ')
      .slice(0, 120),
  });
  if (leftOut.length > 0)
    book.add('columns-left-out', 'note', {
      found: leftOut.join(', ').slice(0, 120),
      expected: sheets
        .map((s) => s.register)
        .join(', ')
        .slice(0, 120),
    });
  let settled = choices;
  const readings: ShapeReading[] = [];
  for (const { sheet } of sheets) {
    const reading = shape.parse({ sheet, choices: settled, context, book });
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
  const units = new Set(readings.map((r) => r.choices.unit));
  const first = readings.find((r) => r.series.length > 0) ?? readings[0]!;
  const { carrier: _carrier, role: _role, unit, ...rest } = first.choices;
  return {
    choices: { ...rest, ...(units.size === 1 && unit !== undefined ? { unit } : {}) },
    series: renamed.flatMap((r) => r.series),
    intervals: renamed.flatMap((r) => r.intervals),
    firstDays: first.firstDays,
    dataRows: readings.reduce((sum, r) => sum + r.dataRows, 0),
    ...(readings.every((r) => r.valueColumns) ? { valueColumns: readings.flatMap((r) => r.valueColumns ?? []) } : {}),
  };
}

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
