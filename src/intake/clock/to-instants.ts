/** Civil stamps to instants (minutes since 1970 UTC). The doubled autumn hour is taken in the order of the rows. */
import type { ClockSettled } from './settle-clock.ts';
import { standardOffset, type ZoneTable } from './zone-table.ts';

export interface Instants {
  /** Start of each reading; NaN for a stamp in the hour that spring skips. */
  readonly start: Float64Array;
  readonly inSkippedHour: number;
  /** Stamps of the doubled hour that came once only. */
  readonly onceInDoubledHour: number;
}

interface Stamps {
  readonly civil: Float64Array;
  readonly offsets: Float64Array | null;
  readonly count: number;
  readonly intervalMinutes: number;
  readonly stamp: 'start' | 'end';
  /** Rows run from the newest to the oldest. */
  readonly newestFirst: boolean;
}

export function toInstants(stamps: Stamps, settled: ClockSettled, zone: ZoneTable): Instants {
  const { civil, count, intervalMinutes } = stamps;
  const start = new Float64Array(count);
  const back = stamps.stamp === 'end' ? intervalMinutes : 0;
  if (settled.useOffsets && stamps.offsets) {
    for (let i = 0; i < count; i++) start[i] = civil[i]! - stamps.offsets[i]! - back;
    return { start, inSkippedHour: 0, onceInDoubledHour: 0 };
  }
  if (settled.clock === 'utc' || settled.clock === 'standard') {
    const offset = settled.clock === 'utc' || count === 0 ? 0 : standardOffset(zone, civil[0]!);
    for (let i = 0; i < count; i++) start[i] = civil[i]! - offset - back;
    return { start, inSkippedHour: 0, onceInDoubledHour: 0 };
  }
  const backFirst = back > 0 && endsAreStartsPlusLength(civil, count, zone) ? back : 0;
  const backAfter = back - backFirst;
  let inSkippedHour = 0;
  const seen = new Map<number, number>();
  const changes = zone.changes.map((c) => ({
    ...c,
    low: c.at + Math.min(c.before, c.after),
    high: c.at + Math.max(c.before, c.after),
  }));
  let next = 0;
  let last = -1;
  for (let n = 0; n < count; n++) {
    const i = stamps.newestFirst ? count - 1 - n : n;
    const minute = civil[i]! - backFirst;
    // The change that this stamp lies before, at or in.
    while (next < changes.length && minute >= changes[next]!.high) next++;
    while (next > 0 && minute < changes[next - 1]!.high) next--;
    const change = changes[next];
    const offset = change ? change.before : (changes.at(-1)?.after ?? zone.offsetAt(minute));
    if (!change || minute < change.low) {
      start[i] = minute - offset - backAfter;
    } else if (change.after > change.before) {
      start[i] = Number.NaN;
      inSkippedHour++;
    } else if (last >= 0 && civil[last] === civil[i] && stampsOf(civil, count, civil[i]!) === 3) {
      // A row that stands twice, beside the two that the hour has.
      start[i] = start[last]!;
    } else {
      const times = seen.get(minute) ?? 0;
      seen.set(minute, times + 1);
      start[i] = minute - (times % 2 === 0 ? change.before : change.after) - backAfter;
    }
    last = i;
  }
  let onceInDoubledHour = 0;
  for (const times of seen.values()) if (times === 1) onceInDoubledHour++;
  return { start, inSkippedHour, onceInDoubledHour };
}

function stampsOf(civil: Float64Array, count: number, minute: number): number {
  let stamps = 0;
  for (let i = 0; i < count; i++) if (civil[i] === minute) stamps++;
  return stamps;
}

/**
 * End stamps over a clock change are made in two ways: the clock read at the end, or the start read from the clock
 * and the length added. The stamps at the edges of the skipped or doubled hour tell which.
 */
function endsAreStartsPlusLength(civil: Float64Array, count: number, zone: ZoneTable): boolean {
  const edges = new Map<number, number>();
  for (const c of zone.changes) {
    edges.set(c.at + c.before, 0);
    edges.set(c.at + c.after, 0);
  }
  for (let i = 0; i < count; i++) {
    const known = edges.get(civil[i]!);
    if (known !== undefined) edges.set(civil[i]!, known + 1);
  }
  let plus = 0;
  for (const c of zone.changes) {
    const before = edges.get(c.at + c.before)!;
    const after = edges.get(c.at + c.after)!;
    plus += Math.sign(before - after);
  }
  return plus > 0;
}
