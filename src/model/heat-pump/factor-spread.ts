/** How far the factor that a home gets strays from the one that was given. */

import { evenSpread, type Spread, spreadOfRange } from '../chance/multiplier.ts';
import { normalQuantile } from '../chance/normal-quantile.ts';
import type { FieldSpread } from '../shapes/appraisal.ts';
import type { FieldFactor } from '../shapes/reference.ts';

/** Relative standard deviations. Metered: from one year to the next. Designed: about its own median. Both judgements. */
const METERED_DEVIATION = 0.05;
const DESIGNED_DEVIATION = 0.13;
/** Added where the hot-water factor was worked out from the one for rooms. */
const DERIVED_DEVIATION = 0.12;
/** One in six, where the reference tables do not say how many reached the designer's figure. */
const REACHED_DESIGN_SHARE = 0.16;

/**
 * Spread of the real factor over a designer's one, as ln of their ratio.
 * Standard deviation 0.13; the median lies below 0 just so far that the share of homes whose whole-house factor
 * reaches the designer's figure is the share that did in the field: median = −z(1 − share) × 0.13. What the lines for
 * hot water, pumps and standby already take off, ln(claimed / whole), counts towards it, so nothing is taken off twice.
 * Source: analysis of Ofgem data 2017-2022 (for DESNZ, RECC and GSHPA, 2024): 16 % of ground and 6 % of air source
 * homes reached the design figure; the deviation is a judgement, the spread of metered homes being 0.17.
 */
export function designedSpread(claimed: number, wholeFactor: number, field: FieldFactor): Spread {
  const share = field.reachedDesignShare ?? REACHED_DESIGN_SHARE;
  const needed = -normalQuantile(1 - share) * DESIGNED_DEVIATION;
  const alreadyTakenOff = Math.max(0, Math.log(claimed / wholeFactor));
  return evenSpread(DESIGNED_DEVIATION, Math.min(0, needed + alreadyTakenOff));
}

/** Spread of a metered factor: only what one year differs from the next. */
export const meteredSpread = (): Spread => evenSpread(METERED_DEVIATION);

/** The field's own figures as they stand beside the machine's, at H4. */
export function describeField({ low, middle, high, count, reachedDesignShare, source }: FieldFactor): FieldSpread {
  return {
    low,
    middle,
    high,
    boundary: 'H4',
    source,
    ...(count === undefined ? {} : { count }),
    ...(reachedDesignShare === undefined ? {} : { reachedDesignShare }),
  };
}

/** Spread of a factor taken from the field: that of the homes measured. */
export const fieldSpread = (field: FieldFactor): Spread =>
  spreadOfRange({ value: field.middle, low: field.low, high: field.high });

/** The spread of a hot-water factor that was derived: wider by an independent part. */
export function derivedSpread(space: Spread): Spread {
  const wider = (slope: number) => Math.hypot(slope, DERIVED_DEVIATION);
  return { median: space.median, below: wider(space.below), above: wider(space.above) };
}
