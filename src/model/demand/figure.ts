/** A value with one standard error turned into a figure with its 10 and 90 % points. */
import type { Figure } from '../shapes/appraisal.ts';
import type { Grade, Working } from '../shapes/working.ts';
import { TEN_PERCENT } from './demand-assumptions.ts';

/** However much estimates contradict each other, 8 in 10 homes lie between 0.36 and 2.8 times the middle. Our own assumption. */
export const WIDEST_SIGMA = 0.8;
/** Only estimates that contradict each other reach further: a home of which nothing is known has 0.57. Our own assumption. */
const LEANS_FROM = 0.6;

const sigmaOf = (value: number, error: number): number =>
  Math.min(WIDEST_SIGMA, Math.sqrt(Math.log1p((error / value) ** 2)));

/**
 * What a value is multiplied by before it is added to another, `beside` [1]: e^(q (σ² − 0.6²)/2), 1 where σ is less. A
 * range so wide reaches much further up than down, so that the middle of a sum lies above the sum of the middles: by what
 * the mean of a lognormal lies above its median, e^(σ²/2), where the other makes up the sum; by nothing where this one
 * does. q is the other's share in the sum.
 */
export function leanOf(value: number, error: number, beside: number): number {
  const over = value > 0 ? Math.max(0, sigmaOf(value, error) ** 2 - LEANS_FROM ** 2) : 0;
  return over > 0 ? Math.exp(((over / 2) * beside) / (value + beside)) : 1;
}

/**
 * Range of a quantity that cannot be below nothing: lognormal with the value as its middle,
 * low and high = value × exp(∓1.2816 σ), σ² = ln(1 + (error/value)²), σ at most 0.8.
 */
export function rangeOf(value: number, error: number): { low: number; high: number } {
  if (!(value > 0)) return { low: 0, high: Math.max(0, TEN_PERCENT * error) };
  const sigma = sigmaOf(value, error);
  return { low: value * Math.exp(-TEN_PERCENT * sigma), high: value * Math.exp(TEN_PERCENT * sigma) };
}

/** A yearly amount of heat as a figure [kWh]; one that was raised by `lean` keeps the range that it had before. */
export function heatFigure(value: number, error: number, grade: Grade, working: Working, lean = 1): Figure {
  return { value, ...rangeOf(value / lean, error / lean), unit: 'kWh', grade, working };
}

/** Root of the sum of squares: errors that know nothing of each other. */
export const together = (...errors: readonly number[]): number => Math.hypot(...errors);
