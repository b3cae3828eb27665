/** How an input's spread is written: what to multiply its value by, as a function of a standard normal draw. */
import { Z90 } from './normal-quantile.ts';

/**
 * A two-piece lognormal spread about the value itself: ln of the multiplier is 0 at z = 0, rising with slope `below`
 * under and `above` over it [1]. Every value that is reckoned with is thus the middle of its own cases.
 */
export interface Spread {
  readonly below: number;
  readonly above: number;
}

export const NO_SPREAD: Spread = { below: 0, above: 0 };

/** Both slopes from one relative standard deviation [1]. */
export const evenSpread = (deviation: number): Spread => ({ below: deviation, above: deviation });

/**
 * The even spread as wide as a range between its 10 and 90 % points [same unit], for a value of which the range leans to
 * one side: about it a sum keeps its middle. ln(high/low) / (2 × 1.2816); none where low is not above zero.
 */
export const evenSpreadOf = ({ low, high }: { readonly low: number; readonly high: number }): Spread =>
  low > 0 && high > low ? evenSpread(Math.min(WIDEST, Math.log(high / low) / (2 * Z90))) : NO_SPREAD;

/** Slope that no range may pass: it multiplies the 90 % point by about 13. */
const WIDEST = 2;

/**
 * The spread whose 10, 50 and 90 % points are low, value and high [same unit].
 * ln(value/low) / 1.2816 below and ln(high/value) / 1.2816 above; where value or low is not above zero, the width of
 * the whole range over the value stands in. Zero value: no spread.
 */
export function spreadOfRange(range: { readonly value: number; readonly low: number; readonly high: number }): Spread {
  const { value, low, high } = range;
  if (!(value > 0)) return NO_SPREAD;
  const above = Math.log(Math.max(high, value) / value) / Z90;
  const below = low > 0 ? Math.log(value / Math.min(low, value)) / Z90 : (value - low) / value / Z90;
  return { below: Math.min(WIDEST, below), above: Math.min(WIDEST, above) };
}

/** Multiplier at draw `z`: e^(slope z). */
export function multiplierAt(spread: Spread, z: number): number {
  return Math.exp((z < 0 ? spread.below : spread.above) * z);
}
