/** Puts readings into the slots of local days. What does not fit, or comes twice, is counted and shown, never lost silently. */
import type { ZoneTable } from '../clock/zone-table.ts';

export interface PlacedDay {
  readonly day: number;
  /** In order of time, NaN where missing; as many as the local day has slots. */
  readonly values: Float64Array;
}

export interface Placed {
  readonly intervalMinutes: number;
  /** Days with at least one row, in order. */
  readonly days: readonly PlacedDay[];
  /** Readings from the first to the last row's slot, and slots there are. */
  readonly present: number;
  readonly expected: number;
  /** UTC minutes of the first slot and of the end of the last. */
  readonly from: number;
  readonly to: number;
  /** The first of each with its row and its UTC minute. */
  readonly sameAgain: { readonly count: number; readonly row: number; readonly at: number };
  readonly different: { readonly count: number; readonly row: number; readonly at: number; readonly effect: number };
  readonly offGrid: { readonly count: number; readonly row: number; readonly at: number };
}

/** Days that share a piece of memory: one of its own for each takes longer to get than to fill. */
const DAYS_A_PIECE = 64;

/** Hands out slots for days, all missing. */
function openRoom(): (slots: number) => Float64Array {
  let piece = new Float64Array(0);
  let used = 0;
  return (slots) => {
    if (used + slots > piece.length) {
      piece = new Float64Array(slots * DAYS_A_PIECE).fill(Number.NaN);
      used = 0;
    }
    used += slots;
    return new Float64Array(piece.buffer, (used - slots) * 8, slots);
  };
}

/** @param rows row of the table for each reading @param newestFirst whether an earlier row is the later reading */
export function placeReadings(
  start: Float64Array,
  values: Float64Array,
  count: number,
  intervalMinutes: number,
  zone: ZoneTable,
  rows: ArrayLike<number>,
): Placed | undefined {
  const sameAgain = { count: 0, row: -1, at: 0 };
  const different = { count: 0, row: -1, at: 0, effect: 0 };
  const offGrid = { count: 0, row: -1, at: 0 };
  const note = (first: { row: number; at: number }, i: number) => {
    first.row = rows[i]!;
    first.at = start[i]!;
  };
  const room = openRoom();
  const byDay = new Map<number, PlacedDay>();
  let first = Number.POSITIVE_INFINITY;
  let last = Number.NEGATIVE_INFINITY;
  let day = 0;
  let dayStart = Number.POSITIVE_INFINITY;
  let dayEnd = Number.NEGATIVE_INFINITY;
  let slots: Float64Array = new Float64Array(0);
  let present = 0;
  for (let i = 0; i < count; i++) {
    const minute = start[i]!;
    if (Number.isNaN(minute)) continue;
    if (minute < dayStart || minute >= dayEnd) {
      day = zone.dayOf(minute);
      dayStart = zone.dayStart(day);
      dayEnd = zone.dayStart(day + 1);
      let known = byDay.get(day);
      if (!known) {
        known = { day, values: room(Math.ceil((dayEnd - dayStart) / intervalMinutes)) };
        byDay.set(day, known);
      }
      slots = known.values;
    }
    const position = (minute - dayStart) / intervalMinutes;
    const slot = Math.floor(position);
    if (slot !== position && offGrid.count++ === 0) note(offGrid, i);
    const slotStart = dayStart + slot * intervalMinutes;
    if (slotStart < first) first = slotStart;
    if (slotStart > last) last = slotStart;
    const value = values[i]!;
    if (Number.isNaN(value)) continue;
    const before = slots[slot]!;
    if (Number.isNaN(before)) present++;
    else if (before === value) {
      if (sameAgain.count++ === 0) note(sameAgain, i);
    } else {
      if (different.count++ === 0) note(different, i);
      different.effect += value - before;
    }
    slots[slot] = value;
  }
  if (byDay.size === 0) return undefined;
  const days = [...byDay.values()].sort((a, b) => a.day - b.day);
  const to = last + intervalMinutes;
  return {
    intervalMinutes,
    days,
    present,
    expected: Math.round((to - first) / intervalMinutes),
    from: first,
    to,
    sameAgain,
    different,
    offGrid,
  };
}
