/** What the signature says of a year of other weather, and how sure it is. */
import type { FittedSignature } from './signature.ts';

export interface PredictedUse {
  /** Part that follows the weather, kWh. */
  readonly spaceKWh: number;
  readonly spaceErrorKWh: number;
  /** Part that is the same every day, kWh. */
  readonly baseKWh: number;
  readonly baseErrorKWh: number;
  readonly totalKWh: number;
  readonly totalErrorKWh: number;
}

/** Beyond this the widening would be nonsense: a record so slow to change is too short to fit. */
const RHO_MOST = 0.95;

/**
 * Use [kWh] over `days` days that have `degreeDays` K·day to the signature's base temperature, with one standard error:
 * ŷ = m × base + slope × Σx; variance = (1 + ρ)/(1 − ρ) × (s² m + (m, Σx) cov (m, Σx)ᵀ).
 * Days do not err independently (people, not noise), hence the factor of the lag-1 correlation ρ; it widens the
 * coefficients as well, since likeness of neighbours leaves fewer independent days to lay the line through.
 * Source: prediction of a total by ordinary least squares, widened for first-order autocorrelation.
 */
export function predictUse(signature: FittedSignature, days: number, degreeDays: number): PredictedUse {
  const { line } = signature;
  const rho = Math.min(RHO_MOST, Math.max(0, signature.rho));
  const widen = (1 + rho) / (1 - rho);
  const noise = line.variance * days;
  const ofSlope = (line.slopeError * degreeDays) ** 2;
  const ofBase = (line.interceptError * days) ** 2;
  const both = ofSlope + ofBase + 2 * line.covariance * days * degreeDays;
  const error = (variance: number) => Math.sqrt(Math.max(0, widen * variance));
  const spaceKWh = line.slope * degreeDays;
  const baseKWh = line.intercept * days;
  return {
    spaceKWh,
    spaceErrorKWh: error(noise + ofSlope),
    baseKWh,
    baseErrorKWh: error(noise + ofBase),
    totalKWh: spaceKWh + baseKWh,
    totalErrorKWh: error(noise + both),
  };
}
