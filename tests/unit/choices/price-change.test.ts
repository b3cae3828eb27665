import { describe, expect, test } from 'vitest';
import { appraise } from '../../../src/model/appraise.ts';
import { checkBill } from '../../../src/model/bill-gap/check-bill.ts';
import { estimateForDays, heatPumpOf } from '../../../src/model/bill-gap/estimate-for-days.ts';
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
const daysRead = (count: number, kWh = 0.2) => [
  {
    meter: 'heat-pump' as const,
    intervalMinutes: 30,
    days: Array.from({ length: count }, (_, i) => ({
      date: addDays('2026-10-01', i),
      values: new Array(48).fill(kWh),
    })),
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
    expect(changeOf(daysRead(61)).after.used).toBeCloseTo((31 * 24 + 30 * mixed) / 61, 6);
    const { before } = changeOf(daysRead(61));
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

  // What October and November ask of a unit, by the tariff that a change is looked for with.
  const mean = (october: number, november: number) =>
    (october * octoberKWh + november * novemberKWh) / (octoberKWh + novemberKWh);
  const mixed = (12 * 10 + 36 * 35) / 48;
  const one = tariff('one', [['', 30]]);
  const stepped: Tariff = {
    ...one,
    versions: one.versions.map((version) => ({
      ...version,
      bands: [{ ...version.bands[0]!, blocks: { per: 'month' as const, steps: [{ upToKWh: 10, pencePerKWh: 20 }] } }],
    })),
  };
  const find = (
    change: Partial<Pick<Parameters<typeof priceChange>[0], 'household' | 'estimate' | 'readings'>>,
    tariffChange = { on: '2026-11-01' } as NonNullable<ReturnType<typeof bill>['tariffChange']>,
  ) =>
    priceChange({
      estimate,
      bill: { ...bill(30), tariffChange },
      household: today,
      readings: [],
      reference,
      ...change,
    });
  const onOne = { household: { ...today, tariffs: [flat, one], prices: { electricityTariffId: 'one' } } };

  test('one price after it needs no readings; that of its first day counts on that day', () => {
    expect(find(onOne)!.after).toEqual(bothAt(mean(24, 30)));
    expect(find(onOne)!.grade).toBe('estimated');
    expect(find(onOne, { on: '2026-10-01' })!.after).toEqual(bothAt(30));
    expect(find(onOne, { on: '2026-09-01' })!.after).toEqual(bothAt(30));
    // The last ten days of October on the new one.
    const { spaceKWh, otherKWh } = estimateForDays(estimate, '2026-10-22', '2026-11-01');
    const newKWh = spaceKWh + otherKWh;
    const october = 24 + (6 * newKWh) / octoberKWh;
    expect(find(onOne, { on: '2026-10-22' })!.after).toEqual(bothAt(mean(october, 30)));
  });
  const bothAt = (pence: number) => ({ estimated: expect.closeTo(pence, 9), used: expect.closeTo(pence, 9) });

  test('a price dated within a month counts from its day on', () => {
    const mid = tariff('flat', [
      ['2026-01-01', 24],
      ['2026-10-16', 30],
    ]);
    const { spaceKWh, otherKWh } = estimateForDays(estimate, '2026-10-16', '2026-11-01');
    const october = 24 + (6 * (spaceKWh + otherKWh)) / octoberKWh;
    const household = { ...onOne.household, tariffs: [mid, one] };
    expect(find({ household })!.before).toEqual(bothAt(mean(october, 30)));
  });

  test('the tariff named for the change goes before the one of today', () => {
    const household = { ...today, tariffs: [flat, twoRates, one] };
    expect(find({ household }, { on: '2026-11-01', tariffId: 'one' })!.after).toEqual(bothAt(mean(24, 30)));
    expect(find({ household }, { on: '2026-11-01', tariffId: 'flat' })).toBeNull();
    expect(find({ household }, { on: '2026-11-01', tariffId: 'gone' })).toBeNull();
  });

  test('an estimate at the published average: one price before, and that is assumed', () => {
    const average = { ...estimate, household: { ...household, tariffs: [], prices: {} } };
    const found = find({ ...onOne, estimate: average })!;
    const published = appraise({ household: average.household, series: [], reference, asOf: '2026-10-01', draws: 0 });
    const { unitsPence, boughtKWh } = published.systems[0]!.monthly;
    expect(found.before).toEqual(bothAt(unitsPence[9]! / boughtKWh[9]!));
    expect(found.grade).toBe('assumed');
  });

  test('a tariff of the estimate that is known neither today nor to the estimate gives no price before it', () => {
    const lost = { ...estimate, household: { ...household, tariffs: [] } };
    expect(find({ ...onOne, estimate: lost })!.before).toEqual(bothAt(mean(24, 27)));
    expect(find({ household: { ...onOne.household, tariffs: [one] }, estimate: lost })).toBeNull();
  });

  test.each<[string, Parameters<typeof priceChange>[0]['readings'], number | undefined]>([
    ['58 of 61 days', daysRead(58), (31 * 24 + 27 * mixed) / 58],
    ['57 of 61 days, less than 95 %', daysRead(57), undefined],
    ['those of the whole home', [{ ...daysRead(61)[0]!, meter: 'whole-house' }], undefined],
    ['a machine that stood still', daysRead(61, 0), undefined],
  ])('readings that speak for the bill or not: %s', (_, readings, used) => {
    const { after } = find({ readings })!;
    if (used === undefined) expect(after).not.toHaveProperty('used');
    else expect(after.used).toBeCloseTo(used, 6);
  });

  test('a price by steps hangs on the amount: none at the hours of use without readings', () => {
    const household = { ...today, tariffs: [flat, stepped], prices: { electricityTariffId: 'one' } };
    expect(find({ household })!.after).not.toHaveProperty('used');
  });
});
