/** Loads of one even power that come again and again: resistance heaters and chargers, not compressors. */
import type { MeterDays } from './meter-days.ts';
import { median } from './meter-days.ts';
import { findSteps, type Step } from './steps.ts';

export interface EvenLoad {
  readonly powerKW: number;
  readonly steps: readonly Step[];
  /** Share of the steps of about this size that have this very power, 0 to 1. */
  readonly likeness: number;
  /** Places of the days with such a step, ascending. */
  readonly days: readonly number[];
  readonly kWh: number;
}

/** Two readings at full height show an even power; one may be anything. */
const LEAST_FULL = 2;
const MOST_UNEVEN = 0.09;
/** Steps of one resistance differ by the mains voltage and by what else changes while they last. */
const SAME_SHARE = 0.05;
/** Steps within this share of the power are of about the same size. */
const LIKE_SHARE = 0.3;
const LEAST_STEPS = 5;

/**
 * Even loads, the most frequent first: steps whose power lies within 5 % of a common one. A compressor's steps stray
 * with brine, water and speed, so that few of its like have the very same power: `likeness` tells them apart.
 */
export function findEvenLoads(days: MeterDays): EvenLoad[] {
  let left = findSteps(days).filter(
    ({ fullSlots, unevenness }) => fullSlots >= LEAST_FULL && unevenness <= MOST_UNEVEN,
  );
  const loads: EvenLoad[] = [];
  while (left.length >= LEAST_STEPS) {
    const steps = densest(left);
    if (steps.length < LEAST_STEPS) break;
    const powerKW = median(steps.map((step) => step.powerKW));
    const like = left.filter((step) => Math.abs(step.powerKW / powerKW - 1) <= LIKE_SHARE);
    loads.push({
      powerKW,
      steps,
      likeness: steps.length / like.length,
      days: [...new Set(steps.map(({ day }) => day))],
      kWh: steps.reduce((sum, { kWh }) => sum + kWh, 0),
    });
    left = left.filter((step) => Math.abs(step.powerKW / powerKW - 1) > LIKE_SHARE);
  }
  return loads;
}

/** Most steps whose powers lie within ±5 % of each other. */
function densest(steps: readonly Step[]): Step[] {
  const sorted = steps.toSorted((a, b) => a.powerKW - b.powerKW);
  let best: readonly [number, number] = [0, 0];
  let end = 0;
  for (let start = 0; start < sorted.length; start++) {
    while (end < sorted.length && sorted[end]!.powerKW <= sorted[start]!.powerKW * (1 + 2 * SAME_SHARE)) end++;
    if (end - start > best[1] - best[0]) best = [start, end];
  }
  return sorted.slice(...best).toSorted((a, b) => a.day - b.day || a.slot - b.slot);
}
