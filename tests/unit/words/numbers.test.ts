import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import * as words from '../../../src/words/numbers.ts';

describe('money in speech', () => {
  test.each([
    [0, '£0'],
    [-0, '£0'],
    [-20, '£0'],
    [40, '£0'],
    [50, '£1'],
    [7549, '£75'],
    [9_940, '£99'],
    [9_960, '£100'],
    [119_412, '£1,190'],
    [-119_412, '−£1,190'],
    [123_456_789, '£1,234,570'],
    [Number.NaN, 'an unknown amount'],
    [Infinity, 'an unknown amount'],
  ])('%d pence is %s', (pence, said) => expect(words.spokenPounds(pence)).toBe(said));

  test.each([
    [119_412, '£1,194'],
    [-49, '£0'],
    [Number.NaN, 'not known'],
  ])('%d pence stands in a table as %s', (pence, said) => expect(words.exactPounds(pence)).toBe(said));

  test('the penny and the sign', () => {
    expect(words.poundsAndPence(119_435)).toBe('£1,194.35');
    expect(words.poundsAndPence(-0.4)).toBe('£0.00');
    expect([5_800, -1_300, 0, 20].map((one) => words.signedPounds(one))).toEqual(['+£58', '−£13', '£0', '£0']);
  });

  test.each([
    [104_000, 140_000, '£1,040 to £1,400'],
    [140_000, 104_000, '£1,040 to £1,400'],
    [100_100, 100_200, '£1,000'],
    [-5_000, 5_000, '−£50 to £50'],
    [Number.NaN, 5, 'an unknown amount'],
  ])('%d to %d pence is %s', (low, high, said) => expect(words.poundsRange(low, high)).toBe(said));

  test('never a minus nought, and within £5 of what it stands for', () => {
    fc.assert(
      fc.property(fc.double({ min: -1e9, max: 1e9, noNaN: true }), (pence) => {
        const said = words.spokenPounds(pence);
        expect(said).not.toMatch(/−£0$/);
        const value = Number(said.replace('−', '-').replace('£', '').replaceAll(',', ''));
        expect(Math.abs(value * 100 - pence)).toBeLessThanOrEqual(500.001);
      }),
    );
  });
});

describe('energy, prices, shares', () => {
  test.each([
    [13_874, '13,900 kWh'],
    [4_036, '4,040 kWh'],
    [1, '1 kWh'],
    [0.2, '0 kWh'],
    [247, '250 kWh'],
    [999.6, '1,000 kWh'],
    [123_456, '123,000 kWh'],
    [Number.NaN, 'an unknown number of kWh'],
  ])('%d kWh is %s', (kWh, said) => expect(words.spokenKWh(kWh)).toBe(said));

  test('small figures', () => {
    expect(words.pence(26.31)).toBe('26.3 p');
    expect(words.pence(-2)).toBe('−2.0 p');
    expect(words.percent(0.844)).toBe('84%');
    expect([0.004, 0.0101, 0.5, 0.99, 0.998, 1].map(words.chance)).toEqual([
      'under 1%',
      '1%',
      '50%',
      '99%',
      'over 99%',
      'over 99%',
    ]);
    expect(words.degrees(45)).toBe('45 °C');
    expect(words.degrees(15.5)).toBe('15.5 °C');
    expect(words.degrees(-0.01)).toBe('0 °C');
    expect(words.factor(3.44)).toBe('3.4');
    expect(words.exactKWh(13_874.4)).toBe('13,874 kWh');
  });

  test.each([
    [2.44, '2.4'],
    [2.29, '2.29'],
    [2.55, 'two and a half'],
    [2.49, '2.49'],
    [2, 'two'],
    [0.5, 'half a'],
    [0.04, 'almost nothing'],
    [12.1, '12'],
    [-1, 'not known'],
  ])('%d is said %s', (value, said) => expect(words.spokenRatio(value)).toBe(said));

  test('a ratio is never said to be more than it is, and at most 3 % less', () => {
    const named = new Map(Array.from({ length: 24 }, (_, half) => [words.spokenRatio(half / 2), half / 2]));
    for (let value = 0.05; value <= 12; value += 0.0037) {
      const said = words.spokenRatio(value);
      const means = named.get(said) ?? Number(said);
      expect(means, said).toBeLessThanOrEqual(value + 1e-9);
      expect(means, said).toBeGreaterThanOrEqual(0.97 * value - 1e-9);
    }
  });
});

describe('dates and lists', () => {
  test.each([
    ['2026-10-01', '2026-12-31', 'October to December 2026'],
    ['2026-10-01', '2026-10-31', 'October 2026'],
    ['2026-12-01', '2027-02-28', 'December 2026 to February 2027'],
    ['2026-10-01', undefined, 'October 2026 on'],
  ])('%s to %s is %s', (from, to, said) => expect(words.monthSpan(from, to)).toBe(said));

  test('a date in full', () => expect(words.longDate('2026-11-05')).toBe('5 November 2026'));
  test('lists', () => {
    expect([[], ['a'], ['a', 'b'], ['a', 'b', 'c']].map(words.listed)).toEqual(['', 'a', 'a and b', 'a, b and c']);
    expect([words.counted(1, 'day'), words.counted(1200, 'day')]).toEqual(['1 day', '1,200 days']);
    expect(['Oil boiler', 'LPG boiler', 'A way'].map(words.uncapitalised)).toEqual([
      'oil boiler',
      'LPG boiler',
      'a way',
    ]);
  });
});
