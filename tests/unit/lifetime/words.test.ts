import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { reckonLifetime } from '../../../src/model/lifetime/reckon-lifetime.ts';
import type { Household } from '../../../src/model/shapes/household.ts';
import { reference } from '../../../src/reference/index.ts';
import * as words from '../../../src/words/lifetime.ts';
import { typed } from '../appraisal/make-household.ts';
import { larchRise, type Variant } from '../leave-behind/larch-rise.ts';
import { readingEase, sentencesOf, wordsOf } from '../words/reading-ease.ts';

const reckon = (purchase: Household['purchase'] = {}, variant: Variant = {}, draws = 400) =>
  reckonLifetime({ household: { purchase }, appraisal: larchRise(variant), reference, draws })!;
const bought = { heatPumpGBP: typed(15_000), grantGBP: typed(7500), replacementGBP: typed(3000) };
const level = { electricityShare: 1 + 41_588 / 106_252 };
/** Larch Rise with free choice of what its heat pump costs to run. */
const cases = {
  'running costs only': reckon(),
  'running costs only, dearer': reckon({}, { electricityShare: 2 }),
  'running costs only, the same': reckon({}, level),
  'paid back': reckon(bought),
  'not paid back': reckon({ heatPumpGBP: typed(30_000) }),
  'from the first day': reckon({ ...bought, heatPumpGBP: typed(9000) }),
  'falls behind': reckon(
    { ...bought, replacementGBP: typed(12_000), replacementLifeYears: typed(20) },
    { electricityShare: 2 },
  ),
  'behind, then ahead once the other is bought again': reckon(
    { ...bought, replacementGBP: typed(12_000) },
    { electricityShare: 2 },
  ),
  'the same in all': reckon({ heatPumpGBP: typed(8317.6) }),
};
const all = (lifetime: (typeof cases)['paid back']) => [
  words.lifetimeSentence(lifetime),
  words.savedSentence(lifetime),
  words.chanceSentence(lifetime),
  words.paybackSentence(lifetime),
  words.worthSentence(lifetime),
  words.annualSentence(lifetime),
  words.pathsSentence(lifetime),
  ...words.lifetimeCautions(),
  ...lifetime.notes.map(words.noteSentence),
];

describe('the sentence of the page', () => {
  test.each([
    ['running costs only', 'Over 20 years the heat pump might cost about £8,300 less to run.'],
    ['running costs only, dearer', 'Over 20 years the heat pump might cost about £13,000 more to run.'],
    ['running costs only, the same', 'Over 20 years both would cost about the same to run.'],
    ['paid back', 'The heat pump costs more to install. It might pay that back after about 11 years.'],
    ['not paid back', 'Over 20 years the heat pump might cost about £22,000 more in all.'],
    ['from the first day', 'Over 20 years the heat pump might cost about £13,000 less in all, from the first day on.'],
    ['falls behind', 'At first the heat pump costs less. Over 20 years it might cost about £8,400 more in all.'],
    [
      'behind, then ahead once the other is bought again',
      'Over 20 years the heat pump might cost about £3,600 less in all.',
    ],
    ['the same in all', 'Over 20 years both would cost about the same, installation included.'],
  ] as const)('%s', (name, sentence) => expect(words.lifetimeSentence(cases[name])).toBe(sentence));
});

describe.each(Object.entries(cases))('%s', (name, lifetime) => {
  const text = all(lifetime).filter(Boolean).join(' ');
  const { ease, grade } = readingEase(text);
  test(`reads easily (ease ${ease.toFixed(0)}, grade ${grade.toFixed(1)})`, () =>
    expect(ease >= 70 || grade <= 6, `${name}: ${ease} ${grade}`).toBe(true));
  test('is no promise and no shout, and no sentence is long', () => {
    expect(text).not.toMatch(/will save|!|NaN|undefined|Infinity|null/);
    for (const sentence of sentencesOf(text)) expect(wordsOf(sentence).length, sentence).toBeLessThanOrEqual(25);
  });
  test('cautions stand whatever is said', () => expect(text).toContain('not advice'));
});

test('sums of many years have two leading digits, below 2 the halves between too', () => {
  expect([1_234_567, -1_234_567, 2_345_678, 104_900, 87_000, 99_900, 0].map(words.roughPence)).toEqual([
    1_250_000, -1_250_000, 2_300_000, 105_000, 87_000, 99_900, 0,
  ]);
});

test.each([
  [100_000, 900_000, '£1,000 to £9,000 less'],
  [-900_000, -100_000, '£1,000 to £9,000 more'],
  [-250_000, 930_000, '£2,500 more to £9,300 less'],
])('a range from %d to %d: %s', (low, high, said) => expect(words.roughRange(low, high)).toBe(said));

test('a payback within the years that is still a loss is named as one', () => {
  const lossy = reckon({ heatPumpGBP: typed(6238.2) }, {}, 0);
  expect(words.worthSentence(lossy)).toContain('can still be a loss');
  expect(words.worthSentence(lossy)).not.toContain('8 in 10');
  const ranged = { ...lossy, netPresentValue: { ...lossy.netPresentValue!, low: -410_000, high: 290_000 } };
  expect(words.worthSentence(ranged)).toContain('For 8 in 10 homes like yours it costs £4,100 more to £2,900 less.');
});

test('whatever is typed, nothing false or broken is said', () => {
  const growth = fc.double({ min: -0.1, max: 0.2, noNaN: true });
  fc.assert(
    fc.property(
      fc.option(fc.integer({ min: 0, max: 500_000 }), { nil: undefined }),
      fc.record({ replacementGBP: fc.integer({ min: 0, max: 60_000 }), years: fc.integer({ min: 1, max: 40 }) }),
      fc.record({ electricityGrowthPerYear: growth, fuelGrowthPerYear: growth }),
      fc.double({ min: 0, max: 8, noNaN: true }),
      (heatPumpGBP, money, rates, electricityShare) => {
        const purchase = Object.fromEntries(
          Object.entries({ heatPumpGBP, ...money, ...rates })
            .filter(([, value]) => value !== undefined)
            .map(([field, value]) => [field, typed(value)]),
        ) as Household['purchase'];
        const lifetime = reckon(purchase, { electricityShare }, 30);
        expect(all(lifetime).join(' ')).not.toMatch(/NaN|undefined|Infinity|−£0|£0 |null/);
        expect(words.lifetimeSentence(lifetime).length).toBeLessThanOrEqual(120);
      },
    ),
    { numRuns: 80 },
  );
});
