import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { COMMON_MONTH_DAYS } from '../../src/model/calendar/civil.ts';
import { correctForWeather, degreeDaysFromMeans, degreeDaysHitchin } from '../../src/model/weather/degree-days.ts';
import { typicalYear } from '../../src/model/year/typical-year.ts';
import { regions } from '../../src/reference/climate.ts';

const hitchinYear = (monthlyMeanC: readonly number[], baseC = 15.5) =>
  monthlyMeanC.map((mean, m) => degreeDaysHitchin(mean, COMMON_MONTH_DAYS[m]!, baseC));
const sum = (values: readonly number[]) => values.reduce((total, v) => total + v, 0);

describe('Hitchin from SAP Table U1, base 15.5 °C', () => {
  test('UK average by month (worked from the formula, k = 0.71)', () => {
    const expected = [347.32, 296.96, 279.47, 199.84, 126.31, 57.18, 28.81, 31.19, 66.68, 156.73, 252.65, 350.41];
    hitchinYear(regions[0]!.monthlyMeanC).forEach((value, m) => {
      expect(value).toBeCloseTo(expected[m]!, 2);
    });
    expect(sum(hitchinYear(regions[0]!.monthlyMeanC))).toBeCloseTo(2193.55, 1);
  });
  test('months clamped at zero read 2062.0, 6 % low', () => {
    const clamped = regions[0]!.monthlyMeanC.map((mean, m) => COMMON_MONTH_DAYS[m]! * Math.max(0, 15.5 - mean));
    expect(sum(clamped)).toBeCloseTo(2062.0, 1);
  });
  // Yearly totals of every region, worked separately from SAP Table U1 with the same formula, printed to 0.1.
  test.each([
    [0, 2193.6],
    [1, 1910.1],
    [2, 1958.8],
    [3, 1911.1],
    [4, 1890.6],
    [5, 2050.0],
    [6, 2187.8],
    [7, 2127.7],
    [8, 2469.4],
    [9, 2443.5],
    [10, 2350.9],
    [11, 2193.6],
    [12, 2011.9],
    [13, 2195.4],
    [14, 2510.3],
    [15, 2586.5],
    [16, 2747.0],
    [17, 2917.1],
    [18, 2482.5],
    [19, 2701.1],
    [20, 2796.0],
    [21, 2296.9],
  ])('region %i: %d a year', (id, expected) => {
    const region = regions.find((r) => r.id === id)!;
    // The printed months are rounded, so their sum may stand 0.1 aside.
    expect(Math.abs(sum(hitchinYear(region.monthlyMeanC)) - expected)).toBeLessThan(0.11);
  });
  // Open University, Energy in buildings, Table 8: 20-year means, January to August.
  test.each([
    ['Thames Valley', 1, [319, 282, 242, 180, 97]],
    ['Midlands', 6, [356, 314, 278, 220, 136]],
  ])('%s 1985 to 2004, January to May: region %i within 11 %', (_name, id, published) => {
    const months = hitchinYear(regions.find((r) => r.id === id)!.monthlyMeanC);
    published.forEach((value, m) => {
      expect(Math.abs(months[m]! / value - 1)).toBeLessThan(0.11);
    });
  });
});

describe('typical year', () => {
  test.each(regions.map((region) => [region.id, region] as const))(
    'region %i: degree days of its days agree with Hitchin from its months within 4 %, base 15.5 °C',
    (_id, region) => {
      const days = degreeDaysFromMeans(typicalYear(region, 2025, 'Europe/London').dailyMeanC, 15.5);
      expect(Math.abs(days / sum(hitchinYear(region.monthlyMeanC)) - 1)).toBeLessThan(0.04);
    },
  );
  test('UK average yearly mean 10.02 °C (published unit test of the same SAP table)', () => {
    const days = typicalYear(regions[0]!, 2025, 'Europe/London').dailyMeanC;
    expect(sum([...days]) / 365).toBeCloseTo(10.0205, 3);
  });
});

test('11,000 kWh in a year of 2,700 degree days are 10,034 in the published UK standard year of 2,463', () => {
  expect(Math.round(correctForWeather(11_000, 2463, 2700))).toBe(10_034);
});

describe('Seattle, daily highs and lows 2012 to 2015 (NOAA, in the package vega-datasets 3.2.1)', () => {
  const days = readFileSync(
    new URL('../../node_modules/vega-datasets/data/seattle-weather.csv', import.meta.url),
    'utf8',
  )
    .trim()
    .split('\n')
    .slice(1)
    .map((line) => line.split(','))
    .map((cells) => ({ year: cells[0]!.slice(0, 4), max: Number(cells[2]), min: Number(cells[3]) }));
  // Totals worked separately from the same file.
  test.each([
    ['2012', 366, 1835.2, 4808.8],
    ['2013', 365, 1729.75, 4449.8],
    ['2014', 365, 1466.4, 3963.1],
    ['2015', 365, 1408.75, 3871.4],
  ])('%s, %i days: %d K·day to 15.5 °C, %d °F·day to 65 °F', (year, count, mean155, mean65) => {
    const ofYear = days.filter((day) => day.year === year);
    const means = ofYear.map((day) => (day.max + day.min) / 2);
    expect(ofYear.length).toBe(count);
    expect(degreeDaysFromMeans(means, 15.5)).toBeCloseTo(mean155, 2);
    expect(
      degreeDaysFromMeans(
        means.map((c) => c * 1.8 + 32),
        65,
      ),
    ).toBeCloseTo(mean65, 1);
  });
});
