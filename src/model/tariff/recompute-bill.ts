/** A bill worked out again, line by line, with a price change in the middle if there was one. */
import { daysBetween } from '../calendar/civil.ts';
import type { CivilDate } from '../shapes/dates.ts';
import type { Tariff } from '../shapes/tariff.ts';
import { roundToPenny } from '../units/money.ts';
import { type BillLine, linesOf } from './bill-lines.ts';
import { type BillSpan, type BillUse, cutByVersion } from './bill-use.ts';
import { type SpanUse, sumReadings } from './span-use.ts';

export type { BillLine } from './bill-lines.ts';

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
 * A threshold or charge by the month counts for the part of each calendar month that the bill covers; units in total
 * are taken to be alike on all days. What is paid for export is taken off without VAT.
 * Throws RangeError for an empty span, a band the tariff does not have, a total over a tariff with several bands, and
 * for dated prices or a measured demand charge without half-hourly readings.
 */
export function recomputeBill(input: {
  readonly tariff: Tariff;
  readonly from: CivilDate;
  readonly to: CivilDate;
  readonly zone: string;
  readonly use: BillUse;
  /** Sent back to the grid over the days of the bill. */
  readonly exportKWh?: number;
}): RecomputedBill {
  const { tariff, from, to, zone, use } = input;
  const days = daysBetween(from, to);
  if (days <= 0) throw new RangeError(`a bill from ${from} to ${to} has no days`);
  const spans = cutByVersion(tariff, from, to);
  const uses = spans.map((span) => useOf(use, span, span.days / days, zone));
  const exported = (span: BillSpan) => exportLines(span, ((input.exportKWh ?? 0) * span.days) / days);
  const lines = spans.flatMap((span, i) => [...linesOf(span, uses[i]!), ...exported(span)]);
  return {
    lines,
    ...totals(spans, lines),
    sharedBy: use.kind !== 'half-hours' && spans.length > 1 ? 'days' : 'readings',
    missingSlots: uses.reduce((sum, { missingSlots }) => sum + missingSlots, 0),
  };
}

function useOf(use: BillUse, span: BillSpan, share: number, zone: string): SpanUse {
  const { bands, series } = span.version;
  if (use.kind === 'half-hours') return sumReadings(use.readings, span, zone);
  if (series) throw new RangeError('dated half-hourly prices need half-hourly readings');
  if (use.kind === 'total') {
    if (bands.length > 1) throw new RangeError('units in total cannot be priced on a tariff with several bands');
    return { kWh: [use.kWh * share], missingSlots: 0 };
  }
  const unknown = Object.keys(use.kWhByBand).find((name) => !bands.some((band) => band.name === name));
  if (unknown !== undefined) throw new RangeError(`the tariff has no band named ${unknown} from ${span.from}`);
  return { kWh: bands.map(({ name }) => (use.kWhByBand[name] ?? 0) * share), missingSlots: 0 };
}

function exportLines({ version, from, to }: BillSpan, kWh: number): BillLine[] {
  const price = version.exportPencePerKWh;
  if (price === undefined || kWh === 0) return [];
  const pence = -roundToPenny(kWh * price);
  return [{ kind: 'export', name: 'sent to the grid', from, to, quantity: kWh, unit: 'kWh', price, pence }];
}

function totals(spans: readonly BillSpan[], lines: readonly BillLine[]) {
  const sumByRule = new Map<string, { rate: number; included: boolean; pence: number }>();
  for (const { version, from, to } of spans) {
    const key = `${version.vat.rate} ${version.vat.included}`;
    const rule = sumByRule.get(key) ?? { ...version.vat, pence: 0 };
    for (const line of lines) if (isOf(line, from, to) && line.kind !== 'export') rule.pence += line.pence;
    sumByRule.set(key, rule);
  }
  let netPence = 0;
  let vatPence = 0;
  for (const { rate, included, pence } of sumByRule.values()) {
    const vat = roundToPenny(included ? (pence * rate) / (1 + rate) : pence * rate);
    vatPence += vat;
    netPence += included ? pence - vat : pence;
  }
  for (const line of lines) if (line.kind === 'export') netPence += line.pence;
  return { netPence, vatPence, totalPence: netPence + vatPence };
}

const isOf = (line: BillLine, from: CivilDate, to: CivilDate) => line.from >= from && line.from < to;
