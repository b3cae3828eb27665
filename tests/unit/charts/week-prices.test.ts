import { describe, expect, test } from 'vitest';
import { weekPricesSentence } from '../../../src/charts/week-prices/sentence.ts';
import { weekPricesSeries } from '../../../src/charts/week-prices/series.ts';
import { weekPricesTable } from '../../../src/charts/week-prices/table.ts';
import { allHours, priceSeries, version } from '../tariff/tariffs.ts';

describe('a week of dated prices', () => {
  // June 2026 begins on a Monday: four whole weeks, then two days. Price = half-hour + week of the month.
  const dated = version([allHours(25)], {
    series: priceSeries('2026-06-01', 28, (day, half) => half + Math.floor(day / 7)),
    vat: { rate: 0.05, included: false },
  });
  const week = weekPricesSeries(dated, 6);
  test('shows the mean of each half-hour, VAT in it', () => {
    expect(week.steps).toHaveLength(337);
    // Weeks add 0, 1, 2 and 3: a mean of 1.5.
    expect(week.steps[0]!.pence).toBeCloseTo(1.5 * 1.05, 9);
    expect(week.steps[6 * 48 + 47]!.pence).toBeCloseTo(48.5 * 1.05, 9);
  });
  test('its classes hold the whole week', () => {
    expect(week.bands.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9);
    expect(week.bands.length).toBeLessThanOrEqual(8);
  });
  test('is said as a range', () => {
    expect(weekPricesSentence(week)).toBe('In a normal week of June a kWh costs 1.6 p to 50.9 p, by the half-hour.');
  });
  test('a month without prices takes all days', () => {
    expect(weekPricesSeries(dated, 12).steps[0]!.pence).toBeCloseTo(1.5 * 1.05, 9);
  });
  test('a day that nobody priced is a gap', () => {
    const short = version([allHours(25)], { series: priceSeries('2026-06-01', 2, () => 10) });
    expect(weekPricesSeries(short, 6).steps[5 * 48]!.pence).toBeNull();
    expect(weekPricesTable(weekPricesSeries(short, 6)).rows.some(({ cells }) => cells.includes('no price'))).toBe(true);
  });
});
