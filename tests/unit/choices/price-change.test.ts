import { describe, expect, test } from 'vitest';
import { appraise } from '../../../src/model/appraise.ts';
import { checkBill } from '../../../src/model/bill-gap/check-bill.ts';
import { heatPumpOf } from '../../../src/model/bill-gap/estimate-for-days.ts';
import { addDays } from '../../../src/model/calendar/civil.ts';
import { priceChange } from '../../../src/model/choices/price-change.ts';
import { emptyHousehold, type Household } from '../../../src/model/shapes/household.ts';
import type { Tariff } from '../../../src/model/shapes/tariff.ts';
import type { WrittenEstimate } from '../../../src/model/shapes/written-estimate.ts';
import { reference } from '../../../src/reference/index.ts';
import { sampleBill } from '../bill-gap/sample-estimate.ts';

const typed = <T>(value: T) => ({ value, grade: 'measured' as const, origin: 'invented' });
const tariff = (id: string, prices: readonly [string, number][], from = '2026-01-01'): Tariff => ({
  id,
  name: id,
  fuel: 'electricity',
  origin: 'invented',
  grade: 'measured',
  versions: prices.map(([start, pence]) => ({
    from: start || from,
    standingPencePerDay: 50,
    vat: { rate: 0.05, included: true },
    bands: [{ name: 'all', pencePerKWh: pence, times: 'rest' }],
  })),
});
const twoRates: Tariff = {
  ...tariff('two', [['', 35]]),
  versions: [
    {
      ...tariff('two', [['', 35]]).versions[0]!,
      bands: [
        { name: 'night', pencePerKWh: 10, times: [{ from: '00:00', to: '06:00' }] },
        { name: 'day', pencePerKWh: 35, times: 'rest' },
      ],
    },
  ],
};
// On the tariff before it would have been 24 p in October and 27 p since November.
const flat = tariff('flat', [
  ['2026-01-01', 24],
  ['2026-11-01', 27],
]);
const household: Household = {
  ...emptyHousehold('h1', 'Invented household'),
  home: { kind: 'semi', floorAreaM2: typed(95), people: typed(3), regionId: 6 },
  heat: { heatLossKW: typed(6.5) },
  machine: { source: 'ground', spaceFactor: typed(3.8), boundary: 'H4', flowC: typed(42) },
  tariffs: [flat],
  prices: { electricityTariffId: 'flat' },
};
const appraisal = appraise({ household, series: [], reference, asOf: '2026-09-01', draws: 0 });
const estimate: WrittenEstimate = {
  id: 'p1',
  number: 1,
  householdId: 'h1',
  madeOn: '2026-09-01T10:00:00Z',
  note: '',
  household,
  evidence: [],
  appraisal,
};
const today: Household = { ...household, tariffs: [flat, twoRates], prices: { electricityTariffId: 'two' } };
const pump = heatPumpOf(estimate);
const octoberKWh = pump.monthly.boughtKWh[9]!;
const novemberKWh = pump.monthly.boughtKWh[10]!;
const bill = (pencePerKWh: number) =>
  sampleBill({
    from: '2026-10-01',
    to: '2026-12-01',
    boughtKWh: octoberKWh + novemberKWh,
    pencePerKWh,
    tariffChange: { on: '2026-11-01' },
  });
const changeOf = (readings: Parameters<typeof priceChange>[0]['readings'] = []) =>
  priceChange({ estimate, bill: bill(30), household: today, readings, reference })!;
/** Every half-hour alike, so 12 of 48 fall into the night. */
const readings = [
  {
    meter: 'heat-pump' as const,
    intervalMinutes: 30,
    days: Array.from({ length: 61 }, (_, i) => ({ date: addDays('2026-10-01', i), values: new Array(48).fill(0.2) })),
  },
];

describe('a change of tariff within the days of a bill', () => {
  test('by the hours of the estimate, the month before it on the tariff before', () => {
    const { before, after } = changeOf();
    const all = octoberKWh + novemberKWh;
    expect(before.estimated).toBeCloseTo((24 * octoberKWh + 27 * novemberKWh) / all, 6);
    expect(before.used).toBe(before.estimated);
    const onTwo = appraise({ household: today, series: [], reference, asOf: '2026-11-01', draws: 0 });
    const { unitsPence, boughtKWh } = onTwo.systems[0]!.monthly;
    const november = unitsPence[10]! / boughtKWh[10]!;
    expect(after.estimated).toBeCloseTo((24 * octoberKWh + november * novemberKWh) / all, 6);
    expect(after.used).toBeUndefined();
  });

  test('by the half-hours that were read', () => {
    // 31 days of October at 24 p and 30 of November, of whose 48 half-hours 12 are night.
    const mixed = (12 * 10 + 36 * 35) / 48;
    expect(changeOf(readings).after.used).toBeCloseTo((31 * 24 + 30 * mixed) / 61, 6);
    const { before } = changeOf(readings);
    expect(before.used).toBe(before.estimated);
  });

  test('level, tariff and hours stand apart and sum to the difference', () => {
    const check = (pence: number) =>
      checkBill({ estimate, bill: bill(pence), reference, id: 'c', madeOn: '', changed: changeOf() }).parts;
    const { before, after } = changeOf();
    const kWh = octoberKWh + novemberKWh;
    const penceOf = (parts: ReturnType<typeof check>, cause: string) => parts.find((one) => one.cause === cause)!.pence;
    // Paid exactly what the estimated hours cost: nothing is left for the hours.
    const asEstimated = check(after.estimated);
    expect(Math.abs(penceOf(asEstimated, 'when'))).toBeLessThanOrEqual(1);
    // Half of the orders have the change at the level of the estimate, 24 p for what is 24 and 27 p, and half at that of the bill.
    const level = 24 / before.estimated;
    const change = after.estimated - before.estimated;
    expect(penceOf(asEstimated, 'tariff') / kWh).toBeCloseTo((change * (1 + level)) / 2, 2);
    expect(penceOf(asEstimated, 'price')).toBeGreaterThan(0);
    // A penny more a unit on the same tariffs is of the hours, which matter on the other tariff alone: each has half of it.
    const dearer = check(after.estimated + 1);
    expect(penceOf(dearer, 'when') / kWh).toBeCloseTo(0.5, 1);
    expect(dearer.find(({ cause }) => cause === 'price')!.joined).toBeUndefined();
  });

  test('without a second tariff there is nothing to tell', () => {
    expect(priceChange({ estimate, bill: bill(30), household, readings: [], reference })).toBeNull();
    expect(
      priceChange({ estimate, bill: bill(30), household: { ...today, tariffs: [twoRates] }, readings: [], reference }),
    ).not.toBeNull();
  });
});
