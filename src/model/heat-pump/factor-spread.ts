/** How far the factor that a home gets strays from the one reckoned with. */

import { evenSpread, multiplierAt, type Spread } from '../chance/multiplier.ts';
import { Z90 } from '../chance/normal-quantile.ts';
import type { FieldSpread, Figure } from '../shapes/appraisal.ts';
import type { FieldFactor } from '../shapes/reference.ts';

/** Relative standard deviation of a metered factor from one year to the next. A judgement. */
const METERED_DEVIATION = 0.05;
/** Added where the hot-water factor was worked out from the one for rooms. */
const DERIVED_DEVIATION = 0.12;

/** Spread of a metered factor: only what one year differs from the next. */
export const meteredSpread = (): Spread => evenSpread(METERED_DEVIATION);

/** The field's own figures as they stand beside the machine's, at H4. */
export function describeField({ low, middle, high, count, reachedDesignShare, source }: FieldFactor): FieldSpread {
  return { low, middle, high, boundary: 'H4', source, reachedDesignShare, ...(count === undefined ? {} : { count }) };
}

/** Spread of a factor taken from the field: that of the homes measured, even, so that its middle is the middle of a sum as well. */
export const fieldSpread = ({ deviation }: FieldFactor): Spread => evenSpread(deviation);

/** The spread of a hot-water factor that was derived: wider by an independent part. */
export function derivedSpread(space: Spread): Spread {
  const wider = (slope: number) => Math.hypot(slope, DERIVED_DEVIATION);
  return { below: wider(space.below), above: wider(space.above) };
}

/** A factor [1] with the 10 and 90 % points of its spread; no machine makes less heat than a resistance heater. */
export function factorFigure(
  { value, grade }: Pick<Figure, 'value' | 'grade'>,
  spread: Spread,
  working: Figure['working'],
): Figure {
  const low = Math.max(1, value * multiplierAt(spread, -Z90));
  return { value, low, high: value * multiplierAt(spread, Z90), unit: '', grade, working };
}
