/** Price on the bill against the estimated one, and the hours at which the units were bought. */
import type { SystemResult } from '../shapes/appraisal.ts';
import type { BillCheckInput } from '../shapes/bill-check.ts';
import { tell, type Wording } from '../shapes/told.ts';
import type { Grade } from '../shapes/working.ts';
import { type CostState, type Lever, workingLine as line } from './cost-state.ts';
import type { EstimateForDays } from './estimate-for-days.ts';

export interface PriceSides {
  readonly from: Pick<CostState, 'pencePerKWh' | 'rateShares'> & Partial<Pick<CostState, 'priceShare'>>;
  readonly levers: readonly Lever[];
}

/** Mean price [p/kWh] of the bill's days: at the hours of the estimate, and at those of the bill where they are known. */
export interface MeanPrice {
  readonly estimated: number;
  readonly used?: number;
}

/** The tariff before had it been kept, and what was paid for in its stead: the tariff before until the change, the other from then on. */
export interface ChangedTariff {
  readonly before: MeanPrice;
  readonly after: MeanPrice;
  readonly grade: Grade;
}

/** A meter shows no less; below it a charge has no price a unit. */
const LEAST_METERED_KWH = 0.001;

/** What the bill charges for its units [pence]. */
export const unitsPenceOf = ({ totalPence, boughtKWh, pencePerKWh }: BillCheckInput): number =>
  totalPence ?? boughtKWh * pencePerKWh;

/** Price [p/kWh] that the bill comes to: what it charges for its units over the units. */
export function priceOf(bill: BillCheckInput, unitsPence = unitsPenceOf(bill)): number {
  return bill.boughtKWh >= LEAST_METERED_KWH ? unitsPence / bill.boughtKWh : bill.pencePerKWh;
}

/**
 * Levers of price [p/kWh] and of the time of use. With units by price on both sides under the same names, the two
 * separate: prices change at the estimated shares, shares at either price. Else they are one lever, joined where the
 * estimate or the bill has several prices. A total that is not units × price moves the price, since units were metered.
 * Another tariff is a lever of its own.
 */
export function priceLevers(
  bill: BillCheckInput,
  estimated: EstimateForDays,
  rates: SystemResult['rates'],
  unitsPence: number,
  changed: ChangedTariff | null = null,
): PriceSides {
  const estimatedKWh = estimated.spaceKWh + estimated.otherKWh;
  const billPrice = priceOf(bill, unitsPence);
  const estimatedPrice = estimatedKWh > 0 ? estimated.pence / estimatedKWh : billPrice;
  const matched = changed ? null : matchRates(bill, rates, estimatedPrice, billPrice);
  if (matched) return matched;
  const several = (prices: readonly { readonly pencePerKWh: number }[]) =>
    new Set(prices.map(({ pencePerKWh }) => pencePerKWh)).size > 1;
  const mixedEstimate = several(rates.filter(({ kWh }) => kWh > 0));
  if (changed) return changedLevers(bill, changed, { estimatedPrice, billPrice, mixed: mixedEstimate });
  const mixed = mixedEstimate || several(bill.ratesKWh ?? []);
  const origin =
    bill.priceTariff === undefined
      ? tell(bill.totalPence === undefined ? 'the-bill' : 'bill-by-units')
      : tell('price-of-tariff', { tariff: bill.priceTariff });
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

/**
 * Levers where another tariff was taken: the level of prices at the tariff before, the change from it to the other at given
 * hours, and the hours at given prices. Where what the tariff before would have cost at the bill's own hours is not known,
 * the hours stay with the price; what only the bill says is then the change's with its hours.
 */
function changedLevers(
  bill: BillCheckInput,
  { before, after: { estimated: afterPrice, used: usedAfter }, grade }: ChangedTariff,
  {
    estimatedPrice,
    billPrice,
    mixed,
  }: { readonly estimatedPrice: number; readonly billPrice: number; readonly mixed: boolean },
): PriceSides {
  // The bill's own price has its hours in it.
  const after = { estimated: afterPrice, used: usedAfter ?? billPrice };
  const apart = before.used !== undefined;
  const rows = ({ estimated, used = estimated }: MeanPrice) => (apart ? [estimated, used] : [estimated]);
  const joined = !apart && mixed;
  const same = apart && before.used === before.estimated && after.used === after.estimated;
  const hours: Lever = {
    cause: 'when',
    to: { rateShares: [0, 1] },
    grade,
    title: tell('hours-of-use'),
    inputs: [
      line(tell('price-at-hours-of-estimate'), after.estimated, 'p/kWh', grade, tell('estimate-for-days')),
      line(tell('price-at-hours-of-bill'), after.used, 'p/kWh', grade, tell('the-bill')),
    ],
  };
  return {
    from: {
      pencePerKWh: rows(before),
      rateShares: apart ? [1, 0] : [1],
      priceShare: before.estimated > 0 ? estimatedPrice / before.estimated : 1,
    },
    levers: [
      {
        cause: 'price',
        ...(joined ? { joined: ['price', 'when'] as const } : {}),
        to: { priceShare: billPrice / (rows(after).at(-1) || billPrice) },
        grade,
        title: tell(joined ? 'unit-price-and-hours' : 'unit-price'),
        inputs: [
          line(tell('price-estimated'), estimatedPrice, 'p/kWh', 'measured', tell('estimate-mean')),
          line(tell('price-kept'), before.estimated, 'p/kWh', grade, tell('tariff-before')),
        ],
      },
      {
        cause: 'tariff',
        to: { pencePerKWh: rows(after) },
        grade,
        title: tell('tariff-changed', { day: { on: bill.tariffChange!.on } }),
        inputs: [
          line(tell('price-kept'), rows(before).at(-1)!, 'p/kWh', grade, tell('tariff-before')),
          line(tell('price-changed'), rows(after).at(-1)!, 'p/kWh', grade, tell('tariff-taken')),
        ],
      },
      ...(apart && !same ? [hours] : []),
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
