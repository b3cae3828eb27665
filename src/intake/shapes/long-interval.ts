/** One reading a row: a stamp and a value, every few minutes to every few hours. */

import { isTemperature } from '../../model/shapes/evidence.ts';
import { tell } from '../../model/shapes/told.ts';
import { commonestStep, isIntervalLength } from '../dates/interval.ts';
import { startOfSpan } from '../dates/read-clock.ts';
import { type IntakeShape, nothingRead, type ShapeInput, type ShapeReading } from '../importer/shape.ts';
import type { ColumnFacts } from '../layout/column-facts.ts';
import { commonUnit, indicesOf, seriesColumns } from '../layout/energy-columns.ts';
import { explainStrays } from '../layout/explain-strays.ts';
import { estimatedRows, findQualityColumn } from '../layout/quality-marks.ts';
import { quantityColumns } from '../layout/quantity-columns.ts';
import { readDates, settleDayFirst } from '../layout/read-dates.ts';
import type { Sheet } from '../layout/sheet.ts';
import { stepOf } from '../layout/sheet-step.ts';
import { statedCarrier, statedUnit } from '../layout/stated-energy.ts';
import { steadyClockOf } from '../layout/titles.ts';
import { columnName, readAmounts, settleDecimals } from '../layout/value-cells.ts';
import {
  buildIntervalSeries,
  placeClock,
  type RawReadings,
  type ReadColumn,
  sideByLocalEdges,
} from '../readings/build-interval-series.ts';
import { takeDayApart } from '../readings/day-counter.ts';
import { areAmounts, groupsOf, type Lengths, lengthsOf } from '../readings/even-lengths.ts';
import { leaveOutLater, remarkOrder } from '../readings/remark-order.ts';
import { withRunningMeans } from '../readings/running-means.ts';
import { splitNet } from '../readings/split-net.ts';
import { type StampSide, sideOfStamps } from '../readings/stamp-side.ts';
import type { IntakeChoices } from '../terms/choices.ts';
import { stageOf } from '../terms/progress.ts';
import type { RemarkBook } from '../terms/remark-book.ts';
import { isOfDegrees, isPower } from '../terms/units.ts';
import { cellText } from '../text/table.ts';

export const longInterval: IntakeShape = {
  name: 'readings',

  detect(sheet) {
    const step = stepOf(sheet);
    if (sheet.dateColumn < 0) return { fit: 0, reason: 'no column of dates' };
    if (quantityColumns(sheet, [sheet.dateColumn]).length === 0) return { fit: 0, reason: 'no column of numbers' };
    if (step.kind !== 'time') return { fit: 0.05, reason: 'dates without a time of day' };
    if (isIntervalLength(step.minutes))
      return { fit: 0.9, reason: tell('time-and-number-every', { minutes: step.minutes }) };
    return { fit: 0.2, reason: 'times of day, but at no even distance' };
  },

  parse(input) {
    const { sheet, choices, context, book } = input;
    const step = stepOf(sheet);
    const column = choices.columns?.stamp ?? choices.columns?.from ?? sheet.dateColumn;
    const dayFirst = settleDayFirst(sheet, column, choices, context.zone, book);
    const timeColumn = choices.columns?.time ?? step.timeColumn;
    const found = readDates(sheet, column, timeColumn, dayFirst, context.zone, stageOf(context.onProgress, 0, 0.45));
    const dates = leaveOutLater(sheet, found, context, book);
    explainStrays(sheet, dates, choices, book, () => context.onProgress?.(0.45));
    const intervalMinutes = commonestStep(dates.civilMinute, dates.count);
    if (dates.count === 0 || intervalMinutes === undefined) {
      book.add('no-readable-rows', 'refusal');
      return nothingRead(choices, dates.count);
    }
    if (!isIntervalLength(intervalMinutes)) {
      book.add('interval-uneven', 'refusal', { foundTold: tell('so-many-minutes', { minutes: intervalMinutes }) });
      return nothingRead(choices, dates.count);
    }
    context.onProgress?.(0.47);
    const order = remarkOrder(dates, book);
    const toColumn = choices.columns?.to ?? step.toColumn ?? step.endTimeColumn;
    const said = saidSide(sheet, column, timeColumn, toColumn, choices);
    const stamped = { ...dates, civil: dates.civilMinute, newestFirst: order === 'newest first' };
    const lengths = order === 'mixed' ? undefined : lengthsOf(stamped, said ?? 'start');
    const side = said ?? sideOfStamps(dates.civilMinute, dates.count, intervalMinutes, lengths);
    const raw: RawReadings = {
      sheet,
      rows: dates.rows,
      civil: dates.civilMinute,
      offsets: dates.offsets,
      count: dates.count,
      intervalMinutes,
      stamp: side ?? 'start',
      newestFirst: order === 'newest first',
      fixedColumns: false,
      steadyClock: steadyClockOf(sheet, [column, timeColumn]),
    };
    const changed = side === 'end' && said === undefined ? lengthsOf(stamped, 'end') : lengths;
    return readColumns(input, raw, {
      column,
      timeColumn,
      toColumn,
      dayFirst,
      side,
      isSaid: said !== undefined,
      changed,
    });
  },
};

