/** A daily figure with what follows the cold taken out of it. */
import { fitSignature } from '../demand/signature.ts';
import type { SignatureData } from '../demand/signature-data.ts';

export interface ColdLine {
  readonly baseC: number;
  readonly intercept: number;
  readonly slope: number;
  /** Degrees below the base, one a day, K. */
  readonly below: Float64Array;
}

/** Base temperature and line of a daily use through its outdoor temperatures (`fitSignature`), for days that are all known. */
export function coldLine(
  dayNumber: ArrayLike<number>,
  perDay: ArrayLike<number>,
  outdoorC: ArrayLike<number>,
): ColdLine {
  const n = perDay.length;
  const data: SignatureData = {
    first: Int32Array.from(dayNumber),
    days: new Float64Array(n).fill(1),
    perDayKWh: Float64Array.from(perDay),
    outdoorC: Float64Array.from(outdoorC),
    start: Uint32Array.from({ length: n + 1 }, (_, i) => i),
  };
  const { baseC, line } = fitSignature(data);
  const below = Float64Array.from({ length: n }, (_, i) => Math.max(0, baseC - outdoorC[i]!));
  return { baseC, intercept: line.intercept, slope: line.slope, below };
}

/**
 * What is left of values when a straight line in `x` is taken out, their mean kept.
 * The slope comes from least squares; a row of equal x is left as it is.
 */
export function withoutSlope(values: readonly number[], x: ArrayLike<number>): number[] {
  const n = values.length;
  let meanX = 0;
  let meanY = 0;
  for (let i = 0; i < n; i++) {
    meanX += x[i]! / n;
    meanY += values[i]! / n;
  }
  let sxx = 0;
  let sxy = 0;
  for (let i = 0; i < n; i++) {
    sxx += (x[i]! - meanX) ** 2;
    sxy += (x[i]! - meanX) * (values[i]! - meanY);
  }
  const slope = sxx > 0 ? sxy / sxx : 0;
  return values.map((value, i) => value - slope * (x[i]! - meanX));
}
