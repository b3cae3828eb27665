/** One future reckoned: what has been paid by each year on either side, its worth today, and when it has paid back. */
import type { Future } from './draw-futures.ts';
import { annuityFactor } from './money-over-time.ts';
import type { Outlays } from './outlays.ts';
import { type Crossings, findCrossings } from './pay-back.ts';
import { costByYear, type RunningCost } from './running-cost.ts';

export interface Side {
  readonly running: RunningCost;
  readonly outlays: Outlays;
}

export interface Path {
  /** Pence paid in all by the end of each year, from year 0. */
  readonly pump: Float64Array;
  readonly beside: Float64Array;
  readonly simple: Crossings;
  readonly discounted: Crossings;
  /** Worth today of what the heat pump saves over the years, purchase and remaining life counted, pence. */
  readonly netPresentValue: number;
  /** Level pence a year. */
  readonly pumpAnnual: number;
  readonly besideAnnual: number;
}

/** Reckons one future [pence]; yearly amounts fall at the end of their year. */
export function reckonPath(pump: Side, beside: Side, future: Future, years: number, discount: number): Path {
  const pumpCost = costByYear(pump.running, future.growth, years, future.pumpShare);
  const besideCost = costByYear(beside.running, future.growth, years, future.besideShare);
  const savings = besideCost.map((pence, i) => pence - pumpCost[i]!);
  const steps = beside.outlays.byYear.map((pence, year) => pence - pump.outlays.byYear[year]!);
  const factors = Float64Array.from({ length: years + 1 }, (_, year) => (1 + discount) ** -year);
  const pumpWorth = worthOf(pump.outlays, pumpCost, factors);
  const besideWorth = worthOf(beside.outlays, besideCost, factors);
  const annuity = annuityFactor(discount, years);
  return {
    pump: cumulate(pump.outlays.byYear, pumpCost),
    beside: cumulate(beside.outlays.byYear, besideCost),
    simple: findCrossings(savings, steps),
    discounted: findCrossings(
      savings.map((pence, i) => pence * factors[i + 1]!),
      steps.map((pence, year) => pence * factors[year]!),
    ),
    netPresentValue: besideWorth - pumpWorth,
    pumpAnnual: pumpWorth / annuity,
    besideAnnual: besideWorth / annuity,
  };
}

function worthOf(outlays: Outlays, cost: Float64Array, factors: Float64Array): number {
  let worth = outlays.byYear[0]!;
  for (let year = 1; year < factors.length; year++) worth += (outlays.byYear[year]! + cost[year - 1]!) * factors[year]!;
  return worth - outlays.leftPence * factors.at(-1)!;
}

function cumulate(outlays: readonly number[], cost: Float64Array): Float64Array {
  const paid = new Float64Array(outlays.length);
  paid[0] = outlays[0]!;
  for (let year = 1; year < paid.length; year++) paid[year] = paid[year - 1]! + cost[year - 1]! + outlays[year]!;
  return paid;
}
