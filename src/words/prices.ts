/** Which prices the sums rest on, from when, and whether they are old. */
import { type Appraisal, type PriceBasis, priceOf } from '../model/shapes/appraisal.ts';
import { type Fuel, PRICED_CARRIERS } from '../model/shapes/heating.ts';
import { factor, listed, moneySign, monthSpan, pence } from './numbers.ts';
import { currency, say } from './say.ts';
import { sayTold } from './say-told.ts';
import { carrierName } from './systems.ts';

type Prices = Appraisal['prices'];

/** "Electricity is reckoned at 26.3 p a unit and gas at 8.0 p, at the prices of October to December 2026." */
export function pricesSentence(prices: Prices, fuel: Fuel | null): string {
  const other = fuel === null ? undefined : priceOf(prices, fuel);
  const price = pence(prices.electricityPencePerKWh);
  const reckoned =
    fuel === null || !other
      ? say('Electricity is reckoned at {price} a unit.', { price })
      : say('Electricity is reckoned at {price} a unit and {fuel} at {fuelPrice}.', {
          price,
          fuel: carrierName(fuel),
          fuelPrice: pence(other.pencePerKWh),
        });
  return `${reckoned} ${datesSentence(prices.electricity)}`;
}

/** "These are prices of October to December 2026." */
export function datesSentence({ from, to }: Pick<PriceBasis, 'from' | 'to'>): string {
  return to === undefined
    ? say('These prices hold from {month} on.', { month: monthSpan(from, from) })
    : say('These are prices of {months}.', { months: monthSpan(from, to) });
}

/** Short, for a foot line: "prices of October to December 2026". */
export function datesInShort({ from, to }: Pick<PriceBasis, 'from' | 'to'>): string {
  return to === undefined
    ? say('prices from {month} on', { month: monthSpan(from, from) })
    : say('prices of {months}', { months: monthSpan(from, to) });
}

/** How old prices are, when they are older than a quarter; else nothing. */
export function ageSentence(basis: Pick<PriceBasis, 'staleDays'>, carrier: string): string {
  if (basis.staleDays === undefined) return '';
  return say(
    'The {fuel} prices ended {days, plural, one {# day} other {# days}} ago. Put in today’s before you promise anything.',
    { fuel: carrierName(carrier), days: basis.staleDays },
  );
}

/** What is built in is British; with other money that is said as long as any of it is in use, else nothing. */
export function britishSentence(prices: Prices): string {
  const builtIn = PRICED_CARRIERS.filter((carrier) => priceOf(prices, carrier)?.basis.grade === 'assumed');
  if (currency() === 'GBP' || builtIn.length === 0) return '';
  return say(
    'The prices for {fuels} are British, with pounds written as {money}. Put in your own before you promise anything.',
    { fuels: listed(builtIn.map(carrierName)), money: moneySign() },
  );
}

export function gradeSentence({ grade, origin }: Pick<PriceBasis, 'grade' | 'origin'>, carrier: string): string {
  if (grade !== 'assumed')
    return say('The {fuel} price comes from {origin}.', { fuel: carrierName(carrier), origin: sayTold(origin) });
  return say('Nobody has given the {fuel} price, so a published one stands in. Its source is named in the working.', {
    fuel: carrierName(carrier),
  });
}

/** Electricity over the other fuel, now and where both would cost the same. */
export function ratioSentence(now: number | null, even: number | null, fuel: string): string {
  if (now === null || !Number.isFinite(now)) return '';
  const first = say('A unit of electricity costs {times} times as much as a unit of {fuel}.', {
    times: factor(now),
    fuel: carrierName(fuel),
  });
  if (even === null || !Number.isFinite(even)) return first;
  return `${first} ${say('At {times} times, a unit of heat would cost the same from both.', { times: factor(even) })}`;
}
