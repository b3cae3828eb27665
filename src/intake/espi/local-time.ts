/** The clock that a feed states: standard offset, and coded rules for the days on which summer time begins and ends. */
import { civilDay } from '../dates/stamp-reader.ts';
import type { LocalTime } from './feed.ts';

/** Seconds east of UTC at an instant (seconds since 1970). */
export type OffsetAt = (utcSeconds: number) => number;

const DAY = 86_400;

/**
 * Instant of a rule in a year, in local seconds since 1970; undefined where the code says nothing.
 * Bits of the code: 0 to 11 seconds of the hour, 12 to 16 hour, 17 to 19 weekday (1 Monday), 20 to 24 day of the month,
 * 25 to 27 which one (0 that day, 1 the weekday on or after it, 2 to 6 the first to fifth weekday, 7 the last), 28 to 31 month.
 * From memory of the standard; "360E2000" and "B40E2000" in published feeds are the second Sunday of March and the first of November.
 */
export function ruleSeconds(rule: string, year: number): number | undefined {
  if (!/^[0-9a-f]{8}$/i.test(rule)) return undefined;
  const code = Number.parseInt(rule, 16);
  const bits = (from: number, count: number) => Math.floor(code / 2 ** from) % 2 ** count;
  const month = bits(28, 4);
  const which = bits(25, 3);
  const dayOfMonth = bits(20, 5);
  const weekday = bits(17, 3);
  if (month < 1 || month > 12) return undefined;
  const first = civilDay(year, month, 1);
  const next = month === 12 ? civilDay(year + 1, 1, 1) : civilDay(year, month + 1, 1);
  // 1970-01-01 was a Thursday; Monday is 1.
  const weekdayOf = (day: number) => ((((day + 3) % 7) + 7) % 7) + 1;
  const onOrAfter = (day: number) => day + ((weekday - weekdayOf(day) + 7) % 7);
  let day: number;
  if (which === 0 || weekday === 0) day = first + Math.max(1, dayOfMonth) - 1;
  else if (which === 1) day = onOrAfter(first + Math.max(1, dayOfMonth) - 1);
  else if (which === 7) {
    day = onOrAfter(next - 7);
  } else day = onOrAfter(first) + 7 * (which - 2);
  if (day < first || day >= next + 7) return undefined;
  return day * DAY + bits(12, 5) * 3600 + bits(0, 12);
}

export function offsetOf(time: LocalTime): OffsetAt {
  const cache = new Map<number, { start: number; end: number } | undefined>();
  const rulesOf = (year: number) => {
    if (!cache.has(year)) {
      const start = ruleSeconds(time.dstStart, year);
      const end = ruleSeconds(time.dstEnd, year);
      const rules =
        start === undefined || end === undefined
          ? undefined
          : { start: start - time.offset, end: end - time.offset - time.dstOffset };
      cache.set(year, rules);
    }
    return cache.get(year);
  };
  return (utc) => {
    const rules = rulesOf(new Date((utc + time.offset) * 1000).getUTCFullYear());
    if (!rules || time.dstOffset === 0) return time.offset;
    const north = rules.start < rules.end;
    const inside = north ? utc >= rules.start && utc < rules.end : utc >= rules.start || utc < rules.end;
    return time.offset + (inside ? time.dstOffset : 0);
  };
}

/**
 * Of several clocks the first in which most of the starts are at midnight; undefined where none is.
 * Days and months must be counted in the clock they were cut in.
 */
export function midnightClock<T extends { readonly offsetAt: OffsetAt }>(
  starts: readonly number[],
  clocks: readonly T[],
): T | undefined {
  const share = (clock: T) => starts.filter((s) => (((s + clock.offsetAt(s)) % DAY) + DAY) % DAY === 0).length;
  return clocks.find((clock) => share(clock) >= starts.length * 0.8);
}
