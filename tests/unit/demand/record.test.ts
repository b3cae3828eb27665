import { describe, expect, test } from 'vitest';
import { toCivilDate, toDayNumber } from '../../../src/model/calendar/civil.ts';
import { type FittedRecord, fitRecord, informFit } from '../../../src/model/demand/fit-record.ts';
import { findRecord, type HeatRecord, type RecordSpan } from '../../../src/model/demand/record.ts';
import { typicalUse } from '../../../src/model/demand/record-use.ts';
import { ownTemperatures, putWeather, typicalOn } from '../../../src/model/demand/record-weather.ts';
import { showSignature } from '../../../src/model/demand/show-signature.ts';
import type { EvidencePeriod, Series } from '../../../src/model/shapes/evidence.ts';
import { typicalYear } from '../../../src/model/year/typical-year.ts';
import { reference } from '../../../src/reference/index.ts';
import { daySeries, periodSeries, year } from './fixtures.ts';

const START = '2024-01-01';
const first = toDayNumber(START);
const sum = (values: Iterable<number>) => [...values].reduce((total, v) => total + v, 0);
const gas = (values: (number | null)[], id = 'gas', from = START) => daySeries(id, 'gas', 'import', from, values);
const weather = (values: (number | null)[], from = START) =>
  daySeries('weather', 'outdoor-temperature', 'weather', from, values);
const period = (from: string, to: string, kWh: number, quality: EvidencePeriod['quality'] = 'actual') => ({
  from,
  to,
  kWh,
  quality,
});
/** first day after 1 January 2024, days, kWh. */
const shortly = (record: HeatRecord | null) => record?.spans.map((span) => [span.first - first, span.days, span.kWh]);

describe('the heating record among the series', () => {
  test('days of use that are there and not below nothing, a second file only where the first has none', () => {
    const found = findRecord('gas-condensing', [gas([9, 8], 'short', '2024-01-03'), gas([5, null, -1, 0])])!;
    expect(shortly(found)).toEqual([
      [0, 1, 5],
      [2, 1, 9],
      [3, 1, 0],
    ]);
    expect(found).toMatchObject({ meter: 'fuel', carrier: 'gas', deliveries: false, leftOut: 0 });
    expect(found.series.map(({ id }) => id)).toEqual(['gas', 'short']);
  });
  test('days come before periods, however long; of a bill the days that are free have what the others leave of it', () => {
    const bills = periodSeries('bills', 'gas', [
      period('2023-11-01', '2023-12-01', 600, 'estimated'),
      period('2023-12-01', '2024-01-02', 700),
      period('2024-01-03', '2024-02-01', 900),
      period('2024-02-01', '2024-02-01', 5),
      period('2024-03-01', '2024-02-20', 5),
      period('2024-03-01', '2024-04-01', -1),
      period('2024-03-01', '2024-04-01', 0),
      period('2024-03-31', '2024-05-01', 50),
    ]);
    const found = findRecord('gas-condensing', [bills, gas([5, 6])])!;
    expect(shortly(found)).toEqual([
      [-61, 30, 600],
      [-31, 31, 695],
      [0, 1, 5],
      [1, 1, 6],
      [2, 29, 900],
      [60, 31, 0],
      [91, 30, 50],
    ]);
    expect(found.spans.map(({ estimated }) => estimated)).toEqual([true, ...new Array(6).fill(false)]);
    expect(found.leftOut).toBe(3);
    expect(found.series.map(({ id }) => id)).toEqual(['gas', 'bills']);
  });
  test.each([
    ['gas-condensing', ['oil', 'gas'], 'gas', 'fuel'],
    ['other', ['oil', 'gas'], 'gas', 'fuel'],
    ['other', ['oil'], 'oil', 'fuel'],
    ['oil', ['gas'], undefined, undefined],
    ['heat-pump', ['whole', 'pump', 'heat'], 'heat', 'heat'],
    ['heat-pump', ['whole', 'pump'], 'pump', 'heat-pump'],
    ['heat-pump', ['whole', 'empty'], 'whole', 'whole-house'],
    ['storage', ['whole', 'export'], 'whole', 'whole-house'],
  ] as const)('%s with %j: %s', (system, ids, id, meter) => {
    const of: Record<string, Series> = {
      gas: gas([5, 6]),
      oil: periodSeries('oil', 'oil', [period('2024-01-01', '2024-06-01', 5000)]),
      whole: daySeries('whole', 'electricity', 'import', START, [9, 9]),
      export: daySeries('export', 'electricity', 'export', START, [9, 9]),
      pump: daySeries('pump', 'electricity', 'heat-pump', START, [7, 7]),
      empty: daySeries('empty', 'electricity', 'heat-pump', START, [null, null]),
      heat: daySeries('heat', 'heat', 'heat-output', START, [20, 20]),
    };
    const found = findRecord(
      system,
      ids.map((one) => of[one]!),
    );
    expect(found?.series[0]?.id).toBe(id);
    expect(found?.meter).toBe(meter);
  });
  test('slips of a day are what was used since the one before; spans longer than two days stand as they are', () => {
    const oil = (...periods: EvidencePeriod[]) => findRecord('oil', [periodSeries('tank', 'oil', periods)]);
    const slips = [
      period('2024-03-01', '2024-03-02', 800),
      period('2024-01-01', '2024-01-02', 500),
      period('2024-05-30', '2024-06-01', 700),
    ];
    const found = oil(...slips.toSorted((a, b) => a.from.localeCompare(b.from)))!;
    expect(found.deliveries).toBe(true);
    expect(shortly(found)).toEqual([
      [0, 60, 800],
      [60, 90, 700],
    ]);
    expect(shortly(oil(period('2024-01-01', '2024-01-04', 500), period('2024-03-01', '2024-03-02', 800)))).toEqual([
      [0, 3, 500],
      [60, 1, 800],
    ]);
    expect(oil(slips[0]!)).toBeNull();
    expect(findRecord('oil', [daySeries('meter', 'oil', 'import', START, [3, 4])])!.deliveries).toBe(false);
  });
});

