import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formatPlain, readNumber, refuseNumber } from '../../../src/screens/shared/number-text.ts';

describe('numbers as they are typed', () => {
  test.each([
    ['4500', 4500],
    ['4,500', 4500],
    ['1,234,567.5', 1234567.5],
    ['4 500', 4500],
    ['£7.25', 7.25],
    ['.5', 0.5],
    ['−3', -3],
    ['-3', -3],
    ['  18 ', 18],
  ])('%j is %d', (text, value) => expect(readNumber(text)).toEqual({ kind: 'number', value }));

  test.each(['1,5', '1O.5', '12,34', '3.4.5', 'about 4', '--3', '1e5'])('%j is no number', (text) =>
    expect(readNumber(text).kind).toBe('not a number'),
  );

  test('what is shown is read back as it was', () =>
    fc.assert(
      fc.property(
        fc.integer({ min: -9_000_000, max: 9_000_000 }),
        fc.integer({ min: 0, max: 4 }),
        (whole, decimals) => {
          const value = whole / 10 ** decimals;
          expect(readNumber(formatPlain(value))).toEqual({ kind: 'number', value: Number(value.toFixed(6)) });
        },
      ),
    ));
});

describe('limits of a field', () => {
  const factor = { min: 1, max: 8, unit: '', why: 'No home has been measured above 8.' };
  const people = { min: 1, max: 30, whole: true, unit: '' };
  test.each([
    ['3.4', factor, null],
    ['', factor, null],
    ['0.9', factor, '0.9 is outside 1 to 8. No home has been measured above 8.'],
    ['9', factor, '9 is outside 1 to 8. No home has been measured above 8.'],
    ['2.5', people, '2.5 is not a whole number. A whole number from 1 to 30 is expected.'],
    ['x', people, '“x” is not a number. A number from 1 to 30 is expected.'],
    ['0', { min: 0.2, max: 200, unit: 'kW' }, '0 kW is outside 0.2 to 200 kW.'],
    ['111', { min: 20, max: 110, unit: '%' }, '111 % is outside 20 to 110 %.'],
  ])('%j', (text, limits, refusal) => expect(refuseNumber(readNumber(text), limits)).toBe(refusal));
});
