/** Readings of a record in order of time, without those that span no time or no sensible time; counters turned into use. */
import { tell } from '../../model/shapes/told.ts';
import { registerSteps } from '../periods/register-steps.ts';
import type { RemarkBook } from '../terms/remark-book.ts';
import type { Block } from './feed.ts';

export interface SpanReading {
  /** Seconds since 1970. */
  readonly start: number;
  readonly duration: number;
  /** As written. */
  readonly value: number;
  readonly cost: number;
  readonly estimated: boolean;
  readonly line: number;
}

/** 1990 and 2100, as for every other date. */
const EARLIEST = 631_152_000;
const LATEST = 4_102_444_800;

export function cleanReadings(
  blocks: readonly Block[],
  usualSeconds: number | undefined,
  isCounter: boolean,
  today: string,
  book: RemarkBook,
): SpanReading[] {
  const written: SpanReading[] = [];
  let zeros = 0;
  for (const b of blocks)
    for (let i = 0; i < b.start.length; i++) {
      const one = {
        start: b.start[i]!,
        duration: b.duration[i]!,
        value: b.value[i]!,
        cost: b.cost[i]!,
        estimated: b.estimated[i]!,
        line: b.line[i]!,
      };
      if (!(one.start >= EARLIEST && one.start < LATEST)) {
        book.tally('date-unreadable', 'note', { row: one.line, column: 'start', found: String(one.start) });
        continue;
      }
      if (Number.isNaN(one.value)) {
        book.tally('number-unreadable', 'note', {
          row: one.line,
          column: 'value',
          expectedTold: tell('a-whole-number'),
        });
        continue;
      }
      if (one.duration === 0) zeros++;
      written.push(one);
    }
  written.sort((a, b) => a.start - b.start || a.duration - b.duration);
  const all = leaveOutLater(written, today, book);
  if (isCounter) return countersToUse(all, book);
  // Where every length is nought the sender never writes it, and the reading type's own length holds.
  const fallback = usualSeconds && usualSeconds > 0 ? usualSeconds : commonestDuration(all);
  const writesLengths = zeros < all.length;
  const kept: SpanReading[] = [];
  for (const one of all) {
    const duration = one.duration > 0 ? one.duration : one.duration === 0 && writesLengths ? 0 : (fallback ?? 0);
    if (duration > 0 && duration <= 400 * 86_400) kept.push({ ...one, duration });
    else book.tally('espi-no-length', 'note', { row: one.line, foundTold: tell('figure', { figure: one.value }) });
  }
  return kept;
}

function leaveOutLater(all: readonly SpanReading[], today: string, book: RemarkBook): readonly SpanReading[] {
  const limit = Date.parse(today) / 1000 + 2 * 86_400;
  const later = all.filter((r) => r.start > limit);
  const first = later[0];
  if (first)
    book.add('after-today', 'note', {
      row: first.line,
      foundTold: tell('that-day', { on: { on: new Date(first.start * 1000).toISOString().slice(0, 10) } }),
      expectedTold: tell('that-day', { on: { on: today } }),
      count: later.length,
    });
  return first ? all.filter((r) => r.start <= limit) : all;
}

export function commonestDuration(readings: readonly { readonly duration: number }[]): number | undefined {
  const counts = new Map<number, number>();
  for (const { duration } of readings) if (duration > 0) counts.set(duration, (counts.get(duration) ?? 0) + 1);
  return [...counts].sort((a, b) => b[1] - a[1] || a[0] - b[0])[0]?.[0];
}

/** A counter's value stands at the end of its interval; use is what lies between two of them. */
function countersToUse(all: readonly SpanReading[], book: RemarkBook): SpanReading[] {
  const at = (r: SpanReading) => r.start + Math.max(0, r.duration || 0);
  const points = new Map<number, SpanReading>();
  for (const one of all) {
    const known = points.get(at(one));
    if (known?.value === one.value) book.tally('duplicate-same', 'note', { row: one.line, count: 1 });
    else if (known) book.tally('duplicate-different', 'note', { row: one.line, count: 1 });
    points.set(at(one), one);
  }
  const list = [...points.values()].sort((a, b) => at(a) - at(b));
  const order = list.map((_, i) => i);
  const values = Float64Array.from(list, (r) => r.value);
  const places = {
    lineOf: (i: number) => list[i]!.line,
    timeOf: (i: number) => at(list[i]!),
    dayOf: (i: number) => new Date(at(list[i]!) * 1000).toISOString().slice(0, 10),
  };
  return registerSteps(order, values, places, book).flatMap(({ before, after, used }) => {
    if (Number.isNaN(used)) return [];
    const later = list[after]!;
    const start = at(list[before]!);
    return [{ ...later, start, duration: at(later) - start, value: used }];
  });
}
