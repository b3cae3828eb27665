/** Energy of one use on one set of price bands, and sums over several. */
import type { BandShares } from './share-out.ts';

export interface Rates {
  readonly names: readonly string[];
  /** Unit prices after any what-if, VAT included. */
  readonly pencePerKWh: readonly number[];
  /** Electricity beside a fuel. */
  readonly beside: boolean;
}

export interface Use {
  readonly kWh: number;
  readonly shares: BandShares;
  readonly rates: Rates;
}

/** Energy bought in one band, kWh a year. */
export interface Rate {
  readonly name: string;
  readonly kWh: number;
  readonly pencePerKWh: number;
  readonly beside: boolean;
}

/** Mean price of a use over its own hours [p/kWh]. */
const priceOf = ({ shares, rates }: Use) =>
  rates.pencePerKWh.reduce((sum, pence, band) => sum + pence * shares.byBand[band]!, 0);

const priceOfMonth = ({ shares, rates }: Use, month: number) =>
  rates.pencePerKWh.reduce((sum, pence, band) => sum + pence * shares.byMonthBand[month * shares.bands + band]!, 0);

const overMonths = (uses: readonly Use[], value: (use: Use, month: number) => number) =>
  Array.from({ length: 12 }, (_, month) => uses.reduce((sum, use) => sum + (use.kWh === 0 ? 0 : value(use, month)), 0));

/** Energy [kWh] and unit cost [pence] of the uses by month. */
export const monthsOf = (uses: readonly Use[]) => ({
  boughtKWh: overMonths(uses, (use, month) => use.kWh * use.shares.byMonth[month]!),
  unitsPence: overMonths(uses, (use, month) => use.kWh * priceOfMonth(use, month)),
});

/** Energy [kWh] and unit cost [pence] of the uses over the year. */
export function totalOf(uses: readonly Use[]): { kWh: number; pence: number } {
  let kWh = 0;
  let pence = 0;
  for (const use of uses) {
    kWh += use.kWh;
    pence += use.kWh * priceOf(use);
  }
  return { kWh, pence };
}

/** Mean unit price of the uses [p/kWh]; that of the first where nothing is used. */
export function meanPrice(uses: readonly Use[]): number {
  const { kWh, pence } = totalOf(uses);
  return kWh > 0 ? pence / kWh : priceOf(uses[0]!);
}

/** Energy by price band over all uses. */
export function ratesOf(uses: readonly Use[]): Rate[] {
  const list = new Map<string, Rate>();
  for (const { kWh, shares, rates } of uses) {
    if (!(kWh > 0)) continue;
    rates.names.forEach((name, band) => {
      const before = list.get(name)?.kWh ?? 0;
      const pencePerKWh = rates.pencePerKWh[band]!;
      list.set(name, { name, kWh: before + kWh * shares.byBand[band]!, pencePerKWh, beside: rates.beside });
    });
  }
  return [...list.values()];
}
