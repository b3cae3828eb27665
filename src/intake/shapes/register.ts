/** Readings of a meter's counter, which only goes up: what was used is the difference of two of them. */
import { zoneTable } from '../clock/zone-table.ts';
import { type Dates, readDates, settleDayFirst } from '../dates/read-dates.ts';
import type { ColumnFacts } from '../layout/column-facts.ts';
import { quantityColumns } from '../layout/energy-columns.ts';
import { explainStrays } from '../layout/explain-strays.ts';
import { settleUnit } from '../layout/settle-unit.ts';
import type { Sheet } from '../layout/sheet.ts';
import { stepOf } from '../layout/sheet-step.ts';
import { columnName, readQuality, readValues, settleDecimal } from '../layout/value-cells.ts';
import { dayPicture, daySeries } from '../periods/day-series.ts';
import { periodPicture, periodSeries } from '../periods/period-series.ts';
import { type RegisterStep, registerSteps } from '../periods/register-steps.ts';
import { buildIntervalSeries, placeClock, type RawReadings } from '../readings/build-interval-series.ts';
import { commonestStep, isIntervalLength } from '../readings/interval.ts';
import { remarkAfterToday, remarkOrder } from '../readings/remark-order.ts';
import { findQualityColumn } from './long-interval.ts';
import { type IntakeShape, nothingRead } from './shape.ts';

/** Rising values over this many rows are no coincidence. */
const TELLING_ROWS = 30;

export const register: IntakeShape = {
  name: 'counter',
  describe: "Readings of the meter's counter, which goes up; use is the difference between two of them.",

  detect(sheet) {
    if (sheet.dateColumn < 0) return { fit: 0, reason: 'no column of dates' };
    const column = counterColumn(sheet);
    if (!column) return { fit: 0.02, reason: 'no column that only goes up' };
    if (
      quantityColumns(sheet, [sheet.dateColumn]).some(
        (c) => c !== column && c.meaning.role === 'value' && c.meaning.unit,
      )
    )
      return { fit: 0.3, reason: 'a counter, but a column of amounts used as well' };
    if (column.meaning.role === 'reading') return { fit: 0.93, reason: `"${column.heading}" is named a reading` };
    return { fit: 0.91, reason: `"${columnName(sheet, column.index)}" never goes down` };
  },

  parse({ sheet, choices, context, book }) {
    const column = choices.columns?.stamp ?? choices.columns?.from ?? sheet.dateColumn;
    const dayFirst = settleDayFirst(sheet, column, choices, context.zone, book);
    const timeColumn = choices.columns?.time ?? stepOf(sheet).timeColumn;
    const dates = readDates(sheet, column, timeColumn, dayFirst, context.onProgress);
    explainStrays(sheet, dates, book);
    const chosen = choices.columns?.value;
    const facts =
      chosen === undefined ? (counterColumn(sheet) ?? quantityColumns(sheet, [column])[0]) : sheet.columns[chosen];
    if (!facts || dates.count < 2) {
      book.add(facts ? 'register-alone' : 'no-numbers', 'refusal', { column: columnName(sheet, column) });
      return nothingRead(choices, dates.count);
    }
    remarkAfterToday(sheet, dates, context, book);
    const decimal = settleDecimal(sheet, facts.index, choices, book);
    const readings = readValues(sheet, facts.index, dates.rows, dates.count, decimal, 'a reading of the counter', book);
    const lineOf = (i: number) => sheet.table.lineOfRow[dates.rows[i]!]!;
    const inOrder = orderInTime(dates.civilMinute, dates.count, remarkOrder(dates, book) === 'newest first');
    const steps = registerSteps(inOrder, readings, lineOf, book);
    const stepMinutes = commonestStep(dates.civilMinute, dates.count);
    const quality = choices.columns?.quality ?? findQualityColumn(sheet);
    const settled = {
      shape: register.name,
      ...(dayFirst === undefined ? {} : { dayFirst }),
      columns: {
        stamp: column,
        ...(timeColumn === undefined ? {} : { time: timeColumn }),
        value: facts.index,
        ...(quality === undefined ? {} : { quality }),
      },
      decimal,
      ...(choices.calorificMJPerM3 === undefined ? {} : { calorificMJPerM3: choices.calorificMJPerM3 }),
    };
    if (dates.kind === 'time' && isIntervalLength(stepMinutes)) {
      const raw = stepsAsReadings(sheet, dates, steps, stepMinutes, context.zone);
      const clock = placeClock(raw.raw, raw.values, choices, context, book);
      const read = { column: facts, values: raw.values, estimatedCount: 0 };
      const built = buildIntervalSeries('series-1', raw.raw, read, clock, choices, context, book);
      if (built)
        return {
          choices: {
            ...settled,
            unit: built.quantity.unit,
            carrier: built.quantity.carrier,
            role: built.quantity.role,
            ...(clock.settled.clock === undefined ? {} : { clock: clock.settled.clock }),
          },
          series: [built.series],
          intervals: [built.intervals],
          firstDays: built.firstDays,
          dataRows: dates.count,
        };
    }
    const dayAt = (i: number) => Math.floor(dates.civilMinute[i]! / 1440);
    const used = steps.filter((s) => !Number.isNaN(s.used) && dayAt(s.after) > dayAt(s.before));
    const days = used.reduce((sum, s) => sum + dayAt(s.after) - dayAt(s.before), 0);
    const perDay = used.reduce((sum, s) => sum + s.used, 0) / Math.max(1, days);
    const quantity = settleUnit(sheet, facts, days > 0 ? perDay : Number.NaN, choices, context, book);
    const name = facts.heading || quantity.carrier;
    const eachDay = stepMinutes === 1440 && used.length > 2;
    const series = eachDay
      ? daySeries(
          'series-1',
          name,
          quantity,
          used
            .filter((s) => dayAt(s.after) - dayAt(s.before) === 1)
            .map((s) => ({ day: dayAt(s.before), value: s.used * quantity.kWhPerUnit, line: lineOf(s.after) })),
          0,
          book,
        )
      : periodSeries(
          'series-1',
          name,
          quantity,
          used.map((s) => ({
            fromDay: dayAt(s.before),
            toDay: dayAt(s.after),
            quantity: s.used,
            kWh: s.used * quantity.kWhPerUnit,
            quality: quality === undefined ? 'unknown' : readQuality(sheet, quality, dates.rows[s.after]!),
            line: lineOf(s.after),
          })),
          book,
        );
    if (!series) {
      book.add('register-alone', 'refusal', { column: columnName(sheet, facts.index) });
      return nothingRead(choices, dates.count);
    }
    return {
      choices: { ...settled, unit: quantity.unit, carrier: quantity.carrier, role: quantity.role },
      series: [series],
      intervals: [],
      firstDays: eachDay ? dayPicture(series) : periodPicture(series),
      dataRows: dates.count,
    };
  },
};

