/** One bill or month a row: from, to and what was used between, or the label of a month or quarter. */

import { isTemperature } from '../../model/shapes/evidence.ts';
import { tell } from '../../model/shapes/told.ts';
import { type IntakeShape, nothingRead, type ShapeInput } from '../importer/shape.ts';
import { isADayByTitle } from '../layout/ask-title-words.ts';
import type { ColumnFacts } from '../layout/column-facts.ts';
import { isADay, isSince } from '../layout/column-words.ts';
import { commonUnit, seriesColumns } from '../layout/energy-columns.ts';
import { explainStrays } from '../layout/explain-strays.ts';
import { asTemperature, findExtremes, MEAN_OF_BOTH, takeMeans } from '../layout/extremes.ts';
import { gasFactorsOf, gasOf } from '../layout/gas-factors.ts';
import { findQualityColumn, readQuality } from '../layout/quality-marks.ts';
import { quantityColumns } from '../layout/quantity-columns.ts';
import { countByLocalDays, readDates, settleDayFirst } from '../layout/read-dates.ts';
import { remarkRising } from '../layout/rising.ts';
import { type Quantity, settleUnit } from '../layout/settle-unit.ts';
import type { Sheet } from '../layout/sheet.ts';
import { stepOf } from '../layout/sheet-step.ts';
import { statedUnit, unitWords } from '../layout/stated-energy.ts';
import { columnName, readValues, settleDecimals } from '../layout/value-cells.ts';
import { billPartColumns, readingsOf, remarkUnread, valuesBetween, volumesBeside } from '../periods/bill-columns.ts';
import { fileBills } from '../periods/bill-details.ts';
import { type Costs, doubtPrice, readCosts } from '../periods/costs.ts';
import { periodPicture, periodSeries } from '../periods/period-series.ts';
import type { RawPeriod } from '../periods/raw-period.ts';
import { areLengths, leaveOutUnfinished, type RowPeriods, rowPeriods } from '../periods/row-periods.ts';
import { askShortMonths } from '../periods/short-months.ts';
import { takeBack, undoneRows } from '../periods/take-back.ts';
import { usedSinceYear } from '../readings/day-counter.ts';
import { leaveOutLater } from '../readings/remark-order.ts';
import { isSentBelowNought, splitNet } from '../readings/split-net.ts';
import { isOfDegrees, isVolumeOfGas } from '../terms/units.ts';

const DAY_MINUTES = 1440;

