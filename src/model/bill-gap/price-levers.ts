/** Price on the bill against the estimated one, and the hours at which the units were bought. */
import type { SystemResult } from '../shapes/appraisal.ts';
import type { BillCheckInput } from '../shapes/bill-check.ts';
import { tell, type Wording } from '../shapes/told.ts';
import { type CostState, type Lever, workingLine as line } from './cost-state.ts';
import type { EstimateForDays } from './estimate-for-days.ts';

export interface PriceSides {
  readonly from: Pick<CostState, 'pencePerKWh' | 'rateShares'>;
  readonly levers: readonly Lever[];
}

/** A meter shows no less; below it a charge has no price a unit. */
const LEAST_METERED_KWH = 0.001;

/** Price [p/kWh] that the bill comes to: what it charges for its units over the units. */
export function priceOf(bill: BillCheckInput, unitsPence: number): number {
  return bill.boughtKWh >= LEAST_METERED_KWH ? unitsPence / bill.boughtKWh : bill.pencePerKWh;
}

/**
 * Levers of price [p/kWh] and of the time of use. With units by price on both sides under the same names, the two
 * separate: prices change at the estimated shares, shares at either price. Else they are one lever, joined where the
 * estimate or the bill has several prices. A total that is not units × price moves the price, since units were metered.
 */
export function priceLevers(
  bill: BillCheckInput,
  estimated: EstimateForDays,
  rates: SystemResult['rates'],
  unitsPence: number,
): PriceSides {
  const estimatedKWh = estimated.spaceKWh + estimated.otherKWh;
  const billPrice = priceOf(bill, unitsPence);
  const estimatedPrice = estimatedKWh > 0 ? estimated.pence / estimatedKWh : billPrice;
  const matched = matchRates(bill, rates, estimatedPrice, billPrice);
  if (matched) return matched;
  const several = (prices: readonly { readonly pencePerKWh: number }[]) =>
    new Set(prices.map(({ pencePerKWh }) => pencePerKWh)).size > 1;
  const mixed = several(rates.filter(({ kWh }) => kWh > 0)) || several(bill.ratesKWh ?? []);
  const origin = tell(bill.totalPence === undefined ? 'the-bill' : 'bill-by-units');
  return {
    from: { pencePerKWh: [estimatedPrice], rateShares: [1] },
    levers: [
      {
        cause: 'price',
        ...(mixed ? { joined: ['price', 'when'] } : {}),
        to: { pencePerKWh: [billPrice] },
        grade: 'measured',
        title: tell(mixed ? 'unit-price-and-hours' : 'unit-price'),
        inputs: [
          line(tell('price-estimated'), estimatedPrice, 'p/kWh', 'measured', tell('estimate-mean')),
          line(tell('price-on-bill'), billPrice, 'p/kWh', 'measured', origin),
        ],
      },
    ],
  };
}

/** A written estimate has the fuel before a band's name, in old ones as text, "electricity, night"; a bill writes "Night". */
const plainName = (name: Wording): string =>
  typeof name === 'string'
    ? name
        .trim()
        .toLowerCase()
        .replace(/^electricity,\s*/, '')
    : name.code === 'rate-at'
      ? plainName(name.data!.when as Wording)
      : name.code;

/** Prices and shares of both sides by name; null where the names are not the same or there is one price only. */
function matchRates(
  bill: BillCheckInput,
  rates: SystemResult['rates'],
  estimatedPrice: number,
  billPrice: number,
): PriceSides | null {
  const billed = bill.ratesKWh ?? [];
  const billedKWh = billed.reduce((sum, { kWh }) => sum + kWh, 0);
  const place = new Map(rates.map(({ name }, i) => [plainName(name), i]));
  const isSame =
    billed.length > 1 &&
    billed.length === rates.length &&
    new Set(billed.map(({ name }) => plainName(name))).size === rates.length;
  if (!isSame || !(billedKWh > 0) || !billed.every(({ name }) => place.has(plainName(name)))) return null;
  const shares = new Array<number>(rates.length).fill(0);
  const prices = new Array<number>(rates.length).fill(0);
  for (const { name, kWh, pencePerKWh } of billed) {
    shares[place.get(plainName(name))!] = kWh / billedKWh;
    prices[place.get(plainName(name))!] = pencePerKWh;
  }
  const from = estimatedRates(rates, estimatedPrice);
  const to = scaleTo(prices, shares, billPrice);
  if (!from || !to) return null;
  const names = rates.map(({ name }) => name);
  return {
    from: { pencePerKWh: from.prices, rateShares: from.shares },
    levers: [
      {
        cause: 'price',
        to: { pencePerKWh: to },
        grade: 'measured',
        title: tell('unit-price'),
        inputs: names.flatMap((name, i) => [
          line(tell('price-estimated-at', { name }), from.prices[i]!, 'p/kWh', 'measured', tell('the-estimate')),
          line(tell('price-on-bill-at', { name }), to[i]!, 'p/kWh', 'measured', tell('the-bill')),
        ]),
      },
      {
        cause: 'when',
        to: { rateShares: shares },
        grade: 'estimated',
        title: tell('hours-of-use'),
        inputs: names.flatMap((name, i) => [
          line(tell('share-estimated-at', { name }), from.shares[i]!, '', 'estimated', tell('estimate-for-days')),
          line(tell('share-on-bill-at', { name }), shares[i]!, '', 'measured', tell('units-by-price')),
        ]),
      },
    ],
  };
}

/**
 * Estimated prices and shares for the days of the bill. An estimate keeps its shares for the year and its mean price for
 * each month: with two prices the mean gives the share; with more the year's shares stand and the prices are scaled.
 */
function estimatedRates(rates: SystemResult['rates'], meanPrice: number) {
  const yearKWh = rates.reduce((sum, { kWh }) => sum + kWh, 0);
  if (!(yearKWh > 0)) return null;
  const prices = rates.map(({ pencePerKWh }) => pencePerKWh);
  const [first, second] = prices;
  if (prices.length === 2 && first !== second) {
    const exact = (meanPrice - second!) / (first! - second!);
    const share = Math.min(1, Math.max(0, exact));
    // A month at one of the two prices alone misses its end by a rounding error.
    if (Math.abs(share - exact) < 1e-9) return { prices, shares: [share, 1 - share] };
  }
  const shares = rates.map(({ kWh }) => kWh / yearKWh);
  const scaled = scaleTo(prices, shares, meanPrice);
  return scaled && { prices: scaled, shares };
}

/** Prices multiplied so that their mean at these shares is `meanPrice`; null where they have no positive mean. */
function scaleTo(prices: readonly number[], shares: readonly number[], meanPrice: number): number[] | null {
  const mean = prices.reduce((sum, price, i) => sum + price * shares[i]!, 0);
  return mean > 0 ? prices.map((price) => (price * meanPrice) / mean) : null;
}
