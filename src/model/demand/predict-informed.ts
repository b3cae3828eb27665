/** What all the weighed lines together say of a span of days of other weather, and how sure they are. */
import type { InformedFit } from './informed-fit.ts';

export interface PredictedUse {
  /** Part that follows the weather, kWh. */
  readonly spaceKWh: number;
  readonly spaceErrorKWh: number;
  /** Part that is the same every day, kWh. */
  readonly baseKWh: number;
  readonly baseErrorKWh: number;
  readonly totalKWh: number;
  readonly totalErrorKWh: number;
}

/** The days to be predicted: their number, their waves of the year summed, and their degree days to any base. */
export interface DaysToCome {
  readonly days: number;
  readonly waveSum: number;
  readonly degreeDays: (baseC: number) => number;
}

/**
 * Use [kWh] of the days to come as their long-run mean, with one standard error: each line's answer weighed, its variance
 * within the lines plus that among them. The scatter of the single days is not in it. Source: mixture of distributions.
 */
export function predictInformed(fit: InformedFit, to: DaysToCome): PredictedUse {
  const sums = { space: 0, base: 0, total: 0, space2: 0, base2: 0, total2: 0 };
  for (const { weight, line, covariance, baseC } of fit.lines) {
    if (weight < 1e-9) continue;
    const row = [to.days, to.waveSum, to.degreeDays(baseC)] as const;
    const variance = (of: readonly number[]) =>
      of.reduce((sum, r) => sum + of.reduce((inner, k) => inner + row[r]! * row[k]! * covariance[r]![k]!, 0), 0);
    const base = row[0] * line[0] + row[1] * line[1];
    const space = row[2] * line[2];
    sums.space += weight * space;
    sums.base += weight * base;
    sums.total += weight * (space + base);
    sums.space2 += weight * (space ** 2 + variance([2]));
    sums.base2 += weight * (base ** 2 + variance([0, 1]));
    sums.total2 += weight * ((space + base) ** 2 + variance([0, 1, 2]));
  }
  const error = (square: number, mean: number) => Math.sqrt(Math.max(0, square - mean ** 2));
  return {
    spaceKWh: sums.space,
    spaceErrorKWh: error(sums.space2, sums.space),
    baseKWh: sums.base,
    baseErrorKWh: error(sums.base2, sums.base),
    totalKWh: sums.total,
    totalErrorKWh: error(sums.total2, sums.total),
  };
}