export const bills: IntakeShape = {
  name: 'bills',

  detect(sheet) {
    if (sheet.dateColumn < 0) return { fit: 0, reason: 'no column of dates' };
    const step = stepOf(sheet);
    const quantities = quantityColumns(sheet, [sheet.dateColumn, step.toColumn]);
    if (billPartColumns(sheet, 'opening').length > 0 && billPartColumns(sheet, 'closing').length > 0)
      return { fit: 0.96, reason: 'a reading before and after in each row' };
    const onlyReadings = quantities.every((c) => c.meaning.role === 'reading');
    if (quantities.length === 0 || onlyReadings) return { fit: 0.1, reason: 'no column of amounts used' };
    if (step.kind === 'time' && (step.minutes ?? 0) < 5 * DAY_MINUTES)
      return { fit: 0.1, reason: 'times of day, as readings have' };
    if (step.kind === 'week' || step.kind === 'month' || step.kind === 'quarter')
      return { fit: 0.88, reason: `a ${step.kind} and an amount in each row` };
    const wide = step.minutes === undefined || step.minutes >= 5 * DAY_MINUTES;
    const long = (step.lengthMinutes ?? 0) >= 5 * DAY_MINUTES;
    if (step.toColumn !== undefined)
      return { fit: wide || long ? 0.9 : 0.4, reason: 'two dates and an amount in each row' };
    return wide
      ? { fit: 0.7, reason: 'one date and an amount in each row, days apart' }
      : { fit: 0.1, reason: 'dates day by day' };
  },

  parse(input) {
    const { sheet, choices, context, book } = input;
    const column = choices.columns?.from ?? choices.columns?.stamp ?? sheet.dateColumn;
    const dayFirst = settleDayFirst(sheet, column, choices, context.zone, book);
    const found = readDates(sheet, column, undefined, dayFirst, context.zone, context.onProgress);
    const dates = leaveOutLater(sheet, found, context, book);
    countByLocalDays(dates, choices, context.zone, book);
    explainStrays(sheet, dates, choices, book);
    const toColumn = choices.columns?.to ?? stepOf(sheet).toColumn;
    const extremes = choices.columns?.value === undefined ? findExtremes(sheet, book) : undefined;
    const columns = dates.count === 0 ? [] : extremes ? [extremes.maximum] : energyColumns(input, [column, toColumn]);
    if (columns.length === 0) {
      book.add(dates.count === 0 ? 'no-readable-rows' : 'no-numbers', 'refusal', { column: columnName(sheet, column) });
      return nothingRead(choices, dates.count);
    }
    const periods = rowPeriods(sheet, dates, toColumn, columns, choices, context.zone, book);
    leaveOutUnfinished(periods, sheet, dates, context.today, book);
    const quality = choices.columns?.quality ?? findQualityColumn(sheet);
    const decimal = settleDecimals(sheet, columns, choices, book);
    const read = columns.map((facts, i) => {
      const written = readValues(sheet, facts.index, dates.rows, dates.count, decimal, tell('a-number'), book);
      if (extremes) {
        const lowest = readValues(
          sheet,
          extremes.minimum.index,
          dates.rows,
          dates.count,
          decimal,
          tell('a-number'),
          book,
        );
        takeMeans(written, lowest);
      }
      askLengths(written, facts, periods, input);
      const between = readingsOf(sheet, facts, dates, decimal, book);
      const isMeanOfDay = isADay(facts) || (!between && isADayByTitle(sheet, facts));
      if (!between && !extremes && !isMeanOfDay && !isOfDegrees(facts.meaning.unit))
        differencesOfYear(written, facts, periods, input);
      const signed = between
        ? valuesBetween(between)
        : isMeanOfDay
          ? timesDays(written, facts, periods, input)
          : written;
      const quantity = settleUnit(
        sheet,
        facts,
        Math.abs(meanPerDay(signed, periods)),
        undefined,
        extremes ? asTemperature(choices) : choices,
        context,
        book,
      );
      splitNet(sheet, { column: facts, values: signed }, choices, book, 'period');
      const isBelow = isSentBelowNought(quantity.role, signed);
      if (isBelow) book.add('sent-below-nought', 'note', { column: columnName(sheet, facts.index) });
      const values = isBelow ? signed.map((value) => 0 - value) : signed;
      const costs = readCosts(sheet, dates, facts, columns.length === 1, { ...choices, decimal }, context, book);
      const lines = dates.rows.subarray(0, dates.count);
      const all = toRawPeriods(input, { facts, quantity, values, costs, quality, periods, rows: lines });
      const isOfMonths = toColumn === undefined && (dates.kind === 'month' || dates.kind === 'quarter');
      const raw = isOfMonths ? askShortMonths(all, quantity, choices, columnName(sheet, facts.index), book) : all;
      const name = extremes ? MEAN_OF_BOTH : facts.heading === '' ? quantity.carrier : facts.heading;
      const series = periodSeries(`series-${i + 1}`, name, quantity, raw, book, choices);
      if (series) doubtPrice(series, quantity.unit, columnName(sheet, facts.index), costs, choices, book);
      return { facts, quantity, costs, values, series };
    });
    remarkRising(
      sheet,
      columns.filter(({ index }) => !book.has('counts-from-year', columnName(sheet, index))),
      choices,
      book,
    );
    const filed = fileBills(input, { dates, periods, decimal, quality, energies: read });
    const used = [...columns.map((c) => c.index), extremes?.minimum.index, ...filed.used];
    remarkUnread(input, [column, toColumn, quality, ...used]);
    const built = read.flatMap((one, i) => {
      const bills = filed.bills[i];
      if (!one.series) return [];
      return [{ ...one, series: { ...one.series, ...(bills && bills.length > 0 ? { bills } : {}) } }];
    });
    const first = built[0];
    if (!first) {
      book.add('no-readable-rows', 'refusal');
      return nothingRead(choices, dates.count);
    }
    const alone = built.length === 1;
    return {
      choices: {
        shape: bills.name,
        ...commonUnit(built.map((b) => b.quantity)),
        ...(periods.stamp === undefined ? {} : { stamp: periods.stamp }),
        ...(dayFirst === undefined ? {} : { dayFirst }),
        columns: {
          from: column,
          ...(toColumn === undefined ? {} : { to: toColumn }),
          ...(columns.length === 1 && !extremes ? { value: columns[0]!.index } : {}),
          ...(alone && first.costs.column !== undefined ? { cost: first.costs.column } : {}),
          ...(quality === undefined ? {} : { quality }),
        },
        decimal,
        ...(periods.toInclusive === undefined ? {} : { toInclusive: periods.toInclusive }),
        ...(alone ? { carrier: first.quantity.carrier, role: first.quantity.role } : {}),
        ...calorificChoice(input, sheet, first),
        ...(choices.overlaps === undefined ? {} : { overlaps: choices.overlaps }),
      },
      series: built.map((b) => b.series),
      intervals: [],
      firstDays: periodPicture(first.series),
      dataRows: dates.count,
      valueColumns: [...columns, ...(extremes ? [extremes.minimum] : [])].map((c) => c.index),
      detailColumns: filed.used,
    };
  },
};

/** Amounts that are the days of their rows, under words that do not say what of, may be a count of them. */
function askLengths(
  written: Float64Array,
  facts: ColumnFacts,
  periods: RowPeriods,
  { sheet, choices, book }: ShapeInput,
): void {
  if (choices.role !== undefined || choices.columns?.value !== undefined || choices.every !== undefined) return;
  if (facts.meaning.carrier !== undefined || statedUnit(sheet, facts) !== undefined) return;
  if (areLengths(written, periods))
    book.add('amount-days-asked', 'question', { column: columnName(sheet, facts.index) });
}

