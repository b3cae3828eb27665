/** Futures reckoned: what has been paid by each year on either side, its worth today, and when it has paid back. */
import type { Future } from './draw-futures.ts';
import type { Outlays } from './outlays.ts';
import { findCrossings } from './pay-back.ts';
import { costByYear, type RunningCost } from './running-cost.ts';

export interface Side {
  readonly running: RunningCost;
  readonly outlays: Outlays;
}

/** One value a future throughout: a thousand of them are reckoned at every step of a slider. */
export interface Paths {
  /** Pence paid in all by the end of each year, from year 0. */
  readonly pump: readonly Float64Array[];
  readonly beside: readonly Float64Array[];
  /** What the heat pump has saved by the end, pence. */
  readonly saved: Float64Array;
  /** Years until the purchase is brought back; infinite where it never is. */
  readonly simple: Float64Array;
  readonly discounted: Float64Array;
  /** Years after which it falls behind; infinite where it does not. */
  readonly fallsBehind: Float64Array;
  /** Worth today of what the heat pump saves over the years, purchase and remaining life counted, pence. */
  readonly netPresentValue: Float64Array;
  /** Level pence a year. */
  readonly pumpAnnual: Float64Array;
  readonly besideAnnual: Float64Array;
}

/** Reckons futures [pence, years]; yearly amounts fall at the end of their year. */
export function reckonPaths(
  pump: Side,
  beside: Side,
  futures: readonly Future[],
  years: number,
  discount: number,
): Paths {
  const count = futures.length;
  const column = () => new Float64Array(count);
  const columns = () => Array.from({ length: years + 1 }, column);
  const paths = {
    pump: columns(),
    beside: columns(),
    saved: column(),
    simple: column(),
    discounted: column(),
    fallsBehind: column(),
    netPresentValue: column(),
    pumpAnnual: column(),
    besideAnnual: column(),
  };
  const factors = Float64Array.from({ length: years + 1 }, (_, year) => (1 + discount) ** -year);
  const annuity = annuityFactor(discount, years);
  const steps = beside.outlays.byYear.map((pence, year) => pence - pump.outlays.byYear[year]!);
  const stepsWorth = steps.map((pence, year) => pence * factors[year]!);
  // Written over by each future in turn.
  const [pumpCost, besideCost, savings, savingsWorth] = [0, 1, 2, 3].map(() => new Float64Array(years)) as [
    Float64Array,
    Float64Array,
    Float64Array,
    Float64Array,
  ];
  for (let i = 0; i < count; i++) {
    const { growth, pumpShare, besideShare } = futures[i]!;
    costByYear(pump.running, growth, pumpShare, pumpCost);
    costByYear(beside.running, growth, besideShare, besideCost);
    for (let year = 0; year < years; year++) {
      savings[year] = besideCost[year]! - pumpCost[year]!;
      savingsWorth[year] = savings[year]! * factors[year + 1]!;
    }
    cumulate(pump.outlays.byYear, pumpCost, paths.pump, i);
    cumulate(beside.outlays.byYear, besideCost, paths.beside, i);
    paths.saved[i] = paths.beside[years]![i]! - paths.pump[years]![i]!;
    const simple = findCrossings(savings, steps);
    paths.simple[i] = simple.payback ?? Number.POSITIVE_INFINITY;
    paths.fallsBehind[i] = simple.fallsBehind ?? Number.POSITIVE_INFINITY;
    paths.discounted[i] = findCrossings(savingsWorth, stepsWorth).payback ?? Number.POSITIVE_INFINITY;
    const pumpWorth = worthOf(pump.outlays, pumpCost, factors);
    const besideWorth = worthOf(beside.outlays, besideCost, factors);
    paths.netPresentValue[i] = besideWorth - pumpWorth;
    paths.pumpAnnual[i] = pumpWorth / annuity;
    paths.besideAnnual[i] = besideWorth / annuity;
  }
  return paths;
}

/**
 * Present worth of 1 a year, paid at the end of each of `years` years [years]: (1 − (1 + r)^−n) / r, n where r is zero.
 * Valid for r > −1. Source: standard annuity formula.
 */
const annuityFactor = (rate: number, years: number): number =>
  rate === 0 ? years : -Math.expm1(-years * Math.log1p(rate)) / rate;

function worthOf(outlays: Outlays, cost: Float64Array, factors: Float64Array): number {
  let worth = outlays.byYear[0]!;
  for (let year = 1; year < factors.length; year++) worth += (outlays.byYear[year]! + cost[year - 1]!) * factors[year]!;
  return worth - outlays.leftPence * factors.at(-1)!;
}

function cumulate(outlays: readonly number[], cost: Float64Array, into: readonly Float64Array[], future: number): void {
  let paid = outlays[0]!;
  into[0]![future] = paid;
  for (let year = 1; year < into.length; year++) {
    paid = paid + cost[year - 1]! + outlays[year]!;
    into[year]![future] = paid;
  }
}
