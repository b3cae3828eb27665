/**
 * From stamps and values of one column, however they were laid out, to a checked series of readings.
 * Long and wide files come together here.
 */

import { localStamp } from '../../model/calendar/zone.ts';
import { isEnergy, isTemperature, type Series } from '../../model/shapes/evidence.ts';
import { tell } from '../../model/shapes/told.ts';
import { type ClockSettled, settleClock } from '../clock/settle-clock.ts';
import { toInstants } from '../clock/to-instants.ts';
import { type ZoneTable, zoneTable } from '../clock/zone-table.ts';
import type { ColumnFacts } from '../layout/column-facts.ts';
import { namesRegister, namesWay } from '../layout/column-words.ts';
import { convertAll, type Quantity, settleUnit } from '../layout/settle-unit.ts';
import type { Sheet } from '../layout/sheet.ts';
import { stepOf } from '../layout/sheet-step.ts';
import { columnName } from '../layout/value-cells.ts';
import { choicesFor, type IntakeChoices, type IntakeContext } from '../terms/choices.ts';
import type { IntervalDays } from '../terms/preview.ts';
import type { RemarkBook } from '../terms/remark-book.ts';
import { cellText } from '../text/table.ts';
import { remarkDarkNights } from './dark-nights.ts';
import { type FilledSlots, fillGaps } from './fill-gaps.ts';
import { remarkFrozen, remarkGaps } from './find-gaps.ts';
import { type Placed, placeReadings } from './place-readings.ts';
import { remarkFilled } from './remark-filled.ts';
import { refuseDoubled, screenEnergy, screenTemperature } from './screen-values.ts';
import { type StampSide, sideOfStamps } from './stamp-side.ts';
import { firstDays, intervalDays, summariseReadings } from './summarise.ts';

export interface RawReadings {
  readonly sheet: Sheet;
  /** Row of the table that each reading stands in. */
  readonly rows: ArrayLike<number>;
  readonly civil: Float64Array;
  readonly offsets: Float64Array | null;
  readonly count: number;
  readonly intervalMinutes: number;
  readonly stamp: StampSide;
  readonly newestFirst: boolean;
  readonly fixedColumns: boolean;
  /** As the words above the stamps name it. */
  readonly steadyClock: 'utc' | 'standard' | 'offset' | undefined;
  /** Whether it is all of the weather, of which a day's mean hardly moves with an hour. */
  readonly isWeather?: boolean;
}

export interface ReadColumn {
  readonly column: ColumnFacts;
  /** As written, NaN where missing; changed in place to kWh. */
  readonly values: Float64Array;
  /** 1 for each reading that is marked as an estimate; null where the file has no marks. */
  readonly estimated: Uint8Array | null;
  /** Of a counter: the step in which it goes on, as written. */
  readonly leastStep?: number;
}

export interface BuiltSeries {
  readonly series: Series;
  readonly intervals: IntervalDays;
  readonly firstDays: { at: string; value: number | null }[];
  readonly quantity: Quantity;
}

export interface PlacedClock {
  readonly zone: ZoneTable;
  readonly settled: ClockSettled;
  readonly start: Float64Array;
}

/** Settles the clock once for all columns of the file. */
export function placeClock(
  raw: RawReadings,
  values: Float64Array,
  choices: IntakeChoices,
  context: IntakeContext,
  book: RemarkBook,
): PlacedClock {
  let first = Number.POSITIVE_INFINITY;
  let last = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < raw.count; i++) {
    const minute = raw.civil[i]!;
    if (minute < first) first = minute;
    if (minute > last) last = minute;
  }
  const zone = zoneTable(context.zone, Math.floor(first / 1440), Math.floor(last / 1440));
  const settled = settleClock({ ...raw, values }, choices, zone, book);
  const { start, inSkippedHour, onceInDoubledHour } = toInstants({ ...raw, values }, settled, zone);
  if (inSkippedHour > 0 && !book.has('spring-hour-filled'))
    book.add('spring-hour-filled', 'note', { count: inSkippedHour });
  if (onceInDoubledHour > 0) book.add('autumn-hour-once', 'note', { count: onceInDoubledHour });
  return { zone, settled, start };
}

/**
 * In a file of UTC times the edges of whole days show only in local time. Moves the starts back by one reading and
 * answers 'end' where the stamps are ends; undefined where the edges do not tell.
 */
