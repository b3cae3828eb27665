/** One day a row: a date and what was used on it, or its mean, highest and lowest temperature. */

import { toCivilDate, toDayNumber } from '../../model/calendar/civil.ts';
import { isTemperature } from '../../model/shapes/evidence.ts';
import { tell } from '../../model/shapes/told.ts';
import { meanOf } from '../../model/units/sums.ts';
import { type IntakeShape, nothingRead, type ShapeInput } from '../importer/shape.ts';
import type { ColumnFacts } from '../layout/column-facts.ts';
import { commonUnit, indicesOf, seriesColumns } from '../layout/energy-columns.ts';
import { explainStrays } from '../layout/explain-strays.ts';
import { asTemperature, findExtremes, MEAN_OF_BOTH, takeMeans } from '../layout/extremes.ts';
import { estimatedRows, findQualityColumn } from '../layout/quality-marks.ts';
import { quantityColumns } from '../layout/quantity-columns.ts';
import { countByLocalDays, type Dates, readDates, settleDayFirst } from '../layout/read-dates.ts';
import { remarkRising } from '../layout/rising.ts';
import { convertAll, type Quantity, settleUnit } from '../layout/settle-unit.ts';
import { stepOf } from '../layout/sheet-step.ts';
import { columnName, readAmounts, readValues, settleDecimals } from '../layout/value-cells.ts';
import { dayPicture, daySeries } from '../periods/day-series.ts';
import { remarkFrozenDays } from '../periods/frozen-days.ts';
import { usedSinceMonth } from '../readings/day-counter.ts';
import { daysOfStamps } from '../readings/days-of-stamps.ts';
import { leaveOutLater, remarkOrder } from '../readings/remark-order.ts';
import { screenEnergy, screenTemperature } from '../readings/screen-values.ts';
import { splitNet } from '../readings/split-net.ts';
import { isOfDegrees } from '../terms/units.ts';

/** A total that runs from nought comes to more than this many times its first day. A judgement. */
const RUNNING_TOTAL = 5;
/** Of so many days each more than the one before. A judgement. */
const WEEKS_OF_RISING = 20;

