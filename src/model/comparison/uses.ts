/** Energy of one use on one set of price bands, and sums over several. */
import type { Told } from '../shapes/told.ts';
import type { BandShares } from '../year/share-out.ts';

export interface Rates {
  /** What is bought at them, and that with the hours or the step of each. */
  readonly what: Told;
  readonly names: readonly Told[];
  /** Unit prices after any what-if, VAT included. */
  readonly pencePerKWh: readonly number[];
  /** Electricity beside a fuel. */
  readonly beside: boolean;
  /** What dated prices are multiplied by in a what-if; 1 where it is absent. */
  readonly times?: number;
}

export interface Use {
  readonly kWh: number;
  readonly shares: BandShares;
  readonly rates: Rates;
  /** Share of each day in its month, where the days are not alike: for steps by the day. */
  readonly dayShare?: Float64Array;
}

/** Energy bought in one band, kWh a year. */
export interface Rate {
  readonly name: Told;
  readonly kWh: number;
  readonly pencePerKWh: number;
  readonly beside: boolean;
}

/** Mean price of a use over its own hours [p/kWh]. */
const priceOf = (use: Use) => {
  const { shares, rates } = use;
  if (!shares.penceByMonthBand) return rates.pencePerKWh.reduce((sum, pence, i) => sum + pence * shares.byBand[i]!, 0);
  return rates.names.reduce((sum, _, band) => sum + datedPence(use, band), 0);
};

const priceOfMonth = ({ shares, rates }: Use, month: number) => {
  const at = month * shares.bands;
  const dated = shares.penceByMonthBand;
  if (!dated) return rates.pencePerKWh.reduce((sum, pence, i) => sum + pence * shares.byMonthBand[at + i]!, 0);
  return rates.names.reduce((sum, _, band) => sum + dated[at + band]!, 0) * (rates.times ?? 1);
};

/** Share × price of a class of dated prices over the year [p/kWh]. */
function datedPence({ shares, rates }: Use, band: number): number {
  let sum = 0;
  for (let month = 0; month < 12; month++) sum += shares.penceByMonthBand![month * shares.bands + band]!;
  return sum * (rates.times ?? 1);
}

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
  const lists = new Map<Rates, Rate[]>();
  for (const { kWh, shares, rates } of uses) {
    if (!(kWh > 0)) continue;
    const list = lists.get(rates) ?? [];
    lists.set(rates, list);
    rates.names.forEach((name, band) => {
      const before = list[band] ?? { kWh: 0, pencePerKWh: 0 };
      const sum = before.kWh + kWh * shares.byBand[band]!;
      // A class of dated prices has the mean price of what was bought in it.
      const pencePerKWh =
        shares.penceByMonthBand && sum > 0
          ? (before.kWh * before.pencePerKWh + kWh * datedPence({ kWh, shares, rates }, band)) / sum
          : rates.pencePerKWh[band]!;
      list[band] = { name, kWh: sum, pencePerKWh, beside: rates.beside };
    });
  }
  return [...lists.values()].flat();
}

/** What a band of prices took in one month (0 to 11): kWh, and its mean price [p/kWh]. */
export interface MonthRate extends Rate {
  readonly month: number;
}

/** Energy by month and price band over all uses; bands of which nothing was bought in a month are left out. */
export const ratesByMonth = (uses: readonly Use[]): MonthRate[] =>
  Array.from({ length: 12 }, (_, month) =>
    ratesOf(uses.map((use) => ({ ...use, shares: ofMonth(use.shares, month) })))
      .filter(({ kWh }) => kWh > 0)
      .map((rate) => ({ ...rate, month })),
  ).flat();

/** The shares of one month alone; they sum to its share of the year. */
function ofMonth({ bands, byMonthBand, byMonth, penceByMonthBand }: BandShares, month: number): BandShares {
  const only = (values: Float64Array) => values.map((value, at) => (Math.floor(at / bands) === month ? value : 0));
  return {
    bands,
    byMonthBand: only(byMonthBand),
    byMonth,
    byBand: byMonthBand.slice(month * bands, (month + 1) * bands),
    ...(penceByMonthBand ? { penceByMonthBand: only(penceByMonthBand) } : {}),
  };
}
