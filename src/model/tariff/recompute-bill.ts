/** A bill worked out again, line by line, with a price change in the middle if there was one. */
import { daysBetween } from '../calendar/civil.ts';
import { roundToPenny } from '../units/money.ts';
import { type BillSpan, type BillUse, cutByVersion, type SpanUse, sumReadings } from './bill-use.ts';
import type { CivilDate, Tariff } from './tariff.ts';

export interface BillLine {
  readonly kind: 'units' | 'standing';
  /** Name of the band; for the standing charge the days. */
  readonly name: string;
  /** Exclusive end. */
  readonly from: CivilDate;
  readonly to: CivilDate;
  readonly quantity: number;
  readonly unit: 'kWh' | 'day';
  /** As the tariff states it, with or without VAT. */
  readonly price: number;
  /** Rounded to the penny, VAT as in `price`. */
  readonly pence: number;
}

export interface RecomputedBill {
  readonly lines: readonly BillLine[];
  readonly netPence: number;
  readonly vatPence: number;
  readonly totalPence: number;
  /** `days` where units had to be shared over a price change by days, since no reading was taken on that day. */
  readonly sharedBy: 'readings' | 'days';
  readonly missingSlots: number;
}

/**
 * Works a bill out again for the days from `from` to `to` (exclusive) [pence].
 * Each line is units × price, or days × standing charge, rounded to the penny, halves up. Prices without VAT: the lines
 * of one rate are summed and VAT on the sum is rounded to the penny. Prices with VAT: the total is the sum of the lines
 * and the VAT in it is total × rate / (1 + rate), rounded. Common practice, no source; a supplier that rounds unit
 * quantities or VAT otherwise differs by a penny or two a line.
 * Throws RangeError for an empty span, a band the tariff does not have, or a total over a tariff with several bands.
 */
export function recomputeBill(input: {
  readonly tariff: Tariff;
  readonly from: CivilDate;
  readonly to: CivilDate;
  readonly zone: string;
  readonly use: BillUse;
}): RecomputedBill {
  const { tariff, from, to, zone, use } = input;
  const days = daysBetween(from, to);
  if (days <= 0) throw new RangeError(`a bill from ${from} to ${to} has no days`);
  const spans = cutByVersion(tariff, from, to);
  const uses = spans.map((span) => useOf(use, span, span.days / days, zone));
  const lines = spans.flatMap((span, i) => linesOf(span, uses[i]!));
  return {
    lines,
    ...totals(spans, lines),
    sharedBy: use.kind !== 'half-hours' && spans.length > 1 ? 'days' : 'readings',
    missingSlots: uses.reduce((sum, { missingSlots }) => sum + missingSlots, 0),
  };
}

function useOf(use: BillUse, span: BillSpan, share: number, zone: string): SpanUse {
  const { bands } = span.version;
  if (use.kind === 'half-hours') return sumReadings(use.readings, span, zone);
  if (use.kind === 'total') {
    if (bands.length > 1) throw new RangeError('units in total cannot be priced on a tariff with several bands');
    return { kWh: [use.kWh * share], missingSlots: 0 };
  }
  const unknown = Object.keys(use.kWhByBand).find((name) => !bands.some((band) => band.name === name));
  if (unknown !== undefined) throw new RangeError(`the tariff has no band named ${unknown} from ${span.from}`);
  return { kWh: bands.map(({ name }) => (use.kWhByBand[name] ?? 0) * share), missingSlots: 0 };
}

function linesOf({ version, from, to, days }: BillSpan, { kWh }: SpanUse): BillLine[] {
  const units = version.bands.map(
    ({ name, pencePerKWh }, i): BillLine => ({
      kind: 'units',
      name,
      from,
      to,
      quantity: kWh[i]!,
      unit: 'kWh',
      price: pencePerKWh,
      pence: roundToPenny(kWh[i]! * pencePerKWh),
    }),
  );
  const price = version.standingPencePerDay;
  const pence = roundToPenny(days * price);
  return [...units, { kind: 'standing', name: `${days} days`, from, to, quantity: days, unit: 'day', price, pence }];
}

function totals(spans: readonly BillSpan[], lines: readonly BillLine[]) {
  const sumByRule = new Map<string, { rate: number; included: boolean; pence: number }>();
  for (const { version, from } of spans) {
    const key = `${version.vat.rate} ${version.vat.included}`;
    const rule = sumByRule.get(key) ?? { ...version.vat, pence: 0 };
    for (const line of lines) if (line.from === from) rule.pence += line.pence;
    sumByRule.set(key, rule);
  }
  let netPence = 0;
  let vatPence = 0;
  for (const { rate, included, pence } of sumByRule.values()) {
    const vat = roundToPenny(included ? (pence * rate) / (1 + rate) : pence * rate);
    vatPence += vat;
    netPence += included ? pence - vat : pence;
  }
  return { netPence, vatPence, totalPence: netPence + vatPence };
}
