import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { degreeDaysFromMeans, degreeDaysHitchin } from '../../../src/model/weather/degree-days.ts';
import { dayDeviations, swingAt } from '../../../src/model/year/day-pattern.ts';
import { smoothDailyMeans } from '../../../src/model/year/mean-preserving.ts';
import { byMonth, spaceShareByDay, sumTo } from '../../../src/model/year/spread-over-year.ts';
import { type TypicalYear, typicalYear } from '../../../src/model/year/typical-year.ts';
import { regions } from '../../../src/reference/climate.ts';

const LONDON = 'Europe/London';

const mean = (values: readonly number[]) => values.reduce((sum, v) => sum + v, 0) / values.length;

function monthMeans(dailyMeanC: Float64Array, year: number): number[] {
  const byMonth: number[][] = Array.from({ length: 12 }, () => []);
  dailyMeanC.forEach((v, day) => {
    byMonth[new Date(Date.UTC(year, 0, 1 + day)).getUTCMonth()]!.push(v);
  });
  return byMonth.map(mean);
}

describe('typical year', () => {
  const cases = regions.flatMap((region) =>
    [2025, 2028].map((year) => [region.id, region.name, year, region] as const),
  );
  test.each(cases)('region %i %s %i: monthly means exact', (_id, _name, year, region) => {
    const days = typicalYear(region, year, LONDON).dailyMeanC;
    expect(days.length).toBe(year === 2028 ? 366 : 365);
    monthMeans(days, year).forEach((value, m) => {
      expect(Math.abs(value - region.monthlyMeanC[m]!)).toBeLessThan(1e-9);
    });
  });
  test('the half-hours of every day, clock changes too, have the mean of the day', () => {
    const { dailyMeanC, outdoorC, slots } = typicalYear(regions[1]!, 2026, LONDON);
    dailyMeanC.forEach((value, day) => {
      const ofDay = [...outdoorC.slice(slots.dayStart[day], slots.dayStart[day + 1])];
      expect(Math.abs(mean(ofDay) - value)).toBeLessThan(1e-9);
    });
  });
  test('days vary about the smooth curve as British days do: 2.4 to 2.8 K within a month', () => {
    const days = typicalYear(regions[0]!, 2025, LONDON).dailyMeanC;
    const january = [...days.slice(0, 31)];
    const spread = Math.sqrt(mean(january.map((v) => (v - mean(january)) ** 2)));
    expect(spread).toBeGreaterThan(2.4);
    expect(spread).toBeLessThan(3.2);
  });
  test('afternoons are warmer than nights', () => {
    const { outdoorC } = typicalYear(regions[0]!, 2025, LONDON);
    expect(outdoorC[30]! - outdoorC[6]!).toBeGreaterThan(4);
  });
  test('the same year twice is one and the same', () => {
    expect(typicalYear(regions[3]!, 2025, LONDON)).toBe(typicalYear(regions[3]!, 2025, LONDON));
  });
  test('any twelve monthly means come out exactly', () => {
    const lengths = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: -30, max: 40, noNaN: true }), { minLength: 12, maxLength: 12 }),
        (means) => {
          monthMeans(smoothDailyMeans(means, lengths), 2025).forEach((value, m) => {
            expect(Math.abs(value - means[m]!)).toBeLessThan(1e-9);
          });
        },
      ),
    );
  });
});

