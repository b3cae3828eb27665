import { describe, expect, test } from 'vitest';
import { monthlyWarnings, warningLevel } from '../../../src/model/bill-gap/expected-range.ts';
import { followEstimate, followMonths } from '../../../src/model/bill-gap/follow-months.ts';
import { addDays } from '../../../src/model/calendar/civil.ts';
import type { FollowedMonth } from '../../../src/model/shapes/bill-check.ts';
import type { Series } from '../../../src/model/shapes/evidence.ts';
import { sampleEstimate, spreads } from './sample-estimate.ts';

const series = (first: string, values: (number | null)[], carrier: Series['carrier'] = 'electricity'): Series => ({
  id: carrier,
  evidenceId: 'e',
  name: 'made',
  carrier,
  role: carrier === 'electricity' ? 'heat-pump' : 'weather',
  resolution: 'day',
  from: first,
  to: addDays(first, values.length),
  total: 0,
  days: { first, values },
  present: values.length,
  expected: values.length,
  estimatedCount: 0,
});
const days = (count: number, value: number) => new Array<number>(count).fill(value);

// The sample estimate: 5 units a day from October to March, 2 from April to September; a base of 20 °C, 5 °C typical.
test('whole months against the written estimate, part months by their days, short ends left out', () => {
  const record = series('2027-01-10', [...days(22, 5), ...days(28, 7), ...days(31, 5), ...days(3, 2)]);
  const months = followMonths(sampleEstimate(), record, undefined, spreads);
  expect(months.map(({ month, days: count }) => [month, count])).toEqual([
    ['2027-01', 22],
    ['2027-02', 28],
    ['2027-03', 31],
  ]);
  expect(months[1]).toMatchObject({ from: '2027-02-01', to: '2027-03-01', actualKWh: 196, weatherKnown: false });
  expect(months[1]!.estimatedKWh).toBeCloseTo(140, 6);
  expect(months[1]!.verdict).toBe('above');
  expect(months[2]!.verdict).toBe('inside');
  expect(months[2]!.gapSoFarKWh).toBeCloseTo(months[0]!.gapSoFarKWh + 56, 1);
});

test('the weather is put right where it is known', () => {
  const record = series('2027-01-01', days(31, 6));
  const cold = series('2027-01-01', days(31, 0), 'outdoor-temperature');
  const [month] = followMonths(sampleEstimate(), record, cold, spreads);
  // 5 K colder for 31 days at 182 × 3 / 5,475 units a degree day: 15.5 units more than 155.
  expect(month!.expectedKWh).toBeCloseTo(155 + (155 * 182 * 3) / 5475, 4);
  expect(month).toMatchObject({ weatherKnown: true, verdict: 'inside', actualKWh: 186 });
  expect(month!.lowKWh).toBeLessThan(month!.expectedKWh);
  expect(month!.highKWh).toBeGreaterThan(month!.expectedKWh);
});

test('a month with a missing day is not judged and adds nothing to the gap', () => {
  const record = series('2027-01-01', [...days(10, 9), null, ...days(20, 9), ...days(28, 5)]);
  const months = followMonths(sampleEstimate(), record, undefined, spreads);
  expect(months.map(({ verdict, actualKWh }) => [verdict, actualKWh])).toEqual([
    ['unknown', null],
    ['inside', 140],
  ]);
  expect(months[0]!.gapSoFarKWh).toBe(0);
});

/** √(half-range² + z² σ² (365 / n − 1)) of an estimate 15 % down and 20 % up: σ² = 0.06², and winter's beside it where the weather is not known. */
const reach = (share: number, count: number, winter: number) =>
  Math.sqrt(share ** 2 + 1.281_551_6 ** 2 * (0.06 ** 2 + winter ** 2) * (365 / count - 1));

