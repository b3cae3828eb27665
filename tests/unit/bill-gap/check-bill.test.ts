import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { findBillFaults } from '../../../src/model/bill-gap/bill-faults.ts';
import { checkBill } from '../../../src/model/bill-gap/check-bill.ts';
import { estimateForDays } from '../../../src/model/bill-gap/estimate-for-days.ts';
import { addDays } from '../../../src/model/calendar/civil.ts';
import { BillCheck, type BillCheckInput } from '../../../src/model/shapes/bill-check.ts';
import type { Series } from '../../../src/model/shapes/evidence.ts';
import { sayTold } from '../../../src/words/say-told.ts';
import { sampleBill, sampleEstimate, spreads } from './sample-estimate.ts';

const check = (change: Partial<BillCheckInput> = {}, estimate = sampleEstimate(), weather?: Series) =>
  checkBill({
    estimate,
    bill: sampleBill(change),
    reference: spreads,
    id: 'c1',
    madeOn: '2027-02-10T09:00:00Z',
    ...(weather ? { weather } : {}),
  });

const partsOf = (result: BillCheck) => Object.fromEntries(result.parts.map(({ cause, pence }) => [cause, pence]));

/** Daily means of the bill's own days. */
const weatherOf = (first: string, values: (number | null)[]): Series => ({
  id: 'w',
  evidenceId: 'e',
  name: 'own thermometer',
  carrier: 'outdoor-temperature',
  role: 'weather',
  resolution: 'day',
  from: first,
  to: addDays(first, values.length),
  total: 5,
  days: { first, values },
  present: values.filter((value) => value !== null).length,
  expected: values.length,
  estimatedCount: 0,
});

describe('the written estimate cut to days', () => {
  // Year: 182 winter days × 5 units + 183 summer days × 2 = 1,276 units × 25 p = 31,900 p.
  test.each([
    ['a calendar year gives the year back', '2027-01-01', '2028-01-01', 1276, 31_900, 31_900],
    ['so does a leap year', '2028-01-01', '2029-01-01', 1276, 31_900, 31_900],
    ['and a year across new year', '2026-11-10', '2027-11-10', 1276, 31_900, 31_900],
    ['January', '2027-01-01', '2027-02-01', 155, 3875, (31_900 * 31) / 365],
    ['July', '2027-07-01', '2027-08-01', 62, 1550, (31_900 * 31) / 365],
    ['October to December', '2026-10-01', '2027-01-01', 460, 11_500, (31_900 * 92) / 365],
  ])('%s', (_, from, to, kWh, pence, share) => {
    const days = estimateForDays(sampleEstimate(), from, to);
    expect(days.spaceKWh + days.otherKWh).toBeCloseTo(kWh, 6);
    expect(days.pence).toBeCloseTo(pence, 6);
    expect(days.equalSharePence).toBeCloseTo(share, 6);
  });
  test('days of one month add up to it, colder days having more', () => {
    const estimate = sampleEstimate();
    const each = Array.from({ length: 31 }, (_, i) =>
      estimateForDays(estimate, addDays('2027-01-01', i), addDays('2027-01-01', i + 1)),
    );
    expect(each.reduce((total, { spaceKWh }) => total + spaceKWh, 0)).toBeCloseTo(93, 8);
    const byCold = each.toSorted((a, b) => a.degreeDays[0]! - b.degreeDays[0]!).map(({ spaceKWh }) => spaceKWh);
    expect(byCold).toEqual(byCold.toSorted((a, b) => a - b));
    expect(byCold.at(-1)! / byCold[0]!).toBeGreaterThan(1.2);
  });
  test('where no day is cold the month is shared by days', () => {
    const warm = sampleEstimate({ meanC: new Array(12).fill(40) });
    expect(estimateForDays(warm, '2027-01-01', '2027-01-11').spaceKWh).toBeCloseTo(30, 9);
  });
});

