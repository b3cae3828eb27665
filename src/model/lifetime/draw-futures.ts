/** Many possible futures: how far the first year's costs stray, and how prices grow after it. Seeded. */

import { multiplierAt } from '../chance/multiplier.ts';
import { normalQuantile } from '../chance/normal-quantile.ts';
import { normalShare } from '../chance/normal-share.ts';
import { quantileOfSorted } from '../chance/quantiles.ts';
import { sobolPoints } from '../chance/sobol.ts';
import { FUELS, isFuel, type PricedCarrier } from '../shapes/heating.ts';
import type { Reference } from '../shapes/reference.ts';
import type { RunningCost } from './running-cost.ts';

export interface Future {
  /** Multipliers of the units of either side, held through all years. */
  readonly pumpShare: number;
  readonly besideShare: number;
  readonly growth: { readonly electricity: number; readonly fuel: number };
}

const SEED = 20260317;
const DIMENSIONS = 4;
/** No price falls by more than this a year for good. */
const STEEPEST_FALL = -0.3;

export interface FuturesInput {
  readonly pump: RunningCost;
  readonly beside: RunningCost;
  /** Twenty equally likely savings of the first year, ascending, pence. */
  readonly twenty: readonly number[];
  /** How the saving moves with the heat pump's own cost, −1 to 1. */
  readonly savingWithCost: number;
  readonly electricityGrowth: number;
  readonly fuelGrowth: number;
  readonly growthSpread: number;
  readonly carrier: PricedCarrier;
  readonly spread: Reference['spread'];
}

/**
 * Futures, the same for the same count. The heat pump's first year is drawn from its range and the saving from its twenty
 * cases, so that a first year is less or more as often as the appraisal says. What is not known of the first year stays with the house through the years,
 * which makes the range a little wide, since winters even out. Growth is one figure a future, normal about the one taken;
 * that of gas moves with electricity as the reference's price correlation has it, that of delivered fuel by itself.
 */
export function drawFutures(input: FuturesInput, count: number): Future[] {
  const [firsts, seconds, electricities, others] = sobolPoints(count, DIMENSIONS, SEED).map((values) =>
    values.map(normalQuantile),
  ) as [Float64Array, Float64Array, Float64Array, Float64Array];
  const together =
    isFuel(input.carrier) && FUELS[input.carrier].price === 'with electricity'
      ? input.spread.priceCorrelation.value
      : 0;
  const apart = Math.sqrt(Math.max(0, 1 - together * together));
  const follow = input.savingWithCost;
  const alone = Math.sqrt(Math.max(0, 1 - follow * follow));
  const besideUnits = input.beside.electricityPence + input.beside.fuelPence;
  const growthAt = (growth: number, z: number) => Math.max(STEEPEST_FALL, growth + input.growthSpread * z);
  return Array.from({ length: count }, (_, i) => {
    const [first, electricity] = [firsts[i]!, electricities[i]!];
    const pumpShare = multiplierAt(input.pump.spread, first);
    const pumpPence = (input.pump.electricityPence + input.pump.fuelPence) * pumpShare + input.pump.fixedPence;
    const saving = quantileOfSorted(input.twenty, normalShare(follow * first + alone * seconds[i]!));
    const besidePence = Math.max(0, pumpPence + saving - input.beside.fixedPence);
    return {
      pumpShare,
      besideShare: besideUnits > 0 ? besidePence / besideUnits : 1,
      growth: {
        electricity: growthAt(input.electricityGrowth, electricity),
        fuel: growthAt(input.fuelGrowth, together * electricity + apart * others[i]!),
      },
    };
  });
}