/** A sum that runs through each year becomes what each period used, in place; where only a few rows tell it is asked. */
function differencesOfYear(
  written: Float64Array,
  facts: ColumnFacts,
  periods: RowPeriods,
  { sheet, choices, book }: ShapeInput,
): void {
  const used = usedSinceYear(written, periods, isSince(facts));
  const column = columnName(sheet, facts.index);
  if (used instanceof Float64Array) {
    written.set(used);
    book.add('counts-from-year', 'note', { column });
  } else if (used && choices.shape === undefined)
    book.add('register-rising-asked', 'question', { column, count: used.rises });
}

/** Means of a day become what each period used. */
function timesDays(
  written: Float64Array,
  { index }: ColumnFacts,
  { fromDay, toDay }: RowPeriods,
  { sheet, book }: ShapeInput,
): Float64Array {
  book.add('per-day-multiplied', 'note', { column: columnName(sheet, index) });
  return written.map((value, i) => value * (toDay[i]! - fromDay[i]!));
}

/** Readings before and after are details of a bill where it says its units, else what is used lies between them. */
function energyColumns({ sheet, choices, book }: ShapeInput, taken: readonly (number | undefined)[]): ColumnFacts[] {
  const closing = billPartColumns(sheet, 'closing');
  const readings = [...closing, ...billPartColumns(sheet, 'opening')];
  const isBill = closing.length + billPartColumns(sheet, 'unit-price').length > 0;
  const aside = isBill ? [...readings, ...volumesBeside(sheet)].map((c) => c.index) : [];
  const columns = seriesColumns(sheet, choices, [...taken, ...aside], book);
  return columns.length > 0 ? columns : closing;
}

/** A calorific value that came from the file's own column stays with its rows and is no choice. */
function calorificChoice(
  { choices, context }: ShapeInput,
  sheet: Sheet,
  { facts, quantity }: Pick<RowsOfOne, 'facts' | 'quantity'>,
): { calorificMJPerM3?: number } {
  if (choices.calorificMJPerM3 !== undefined) return { calorificMJPerM3: choices.calorificMJPerM3 };
  if (!isVolumeOfGas(quantity.unit) || sheet.columns.some((c) => c.meaning.role === 'calorific')) return {};
  return { calorificMJPerM3: gasOf(sheet, unitWords(sheet, facts), context).gasVolume.calorificMJPerM3 };
}

interface RowsOfOne {
  readonly facts: ColumnFacts;
  readonly quantity: Quantity;
  readonly values: Float64Array;
  readonly costs: Costs;
  readonly quality: number | undefined;
  readonly periods: RowPeriods;
  readonly rows: Uint32Array;
}

function toRawPeriods({ sheet, choices, context, book }: ShapeInput, one: RowsOfOne): RawPeriod[] {
  const { quantity, values, costs, quality, periods, rows } = one;
  const factorAt =
    quantity.carrier === 'gas' && isVolumeOfGas(quantity.unit)
      ? gasFactorsOf(sheet, quantity.unit, gasOf(sheet, unitWords(sheet, one.facts), context), choices.calorificMJPerM3)
      : undefined;
  const raw: RawPeriod[] = [];
  const undone = isTemperature(quantity.carrier) ? new Set<number>() : undoneRows(sheet, rows, values, periods);
  for (let i = 0; i < rows.length; i++) {
    const value = undone.has(i) ? -values[i]! : values[i]!;
    const line = sheet.table.lineOfRow[rows[i]!]!;
    if (Number.isNaN(value) && costs.pence && costs.pence[i]! < 0) book.tally('money-back', 'note', { row: line });
    if (Number.isNaN(value) || Number.isNaN(periods.fromDay[i]!) || Number.isNaN(periods.toDay[i]!)) continue;
    if (value < 0 && !isTemperature(quantity.carrier) && book.has('net-asked')) continue;
    const own = factorAt?.(rows[i]!) ?? Number.NaN;
    const factor = Number.isNaN(own) ? quantity.kWhPerUnit : own;
    const cost = costs.pence?.[i];
    raw.push({
      fromDay: periods.fromDay[i]!,
      toDay: periods.toDay[i]!,
      quantity: value,
      kWh: (value - quantity.zeroAt) * factor,
      ...(cost === undefined || Number.isNaN(cost) ? {} : { costPence: cost }),
      quality: quality === undefined ? 'unknown' : readQuality(sheet, quality, rows[i]!),
      line,
    });
  }
  // Of a net each number below nought is asked about as such.
  const mayBeLeftOut = choices.leaveUnread === true || book.has('net-of-days');
  return isTemperature(quantity.carrier) ? raw : takeBack(raw, columnName(sheet, one.facts.index), mayBeLeftOut, book);
}

function meanPerDay(values: Float64Array, periods: RowPeriods): number {
  let sum = 0;
  let days = 0;
  for (let i = 0; i < values.length; i++) {
    const length = periods.toDay[i]! - periods.fromDay[i]!;
    if (Number.isNaN(values[i]!) || Number.isNaN(length)) continue;
    sum += values[i]!;
    days += length;
  }
  return days > 0 ? sum / days : Number.NaN;
}