interface Settled {
  readonly column: number;
  readonly timeColumn: number | undefined;
  readonly toColumn: number | undefined;
  readonly dayFirst: boolean | undefined;
  readonly side: StampSide | undefined;
  /** Rather than told by the edges of the file. */
  readonly isSaid: boolean;
  /** Where readings change their length. */
  readonly changed: Lengths | undefined;
}

function readColumns(input: ShapeInput, asWritten: RawReadings, settled: Settled): ShapeReading {
  const { sheet, choices, context, book } = input;
  const { column, timeColumn, toColumn, dayFirst } = settled;
  const columns = seriesColumns(sheet, choices, [column, timeColumn, toColumn], book);
  if (columns.length === 0) {
    book.add('no-numbers', 'refusal', { column: columnName(sheet, column) });
    return nothingRead(choices, asWritten.count);
  }
  const quality = choices.columns?.quality ?? findQualityColumn(sheet);
  const estimated = quality === undefined ? null : estimatedRows(sheet, quality, asWritten);
  const decimal = settleDecimals(sheet, columns, choices, book);
  const written = columns.map((facts, i) => ({
    column: facts,
    values: readAmounts(
      sheet,
      facts,
      asWritten.rows as Uint32Array,
      asWritten.count,
      decimal,
      tell('a-number-in', { unit: facts.meaning.unit ?? 'kWh' }),
      book,
      stageOf(context.onProgress, 0.5 + (0.2 * i) / columns.length, 0.5 + (0.2 * (i + 1)) / columns.length),
    ),
    estimated,
  }));
  for (const one of written) takeDayApart(one, asWritten, book);
  const even = evened(asWritten, written, settled, book);
  const { raw } = even;
  const read = even.written.flatMap((one) => splitNet(sheet, one, choices, book));
  context.onProgress?.(0.7);
  const isWeather = columns.every((c) => isOfWeather(sheet, c));
  const clock = placeClock({ ...raw, isWeather }, read[0]!.values, choices, context, book);
  const side =
    settled.isSaid || settled.side === 'end' || raw !== asWritten
      ? settled.side
      : sideByLocalEdges(clock, raw.intervalMinutes, settled.side);
  const built = read
    .map((one, i) => {
      const onProgress = stageOf(
        context.onProgress,
        0.75 + (0.25 * i) / read.length,
        0.75 + (0.25 * (i + 1)) / read.length,
      );
      return buildIntervalSeries(`series-${i + 1}`, raw, one, clock, choices, { ...context, onProgress }, book);
    })
    .filter((one) => one !== undefined);
  const first = built[0];
  if (!first) {
    book.add('no-readable-rows', 'refusal');
    return nothingRead(choices, raw.count);
  }
  if (side === undefined && !isTemperature(first.quantity.carrier))
    book.add('stamp-side-asked', 'question', { column: columnName(sheet, column), expected: 'start' });
  if (side === 'end' && choices.stamp === undefined)
    book.add('stamp-is-end', 'note', { column: columnName(sheet, column) });
  return {
    choices: {
      shape: longInterval.name,
      ...commonUnit(built.map((b) => b.quantity)),
      stamp: side ?? raw.stamp,
      ...(dayFirst === undefined ? {} : { dayFirst }),
      ...(clock.settled.clock === undefined ? {} : { clock: clock.settled.clock }),
      columns: {
        stamp: column,
        ...(timeColumn === undefined ? {} : { time: timeColumn }),
        ...(toColumn === undefined ? {} : { to: toColumn }),
        ...(columns.length === 1 ? { value: columns[0]!.index } : {}),
        ...(quality === undefined ? {} : { quality }),
      },
      decimal,
      ...(built.length === 1 ? { carrier: first.quantity.carrier, role: first.quantity.role } : {}),
      ...(choices.calorificMJPerM3 === undefined ? {} : { calorificMJPerM3: choices.calorificMJPerM3 }),
    },
    series: withRunningMeans(built),
    intervals: built.map((b) => b.intervals),
    firstDays: first.firstDays,
    dataRows: raw.count,
    valueColumns: indicesOf(columns),
  };
}

