/**
 * From stamps and values of one column, however they were laid out, to a checked series of readings.
 * Long and wide files come together here.
 */

import type { Series } from '../../model/evidence/evidence.ts';
import { type ClockSettled, settleClock } from '../clock/settle-clock.ts';
import { toInstants } from '../clock/to-instants.ts';
import { type ZoneTable, zoneTable } from '../clock/zone-table.ts';
import type { IntakeChoices, IntakeContext, IntervalDays } from '../intake.ts';
import type { ColumnFacts } from '../layout/column-facts.ts';
import { type Quantity, settleUnit } from '../layout/settle-unit.ts';
import type { Sheet } from '../layout/sheet.ts';
import { columnName } from '../layout/value-cells.ts';
import type { RemarkBook } from '../remark-book.ts';
import { remarkFrozen, remarkGaps } from './find-gaps.ts';
import { placeReadings } from './place-readings.ts';
import { screenEnergy, screenTemperature } from './screen-values.ts';
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
  readonly headingSaysUtc: boolean;
}

export interface ReadColumn {
  readonly column: ColumnFacts;
  /** As written, NaN where missing; changed in place to kWh. */
  readonly values: Float64Array;
  readonly estimatedCount: number;
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
  const { start, inSkippedHour, onceInDoubledHour } = toInstants(raw, settled, zone);
  if (inSkippedHour > 0 && !book.has('spring-hour-filled'))
    book.add('spring-hour-filled', 'note', { count: inSkippedHour });
  if (onceInDoubledHour > 0) book.add('autumn-hour-once', 'note', { count: onceInDoubledHour });
  return { zone, settled, start };
}

/**
 * In a file of UTC times the edges of whole days show only in local time. Moves the starts back by one reading and
 * answers 'end' where the stamps are ends; undefined where the edges do not tell.
 */
export function sideByLocalEdges(clock: PlacedClock, intervalMinutes: number): StampSide | undefined {
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
  if (side === 'end') for (let i = 0; i < start.length; i++) start[i]! -= intervalMinutes;
  return side;
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
  const quantity = settleUnit(sheet, column, meanPerDay(values, count, intervalMinutes), choices, context, book);
  const isTemperature = quantity.carrier === 'outdoor-temperature';
  if (quantity.kWhPerUnit !== 1) for (let i = 0; i < count; i++) values[i]! *= quantity.kWhPerUnit;
  const screen = {
    values,
    count,
    hours: intervalMinutes / 60,
    lineOf: (i: number) => sheet.table.lineOfRow[rows[i]!]!,
    column: columnName(sheet, column.index),
  };
  if (isTemperature) screenTemperature(screen, book);
  else screenEnergy(screen, book);
  const placed = placeReadings(clock.start, values, count, intervalMinutes, clock.zone, rows);
  if (!placed) return undefined;
  if (placed.present === 0) return undefined;
  const line = (row: number) => ({ row: sheet.table.lineOfRow[row]! });
  if (placed.sameAgain.count > 0)
    book.add('duplicate-same', 'note', { ...line(placed.sameAgain.row), count: placed.sameAgain.count });
  if (placed.different.count > 0)
    book.add('duplicate-different', 'note', {
      ...line(placed.different.row),
      count: placed.different.count,
      ...(isTemperature ? {} : { effectKWh: placed.different.effect }),
    });
  if (placed.offGrid.count > 0)
    book.add('stamp-off-grid', 'note', {
      ...line(placed.offGrid.row),
      count: placed.offGrid.count,
      expected: `${intervalMinutes} minutes`,
    });
  const title = {
    id,
    name: column.heading === '' ? nameOf(quantity) : column.heading,
    carrier: quantity.carrier,
    role: quantity.role,
    estimatedCount: read.estimatedCount,
  };
  const series = summariseReadings(title, placed);
  const likelyKWh = isTemperature ? Number.NaN : series.total / placed.present;
  remarkGaps(placed, clock.zone, context.zone, likelyKWh, book);
  remarkFrozen(
    placed,
    clock.zone,
    context.zone,
    quantity.carrier === 'electricity' && quantity.role === 'import',
    book,
  );
  if (read.estimatedCount > 0) book.add('estimated', 'note', { count: read.estimatedCount });
  return {
    series,
    intervals: intervalDays(id, placed),
    firstDays: firstDays(placed, clock.zone, context.zone),
    quantity,
  };
}

const nameOf = ({ carrier }: Quantity): string => carrier.replace('-', ' ');

/** Mean of a day as written. A few values fifty times the mean are slips, and must not decide the unit. */
function meanPerDay(values: Float64Array, count: number, intervalMinutes: number): number {
  const plain = meanBelow(values, count, Number.POSITIVE_INFINITY);
  return meanBelow(values, count, Math.abs(plain) * 50) * (1440 / intervalMinutes);
}

function meanBelow(values: Float64Array, count: number, limit: number): number {
  let sum = 0;
  let there = 0;
  for (let i = 0; i < count; i++) {
    const value = values[i]!;
    if (Number.isNaN(value) || value > limit) continue;
    sum += value;
    there++;
  }
  return there === 0 ? Number.NaN : sum / there;
}