describe('days and hours about the smooth curve', () => {
  const lengths = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
  test.each(lengths.map((days, month) => [month, days] as const))(
    'month %i: %i deviations that sum to nothing, 2.6 ∓ 0.2 K apart',
    (month, days) => {
      const found = [...dayDeviations(month, days)];
      expect(found).toHaveLength(days);
      expect(mean(found)).toBeCloseTo(0, 12);
      // Summer and winter are a cosine apart, the middle of January its foot.
      const wanted = 2.6 + 0.2 * Math.cos((2 * Math.PI * (month + 0.5)) / 12);
      expect(Math.sqrt(mean(found.map((v) => v * v)))).toBeCloseTo(wanted, 12);
    },
  );
  test('a day is like the one before, by about 0.75, and months go on from one another', () => {
    const all = lengths.flatMap((_, month) => [...dayDeviations(month, 31)]);
    const together = mean(all.slice(1).map((v, i) => v * all[i]!)) / mean(all.map((v) => v * v));
    // 31 days about their own mean look less alike, by about (1 + 4 × 0.75)/31 (M. G. Kendall, from memory).
    expect(Math.abs(together - (0.75 - 4 / 31))).toBeLessThan(0.05);
    const beyond = mean(all.slice(2).map((v, i) => v * all[i]!)) / mean(all.map((v) => v * v));
    expect(Math.abs(beyond - together ** 2)).toBeLessThan(0.1);
    expect(all.filter((v) => Math.abs(v) < 2.6).length / all.length).toBeGreaterThan(0.6);
    expect(all.filter((v) => Math.abs(v) < 2.6).length / all.length).toBeLessThan(0.76);
    expect(new Set(all.map((v) => v.toFixed(6))).size).toBeGreaterThan(365);
  });
  test.each([
    [0, 2.32726],
    [6, 3.87274],
  ])('month %i: warmest at 15:00, coldest twelve hours off, %d K about the mean', (month, halfK) => {
    // 3.1 ∓ 0.8 cos(15°) K.
    expect(swingAt(month, 900)).toBeCloseTo(halfK, 4);
    expect(swingAt(month, 180)).toBeCloseTo(-halfK, 4);
    expect(swingAt(month, 540)).toBeCloseTo(0, 9);
    expect(swingAt(month, 1080)).toBeCloseTo(halfK * Math.SQRT1_2, 4);
  });
  test('the curve of a year that is a cosine is that cosine, and goes on from December to January', () => {
    const even = Array.from({ length: 12 }, () => 30);
    const wave = (day: number) => 10 - 6 * Math.cos((2 * Math.PI * (day - 15)) / 360);
    const means = even.map((_, m) => mean(Array.from({ length: 30 }, (_, d) => wave(30 * m + d + 0.5))));
    for (const [day, value] of smoothDailyMeans(means, even).entries())
      expect(Math.abs(value - wave(day + 0.5))).toBeLessThan(0.02);
    expect(
      [
        ...smoothDailyMeans(
          means.map(() => 7),
          lengths,
        ),
      ].every((value) => Math.abs(value - 7) < 1e-9),
    ).toBe(true);
  });
  test('the curve is smooth at the turns of months of any length', () => {
    const days = smoothDailyMeans([4, 5, 6, 9, 12, 15, 17, 17, 14, 11, 7, 5], lengths);
    // Within a month the days lie on a parabola; carried on from either side, its slope at the turn is the same.
    const rise = (day: number) => days[(day + 1) % 365]! - days[(day + 365) % 365]!;
    let turn = 0;
    for (const length of lengths) {
      turn += length;
      expect(2 * rise(turn - 2) - rise(turn - 3)).toBeCloseTo(2 * rise(turn % 365) - rise((turn + 1) % 365), 9);
      expect(rise(turn - 5) - 2 * rise(turn - 4) + rise(turn - 3)).toBeCloseTo(0, 9);
    }
  });
  test('a warmer hour of a summer day: its mean and the swing of its clock', () => {
    const { outdoorC, dailyMeanC, slots } = typicalYear(regions[0]!, 2025, LONDON);
    for (const [day, half] of [
      [0, 30],
      [200, 6],
      [364, 47],
    ] as const) {
      const slot = slots.dayStart[day]! + half;
      // Over 48 half-hours the swing sums to nothing.
      expect(outdoorC[slot]).toBeCloseTo(dailyMeanC[day]! + swingAt(slots.month[slot]!, half * 30), 9);
    }
  });
  test('another year, zone or region is another one', () => {
    const one = typicalYear(regions[3]!, 2025, LONDON);
    for (const other of [
      typicalYear(regions[3]!, 2026, LONDON),
      typicalYear(regions[3]!, 2025, 'Europe/Berlin'),
      typicalYear(regions[4]!, 2025, LONDON),
    ])
      expect(other).not.toBe(one);
  });
});

describe('a year’s heat by day and month', () => {
  const of = (...dailyMeanC: number[]) => ({ dailyMeanC: Float64Array.from(dailyMeanC) }) as unknown as TypicalYear;
  test('by the degrees below the base; where no day is below it, evenly', () => {
    expect([...spaceShareByDay(of(5, 10, 20, 15), 15)]).toEqual([10 / 15, 5 / 15, 0, 0]);
    expect([...spaceShareByDay(of(5, 10, 20, 15), 2)]).toEqual([0.25, 0.25, 0.25, 0.25]);
  });
  test('months are the sums of their days and come to the amount', () => {
    expect(byMonth(1000, Float64Array.of(0.1, 0.2, 0.3, 0.4), [1, 3])).toEqual([100, expect.closeTo(900, 9)]);
    expect(sumTo(90, [1, 2, 0])).toEqual([30, 60, 0]);
    expect(sumTo(90, [0, 0, 0])).toEqual([30, 30, 30]);
  });
});

describe('degree days', () => {
  test('by the day: what lies below the base, and nothing of a day without a temperature', () => {
    expect(degreeDaysFromMeans([10, 15, 20, Number.NaN, 14.5], 15)).toBe(5.5);
  });
  test.each([15.5 + 1e-5, 15.5 - 1e-5, 15.5 + 2e-4, 15.5 - 2e-4, 15.4, 16])(
    'Hitchin at a mean of %d °C by its series',
    (meanC) => {
      // x/(1 − e^−x) = 1 + x/2 + x²/12 − x⁴/720 + …, n/0.71 of it.
      const x = 0.71 * (15.5 - meanC);
      const series = 1 + x / 2 + x ** 2 / 12 - x ** 4 / 720 + x ** 6 / 30_240;
      expect(degreeDaysHitchin(meanC, 31, 15.5)).toBeCloseTo((31 / 0.71) * series, 7);
    },
  );
  test('never negative, and more to a higher base', () => {
    const temperature = fc.double({ min: -20, max: 35, noNaN: true });
    fc.assert(
      fc.property(temperature, temperature, fc.double({ min: 5, max: 25, noNaN: true }), (a, b, baseC) => {
        for (const of of [
          (base: number) => degreeDaysFromMeans([a, b], base),
          (base: number) => degreeDaysHitchin(a, 30, base),
        ]) {
          expect(of(baseC)).toBeGreaterThanOrEqual(0);
          expect(of(baseC + 0.5)).toBeGreaterThanOrEqual(of(baseC));
        }
      }),
    );
  });
  test('Hitchin is smooth where the mean meets the base', () => {
    expect(degreeDaysHitchin(15.5, 31, 15.5)).toBeCloseTo(31 / 0.71, 9);
    expect(degreeDaysHitchin(15.49985, 31, 15.5)).toBeCloseTo(degreeDaysHitchin(15.4998499, 31, 15.5), 4);
  });
});