const recordOf = (spans: Partial<RecordSpan>[], more: Partial<HeatRecord> = {}): HeatRecord => ({
  meter: 'fuel',
  carrier: 'gas',
  series: [gas([])],
  spans: spans.map((span) => ({ first, days: 1, kWh: 10, estimated: false, ...span })),
  deliveries: false,
  leftOut: 0,
  ...more,
});
const daysFrom = (from: number, count: number, kWh: (i: number) => number = () => 10) =>
  Array.from({ length: count }, (_, i) => ({ first: first + from + i, kWh: kWh(i) }));
const own = (count: number, from = 0) =>
  new Map(Array.from({ length: count }, (_, i) => [first + from + i, 3 + i / 100]));

describe('weather put to a record', () => {
  test('the typical year’s by the day of the year; 31 December of a leap year is that of a common one', () => {
    expect(typicalOn(year, toDayNumber('2031-01-01'))).toBe(year.dailyMeanC[0]);
    expect(typicalOn(year, toDayNumber('2031-03-01'))).toBe(year.dailyMeanC[59]);
    expect(typicalOn(year, toDayNumber('2024-12-31'))).toBe(year.dailyMeanC[364]);
  });
  test('the household’s own days, the first of two files', () => {
    const found = ownTemperatures([
      weather([1, null, 3]),
      gas([9]),
      weather([7, 8, 9]),
      periodSeries('p', 'gas', [period(START, '2024-02-01', 1)]),
    ]);
    expect([...found]).toEqual([
      [first, 1],
      [first + 2, 3],
      [first + 1, 8],
    ]);
  });
  test.each([
    ['8 of 10 days', daysFrom(0, 10), own(8), 'own', 'day', 8],
    ['24 of 31 days', daysFrom(0, 31), own(24), 'typical', 'month', 1],
    ['270 of 400 days', daysFrom(0, 400), own(270), 'own', 'day', 270],
    ['269 of 400 days', daysFrom(0, 400), own(269), 'typical', 'month', 13],
    ['9 of a period’s 10 days', [{ days: 10 }], own(9), 'own', 'period', 1],
    ['17 of a period’s 20 days', [{ days: 20 }], own(17), 'typical', 'period', 1],
    ['a day and a period', [{ days: 1 }, { first: first + 1, days: 9 }], own(10), 'own', 'period', 2],
    [
      'a day and a period without any',
      [...daysFrom(0, 31), { first: first + 31, days: 9 }],
      own(0),
      'typical',
      'period',
      2,
    ],
  ] as const)('%s', (_name, spans, temperatures, kind, length, count) => {
    const found = putWeather(recordOf([...spans]), temperatures, year);
    expect([found.weather, found.period, found.data.days.length]).toEqual([kind, length, count]);
  });
  test('a day that lacks its temperature in a period has the typical one', () => {
    const { data } = putWeather(
      recordOf([
        { first: first - 5, days: 5 },
        { days: 10, kWh: 40 },
      ]),
      new Map([...own(9), ...own(5, -5)]),
      year,
    );
    expect([...data.first]).toEqual([first - 5, first]);
    expect([...data.days]).toEqual([5, 10]);
    expect([...data.perDayKWh]).toEqual([2, 4]);
    expect([...data.start]).toEqual([0, 5, 15]);
    expect([...data.outdoorC.slice(5)]).toEqual([...own(9).values(), typicalOn(year, first + 9)]);
  });
  test('without weather days become months, those of at least eight tenths of their days, as if whole', () => {
    // 25 of January's 31 days are enough, 24 are not; February 2024 has 29, of which 23.2 are asked for.
    const of = (january: number, february: number) =>
      putWeather(
        recordOf([
          { first: first + 91, days: 30, kWh: 60 },
          ...daysFrom(31, february, () => 4),
          ...daysFrom(6, january, () => 6),
        ]),
        new Map(),
        year,
      ).data;
    expect([...of(25, 24).first]).toEqual([first, first + 31, first + 91]);
    expect([...of(24, 23).first]).toEqual([first + 91]);
    const { days, perDayKWh, outdoorC } = of(25, 24);
    expect([...days]).toEqual([31, 29, 30]);
    expect([...perDayKWh].map((v) => Math.round(v * 1e9) / 1e9)).toEqual([6, 4, 2]);
    expect(outdoorC[0]).toBe(year.dailyMeanC[0]);
  });
});

