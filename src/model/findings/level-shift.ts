/** The day from which a daily figure stands higher or lower than before. */

export interface LevelShift {
  /** Place of the first day of the new level. */
  readonly at: number;
  readonly before: number;
  readonly after: number;
  /** Difference over its standard error, the likeness of neighbouring days allowed for. */
  readonly t: number;
}

/**
 * Best split of a row of values into two levels, at least `leastDays` on each side.
 * t = |after − before| / (s √(1/n₁ + 1/n₂) √((1 + ρ) / (1 − ρ))), ρ the lag-1 correlation of what remains (0 to 0.9).
 * The largest of many t is large by chance too: a threshold of 5 and more is wanted. Source: two-sample t statistic.
 */
export function findLevelShift(values: readonly number[], leastDays: number): LevelShift | null {
  const n = values.length;
  if (n < 2 * leastDays) return null;
  const sums = new Float64Array(n + 1);
  for (let i = 0; i < n; i++) sums[i + 1] = sums[i]! + values[i]!;
  let best = { at: 0, gain: -1 };
  for (let at = leastDays; at <= n - leastDays; at++) {
    const before = sums[at]! / at;
    const after = (sums[n]! - sums[at]!) / (n - at);
    const gain = (before - after) ** 2 * ((at * (n - at)) / n);
    if (gain > best.gain) best = { at, gain };
  }
  const before = sums[best.at]! / best.at;
  const after = (sums[n]! - sums[best.at]!) / (n - best.at);
  let own = 0;
  let together = 0;
  let last = 0;
  for (let i = 0; i < n; i++) {
    const residual = values[i]! - (i < best.at ? before : after);
    own += residual * residual;
    if (i > 0) together += residual * last;
    last = residual;
  }
  const rho = own > 0 ? Math.min(0.9, Math.max(0, together / own)) : 0;
  const s = Math.sqrt(own / (n - 2));
  const error = s * Math.sqrt(1 / best.at + 1 / (n - best.at)) * Math.sqrt((1 + rho) / (1 - rho));
  return { at: best.at, before, after, t: error > 0 ? Math.abs(after - before) / error : 0 };
}
