/** Two lines against the cold, one before a day and one from it on. */
import { type FittedLine, fitLine } from '../demand/least-squares.ts';

export interface TwoLines {
  readonly at: number;
  readonly before: FittedLine;
  readonly after: FittedLine;
  /** F of two lines against one, divided by (1 + ρ) / (1 − ρ) for the likeness of neighbouring days. */
  readonly f: number;
  readonly rho: number;
}

export interface LineChange extends TwoLines {
  /** After less before, mean over the days since that are as cold as days before were. */
  readonly change: number;
  /** What the days before would have had in those days, mean. */
  readonly was: number;
  /** `change` over its standard error, the likeness of neighbouring days allowed for. */
  readonly t: number;
  /** Places of the days since that are as cold as days before were. */
  readonly common: readonly number[];
}

/** The best of many days differs by chance too; see the proof of false alarms. */
const LEAST_F = 10;
const LEAST_T = 6;
const LEAST_DEGREES = 1e-9;
/** The coldest and the warmest twentieth of the days before carry no comparison. */
const EDGE = 0.05;

/**
 * The day that parts a row best into two straight lines y = a + b x, at least `leastDays` on each side.
 * F = ((SSE₁ − SSE₂) / 2) / (SSE₂ / (n − 4)). Source: Chow's test at the best day (from memory); the best of many days
 * has a large F by chance too, so a threshold far above its table is wanted.
 */
export function findTwoLines(x: ArrayLike<number>, y: ArrayLike<number>, leastDays: number): TwoLines | null {
  const n = y.length;
  if (n < 2 * leastDays) return null;
  const sums = runningSums(x, y);
  const one = squaredError(sums, 0, n);
  let best = { at: 0, error: Number.POSITIVE_INFINITY };
  for (let at = leastDays; at <= n - leastDays; at++) {
    const error = squaredError(sums, 0, at) + squaredError(sums, at, n);
    if (error < best.error) best = { at, error };
  }
  const part = (values: ArrayLike<number>, from: number, to: number) => Array.from(values).slice(from, to);
  const before = fitLine(part(x, 0, best.at), part(y, 0, best.at));
  const after = fitLine(part(x, best.at, n), part(y, best.at, n));
  const rho = lagOne(x, y, best.at, before, after);
  const f = one > best.error ? (one - best.error) / 2 / (best.error / (n - 4)) : 0;
  return { at: best.at, before, after, f: (f * (1 - rho)) / (1 + rho), rho };
}

/**
 * How much the second line differs from the first, over days that both have seen: a winter says nothing of a summer,
 * and a line drawn on beyond its own days would invent a change. Null with fewer than half of `leastDays` in common, and
 * where chance may have made it.
 */
export function findLineChange(x: ArrayLike<number>, y: ArrayLike<number>, leastDays: number): LineChange | null {
  const lines = findTwoLines(x, y, leastDays);
  if (!lines) return null;
  const { at, before, after, rho } = lines;
  const all = Array.from(x);
  const sorted = all.slice(0, at).sort((a, b) => a - b);
  const low = sorted[Math.floor(EDGE * (at - 1))]!;
  const high = sorted[Math.ceil((1 - EDGE) * (at - 1))]!;
  const common = Array.from(all.keys()).filter((i) => i >= at && all[i]! >= low && all[i]! <= high);
  if (common.length < leastDays / 2) return null;
  const meanX = common.reduce((sum, i) => sum + all[i]!, 0) / common.length;
  const valueAt = (line: FittedLine) => line.intercept + line.slope * meanX;
  const errorAt = (line: FittedLine) =>
    line.interceptError ** 2 + 2 * meanX * line.covariance + (meanX * line.slopeError) ** 2;
  const change = valueAt(after) - valueAt(before);
  const variance = (Math.max(0, errorAt(before)) + Math.max(0, errorAt(after))) * ((1 + rho) / (1 - rho));
  const t = change === 0 ? 0 : Math.abs(change) / Math.sqrt(variance);
  return lines.f < LEAST_F || t < LEAST_T ? null : { ...lines, change, was: valueAt(before), t, common };
}

/**
 * Whether the difference grows with the cold or is the same every day: over the days in common, by which of the two
 * leaves less of it unexplained. `cold` are degrees below a temperature at which homes are heated.
 */
export function changeKind(
  { before, common }: LineChange,
  x: ArrayLike<number>,
  y: ArrayLike<number>,
  cold: ArrayLike<number>,
): 'with-the-cold' | 'steady' {
  const more = common.map((i) => y[i]! - before.intercept - before.slope * x[i]!);
  const left = (by: readonly number[]) => {
    const square = by.reduce((sum, value) => sum + value * value, 0);
    const share = by.reduce((sum, value, i) => sum + value * more[i]!, 0) / square;
    return more.reduce((sum, value, i) => sum + (value - share * by[i]!) ** 2, 0);
  };
  return left(common.map((i) => cold[i]!)) < left(common.map(() => 1)) ? 'with-the-cold' : 'steady';
}

/** Days on each side of a change that show whether it came on a day, and what share of it must have come then. */
const ABOUT_DAYS = 30;
const LEAST_STEP = 0.5;
const LEAST_STEP_T = 3;

