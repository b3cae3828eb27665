/** Series, sentences and tables of the charts that are painted in the window only. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { monthlySentence } from '../../../src/charts/monthly/sentence.ts';
import { monthlySeries } from '../../../src/charts/monthly/series.ts';
import { monthlyTable } from '../../../src/charts/monthly/table.ts';
import { readingsSentence } from '../../../src/charts/readings/sentence.ts';
import { dayTicks, readingsSeries } from '../../../src/charts/readings/series.ts';
import { readingsTable } from '../../../src/charts/readings/table.ts';
import { signatureChartSentence } from '../../../src/charts/signature/sentence.ts';
import { signatureSeries } from '../../../src/charts/signature/series.ts';
import { signatureTable } from '../../../src/charts/signature/table.ts';
import { weekPricesSentence } from '../../../src/charts/week-prices/sentence.ts';
import { spreadLabels, weekPricesSeries } from '../../../src/charts/week-prices/series.ts';
import { weekPricesTable } from '../../../src/charts/week-prices/table.ts';
import type { TariffVersion } from '../../../src/model/shapes/tariff.ts';
import { thin as thinBy } from '../../../src/model/thin/thin.ts';
import { larchRise } from '../leave-behind/larch-rise.ts';

describe('cost by month', () => {
  const series = monthlySeries(larchRise());
  test('the months add up to the year', () => {
    const pump = larchRise().systems[0]!;
    expect(series.rows.reduce((sum, row) => sum + row.pump!, 0)).toBeCloseTo(pump.cost.value, 6);
    expect(monthlyTable(series).rows.at(-1)!.cells).toEqual(['Year', '£1,193', '£1,608']);
  });
  test.each([
    [
      series,
      'With the heat pump January costs most, about £191. July costs least, £27. It costs less than “Gas boiler, as now” in every month.',
    ],
    [monthlySeries(larchRise({ electricityShare: 3 })), 'in no month.'],
    [{ ...series, besideName: '' }, 'July costs least, £27.'],
    [{ ...series, rows: [] }, 'The cost by month is not known yet.'],
    [
      { ...series, rows: series.rows.map((row) => ({ ...row, pump: 5000, beside: null })) },
      'Every month costs about £50 with the heat pump.',
    ],
  ])('sentence %#', (one, said) => expect(monthlySentence(one)).toContain(said));
});

describe('readings thinned to pixels', () => {
  const reading = fc.option(fc.double({ min: -100, max: 100, noNaN: true }), { nil: null });
  test('keep first, last, lowest and highest, the order, and every long gap', () => {
    fc.assert(
      fc.property(
        fc.array(reading, { minLength: 1, maxLength: 3000 }),
        fc.integer({ min: 5, max: 400 }),
        (values, most) => {
          const all = values.map((value, minute) => ({ minute, value }));
          const thin: readonly (typeof all)[number][] = thinBy(all, most, ({ value }) => value);
          expect(thin.length).toBeLessThanOrEqual(Math.max(most, 5));
          expect([thin[0], thin.at(-1)]).toEqual([all[0], all.at(-1)]);
          const known = (some: readonly (typeof all)[number][]) =>
            some.flatMap((one) => (one.value === null ? [] : [one.value]));
          if (known(all).length > 0) {
            expect(Math.max(...known(thin))).toBe(Math.max(...known(all)));
            expect(Math.min(...known(thin))).toBe(Math.min(...known(all)));
          }
          expect(thin.slice(1).every((one, i) => one.minute > thin[i]!.minute)).toBe(true);
          expect(thin.some((one) => one.value === null)).toBe(values.some((value) => value === null));
        },
      ),
    );
  });
  test('ten years of half-hours come down to the pixels and keep a single spike', () => {
    const all = Array.from({ length: 175_200 }, (_, minute) => ({ minute, value: minute === 88_888 ? 9 : 0.3 }));
    const thin: readonly (typeof all)[number][] = thinBy(all, 900, ({ value }) => value);
    expect(thin.length).toBeLessThanOrEqual(900);
    expect(thin.find((one) => one.value === 9)?.minute).toBe(88_888);
  });
});

describe('readings of a file', () => {
  const points = Array.from({ length: 96 }, (_, i) => ({
    at: `2025-01-0${1 + Math.floor(i / 48)}T${String(Math.floor((i % 48) / 2)).padStart(2, '0')}:${i % 2 ? '30' : '00'}`,
    value: i === 10 ? null : i === 11 ? Number.NaN : i / 100,
  }));
  const series = readingsSeries(points, 'electricity');
  test('missing is a gap, never a nought', () => {
    expect(series.missing).toBe(2);
    expect(series.readings[10]!.value).toBeNull();
    expect(readingsTable(series).rows[10]!.cells).toEqual(['2025-01-01 05:00', 'missing']);
  });
  test('sentence', () => {
    expect(readingsSentence(series)).toBe(
      'From 1 January 2025 to 2 January 2025 each reading of electricity lies between 0.00 and 0.95 kWh. 2 readings are missing.',
    );
    expect(readingsSentence(readingsSeries([], 'gas'))).toBe('No readings could be shown.');
  });
  test('the axis names midnights', () => {
    expect(dayTicks(series.readings)).toHaveLength(2);
    expect(
      dayTicks(
        readingsSeries(
          Array.from({ length: 365 }, (_, i) => ({ at: new Date(i * 864e5).toISOString(), value: 1 })),
          'gas',
        ).readings,
        8,
      ).length,
    ).toBeLessThanOrEqual(8);
  });
  test('the axis of a year names firsts of months', () => {
    const year = Array.from({ length: 365 }, (_, i) => ({
      at: new Date(Date.UTC(2025, 2, 15 + i, 12)).toISOString(),
      value: 1,
    }));
    const named = dayTicks(readingsSeries(year, 'gas').readings, 6).map((minute) =>
      new Date(minute * 60_000).toISOString().slice(0, 10),
    );
    expect(named).toEqual(['2025-04-01', '2025-06-01', '2025-08-01', '2025-10-01', '2025-12-01', '2026-02-01']);
  });
  test('a long series is tabled by day', () => {
    const long = readingsSeries(
      Array.from({ length: 480 }, (_, i) => ({ at: new Date(i * 18e5).toISOString(), value: 0.5 })),
      'electricity',
    );
    expect(readingsTable(long).rows).toHaveLength(10);
    expect(readingsTable(long).rows[0]!.cells).toEqual(['1970-01-01', '24.000', '0']);
  });
});

describe('use against the weather', () => {
  const signature = {
    carrier: 'gas',
    seriesId: 's',
    from: '2025-01-01',
    to: '2026-01-01',
    count: 3,
    period: 'day' as const,
    baseC: 15,
    basePerDayKWh: 7,
    slopeKWhPerKDay: 5,
    slopeStandardError: 0.1,
    baseStandardError: 0.3,
    r2: 0.9,
    cvRmse: 0.2,
    rho: 0,
    points: [
      { outdoorC: 5, kWhPerDay: 57 },
      { outdoorC: 5.2, kWhPerDay: 55 },
      { outdoorC: Number.NaN, kWhPerDay: 3 },
    ],
  };
  const series = signatureSeries(signature);
  test('the line bends at the base temperature', () => {
    expect(series.line).toEqual([
      { outdoorC: 5, kWhPerDay: 57 },
      { outdoorC: 15, kWhPerDay: 7 },
      { outdoorC: 16, kWhPerDay: 7 },
    ]);
    expect(series.points).toHaveLength(2);
    expect(signatureTable(series).rows).toEqual([{ cells: ['5', '2', '56.0', '57.0'] }]);
  });
  test.each([
    [true, [77, 7, 7]],
    [false, undefined],
  ])('the line before a change stands over the same temperatures where the days since are used: %s', (used, kWh) => {
    const part = { from: '2024-10-01', to: '2025-10-01', count: 365, r2: 0.9 };
    const before = { ...part, baseC: 15, basePerDayKWh: 7, slopeKWhPerKDay: 7 };
    const sure = { share: -0.28, shareLow: -0.3, shareHigh: -0.26, sure: 0.98, used };
    const day = '2025-10-01';
    const change = { on: day, earliest: day, latest: day, ...sure, before, after: before };
    const { line } = signatureSeries(signature, change).before ?? {};
    expect(line?.map((point) => point.kWhPerDay)).toEqual(kWh);
  });
  test.each([
    [
      series,
      'Below 15 °C outside, each degree colder takes 5.0 more kWh of gas a day. About 7 a day are used in any weather.',
    ],
    [{ ...series, slopeKWhPerKDay: -1 }, 'The use of gas does not rise when it gets colder.'],
    [{ ...series, points: [] }, 'There are no days to show yet.'],
  ])('sentence %#', (one, said) => expect(signatureChartSentence(one)).toBe(said));
});

describe('the price through a week', () => {
  const version = (bands: TariffVersion['bands'], included = true): TariffVersion => ({
    from: '2026-10-01',
    standingPencePerDay: 50,
    vat: { rate: 0.05, included },
    bands,
  });
  const twoRate = version([
    { name: 'Night', pencePerKWh: 13, times: [{ from: '23:30', to: '05:30' }] },
    { name: 'Day', pencePerKWh: 28, times: 'rest' },
  ]);
  const series = weekPricesSeries(twoRate, 1);
  test('336 half-hours and an end; six night hours in every twenty-four', () => {
    expect(series.steps).toHaveLength(337);
    expect(series.bands.map((band) => [band.name, band.pence, band.share])).toEqual([
      ['Night', 13, 0.25],
      ['Day', 28, 0.75],
    ]);
    expect([series.steps[10]!.pence, series.steps[11]!.pence, series.steps[47]!.pence]).toEqual([13, 28, 13]);
  });
  test('prices without VAT are shown with it; hours without price are gaps', () => {
    expect(
      weekPricesSeries(version([{ name: 'All', pencePerKWh: 20, times: 'rest' }], false), 6).bands[0]!.pence,
    ).toBeCloseTo(21, 9);
    const gap = weekPricesSeries(
      version([{ name: 'Night', pencePerKWh: 13, times: [{ from: '00:00', to: '06:00' }] }]),
      6,
    );
    expect(gap.steps[20]).toEqual({ half: 20, pence: null, band: '' });
  });
  test('sentence and table', () => {
    expect(weekPricesSentence(series)).toBe(
      'In a week of January a kWh costs 13.0 p at best (“Night”, 25% of the hours). At worst it costs 28.0 p (“Day”, 75%).',
    );
    const blocks = { per: 'day' as const, steps: [{ upToKWh: 3, pencePerKWh: 35 }] };
    const stepped = version([{ name: 'All', pencePerKWh: 20, times: 'rest', blocks }]);
    expect(weekPricesSentence(weekPricesSeries(stepped, 6))).toBe(
      'After the first ones a kWh costs 20.0 p at every hour.',
    );
    expect(weekPricesSentence(weekPricesSeries(version([{ name: 'All', pencePerKWh: 20, times: 'rest' }]), 6))).toBe(
      'A kWh costs 20.0 p at every hour.',
    );
    expect(weekPricesTable(series).rows.map((row) => row.cells)).toEqual([
      ['every day', '00:00 to 05:30', 'Night', '13.0 p', '25%'],
      ['every day', '05:30 to 23:30', 'Day', '28.0 p', '75%'],
      ['every day', '23:30 to 24:00', 'Night', '13.0 p', '25%'],
    ]);
  });
  test('labels move apart and keep their order', () => {
    const moved = spreadLabels([100, 101, 180], 20);
    expect(moved[1]! - moved[0]!).toBeGreaterThanOrEqual(20);
    expect(moved[2]! - moved[1]!).toBeGreaterThanOrEqual(20);
    expect(spreadLabels([10, 90], 20)).toEqual([10, 90]);
  });
});
