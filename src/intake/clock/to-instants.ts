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
  readonly values: Float64Array;
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
  const inDoubledHour: number[] = [];
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
    } else {
      inDoubledHour.push(i);
      seen.set(minute, (seen.get(minute) ?? 0) + 1);
      start[i] = minute - change.before - backAfter;
    }
  }
  for (const i of secondTimes(inDoubledHour, stamps)) start[i]! += HOUR;
  let onceInDoubledHour = 0;
  for (const times of seen.values()) if (times === 1) onceInDoubledHour++;
  return { start, inSkippedHour, onceInDoubledHour };
}

const HOUR = 60;

/**
 * Rows of the doubled hour that are of its second time. A row may stand there several times, as each row of a file may:
 * what follows itself at once is one reading, unless nothing else of the hour stands between its two times.
 * @param found indices of all rows of such hours, in order of time
 */
function secondTimes(found: readonly number[], { civil, values, intervalMinutes }: Stamps): number[] {
  const halves = (run: readonly number[]) => {
    const change = run.findIndex((i, n) => n > 0 && values[i] !== values[run[n - 1]!]);
    return run.slice(run.length % 2 === 1 && change > 0 ? change : Math.ceil(run.length / 2));
  };
  return [...Map.groupBy(found, (i) => civil[i]!).values()].flatMap((all) => {
    const runs: number[][] = [];
    for (const i of all) {
      const run = runs.at(-1);
      if (run && Math.abs(i - run.at(-1)!) === 1) run.push(i);
      else runs.push([i]);
    }
    const areWholeHours = intervalMinutes >= HOUR && runs.some((run) => run.length > 1);
    if (runs.length === 1 || areWholeHours) return runs.flatMap(halves);
    return runs.flatMap((run, n) => (n % 2 === 0 ? [] : run));
  });
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
