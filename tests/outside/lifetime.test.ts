/** The years to come against textbook cases, on the very paths that the product walks. */
import { describe, expect, test } from 'vitest';
import { NO_SPREAD } from '../../src/model/chance/multiplier.ts';
import { reckonInstalments } from '../../src/model/lifetime/instalments.ts';
import { reckonPaths } from '../../src/model/lifetime/reckon-path.ts';

interface Case {
  readonly years: number;
  readonly rate: number;
  /** Paid at the start for the heat pump. */
  readonly cost: number;
  /** Saved in the first year, at its end. */
  readonly saving?: number;
  readonly growth?: number;
  /** Paid at the end of a year beside the saving. */
  readonly later?: Readonly<Record<number, number>>;
  /** What the equipment is still worth at the end. */
  readonly left?: number;
}

/** One future: nothing is known but the case. */
function walk({ years, rate, cost, saving = 0, growth = 0, later = {}, left = 0 }: Case) {
  const none = { byYear: new Array<number>(years + 1).fill(0), leftPence: 0 };
  const byYear = none.byYear.map((_, year) => (year === 0 ? cost : (later[year] ?? 0)));
  const running = { electricityPence: 0, fuelPence: 0, fixedPence: 0, spread: NO_SPREAD };
  const paths = reckonPaths(
    { running, outlays: { byYear, leftPence: left } },
    { running: { ...running, fuelPence: saving }, outlays: none },
    [{ pumpShare: 1, besideShare: 1, growth: { electricity: 0, fuel: growth } }],
    years,
    rate,
  );
  return {
    worth: paths.netPresentValue[0]!,
    simple: paths.simple[0]!,
    discounted: paths.discounted[0]!,
    level: paths.pumpAnnual[0]!,
  };
}

// Level amount a year with the same present worth as 1 today, r / (1 − (1 + r)^−n), and what 1 a year is worth today;
// 3.5 % is the UK Treasury Green Book real rate (from memory).
test.each([
  [0.035, 15, 11.51741, 0.086825],
  [0.035, 20, 14.2124, 0.070361],
  [0.05, 20, 12.46221, 0.080243],
  [0.08, 15, 8.55948, 0.11683],
  [0.12, 8, 4.96764, 0.201303],
])('at %d over %d years the annuity factor is %d and its inverse %d', (rate, years, factor, inverse) => {
  expect(walk({ years, rate, cost: 0, saving: 1 }).worth).toBeCloseTo(factor, 5);
  expect(walk({ years, rate, cost: 1 }).level).toBeCloseTo(inverse, 6);
});

describe('textbook examples', () => {
  test('cost 1000 and 250 saved a year pay back in 4 years (university energy-economics notes)', () => {
    expect(walk({ years: 10, rate: 0.035, cost: 1000, saving: 250 }).simple).toBeCloseTo(4, 12);
  });

  test('heat pump against resistance heating at 18 %: 139.56 (Energy Project Financing, Appendix A, Example 34)', () => {
    const { worth } = walk({ years: 15, rate: 0.18, cost: 1500, saving: 380 - 50, later: { 8: 200 }, left: 150 });
    // The book rounds its factors: 139.54 to the penny.
    expect(worth).toBeCloseTo(139.54, 2);
    expect(Math.abs(worth - 139.56)).toBeLessThan(0.03);
  });

  test('retrofit of 200 000 that saves 50 000 for 8 years, residual 20 000, at 12 %: 56 459.65 (textbook exercise)', () => {
    const { worth } = walk({ years: 8, rate: 0.12, cost: 200_000, saving: 50_000, left: 20_000 });
    expect(worth).toBeCloseTo(56_459.65, 2);
  });

  test('insulation, 184 saved first, +12 % a year, 15 %, 20 years: worth 2518, net 518 (textbook exercise)', () => {
    expect(walk({ years: 20, rate: 0.15, cost: 2000, saving: 184, growth: 0.12 }).worth).toBeCloseTo(518.4, 2);
  });
});

test('the negative case, computed: 9000 for 600 a year at 3.5 % over 20 years pays back in 15.0 years and still loses 472.56', () => {
  const twenty = walk({ years: 20, rate: 0.035, cost: 9000, saving: 600 });
  expect(twenty.simple).toBeCloseTo(15, 12);
  expect(twenty.worth).toBeCloseTo(-472.56, 2);
  expect(twenty.discounted).toBe(Number.POSITIVE_INFINITY);
  // Savings accrue evenly within a year; ln(1 − C r/S) / −ln(1 + r) = 21.64 has them grow within it as well.
  expect(walk({ years: 30, rate: 0.035, cost: 9000, saving: 600 }).discounted).toBeCloseTo(21.64, 2);
});

test('level cost is all that is paid less the life left: (P − S)(A/P) + S i (capital recovery, any textbook)', () => {
  // 200,000 with 20,000 left after 8 years at 12 %: 180,000 × 0.201303 + 20,000 × 0.12.
  expect(walk({ years: 8, rate: 0.12, cost: 200_000, left: 20_000 }).level).toBeCloseTo(38_634.51, 1);
});

describe('instalments', () => {
  const given = (value: number) => ({ value, grade: 'estimated', origin: 'typed in a test' }) as const;
  test.each([
    // 10,000 at 6 % over 5 years is 193.33 a month (any table of loans); without interest 10,000 / 60.
    [10_000, 0, 0.06, 5, 193.33],
    [10_000, 0, 0, 5, 166.67],
    // 200,000 at 6.5 % over 30 years: 1,264.14.
    [207_500, 7500, 0.065, 30, 1264.14],
  ])('of %d less %d at %d over %d years: %d', (heatPump, grant, perYear, years, pounds) => {
    const found = reckonInstalments({
      heatPumpGBP: given(heatPump),
      grantGBP: given(grant),
      loanPerYear: given(perYear),
      loanYears: given(years),
    });
    expect(found!.pence / 100).toBeCloseTo(pounds, 2);
  });
  test('nothing where the grant covers the price, or there is none', () => {
    expect(reckonInstalments({ heatPumpGBP: given(7500), grantGBP: given(7500) })).toBeNull();
    expect(reckonInstalments({ grantGBP: given(7500) })).toBeNull();
  });
});
