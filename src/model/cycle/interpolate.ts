/** Reading between the rows of a table. */

/** Value of the polynomial through all the points given, at `x` (Lagrange's form). */
export function through(xs: readonly number[], ys: readonly number[], x: number): number {
  let sum = 0;
  for (let i = 0; i < xs.length; i += 1) {
    let term = ys[i]!;
    for (let j = 0; j < xs.length; j += 1) if (j !== i) term *= (x - xs[j]!) / (xs[i]! - xs[j]!);
    sum += term;
  }
  return sum;
}

/** First of the `count` neighbouring points that lie best about `x`; `xs` rising. */
export function neighbours(xs: readonly number[], x: number, count: number): number {
  let above = xs.findIndex((each) => each >= x);
  if (above < 0) above = xs.length;
  return Math.min(Math.max(above - Math.floor(count / 2), 0), xs.length - count);
}

/** Table value at `x` by the cubic through the four rows about it. `xs` rising, at least four. */
export function cubicAt(xs: readonly number[], ys: readonly number[], x: number): number {
  const first = neighbours(xs, x, 4);
  return through(xs.slice(first, first + 4), ys.slice(first, first + 4), x);
}

/** The `x` in [low, high] at which a rising function reaches `target`, by halving; null where it lies outside. */
export function findRising(rising: (x: number) => number, target: number, low: number, high: number): number | null {
  if (rising(low) > target + 1e-9 || rising(high) < target - 1e-9) return null;
  let [from, to] = [low, high];
  for (let step = 0; step < 60; step += 1) {
    const middle = (from + to) / 2;
    if (rising(middle) < target) from = middle;
    else to = middle;
  }
  return (from + to) / 2;
}