export function sideByLocalEdges(
  clock: PlacedClock,
  intervalMinutes: number,
  byCivil: StampSide | undefined,
): StampSide | undefined {
  const { start, zone } = clock;
  let first = Number.POSITIVE_INFINITY;
  let last = Number.NEGATIVE_INFINITY;
  for (const minute of start) {
    if (minute < first) first = minute;
    if (minute > last) last = minute;
  }
  if (first > last) return undefined;
  const edges = Float64Array.of(first + zone.offsetAt(first), last + zone.offsetAt(last));
  const side = sideOfStamps(edges, 2, intervalMinutes);
  // Whole days of the one clock read one way, of the other the other: nobody knows.
  if (side !== undefined && byCivil !== undefined && side !== byCivil) return undefined;
  if (byCivil !== undefined) return byCivil;
  if (side === 'end') for (let i = 0; i < start.length; i++) start[i]! -= intervalMinutes;
  return side;
}

/** Of readings by the minute some fall into one. A judgement. */
const SHARE_IN_ONE_MINUTE = 0.1;

/** Whether rows count as repeats that are seconds apart: all but one of each minute would be lost. */
function isBelowMinutes(sheet: Sheet, { sameAgain, different, present }: Placed): boolean {
  if (sameAgain.count + different.count < present * SHARE_IN_ONE_MINUTE) return false;
  const { dateColumn, dateForm, table } = sheet;
  const columns = [dateColumn, stepOf(sheet).timeColumn ?? dateColumn];
  const stampAt = (row: number) => columns.map((column) => cellText(table, row, column)).join(' ');
  const withoutSeconds = (stamp: string) => stamp.replaceAll(/(\d{1,2}:\d{2}):\d{2}(?:[.,]\d+)?/g, '$1');
  return [sameAgain, different].some(({ count, row }) => {
    if (count === 0 || row <= sheet.firstRow) return false;
    const [before, own] = [stampAt(row - 1), stampAt(row)];
    return before !== own && (dateForm !== 'calendar' || withoutSeconds(before) === withoutSeconds(own));
  });
}

export function buildIntervalSeries(
  id: string,
  raw: RawReadings,
  read: ReadColumn,
  clock: PlacedClock,
  choices: IntakeChoices,
  context: IntakeContext,
  book: RemarkBook,
): BuiltSeries | undefined {
  const { sheet, rows, count, intervalMinutes } = raw;
  const { column, values } = read;
  const quantity = settleUnit(
    sheet,
    column,
    meanPerDay(values, count, intervalMinutes),
    intervalMinutes / 60,
    choices,
    context,
    book,
  );
  const inDegrees = isTemperature(quantity.carrier);
  convertAll(values, quantity);
  const screen = {
    values,
    count,
    hours: intervalMinutes / 60,
    roomKWh: (read.leastStep ?? 0) * quantity.kWhPerUnit,
    lineOf: (i: number) => sheet.table.lineOfRow[rows[i]!]!,
    column: columnName(sheet, column.index),
    whenOf: (i: number) => civilStamp(raw.civil[i]!),
  };
  if (inDegrees) screenTemperature(screen, quantity.carrier, book);
  else if (quantity.carrier !== 'water') screenEnergy(screen, quantity.carrier, book);
  context.onProgress?.(0.2);
  const estimatedCount = remarkEstimated(raw, read, inDegrees, book);
  const placed = placeReadings(clock.start, values, count, intervalMinutes, clock.zone, rows);
  if (!placed) return undefined;
  if (placed.present === 0) return undefined;
  context.onProgress?.(0.5);
  const line = (row: number, at: number) => ({
    row: sheet.table.lineOfRow[row]!,
    from: localStamp(context.zone, at * 60_000).replace('T', ' '),
  });
  if (placed.sameAgain.count > 0)
    book.add('duplicate-same', 'note', {
      ...line(placed.sameAgain.row, placed.sameAgain.at),
      count: placed.sameAgain.count,
    });
  if (placed.different.count > 0)
    book.add('duplicate-different', 'note', {
      ...line(placed.different.row, placed.different.at),
      count: placed.different.count,
      ...(inDegrees ? {} : { effectKWh: placed.different.effect }),
    });
  const doubled = placed.different;
  if (isBelowMinutes(sheet, placed)) {
    if (!book.has('below-minutes')) book.add('below-minutes', 'refusal');
  } else if (doubled.count > 0)
    refuseDoubled(doubled.count, placed.present, sheet.table.lineOfRow[doubled.row]!, screen.column, book);
  if (placed.offGrid.count > 0)
    book.add('stamp-off-grid', 'note', {
      ...line(placed.offGrid.row, placed.offGrid.at),
      count: placed.offGrid.count,
      expectedTold: tell('so-many-minutes', { minutes: intervalMinutes }),
    });
  const title = {
    id,
    name: column.heading === '' ? quantity.carrier : column.heading,
    carrier: quantity.carrier,
    role: quantity.role,
    estimatedCount,
  };
  const asRead = summariseReadings(title, placed);
  context.onProgress?.(0.7);
  const likelyKWh = !isEnergy(quantity.carrier) ? Number.NaN : asRead.total / placed.present;
  remarkGaps(placed, clock.zone, context.zone, likelyKWh, book);
  const isHome = quantity.carrier === 'electricity' && quantity.role === 'import';
  if (quantity.carrier !== 'water') remarkFrozen(placed, clock.zone, context.zone, isHome, book, likelyKWh);
  context.onProgress?.(0.9);
  const isTold = choicesFor(choices, screen.column).role !== undefined || namesWay(column) || namesRegister(column);
  if (isHome && !isTold) remarkDarkNights(placed, screen.column, book);
  const fill = choices.fill === 'same weekday mean' && !inDegrees;
  const kept: FilledPlaced = fill ? fillPlaced(placed, clock.zone, book) : { ...placed, filled: [] };
  const series = kept.filled.length > 0 ? withFilled(summariseReadings(title, kept), kept.filled) : asRead;
  return {
    series,
    intervals: intervalDays(id, kept),
    firstDays: firstDays(kept, clock.zone),
    quantity,
  };
}

