/** Signs and words of a money, as they stand in a heading or beside an amount. */

export type Money = '£' | '€' | 'other';

const MONEY: readonly (readonly [RegExp, Money])[] = [
  [/£|(?<![a-z])(gbp|pence|pounds?)(?![a-z])/, '£'],
  [/€|(?<![a-z])(eur|euros?)(?![a-z])/, '€'],
  [/\$|(?<![a-z])(usd|chf|sfr|fr\.|dkk|sek|nok|kr|pln|zl|czk|kc)(?![a-z])/, 'other'],
];

/** Every money that words in small letters name. */
export const moneysIn = (words: string): Money[] =>
  MONEY.filter(([pattern]) => pattern.test(words)).map(([, money]) => money);
