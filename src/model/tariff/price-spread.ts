/** How far prices have strayed within a year, from the published rows: what the ranges of prices rest on. */

import type { CivilDate } from '../shapes/dates.ts';
import type { PriceQuarter } from '../shapes/reference.ts';
import { sumOf } from '../units/sums.ts';

export interface PriceSpread {
  /** One relative standard deviation of next year's mean electricity price about today's, as a fraction. */
  readonly electricity: number;
  readonly gas: number;
  /** Correlation of the two, -1 to 1. */
  readonly correlation: number;
  /** Quarters that have four later ones. They overlap, so they are worth far fewer independent years. */
  readonly count: number;
}

/** Before this quarter the government paid part of the price, so that it says nothing of the market. */
const SINCE_QUARTER: CivilDate = '2023-10-01';

/**
 * Relative spread [fraction] of the mean unit price of the next four quarters about the price of the present one.
 * With r = mean(p[i+1..i+4]) / p[i]: spread = sqrt(Σ(r − 1)² / (n − 1)), correlation = Σ(rₑ−1)(r_g−1) / √(Σ(rₑ−1)² Σ(r_g−1)²).
 * About 1 and not about the mean of r, since the comparison carries today's price on. Needs six quarters or more of both fuels.
 * Source: the quarters handed in; a cap on the price smooths it, and a rare jump such as that of 2022 is outside.
 */
export function priceSpread(quarters: readonly PriceQuarter[], since: CivilDate = SINCE_QUARTER): PriceSpread {
  const electricity = yearAhead(quarters, 'electricity', since);
  const gas = yearAhead(quarters, 'gas', since);
  const count = electricity.length;
  if (count < 2 || gas.length !== count) throw new RangeError('the spread of prices needs six quarters of both fuels');
  const product = electricity.reduce((sum, value, i) => sum + value * gas[i]!, 0);
  return {
    electricity: Math.sqrt(squares(electricity) / (count - 1)),
    gas: Math.sqrt(squares(gas) / (count - 1)),
    correlation: product / Math.sqrt(squares(electricity) * squares(gas)),
    count,
  };
}

function yearAhead(quarters: readonly PriceQuarter[], fuel: PriceQuarter['fuel'], since: CivilDate): number[] {
  const prices = quarters
    .filter((quarter) => quarter.fuel === fuel && quarter.from >= since)
    .sort((a, b) => (a.from < b.from ? -1 : 1))
    .map(({ pencePerKWh }) => pencePerKWh);
  return prices.slice(0, Math.max(0, prices.length - 4)).map((present, i) => {
    const next = prices.slice(i + 1, i + 5);
    return sumOf(next) / 4 / present - 1;
  });
}

const squares = (values: readonly number[]) => values.reduce((sum, value) => sum + value * value, 0);
