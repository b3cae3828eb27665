/** Which prices the sums rest on, from when, and whether they are old. */
import type { Appraisal } from '../model/appraisal/appraisal.ts';
import { counted, monthSpan, pence } from './numbers.ts';
import { carrierName } from './systems.ts';

type Prices = Appraisal['prices'];
type Basis = Prices['electricity'];

/** "Electricity is reckoned at 26.3 p a unit and gas at 8.0 p, at the prices of October to December 2026." */
export function pricesSentence(prices: Prices, fuel: 'gas' | 'oil' | 'lpg' | null): string {
  const electricity = `Electricity is reckoned at ${pence(prices.electricityPencePerKWh)} a unit`;
  const other = { gas: prices.gasPencePerKWh, oil: prices.oilPencePerKWh, lpg: prices.lpgPencePerKWh };
  const beside = fuel === null ? '' : ` and ${carrierName(fuel)} at ${pence(other[fuel])}`;
  return `${electricity}${beside}. ${datesSentence(prices.electricity)}`;
}

/** "These are prices of October to December 2026." */
export function datesSentence({ from, to }: Pick<Basis, 'from' | 'to'>): string {
  return to === undefined
    ? `These prices hold from ${monthSpan(from, from)} on.`
    : `These are prices of ${monthSpan(from, to)}.`;
}

/** Short, for a foot line: "prices of October to December 2026". */
export function datesInShort({ from, to }: Pick<Basis, 'from' | 'to'>): string {
  return to === undefined ? `prices from ${monthSpan(from, from)} on` : `prices of ${monthSpan(from, to)}`;
}

/** How old prices are, when they are older than a quarter; else nothing. */
export function ageSentence(basis: Pick<Basis, 'staleDays'>, carrier: string): string {
  if (basis.staleDays === undefined) return '';
  return `The ${carrierName(carrier)} prices ended ${counted(basis.staleDays, 'day')} ago. Put in today’s before you promise anything.`;
}

export function gradeSentence({ grade, origin }: Pick<Basis, 'grade' | 'origin'>, carrier: string): string {
  if (grade !== 'assumed') return `The ${carrierName(carrier)} price comes from ${origin}.`;
  return `Nobody has given the ${carrierName(carrier)} price, so a published one stands in. Its source is named in the working.`;
}

/** Electricity over the other fuel, now and where both would cost the same. */
export function ratioSentence(now: number | null, even: number | null, fuel: string): string {
  if (now === null || !Number.isFinite(now)) return '';
  const first = `A unit of electricity costs ${now.toFixed(1)} times as much as a unit of ${carrierName(fuel)}.`;
  if (even === null || !Number.isFinite(even)) return first;
  return `${first} At ${even.toFixed(1)} times, a unit of heat would cost the same from both.`;
}
