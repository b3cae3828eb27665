/** The running cost of a year as parts that follow different prices, and how far the first year's may stray. */

import { type Spread, spreadOfRange } from '../chance/multiplier.ts';
import type { Appraisal, SystemResult } from '../shapes/appraisal.ts';

type Range = { readonly low: number; readonly high: number };

export interface RunningCost {
  /** Units that follow the price of electricity and those that follow the fuel, pence in the first year. */
  readonly electricityPence: number;
  readonly fuelPence: number;
  /** Standing charge and service, which keep pace with general inflation. */
  readonly fixedPence: number;
  /** Of the units, from the range of the year's cost. */
  readonly spread: Spread;
}

/** A year's cost by what it follows. A boiler's own electricity is priced at the heat pump's mean price. */
export function runningCost(system: SystemResult, prices: Appraisal['prices']): RunningCost {
  const { split, cost } = system;
  const fixedPence = split.standingPence + split.servicePence;
  const own = Math.max(0, system.ownElectricityKWh * prices.electricityPencePerKWh);
  const electricityPence = system.carrier === 'electricity' ? split.unitsPence : Math.min(split.unitsPence, own);
  return {
    electricityPence,
    fuelPence: split.unitsPence - electricityPence,
    fixedPence,
    spread: spreadOfRange({ value: split.unitsPence, low: cost.low - fixedPence, high: cost.high - fixedPence }),
  };
}

/**
 * How the two yearly costs move together [1, −1 to 1], read back from the three ranges:
 * (σa² + σb² − σs²) / (2 σa σb), each σ as the width of its range, a the heat pump, b the other, s the saving b − a.
 */
export function costsTogether(pump: Range, beside: Range, saving: Range): number {
  const [a, b, s] = [pump, beside, saving].map(({ low, high }) => high - low) as [number, number, number];
  if (!(a > 0) || !(b > 0)) return 0;
  return Math.max(-1, Math.min(1, (a * a + b * b - s * s) / (2 * a * b)));
}

/** Running cost of each year [pence, from year 1], written into `byYear`: units × (1 + growth)^(year − 1) + fixed. */
export function costByYear(
  cost: RunningCost,
  growth: { readonly electricity: number; readonly fuel: number },
  unitsShare: number,
  byYear: Float64Array,
): void {
  let electricity = cost.electricityPence * unitsShare;
  let fuel = cost.fuelPence * unitsShare;
  for (let year = 0; year < byYear.length; year++) {
    byYear[year] = electricity + fuel + cost.fixedPence;
    electricity *= 1 + growth.electricity;
    fuel *= 1 + growth.fuel;
  }
}
