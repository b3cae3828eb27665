/** Settles the clock of a file from offsets, headings, change days or, failing all, the zone; and says how. */
import type { IntakeChoices } from '../terms/choices.ts';
import type { RemarkBook } from '../terms/remark-book.ts';
import { type Clock, weighClock } from './decide-clock.ts';
import { standardOffset, type ZoneTable, zoneTable } from './zone-table.ts';

export interface ClockSettled {
  /** Clock that the civil stamps are in; undefined where only the offsets tell. */
  readonly clock: Clock | undefined;
  readonly useOffsets: boolean;
}

interface Stamps {
  readonly civil: Float64Array;
  readonly values: Float64Array;
  readonly offsets: Float64Array | null;
  readonly count: number;
  readonly intervalMinutes: number;
  readonly fixedColumns: boolean;
  readonly stamp: 'start' | 'end';
  readonly steadyClock: 'utc' | 'standard' | 'offset' | undefined;
  readonly isWeather?: boolean;
}

export function settleClock(stamps: Stamps, choices: IntakeChoices, zone: ZoneTable, book: RemarkBook): ClockSettled {
  const contradicts = () => {
    const { local, steady, filledSprings } = weigh(stamps, zone);
    return local > filledSprings && steady === 0;
  };
  if (stamps.steadyClock === 'offset' && choices.clock === undefined && contradicts()) {
    book.add('clock-contradicted', 'question', { expected: 'local' });
    return { clock: 'local', useOffsets: false };
  }
  if (stamps.offsets) {
    const clock = clockOfOffsets(stamps.civil, stamps.offsets, stamps.count, zone);
    if (clock !== 'some missing' && (choices.clock === undefined || choices.clock === clock)) {
      book.add('clock-from-offset', 'note', { found: clock ?? 'own' });
      return { clock, useOffsets: true };
    }
  }
  if (choices.clock !== undefined) return { clock: choices.clock, useOffsets: false };
  if (stamps.steadyClock === 'utc') {
    if (contradicts()) {
      book.add('clock-contradicted', 'question', { expected: 'local' });
      return { clock: 'local', useOffsets: false };
    }
    book.add('clock-utc', 'note', { found: 'heading' });
    return { clock: 'utc', useOffsets: false };
  }
  return { clock: fromChangeDays(stamps, zone, book), useOffsets: false };
}

function clockOfOffsets(
  civil: Float64Array,
  offsets: Float64Array,
  count: number,
  zone: ZoneTable,
): Clock | undefined | 'some missing' {
  let utc = true;
  let local = true;
  for (let i = 0; i < count; i++) {
    const offset = offsets[i]!;
    if (Number.isNaN(offset)) return 'some missing';
    if (offset !== 0) utc = false;
    if (local && zone.offsetAt(civil[i]! - offset) !== offset) local = false;
  }
  return utc ? 'utc' : local ? 'local' : undefined;
}

function fromChangeDays(stamps: Stamps, zone: ZoneTable, book: RemarkBook): Clock {
  const { civil, count } = stamps;
  const evidence = weigh(stamps, zone);
  if (evidence.local === 0 && !stamps.fixedColumns) {
    const other = otherZoneOf(stamps);
    if (other !== undefined) {
      book.add('zone-asked', 'question', { found: zone.name, expected: other });
      return 'local';
    }
  }
  if (evidence.local > 0 && evidence.steady > evidence.singleAutumns) {
    const clock = evidence.local >= evidence.steady ? 'local' : 'utc';
    book.add('clock-mixed', 'question', { count: evidence.changes, expected: clock });
    return clock;
  }
  if (evidence.local > 0) {
    if (evidence.filledSprings > 0) book.add('spring-hour-filled', 'note', { count: evidence.filledSprings });
    return 'local';
  }
  const isOfNoMatter = stamps.isWeather && isNearUtc(civil, count, zone);
  const doubt = (
    code: 'clock-autumn-asked' | 'clock-asked' | 'clock-assumed',
    clock: Clock,
    of: { count?: number },
  ) => {
    if (isOfNoMatter) book.add('clock-of-weather', 'note', { expected: clock });
    else
      book.add(code, 'question', {
        expected: clock,
        ...of,
        ...(stamps.isWeather ? { carrier: 'outdoor-temperature' as const } : {}),
      });
    return clock;
  };
  if (evidence.steady > 0 && evidence.steady === evidence.singleAutumns) return doubt('clock-autumn-asked', 'utc', {});
  if (evidence.steady > 0) {
    // In a zone whose winter time is UTC the two steady clocks are one.
    const winter = standardOffset(zone, civil[0]!);
    if (winter === 0) {
      book.add('clock-utc', 'note', { found: 'change days', count: evidence.steady });
      return 'utc';
    }
    if (stamps.steadyClock === 'standard') {
      book.add('clock-from-offset', 'note', { found: 'own' });
      return 'standard';
    }
    return doubt('clock-asked', 'standard', { count: evidence.steady });
  }
  if (insideWinter(civil, count, zone)) return 'local';
  return doubt('clock-assumed', 'local', {});
}

const weigh = (stamps: Stamps, zone: ZoneTable) =>
  weighClock(
    stamps.civil,
    stamps.values,
    stamps.count,
    stamps.intervalMinutes,
    zone,
    stamps.fixedColumns,
    stamps.stamp === 'end',
  );

/** One of each way of changing the clocks, by what the clocks show then. */
const OTHER_ZONES = [
  'Europe/London',
  'Europe/Berlin',
  'Europe/Athens',
  'America/New_York',
  'Australia/Sydney',
  'Pacific/Auckland',
];

/** A zone whose clock the file keeps at every change in its span, where the home's own explains nothing of it. */
function otherZoneOf(stamps: Stamps): string | undefined {
  const { civil, count } = stamps;
  let [first, last] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (let i = 0; i < count; i++) {
    first = Math.min(first, civil[i]!);
    last = Math.max(last, civil[i]!);
  }
  return OTHER_ZONES.find((name) => {
    const evidence = weigh(stamps, zoneTable(name, Math.floor(first / 1440), Math.floor(last / 1440)));
    return evidence.local - evidence.filledSprings > 0 && evidence.local === evidence.changes;
  });
}

/** Minutes by which a day's mean temperature may be cut amiss: it moves by some tenths of a degree. A judgement. */
const NEAR = 120;

function isNearUtc(civil: Float64Array, count: number, zone: ZoneTable): boolean {
  for (let i = 0; i < count; i++) if (Math.abs(zone.offsetAt(civil[i]!)) > NEAR) return false;
  return true;
}

/** Whether the answer makes no difference: the zone is at UTC for the whole span. */
function insideWinter(civil: Float64Array, count: number, zone: ZoneTable): boolean {
  for (let i = 0; i < count; i++) if (zone.offsetAt(civil[i]!) !== 0) return false;
  return true;
}
