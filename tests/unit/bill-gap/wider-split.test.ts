import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { checkBill } from '../../../src/model/bill-gap/check-bill.ts';
import type { BillCheckInput } from '../../../src/model/shapes/bill-check.ts';
import type { WrittenEstimate } from '../../../src/model/shapes/written-estimate.ts';
import { sampleBill, sampleEstimate, spreads } from './sample-estimate.ts';

// January of the sample estimate: 465 degree days; 93 units for rooms at a factor of 3 (279 kWh of heat), 49.6 units for
// hot water at 2.5 (124 kWh), 12.4 for pumps and standby; 25 p a unit.
const check = (change: Partial<BillCheckInput>, estimate: WrittenEstimate = sampleEstimate()) =>
  checkBill({ estimate, bill: sampleBill({ degreeDays: 465, ...change }), reference: spreads, id: 'c', madeOn: '' });

/** Pounds and pence of each part beyond the calendar's, those of nothing left out. */
const partsOf = (change: Partial<BillCheckInput>, estimate?: WrittenEstimate) =>
  Object.fromEntries(
    check(change, estimate)
      .parts.filter(({ cause, pence }) => cause !== 'days' && pence !== 0)
      .map(({ cause, pence }) => [cause, pence]),
  );

const known = { immersionKWh: 0, waterHeatKWh: 124 };
describe('one cause at a time, with all that can be metered', () => {
  test.each([
    ['as estimated', { ...known, heatKWh: 403 }, {}],
    ['price', { ...known, heatKWh: 403, pencePerKWh: 27 }, { price: 310 }], // 155 × 2 p
    ['heat used', { ...known, heatKWh: 403 + 30, boughtKWh: 165 }, { 'heat-used': 250 }], // 30 / 3 = 10 units
    ['hot water', { immersionKWh: 0, waterHeatKWh: 149, heatKWh: 428, boughtKWh: 165 }, { 'hot-water': 250 }], // 25 / 2.5
    ['efficiency', { ...known, heatKWh: 403, boughtKWh: 12.4 + 142.6 / 0.8 }, { efficiency: 891 }], // 142.6 × 0.25 × 25 p
    ['immersion', { immersionKWh: 90, waterHeatKWh: 124, heatKWh: 403, boughtKWh: 245 }, { backup: 2250 }],
  ] as [string, Partial<BillCheckInput>, Record<string, number>][])('%s', (_, change, expected) => {
    expect(partsOf(change)).toEqual(expected);
  });
  test('weather', () => {
    const more = (100 * 182 * 3) / 5475; // 100 degree days at the year's units a degree day
    const change = { ...known, degreeDays: 565, heatKWh: 403 + more * 3, boughtKWh: 155 + more };
    expect(partsOf(change)).toEqual({ weather: Math.round(more * 25) });
  });
  test('standing charge, where both are known', () => {
    const result = check({ ...known, heatKWh: 403, billedStandingPence: 1860, estimatedStandingPencePerDay: 50 });
    expect(result.parts.find(({ cause }) => cause === 'standing-charge')!.pence).toBe(310); // 31 × 50 = 1,550
    expect(result).toMatchObject({ actualPence: 3875 + 1860, seasonPence: 3875 + 1550, verdict: 'inside' });
    expect(check({ billedStandingPence: 1860 }).standing).toBeUndefined();
  });
  test('metering and other electricity', () => {
    expect(partsOf({ ...known, heatKWh: 403, boughtKWh: 175, readings: 'estimated', readKWh: 155 })).toEqual({
      metering: 500,
    });
    const wholeHouse = { meter: 'whole-house', otherKWh: 240, boughtKWh: 195, heatPumpKWh: 155 } as const;
    expect(partsOf({ ...known, ...wholeHouse, heatKWh: 403 })).toEqual({ 'other-electricity': 1000 });
    const both = { ...wholeHouse, boughtKWh: 215, readings: 'estimated', readKWh: 195 } as const;
    expect(partsOf({ ...known, ...both, heatKWh: 403 })).toEqual({ 'other-electricity': 1000, metering: 500 });
  });
  test('hours of use apart from the prices', () => {
    const estimate = sampleEstimate();
    const rates = [
      { name: 'night', kWh: 638, pencePerKWh: 15 },
      { name: 'day', kWh: 638, pencePerKWh: 35 },
    ];
    const [pump] = estimate.appraisal.systems;
    const twoRates = { ...estimate, appraisal: { ...estimate.appraisal, systems: [{ ...pump!, rates }] } };
    const ratesKWh = [
      { name: 'Day', kWh: 124, pencePerKWh: 37 },
      { name: 'Night', kWh: 31, pencePerKWh: 17 },
    ];
    // Prices 2 p up on 155 units; share of day units from 0.5 to 0.8 at a difference of 20 p.
    const change = { ...known, heatKWh: 403, ratesKWh, pencePerKWh: 33 };
    expect(partsOf(change, twoRates)).toEqual({ price: 310, when: 930 });
    const joined = check({ ...known, heatKWh: 403, pencePerKWh: 33 }, twoRates).parts.find(
      ({ cause }) => cause === 'price',
    );
    expect(joined).toMatchObject({ pence: 1240, joined: ['price', 'when'] });
  });
});

