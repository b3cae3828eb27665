/** The price of every half-hour of a week, as one version of a tariff has it. */
import { bandAt } from '../../model/tariff/band-times.ts';
import { inclVat } from '../../model/tariff/price.ts';
import type { TariffVersion } from '../../model/tariff/tariff.ts';

export interface WeekPrices {
  /** 336 half-hours from Monday midnight on, and one entry past the end so that the last step has its width. */
  readonly steps: readonly { readonly half: number; readonly pence: number | null; readonly band: string }[];
  /** Bands met in the week, cheapest first, with the share of the week each holds. */
  readonly bands: readonly { readonly name: string; readonly pence: number; readonly share: number }[];
  /** 1 to 12. */
  readonly month: number;
}

export const HALVES_A_DAY = 48;
const HALVES_A_WEEK = 7 * HALVES_A_DAY;

/** A week in the month given (1 to 12), prices with VAT; a half-hour without a price stays a gap. */
export function weekPricesSeries(version: TariffVersion, month: number): WeekPrices {
  const counts = new Map<number, number>();
  const steps = Array.from({ length: HALVES_A_WEEK }, (_, half) => {
    const index = bandAt(version, month, Math.floor(half / HALVES_A_DAY), (half % HALVES_A_DAY) * 30);
    const band = version.bands[index];
    if (!band) return { half, pence: null, band: '' };
    counts.set(index, (counts.get(index) ?? 0) + 1);
    return { half, pence: inclVat(version, band.pencePerKWh), band: band.name };
  });
  const last = steps.at(-1)!;
  const bands = [...counts].map(([index, count]) => ({
    name: version.bands[index]!.name,
    pence: inclVat(version, version.bands[index]!.pencePerKWh),
    share: count / HALVES_A_WEEK,
  }));
  return {
    steps: [...steps, { ...last, half: HALVES_A_WEEK }],
    bands: bands.sort((a, b) => a.pence - b.pence),
    month,
  };
}
