/**
 * The signature where the record alone cannot tell its base. A base temperature above nearly all periods makes the base
 * use an extrapolation, and a line may then take lights and hot water for heating. So the base temperatures are not
 * searched for one winner: each is weighed by how well it fits and by what homes are like, and all of them answer together.
 */
import type { KnownBase } from './known-base.ts';
import { meanWave } from './season.ts';
import { degreesPerDay, type FittedSignature } from './signature.ts';
import type { SignatureData } from './signature-data.ts';
import { type Solved, solveSymmetric } from './symmetric.ts';

/** One base temperature with its weight, its line and how sure the line is. */
export interface WeighedLine {
  readonly baseC: number;
  /** They sum to 1. */
  readonly weight: number;
  /** Base kWh/day, swing kWh/day, slope kWh/K·day. */
  readonly line: readonly [number, number, number];
  readonly covariance: readonly (readonly number[])[];
}

export interface InformedFit {
  readonly lines: readonly WeighedLine[];
  /** Weighted mean of the base temperatures to 0.1 °C, and one standard error. */
  readonly baseC: number;
  readonly baseErrorK: number;
}

export interface FitCircumstances {
  readonly known: KnownBase;
  /** How far the temperature of a span may be from the one put to it, K; 0 where the weather is the record's own. */
  readonly weatherErrorK: number;
  /** Base temperature typed by hand, °C. */
  readonly typedBaseC?: number;
}

const GRID = { from: 8, to: 22, stepK: 0.2 } as const;
/** Base temperatures of British homes: about the standard 15.5 °C, lower in newer ones. Common practice, no source. */
const HOMES = { middleC: 15, errorK: 1.8, typedErrorK: 0.8 } as const;
/** Beyond this, likeness of neighbours leaves nothing to lay a line through. */
const RHO_MOST = 0.95;
/** A record never fits better than this share of its mean: meters are read to a unit. */
const NOISE_LEAST = 0.005;
/** Freest guess of the base where little is known of it, as a share of the mean use. Common practice, no source. */
const BASE_ERROR_LEAST = 0.1;

/**
 * Lines use = base + swing × wave of the year + slope × degrees below the base temperature, one for each base temperature
 * from 8 to 22 °C in steps of 0.2 K, by least squares that counts what is known of the base and its swing as further
 * observations; weight of each by its likelihood and by how usual the base temperature is. Valid from four spans up.
 * Source: Bayesian linear regression with a grid over the change point (any text); errors widened by (1 + ρ)/(1 − ρ).
 */
export function fitInformed(data: SignatureData, plain: FittedSignature, how: FitCircumstances): InformedFit {
  const rows = prepare(data, plain, how);
  const weighed: { baseC: number; log: number; solved: Fitted }[] = [];
  for (let step = 0; step <= (GRID.to - GRID.from) / GRID.stepK; step++) {
    const baseC = Math.round((GRID.from + step * GRID.stepK) * 10) / 10;
    const solved = fitAt(degreesPerDay(data, baseC), rows);
    if (solved) weighed.push({ baseC, log: solved.log + usual(baseC, how.typedBaseC), solved });
  }
  const most = Math.max(...weighed.map((w) => w.log));
  const whole = weighed.reduce((sum, w) => sum + Math.exp(w.log - most), 0);
  const lines = weighed.map(({ baseC, log, solved }) => {
    return { baseC, weight: Math.exp(log - most) / whole, line: solved.line, covariance: solved.covariance };
  });
  const mean = lines.reduce((sum, l) => sum + l.weight * l.baseC, 0);
  const variance = lines.reduce((sum, l) => sum + l.weight * (l.baseC - mean) ** 2, 0);
  return { lines, baseC: Math.round(mean * 10) / 10, baseErrorK: Math.sqrt(variance) };
}

const usual = (baseC: number, typedC: number | undefined) =>
  -0.5 * (typedC === undefined ? (baseC - HOMES.middleC) / HOMES.errorK : (baseC - typedC) / HOMES.typedErrorK) ** 2;

interface Rows {
  readonly use: Float64Array;
  readonly wave: Float64Array;
  /** Inverse variance of each span's use per day. */
  readonly precision: Float64Array;
  readonly sums: StillSums;
  readonly known: KnownBase;
  readonly baseErrorKWh: number;
}

/** Sums that no base temperature changes: p precision, w wave, y use. */
interface StillSums {
  readonly p: number;
  readonly pw: number;
  readonly pww: number;
  readonly py: number;
  readonly pwy: number;
}

function sumStill(precision: Float64Array, wave: Float64Array, use: Float64Array): StillSums {
  const sums = { p: 0, pw: 0, pww: 0, py: 0, pwy: 0 };
  for (let i = 0; i < precision.length; i++) {
    const p = precision[i]!;
    sums.p += p;
    sums.pw += p * wave[i]!;
    sums.pww += p * wave[i]! ** 2;
    sums.py += p * use[i]!;
    sums.pwy += p * wave[i]! * use[i]!;
  }
  return sums;
}

