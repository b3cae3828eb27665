/** One day a row: a date and 24, 48 or 96 columns of readings, with 46 or 50 on the days the clocks change; or blocks of some hours. */

import { tell } from '../../model/shapes/told.ts';
import { zoneTable } from '../clock/zone-table.ts';
import { type IntakeShape, nothingRead } from '../importer/shape.ts';
import { type ColumnFacts, isNumberColumn } from '../layout/column-facts.ts';
import { commonUnit } from '../layout/energy-columns.ts';
import { explainStrays } from '../layout/explain-strays.ts';
import { plainWords, slotOfHeading } from '../layout/headings.ts';
import { estimatedRows, findQualityColumn } from '../layout/quality-marks.ts';
import { readDates, settleDayFirst } from '../layout/read-dates.ts';
import type { Sheet } from '../layout/sheet.ts';
import { offsetSaid, steadyClockOf } from '../layout/titles.ts';
import { readValues, settleDecimals } from '../layout/value-cells.ts';
import { buildIntervalSeries, placeClock, type RawReadings } from '../readings/build-interval-series.ts';
import { takeDayApart } from '../readings/day-counter.ts';
import { leaveOutLater, remarkOrder } from '../readings/remark-order.ts';
import { splitNet } from '../readings/split-net.ts';
import type { StampSide } from '../readings/stamp-side.ts';
import { stageOf } from '../terms/progress.ts';

interface WideLayout {
  readonly columns: readonly ColumnFacts[];
  readonly intervalMinutes: number;
  /** Minutes after midnight at which each column's reading starts, by its heading. */
  readonly startMinute: readonly number[];
  readonly stamp: StampSide;
}

/** Reading columns that a day may have, with room for the long autumn day. */
const DAY_LENGTHS = [
  { slots: 24, most: 25, minutes: 60 },
  { slots: 48, most: 50, minutes: 30 },
  { slots: 96, most: 100, minutes: 15 },
  { slots: 288, most: 300, minutes: 5 },
] as const;

function findLayout(sheet: Sheet): WideLayout | undefined {
  const after = sheet.columns.filter((c) => c.index > sheet.dateColumn);
  const named = after.filter((c) => slotOfHeading(c.heading) !== undefined);
  const columns = named.length >= 23 ? named : sheet.headingRow < 0 ? longestRun(after.filter(isNumberColumn)) : [];
  const length = DAY_LENGTHS.find((l) => columns.length >= l.slots && columns.length <= l.most);
  if (!length) return findBlocks(after);
  const clocks = columns.map((c) => slotOfHeading(c.heading));
  const first = clocks[0];
  const usesClock = first !== undefined && 'clock' in first;
  const stamp: StampSide = usesClock && first.clock === length.minutes ? 'end' : 'start';
  return { columns, intervalMinutes: length.minutes, startMinute: columns.map((_, i) => i * length.minutes), stamp };
}

/** Blocks into which a day is divided evenly, each of some hours. */
const BLOCKS = [4, 6, 8, 12];
const SPAN =
  /(?<!\d)(\d{1,2})(?:[:.h]?(\d\d))? ?(am|pm|h|uhr)? ?(?:-|–|—|to|until|bis|till) ?(\d{1,2})(?:[:.h]?(\d\d))? ?(am|pm|h|uhr)?(?![\d.])/;

/** Columns whose clocks, or whose spans from one clock to another, are all of a day in its order. */
function findBlocks(after: readonly ColumnFacts[]): WideLayout | undefined {
  const spans = after.filter(({ heading }) => blockOf(heading) !== undefined);
  const clocks = after.filter(({ heading }) => 'clock' in (slotOfHeading(heading) ?? {}));
  const columns = spans.length > 0 ? spans : clocks;
  if (!BLOCKS.includes(columns.length) || !columns.every(isNumberColumn)) return undefined;
  const intervalMinutes = 1440 / columns.length;
  const startMinute = columns.map((_, i) => i * intervalMinutes);
  const isAt = (minutes: readonly (number | undefined)[], by: number) =>
    minutes.every((minute, i) => minute === startMinute[i]! + by || (minute === 0 && startMinute[i]! + by === 1440));
  if (columns === spans) {
    const [from, to] = [0, 1].map((end) => spans.map(({ heading }) => blockOf(heading)![end]));
    return isAt(from!, 0) && isAt(to!, intervalMinutes)
      ? { columns, intervalMinutes, startMinute, stamp: 'start' }
      : undefined;
  }
  const named = columns.map(({ heading }) => (slotOfHeading(heading) as { clock: number }).clock);
  const stamp = named[0] === 0 ? 'start' : 'end';
  return isAt(named, stamp === 'start' ? 0 : intervalMinutes)
    ? { columns, intervalMinutes, startMinute, stamp }
    : undefined;
}