describe('a bill as estimated', () => {
  test('for January has only the season between it and an equal share', () => {
    const result = check();
    expect(partsOf(result)).toEqual({ days: 3875 - 2709, price: 0, rest: 0 }); // 31,900 × 31 / 365 = 2,709.3
    expect(result).toMatchObject({ estimatedPence: 2709, seasonPence: 3875, actualPence: 3875, verdict: 'inside' });
  });
  test('for the whole year has no gap at all', () => {
    const result = check({ from: '2027-01-01', to: '2028-01-01', boughtKWh: 1276 });
    expect(partsOf(result)).toEqual({ days: 0, price: 0, rest: 0 });
    expect(result.expected).toEqual({ value: 31_900, low: 27_115, high: 38_280 }); // −15 % and +20 % as estimated
  });
  test('the result keeps to its schema', () => {
    expect(BillCheck.parse(check({ degreeDays: 500 }))).toMatchObject({ id: 'c1', estimateId: 'p1' });
  });
});

describe('price, weather and rest', () => {
  test('by hand: 30 p for 25 p, 15 % more degree days, and 20 units more', () => {
    // Degree days 465 typical, 534.75 came; 546 units for rooms over 5,475 degree days a year.
    const spaceMore = (546 / 5475) * (534.75 - 465);
    const bought = 155 + spaceMore + 20;
    const result = check({ degreeDays: 534.75, boughtKWh: bought, pencePerKWh: 30 });
    // Two factors of a product share their joint effect equally: each takes half of Δprice × Δunits.
    const price = 5 * (155 + (spaceMore + 20) / 2);
    const weather = spaceMore * 27.5;
    const rest = 20 * 27.5;
    const parts = partsOf(result);
    expect(Math.abs(parts.price! - price)).toBeLessThan(1);
    expect(Math.abs(parts.weather! - weather)).toBeLessThan(1);
    expect(Math.abs(parts.rest! - rest)).toBeLessThan(1);
    expect(result.expected.value).toBe(Math.round((155 + spaceMore) * 30));
    expect(result.expectedKWh).toBeCloseTo(155 + spaceMore, 9);
  });
  test('a dearer price alone is all price, and the bill stays inside', () => {
    const result = check({ pencePerKWh: 50 });
    expect(partsOf(result)).toEqual({ days: 1166, price: 3875, rest: 0 });
    expect(result.verdict).toBe('inside');
  });
  test('without weather there is no weather part, it is named in the rest, and the range is wider', () => {
    const without = check();
    const known = check({ degreeDays: 465 });
    expect(partsOf(without)).not.toHaveProperty('weather');
    expect(sayTold(without.parts.at(-1)!.working.title)).toContain('and weather');
    expect(without.expected.high).toBeGreaterThan(known.expected.high);
  });
  test('a total on the bill goes before units × price', () => {
    const result = check({ totalPence: 4000 });
    expect(result.actualPence).toBe(4000);
    expect(partsOf(result)).toEqual({ days: 1166, price: 125, rest: 0 });
  });
  test('a charge without units belongs to the rest', () => {
    const result = check({ boughtKWh: 0, totalPence: 700 });
    expect(partsOf(result)).toEqual({ days: 1166, price: 0, rest: 700 - 3875 });
  });
});

describe('weather of the household’s own', () => {
  const cold = (count: number) => new Array<number | null>(count).fill(0); // 20 degree days a day for 15
  test('is read off the days of the bill only', () => {
    const series = weatherOf('2026-12-25', [...new Array(7).fill(-30), ...cold(31), ...new Array(7).fill(-30)]);
    const result = check({}, sampleEstimate(), series);
    const more = (546 / 5475) * (31 * 20 - 31 * 15);
    expect(result.expectedKWh).toBeCloseTo(155 + more, 6);
    expect(result.parts.find(({ cause }) => cause === 'weather')!.working.inputs[1]!.origin).toBe('own thermometer');
  });
  test('two days lacking take the typical year’s, four are too many', () => {
    const lacking = (count: number) => weatherOf('2027-01-01', [...new Array(count).fill(null), ...cold(31 - count)]);
    expect(partsOf(check({}, sampleEstimate(), lacking(2)))).toHaveProperty('weather');
    expect(partsOf(check({}, sampleEstimate(), lacking(4)))).not.toHaveProperty('weather');
    expect(check({}, sampleEstimate(), lacking(2)).expectedKWh).toBeLessThan(
      check({}, sampleEstimate(), weatherOf('2027-01-01', cold(31))).expectedKWh!,
    );
  });
});