function prepare(data: SignatureData, plain: FittedSignature, how: FitCircumstances): Rows {
  const { known, weatherErrorK } = how;
  const count = data.days.length;
  let days = 0;
  let use = 0;
  for (let i = 0; i < count; i++) {
    days += data.days[i]!;
    use += data.days[i]! * data.perDayKWh[i]!;
  }
  const mean = use / days;
  // The likeness of a few neighbours is itself not sure: what chance alone gives is taken off.
  const rho = Math.min(RHO_MOST, Math.max(0, plain.rho - 1 / Math.sqrt(count)));
  const freedom = count - 3;
  // Few spans do not know their own scatter; Student's t is that much wider.
  const few = freedom > 3 ? 1 : 2;
  const scatter = (plain.line.squaredError / freedom) * few;
  const least = (NOISE_LEAST * mean) ** 2;
  const widen = (1 + rho) / (1 - rho);
  const heated = degreesPerDay(data, HOMES.middleC);
  const raw = Float64Array.from(data.days, (length, i) => {
    // Scatter of a span goes down with its days; that of another weather is there only where the span is heated.
    const ofWeather = (weatherErrorK * plain.line.slope) ** 2 * Math.min(1, heated[i]! / 3);
    return weatherErrorK > 0 ? 1 / ((0.1 * mean) ** 2 + ofWeather) : length;
  });
  // With another weather's temperatures the raw precisions say only how spans compare; the scatter sets their level.
  const level = weatherErrorK > 0 ? levelOf(data, plain, raw, freedom, few) : 1 / Math.max(scatter, least);
  const precision = raw.map((p) => (p * level) / widen);
  const wave = Float64Array.from(data.days, (length, i) => meanWave(data.first[i]!, length));
  return {
    use: data.perDayKWh,
    wave,
    precision,
    sums: sumStill(precision, wave, data.perDayKWh),
    known,
    baseErrorKWh: Math.max(known.errorPerDayKWh, BASE_ERROR_LEAST * mean),
  };
}

function levelOf(data: SignatureData, plain: FittedSignature, raw: Float64Array, freedom: number, few: number): number {
  const x = degreesPerDay(data, plain.baseC);
  let sum = 0;
  for (let i = 0; i < x.length; i++) {
    sum += raw[i]! * (data.perDayKWh[i]! - plain.line.intercept - plain.line.slope * x[i]!) ** 2;
  }
  return 1 / Math.max((sum / freedom) * few, 0.25);
}

interface Fitted {
  readonly line: readonly [number, number, number];
  readonly covariance: number[][];
  /** Logarithm of the likelihood, but for what is the same at every base temperature. */
  readonly log: number;
}

function fitAt(x: Float64Array, rows: Rows): Fitted | null {
  const { use, wave, precision, known, baseErrorKWh } = rows;
  const ofBase = 1 / baseErrorKWh ** 2;
  const ofSwing = 1 / (known.swingError * Math.max(known.perDayKWh, 0.2 * baseErrorKWh)) ** 2;
  const c = known.swing;
  let px = 0;
  let pxx = 0;
  let pxw = 0;
  let pxy = 0;
  for (let i = 0; i < x.length; i++) {
    const p = precision[i]! * x[i]!;
    px += p;
    pxx += p * x[i]!;
    pxw += p * wave[i]!;
    pxy += p * use[i]!;
  }
  const { p, pw, pww, py, pwy } = rows.sums;
  // What is known: base = so much, and swing − c × base = 0.
  const a = [
    [p + ofBase + ofSwing * c * c, pw - ofSwing * c, px],
    [pw - ofSwing * c, pww + ofSwing, pxw],
    [px, pxw, pxx],
  ];
  const b = [py + ofBase * known.perDayKWh, pwy, pxy];
  const all = solveSymmetric(a, b);
  if (all && all.solution[0]! >= 0 && all.solution[2]! >= 0) return toFitted(all, [0, 1, 2], b, pxx);
  // Use does not run backwards: what would fall below nothing is held at nothing.
  const kept = all && all.solution[0]! < 0 ? [2] : [0, 1];
  const part = solveSymmetric(
    kept.map((r) => kept.map((k) => a[r]![k]!)),
    kept.map((r) => b[r]!),
  );
  if (!part || part.solution[0]! < 0) return null;
  const held = toFitted(part, kept, b, pxx);
  // A slope held at nothing is no surer than it was before.
  if (all && !kept.includes(2)) held.covariance[2]![2] = all.inverse[2]![2]!;
  return held;
}

function toFitted(solved: Solved, kept: readonly number[], b: readonly number[], pxx: number): Fitted {
  const line: [number, number, number] = [0, 0, 0];
  const covariance = [0, 1, 2].map(() => [0, 0, 0]);
  let explained = 0;
  kept.forEach((r, i) => {
    line[r] = solved.solution[i]!;
    explained += solved.solution[i]! * b[r]!;
    kept.forEach((k, j) => {
      covariance[r]![k] = solved.inverse[i]![j]!;
    });
  });
  // The heating's share of the use, not the slope, is what is unknown beforehand: else a low base would weigh more.
  const scale = kept.includes(2) && pxx > 0 ? Math.log(pxx) : 0;
  return { line, covariance, log: 0.5 * (explained - solved.logDeterminant + scale) };
}
