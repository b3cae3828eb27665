/** Axes: rounded steps, zero always on the axis, a shape that holds for tiny, equal, negative and huge values. */

/** The smallest of 1, 2, 2.5, 5 times a power of ten that is not below `rough`. */
export function niceStep(rough: number): number {
  if (!(rough > 0) || !Number.isFinite(rough)) return 1;
  const power = 10 ** Math.floor(Math.log10(rough));
  const lead = rough / power;
  const nice = [1, 2, 2.5, 5, 10].find((candidate) => candidate >= lead * (1 - 1e-9)) ?? 10;
  return nice * power;
}

export interface Axis {
  readonly low: number;
  readonly high: number;
  readonly step: number;
  readonly ticks: readonly number[];
}

/** An axis through zero that holds all values, in about `count` steps of a rounded size, none below `smallestStep`. */
export function axisFor(values: readonly number[], count = 4, smallestStep = 0): Axis {
  const known = values.filter(Number.isFinite);
  const low = Math.min(0, ...known);
  const high = Math.max(0, ...known);
  const span = high - low;
  // Below a billionth there is nothing to see, and steps so small cannot be told from rounding.
  const step = Math.max(niceStep(span > 1e-9 ? span / count : smallestStep || 1), smallestStep);
  const first = Math.floor(low / step + 1e-9);
  const last = Math.max(Math.ceil(high / step - 1e-9), first + 1);
  const ticks = Array.from({ length: last - first + 1 }, (_, index) => (first + index) * step);
  return { low: ticks[0]!, high: ticks.at(-1)!, step, ticks };
}

/** Decimals that name every tick of a step as it is: 1 for steps of 2.5, 0 for steps of 20; at most 3. */
export function decimalsOf(step: number): number {
  const enough = [0, 1, 2].find(
    (decimals) => Math.abs(step * 10 ** decimals - Math.round(step * 10 ** decimals)) < 1e-6,
  );
  return enough ?? 3;
}

/** What can be drawn up from zero: less, or no number, is nothing. */
export const fromZero = (value: number): number => (Number.isFinite(value) ? Math.max(0, value) : 0);

/** Maps a value of the axis to a place between two pixels. */
export function placeOn(axis: Pick<Axis, 'low' | 'high'>, from: number, to: number): (value: number) => number {
  return (value) => from + ((value - axis.low) / (axis.high - axis.low)) * (to - from);
}
