/**
 * Energy signature: use per day = base + slope × max(0, base temperature − outdoor temperature).
 * The base temperature is searched on a grid; the rest is a straight line.
 */
import { type FittedLine, fitLine } from './least-squares.ts';

/** Use over spans of one day or more, with the outdoor temperature of every day in them. */
export interface SignatureData {
  /** Day number of the first day of each span. */
  readonly first: Int32Array;
  /** Days of each span; they are the weights too. */
  readonly days: Float64Array;
  /** Use per day of each span, kWh. */
  readonly perDayKWh: Float64Array;
  /** Daily outdoor temperatures of all spans one after the other, °C. */
  readonly outdoorC: Float64Array;
  /** Where each span's temperatures begin, with one entry past the end. */
  readonly start: Uint32Array;
}

export interface FittedSignature {
  readonly baseC: number;
  readonly line: FittedLine;
  /** Root mean square error over the mean. */
  readonly cvRmse: number;
  /** Lag-1 correlation of the residuals of neighbouring spans. */
  readonly rho: number;
}

const GRID_FROM = 80;
const GRID_TO = 220;
const PER_K = 10;

/**
 * Fits the three-parameter change point [kWh/day, kWh/K·day, °C] by least squares, base temperature on a 0.1 K grid
 * from 8 to 22 °C, degrees of freedom n − 3, spans weighted by their days, base and slope not below zero.
 * Valid from four spans up. Source: three-parameter heating change point, ASHRAE Guideline 14 (from memory).
 */
export function fitSignature(data: SignatureData): FittedSignature {
  let best = GRID_FROM;
  let least = Number.POSITIVE_INFINITY;
  for (let tenths = GRID_FROM; tenths <= GRID_TO; tenths++) {
    const error = squaredErrorAt(data, tenths / PER_K);
    // A flat record fits equally well anywhere; the hair's breadth keeps the lowest base among equals.
    if (error < least * (1 - 1e-12)) {
      least = error;
      best = tenths;
    }
  }
  return fitSignatureAt(data, best / PER_K);
}

/** The same at a base temperature that is already known [°C]. */
export function fitSignatureAt(data: SignatureData, baseC: number): FittedSignature {
  const x = degreesPerDay(data, baseC);
  const line = fitLine(x, data.perDayKWh, data.days, { parameters: 3, notNegative: true });
  let days = 0;
  let use = 0;
  for (let i = 0; i < x.length; i++) {
    days += data.days[i]!;
    use += data.days[i]! * data.perDayKWh[i]!;
  }
  const freedom = x.length - 3;
  const rmse = freedom > 0 ? Math.sqrt(((line.squaredError / days) * x.length) / freedom) : 0;
  return { baseC, line, cvRmse: use > 0 ? rmse / (use / days) : 0, rho: lagOne(data, x, line) };
}

/** Mean degrees below the base over the days of each span, K. */
export function degreesPerDay(data: SignatureData, baseC: number): Float64Array {
  const x = new Float64Array(data.days.length);
  for (let i = 0; i < x.length; i++) {
    let sum = 0;
    for (let k = data.start[i]!; k < data.start[i + 1]!; k++) {
      const below = baseC - data.outdoorC[k]!;
      if (below > 0) sum += below;
    }
    x[i] = sum / data.days[i]!;
  }
  return x;
}

/** Weighted squared error of the best non-negative line at one base temperature, by running sums only. */
function squaredErrorAt(data: SignatureData, baseC: number): number {
  let w = 0;
  let wx = 0;
  let wy = 0;
  let wxx = 0;
  let wxy = 0;
  let wyy = 0;
  for (let i = 0; i < data.days.length; i++) {
    let sum = 0;
    for (let k = data.start[i]!; k < data.start[i + 1]!; k++) {
      const below = baseC - data.outdoorC[k]!;
      if (below > 0) sum += below;
    }
    const weight = data.days[i]!;
    const y = data.perDayKWh[i]!;
    w += weight;
    wx += sum;
    wy += weight * y;
    wxx += (sum * sum) / weight;
    wxy += sum * y;
    wyy += weight * y * y;
  }
  const sxx = wxx - (wx * wx) / w;
  const sxy = wxy - (wx * wy) / w;
  const syy = wyy - (wy * wy) / w;
  if (!(sxx > 1e-9 * wxx) || sxy <= 0) return syy;
  if (wy - (sxy / sxx) * wx < 0) return wyy - (wxy * wxy) / wxx;
  return syy - (sxy * sxy) / sxx;
}

function lagOne(data: SignatureData, x: Float64Array, line: FittedLine): number {
  let together = 0;
  let own = 0;
  let last = 0;
  for (let i = 0; i < x.length; i++) {
    const residual = Math.sqrt(data.days[i]!) * (data.perDayKWh[i]! - line.intercept - line.slope * x[i]!);
    own += residual * residual;
    const neighbours = i > 0 && data.first[i - 1]! + data.days[i - 1]! === data.first[i];
    if (neighbours) together += residual * last;
    last = residual;
  }
  return own > 0 ? together / own : 0;
}
