/** A value with one standard error turned into a figure with its 10 and 90 % points. */
import type { Figure } from '../shapes/appraisal.ts';
import type { Grade, Working } from '../shapes/working.ts';
import { TEN_PERCENT } from './demand-assumptions.ts';

/** However much estimates contradict each other, 8 in 10 homes lie between 0.36 and 2.8 times the middle. A judgement, no source. */
const WIDEST_SIGMA = 0.8;

/**
 * Range of a quantity that cannot be below nothing: lognormal with the value as its middle,
 * low and high = value × exp(∓1.2816 σ), σ² = ln(1 + (error/value)²), σ at most 0.8.
 */
export function rangeOf(value: number, error: number): { low: number; high: number } {
  if (!(value > 0)) return { low: 0, high: Math.max(0, TEN_PERCENT * error) };
  const sigma = Math.min(WIDEST_SIGMA, Math.sqrt(Math.log1p((error / value) ** 2)));
  return { low: value * Math.exp(-TEN_PERCENT * sigma), high: value * Math.exp(TEN_PERCENT * sigma) };
}

/** A yearly amount of heat as a figure [kWh]. */
export function heatFigure(value: number, error: number, grade: Grade, working: Working): Figure {
  return { value, ...rangeOf(value, error), unit: 'kWh', grade, working };
}

/** Root of the sum of squares: errors that know nothing of each other. */
export const together = (...errors: readonly number[]): number => Math.hypot(...errors);
