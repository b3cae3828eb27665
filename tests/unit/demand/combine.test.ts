import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { combine, findContradictions } from '../../../src/model/demand/combine.ts';
import type { DemandEstimate } from '../../../src/model/shapes/appraisal.ts';

const estimate = (value: number, share: number) => ({ value, error: value * share, grade: 'estimated' as const });

describe('estimates taken together', () => {
  // √(100 × 200) = 141.4; χ² = 2 (ln √2 / 0.1)² = 24.0, error = 141.4 × 0.1 / √2 × √24.0 = 49.
  // A third that is ten times as sure as either: weights 1, 1 and 100. Nothing counts as 1 kWh, give or take all of it:
  // weights 44.4 and 1, 20,000^(44.4 / 45.4) = 16,084; √χ² = 9.79.
  test.each([
    ['two that agree', [estimate(100, 0.1), estimate(100, 0.1)], 100, 7.071],
    ['two equally sure that do not', [estimate(100, 0.1), estimate(200, 0.1)], 141.42, 49.01],
    ['one that is far surer', [estimate(100, 0.1), estimate(100, 0.1), estimate(110, 0.01)], 109.8, 1.087],
    ['nothing beside much', [estimate(20_000, 0.15), estimate(0, 0.25)], 16_084, 23_360],
  ])('%s', (_, estimates, value, error) => {
    const joined = combine(estimates);
    expect(joined.value / value).toBeCloseTo(1, 3);
    expect(joined.error / error).toBeCloseTo(1, 2);
  });

  test('between the lowest and the highest, whatever the order and the unit', () => {
    const one = fc.tuple(
      fc.double({ min: 100, max: 40_000, noNaN: true }),
      fc.double({ min: 0.05, max: 0.5, noNaN: true }),
    );
    fc.assert(
      fc.property(fc.array(one, { minLength: 2, maxLength: 4 }), (pairs) => {
        const estimates = pairs.map(([value, share]) => estimate(value, share));
        const { value, error } = combine(estimates);
        expect(value).toBeGreaterThanOrEqual(Math.min(...estimates.map((e) => e.value)) * (1 - 1e-9));
        expect(value).toBeLessThanOrEqual(Math.max(...estimates.map((e) => e.value)) * (1 + 1e-9));
        const turned = combine(estimates.toReversed());
        expect(turned.value).toBeCloseTo(value, 6);
        const tenfold = combine(estimates.map((e) => ({ ...e, value: e.value * 10, error: e.error * 10 })));
        expect(tenfold.value / value).toBeCloseTo(10, 6);
        expect(tenfold.error / error).toBeCloseTo(10, 6);
      }),
    );
  });
});

describe('a contradiction names what the lower way may have got wrong', () => {
  const of = (way: DemandEstimate['way'], spaceKWh: number): DemandEstimate => ({
    way,
    spaceKWh,
    spaceErrorKWh: 0.1 * spaceKWh,
    grade: 'estimated',
    working: { title: '', formula: '', inputs: [], result: { value: spaceKWh, unit: 'kWh' } },
  });
  test.each([
    ['heat-loss', 'heat-loss-too-low'],
    ['certificate', 'usual-household'],
    ['floor-area', 'unlike-its-age'],
  ] as const)('%s: %s', (way, reason) => {
    const [question] = findContradictions([of('record', 20_000), of(way, 6000)], 0);
    expect(String(question!.data.likely).split(',')).toContain(reason);
  });
});
