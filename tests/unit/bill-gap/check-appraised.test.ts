import { expect, test } from 'vitest';
import { appraise } from '../../../src/model/appraise.ts';
import { checkBill } from '../../../src/model/bill-gap/check-bill.ts';
import { heatPumpOf } from '../../../src/model/bill-gap/estimate-for-days.ts';
import { emptyHousehold, type Household } from '../../../src/model/shapes/household.ts';
import type { WrittenEstimate } from '../../../src/model/shapes/written-estimate.ts';
import { reference } from '../../../src/reference/index.ts';
import { sampleBill } from './sample-estimate.ts';

const typed = <T>(value: T) => ({ value, grade: 'measured' as const, origin: 'invented' });
const household: Household = {
  ...emptyHousehold('h1', 'Invented household'),
  home: { kind: 'semi', floorAreaM2: typed(95), people: typed(3), regionId: 6 },
  heat: { heatLossKW: typed(6.5) },
  machine: { source: 'ground', spaceFactor: typed(3.8), boundary: 'H4', flowC: typed(42) },
};
const appraisal = appraise({ household, series: [], reference, asOf: '2026-11-25', draws: 1000 });
const estimate: WrittenEstimate = {
  id: 'p1',
  number: 1,
  householdId: 'h1',
  madeOn: '2026-11-25T10:00:00Z',
  note: '',
  household,
  evidence: [],
  appraisal,
};
const pump = heatPumpOf(estimate);
const price = appraisal.prices.electricityPencePerKWh;
const check = (from: string, to: string, boughtKWh: number) =>
  checkBill({
    estimate,
    bill: sampleBill({ from, to, boughtKWh, pencePerKWh: price }),
    reference,
    id: 'c1',
    madeOn: '2028-01-10T09:00:00Z',
  });

test('a reckoned written estimate, billed as estimated for a year, has no gap beyond a penny', () => {
  const result = check('2027-01-01', '2028-01-01', pump.bought.value);
  expect(Math.abs(result.estimatedPence - pump.split.unitsPence)).toBeLessThan(1);
  expect(result.parts.every(({ pence }) => Math.abs(pence) <= 1)).toBe(true);
  expect(result.verdict).toBe('inside');
});

test('its four quarters are its year, winter dearer than an equal share and summer cheaper', () => {
  const spans = [
    ['2027-01-01', '2027-04-01', 0, 3],
    ['2027-04-01', '2027-07-01', 3, 6],
    ['2027-07-01', '2027-10-01', 6, 9],
    ['2027-10-01', '2028-01-01', 9, 12],
  ] as const;
  const quarters = spans.map(([from, to, first, end]) => {
    const kWh = pump.monthly.boughtKWh.slice(first, end).reduce((sum, value) => sum + value, 0);
    const result = check(from, to, kWh);
    expect(result.estimatedKWh).toBeCloseTo(kWh, 6);
    expect(result.verdict).toBe('inside');
    return result;
  });
  const total = quarters.reduce((sum, { seasonPence }) => sum + seasonPence!, 0);
  expect(Math.abs(total - pump.split.unitsPence)).toBeLessThanOrEqual(2);
  expect(quarters.map(({ parts }) => Math.sign(parts[0]!.pence))).toEqual([1, -1, -1, 1]);
});

test('twice as much in a winter quarter is above what was estimated', () => {
  const kWh = pump.monthly.boughtKWh.slice(0, 3).reduce((sum, value) => sum + value, 0);
  const result = check('2027-01-01', '2027-04-01', kWh * 2);
  expect(result.verdict).toBe('above');
  expect(result.expected.high).toBeLessThan(result.actualPence);
});
