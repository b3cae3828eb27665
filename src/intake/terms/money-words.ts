/** Signs and words of a money, as they stand in a heading or beside an amount. */

import { type Told, tell } from '../../model/shapes/told.ts';

export type Money = '£' | '€' | 'other';

const MONEY: readonly (readonly [RegExp, Money])[] = [
  [/£|(?<![a-z])(gbp|pence|pounds?)(?![a-z])/, '£'],
  [/€|(?<![a-z])(eur|euros?)(?![a-z])/, '€'],
  [/\$|(?<![a-z])(usd|chf|sfr|fr\.|dkk|sek|nok|kr|pln|zl|czk|kc)(?![a-z])/, 'other'],
];

/** Every money that words in small letters name. */
export const moneysIn = (words: string): Money[] =>
  MONEY.filter(([pattern]) => pattern.test(words)).map(([, money]) => money);

/** What it and a hundredth of it are called. */
export const UNITS_OF: Readonly<Record<Money, readonly [main: string, hundredth: string]>> = {
  '£': ['£', 'p'],
  '€': ['€', 'ct'],
  other: ['whole units of its currency', 'hundredths of its currency'],
};

/** An amount of it as it is said; small ones in hundredths. */
export function tellMoney(amount: number, money: Money): Told {
  if (money === 'other') return tell('figure', { figure: amount });
  if (Math.abs(amount) < 1) return tell('so-much-of', { amount: amount * 100, unit: UNITS_OF[money][1] });
  return tell(money === '€' ? 'so-many-euros' : 'so-many-pounds', { amount });
}
