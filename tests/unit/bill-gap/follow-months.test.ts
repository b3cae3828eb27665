import { expect, test } from 'vitest';
import { followMonths } from '../../../src/model/bill-gap/follow-months.ts';
import { addDays } from '../../../src/model/calendar/civil.ts';
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
