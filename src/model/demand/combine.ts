/** Several estimates of one thing made into one, and where they contradict each other. */
import type { DemandEstimate, Question } from '../appraisal/appraisal.ts';
import { type Grade, weakestGrade } from '../working.ts';
import { ask } from './questions.ts';

export interface Estimated {
  readonly value: number;
  /** One standard error. */
  readonly error: number;
  readonly grade: Grade;
}

export interface Combined extends Estimated {
  /** Share of each estimate in the value; they sum to 1. */
  readonly shares: readonly number[];
}

/** An error of nothing would silence every other estimate; kWh. */
const ERROR_LEAST = 1;
/** An estimate that carries at least this share of the value passes its grade on. */
const SHARE_OF_GRADE = 0.25;

/**
 * Mean weighted by inverse variance: value = Σ x/e² / Σ 1/e², error = (Σ 1/e²)^−½, widened by √(χ²/(n − 1)) where the
 * estimates lie further apart than their errors explain. Source: combination of independent measurements (Birge's ratio).
 */
export function combine(estimates: readonly Estimated[]): Combined {
  const weights = estimates.map((e) => 1 / Math.max(ERROR_LEAST, e.error) ** 2);
  const whole = weights.reduce((sum, w) => sum + w, 0);
  const shares = weights.map((w) => w / whole);
  const value = estimates.reduce((sum, e, i) => sum + shares[i]! * e.value, 0);
  const chiSquared = estimates.reduce((sum, e, i) => sum + weights[i]! * (e.value - value) ** 2, 0);
  const birge = estimates.length > 1 ? Math.sqrt(Math.max(1, chiSquared / (estimates.length - 1))) : 1;
  const grades = estimates.filter((_, i) => shares[i]! >= SHARE_OF_GRADE).map((e) => e.grade);
  return { value, error: birge / Math.sqrt(whole), grade: weakestGrade(grades), shares };
}

/** Likely reasons, as codes that `words` has sentences for: what to look at when the lower way is right, or the higher. */
function likelyReasons(lower: DemandEstimate, estimatedShare: number): string {
  const bills = estimatedShare > 0.1 ? ['estimated-bills'] : [];
  return lower.way === 'record'
    ? ['unheated-rooms', 'cooler-rooms', 'other-heat', 'efficiency', ...bills].join(',')
    : ['efficiency', 'warmer-rooms', 'heat-loss-too-low', ...bills].join(',');
}

/** A question for every pair of ways that differ by more than twice their joint error: |a − b| > 2 √(ea² + eb²). */
export function findContradictions(estimates: readonly DemandEstimate[], estimatedShare: number): Question[] {
  return estimates.flatMap((a, i) =>
    estimates.slice(i + 1).flatMap((b) => {
      const difference = Math.abs(a.spaceKWh - b.spaceKWh);
      if (difference <= 2 * Math.hypot(a.spaceErrorKWh, b.spaceErrorKWh)) return [];
      const lower = a.spaceKWh < b.spaceKWh ? a : b;
      return [
        ask('estimates-disagree', 'question', {
          a: a.way,
          b: b.way,
          aKWh: a.spaceKWh,
          bKWh: b.spaceKWh,
          aErrorKWh: a.spaceErrorKWh,
          bErrorKWh: b.spaceErrorKWh,
          differenceKWh: difference,
          likely: likelyReasons(lower, estimatedShare),
        }),
      ];
    }),
  );
}
