import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Appraisal } from '../../../src/model/shapes/appraisal.ts';
import { countFutures, driversSentence, futuresSentence, savingRange } from '../../../src/words/sure.ts';

const twenty = (less: number, more: number) => [
  ...Array.from({ length: more }, () => -100),
  ...Array.from({ length: 20 - less - more }, () => 0),
  ...Array.from({ length: less }, () => 100),
];

describe('futures counted both ways', () => {
  test.each([
    [18, 2, 'In 18 futures out of 20 the heat pump costs less, in 2 it costs more.'],
    [1, 19, 'In 1 future out of 20 the heat pump costs less, in 19 it costs more.'],
    [20, 0, 'In all 20 futures the heat pump costs less. It is likely, but nobody can be certain.'],
    [0, 20, 'In all 20 futures the heat pump costs more.'],
    [0, 0, 'In all 20 futures both cost the same.'],
    [12, 5, 'In 12 futures out of 20 the heat pump costs less, in 5 it costs more. In 3 they cost the same.'],
    [0, 15, 'In no future out of 20 does the heat pump cost less. In 15 it costs more. In 5 they cost the same.'],
    [15, 0, 'In 15 futures out of 20 the heat pump costs less. In 5 they cost the same.'],
  ])('%d less, %d more', (less, more, said) => expect(futuresSentence(twenty(less, more))).toBe(said));

  test('unknown', () => expect(futuresSentence([])).toContain('cannot say yet'));

  test('every future is counted once', () => {
    fc.assert(
      fc.property(fc.array(fc.double({ noNaN: true }), { minLength: 1, maxLength: 40 }), (savings) => {
        const { all, less, more, same } = countFutures(savings);
        expect(less + more + same).toBe(all);
        expect(all).toBe(savings.length);
      }),
    );
  });
});

test.each([
  [15_000, 65_000, '£150 to £650 less'],
  [-65_000, -15_000, '£150 to £650 more'],
  [-10_000, 70_000, 'from £100 more to £700 less'],
  [0, 0, '£0 to £0 less'],
  [Number.NaN, 1, 'an unknown amount more or less'],
])('a saving of %d to %d pence is %s', (low, high, said) => expect(savingRange(low, high)).toBe(said));

test.each<[Appraisal['drivers'], string]>([
  [[{ input: 'electricity-price', share: 0.6 }], 'What matters most is the price of electricity.'],
  [
    [
      { input: 'winter', share: 0.2 },
      { input: 'electricity-price', share: 0.6 },
      { input: 'habits', share: 0.02 },
    ],
    'What matters most is the price of electricity. After that comes how cold the winter is.',
  ],
  [[], 'No single thing decides the answer.'],
])('drivers %j', (drivers, said) => expect(driversSentence(drivers)).toBe(said));
