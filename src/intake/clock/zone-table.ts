/** Offsets of a zone over a span of days as a short table, so that no row asks the platform for its offset. */
import { offsetMinutes } from '../../model/calendar/zone.ts';

export interface ClockChange {
  /** Minutes since 1970 UTC at which the new offset begins. */
  readonly at: number;
  readonly before: number;
  readonly after: number;
}

export interface ZoneTable {
  readonly name: string;
  readonly changes: readonly ClockChange[];
  offsetAt(utcMinute: number): number;
  /** UTC minute at which the local day begins. */
  dayStart(day: number): number;
  /** Local day of an instant. */
  dayOf(utcMinute: number): number;
  /** Clock reading of an instant as "2025-03-30T02:00". */
  stampAt(utcMinute: number): string;
}

const DAY = 1440;
/** Some zones suspend summer time for a month, which a fortnight does not miss. */
const STEP_DAYS = 14;

/** Covers `firstDay` to `lastDay` with a margin of a few days on both sides. */
export function zoneTable(zone: string, firstDay: number, lastDay: number): ZoneTable {
  const ask = (minute: number) => offsetMinutes(zone, minute * 60_000);
  const start = (firstDay - 3) * DAY;
  const end = (lastDay + 4) * DAY;
  const firstOffset = ask(start);
  const changes: ClockChange[] = [];
  let at = start;
  let before = firstOffset;
  while (at < end) {
    const next = Math.min(end, at + STEP_DAYS * DAY);
    const after = ask(next);
    if (after !== before) {
      let low = at;
      let high = next;
      while (high - low > 1) {
        const middle = (low + high) >> 1;
        if (ask(middle) === before) low = middle;
        else high = middle;
      }
      changes.push({ at: high, before, after });
      before = after;
    }
    at = next;
  }
  let segment = 0;
  const offsetAt = (minute: number): number => {
    while (segment > 0 && minute < changes[segment - 1]!.at) segment--;
    while (segment < changes.length && minute >= changes[segment]!.at) segment++;
    return segment === 0 ? firstOffset : changes[segment - 1]!.after;
  };
  const dayStart = (day: number): number => day * DAY - offsetAt(day * DAY - offsetAt(day * DAY));
  return {
    name: zone,
    changes,
    offsetAt,
    dayStart,
    dayOf(minute) {
      const day = Math.floor((minute + offsetAt(minute)) / DAY);
      return minute < dayStart(day) ? day - 1 : day;
    },
    stampAt: (minute) => new Date((minute + offsetAt(minute)) * 60_000).toISOString().slice(0, 16),
  };
}

/** Offset of the zone in winter, the smaller of the offsets it uses. */
export const standardOffset = (table: ZoneTable, minute: number): number =>
  Math.min(table.offsetAt(minute), ...table.changes.flatMap((c) => [c.before, c.after]));
