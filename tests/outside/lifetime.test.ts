import { describe, expect, test } from 'vitest';
import {
  annuityFactor,
  discountedPayback,
  equivalentAnnual,
  netPresentValue,
  presentWorth,
  presentWorthOfGrowing,
  simplePayback,
} from '../../src/model/lifetime/money-over-time.ts';

// Annuity factors and their inverses, computed from (1 − (1 + r)^−n) / r; 3.5 % is the UK Treasury Green Book real rate (from memory).
test.each([
  [0.035, 15, 11.51741, 0.086825],
  [0.035, 20, 14.2124, 0.070361],
  [0.05, 20, 12.46221, 0.080243],
  [0.08, 15, 8.55948, 0.11683],
  [0.12, 8, 4.96764, 0.201303],
])('at %d over %d years the annuity factor is %d and its inverse %d', (rate, years, factor, inverse) => {
  expect(annuityFactor(rate, years)).toBeCloseTo(factor, 5);
  expect(equivalentAnnual(1, rate, years)).toBeCloseTo(inverse, 6);
});

describe('textbook examples', () => {
  test('cost 1000 and 250 saved a year pay back in 4 years, 25 % (university energy-economics notes)', () => {
    expect(simplePayback(1000, 250)).toBe(4);
    expect(250 / 1000).toBe(0.25);
  });

  test('heat pump against resistance heating at 18 %: 139.56 (Energy Project Financing, Appendix A, Example 34)', () => {
    const byYear = Array.from({ length: 16 }, (_, year) => (year === 0 ? -1500 : 380 - 50));
    byYear[8]! -= 200;
    byYear[15]! += 150;
    // The book rounds its factors: 139.54 to the penny.
    expect(netPresentValue(byYear, 0.18)).toBeCloseTo(139.54, 2);
    expect(Math.abs(netPresentValue(byYear, 0.18) - 139.56)).toBeLessThan(0.03);
  });

  test('retrofit of 200 000 that saves 50 000 for 8 years, residual 20 000, at 12 %: 56 459.65 (textbook exercise)', () => {
    const worth = 50_000 * annuityFactor(0.12, 8) + presentWorth(20_000, 0.12, 8) - 200_000;
    expect(worth).toBeCloseTo(56_459.65, 2);
  });

  test('insulation, 184 saved first, +12 % a year, 15 %, 20 years: worth 2518, net 518 (textbook exercise)', () => {
    const worth = presentWorthOfGrowing(184, 0.12, 0.15, 20);
    expect(worth).toBeCloseTo(2518.4, 2);
    expect(worth - 2000).toBeCloseTo(518.4, 2);
  });
});

test('the negative case, computed: 9000 for 600 a year at 3.5 % over 20 years pays back in 15.0 years and still loses 472.56', () => {
  expect(simplePayback(9000, 600)).toBe(15);
  expect(600 * annuityFactor(0.035, 20) - 9000).toBeCloseTo(-472.56, 2);
  expect(discountedPayback(9000, 600, 0.035)).toBeCloseTo(21.64, 2);
});