/** Own weather that goes from `coldC` to `mildC` over the record, evenly. */
const slope = (count: number, coldC: number, mildC: number) =>
  Array.from({ length: count }, (_, i) => coldC + ((mildC - coldC) * i) / (count - 1));
const laid = (spans: Partial<RecordSpan>[], temperatures: number[], more: Partial<HeatRecord> = {}) =>
  fitRecord(recordOf(spans, more), [weather(temperatures)], year);

describe('a line is laid through a record', () => {
  test.each([
    ['of 60 days', daysFrom(0, 60), slope(60, 2, 12), true],
    ['not of 59', daysFrom(0, 59), slope(59, 2, 12), false],
    ['of 4 periods', [0, 10, 20, 30].map((k) => ({ first: first + k, days: 10 })), slope(40, 2, 15), true],
    ['not of 3', [0, 10, 20].map((k) => ({ first: first + k, days: 10 })), slope(30, 2, 15), false],
    ['that differs by 4 K below 15.5 °C', daysFrom(0, 60), slope(60, 11.5, 18), true],
    ['not by less', daysFrom(0, 60), slope(60, 11.6, 18), false],
  ])('%s', (_name, spans, temperatures, there) => {
    expect(laid(spans, temperatures).signature !== undefined).toBe(there);
  });
  test('not through deliveries', () => {
    expect(laid(daysFrom(0, 60), slope(60, 2, 12), { deliveries: true }).signature).toBeUndefined();
  });
  test('with its days, its use and the share of its days that was estimated', () => {
    const found = laid(
      [
        { days: 10, kWh: 30, estimated: true },
        { first: first + 10, days: 30, kWh: 50 },
      ],
      slope(40, 2, 12),
    );
    expect([found.days, found.kWh, found.estimatedShare]).toEqual([40, 80, 0.25]);
  });
  test('once: four records of one meter are kept', () => {
    const series = [gas([1])];
    const temperatures = [weather(slope(60, 2, 12))];
    const of = (spans: number, from = 0, y = year) =>
      fitRecord(recordOf(daysFrom(from, spans), { series }), temperatures, y);
    const kept = of(60);
    expect(of(60)).toBe(kept);
    const others = [
      () => of(59),
      () => of(60, 1),
      () => of(60, 0, typicalYear(reference.regions[3]!, 2025, 'Europe/London')),
    ];
    for (const other of others) {
      expect(other()).not.toBe(kept);
      expect(of(60)).toBe(kept);
    }
    expect(fitRecord(recordOf(daysFrom(0, 60), { series }), [weather(slope(60, 2, 12))], year)).not.toBe(kept);
    expect(of(60)).not.toBe(kept);
    expect(fitRecord(recordOf(daysFrom(0, 60), { series: [...series, gas([2])] }), temperatures, year)).not.toBe(
      of(60),
    );
  });
  test('weighed with what is known, once, and only where there is a line and any use', () => {
    const known = { perDayKWh: 8, errorPerDayKWh: 4, methodErrorPerDayKWh: 3, swing: 0.2, swingError: 0.06 };
    const fitted = laid(
      daysFrom(0, 60, (i) => 30 - i / 2),
      slope(60, 2, 12),
    );
    const found = informFit(fitted, known, undefined)!;
    expect(informFit(fitted, { ...known }, undefined)).toBe(found);
    expect(informFit(fitted, { ...known, perDayKWh: 9 }, undefined)).not.toBe(found);
    expect(Math.abs(informFit(fitted, known, 20)!.baseC - 20)).toBeLessThan(Math.abs(found.baseC - 20));
    expect(
      informFit(
        laid(
          daysFrom(0, 60, () => 0),
          slope(60, 2, 12),
        ),
        known,
        undefined,
      ),
    ).toBeNull();
    expect(informFit(laid(daysFrom(0, 20), slope(20, 2, 12)), known, undefined)).toBeNull();
  });
  test('and shown with the mean temperature and use of each span', () => {
    const temperatures = [...slope(10, 0, 9), ...slope(20, 1, 3), ...slope(10, 10, 12), ...slope(10, 14, 20)];
    const spans = [
      [0, 10, 90],
      [10, 20, 160],
      [30, 10, 40],
      [40, 10, 10],
    ].map(([k, days, kWh]) => ({ first: first + k!, days: days!, kWh: kWh! }));
    const record = recordOf(spans);
    const fitted = laid(spans, temperatures);
    const line = fitted.signature!;
    expect(showSignature(record, fitted, line)).toEqual({
      carrier: 'gas',
      seriesId: 'gas',
      from: START,
      to: toCivilDate(first + 50),
      count: 4,
      period: 'period',
      baseC: line.baseC,
      basePerDayKWh: line.line.intercept,
      slopeKWhPerKDay: line.line.slope,
      slopeStandardError: line.line.slopeError,
      baseStandardError: line.line.interceptError,
      r2: line.line.r2,
      cvRmse: line.cvRmse,
      rho: line.rho,
      points: [
        [4.5, 9],
        [2, 8],
        [11, 4],
        [17, 1],
      ].map(([outdoorC, kWhPerDay]) => ({ outdoorC: expect.closeTo(outdoorC!, 9), kWhPerDay })),
    });
  });
});

