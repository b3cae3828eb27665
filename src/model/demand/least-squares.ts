/** A straight line through weighted points, closed form, with what it leaves unexplained. */
export interface FittedLine {
  readonly intercept: number;
  readonly slope: number;
  readonly interceptError: number;
  readonly slopeError: number;
  /** Covariance of intercept and slope. */
  readonly covariance: number;
  /** Weighted sum of squared residuals. */
  readonly squaredError: number;
  /** `squaredError` over the degrees of freedom: variance of a point of weight 1. */
  readonly variance: number;
  readonly r2: number;
  readonly count: number;
}

export interface LineOptions {
  /** Parameters that the points have paid for: 2 for a line, 3 where a change point was searched as well. */
  readonly parameters?: number;
  /** Neither intercept nor slope may be below zero: use does not run backwards. */
  readonly notNegative?: boolean;
}

/** Points whose x differ by less than rounding have no slope; as a share of the squares of x and 1. */
const APART_LEAST = 1e-20;

/**
 * Weighted least squares of y = intercept + slope × x, weights w: slope = Sxy/Sxx, intercept = ȳ − slope × x̄,
 * s² = Σw e²/(n − p). Valid for one point or more; needs more points than parameters for its errors (else they are infinite).
 * Source: any text on ordinary least squares.
 */
export function fitLine(
  x: ArrayLike<number>,
  y: ArrayLike<number>,
  weights: ArrayLike<number> | null = null,
  options: LineOptions = {},
): FittedLine {
  const count = x.length;
  const sums = sumUp(x, y, weights);
  const { w, meanX, meanY, sxx, sxy, syy } = sums;
  const apart = sxx > APART_LEAST * w * (1 + meanX ** 2);
  let slope = apart ? sxy / sxx : 0;
  let intercept = meanY - slope * meanX;
  if (options.notNegative) ({ slope, intercept } = keepPositive(sums, slope, intercept));
  let squaredError = 0;
  for (let i = 0; i < count; i++) {
    squaredError += (weights ? weights[i]! : 1) * (y[i]! - intercept - slope * x[i]!) ** 2;
  }
  const freedom = count - (options.parameters ?? 2);
  const variance = freedom > 0 ? squaredError / freedom : Number.POSITIVE_INFINITY;
  const slopeVariance = apart ? variance / sxx : 0;
  return {
    intercept,
    slope,
    interceptError: Math.sqrt(variance / w + slopeVariance * meanX ** 2),
    slopeError: Math.sqrt(slopeVariance),
    covariance: -slopeVariance * meanX,
    squaredError,
    variance,
    r2: syy > 0 ? 1 - squaredError / syy : 0,
    count,
  };
}

interface Sums {
  readonly w: number;
  readonly meanX: number;
  readonly meanY: number;
  readonly sxx: number;
  readonly sxy: number;
  readonly syy: number;
}

function sumUp(x: ArrayLike<number>, y: ArrayLike<number>, weights: ArrayLike<number> | null): Sums {
  let w = 0;
  let wx = 0;
  let wy = 0;
  for (let i = 0; i < x.length; i++) {
    const weight = weights ? weights[i]! : 1;
    w += weight;
    wx += weight * x[i]!;
    wy += weight * y[i]!;
  }
  const meanX = wx / w;
  const meanY = wy / w;
  let sxx = 0;
  let sxy = 0;
  let syy = 0;
  for (let i = 0; i < x.length; i++) {
    const weight = weights ? weights[i]! : 1;
    const dx = x[i]! - meanX;
    const dy = y[i]! - meanY;
    sxx += weight * dx * dx;
    sxy += weight * dx * dy;
    syy += weight * dy * dy;
  }
  return { w, meanX, meanY, sxx, sxy, syy };
}

/** The best line among those that start at or above zero and do not fall. */
function keepPositive(sums: Sums, slope: number, intercept: number): { slope: number; intercept: number } {
  if (slope < 0) return { slope: 0, intercept: Math.max(0, sums.meanY) };
  if (intercept >= 0) return { slope, intercept };
  const rawXX = sums.sxx + sums.w * sums.meanX ** 2;
  const rawXY = sums.sxy + sums.w * sums.meanX * sums.meanY;
  return { slope: rawXX > 0 ? Math.max(0, rawXY / rawXX) : 0, intercept: 0 };
}
