/** One record of open meter data as a series: readings in their slots, days, or periods, by the length of its intervals. */

import type { Series } from '../../model/shapes/evidence.ts';
import { tell } from '../../model/shapes/told.ts';
import type { ZoneTable } from '../clock/zone-table.ts';
import { isIntervalLength } from '../dates/interval.ts';
import { dayPicture, daySeries } from '../periods/day-series.ts';
import { periodPicture, periodSeries } from '../periods/period-series.ts';
import type { RawPeriod } from '../periods/raw-period.ts';
import { fillPlaced, withFilled } from '../readings/build-interval-series.ts';
import { remarkFrozen, remarkGaps } from '../readings/find-gaps.ts';
import { placeReadings } from '../readings/place-readings.ts';
import { remarkPlaced } from '../readings/remark-placed.ts';
import { screenEnergy, tellAmount } from '../readings/screen-values.ts';
import { firstDays, intervalDays, summariseReadings } from '../readings/summarise.ts';
import type { IntakeChoices, IntakeContext } from '../terms/choices.ts';
import type { IntervalDays } from '../terms/preview.ts';
import type { RemarkBook } from '../terms/remark-book.ts';
import { commonestDuration, type SpanReading } from './clean-readings.ts';
import type { LocalTime } from './feed.ts';
import { midnightClock, type OffsetAt, offsetOf } from './local-time.ts';
import type { RecordQuantity } from './record-quantity.ts';
import { type FeedClock, moveToInstants, settleFeedClock, tableFor } from './settle-feed-clock.ts';
import { spreadOverSlots } from './spread-long.ts';

export interface RecordInput {
  readonly id: string;
  readonly name: string;
  readonly quantity: RecordQuantity;
  /** In order of time, each with a length. */
  readonly readings: readonly SpanReading[];
  /** ISO 4217 number. */
  readonly currency: number | undefined;
  readonly localTime: LocalTime | undefined;
}

export interface BuiltRecord {
  readonly series: Series;
  readonly intervals?: IntervalDays;
  readonly firstDays: readonly { readonly at: string; readonly value: number | null }[];
  readonly clock?: FeedClock;
}

const DAY = 86_400;
const isDayLength = (seconds: number): boolean => seconds >= 82_800 && seconds <= 90_000;

export function buildRecord(
  input: RecordInput,
  choices: IntakeChoices,
  context: IntakeContext,
  book: RemarkBook,
): BuiltRecord | undefined {
  const { readings, quantity } = input;
  const seconds = commonestDuration(readings);
  if (seconds === undefined) return undefined;
  const inKWh = readings.map((r) => ({ ...r, value: kWhOf(r, quantity) }));
  if (isIntervalLength(seconds / 60)) return buildIntervals(input, inKWh, seconds, choices, context, book);
  if (isDayLength(seconds)) return buildDays(input, inKWh, choices, context, book);
  if (seconds > 90_000) return buildPeriods(input, inKWh, context, book);
  book.add('espi-left-out', 'note', {
    column: input.name,
    foundTold: tell('readings-every', { minutes: Math.round(seconds / 60) }),
  });
  return undefined;
}

const kWhOf = (r: SpanReading, quantity: RecordQuantity): number =>
  r.value * quantity.kWhPerUnit * (quantity.isPower ? r.duration / 3600 : 1);

function buildIntervals(
  input: RecordInput,
  readings: readonly SpanReading[],
  seconds: number,
  choices: IntakeChoices,
  context: IntakeContext,
  book: RemarkBook,
): BuiltRecord | undefined {
  const even = spreadOverSlots(readings, seconds, book);
  const zone = tableFor(context.zone, even);
  const clock = settleFeedClock(even, seconds, zone, choices, book);
  const moved = moveToInstants(even, seconds, clock, zone, book);
  const values = Float64Array.from(moved, (r) => r.value);
  const lines = moved.map((r) => r.line);
  screenEnergy(
    { values, count: values.length, hours: seconds / 3600, lineOf: (i) => lines[i]!, column: input.name },
    input.quantity.carrier,
    book,
  );
  const start = Float64Array.from(moved, (r) => r.start / 60);
  const placed = placeReadings(start, values, values.length, seconds / 60, zone, lines);
  if (!placed || placed.present === 0) return undefined;
  remarkPlaced(placed, context.zone, true, book);
  const estimatedCount = Math.min(placed.present, moved.filter((r) => r.estimated).length);
  const title = { ...titleOf(input), estimatedCount };
  const asRead = summariseReadings(title, placed);
  const likelyKWh = asRead.total / placed.present;
  remarkGaps(placed, zone, context.zone, likelyKWh, book);
  const zeroMatters = asRead.carrier === 'electricity' && asRead.role === 'import';
  remarkFrozen(placed, zone, context.zone, zeroMatters, book, likelyKWh);
  if (estimatedCount > 0)
    book.add('estimated', 'note', {
      count: estimatedCount,
      effectKWh: moved.reduce((sum, r) => sum + (r.estimated ? r.value : 0), 0),
    });
  const kept = choices.fill === 'same weekday mean' ? fillPlaced(placed, zone, book) : { ...placed, filled: [] };
  const series = kept.filled.length > 0 ? withFilled(summariseReadings(title, kept), kept.filled) : asRead;
  return {
    series,
    intervals: intervalDays(input.id, kept),
    firstDays: firstDays(kept, zone),
    clock,
  };
}