interface Step {
  readonly step: number;
  readonly error: number;
  readonly places: readonly number[];
}

/** The step d in y = a + b x + d from the day on, over the thirty days before and since, with its standard error. */
function stepAbout(at: number, x: ArrayLike<number>, y: ArrayLike<number>): Step {
  const from = Math.max(0, at - ABOUT_DAYS);
  const places = Array.from({ length: Math.min(y.length, at + ABOUT_DAYS) - from }, (_, i) => from + i);
  const here = places.map((i) => x[i]!);
  const since = places.map((i) => (i >= at ? 1 : 0));
  // What x says of y and of the side is taken out of both; a line through the rest has d as its slope.
  const rest = (values: readonly number[]) => {
    const line = fitLine(here, values);
    return values.map((value, i) => value - line.intercept - line.slope * here[i]!);
  };
  const { slope, slopeError } = fitLine(rest(since), rest(places.map((i) => y[i]!)), null, { parameters: 3 });
  return { step: slope, error: slopeError, places };
}

/**
 * Whether the difference came on a day: `stepAbout` is at least half of what the two lines differ by there. Two seasons
 * differ too, as the sun on the walls does on days as cold, but little by little. `isClear` where it stands out there by itself.
 */
export function cameAtOnce({ at, before, after, rho }: TwoLines, x: ArrayLike<number>, y: ArrayLike<number>) {
  const about = stepAbout(at, x, y);
  const { step, error, places } = about;
  const meanX = places.reduce((sum, i) => sum + x[i]!, 0) / places.length;
  const differ = after.intercept - before.intercept + (after.slope - before.slope) * meanX;
  return {
    isAtOnce: step / differ >= LEAST_STEP && Math.abs(step) >= LEAST_STEP_T * error,
    isClear: stepT(about, rho) >= LEAST_T,
  };
}

/** The step over its error, the likeness of neighbouring days allowed for. */
const stepT = ({ step, error }: Step, rho: number): number =>
  (Math.abs(step) / error) * Math.sqrt((1 - rho) / (1 + rho));

/** Days of the thirty since that are no colder and no milder than those of the thirty before, and heated ones before, least. Judgements. */
const LEAST_ALIKE = 4;
const LEAST_HEATED = 14;

/**
 * The same change where a colder season has begun since, so that hardly any day before was as cold: its size is the step
 * over the days about it, `common` the thirty days since. A first winter is told of by nothing else.
 */
export function findStepChange(x: ArrayLike<number>, y: ArrayLike<number>, leastDays: number): LineChange | null {
  const lines = findTwoLines(x, y, leastDays);
  if (!lines || lines.f < LEAST_F) return null;
  const { at, rho } = lines;
  const about = stepAbout(at, x, y);
  const { step: change, places } = about;
  const t = stepT(about, rho);
  const common = places.filter((i) => i >= at);
  const was = places.filter((i) => i < at).map((i) => x[i]!);
  const [low, high] = [Math.min(...was), Math.max(...was)];
  // The first days of heating begin on a day too; and of days that are all too warm for it, colder ones show nothing.
  if (t < LEAST_T || [was, common.map((i) => x[i]!)].some((side) => countHeated(side) < LEAST_HEATED)) return null;
  if (common.filter((i) => x[i]! >= low && x[i]! <= high).length < LEAST_ALIKE) return null;
  return { ...lines, change, was: common.reduce((sum, i) => sum + y[i]!, 0) / common.length - change, t, common };
}

const countHeated = (x: readonly number[]): number => x.filter((one) => one > 0).length;

function runningSums(x: ArrayLike<number>, y: ArrayLike<number>): Float64Array[] {
  const n = y.length;
  const sums = Array.from({ length: 5 }, () => new Float64Array(n + 1));
  for (let i = 0; i < n; i++) {
    [x[i]!, y[i]!, x[i]! ** 2, x[i]! * y[i]!, y[i]! ** 2].forEach((value, k) => {
      sums[k]![i + 1] = sums[k]![i]! + value;
    });
  }
  return sums;
}

function squaredError(sums: readonly Float64Array[], from: number, to: number): number {
  const n = to - from;
  const [x, y, xx, xy, yy] = sums.map((sum) => sum[to]! - sum[from]!) as [number, number, number, number, number];
  const sxx = xx - (x * x) / n;
  const sxy = xy - (x * y) / n;
  const syy = yy - (y * y) / n;
  return Math.max(0, sxx > LEAST_DEGREES ? syy - (sxy * sxy) / sxx : syy);
}

function lagOne(x: ArrayLike<number>, y: ArrayLike<number>, at: number, before: FittedLine, after: FittedLine): number {
  let own = 0;
  let together = 0;
  let last = 0;
  for (let i = 0; i < y.length; i++) {
    const line = i < at ? before : after;
    const residual = y[i]! - line.intercept - line.slope * x[i]!;
    own += residual * residual;
    if (i !== at) together += residual * last;
    last = residual;
  }
  return own > 0 ? Math.min(0.9, Math.max(0, together / own)) : 0;
}
