/** Which prices the sums rest on, from when, and whether they are old. */
import {
  type Appraisal,
  basisOf,
  isOpenPrice,
  type openPrices,
  type PriceBasis,
  type PriceKind,
  priceOf,
} from '../model/shapes/appraisal.ts';
import type { CivilDate } from '../model/shapes/dates.ts';
import type { Fuel, PricedCarrier } from '../model/shapes/heating.ts';
import { capitalised, factor, longDate, monthSpan, pence, shortMonthNames } from './numbers.ts';
import { phrase, say } from './say.ts';
import { type Shown, sayTold } from './say-told.ts';
import { carrierName } from './systems.ts';

type Prices = Appraisal['prices'];

/** "Electricity is reckoned at 26.3 p a unit and gas at 8.0 p, at the prices of October to December 2026." */
export function pricesSentence(prices: Prices, fuel: Fuel | null): string {
  const other = fuel === null ? undefined : priceOf(prices, fuel);
  const price = pence(prices.electricityPencePerKWh);
  const reckoned =
    fuel === null || !other
      ? say('Electricity is priced at {price} per kWh.', { price })
      : say('Electricity is priced at {price} per kWh and {fuel} at {fuelPrice}.', {
          price,
          fuel: carrierName(fuel),
          fuelPrice: pence(other.pencePerKWh),
        });
  return datesApart(prices, fuel) === '' ? `${reckoned} ${datesSentence(prices.electricity)}` : reckoned;
}

/** "Electricity: prices from January 2026 on. Gas: prices of October to December 2026."; nothing where both are of the same months. */
export function datesApart(prices: Prices, fuel: Fuel | null): string {
  const { electricity } = prices;
  const other = fuel === null ? undefined : priceOf(prices, fuel)?.basis;
  if (fuel === null || !other || datesInShort(other) === datesInShort(electricity)) return '';
  return say('Electricity: {prices}. {fuel}: {fuelPrices}.', {
    prices: datesInShort(electricity),
    fuel: capitalised(carrierName(fuel)),
    fuelPrices: datesInShort(other),
  });
}

/** "These are prices of October to December 2026." */
export function datesSentence({ from, to }: Pick<PriceBasis, 'from' | 'to'>): string {
  return to === undefined
    ? say('These prices are valid from {month} on.', { month: monthSpan(from, from) })
    : say('These are prices of {months}.', { months: monthSpan(from, to) });
}

/** What a price is called: a name that somebody gave a tariff stays as it was typed, in every language. */
export const nameOfPrice = ({ name, kind }: Pick<PriceBasis, 'name' | 'kind'>): Shown =>
  kind === 'own' ? nameOfTariff(name) : name;

/** A tariff's name: one that was typed stays as it is in every language. */
export const nameOfTariff = (name: PriceBasis['name']): Shown => (typeof name === 'string' ? { said: name } : name);

/** What a price is that has no days of its own, since it was typed or is nobody's; null where it has them. */
export const undatedInShort = ({ kind }: Pick<PriceBasis, 'kind'>): string | null =>
  kind === 'typed' || kind === 'assumed' ? say(KINDS[kind]) : null;

/** Short, for a foot line: "prices of October to December 2026". */
export function datesInShort(basis: Pick<PriceBasis, 'from' | 'to' | 'kind'>): string {
  const { from, to } = basis;
  const undated = undatedInShort(basis);
  if (undated !== null) return undated;
  return to === undefined
    ? say('prices from {month} on', { month: monthSpan(from, from) })
    : say('prices of {months}', { months: monthSpan(from, to) });
}

/** The same of all that is compared: each price with its own dates, where those differ. */
export function allDatesInShort(prices: Prices, fuel: Fuel | null): string {
  if (datesApart(prices, fuel) === '') return datesInShort(prices.electricity);
  return say('prices: electricity {months}, {fuel} {fuelMonths}', {
    months: whenInShort(prices.electricity),
    fuel: carrierName(fuel!),
    fuelMonths: whenInShort(priceOf(prices, fuel!)!.basis),
  });
}

const whenInShort = (basis: Pick<PriceBasis, 'from' | 'to' | 'kind'>): string =>
  undatedInShort(basis) ?? fromOrSpan(basis);

const fromOrSpan = ({ from, to }: Pick<PriceBasis, 'from' | 'to'>): string =>
  to === undefined ? say('from {month}', { month: monthsInShort(from, from) }) : monthsInShort(from, to);

/** How old prices are, when they are older than a quarter; else nothing. */
export function ageSentence(basis: Pick<PriceBasis, 'staleDays'>, carrier: string): string {
  if (basis.staleDays === undefined) return '';
  return say(
    'The {fuel} prices ended {days, plural, one {# day} other {# days}} ago. Type today’s prices before you give an estimate.',
    { fuel: carrierName(carrier), days: basis.staleDays },
  );
}

