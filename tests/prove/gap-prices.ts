/** Prices and shares of use that a made written estimate holds for the days of its bill. */
import type { GapCase } from './gap-case.ts';

/** Of two rates the share follows from the written estimate's mean price of these days. */
export function estimatedRatesFor({ tariff, estimated }: GapCase): { prices: number[]; shares: number[] } {
  const prices = tariff.versions[0]!.bands.map(({ pencePerKWh }) => pencePerKWh);
  if (prices.length === 1) return { prices, shares: [1] };
  const mean = estimated.pence / (estimated.spaceKWh + estimated.otherKWh);
  const night = (prices[1]! - mean) / (prices[1]! - prices[0]!);
  return { prices, shares: [night, 1 - night] };
}