/** Minutes after midnight from which and to which a block reaches: "00:00-04:00", "4am to 8am", "Night (0-6 Uhr)". */
function blockOf(heading: string): readonly [number, number] | undefined {
  const words = plainWords(heading)
    .replaceAll('midnight', '12am')
    .replaceAll(/\b(noon|midday)\b/g, '12pm');
  const found = SPAN.exec(words);
  if (!found) return undefined;
  const minutes = (hour: string, minute: string | undefined, half: string | undefined) =>
    (half === 'am' || half === 'pm' ? (Number(hour) % 12) + (half === 'pm' ? 12 : 0) : Number(hour)) * 60 +
    Number(minute ?? 0);
  return [minutes(found[1]!, found[2], found[3]), minutes(found[4]!, found[5], found[6])];
}

/** Number columns that stand side by side; totals and meter numbers stand apart. */
function longestRun(columns: readonly ColumnFacts[]): ColumnFacts[] {
  for (const { slots } of DAY_LENGTHS.toReversed())
    if (columns.length >= slots && columns.length <= slots + 2) return columns.slice(0, slots);
  return [];
}

export const wideDays: IntakeShape = {
  name: 'days across',

  detect(sheet) {
    if (sheet.dateColumn < 0) return { fit: 0, reason: 'no column of dates' };
    const layout = findLayout(sheet);
    if (!layout) return { fit: 0, reason: 'no 24, 48, 96 or 288 columns of readings' };
    return {
      fit: 0.95,
      reason: tell('date-and-columns-of', { columns: layout.columns.length, minutes: layout.intervalMinutes }),
    };
  },

  parse({ sheet, choices, context, book }) {
    const layout = findLayout(sheet);
    const column = choices.columns?.stamp ?? sheet.dateColumn;
    const dayFirst = settleDayFirst(sheet, column, choices, context.zone, book);
    const found = readDates(sheet, column, undefined, dayFirst, context.zone, stageOf(context.onProgress, 0, 0.2));
    const dates = leaveOutLater(sheet, found, context, book);
    explainStrays(sheet, dates, choices, book, () => context.onProgress?.(0.2));
    if (!layout || dates.count === 0) {
      book.add('no-readable-rows', 'refusal');
      return nothingRead(choices, dates.count);
    }
    remarkOrder(dates, book);
    const decimal = settleDecimals(sheet, eveningFirst(layout), choices, book);
    const table = layout.columns.map((c, i) =>
      readValues(
        sheet,
        c.index,
        dates.rows,
        dates.count,
        decimal,
        tell('a-number-in', { unit: 'kWh' }),
        book,
        stageOf(
          context.onProgress,
          0.2 + (0.5 * i) / layout.columns.length,
          0.2 + (0.5 * (i + 1)) / layout.columns.length,
        ),
      ),
    );
    const days = unfold(layout, dates.civilMinute, dates.rows, dates.count, table, context.zone);
    const stamp = choices.stamp ?? layout.stamp;
    // Correcting what the headings name moves every reading by one column.
    const move = stamp === layout.stamp ? 0 : stamp === 'end' ? -layout.intervalMinutes : layout.intervalMinutes;
    if (move !== 0) for (let i = 0; i < days.count; i++) days.civil[i]! += move;
    const said = offsetSaid(sheet, [column]);
    const raw: RawReadings = {
      sheet,
      ...days,
      offsets: said === undefined ? null : new Float64Array(days.count).fill(said),
      intervalMinutes: layout.intervalMinutes,
      // Columns stand in the order of the day, so the start of each is known whatever its heading names.
      stamp: 'start',
      newestFirst: false,
      fixedColumns: layout.columns.length * layout.intervalMinutes === 1440,
      steadyClock: steadyClockOf(sheet, [column]),
    };
    const facts = valueFacts(sheet, layout);
    const quality = choices.columns?.quality ?? findQualityColumn(sheet);
    const estimated = quality === undefined ? null : estimatedRows(sheet, quality, raw);
    const clock = placeClock(raw, raw.civil.length > 0 ? days.values : new Float64Array(0), choices, context, book);
    const written = { column: facts, values: days.values, estimated };
    takeDayApart(written, raw, book);
    const read = splitNet(sheet, written, choices, book);
    const onProgress = stageOf(context.onProgress, 0.75, 1);
    const all = read.flatMap(
      (one, i) =>
        buildIntervalSeries(`series-${i + 1}`, raw, one, clock, choices, { ...context, onProgress }, book) ?? [],
    );
    const built = all[0];
    if (!built) {
      book.add('no-readable-rows', 'refusal');
      return nothingRead(choices, dates.count);
    }
    return {
      choices: {
        shape: wideDays.name,
        ...commonUnit(all.map((one) => one.quantity)),
        stamp,
        ...(dayFirst === undefined ? {} : { dayFirst }),
        ...(clock.settled.clock === undefined ? {} : { clock: clock.settled.clock }),
        columns: { stamp: column, ...(quality === undefined ? {} : { quality }) },
        decimal,
        ...(all.length === 1 ? { carrier: built.quantity.carrier, role: built.quantity.role } : {}),
        ...(choices.calorificMJPerM3 === undefined ? {} : { calorificMJPerM3: choices.calorificMJPerM3 }),
      },
      series: all.map((one) => one.series),
      intervals: all.map((one) => one.intervals),
      firstDays: built.firstDays,
      dataRows: dates.count,
    };
  },
};

