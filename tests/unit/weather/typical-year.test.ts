import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { degreeDaysFromMeans, degreeDaysHitchin } from '../../../src/model/weather/degree-days.ts';
import { smoothDailyMeans } from '../../../src/model/year/mean-preserving.ts';
import { typicalYear } from '../../../src/model/year/typical-year.ts';
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

describe('degree days', () => {
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
