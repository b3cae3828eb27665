import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { digits, moneyDigits, signOf } from '../../../src/words/digits.ts';
import { CURRENCIES, LANGUAGES, say } from '../../../src/words/say.ts';

/** Of every size up to a billion, and often halfway between two numbers that can be written. */
const sizes = fc.oneof(
  fc.double({ min: 0, max: 1e9, noNaN: true }),
  fc.double({ min: 0, max: 1, noNaN: true }),
  fc.tuple(fc.nat(20_000_000), fc.nat(7)).map(([whole, places]) => Number(`${whole}e-${places}`)),
);
const places = fc.nat(5);
const language = fc.constantFrom(...LANGUAGES);

describe('digits by hand, against those of ICU', () => {
  it('are the same of numbers', () => {
    fc.assert(
      fc.property(sizes, places, language, (size, decimals, spoken) => {
        const fraction = { minimumFractionDigits: decimals, maximumFractionDigits: decimals };
        expect(digits(size, decimals, spoken)).toBe(size.toLocaleString(spoken, fraction));
      }),
      { numRuns: 2000 },
    );
  });

  it('are the same of money', () => {
    fc.assert(
      fc.property(sizes, fc.nat(2), language, fc.constantFrom(...CURRENCIES), (size, decimals, spoken, money) => {
        const format = new Intl.NumberFormat(spoken, {
          style: 'currency',
          currency: money,
          currencyDisplay: 'narrowSymbol',
          minimumFractionDigits: decimals,
          maximumFractionDigits: decimals,
        });
        expect(moneyDigits(size, decimals, spoken, money)).toBe(format.format(size));
        expect(format.formatToParts(0).find(({ type }) => type === 'currency')?.value).toBe(signOf(money));
      }),
      { numRuns: 1000 },
    );
  });

  it.each([
    [0, '0 days'],
    [1, '1 day'],
    [-1234, '-1,234 days'],
    [12_345.678, '12,345.678 days'],
    [1_234_567, '1,234,567 days'],
  ])('a count of %d in a message', (count, said) => {
    expect(say('{count, plural, one {# day} other {# days}}', { count })).toBe(said);
    expect(say('{count, number} days', { count })).toBe(said.replace('day ', 'days ').replace(/day$/, 'days'));
  });
});
