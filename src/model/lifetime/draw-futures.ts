/** Many possible futures: how far the first year's costs stray, and how prices grow after it. Seeded. */

import { multiplierAt } from '../chance/multiplier.ts';
import { normalQuantile } from '../chance/normal-quantile.ts';
import { quantilesOf } from '../chance/quantiles.ts';
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
  /** How the two yearly costs move together, −1 to 1. */
  readonly together: number;
  readonly electricityGrowth: number;
  readonly fuelGrowth: number;
  readonly growthSpread: number;
  readonly carrier: PricedCarrier;
  readonly spread: Reference['spread'];
}

/**
 * Futures, the same for the same count. The first year of either side is drawn from its own range, the two moving together
 * as far as the range of the saving says, so that each keeps its own middle and so does what lies between them. What is not known of the first year stays with the house through the years,
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
  const apart = Math.sqrt(1 - together * together);
  const follow = input.together;
  const alone = Math.sqrt(1 - follow * follow);
  const growthAt = (growth: number, z: number) => Math.max(STEEPEST_FALL, growth + input.growthSpread * z);
  const pumpShares = firsts.map((first) => multiplierAt(input.pump.spread, first));
  const besideShares = firsts.map((first, i) =>
    multiplierAt(input.beside.spread, follow * first + alone * seconds[i]!),
  );
  meetMiddles(unitsOf(input.pump), pumpShares, unitsOf(input.beside), besideShares);
  return Array.from({ length: count }, (_, i) => {
    const electricity = electricities[i]!;
    return {
      pumpShare: pumpShares[i]!,
      besideShare: besideShares[i]!,
      growth: {
        electricity: growthAt(input.electricityGrowth, electricity),
        fuel: growthAt(input.fuelGrowth, together * electricity + apart * others[i]!),
      },
    };
  });
}

const unitsOf = ({ electricityPence, fuelPence }: RunningCost): number => electricityPence + fuelPence;

/**
 * Middles do not subtract: where one side is more lopsided than the other, the middle of the difference lies beside the
 * difference of the middles. What is missing is shared out among pump, other and difference by the widths of their
 * ranges, so that each lies off its middle by the same small part of its own range. Changes the shares in place.
 */
function meetMiddles(pumpPence: number, pump: Float64Array, besidePence: number, beside: Float64Array): void {
  if (pump.length === 0) return;
  const costs = [
    pump.map((share) => pumpPence * share),
    beside.map((share) => besidePence * share),
    pump.map((share, i) => besidePence * beside[i]! - pumpPence * share),
  ];
  const [ofPump, ofBeside, ofSaving] = costs.map((futures) => {
    const [low, middle, high] = quantilesOf(futures, [0.1, 0.5, 0.9]) as [number, number, number];
    return { middle, width: high - low };
  }) as [Middle, Middle, Middle];
  const widths = ofPump.width + ofBeside.width + ofSaving.width;
  if (!(widths > 0)) return;
  const missing = ofBeside.middle - ofPump.middle - ofSaving.middle;
  const shift = (shares: Float64Array, pence: number, unitsPence: number) => {
    if (unitsPence > 0) for (let i = 0; i < shares.length; i++) shares[i]! += pence / unitsPence;
  };
  shift(pump, (-missing * ofPump.width) / widths, pumpPence);
  shift(beside, (missing * ofBeside.width) / widths, besidePence);
}

interface Middle {
  readonly middle: number;
  readonly width: number;
}