test('another tariff stands apart from the level of prices', () => {
  // 155 units: 25 p estimated, 27 p on the tariff before, 22 p paid.
  const change = { ...known, heatKWh: 403, pencePerKWh: 22, tariffChange: { on: '2027-01-10', beforePencePerKWh: 27 } };
  const { price, tariff } = partsOf(change);
  expect(price! + tariff!).toBe(-3 * 155);
  // Shapley of 25 × 27/25 × 22/27 with two players: (27 − 25 + 22 − 22 × 25/27) / 2 for the level.
  expect(price).toBe(Math.round((155 * (2 + 22 * (1 - 25 / 27))) / 2));
  const two = [15, 35].map((pencePerKWh, i) => ({ name: `rate ${i}`, kWh: 638, pencePerKWh }));
  const estimate = sampleEstimate();
  const [pump] = estimate.appraisal.systems;
  const onTwo = { ...estimate, appraisal: { ...estimate.appraisal, systems: [{ ...pump!, rates: two }] } };
  const joined = [undefined, onTwo].map(
    (given) => check(change, given).parts.find(({ cause }) => cause === 'price')!.joined,
  );
  expect(joined).toEqual([undefined, ['price', 'when']]);
  expect(() => check({ ...change, tariffChange: { on: '2027-02-01', beforePencePerKWh: 27 } })).toThrow(
    'tariff-changed-later',
  );
});

describe('less evidence: the same ten units, found as far as it reaches', () => {
  // 30 kWh more heat for rooms at 3 = 10 units; 25 kWh more for hot water at 2.5 = 10 units; 12.4 are pumps and standby.
  test.each([
    ['heat metered, hot water as estimated', { heatKWh: 433 }, { 'heat-used': 250 }],
    ['heat metered, rooms by the slope: more for rooms', { heatKWh: 433, spaceKWh: 103 }, { 'heat-used': 250 }],
    ['heat metered, rooms by the slope: more hot water', { heatKWh: 428, spaceKWh: 93 }, { 'hot-water': 250 }],
    ['no heat meter, rooms by the slope: more for rooms', { spaceKWh: 103 }, { rooms: 250 }],
    ['no heat meter, rooms by the slope: more hot water', { spaceKWh: 93 }, { 'hot-water': 250 }],
    ['the bill alone', {}, { rest: 250 }],
  ] as [string, Partial<BillCheckInput>, Record<string, number>][])('%s', (_, change, expected) => {
    expect(partsOf({ immersionKWh: 0, boughtKWh: 165, ...change })).toEqual(expected);
  });
  test('a factor a tenth below the estimate, rooms by the slope', () => {
    // Heat and factor both at 0.9 leave the units as they were. Either cause is priced at the mean of the other's two
    // states (Shapley, two players): (1 + 1/0.9) / 2 for the heat, (1 + 0.9) / 2 for the factor.
    expect(partsOf({ immersionKWh: 0, heatKWh: 403 * 0.9, spaceKWh: 93 })).toEqual({
      'heat-used': Math.round(-9.3 * (19 / 18) * 25),
      'hot-water': Math.round(-4.96 * (19 / 18) * 25),
      efficiency: Math.round(142.6 * 0.95 * (1 / 9) * 25),
    });
  });
});