export const daily: IntakeShape = {
  name: 'days',

  detect(sheet) {
    if (sheet.dateColumn < 0) return { fit: 0, reason: 'no column of dates' };
    const step = stepOf(sheet);
    const numbers = quantityColumns(sheet, [sheet.dateColumn, step.toColumn]);
    if (numbers.length === 0) return { fit: 0, reason: 'no column of numbers' };
    if (numbers.length > 20) return { fit: 0.2, reason: 'many columns of numbers' };
    if (step.kind === 'month' || step.kind === 'quarter') return { fit: 0, reason: 'months rather than days' };
    if ((step.lengthMinutes ?? 0) > 2 * 1440) return { fit: 0.1, reason: 'periods longer than a day' };
    if (step.minutes === 1440) return { fit: 0.86, reason: 'a date and a number for each day' };
    return { fit: 0.1, reason: 'dates that are not a day apart' };
  },

  parse(input) {
    const { sheet, choices, context, book } = input;
    const column = choices.columns?.stamp ?? choices.columns?.from ?? sheet.dateColumn;
    const dayFirst = settleDayFirst(sheet, column, choices, context.zone, book);
    const found = readDates(sheet, column, undefined, dayFirst, context.zone, context.onProgress);
    const dates = leaveOutLater(sheet, found, context, book);
    explainStrays(sheet, dates, choices, book);
    const extremes = choices.columns?.value === undefined ? findExtremes(sheet, book) : undefined;
    const columns = extremes
      ? [extremes.maximum]
      : seriesColumns(sheet, choices, [column, stepOf(sheet).toColumn], book);
    if (dates.count === 0 || columns.length === 0) {
      book.add(dates.count === 0 ? 'no-readable-rows' : 'no-numbers', 'refusal', { column: columnName(sheet, column) });
      return nothingRead(choices, dates.count);
    }
    remarkOrder(dates, book);
    // In days that grow colder a use rises too, but not to many times itself, and not day by day for weeks.
    const mayRun = columns.filter((c) => c.largest > RUNNING_TOTAL * c.smallest || c.rises >= WEEKS_OF_RISING);
    if (!extremes) remarkRising(sheet, mayRun, choices, book);
    countByLocalDays(dates, choices, context.zone, book);
    const dayOfRow = daysOfStamps(sheet, column, dates, choices, book);
    const isOver = whatIsOver(dayOfRow, dates, input);
    const quality = choices.columns?.quality ?? findQualityColumn(sheet);
    const estimated = quality === undefined ? null : estimatedRows(sheet, quality, dates);
    const decimal = settleDecimals(sheet, columns, choices, book);
    const read = columns.flatMap((column) => {
      const values = readAmounts(sheet, column, dates.rows, dates.count, decimal, tell('a-number'), book);
      const used = isOfDegrees(column.meaning.unit) ? undefined : usedSinceMonth(values, dayOfRow);
      if (used) {
        values.set(used);
        book.add('counts-from-month', 'note', { column: columnName(sheet, column.index) });
      }
      return extremes ? [{ column, values }] : splitNet(sheet, { column, values }, choices, book, 'day');
    });
    const built = read.flatMap(({ column: facts, values }, i) => {
      if (extremes) {
        const minimum = readValues(
          sheet,
          extremes.minimum.index,
          dates.rows,
          dates.count,
          decimal,
          tell('a-number'),
          book,
        );
        takeMeans(values, minimum);
      }
      const quantity = settleUnit(
        sheet,
        facts,
        mean(values),
        24,
        extremes ? asTemperature(choices) : choices,
        context,
        book,
      );
      screen(input, facts, quantity, values, dates);
      const list = Array.from(values, (value, r) => ({
        day: dayOfRow[r]!,
        value: isOver(dayOfRow[r]!) ? value : Number.NaN,
        line: sheet.table.lineOfRow[dates.rows[r]!]!,
        estimated: estimated?.[r] === 1,
      }));
      const name = extremes ? MEAN_OF_BOTH : facts.heading || quantity.carrier;
      const series = daySeries(`series-${i + 1}`, name, quantity, list, 0, book, choices.fill);
      if (series) remarkFrozenDays(series, book);
      return series ? [{ series, quantity }] : [];
    });
    const first = built[0];
    if (!first) {
      book.add('no-readable-rows', 'refusal');
      return nothingRead(choices, dates.count);
    }
    return {
      choices: {
        shape: daily.name,
        ...(choices.stamp === undefined ? {} : { stamp: choices.stamp }),
        ...commonUnit(built.map((b) => b.quantity)),
        ...(dayFirst === undefined ? {} : { dayFirst }),
        columns: {
          stamp: column,
          ...(columns.length === 1 && !extremes ? { value: columns[0]!.index } : {}),
          ...(quality === undefined ? {} : { quality }),
        },
        decimal,
        ...(built.length === 1 ? { carrier: first.quantity.carrier, role: first.quantity.role } : {}),
        ...(choices.calorificMJPerM3 === undefined ? {} : { calorificMJPerM3: choices.calorificMJPerM3 }),
      },
      series: built.map((b) => b.series),
      intervals: [],
      firstDays: dayPicture(first.series),
      dataRows: dates.count,
      valueColumns: indicesOf(extremes ? [extremes.maximum, extremes.minimum] : columns),
    };
  },
};

/** Of today a file knows a part only; says which row is of it. */
function whatIsOver(days: ArrayLike<number>, { rows }: Dates, { sheet, context, book }: ShapeInput) {
  const today = toDayNumber(context.today);
  const at = Array.from(days).indexOf(today);
  const row = sheet.table.lineOfRow[rows[at]!]!;
  if (at >= 0) book.add('not-over', 'note', { row, from: context.today, to: context.today });
  return (day: number): boolean => day < today;
}

function screen(
  { sheet, book }: ShapeInput,
  facts: ColumnFacts,
  quantity: Quantity,
  values: Float64Array,
  dates: Dates,
): void {
  convertAll(values, quantity);
  const lineOf = (i: number) => sheet.table.lineOfRow[dates.rows[i]!]!;
  const whenOf = (i: number) => toCivilDate(Math.floor(dates.civilMinute[i]! / 1440));
  const what = { values, count: values.length, hours: 24, lineOf, column: columnName(sheet, facts.index), whenOf };
  if (isTemperature(quantity.carrier)) screenTemperature(what, quantity.carrier, book);
  else if (quantity.carrier !== 'water') screenEnergy(what, quantity.carrier, book);
}

function mean(values: Float64Array): number {
  const there = values.filter((v) => !Number.isNaN(v));
  return there.length === 0 ? Number.NaN : meanOf(there);
}
