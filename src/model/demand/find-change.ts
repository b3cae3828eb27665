/** Whether the home changed while its record ran: insulation, another boiler, other people. Found by a break in the signature. */
import { normalShare } from '../chance/normal-share.ts';
import { type FittedLine, fitLine } from './least-squares.ts';
import { degreesPerDay, type FittedSignature } from './signature.ts';
import type { SignatureData } from './signature-data.ts';

export interface FoundChange {
  /** First span after the change, and the spans between which it may as well lie. */
  readonly index: number;
  readonly earliest: number;
  readonly latest: number;
  readonly before: FittedLine;
  readonly after: FittedLine;
  /** Heating use after over that before in the same weather, less 1: −0.29 is 29 % less; with one standard error of the fit. */
  readonly share: number;
  readonly shareError: number;
  /** Chance that it is more than habits and scatter, 0 to 1. */
  readonly sure: number;
}

export interface ChangeLimits {
  /** Spread of a stretch of record with no change in it, as a share, by its days: habits and, if not its own, weather. */
  readonly usualSpread: (days: number) => number;
}

/** Either side needs so many days and spans, so many degrees between mild and cold, and so much of the cold. Common practice, no source. */
const DAYS_LEAST = 120;
const SPANS_LEAST = 5;
const CONTRAST_K = 4;
const HEATING_SHARE_LEAST = 0.2;
/** Smaller changes are left to habits, and so is what habits bring about more than 3 times in 100. Common practice, no source. */
const SHARE_LEAST = 0.15;
const SURE_LEAST = 0.97;
const RHO_MOST = 0.95;
/** Days between two trials of a record by day. */
const STEP_DAYS = 7;
/** A date is as good as the best while its squared error lies within this many variances; about 95 %. */
const AS_GOOD = 3.84;

/**
 * The break that leaves the least squared error when the record is cut in two with a line through each side, both on the
 * record's base temperature; null where no break is larger than habits and scatter explain.
 * share = slope after / slope before − 1; sure = Φ(|ln share ratio| / √(fit² + habits²)), errors widened by (1 + ρ)/(1 − ρ).
 * Source: two-phase regression (structural break at an unknown date), any text on regression.
 */
export function findChange(data: SignatureData, plain: FittedSignature, limits: ChangeLimits): FoundChange | null {
  const x = degreesPerDay(data, plain.baseC);
  const trials = findTrials(data, x);
  if (trials.length === 0 || !(plain.line.slope > 0)) return null;
  const errorAt = cutErrors(data, x);
  const errors = trials.map(errorAt);
  const least = Math.min(...errors);
  const index = trials[errors.indexOf(least)]!;
  const before = lineOf(data, x, 0, index);
  const after = lineOf(data, x, index, x.length);
  if (!(before.slope > 0) || !(after.slope > 0)) return null;
  const rho = Math.min(RHO_MOST, Math.max(0, rhoOf(data, x, index, before, after)));
  const widen = (1 + rho) / (1 - rho);
  const variance = least / (x.length - 5);
  const near = trials.filter((_, i) => errors[i]! - least <= AS_GOOD * widen * variance);
  const ratio = after.slope / before.slope;
  const ofFit = Math.sqrt(widen) * Math.hypot(before.slopeError / before.slope, after.slopeError / after.slope);
  const daysBefore = sumDays(data, 0, index);
  const daysAfter = sumDays(data, index, x.length);
  const usual = Math.hypot(limits.usualSpread(daysBefore), limits.usualSpread(daysAfter));
  const sure = normalShare(Math.abs(Math.log(ratio)) / Math.hypot(ofFit, usual));
  if (Math.abs(ratio - 1) < SHARE_LEAST || sure < SURE_LEAST) return null;
  return {
    index,
    earliest: near[0]!,
    latest: near.at(-1)!,
    before,
    after,
    share: ratio - 1,
    shareError: ratio * ofFit,
    sure,
  };
}

function sumDays(data: SignatureData, from: number, to: number): number {
  let days = 0;
  for (let i = from; i < to; i++) days += data.days[i]!;
  return days;
}

const lineOf = (data: SignatureData, x: Float64Array, from: number, to: number): FittedLine =>
  fitLine(x.subarray(from, to), data.perDayKWh.subarray(from, to), data.days.subarray(from, to), { parameters: 2 });

function findTrials(data: SignatureData, x: Float64Array): number[] {
  const count = x.length;
  const whole = sumDays(data, 0, count);
  const contrastFrom = runningContrast(x, 1);
  const contrastTo = runningContrast(x, -1);
  const degreesBefore = new Float64Array(count + 1);
  for (let i = 0; i < count; i++) degreesBefore[i + 1] = degreesBefore[i]! + data.days[i]! * x[i]!;
  const trials: number[] = [];
  let days = 0;
  let last = Number.NEGATIVE_INFINITY;
  for (let i = 1; i < count; i++) {
    days += data.days[i - 1]!;
    const enough = i >= SPANS_LEAST && count - i >= SPANS_LEAST && days >= DAYS_LEAST && whole - days >= DAYS_LEAST;
    if (!enough || days - last < STEP_DAYS) continue;
    const share = degreesBefore[i]! / degreesBefore[count]!;
    if (share < HEATING_SHARE_LEAST || share > 1 - HEATING_SHARE_LEAST) continue;
    if (contrastFrom[i - 1]! < CONTRAST_K || contrastTo[i]! < CONTRAST_K) continue;
    trials.push(i);
    last = days;
  }
  return trials;
}

/** Difference between mildest and coldest from the start up to each span, or from each span to the end. */
function runningContrast(x: Float64Array, step: 1 | -1): Float64Array {
  const contrast = new Float64Array(x.length);
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (let k = 0; k < x.length; k++) {
    const i = step === 1 ? k : x.length - 1 - k;
    low = Math.min(low, x[i]!);
    high = Math.max(high, x[i]!);
    contrast[i] = high - low;
  }
  return contrast;
}

/** Squared error of a cut before a span, by running sums: Syy − Sxy²/Sxx on either side. */
function cutErrors(data: SignatureData, x: Float64Array): (index: number) => number {
  const n = x.length;
  const sums = [0, 1, 2, 3, 4, 5].map(() => new Float64Array(n + 1));
  for (let i = 0; i < n; i++) {
    const w = data.days[i]!;
    const y = data.perDayKWh[i]!;
    const parts = [w, w * x[i]!, w * y, w * x[i]! ** 2, w * x[i]! * y, w * y * y];
    for (const [k, part] of parts.entries()) sums[k]![i + 1] = sums[k]![i]! + part;
  }
  const between = (from: number, to: number) => {
    const [w, wx, wy, wxx, wxy, wyy] = sums.map((s) => s[to]! - s[from]!) as [
      number,
      number,
      number,
      number,
      number,
      number,
    ];
    const sxx = wxx - (wx * wx) / w;
    const sxy = wxy - (wx * wy) / w;
    return wyy - (wy * wy) / w - (sxy * sxy) / sxx;
  };
  return (index) => between(0, index) + between(index, n);
}

function rhoOf(data: SignatureData, x: Float64Array, index: number, before: FittedLine, after: FittedLine): number {
  let together = 0;
  let own = 0;
  let last = 0;
  for (let i = 0; i < x.length; i++) {
    const line = i < index ? before : after;
    const residual = Math.sqrt(data.days[i]!) * (data.perDayKWh[i]! - line.intercept - line.slope * x[i]!);
    own += residual * residual;
    if (i > 0 && i !== index) together += residual * last;
    last = residual;
  }
  return own > 0 ? together / own : 0;
}