/** A column named a reading that rises with at most a few falls, or any that rises over many rows. */
function counterColumn(sheet: Sheet): ColumnFacts | undefined {
  const columns = quantityColumns(sheet, [sheet.dateColumn, stepOf(sheet).toColumn]);
  const named = columns.find((c) => c.meaning.role === 'reading' && (c.rising || c.falls <= 1 + c.numbers * 0.02));
  return named ?? columns.find((c) => c.rising && c.numbers >= TELLING_ROWS && !c.counting);
}

function orderInTime(civil: Float64Array, count: number, newestFirst: boolean): number[] {
  const order = Array.from({ length: count }, (_, i) => (newestFirst ? count - 1 - i : i));
  // Stable, so that the doubled autumn hour stays in the order of the file; a step back of an hour is that hour.
  const disorder = order.some((at, i) => i > 0 && civil[at]! < civil[order[i - 1]!]! - 120);
  return disorder ? order.sort((a, b) => civil[a]! - civil[b]!) : order;
}

/** Use between two readings one interval apart belongs to the interval that the earlier one starts. */
function stepsAsReadings(
  sheet: Sheet,
  dates: Dates,
  steps: readonly RegisterStep[],
  intervalMinutes: number,
  zoneName: string,
): { raw: RawReadings; values: Float64Array } {
  const civil = dates.civilMinute;
  const days = civil.slice(0, dates.count).sort();
  const zone = zoneTable(zoneName, Math.floor(days[0]! / 1440), Math.floor(days.at(-1)! / 1440));
  const offset = (minute: number): number => zone.offsetAt(minute - zone.offsetAt(minute));
  const apart = (s: RegisterStep): boolean => {
    const step = civil[s.after]! - civil[s.before]!;
    // Over a clock change the clock steps by an hour more or less than the time that went by.
    const change = offset(civil[s.after]!) - offset(civil[s.before]!);
    return (
      step === intervalMinutes || step === intervalMinutes - 60 || (change > 0 && step === intervalMinutes + change)
    );
  };
  const used = steps.filter(apart);
  const raw: RawReadings = {
    sheet,
    rows: Uint32Array.from(used, (s) => dates.rows[s.before]!),
    civil: Float64Array.from(used, (s) => dates.civilMinute[s.before]!),
    offsets: dates.offsets ? Float64Array.from(used, (s) => dates.offsets![s.before]!) : null,
    count: used.length,
    intervalMinutes,
    stamp: 'start',
    newestFirst: false,
    fixedColumns: false,
    headingSaysUtc: sheet.columns[sheet.dateColumn]?.meaning.utc === true,
  };
  return { raw, values: Float64Array.from(used, (s) => s.used) };
}