export function gradeSentence(basis: Pick<PriceBasis, 'grade' | 'origin' | 'kind'>, carrier: string): string {
  const { grade, kind } = basis;
  const known = { fuel: carrierName(carrier), origin: sayTold(basis.origin) };
  if (grade !== 'assumed' || kind === 'typed') return say('The {fuel} price comes from {origin}.', known);
  if (kind === 'own') return `${say('The {fuel} price comes from {origin}.', known)} ${partAssumedSentence(basis)}`;
  return say('Nobody has given the {fuel} price, so we use a published one. The working names its source.', {
    fuel: carrierName(carrier),
  });
}

/** Of a tariff of the household's own that is not known whole; else nothing. */
const partAssumedSentence = ({ grade, kind }: Pick<PriceBasis, 'grade' | 'kind'>): string =>
  grade === 'assumed' && kind === 'own' ? say('A part of it is assumed, such as the hours of a night rate.') : '';

/** "Oct–Dec 2026". */
function monthsInShort(from: CivilDate, to: CivilDate): string {
  const month = (date: CivilDate) => shortMonthNames()[Number(date.slice(5, 7)) - 1]!;
  const year = (date: CivilDate) => date.slice(0, 4);
  if (from.slice(0, 7) === to.slice(0, 7)) return `${month(from)} ${year(from)}`;
  return year(from) === year(to)
    ? `${month(from)}–${month(to)} ${year(to)}`
    : `${month(from)} ${year(from)}–${month(to)} ${year(to)}`;
}

const KINDS: { readonly [kind in PriceKind]: string } = {
  own: phrase('{months}, your own tariff'),
  typed: phrase('your own price'),
  cap: phrase('{months}, not your tariff'),
  average: phrase('{months}, not your tariff'),
  guide: phrase('{months}, guide page'),
  assumed: phrase('assumed price'),
};

/** Day and kind of a price, under the name of what is bought at it: "Jan 2026, guide page, old". */
export function priceInShort(basis: PriceBasis): string {
  const { kind, staleDays } = basis;
  const named = say(KINDS[kind ?? 'own'] ?? KINDS.own, { months: fromOrSpan(basis) });
  return staleDays === undefined ? named : say('{price}, old', { price: named });
}

/** Whether some way of heating shown is reckoned at a price that has ended, or at one that nobody publishes. */
const hasOpenPrice = ({ prices, systems }: Pick<Appraisal, 'prices' | 'systems'>): boolean =>
  systems.some((system) => {
    const found = basisOf(prices, system);
    return found !== undefined && isOpenPrice(found.basis);
  });

/** Head of a table of yearly costs. */
export const yearAtPrices = (appraisal: Pick<Appraisal, 'prices' | 'systems'>): string =>
  hasOpenPrice(appraisal) ? say('A year, at prices that are not all of today') : say('A year, at today’s prices');

/** What a price is for, as it stands inside a sentence. */
export const priceName = (price: PricedCarrier | 'two-rate'): string =>
  price === 'two-rate' ? say('electricity by day and night') : carrierName(price);

/** What has to be settled about a price before it goes into a written estimate. */
export function openPriceSentence({ price, basis }: ReturnType<typeof openPrices>[number]): string {
  const name = capitalised(priceName(price));
  return basis.staleDays === undefined
    ? say('{name}: nobody publishes this price; it is assumed.', { name })
    : say('{name}: the price is of {months} and ended {days, plural, one {# day} other {# days}} ago.', {
        name,
        months: monthSpan(basis.from, basis.to ?? basis.from),
        days: basis.staleDays,
      });
}

/** Somebody's word that a price stands, as it is printed; empty where nobody gave it. */
export function standsSentence({ stands }: Pick<PriceBasis, 'stands'>): string {
  if (!stands) return '';
  const on = say('It is used as assumed, as confirmed on {date}.', { date: longDate(stands.on) });
  return stands.said ? `${on} ${say('“{said}”', { said: stands.said })}` : on;
}

/** What a paper says of a price beside its days: that they had ended, and that somebody let it stand; none where neither. */
export const priceNotes = (basis: Pick<PriceBasis, 'staleDays' | 'stands' | 'grade' | 'kind'>): string[] =>
  [
    partAssumedSentence(basis),
    basis.staleDays
      ? say('They had ended {days, plural, one {# day} other {# days}} before this paper was made.', {
          days: basis.staleDays,
        })
      : '',
    standsSentence(basis),
  ].filter((note) => note !== '');

/** Electricity over the other fuel, now and where both would cost the same. */
export function ratioSentence(now: number | null, even: number | null, fuel: string): string {
  if (now === null || !Number.isFinite(now)) return '';
  const first = say('A kWh of electricity costs {times} times as much as a kWh of {fuel}.', {
    times: factor(now),
    fuel: carrierName(fuel),
  });
  if (even === null || !Number.isFinite(even)) return first;
  return `${first} ${say('At {times} times, heat would cost the same from both.', { times: factor(even) })}`;
}
