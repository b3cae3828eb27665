/**
 * Fills missing readings, only where the installer asks for it, by one rule: the mean of the same clock time on the same
 * weekday of the four weeks before and after. What is filled is listed, and counts as estimated.
 */
import { toCivilDate } from '../../model/calendar/civil.ts';
import type { Series } from '../../model/shapes/evidence.ts';
import type { ZoneTable } from '../clock/zone-table.ts';
import type { Placed, PlacedDay } from './place-readings.ts';

export type FilledSlots = NonNullable<Series['filled']>;

/** Longer gaps stay open: a fortnight is as long as habits can be taken to go on. Common practice, no source. */
export const LONGEST_FILL_DAYS = 14;
/** Fewer readings of the same weekday are no mean. */
export const LEAST_ALIKE = 2;
export const WEEKS_ALIKE = 4;

export interface Filling {
  readonly days: readonly PlacedDay[];
  readonly filled: FilledSlots;
  readonly count: number;
  /** Missing readings that the rule could not fill. */
  readonly left: number;
}

export function fillGaps(placed: Placed, table: ZoneTable): Filling {
  const { intervalMinutes, from, to } = placed;
  const known = new Map(placed.days.map(({ day, values }) => [day, values]));
  const [firstDay, lastDay] = [placed.days[0]!.day, placed.days.at(-1)!.day];
  const days: PlacedDay[] = [];
  const filled: FilledSlots = [];
  let [count, left] = [0, 0];
  const tooLong = slotsOfLongGaps(placed, table);
  for (let day = firstDay; day <= lastDay; day++) {
    const start = table.dayStart(day);
    const slots = Math.ceil((table.dayStart(day + 1) - start) / intervalMinutes);
    const read = known.get(day);
    const values = read?.slice() ?? new Float64Array(slots).fill(Number.NaN);
    let any = read !== undefined;
    for (let slot = 0; slot < slots; slot++) {
      const at = start + slot * intervalMinutes;
      if (!Number.isNaN(values[slot]!) || at < from || at >= to) continue;
      const value = tooLong(at) ? Number.NaN : meanAlike(known, table, day, at, intervalMinutes);
      if (Number.isNaN(value)) {
        left++;
        continue;
      }
      values[slot] = value;
      any = true;
      count++;
      addSlot(filled, toCivilDate(day), slot, value);
    }
    if (any) days.push({ day, values });
  }
  return { days, filled, count, left };
}

function addSlot(filled: FilledSlots, date: string, slot: number, kWh: number): void {
  const run = filled.at(-1);
  if (run?.date === date && run.firstSlot + run.slots === slot) {
    run.slots++;
    run.kWh += kWh;
  } else filled.push({ date, firstSlot: slot, slots: 1, kWh });
}

/** Only readings that were read count, never ones that were filled. */
function meanAlike(
  known: ReadonlyMap<number, Float64Array>,
  table: ZoneTable,
  day: number,
  at: number,
  intervalMinutes: number,
): number {
  const slot = Math.floor((at + table.offsetAt(at) - day * 1440) / intervalMinutes);
  let [sum, alike] = [0, 0];
  for (let week = -WEEKS_ALIKE; week <= WEEKS_ALIKE; week++) {
    const values = week === 0 ? undefined : known.get(day + 7 * week);
    // On a day of another length the slots stand at other clock times.
    if (values?.length !== 1440 / intervalMinutes || !(values[slot]! >= 0)) continue;
    sum += values[slot]!;
    alike++;
  }
  return alike < LEAST_ALIKE ? Number.NaN : sum / alike;
}

/** Answers whether a moment lies in a gap that is too long to fill. */
function slotsOfLongGaps({ days, from, intervalMinutes }: Placed, table: ZoneTable): (at: number) => boolean {
  const gaps: { from: number; to: number }[] = [];
  let last = from;
  for (const { day, values } of days) {
    const start = table.dayStart(day);
    for (let slot = 0; slot < values.length; slot++) {
      if (Number.isNaN(values[slot]!)) continue;
      const at = start + slot * intervalMinutes;
      if (at - last > LONGEST_FILL_DAYS * 1440) gaps.push({ from: last, to: at });
      last = at + intervalMinutes;
    }
  }
  return (at) => gaps.some((gap) => at >= gap.from && at < gap.to);
}
