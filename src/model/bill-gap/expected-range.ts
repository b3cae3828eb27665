/** How wide the written estimate is for the days of one bill, once price and weather are put right. */
import type { Figure } from '../shapes/appraisal.ts';
import type { Reference } from '../shapes/reference.ts';

/** Distance of the 90 % point from the middle of a normal distribution, in standard deviations. */
const Z90 = 1.2816;
const YEAR_DAYS = 365;
/** A shorter bill is not wider still: the days of one week are alike. Common practice, no source. */
const LEAST_DAYS = 7;

/**
 * 10 and 90 % points [pence] about an expected cost.
 * The relative range of the estimated yearly units, widened for a span shorter than a year: if months stray
 * independently with a yearly spread σ, a span of n days strays σ √(365 / n), so z² σ² (365 / n − 1) is added to the
 * square of each half-range. σ² = habits² + (winter × share of the units that heats rooms)²; the second only while
 * the weather of the days is unknown. Independence of months is common practice, no source.
 */
export function expectedRange(input: {
  readonly expectedPence: number;
  readonly bought: Figure;
  readonly days: number;
  readonly spaceShare: number;
  readonly weatherKnown: boolean;
  readonly spread: Reference['spread'];
}): { value: number; low: number; high: number } {
  const { expectedPence, bought, days, spaceShare, weatherKnown, spread } = input;
  const winter = weatherKnown ? 0 : spread.winter.value * spaceShare;
  const shorter = Math.max(0, YEAR_DAYS / Math.max(LEAST_DAYS, days) - 1);
  const added = Z90 ** 2 * (spread.habits.value ** 2 + winter ** 2) * shorter;
  const share = (edge: number) => (bought.value > 0 ? Math.abs(edge / bought.value - 1) : 0);
  const down = Math.sqrt(share(bought.low) ** 2 + added);
  const up = Math.sqrt(share(bought.high) ** 2 + added);
  return {
    value: expectedPence,
    low: Math.round(expectedPence * Math.max(0, 1 - down)),
    high: Math.round(expectedPence * (1 + up)),
  };
}
