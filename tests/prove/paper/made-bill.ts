/** A bill in truth, before anybody lays it out: use, prices, days, VAT and what was paid. Integers of hundredths wherever money is. */

import type { Chance } from '../chance.ts';

/** A whole number from one to another, both of them among them. */
export const between = (chance: Chance, low: number, high: number): number =>
  low + Math.floor(chance.random() * (Math.floor(high) - low + 1));

export interface MadeCharge {
  readonly register: string;
  readonly kWh: number;
  /** Thousandths of a hundredth, so that products are exact: 30.4 p is 30,400. */
  readonly milliPence: number;
  readonly pence: number;
  /** Days since 1970; `to` exclusive. Set where the price changed inside the bill. */
  readonly from?: number;
  readonly to?: number;
}
export interface MadeStanding {
  readonly days: number;
  readonly milliPence: number;
  readonly pence: number;
  readonly from?: number;
  readonly to?: number;
}
export interface MadeReading {
  readonly register: string;
  readonly opening: number;
  readonly closing: number;
  readonly used: number;
  readonly openingKind: 'actual' | 'estimated';
  readonly closingKind: 'actual' | 'estimated';
}
export interface MadeSection {
  readonly fuel: 'electricity' | 'gas';
  readonly charges: readonly MadeCharge[];
  readonly standing: readonly MadeStanding[];
  readonly readings: readonly MadeReading[];
  readonly gas?: { readonly volume: number; readonly factor: number; readonly calorific: number };
  readonly discountPence: number;
  readonly netPence: number;
  readonly vatPence: number;
  readonly totalPence: number;
}
export interface MadeBill {
  readonly language: 'en' | 'de';
  readonly from: number;
  /** Exclusive. */
  readonly to: number;
  readonly vatPercent: number;
  readonly vatInside: boolean;
  readonly sections: readonly MadeSection[];
  readonly payments: { readonly count: number; readonly eachPence: number };
  readonly duePence: number;
}

const charge = (units: number, milliPence: number): number => Math.floor((units * milliPence + 500) / 1000);

export interface BillShape {
  readonly language: 'en' | 'de';
  readonly fuels: readonly ('electricity' | 'gas')[];
  readonly registers: 1 | 2 | 3;
  readonly priceChange: boolean;
  /** Charged to the hundredth of a kWh, printed whole. */
  readonly rounded: boolean;
  readonly discount: boolean;
  readonly vatInside: boolean;
  readonly rateDecimals: 2 | 3;
}

export function makeBill(shape: BillShape, chance: Chance): MadeBill {
  const year = shape.language === 'de' && chance.random() < 0.7;
  const from = between(chance, 19_700, 20_300);
  const to = from + (year ? chance.pick([365, 364, 366]) : between(chance, 27, 96));
  const vatPercent = shape.language === 'de' ? chance.pick([19, 7]) : chance.pick([5, 5, 5, 20]);
  const sections = shape.fuels.map((fuel) => makeSection(fuel, shape, { from, to, vatPercent }, chance));
  const total = sections.reduce((sum, one) => sum + one.totalPence, 0);
  const payments = { count: year ? 11 : between(chance, 1, 3), eachPence: between(chance, 20, 180) * 100 };
  return {
    language: shape.language,
    from,
    to,
    vatPercent,
    vatInside: shape.vatInside,
    sections,
    payments,
    duePence: total - payments.count * payments.eachPence,
  };
}

function makeSection(
  fuel: 'electricity' | 'gas',
  shape: BillShape,
  { from, to, vatPercent }: { from: number; to: number; vatPercent: number },
  chance: Chance,
): MadeSection {
  const days = to - from;
  const step = shape.rateDecimals === 2 ? 10 : 1;
  const price = (low: number, high: number) => between(chance, low / step, high / step) * step;
  const names =
    fuel === 'gas' || shape.registers === 1
      ? ['']
      : shape.registers === 2
        ? ['day', 'night']
        : ['day', 'night', 'evening'];
  const volume = between(chance, 40, 90) + Math.round((days * between(chance, 5, 45)) / 10);
  const gas =
    fuel === 'gas'
      ? shape.language === 'de'
        ? { volume, factor: between(chance, 9200, 9899) / 10_000, calorific: between(chance, 9801, 11_699) / 1000 }
        : { volume, factor: 1.02264, calorific: between(chance, 381, 409) / 10 }
      : undefined;
  const cut = shape.priceChange ? from + between(chance, 10, days - 10) : to;
  const spans = cut < to ? [[from, cut] as const, [cut, to] as const] : [[from, to] as const];
  const dated = spans.length > 1;
  const perName = names.map((register) => {
    const all = gas
      ? Math.round(gas.volume * gas.factor * gas.calorific * (shape.language === 'de' ? 1 : 1 / 3.6))
      : between(chance, 120, 400) + Math.round(days * between(chance, 1, 12));
    const first = dated ? Math.round((all * (cut - from)) / days) : all;
    return { register, all, parts: dated ? [first, all - first] : [all] };
  });
  const charges = perName.flatMap(({ register, parts }) =>
    parts.map((kWh, i): MadeCharge => {
      const milliPence =
        fuel === 'gas' ? price(5800, 12_900) : register === 'night' ? price(9000, 19_900) : price(21_000, 41_900);
      const span = dated ? { from: spans[i]![0], to: spans[i]![1] } : {};
      const charged = shape.rounded ? kWh + between(chance, -49, 49) / 100 : kWh;
      return { register, kWh, milliPence, pence: charge(charged, milliPence), ...span };
    }),
  );
  const standing = spans.map(([first, last]): MadeStanding => {
    const milliPence = price(26_000, 68_900);
    const span = dated ? { from: first, to: last } : {};
    return { days: last - first, milliPence, pence: charge(last - first, milliPence), ...span };
  });
  const readings = perName.map(({ register, all }): MadeReading => {
    const used = gas ? gas.volume : all;
    const opening = between(chance, 900, 78_000);
    const kind = () => (chance.random() < 0.3 ? ('estimated' as const) : ('actual' as const));
    return { register, opening, closing: opening + used, used, openingKind: kind(), closingKind: kind() };
  });
  const discountPence = shape.discount ? between(chance, 300, 2500) : 0;
  const sum = [...charges, ...standing].reduce((all, { pence }) => all + pence, 0) - discountPence;
  const vatPence = shape.vatInside
    ? Math.floor((sum * vatPercent * 2 + (100 + vatPercent)) / (2 * (100 + vatPercent)))
    : Math.floor((sum * vatPercent + 50) / 100);
  const netPence = shape.vatInside ? sum - vatPence : sum;
  return {
    fuel,
    charges,
    standing,
    readings,
    ...(gas ? { gas } : {}),
    discountPence,
    netPence,
    vatPence,
    totalPence: netPence + vatPence,
  };
}
