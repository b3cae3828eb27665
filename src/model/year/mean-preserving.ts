/**
 * A smooth yearly curve whose monthly means are exactly those given: a periodic cubic spline through the
 * temperature summed up since New Year, whose rise over a day is that day's mean.
 */

import { sumOf } from '../units/sums.ts';

/** Solves the cyclic equations a[i] x[i−1] + b[i] x[i] + c[i] x[i+1] = d[i] by plain elimination; twelve unknowns. */
function solveCyclic(a: number[], b: number[], c: number[], d: number[]): number[] {
  const n = b.length;
  const rows = Array.from({ length: n }, (_, i) => {
    const row = new Float64Array(n + 1);
    row[(i + n - 1) % n]! += a[i]!;
    row[i]! += b[i]!;
    row[(i + 1) % n]! += c[i]!;
    row[n] = d[i]!;
    return row;
  });
  for (let p = 0; p < n; p++) {
    for (let r = p + 1; r < n; r++) {
      const factor = rows[r]![p]! / rows[p]![p]!;
      if (factor === 0) continue;
      for (let k = p; k <= n; k++) rows[r]![k]! -= factor * rows[p]![k]!;
    }
  }
  const x = new Array<number>(n).fill(0);
  for (let p = n - 1; p >= 0; p--) {
    let rest = rows[p]![n]!;
    for (let k = p + 1; k < n; k++) rest -= rows[p]![k]! * x[k]!;
    x[p] = rest / rows[p]![p]!;
  }
  return x;
}

/**
 * Daily means [°C] through monthly means [°C] over months of the given lengths [days]; each month's mean comes out
 * to rounding. Equation: F periodic cubic spline with F(month end) − F(month start) = mean × days; day = F(t + 1) − F(t).
 */
export function smoothDailyMeans(monthlyMeanC: readonly number[], monthDays: readonly number[]): Float64Array {
  const n = monthlyMeanC.length;
  const at = (i: number) => (i + n) % n;
  // Slope of F at the knots is the temperature at the turn of the month; its second derivative is continuous.
  const a: number[] = [];
  const b: number[] = [];
  const c: number[] = [];
  const d: number[] = [];
  for (let i = 0; i < n; i++) {
    const before = monthDays[at(i - 1)]!;
    const after = monthDays[i]!;
    a.push(1 / before);
    b.push(2 * (1 / before + 1 / after));
    c.push(1 / after);
    d.push(3 * (monthlyMeanC[at(i - 1)]! / before + monthlyMeanC[i]! / after));
  }
  const turnC = solveCyclic(a, b, c, d);
  const days = new Float64Array(sumOf(monthDays));
  let day = 0;
  for (let m = 0; m < n; m++) {
    const length = monthDays[m]!;
    const startC = turnC[m]!;
    const endC = turnC[at(m + 1)]!;
    const meanC = monthlyMeanC[m]!;
    /** Share-of-month Hermite form of F less its value at the month's start. */
    const summed = (t: number) =>
      length * (startC * (t - 2 * t * t + t ** 3) + meanC * (3 * t * t - 2 * t ** 3) + endC * (t ** 3 - t * t));
    let last = 0;
    for (let k = 1; k <= length; k++) {
      const next = summed(k / length);
      days[day++] = next - last;
      last = next;
    }
  }
  return days;
}
