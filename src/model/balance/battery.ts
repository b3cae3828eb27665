/** A home's battery, and at which hours of a day it is filled from the grid. */
import type { YearSlots } from '../calendar/zone.ts';

export interface Battery {
  readonly usableKWh: number;
  /** Most that goes in or comes out, on the side of the home. */
  readonly powerKW: number;
  /** Out over in, on the side of the home. */
  readonly roundTripShare: number;
  /** What it draws itself, day and night. */
  readonly standbyW: number;
  /** Whether its control fills it from the grid in cheap hours. */
  readonly fromNight: boolean;
}

/** What a battery does in a half-hour beside taking surplus sun. */
export const GIVE = 0;
export const FILL = 1;
export const HOLD = 2;

/**
 * Per half-hour whether the battery may be filled from the grid, is held back, or gives. A day's cheapest half-hours that
 * are enough to fill it fill it, where a kWh out of it costs less than the mean of the day's other hours; hours that are
 * hardly dearer are left to the grid. Prices [pence/kWh] are those of the day, which are known the day before.
 */
export function cheapHours(pencePerKWh: Float64Array, slots: YearSlots, battery: Battery): Uint8Array {
  const modes = new Uint8Array(slots.count);
  const perSlotKWh = (battery.powerKW / 2) * Math.sqrt(battery.roundTripShare);
  const needed = Math.ceil(battery.usableKWh / perSlotKWh);
  for (let day = 0; day < slots.dayStart.length - 1; day++) {
    const [start, end] = [slots.dayStart[day]!, slots.dayStart[day + 1]!];
    // Most tariffs have one day after the other alike, and sorting them anew would be most of the work.
    if (end - start === 48 && slots.dayStart[day - 1] === start - 48 && isAlike(pencePerKWh, start - 48, start)) {
      modes.copyWithin(start, start - 48, start);
      continue;
    }
    const sorted = pencePerKWh.slice(start, end).sort();
    const threshold = fillBelow(sorted, needed, battery.roundTripShare);
    if (threshold === null) continue;
    const worth = worthFrom(threshold, battery.roundTripShare);
    for (let slot = start; slot < end; slot++) {
      const pence = pencePerKWh[slot]!;
      modes[slot] = pence <= threshold ? FILL : pence <= worth ? HOLD : GIVE;
    }
  }
  return modes;
}

/** What a kWh out of the battery has cost that went in at a price. */
const worthFrom = (pence: number, roundTripShare: number): number => (pence > 0 ? pence / roundTripShare : pence);

/** Highest price at which it is filled: of the cheapest half-hours that fill it, those that the others pay for. */
function fillBelow(sorted: Float64Array, needed: number, roundTripShare: number): number | null {
  let count = Math.min(needed, sorted.length >> 1);
  while (count > 0) {
    const threshold = sorted[count - 1]!;
    const dear = sorted.subarray(sorted.lastIndexOf(threshold) + 1);
    const mean = dear.reduce((sum, pence) => sum + pence, 0) / dear.length;
    // Where all are alike there is no mean, and none is more.
    if (mean > worthFrom(threshold, roundTripShare)) return threshold;
    count = sorted.indexOf(threshold);
  }
  return null;
}

function isAlike(pence: Float64Array, first: number, second: number): boolean {
  for (let i = 0; i < 48; i++) if (pence[first + i] !== pence[second + i]) return false;
  return true;
}