describe('what the evidence cannot separate is joined', () => {
  const causes = (change: Partial<BillCheckInput>) =>
    check({ boughtKWh: 180, ...change })
      .parts.slice(3)
      .map(({ cause, joined, grade }) => [cause, joined?.join(' ') ?? '', grade]);
  test.each([
    ['a bill alone', {}, [['rest', 'heat-used hot-water efficiency backup', 'estimated']]],
    [
      'the whole house alone',
      { meter: 'whole-house', otherKWh: 200 },
      [['rest', 'heat-used hot-water efficiency other-electricity backup', 'assumed']],
    ],
    [
      'a heat meter',
      { heatKWh: 403 },
      [
        ['heat-used', 'heat-used hot-water', 'estimated'],
        ['efficiency', 'efficiency backup', 'assumed'],
      ],
    ],
    [
      'a heat meter that counts hot water apart, and the hours of the heater',
      { heatKWh: 403, waterHeatKWh: 124, immersionKWh: 10 },
      [
        ['heat-used', '', 'estimated'],
        ['hot-water', '', 'measured'],
        ['efficiency', '', 'measured'],
        ['backup', '', 'estimated'],
      ],
    ],
    [
      'the slope of daily readings on the sub-meter',
      { spaceKWh: 110 },
      [
        ['rooms', 'heat-used efficiency backup', 'estimated'],
        ['steady', 'hot-water efficiency backup', 'estimated'],
      ],
    ],
    [
      'the slope of the whole-house meter',
      { meter: 'whole-house', otherKWh: 200, spaceKWh: 110 },
      [
        ['rooms', 'heat-used efficiency other-electricity backup', 'estimated'],
        ['steady', 'hot-water efficiency other-electricity backup', 'assumed'],
      ],
    ],
    ['a heat reading that cannot be', { heatKWh: 9 }, [['rest', 'heat-used hot-water efficiency backup', 'estimated']]],
  ] as [string, Partial<BillCheckInput>, string[][]][])('%s', (_, change, expected) => {
    expect(causes(change)).toEqual(expected);
  });
});

test('whatever is known, the parts sum to the gap to the penny', () => {
  const maybe = (max: number) => fc.option(fc.double({ min: 0, max, noNaN: true }), { nil: undefined });
  const evidence = fc.record({
    boughtKWh: fc.double({ min: 0, max: 900, noNaN: true }),
    degreeDays: maybe(1500),
    heatKWh: maybe(3000),
    waterHeatKWh: maybe(1000),
    spaceKWh: maybe(900),
    immersionKWh: maybe(400),
    heatPumpKWh: maybe(900),
    readKWh: maybe(900),
    billedStandingPence: maybe(5000),
    meanPence: fc.option(fc.double({ min: 1.1, max: 149, noNaN: true }), { nil: undefined }),
    estimatedStandingPencePerDay: maybe(90),
    meter: fc.constantFrom('heat-pump' as const, 'whole-house' as const),
    readings: fc.constantFrom('actual' as const, 'estimated' as const, 'unknown' as const),
  });
  fc.assert(
    fc.property(evidence, ({ meanPence, ...known }) => {
      const given = { ...known, totalPence: meanPence === undefined ? undefined : meanPence * known.boughtKWh };
      const defined = Object.fromEntries(Object.entries(given).filter(([, value]) => value !== undefined));
      const bill = sampleBill(defined);
      const result = checkBill({ estimate: sampleEstimate(), bill, reference: spreads, id: 'c', madeOn: '' });
      expect(result.parts.reduce((sum, { pence }) => sum + pence, 0)).toBe(result.actualPence - result.estimatedPence);
      expect(result.parts.every(({ pence, joined }) => Number.isInteger(pence) && joined?.length !== 1)).toBe(true);
    }),
    { numRuns: 400 },
  );
});