/** Marks of readings that are no reading (a spike taken out, an empty cell) do not count. */
function remarkEstimated(raw: RawReadings, read: ReadColumn, inDegrees: boolean, book: RemarkBook): number {
  const { estimated, values } = read;
  let [count, sum, from, to] = [0, 0, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (let i = 0; estimated && i < raw.count; i++) {
    if (estimated[i] === 0 || Number.isNaN(values[i]!)) continue;
    count++;
    sum += values[i]!;
    from = Math.min(from, raw.civil[i]!);
    to = Math.max(to, raw.civil[i]!);
  }
  if (count === 0) return 0;
  const effect = inDegrees ? {} : { effectKWh: Math.round(sum * 10) / 10 };
  book.add('estimated', 'note', { count, from: civilStamp(from), to: civilStamp(to), ...effect });
  return count;
}

/** A stamp as the file has it: civil minutes since 1970. */
const civilStamp = (minutes: number): string => new Date(minutes * 60_000).toISOString().slice(0, 16).replace('T', ' ');

export interface FilledPlaced extends Placed {
  readonly filled: FilledSlots;
}

export function fillPlaced(placed: Placed, zone: ZoneTable, book: RemarkBook): FilledPlaced {
  const { days, filled, left } = fillGaps(placed, zone);
  remarkFilled(filled, left, book);
  return { ...placed, days, filled };
}

/** What was filled is estimated, and is not among the readings that are there. */
export function withFilled(series: Series, filled: FilledSlots): Series {
  const count = filled.reduce((sum, { slots }) => sum + slots, 0);
  return { ...series, estimatedCount: series.estimatedCount + count, filled };
}

/** Mean of a day as written. A few values fifty times the mean are slips, and must not decide the unit. */
function meanPerDay(values: Float64Array, count: number, intervalMinutes: number): number {
  const all = meanBelow(values, count, Number.POSITIVE_INFINITY);
  const limit = Math.abs(all.mean) * 50;
  const { mean } = all.most > limit ? meanBelow(values, count, limit) : all;
  return mean * (1440 / intervalMinutes);
}

function meanBelow(values: Float64Array, count: number, limit: number): { mean: number; most: number } {
  let sum = 0;
  let there = 0;
  let most = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < count; i++) {
    const value = values[i]!;
    if (Number.isNaN(value) || value > limit) continue;
    sum += value;
    there++;
    if (value > most) most = value;
  }
  return { mean: there === 0 ? Number.NaN : sum / there, most };
}