function buildDays(
  input: RecordInput,
  readings: readonly SpanReading[],
  choices: IntakeChoices,
  context: IntakeContext,
  book: RemarkBook,
): BuiltRecord | undefined {
  const dayOf = dayCounter(input, readings, context, book);
  const even = readings.flatMap((r) => {
    const days = Math.max(1, Math.round(r.duration / DAY));
    if (days > 1)
      book.tally('espi-long-reading', 'note', {
        row: r.line,
        foundTold: tell('so-many-days', { days }),
        expectedTold: tell('one-day'),
      });
    return Array.from({ length: days }, (_, i) => ({ ...r, day: dayOf(r.start) + i, value: r.value / days }));
  });
  const values = Float64Array.from(even, (r) => r.value);
  screenEnergy(
    { values, count: values.length, hours: 24, lineOf: (i) => even[i]!.line, column: input.name },
    input.quantity.carrier,
    book,
  );
  const list = even.map((r, i) => ({ day: r.day, value: values[i]!, line: r.line, estimated: r.estimated }));
  const { id, name, quantity } = input;
  const series = daySeries(id, titleOf(input).name, quantity, list, 0, book, choices.fill);
  return series && { series: { ...series, id, name: name || series.name }, firstDays: dayPicture(series) };
}

function buildPeriods(
  input: RecordInput,
  readings: readonly SpanReading[],
  context: IntakeContext,
  book: RemarkBook,
): BuiltRecord | undefined {
  const dayOf = dayCounter(input, readings, context, book);
  const written = new Map(input.readings.map((r) => [r.line, r.value]));
  const withCosts = isHomeMoney(input, context);
  const raw = readings.flatMap((r): RawPeriod[] => {
    const fromDay = dayOf(r.start);
    const toDay = dayOf(r.start + r.duration);
    if (toDay <= fromDay) return [];
    if (r.value < 0) {
      book.tally('negative', 'note', { row: r.line, column: input.name, foundTold: tellAmount(r.value) });
      return [];
    }
    return [
      {
        fromDay,
        toDay,
        quantity: (written.get(r.line) ?? 0) * input.quantity.writtenTimes,
        kWh: r.value,
        // Hundred-thousandths of a pound or euro.
        ...(withCosts && !Number.isNaN(r.cost) ? { costPence: r.cost / 1000 } : {}),
        quality: r.estimated ? 'estimated' : 'actual',
        line: r.line,
      },
    ];
  });
  const series = periodSeries(input.id, titleOf(input).name, input.quantity, raw, book);
  return series && { series, firstDays: periodPicture(series) };
}

/** ISO 4217. */
const CURRENCIES = { '£': 826, '€': 978 } as const;
export const isHomeMoney = ({ currency }: Pick<RecordInput, 'currency'>, { money = '£' }: IntakeContext): boolean =>
  currency === CURRENCIES[money];

function titleOf({ id, name, quantity }: RecordInput) {
  const fallback = quantity.role === 'import' ? quantity.carrier : `${quantity.carrier} ${quantity.role}`;
  return { id, name: name || fallback, carrier: quantity.carrier, role: quantity.role };
}

/** Days are counted in the clock they were cut in: the household's, the feed's own, or UTC. */
function dayCounter(
  input: RecordInput,
  readings: readonly SpanReading[],
  context: IntakeContext,
  book: RemarkBook,
): (utcSeconds: number) => number {
  const household: ZoneTable = tableFor(context.zone, readings);
  const clocks: { name: string; offsetAt: OffsetAt }[] = [
    { name: 'household', offsetAt: (s) => household.offsetAt(Math.floor(s / 60)) * 60 },
    ...(input.localTime ? [{ name: 'its own clock', offsetAt: offsetOf(input.localTime) }] : []),
    { name: 'UTC', offsetAt: () => 0 },
  ];
  const starts = readings.map((r) => r.start);
  const clock = midnightClock(starts, clocks) ?? clocks[0]!;
  if (clock.name !== 'household' && !book.has('espi-other-clock'))
    book.add('espi-other-clock', 'note', {
      foundTold: clock.name === 'UTC' ? clock.name : tell('its-own-clock'),
      expected: context.zone,
    });
  return (s) => Math.floor((s + clock.offsetAt(s)) / DAY);
}