describe('a typical year’s use by the total alone', () => {
  const known = { perDayKWh: 8, errorPerDayKWh: 4, methodErrorPerDayKWh: 3, swing: 0.2, swingError: 0.06 };
  const below = (temperatures: ArrayLike<number>, baseC: number) =>
    sum(Array.from(temperatures, (c) => Math.max(0, baseC - c)));
  const spread = { winter: 0.1, habits: 0.05 };
  const wave = (day: number) => {
    const start = toDayNumber(`${toCivilDate(day).slice(0, 4)}-01-01`);
    return Math.cos((2 * Math.PI * (day - start - 15)) / 365.25);
  };
  test.each([
    ['own weather of 100 days', [60, 40], 3000, slope(100, 0, 14), undefined, false],
    ['less use than the base would be', [60, 40], 500, slope(100, 0, 14), undefined, false],
    ['a base temperature typed', [60, 40], 3000, slope(100, 0, 14), 14, false],
    ['a tank', [60, 40], 3000, slope(100, 0, 14), undefined, true],
    ['329 days', [200, 129], 9000, slope(329, 0, 18), undefined, false],
    ['330 days', [200, 130], 9000, slope(330, 0, 18), undefined, false],
    ['two years', [400, 331], 19_000, slope(731, 0, 18), undefined, true],
    ['the typical year’s weather', [60, 40], 3000, null, undefined, false],
    ['the same of two years', [400, 331], 19_000, null, undefined, true],
    ['degree days only near the base', [100], 3000, slope(100, 13.8, 14), undefined, false],
  ])('%s', (_name, lengths, kWh, temperatures, typedC, deliveries) => {
    const days = sum(lengths);
    const spans = lengths.map((length, i) => ({
      first: first + sum(lengths.slice(0, i)),
      days: length,
      kWh: (kWh * length) / days,
    }));
    const record = recordOf(spans, { deliveries });
    const fitted: FittedRecord = fitRecord(record, temperatures ? [weather(temperatures)] : [], year);
    const found = typicalUse(record, fitted, year, { known, ...(typedC ? { baseC: typedC } : {}) }, spread, null)!;
    const outdoor = temperatures ?? Array.from({ length: days }, (_, i) => typicalOn(year, first + i));
    const baseC = typedC ?? 15.5;
    const scaleAt = (c: number) => below(year.dailyMeanC, c) / below(outdoor, c);
    // Hot water and lights take more in winter: 8 kWh a day and a fifth of it with the wave of the year.
    const baseOfRecord = sum(outdoor.map((_, i) => 8 * (1 + 0.2 * wave(first + i))));
    const space = Math.max(0, kWh - baseOfRecord) * scaleAt(baseC);
    expect(found.spaceKWh).toBeCloseTo(space, 5);
    expect(found.baseKWh).toBeCloseTo((8 * 365 * Math.min(kWh, baseOfRecord)) / baseOfRecord, 5);
    expect(found.baseErrorKWh).toBeCloseTo(3 * 365, 9);
    expect(found).toMatchObject({ baseC, by: 'total', degreeDays: expect.closeTo(below(year.dailyMeanC, baseC), 6) });
    const years = Math.max(1, days / 365.25);
    const standIn = temperatures ? 0 : 0.1 / Math.sqrt(years);
    expect(found.weatherShare).toBeCloseTo(standIn, 12);
    // A total shows neither how years nor how months differ: 0.05 a year, 0.12 a month, seven heating months a year.
    const ofMonths = 0.12 / Math.sqrt(Math.max(1, (7 * days) / 365.25));
    const errorK = typedC ? 0.8 : 1.8;
    const ofBase = Math.abs(scaleAt(baseC + errorK) - scaleAt(baseC - errorK)) / (2 * scaleAt(baseC));
    const shares = [
      standIn,
      0.05 / Math.sqrt(years),
      ofMonths,
      days < 330 ? 0.1 : 0,
      Number.isFinite(ofBase) ? ofBase : 1,
    ];
    const tank = deliveries ? Math.SQRT2 * 0.25 * (kWh / lengths.length) * scaleAt(baseC) : 0;
    const method = 3 * days * scaleAt(baseC);
    expect(found.spaceErrorKWh).toBeCloseTo(Math.hypot(tank, method, space * Math.hypot(...shares)), 5);
  });
  test('150 K·day are enough to say something, 149 are not', () => {
    const of = (perDayK: number) => {
      const record = recordOf([{ days: 20, kWh: 500 }]);
      return typicalUse(
        record,
        fitRecord(record, [weather(new Array<number>(20).fill(15.5 - perDayK))], year),
        year,
        { known },
        spread,
        null,
      );
    };
    expect([of(7.5) !== null, of(7.45)]).toEqual([true, null]);
  });
  test('where nothing is known to be the base there is none', () => {
    const record = recordOf([{ days: 100, kWh: 3000 }]);
    const fitted = fitRecord(record, [weather(slope(100, 0, 14))], year);
    const none = { ...known, perDayKWh: 0 };
    expect(typicalUse(record, fitted, year, { known: none }, spread, null)!.baseKWh).toBe(0);
  });
});

