/** Prices and shares of use that a made promise holds for the days of its bill. */
import type { GapCase } from './gap-case.ts';

/** Of two rates the share follows from the promise's mean price of these days. */
export function promisedRatesFor({ tariff, promised }: GapCase): { prices: number[]; shares: number[] } {
  const prices = tariff.versions[0]!.bands.map(({ pencePerKWh }) => pencePerKWh);
  if (prices.length === 1) return { prices, shares: [1] };
  const mean = promised.pence / (promised.spaceKWh + promised.otherKWh);
  const night = (prices[1]! - mean) / (prices[1]! - prices[0]!);
  return { prices, shares: [night, 1 - night] };
}
