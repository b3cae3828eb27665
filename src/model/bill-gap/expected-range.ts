/** How wide the written estimate is for the days of one bill, once price and weather are put right, and from where on to ring. */

import { COMMON_MONTH_DAYS } from '../calendar/civil.ts';
import { normalQuantile, Z90 } from '../chance/normal-quantile.ts';
import type { Appraisal, Figure, SystemResult } from '../shapes/appraisal.ts';
import type { Reference } from '../shapes/reference.ts';

const YEAR_DAYS = 365;
/** A shorter bill is not wider still: the days of one week are alike. Common practice, no source. */
const LEAST_DAYS = 7;
/** With nothing wrong 1 usual month in 20 takes more than its warning level, and 1 year in 10. */
export const WARNED = { month: 1 / 20, year: 1 / 10 } as const;

interface Span {
  readonly bought: Figure;
  readonly days: number;
  /** Share of the units that heats rooms, 0 to 1. */
  readonly spaceShare: number;
  readonly weatherKnown: boolean;
  readonly spread: Reference['spread'];
}

/**
 * Half-ranges to the 10 and 90 % points, as shares of the value.
 * The relative range of the estimated yearly units, widened for a span shorter than a year: if months stray
 * independently with a yearly spread σ, a span of n days strays σ √(365 / n), so z² σ² (365 / n − 1) is added to the
 * square of each half-range. σ² = habits² + (winter × share of the units that heats rooms)²; the second only while
 * the weather of the days is unknown. Independence of months is common practice, no source.
 */
function reachOf({ bought, days, spaceShare, weatherKnown, spread }: Span): { down: number; up: number } {
  const winter = weatherKnown ? 0 : spread.winter.value * spaceShare;
  const shorter = Math.max(0, YEAR_DAYS / Math.max(LEAST_DAYS, days) - 1);
  const added = Z90 ** 2 * (spread.habits.value ** 2 + winter ** 2) * shorter;
  const share = (edge: number) => (bought.value > 0 ? Math.abs(edge / bought.value - 1) : 0);
  return {
    down: Math.sqrt(share(bought.low) ** 2 + added),
    up: Math.sqrt(share(bought.high) ** 2 + added),
  };
}

/** 10 and 90 % points [pence] about an expected cost. */
export function expectedRange(input: Span & { readonly expectedPence: number }): {
  value: number;
  low: number;
  high: number;
} {
  const { expectedPence } = input;
  const { down, up } = reachOf(input);
  return {
    value: expectedPence,
    low: Math.round(expectedPence * Math.max(0, 1 - down)),
    high: Math.round(expectedPence * (1 + up)),
  };
}

/**
 * Units [kWh] from which on to ring about a span of usual weather, of which it should take `kWh`: the point that 1 usual
 * month in 20, or 1 year in 10, lies above with nothing wrong (`WARNED`).
 */
export function warningLevel(kWh: number, span: Omit<Span, 'weatherKnown'>): number {
  const { up } = reachOf({ ...span, weatherKnown: false });
  const above = span.days < YEAR_DAYS ? WARNED.month : WARNED.year;
  return kWh * (1 + (up * normalQuantile(1 - above)) / Z90);
}

/** The warning level of each month of the typical year [kWh]. */
export function monthlyWarnings(
  { demand }: Pick<Appraisal, 'demand'>,
  { bought, monthly, spaceEfficiency }: Pick<SystemResult, 'bought' | 'monthly' | 'spaceEfficiency'>,
  spread: Reference['spread'],
): number[] {
  const spaceKWh = Math.min(bought.value, demand.space.value / spaceEfficiency);
  const spaceShare = bought.value > 0 ? spaceKWh / bought.value : 0;
  return monthly.boughtKWh.map((kWh, month) =>
    warningLevel(kWh, { bought, days: COMMON_MONTH_DAYS[month]!, spaceShare, spread }),
  );
}