describe('verdict and what to find out next', () => {
  test.each([
    [{ boughtKWh: 155, degreeDays: 465 }, 'inside', 0],
    [{ boughtKWh: 300, degreeDays: 465 }, 'above', 2],
    [{ boughtKWh: 185, degreeDays: 465 }, 'inside', 2],
    [{ boughtKWh: 177, degreeDays: 465 }, 'inside', 0],
    [{ boughtKWh: 60, degreeDays: 465 }, 'below', 2],
    [{ degreeDays: 465, readings: 'estimated' }, 'inside', 1],
    [{ degreeDays: 465, meter: 'whole-house', otherKWh: 200 }, 'inside', 0],
  ] as [Partial<BillCheckInput>, string, number][])('%j is %s, with %i questions', (change, verdict, count) => {
    const { next, ...result } = check(change);
    expect(result).toMatchObject({ verdict });
    expect(next).toHaveLength(count);
  });
  test('an estimated reading and a whole-house meter make the rest an assumption', () => {
    const gradeOf = (change: Partial<BillCheckInput>) => check({ degreeDays: 465, ...change }).parts.at(-1)!.grade;
    expect([gradeOf({}), gradeOf({ readings: 'estimated' }), gradeOf({ meter: 'whole-house' })]).toEqual([
      'estimated',
      'assumed',
      'assumed',
    ]);
  });
  test.each([
    ['an end before the beginning', { to: '2026-12-31' }, 'bill-ends-before-it-begins'],
    ['four years', { to: '2031-01-01' }, 'bill-too-long'],
    ['no price', { pencePerKWh: 0 }, 'bill-price-missing'],
  ])('%s is refused', (_, change, code) => {
    expect(findBillFaults(sampleEstimate(), sampleBill(change)).map((fault) => fault.code)).toEqual([code]);
    expect(() => check(change)).toThrow(code);
  });
  test('a written estimate without a heat pump is refused', () => {
    const estimate = sampleEstimate();
    const bare = { ...estimate, appraisal: { ...estimate.appraisal, systems: [] } };
    expect(findBillFaults(bare, sampleBill()).map(({ code }) => code)).toEqual(['estimate-without-heat-pump']);
  });
});

test('for any bill the parts sum to the gap to the penny, and each working ends in its part', () => {
  const bill = fc.record({
    from: fc.integer({ min: 0, max: 1000 }).map((offset) => addDays('2026-06-01', offset)),
    days: fc.integer({ min: 1, max: 800 }),
    boughtKWh: fc.double({ min: 0, max: 20_000, noNaN: true }),
    pencePerKWh: fc.double({ min: 1, max: 80, noNaN: true }),
    meanPence: fc.option(fc.double({ min: 1.1, max: 149, noNaN: true }), { nil: undefined }),
    degreeDays: fc.option(fc.double({ min: 0, max: 9000, noNaN: true }), { nil: undefined }),
  });
  fc.assert(
    fc.property(
      bill,
      fc.double({ min: 5, max: 50, noNaN: true }),
      ({ from, days, meanPence, ...known }, summerPrice) => {
        const estimate = sampleEstimate({ price: (m) => (m > 3 && m < 9 ? summerPrice : 25) });
        const rest = { ...known, totalPence: meanPence === undefined ? undefined : meanPence * known.boughtKWh };
        const defined = Object.fromEntries(Object.entries(rest).filter(([, value]) => value !== undefined));
        const result = check({ from, to: addDays(from, days), ...defined }, estimate);
        const total = result.parts.reduce((sum, { pence }) => sum + pence, 0);
        expect(total).toBe(result.actualPence - result.estimatedPence);
        expect(result.parts.every(({ pence, working }) => working.result.value === pence)).toBe(true);
        expect(result.parts[0]!.pence).toBe(result.seasonPence! - result.estimatedPence);
        expect(result.expected.low).toBeLessThanOrEqual(result.expected.value);
        expect(result.expected.high).toBeGreaterThanOrEqual(result.expected.value);
      },
    ),
    { numRuns: 300 },
  );
});
