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

/** Which of a day's half-hours a battery is filled and emptied in. */
export interface DayPlan {
  /** The cheapest, at most so many, in which it fills. */
  readonly fillHalves: number;
  /** The most expensive in which it gives: so many, and those that cost as much as the last of them. */
  readonly giveHalves: number;
}
const HALVES_A_DAY = 48;

/** Half-hours that fill it from empty. */
export const halvesToFill = ({ usableKWh, powerKW, roundTripShare }: Battery): number =>
  Math.ceil(usableKWh / ((powerKW / 2) * Math.sqrt(roundTripShare)));

/**
 * Per half-hour whether the battery may be filled from the grid, is held back, or gives. It fills in a day's cheapest
 * half-hours, as far as the most expensive ones pay for what it loses; hours that are hardly dearer are left to the grid.
 * Prices [pence/kWh] are those of the day, which are known the day before.
 */
export function cheapHours(
  pencePerKWh: Float64Array,
  slots: YearSlots,
  { roundTripShare }: Battery,
  { fillHalves, giveHalves }: DayPlan,
): Uint8Array {
  const modes = new Uint8Array(slots.count);
  for (let day = 0; day < slots.dayStart.length - 1; day++) {
    const [start, end] = [slots.dayStart[day]!, slots.dayStart[day + 1]!];
    // Most tariffs have one day after the other alike, and sorting them anew would be most of the work.
    const isUsual = end - start === HALVES_A_DAY && slots.dayStart[day - 1] === start - HALVES_A_DAY;
    if (isUsual && isAlike(pencePerKWh, start - HALVES_A_DAY, start)) {
      modes.copyWithin(start, start - HALVES_A_DAY, start);
      continue;
    }
    const sorted = pencePerKWh.slice(start, end).sort();
    const threshold = fillBelow(sorted, fillHalves, roundTripShare);
    if (threshold === null) continue;
    const held = Math.max(worthFrom(threshold, roundTripShare), below(sorted, giveHalves));
    for (let slot = start; slot < end; slot++) {
      const pence = pencePerKWh[slot]!;
      modes[slot] = pence <= threshold ? FILL : pence <= held ? HOLD : GIVE;
    }
  }
  return modes;
}

/** The dearest price of a day that is not among its so many most expensive half-hours. */
function below(sorted: Float64Array, giveHalves: number): number {
  const least = sorted[Math.max(0, sorted.length - giveHalves)]!;
  return sorted[sorted.indexOf(least) - 1] ?? Number.NEGATIVE_INFINITY;
}

/** What a kWh out of the battery has cost that went in at a price. */
const worthFrom = (pence: number, roundTripShare: number): number => (pence > 0 ? pence / roundTripShare : pence);

/** Highest price at which it is filled: of the cheapest half-hours those that the most expensive one pays for. */
function fillBelow(sorted: Float64Array, fillHalves: number, roundTripShare: number): number | null {
  const most = sorted[sorted.length - 1]!;
  let count = Math.min(fillHalves, sorted.length >> 1);
  while (count > 0) {
    const threshold = sorted[count - 1]!;
    if (most > worthFrom(threshold, roundTripShare)) return threshold;
    count = sorted.indexOf(threshold);
  }
  return null;
}

function isAlike(pence: Float64Array, first: number, second: number): boolean {
  for (let i = 0; i < HALVES_A_DAY; i++) if (pence[first + i] !== pence[second + i]) return false;
  return true;
}