/** Readings of two lengths as those of the longer; other readings as they are. */
function evened(
  raw: RawReadings,
  written: readonly ReadColumn[],
  { changed, side = 'start' }: Settled,
  book: RemarkBook,
): { raw: RawReadings; written: readonly ReadColumn[] } {
  const { sheet, rows, civil, offsets } = raw;
  const isMean = ({ column }: ReadColumn) => {
    const unit = statedUnit(sheet, column);
    return isOfDegrees(unit) || isPower(unit) || statedCarrier(sheet, column)?.carrier === 'outdoor-temperature';
  };
  const amounts = written.find((one) => !isMean(one));
  if (!changed || (amounts && !areAmounts(changed, amounts.values))) return { raw, written };
  const groups = groupsOf(changed, civil, side);
  const named = groups.map((group) => (side === 'end' ? group.at(-1)! : group[0]!));
  const first = groups.find((group) => group.length > 1)?.[0] ?? 0;
  book.add('lengths-evened', 'note', {
    row: sheet.table.lineOfRow[rows[first]!]!,
    foundTold: tell('so-many-minutes', { minutes: changed.shorter }),
    expectedTold: tell('so-many-minutes', { minutes: changed.longer }),
  });
  const total = (values: Float64Array, group: readonly number[]) => group.reduce((sum, i) => sum + values[i]!, 0);
  return {
    raw: {
      ...raw,
      rows: named.map((i) => rows[i]!),
      civil: Float64Array.from(named, (i) => civil[i]!),
      offsets: offsets && Float64Array.from(named, (i) => offsets[i]!),
      count: groups.length,
      intervalMinutes: changed.longer,
      newestFirst: false,
    },
    written: written.map((one) => ({
      ...one,
      values: Float64Array.from(groups, (group) => total(one.values, group) / (isMean(one) ? group.length : 1)),
      estimated: one.estimated && Uint8Array.from(groups, (group) => Math.max(...group.map((i) => one.estimated![i]!))),
    })),
  };
}

const isOfWeather = (sheet: Sheet, column: ColumnFacts): boolean => {
  const carrier = statedCarrier(sheet, column)?.carrier;
  return carrier === 'outdoor-temperature' || (carrier === undefined && isOfDegrees(statedUnit(sheet, column)));
};

/** As chosen; both ends given; the heading's word; 24:00. Undefined where nothing tells. */
function saidSide(
  sheet: Sheet,
  column: number,
  timeColumn: number | undefined,
  toColumn: number | undefined,
  choices: IntakeChoices,
): StampSide | undefined {
  if (choices.stamp !== undefined) return choices.stamp;
  // A numbered hour was turned into its beginning.
  if (stepOf(sheet).isNumbered) return 'start';
  if (toColumn !== undefined) return 'start';
  for (const c of [timeColumn, column]) {
    const role = c === undefined ? undefined : sheet.columns[c]?.meaning.role;
    if (role === 'from') return 'start';
    if (role === 'to') return 'end';
  }
  const clockColumn = timeColumn ?? column;
  for (let row = sheet.firstRow; row < Math.min(sheet.table.rowCount, sheet.firstRow + 100); row++) {
    const cell = cellText(sheet.table, row, clockColumn);
    if (startOfSpan(cell) >= 0) return 'start';
    if (/(^|[ T])24:00/.test(cell)) return 'end';
  }
  return undefined;
}
