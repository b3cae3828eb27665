import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  annuityFactor,
  discountedPayback,
  netPresentValue,
  presentWorthOfGrowing,
  simplePayback,
} from '../../../src/model/lifetime/money-over-time.ts';
import { normalShare } from '../../../src/model/lifetime/normal-share.ts';
import { findCrossings } from '../../../src/model/lifetime/pay-back.ts';

const rate = fc.double({ min: 0, max: 0.3, noNaN: true });
const years = fc.integer({ min: 1, max: 40 });
const amount = fc.double({ min: 1, max: 1e6, noNaN: true });

describe('present worth', () => {
  test('no interest: the years themselves', () => expect(annuityFactor(0, 20)).toBe(20));
  test('growth equal to the rate: n A1 / (1 + r)', () =>
    expect(presentWorthOfGrowing(100, 0.05, 0.05, 20)).toBeCloseTo(2000 / 1.05, 9));
  test('growth a hair from the rate comes to the same', () =>
    expect(presentWorthOfGrowing(100, 0.05 + 1e-8, 0.05, 20)).toBeCloseTo(2000 / 1.05, 3));
  test('the closed form is the sum of its years', () => {
    fc.assert(
      fc.property(amount, rate, fc.double({ min: -0.2, max: 0.3, noNaN: true }), years, (first, r, g, n) => {
        const byYear = [0, ...Array.from({ length: n }, (_, year) => first * (1 + g) ** year)];
        const sum = netPresentValue(byYear, r);
        expect(Math.abs(presentWorthOfGrowing(first, g, r, n) - sum)).toBeLessThan(1e-6 * sum);
      }),
    );
  });
});

describe('payback', () => {
  test.each([
    ['nothing to bring back', 0, 250, 0, 0],
    ['less than nothing', -500, 250, 0, 0],
    ['no saving', 1000, 0, null, null],
    ['a loss', 1000, -50, null, null],
    ['savings that interest eats up', 1000, 30, 1000 / 30, null],
  ])('%s', (_, cost, saving, simple, discounted) => {
    expect(simplePayback(cost, saving)).toBe(simple);
    expect(discountedPayback(cost, saving, 0.035)).toBe(discounted);
  });
  test('discounted is never sooner than simple, and brings back exactly the cost', () => {
    fc.assert(
      fc.property(amount, amount, rate, (cost, saving, r) => {
        const discounted = discountedPayback(cost, saving, r);
        if (discounted === null) return;
        expect(discounted).toBeGreaterThanOrEqual(simplePayback(cost, saving)! * (1 - 1e-9));
        expect(presentWorthOfGrowing(saving, 0, r, discounted)).toBeCloseTo(cost, 2);
      }),
    );
  });
});

describe('crossings, year by year', () => {
  const none = [0, 0, 0, 0];
  test.each([
    ['level savings: cost over saving', [250, 250, 250, 250, 250], [-1000, 0, 0, 0, 0, 0], 4, null],
    ['within a year', [400, 400, 400], [-1000, 0, 0, 0], 2.5, null],
    ['not in these years', [100, 100, 100], [-1000, 0, 0, 0], null, null],
    ['from the first day', [100, 100, 100], [500, 0, 0, 0], 0, null],
    ['cheaper to buy, dearer to run', [-200, -200, -200], [500, 0, 0, 0], null, 2.5],
    ['the other is bought at the end of year 2', [100, 100, 100], [-1000, 0, 900, 0], 2, null],
    ['ahead, bought again, ahead again', [600, 600, 600], [-1000, 0, -500, 0], 2 + 300 / 600, null],
    ['equal throughout', [0, 0, 0], none, 0, null],
  ])('%s', (_, savings, steps, payback, fallsBehind) => {
    const found = findCrossings(savings, steps);
    if (payback === null) expect(found.payback).toBeNull();
    else expect(found.payback).toBeCloseTo(payback, 9);
    expect(found.fallsBehind).toEqual(fallsBehind);
  });
});

test.each([
  [0, 0.5],
  [1.2815515655, 0.9], // 90 % point of the standard normal distribution, any table of it
  [-1.644853627, 0.05],
  [1.9599639845, 0.975],
])('below %d lies a share of %d', (z, share) => expect(normalShare(z)).toBeCloseTo(share, 6));