describe('a month by hand', () => {
  const of = (values: number[], weather?: Series) =>
    followMonths(sampleEstimate(), series('2027-01-01', values), weather, spreads);
  test('the range about it, without its weather and with it', () => {
    const winter = (0.08 * 546) / 1276; // rooms take 546 of 1,276 units
    const [month] = of(days(31, 5));
    expect(month!.lowKWh).toBeCloseTo(155 * (1 - reach(0.15, 31, winter)), 2);
    expect(month!.highKWh).toBeCloseTo(155 * (1 + reach(0.2, 31, winter)), 2);
    const [known] = of(days(31, 5), series('2027-01-01', days(31, 5), 'outdoor-temperature'));
    expect(known!.expectedKWh).toBeCloseTo(155, 2);
    expect(known!.lowKWh).toBeCloseTo(155 * (1 - reach(0.15, 31, 0)), 1);
    expect(known!.highKWh).toBeCloseTo(155 * (1 + reach(0.2, 31, 0)), 1);
  });
  test('above and below begin beyond the range', () => {
    const [{ lowKWh, highKWh }] = of(days(31, 5)) as [FollowedMonth];
    const verdict = (kWh: number) => of(days(31, kWh / 31))[0]!.verdict;
    expect([highKWh + 0.1, highKWh - 0.1, lowKWh + 0.1, lowKWh - 0.1].map(verdict)).toEqual([
      'above',
      'inside',
      'inside',
      'below',
    ]);
  });
  test('a week is judged, six days are not; the gap is carried on', () => {
    const months = of([...days(31, 6), ...days(28, 4.5), ...days(7, 5)]);
    expect(months.map(({ from, to }) => [from, to])).toEqual([
      ['2027-01-01', '2027-02-01'],
      ['2027-02-01', '2027-03-01'],
      ['2027-03-01', '2027-03-08'],
    ]);
    // The first days of March are colder than its last: not quite 35 units.
    const gaps = [31, 17, 17 + 35 - months[2]!.expectedKWh];
    expect(months.map(({ gapSoFarKWh }) => gapSoFarKWh)).toEqual(gaps.map((gap) => expect.closeTo(gap, 6)));
    expect(of([...days(31, 6), ...days(6, 5)])).toHaveLength(1);
    expect(
      followMonths(sampleEstimate(), { ...series('2027-01-01', []), days: undefined }, undefined, spreads),
    ).toEqual([]);
  });
});

describe('since the estimate of 25 November 2026', () => {
  const follow = (...all: Series[]) =>
    followEstimate(sampleEstimate(), all, spreads).map(({ from, to, actualKWh }) => [from, to, actualKWh]);
  test('days before it are left out', () => {
    expect(follow(series('2026-11-15', [...days(10, 99), ...days(37, 5)]))).toEqual([
      ['2026-12-01', '2027-01-01', 155],
    ]);
    expect(follow(series('2026-11-15', [...days(10, 99), ...days(36, 5)]))[0]![2]).toBe(150);
    expect(follow(series('2026-12-01', days(31, 5)))).toEqual([['2026-12-01', '2027-01-01', 155]]);
    expect(follow(series('2026-11-25', [...days(6, 1), ...days(31, 5)]))[0]![2]).toBe(155);
  });
  test('the newest meter of the machine, and no other', () => {
    const old = series('2026-12-01', days(31, 4));
    const newer = series('2027-01-01', days(31, 6));
    expect(follow(old, newer)).toEqual([['2027-01-01', '2027-02-01', 186]]);
    expect(follow(newer, old)).toEqual([['2027-01-01', '2027-02-01', 186]]);
    expect(follow(old, { ...newer, role: 'import' })).toHaveLength(1);
    expect(follow({ ...newer, role: 'import' }, { ...newer, carrier: 'gas' }, { ...newer, days: undefined })).toEqual(
      [],
    );
  });
  test('its weather is found among the series', () => {
    const cold = series('2026-12-01', days(31, 0), 'outdoor-temperature');
    const [month] = followEstimate(
      sampleEstimate(),
      [{ ...cold, days: undefined }, cold, series('2026-12-01', days(31, 5))],
      spreads,
    );
    expect(month!.weatherKnown).toBe(true);
    expect(month!.expectedKWh).toBeCloseTo(155 + (155 * 546) / 5475, 1);
  });
});

describe('the level at which to ring', () => {
  const bought = { value: 1000, low: 850, high: 1200 } as Parameters<typeof warningLevel>[1]['bought'];
  const level = (count: number) => warningLevel(100, { bought, days: count, spaceShare: 0.5, spread: spreads.spread });
  test('1 usual month in 20 lies above it, 1 year in 10', () => {
    // Points of the normal distribution: 95 % at 1.644854, 90 % at 1.281552 standard deviations.
    expect(level(73)).toBeCloseTo(100 * (1 + (reach(0.2, 73, 0.04) * 1.644_854) / 1.281_552), 3);
    expect(level(364)).toBeCloseTo(100 * (1 + (reach(0.2, 364, 0.04) * 1.644_854) / 1.281_552), 3);
    expect(level(365)).toBeCloseTo(120, 6);
  });
  test('each month of the typical year', () => {
    const { appraisal } = sampleEstimate();
    const levels = monthlyWarnings(appraisal, appraisal.systems[0]!, spreads.spread);
    const winter = (0.08 * 546) / 1276;
    const over = (count: number) => 1 + (reach(0.2, count, winter) * 1.644_854) / 1.281_552;
    expect(levels[0]).toBeCloseTo(155 * over(31), 2);
    expect(levels[1]).toBeCloseTo(140 * over(28), 2);
    expect(levels[5]).toBeCloseTo(60 * over(30), 2);
    expect(levels).toHaveLength(12);
  });
});
