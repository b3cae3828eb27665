import { describe, expect, test } from 'vitest';
import { usualOther } from '../../../src/model/bill-gap/bill-doubts.ts';
import type { Series } from '../../../src/model/shapes/evidence.ts';
import { emptyHousehold } from '../../../src/model/shapes/household.ts';
import { reference } from '../../../src/reference/index.ts';
import { daysOf, hasHole, listBills, listMeters, listSpans } from '../../../src/screens/check/bills.ts';
import {
  draftOfBill,
  emptyDraft,
  findOwnWeather,
  finishDraft,
  spanOf,
} from '../../../src/screens/check/check-draft.ts';
import { unknownSentences } from '../../../src/words/check.ts';

const series = (part: Partial<Series>): Series => ({
  id: 's1',
  evidenceId: 'e1',
  name: 'electricity.csv',
  carrier: 'electricity',
  role: 'import',
  resolution: 'period',
  from: '2026-10-01',
  to: '2027-02-01',
  total: 0,
  present: 1,
  expected: 1,
  estimatedCount: 0,
  ...part,
});
const bill = (from: string, to: string, kWh: number, more = {}) => ({
  from,
  to,
  kWh,
  quality: 'actual' as const,
  ...more,
});

const whole = {
  ...emptyDraft('p1'),
  from: '2026-10-01',
  lastDay: '2027-01-31',
  kWh: 2100,
  pencePerKWh: 27.5,
};

describe('a bill as it is typed', () => {
  test('whole: the first day after the last is counted to', () => {
    const result = finishDraft(whole);
    if (result.kind !== 'whole') throw new Error(result.sentence);
    expect(result.days).toBe(123);
    expect(result.input).toEqual({
      estimateId: 'p1',
      from: '2026-10-01',
      to: '2027-02-01',
      boughtKWh: 2100,
      otherKWh: 0,
      meter: 'heat-pump',
      pencePerKWh: 27.5,
      readings: 'actual',
    });
  });

  test('other electricity comes off a whole-house meter', () => {
    const result = finishDraft({ ...whole, meter: 'whole-house', otherKWh: 900, totalPounds: 330, degreeDays: 1200 });
    expect(result.kind === 'whole' && result.input).toMatchObject({
      boughtKWh: 1200,
      otherKWh: 900,
      totalPence: 33_000,
      degreeDays: 1200,
    });
  });

  test('what a whole home takes beside heating may stay unknown, and is not none', () => {
    const result = finishDraft({ ...whole, meter: 'whole-house' });
    if (result.kind !== 'whole') throw new Error(result.sentence);
    expect([result.input.boughtKWh, 'otherKWh' in result.input]).toEqual([2100, false]);
  });

  test.each([
    [{ from: '' }, 'Type the first and the last day of the bill.'],
    [{ from: '2026-02-30' }, 'Type the first and the last day of the bill.'],
    [{ lastDay: '2026-09-30' }, 'The last day is before the first day.'],
    [{ lastDay: '2029-01-31' }, 'The bill is longer than two years. Check its days.'],
    [{ kWh: undefined }, 'Type the kWh of the bill.'],
    [{ pencePerKWh: undefined }, 'Type the price per kWh, VAT included.'],
    [{ meter: 'whole-house' as const, otherKWh: 2101 }, 'The other electricity is more than the whole bill.'],
  ])('%o: %s', (part, sentence) => {
    expect(finishDraft({ ...whole, ...part })).toEqual({ kind: 'wanting', sentence });
  });

  test('a bill of the evidence brings its days, units and price', () => {
    const known = listBills(
      [series({ role: 'heat-pump', periods: [bill('2026-11-01', '2026-12-01', 500, { costPence: 13_750 })] })],
      '2026-10-01',
    )[0]!;
    expect(draftOfBill(emptyDraft('p1'), known)).toMatchObject({
      from: '2026-11-01',
      lastDay: '2026-11-30',
      kWh: 500,
      pencePerKWh: 27.5,
      totalPounds: 137.5,
      meter: 'heat-pump',
    });
  });
});

