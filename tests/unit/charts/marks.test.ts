/** What the painted pictures are given: never more marks than pixels, and no peak lost. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { monthlySeries } from '../../../src/charts/monthly/series.ts';
import { thinSteps } from '../../../src/charts/week-prices/series.ts';
import { thinPoints } from '../../../src/model/thin/thin.ts';
import { larchRise } from '../leave-behind/larch-rise.ts';

const pixels = fc.integer({ min: 50, max: 900 });
const value = fc.double({ min: -40, max: 200, noNaN: true });

test('cost by month has twelve rows, two marks each, at any width', () =>
  expect(monthlySeries(larchRise()).rows).toHaveLength(12));

describe('days of a signature', () => {
  test('keep the coldest, the warmest, the least and the most, and are all days that there were', () => {
    fc.assert(
      fc.property(
        fc.array(fc.record({ outdoorC: value, kWhPerDay: value }), { minLength: 1, maxLength: 4000 }),
        pixels,
        (points, most) => {
          const thin = thinPoints(points, most);
          expect(thin.length).toBeLessThanOrEqual(most);
          for (const key of ['outdoorC', 'kWhPerDay'] as const) {
            const of = (some: typeof thin) => some.map((point) => point[key]);
            expect(Math.min(...of(thin))).toBe(Math.min(...of(points)));
            expect(Math.max(...of(thin))).toBe(Math.max(...of(points)));
          }
          const there = new Set(points.map(({ outdoorC, kWhPerDay }) => `${outdoorC} ${kWhPerDay}`));
          expect(thin.every(({ outdoorC, kWhPerDay }) => there.has(`${outdoorC} ${kWhPerDay}`))).toBe(true);
        },
      ),
    );
  });
  test('ten years of days come down to a narrow picture', () => {
    const points = Array.from({ length: 3652 }, (_, day) => ({
      outdoorC: 10 + 8 * Math.sin(day / 58),
      kWhPerDay: day % 97,
    }));
    expect(thinPoints(points, 300).length).toBeLessThanOrEqual(300);
  });
});

describe('half-hours of a week', () => {
  const priceAt = (steps: readonly { half: number; pence: number | null }[], half: number) =>
    steps.findLast((step) => step.half <= half)!.pence;
  test('where the pixels suffice, every half-hour has its own price still', () => {
    const bands = fc.array(fc.option(fc.constantFrom(7.5, 26.3, 38), { nil: null }), {
      minLength: 336,
      maxLength: 336,
    });
    fc.assert(
      fc.property(bands, (prices) => {
        const week = prices.map((pence, half) => ({ half, pence, band: '' }));
        const steps = [...week, { ...week.at(-1)!, half: 336 }];
        const thin = thinSteps(steps, 400);
        for (const { half, pence } of steps) expect(priceAt(thin, half)).toBe(pence);
        expect([thin[0]!.half, thin.at(-1)!.half]).toEqual([0, 336]);
      }),
    );
  });
  test('a week that differs at every half-hour comes down to the pixels and keeps its dearest and cheapest', () => {
    fc.assert(
      fc.property(fc.array(value, { minLength: 336, maxLength: 336 }), pixels, (prices, most) => {
        const week = prices.map((pence, half) => ({ half, pence, band: '' }));
        const thin = thinSteps([...week, { ...week.at(-1)!, half: 336 }], most);
        expect(thin.length).toBeLessThanOrEqual(most);
        const pence = thin.map((step) => step.pence!);
        expect([Math.min(...pence), Math.max(...pence)]).toEqual([Math.min(...prices), Math.max(...prices)]);
        expect([thin[0]!.half, thin.at(-1)!.half]).toEqual([0, 336]);
      }),
    );
  });
  test('a price that never changes is two marks, and one before a gap keeps its length', () => {
    const steps = Array.from({ length: 337 }, (_, half) => ({ half }));
    const flat = steps.map(({ half }) => ({ half, pence: half >= 100 && half < 110 ? null : 25, band: '' }));
    expect(thinSteps(flat, 400).map(({ half }) => half)).toEqual([0, 99, 100, 110, 336]);
    expect(
      thinSteps(
        flat.map((step) => ({ ...step, pence: 25 })),
        400,
      ).map(({ half }) => half),
    ).toEqual([0, 336]);
  });
});