test('a typical year’s use by the line: its own errors, habits and, of weather that stands in, nine tenths of a winter', () => {
  const known = { perDayKWh: 8, errorPerDayKWh: 4, methodErrorPerDayKWh: 3, swing: 0.2, swingError: 0.06 };
  const covariance = [
    [0.04, 0, 0],
    [0, 0, 0],
    [0, 0, 0.0016],
  ];
  const informed = {
    lines: [{ baseC: 15, weight: 1, line: [6, 1, 4] as const, covariance }],
    baseC: 15,
    baseErrorK: 0,
  };
  const degreeDays = sum(Array.from(year.dailyMeanC, (c) => Math.max(0, 15 - c)));
  for (const [temperatures, byMonth, standIn] of [
    [slope(100, 0, 14), false, 0],
    [null, true, 0.09],
  ] as const) {
    const record = recordOf(daysFrom(0, 100));
    const fitted = fitRecord(record, temperatures ? [weather([...temperatures])] : [], year);
    const found = typicalUse(record, fitted, year, { known }, { winter: 0.1, habits: 0.05 }, informed)!;
    expect(found).toMatchObject({
      baseC: 15,
      by: 'signature',
      weatherShare: expect.closeTo(standIn, 12),
      degreeDays: expect.closeTo(degreeDays, 6),
    });
    const habits = byMonth ? 0.05 : Math.hypot(0.05, 0.12 / Math.sqrt((7 * 100) / 365.25));
    const [space, base] = [4 * degreeDays, 6 * 365];
    expect(found.spaceKWh).toBeCloseTo(space, 6);
    expect(found.baseKWh).toBeCloseTo(base, 6);
    expect(found.spaceErrorKWh).toBeCloseTo(Math.hypot(0.04 * degreeDays, space * standIn, space * habits), 6);
    expect(found.baseErrorKWh).toBeCloseTo(Math.hypot(0.2 * 365, base * habits), 6);
  }
});