describe('what of the evidence can be held against a written estimate', () => {
  const periods = [bill('2026-09-01', '2026-10-01', 100), bill('2026-10-01', '2026-11-01', 200)];
  test('electricity bought after the written estimate, the newest first', () => {
    const found = listBills(
      [
        series({ periods }),
        series({ id: 's2', role: 'export', periods }),
        series({ id: 's3', carrier: 'gas', periods }),
      ],
      '2026-09-01',
    );
    expect(found.map(({ period, series: { id } }) => [id, period.kWh])).toEqual([
      ['s1', 200],
      ['s1', 100],
    ]);
    expect(listBills([series({ periods })], '2026-09-15').map(({ period }) => period.kWh)).toEqual([200]);
  });

  const daily = series({ days: { first: '2026-10-01', values: [1, 2, null, 4] } });
  test.each([
    ['2026-10-01', '2026-10-03', [1, 2]],
    ['2026-10-02', '2026-10-04', null],
    ['2026-09-30', '2026-10-02', null],
    ['2026-10-04', '2026-10-06', null],
    ['2026-10-02', '2026-10-02', null],
  ])('days from %s to %s: %o', (from, to, expected) => {
    expect(daysOf(daily, from, to)).toEqual(expected);
  });
  test.each([
    ['2026-10-01', '2026-10-05', true],
    ['2026-10-01', '2026-10-03', false],
    ['2026-09-30', '2026-10-05', false],
    ['2026-10-02', '2026-10-06', false],
  ])('days missing within %s to %s: %s', (from, to, expected) => {
    expect(hasHole(daily, from, to)).toBe(expected);
  });
  test('other things take their share of the year, more of it in winter', () => {
    const known = (value: number) => ({ value, grade: 'measured' as const, origin: 'invented' });
    const empty = emptyHousehold('h1', 'Invented home');
    const household = { ...empty, home: { ...empty.home, floorAreaM2: known(100), people: known(2) } };
    const year = usualOther(household, { from: '2027-01-01', to: '2028-01-01' }, reference, [], '2026-01-01').kWh;
    expect(year).toBeCloseTo(231 * 200 ** 0.4714, 3); // SAP 10.2 Appendix L, from memory
    const winter = usualOther(household, { from: '2026-12-01', to: '2027-03-01' }, reference, [], '2026-01-01').kWh;
    expect(winter).toBeGreaterThan((1.1 * year * 90) / 365);
    expect(winter).toBeLessThan((1.16 * year * 90) / 365);
    // An electric car: 10,000 km at 18 kWh a 100 km, half of it charged at home.
    const car = { kmPerYear: known(10_000), kWhPer100Km: known(18), homeShare: known(0.5) };
    const withCar = usualOther(
      { ...household, car },
      { from: '2026-12-01', to: '2027-03-01' },
      reference,
      [],
      '2026-01-01',
    ).kWh;
    expect(withCar - winter).toBeCloseTo((900 * 90) / 365, 6);
  });
  test('meters read by the day can be summed', () => {
    expect(listMeters([daily, series({ periods })])).toEqual([daily]);
  });

  const year = (from: string, count: number, missing: readonly number[] = []) =>
    series({
      role: 'heat-pump',
      to: '2027-01-15',
      days: { first: from, values: Array.from({ length: count }, (_, i) => (missing.includes(i) ? null : 1)) },
    });
  test.each([
    [
      'a year and a bit',
      year('2026-01-10', 371),
      '2026-03-01',
      [
        ['2026-12-01', '2027-01-01'],
        ['2026-10-01', '2027-01-01'],
        ['2026-03-01', '2027-01-01'],
      ],
    ],
    [
      'a hole in October',
      year('2026-01-10', 371, [280]),
      '2026-03-01',
      [
        ['2026-12-01', '2027-01-01'],
        ['2026-11-01', '2027-01-01'],
      ],
    ],
    ['no whole month since the written estimate', year('2026-12-20', 27), '2026-03-01', []],
    ['estimated after them', year('2026-01-10', 371), '2027-01-05', []],
  ] as [string, Series, string, string[][]][])('whole months of readings: %s', (_, meter, estimatedOn, expected) => {
    expect(listSpans([meter], estimatedOn).map(({ from, to }) => [from, to])).toEqual(expected);
  });

  test('weather serves where it covers all the days', () => {
    const weather = series({
      carrier: 'outdoor-temperature',
      role: 'weather',
      days: { first: '2026-10-01', values: [] },
    });
    expect(findOwnWeather([weather], '2026-10-01', '2027-02-01')).toBe(weather);
    expect(findOwnWeather([weather], '2026-09-30', '2027-02-01')).toBeNull();
  });

  test('days in the typed form', () => {
    expect(spanOf({ from: '2026-10-01', lastDay: '2026-10-31' })).toEqual({ from: '2026-10-01', to: '2026-11-01' });
    expect(spanOf({ from: '2026-10-01', lastDay: '' })).toBeNull();
  });
});

test('what is not known is said: weather, reading and other electricity', () => {
  const { input } = finishDraft(whole) as { input: Parameters<typeof unknownSentences>[0]['input'] };
  expect(unknownSentences({ input, parts: [] })).toHaveLength(1);
  expect(
    unknownSentences({ input: { ...input, readings: 'estimated', meter: 'whole-house' }, parts: [] }).join(' '),
  ).toMatch(/no weather.*estimated reading.*not metered/);
});
