/** Length of one reading, from the commonest step between stamps. */

/** Commonest positive step between neighbouring stamps in minutes, over the first rows; undefined with fewer than two. */
export function commonestStep(civil: Float64Array, count: number): number | undefined {
  const sorted = civil.slice(0, Math.min(count, 4000)).sort();
  const steps = new Map<number, number>();
  for (let i = 1; i < sorted.length; i++) {
    const step = sorted[i]! - sorted[i - 1]!;
    if (step > 0) steps.set(step, (steps.get(step) ?? 0) + 1);
  }
  let best: number | undefined;
  for (const [step, times] of steps)
    if (best === undefined || times > steps.get(best)! || (times === steps.get(best)! && step < best)) best = step;
  return best;
}

/** Lengths that a day divides into; finer and coarser files are no interval files. */
export const isIntervalLength = (minutes: number | undefined): minutes is number =>
  minutes !== undefined && minutes >= 1 && minutes <= 360 && 1440 % minutes === 0;

export type RowOrder = 'oldest first' | 'newest first' | 'mixed';

/** Order of the rows; the doubled autumn hour steps back once a year and is no disorder. */
export function orderOfRows(civil: Float64Array, count: number): { order: RowOrder; breaks: number } {
  let up = 0;
  let down = 0;
  for (let i = 1; i < count; i++) {
    const step = civil[i]! - civil[i - 1]!;
    if (step > 0) up++;
    else if (step < -120) down++;
    else if (step < 0) down += 0.5;
  }
  if (down > up * 2) return { order: 'newest first', breaks: up };
  return { order: down > 0.02 * up + 1 ? 'mixed' : 'oldest first', breaks: Math.floor(down) };
}