/** The evening comes first: small numbers, as of the night in Wh, have no sign. */
function eveningFirst({ columns }: WideLayout): ColumnFacts[] {
  const evening = Math.floor((2 * columns.length) / 3);
  return [...columns.slice(evening), ...columns.slice(0, evening)];
}

/** The reading columns speak with one voice: unit and carrier come from any heading that names them. */
function valueFacts(sheet: Sheet, layout: WideLayout): ColumnFacts {
  const first = layout.columns[0]!;
  const telling = sheet.columns.find((c) => c.meaning.unit !== undefined && c.meaning.role !== 'cost') ?? first;
  return { ...first, heading: sheet.register ?? '', meaning: telling.meaning, suffix: telling.suffix };
}

/**
 * Rows of columns to one list in order of time. A short or long day fills its columns either by the clock, with the
 * skipped hour left empty, or by count, with empty columns at the end; which of them, the empty columns tell.
 */
function unfold(
  layout: WideLayout,
  dayMinute: Float64Array,
  dateRows: Uint32Array,
  count: number,
  table: readonly Float64Array[],
  zoneName: string,
): { civil: Float64Array; values: Float64Array; rows: Uint32Array; count: number } {
  const { intervalMinutes, columns } = layout;
  const slots = 1440 / intervalMinutes;
  const civil = new Float64Array(count * columns.length);
  const values = new Float64Array(civil.length);
  const rows = new Uint32Array(civil.length);
  let n = 0;
  const put = (minute: number, value: number, row: number) => {
    civil[n] = minute;
    values[n] = value;
    rows[n++] = row;
  };
  let first = Number.POSITIVE_INFINITY;
  let last = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < count; i++) {
    first = Math.min(first, dayMinute[i]!);
    last = Math.max(last, dayMinute[i]!);
  }
  const zone = zoneTable(zoneName, first / 1440, last / 1440);
  const changeOf = new Map(zone.changes.map((c) => [Math.floor((c.at + c.before) / 1440), c]));
  for (let i = 0; i < count; i++) {
    const midnight = Math.floor(dayMinute[i]! / 1440) * 1440;
    const row = dateRows[i]!;
    const change = changeOf.get(midnight / 1440);
    const filled = countFilled(table, i);
    const shift = change ? Math.abs(change.after - change.before) / intervalMinutes : 0;
    const isSpring = change !== undefined && change.after > change.before;
    const byCount =
      change !== undefined && (isSpring ? trailingEmpty(table, i) >= columns.length - slots + shift : filled > slots);
    const skippedFrom = change ? (change.at + change.before - midnight) / intervalMinutes : -1;
    for (let c = 0; c < columns.length; c++) {
      const value = table[c]![i]!;
      if (byCount && change) {
        const lengthInSlots = slots + (isSpring ? -shift : shift);
        if (c >= lengthInSlots) continue;
        const offset = c < skippedFrom ? 0 : change.after - change.before;
        put(midnight + c * intervalMinutes + offset, value, row);
      } else {
        if (c >= slots) continue;
        // An empty column of the skipped hour is no missing reading.
        if (isSpring && Number.isNaN(value) && c >= skippedFrom && c < skippedFrom + shift) continue;
        put(midnight + c * intervalMinutes, value, row);
      }
    }
  }
  return { civil: civil.subarray(0, n), values: values.subarray(0, n), rows: rows.subarray(0, n), count: n };
}

function countFilled(table: readonly Float64Array[], i: number): number {
  let filled = 0;
  for (const column of table) if (!Number.isNaN(column[i]!)) filled++;
  return filled;
}

function trailingEmpty(table: readonly Float64Array[], i: number): number {
  let empty = 0;
  for (let c = table.length - 1; c >= 0 && Number.isNaN(table[c]![i]!); c--) empty++;
  return empty;
}
