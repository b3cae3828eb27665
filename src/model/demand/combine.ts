/** Several estimates of one thing made into one, and where they contradict each other. */

import type { DemandEstimate, Question } from '../shapes/appraisal.ts';
import { type Grade, weakestGrade } from '../shapes/working.ts';
import { sumOf } from '../units/sums.ts';
import { ask } from './heat-questions.ts';

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

/** An error of nothing would silence every other estimate, and nothing has no logarithm; kWh. */
const LEAST_KWH = 1;
/** An estimate that carries at least this share of the value passes its grade on. */
const SHARE_OF_GRADE = 0.25;

/**
 * Mean of ratios weighted by inverse variance, since the errors are shares of their values: with σ = e/x,
 * ln value = Σ ln x/σ² / Σ 1/σ², error/value = (Σ 1/σ²)^−½, widened by √(χ²/(n − 1)) where the estimates lie further
 * apart than their errors explain. An error in units would count the lower of two equally sure estimates for more.
 * Valid for two or more. Source: combination of independent measurements (Birge's ratio), on logarithms.
 */
export function combine(estimates: readonly Estimated[]): Combined {
  const logs = estimates.map((e) => Math.log(Math.max(LEAST_KWH, e.value)));
  const weights = estimates.map(weightOf);
  const whole = sumOf(weights);
  const shares = weights.map((w) => w / whole);
  const middle = logs.reduce((sum, log, i) => sum + shares[i]! * log, 0);
  const chiSquared = logs.reduce((sum, log, i) => sum + weights[i]! * (log - middle) ** 2, 0);
  const birge = Math.sqrt(Math.max(1, chiSquared / (estimates.length - 1)));
  const grades = estimates.filter((_, i) => shares[i]! >= SHARE_OF_GRADE).map((e) => e.grade);
  const value = Math.exp(middle);
  return { value, error: (value * birge) / Math.sqrt(whole), grade: weakestGrade(grades), shares };
}

/** For how much an estimate counts beside others [1]: (value/error)². */
export const weightOf = ({ value, error }: Pick<Estimated, 'value' | 'error'>): number =>
  (Math.max(LEAST_KWH, value) / Math.max(LEAST_KWH, error)) ** 2;

/** Why two estimates may differ. */
export type LikelyReason =
  | 'unheated-rooms'
  | 'cooler-rooms'
  | 'warmer-rooms'
  | 'other-heat'
  | 'efficiency'
  | 'heat-loss-too-low'
  | 'usual-household'
  | 'unlike-its-age'
  | 'estimated-bills';

/** What an estimate that is no record may have got wrong where it is the lower one. */
const PAPER_TOO_LOW = {
  'heat-loss': 'heat-loss-too-low',
  certificate: 'usual-household',
  'floor-area': 'unlike-its-age',
} as const;

/** Likely reasons, as codes that `words` has sentences for: what to look at when the lower way is right, or the higher. */
function likelyReasons(lower: DemandEstimate, estimatedShare: number): string {
  const reasons: LikelyReason[] =
    lower.way === 'record'
      ? ['unheated-rooms', 'cooler-rooms', 'other-heat', 'efficiency']
      : ['efficiency', 'warmer-rooms', PAPER_TOO_LOW[lower.way]];
  if (estimatedShare > 0.1) reasons.push('estimated-bills');
  return reasons.join(',');
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
