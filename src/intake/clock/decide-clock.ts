/**
 * Which clock the stamps of a file are in, told by counting the rows around the clock changes: local time skips an
 * hour in spring and has one twice in autumn; UTC and winter time all year do neither.
 */
import type { ClockChange, ZoneTable } from './zone-table.ts';

export type Clock = 'local' | 'utc' | 'standard';

export interface ClockEvidence {
  readonly local: number;
  readonly steady: number;
  /** Spring changes with the skipped hour written as noughts. */
  readonly filledSprings: number;
  /** Autumn changes with the doubled hour written once though the rest of the file is local. */
  readonly singleAutumns: number;
  /** Changes at which the file changes its clocks too, but at another hour. */
  readonly otherHours: number;
  /** Changes that lie within the span. */
  readonly changes: number;
}

const AROUND = 120;

/**
 * @param civil civil minutes of the stamps as written
 * @param nameEnds whether stamps name the ends of their intervals, which may stand at the edge of the hour
 * @param fixedColumns whether the layout has the same number of columns each day, so that a full row tells nothing
 */
export function weighClock(
  civil: Float64Array,
  values: Float64Array,
  count: number,
  intervalMinutes: number,
  zone: ZoneTable,
  fixedColumns: boolean,
  nameEnds: boolean,
): ClockEvidence {
  const evidence = { local: 0, steady: 0, filledSprings: 0, singleAutumns: 0, otherHours: 0, changes: 0 };
  let first = Number.POSITIVE_INFINITY;
  let last = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < count; i++) {
    const minute = civil[i]!;
    if (minute < first) first = minute;
    if (minute > last) last = minute;
  }
  const windows = zone.changes
    .map((change) => ({
      change,
      ...windowOf(change),
      seen: new Map<number, number>(),
      ...{ rows: 0, again: 0, inside: 0, insideUse: 0, outsideUse: 0 },
    }))
    .filter((w) => w.from >= first && w.to <= last);
  evidence.changes = windows.length;
  if (windows.length === 0) return evidence;
  for (let i = 0; i < count; i++) {
    const minute = civil[i]!;
    for (const w of windows) {
      if (minute < w.from || minute >= w.to) continue;
      // A row written twice counts once; in the doubled hour nothing tells such from two readings.
      const isInside = minute >= w.low && (minute < w.high || (nameEnds && minute === w.high));
      if (!isInside && w.seen.get(minute) === values[i]) {
        w.again++;
        continue;
      }
      w.seen.set(minute, values[i]!);
      w.rows++;
      const use = Math.abs(values[i]!) || 0;
      if (minute >= w.low && minute < w.high) {
        w.inside++;
        w.insideUse += use;
      } else w.outsideUse += use;
    }
  }
  for (const w of windows) {
    const shift = Math.abs(w.change.after - w.change.before);
    const steadyRows = (2 * AROUND + shift) / intervalMinutes;
    const spring = w.change.after > w.change.before;
    if (!spring && w.again > 0) continue;
    const localRows = (2 * AROUND + (spring ? 0 : 2 * shift)) / intervalMinutes;
    const inside = (spring ? 0 : 2 * shift) / intervalMinutes;
    if (w.rows === localRows) {
      // Of ends, the one at the edge of the hour is written in two ways.
      if (Math.abs(w.inside - inside) <= (nameEnds ? 1 : 0)) evidence.local++;
      else evidence.otherHours++;
    } else if (w.rows !== steadyRows) continue;
    else if (spring && w.insideUse === 0 && (w.outsideUse > 0 || fixedColumns)) {
      evidence.local++;
      evidence.filledSprings++;
    } else if (spring || !fixedColumns) {
      evidence.steady++;
      if (!spring) evidence.singleAutumns++;
    } else evidence.singleAutumns++;
  }
  return evidence;
}

/** Civil span around a change; `low` to `high` is the hour skipped or doubled. */
function windowOf(change: ClockChange): { from: number; to: number; low: number; high: number } {
  const low = change.at + Math.min(change.before, change.after);
  const high = change.at + Math.max(change.before, change.after);
  return { from: low - AROUND, to: high + AROUND, low, high };
}
