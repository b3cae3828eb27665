/** Starts of readings as true instants: UTC by the standard, though some senders write local time as if it were UTC. */
import { weighClock } from '../clock/decide-clock.ts';
import { toInstants } from '../clock/to-instants.ts';
import { type ZoneTable, zoneTable } from '../clock/zone-table.ts';
import type { IntakeChoices } from '../terms/choices.ts';
import type { RemarkBook } from '../terms/remark-book.ts';
import type { SpanReading } from './clean-readings.ts';

export type FeedClock = NonNullable<IntakeChoices['clock']>;

export const tableFor = (zone: string, readings: readonly SpanReading[]): ZoneTable =>
  zoneTable(
    zone,
    Math.floor(readings[0]!.start / 86_400),
    Math.floor((readings.at(-1)!.start + readings.at(-1)!.duration) / 86_400),
  );

/** Chosen, else UTC unless the starts leave out and double the very hours that local clocks do. */
export function settleFeedClock(
  readings: readonly SpanReading[],
  seconds: number,
  zone: ZoneTable,
  choices: IntakeChoices,
  book: RemarkBook,
): FeedClock {
  if (choices.clock !== undefined) return choices.clock;
  const civil = Float64Array.from(readings, (r) => r.start / 60);
  const values = Float64Array.from(readings, (r) => r.value);
  const evidence = weighClock(civil, values, readings.length, seconds / 60, zone, false, false);
  if (evidence.local - evidence.filledSprings <= evidence.steady) return 'utc';
  if (!book.has('espi-clock-asked')) book.add('espi-clock-asked', 'question', { expected: 'local' });
  return 'local';
}

/** The same readings at their true instants; those in an hour that did not exist are left out. */
export function moveToInstants(
  readings: readonly SpanReading[],
  seconds: number,
  clock: FeedClock,
  zone: ZoneTable,
  book: RemarkBook,
): readonly SpanReading[] {
  if (clock === 'utc') return readings;
  const stamps = {
    civil: Float64Array.from(readings, (r) => r.start / 60),
    values: Float64Array.from(readings, (r) => r.value),
    offsets: null,
    count: readings.length,
    intervalMinutes: seconds / 60,
    stamp: 'start' as const,
    newestFirst: false,
  };
  const { start, inSkippedHour } = toInstants(stamps, { clock, useOffsets: false }, zone);
  if (inSkippedHour > 0 && !book.has('spring-hour-filled'))
    book.add('spring-hour-filled', 'note', { count: inSkippedHour });
  return readings
    .map((one, i) => ({ ...one, start: start[i]! * 60 }))
    .filter((one) => !Number.isNaN(one.start))
    .sort((a, b) => a.start - b.start);
}
