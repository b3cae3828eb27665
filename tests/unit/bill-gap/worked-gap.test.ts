/** The pieces of a bill check, each with its figures by hand; the sample estimate says what they are. */
import { describe, expect, test } from 'vitest';
import { actualWeather } from '../../../src/model/bill-gap/actual-weather.ts';
import { findBillFaults } from '../../../src/model/bill-gap/bill-faults.ts';
import { pennyParts } from '../../../src/model/bill-gap/bill-parts.ts';
import { checkBill } from '../../../src/model/bill-gap/check-bill.ts';
import { costOf, estimatedState, spaceInWeather } from '../../../src/model/bill-gap/cost-state.ts';
import { estimateForDays } from '../../../src/model/bill-gap/estimate-for-days.ts';
import { expectedRange } from '../../../src/model/bill-gap/expected-range.ts';
import { priceLevers } from '../../../src/model/bill-gap/price-levers.ts';
import { addDays } from '../../../src/model/calendar/civil.ts';
import type { BillCheckInput } from '../../../src/model/shapes/bill-check.ts';
import type { Series } from '../../../src/model/shapes/evidence.ts';
import type { WrittenEstimate } from '../../../src/model/shapes/written-estimate.ts';
import { allHours, tariff, version } from '../tariff/tariffs.ts';
import { sampleBill, sampleEstimate, spreads } from './sample-estimate.ts';

const close = (value: number, digits = 6) => expect.closeTo(value, digits);
const ESTIMATE = sampleEstimate();
/** January: 465 degree days, 93 units for rooms, 49.6 for hot water and 12.4 for the rest; 546 units over 5,475 degree days. */
const JANUARY = estimateForDays(ESTIMATE, '2027-01-01', '2027-02-01');
const PER_DEGREE = 546 / 5475;
const check = (change: Partial<BillCheckInput>, estimate: WrittenEstimate = ESTIMATE) =>
  checkBill({ estimate, bill: sampleBill(change), reference: spreads, id: 'c', madeOn: '2027-02-10' });

describe('the estimate for the days', () => {
  test('January, by hand', () => {
    expect({ ...JANUARY, degreeDays: JANUARY.degreeDays.reduce((sum, value) => sum + value, 0) }).toEqual({
      days: 31,
      spaceKWh: close(93),
      otherKWh: close(62),
      waterKWh: close(49.6),
      pence: close(3875),
      equalSharePence: close((31_900 * 31) / 365),
      degreeDays: close(465, 3),
      kWhPerDegreeDay: close(PER_DEGREE, 6),
      yearPence: close(31_900),
      spaceShare: close(546 / 1276),
    });
  });
  test('a month whose units are fewer than its heat needs: rooms first, then hot water, none below zero', () => {
    const scarce = structuredClone(ESTIMATE) as WrittenEstimate;
    const [pump] = scarce.appraisal.systems as [WrittenEstimate['appraisal']['systems'][number]];
    (pump.monthly.boughtKWh as number[])[0] = 100;
    (pump.monthly.boughtKWh as number[])[1] = 70;
    (pump.monthly.boughtKWh as number[])[6] = 0;
    const of = (from: string, to: string) => estimateForDays(scarce, from, to);
    expect(of('2027-01-01', '2027-02-01')).toMatchObject({
      spaceKWh: close(93),
      otherKWh: close(7),
      waterKWh: close(7),
    });
    expect(of('2027-02-01', '2027-03-01')).toMatchObject({
      spaceKWh: close(70),
      otherKWh: close(0),
      waterKWh: close(0),
    });
    // July has a cost and no units: 62 × 25 p by days.
    expect(of('2027-07-01', '2027-07-11')).toMatchObject({ pence: close(500), otherKWh: close(0) });
  });
  test('a leap year shares its year among 366 days', () => {
    expect(estimateForDays(ESTIMATE, '2028-02-29', '2028-03-01').equalSharePence).toBeCloseTo(31_900 / 366, 6);
  });
  test('where nothing is used nothing is shared out', () => {
    const none = sampleEstimate({ meanC: new Array(12).fill(40) });
    expect(estimateForDays(none, '2027-01-01', '2027-02-01').kWhPerDegreeDay).toBe(0);
  });
});

test('the cost of a state: every term of the sum', () => {
  // Rooms (93 + 40 × 546/5,475) × 1.1 + 5; hot water 49.6 + 4; both over 0.9; 12.4, 3, 2, 7 and 1 beside; half at 20, half at 30 p.
  const state = {
    ...estimatedState({ pencePerKWh: [20, 30], rateShares: [0.5, 0.5] }, 310),
    moreDegreeDays: 40,
    heatShare: 1.1,
    spaceMoreKWh: 5,
    waterMoreKWh: 4,
    efficiencyShare: 0.9,
    backupKWh: 3,
    otherKWh: 2,
    meteringKWh: 7,
    restKWh: 1,
  };
  const units = ((93 + 40 * PER_DEGREE) * 1.1 + 5 + 53.6) / 0.9 + 12.4 + 3 + 2 + 7 + 1;
  expect(costOf(JANUARY, state)).toBeCloseTo(units * 25 + 310, 3);
  expect(costOf(JANUARY, estimatedState({ pencePerKWh: [25], rateShares: [1] }, 0))).toBeCloseTo(155 * 25, 6);
  expect(spaceInWeather(JANUARY, -2000)).toBe(0);
});

describe('how cold the days were', () => {
  const series = (first: string, values: readonly (number | null)[]) =>
    ({ name: 'own', days: { first, values: [...values] } }) as unknown as Series;
  const typical = new Array(31).fill(15);
  const row = (count: number, value: number | null) => new Array<number | null>(count).fill(value);
  test.each([
    ['typed', { degreeDays: 400 }, series('2027-01-01', row(31, 0)), 400, 'estimated'],
    ['all known', {}, series('2027-01-01', row(31, 8)), 31 * 12, 'measured'],
    ['from before and beyond', {}, series('2026-12-30', [...row(2, 19), ...row(31, 8), 3]), 31 * 12, 'measured'],
    ['days above the base count nothing', {}, series('2027-01-01', [...row(30, 8), 25]), 30 * 12, 'measured'],
    ['three of 31 not known', {}, series('2027-01-01', [...row(28, 8), ...row(3, null)]), 28 * 12 + 45, 'estimated'],
    ['three days late', {}, series('2027-01-04', row(28, 8)), 28 * 12 + 45, 'estimated'],
  ])('%s', (_, change, weather, degreeDays, grade) => {
    expect(actualWeather(sampleBill(change), 20, typical, weather)).toMatchObject({ degreeDays, grade });
  });
  test('four not known, no series, or one of bills: nothing', () => {
    expect(actualWeather(sampleBill(), 20, typical, series('2027-01-01', row(27, 8)))).toBeNull();
    expect(actualWeather(sampleBill(), 20, typical)).toBeNull();
    expect(actualWeather(sampleBill(), 20, typical, { name: 'bills' } as Series)).toBeNull();
    // Nine days in ten are enough.
    const ten = new Array(10).fill(15);
    expect(actualWeather(sampleBill(), 20, ten, series('2027-01-01', row(9, 8)))).toMatchObject({ degreeDays: 123 });
    expect(actualWeather(sampleBill(), 20, ten, series('2027-01-01', row(8, 8)))).toBeNull();
  });
});

describe('the range about what was to be expected', () => {
  const range = (days: number, weatherKnown: boolean, bought = { value: 1000, low: 850, high: 1200 }) =>
    expectedRange({
      expectedPence: 11_000,
      bought: bought as never,
      days,
      spaceShare: 0.5,
      weatherKnown,
      spread: spreads.spread,
    });
  /** √(half-range² + z² σ² (365 / days − 1)), σ² = 0.06², and (0.08 × 0.5)² beside it while the weather is not known. */
  const half = (share: number, days: number, winter: number) =>
    Math.sqrt(share ** 2 + 1.281_551_6 ** 2 * (0.06 ** 2 + winter ** 2) * (365 / days - 1));
  test.each([
    [365, true, 365, 0],
    [730, false, 365, 0.04],
    [73, true, 73, 0],
    [73, false, 73, 0.04],
    [8, true, 8, 0],
    [7, true, 7, 0],
    [2, true, 7, 0],
  ])('%i days, weather known %s', (days, known, as, winter) => {
    expect(range(days, known)).toEqual({
      value: 11_000,
      low: Math.round(11_000 * (1 - half(0.15, as, winter))),
      high: Math.round(11_000 * (1 + half(0.2, as, winter))),
    });
  });
  test('never below nothing; none about no units', () => {
    expect(range(7, false, { value: 1000, low: 0, high: 3000 }).low).toBe(0);
    expect(range(365, true, { value: 0, low: 0, high: 10 })).toEqual({ value: 11_000, low: 11_000, high: 11_000 });
  });
});

test.each([
  ['1,100 days', { to: addDays('2027-01-01', 1100) }, []],
  ['a day more', { to: addDays('2027-01-01', 1101) }, [['bill-too-long', { days: 1101, most: 1100 }]]],
  ['one day', { to: '2027-01-02' }, []],
  ['no day', { to: '2027-01-01' }, [['bill-ends-before-it-begins', { from: '2027-01-01', to: '2027-01-01' }]]],
  ['no price', { pencePerKWh: 0 }, [['bill-price-missing', { boughtKWh: 155 }]]],
  ['a credit for a price', { totalPence: -500 }, [['bill-in-credit', { totalPence: -500 }]]],
  ['a price in pounds', { pencePerKWh: 0.25 }, [['bill-price-unlikely', { pence: 0.25, low: 1, high: 150 }]]],
  ['a total in pounds', { totalPence: 62 }, [['bill-price-unlikely', { pence: 0.4, low: 1, high: 150 }]]],
  ['a cheap night and a dear total', { pencePerKWh: 7 }, []],
  ['no price but a total', { pencePerKWh: 0, totalPence: 4000 }, []],
  ['no price and no units', { pencePerKWh: 0, boughtKWh: 0 }, []],
] as [string, Partial<BillCheckInput>, unknown[]][])('faults: %s', (_, change, faults) => {
  expect(findBillFaults(ESTIMATE, sampleBill(change)).map(({ code, data }) => [code, data])).toEqual(faults);
});

describe('pennies', () => {
  test('as many as there are parts may be missing, not more', () => {
    expect(pennyParts([1, 1], 4)).toEqual([2, 2]);
    expect(pennyParts([1, 1], 0)).toEqual([0, 0]);
    expect(() => pennyParts([1, 1], 5)).toThrow('miss 5 by 3');
    expect(() => pennyParts([1, 1], -1)).toThrow('miss -1 by -3');
    expect(pennyParts([1.2, 1.9, 1.5], 2)).toEqual([0, 1, 1]);
  });
});

describe('price and hours', () => {
  const rate = (name: string, kWh: number, pencePerKWh: number) => ({ name, kWh, pencePerKWh });
  const RATES = [rate('electricity, Night', 638, 15), rate('electricity, day', 638, 35)];
  const BILLED = [rate(' DAY', 124, 37), rate('night ', 31, 17)];
  const sides = (change: Partial<BillCheckInput>, rates = RATES, unitsPence = 5115, meanPrice = 25) => {
    const found = priceLevers(sampleBill(change), { ...JANUARY, pence: 155 * meanPrice }, rates, unitsPence);
    const to = Object.assign({}, ...found.levers.map((lever) => lever.to));
    return { ...found, to, causes: found.levers.map(({ cause, joined }) => joined?.join(' ') ?? cause) };
  };
  test.each([
    // Mean prices of 25, 20 and 35 p of 15 and 35 p: a half, a quarter and all by day.
    [25, [15, 35], [0.5, 0.5]],
    [20, [15, 35], [0.75, 0.25]],
    [35, [15, 35], [0, 1]],
    [15, [15, 35], [1, 0]],
    // No share of 15 and 35 p makes 40: the year's shares stand, the prices are scaled by 40 / 25.
    [40, [24, 56], [0.5, 0.5]],
    [12.5, [7.5, 17.5], [0.5, 0.5]],
  ])('an estimated mean of %d p', (mean, prices, shares) => {
    const { from, to, causes, levers } = sides({ ratesKWh: BILLED }, RATES, 5115, mean);
    expect(from).toEqual({ pencePerKWh: prices.map((one) => close(one)), rateShares: shares.map((one) => close(one)) });
    // 124 of 155 units by day; 124 × 37 + 31 × 17 = 5,115 p.
    expect(to).toEqual({ pencePerKWh: [close(17), close(37)], rateShares: [close(0.2), close(0.8)] });
    expect(causes).toEqual(['price', 'when']);
    const figures = levers.map(({ inputs }) => inputs.map(({ value }) => value));
    expect(figures).toEqual([
      [prices[0]!, 17, prices[1]!, 37].map((one) => close(one)),
      [shares[0]!, 0.2, shares[1]!, 0.8].map((one) => close(one)),
    ]);
  });
  test('a total that is not units × price scales the prices of the bill', () => {
    expect(sides({ ratesKWh: BILLED, totalPence: 5626.5 }, RATES, 5626.5).to.pencePerKWh).toEqual([
      close(18.7),
      close(40.7),
    ]);
  });
  test('three prices: the year’s shares, the prices scaled', () => {
    const three = [rate('a', 100, 10), rate('b', 200, 20), rate('c', 100, 50)]; // 25 p in the mean
    const billed = [rate('a', 10, 11), rate('b', 10, 22), rate('c', 20, 55)];
    const { from, to } = sides({ ratesKWh: billed, boughtKWh: 40 }, three, 1430, 30);
    expect(from).toEqual({ pencePerKWh: [12, 24, 60].map((one) => close(one)), rateShares: [0.25, 0.5, 0.25] });
    expect(to).toEqual({ pencePerKWh: [11, 22, 55].map((one) => close(one)), rateShares: [0.25, 0.25, 0.5] });
    const same = [rate('a', 100, 20), rate('b', 300, 20)];
    expect(sides({ ratesKWh: billed.slice(0, 2), boughtKWh: 20 }, same, 330).from).toEqual({
      pencePerKWh: [close(25), close(25)],
      rateShares: [0.25, 0.75],
    });
  });
  test.each([
    ['no units by price', {}, RATES, 'price when'],
    ['one price on both sides', {}, [rate('all', 9, 25)], 'price'],
    ['other names', { ratesKWh: [rate('peak', 1, 2), rate('night', 1, 3)] }, RATES, 'price when'],
    ['one of them twice', { ratesKWh: [rate('day', 1, 2), rate('Day', 1, 3)] }, RATES, 'price when'],
    ['fewer', { ratesKWh: [rate('day', 1, 2)] }, RATES, 'price when'],
    ['more', { ratesKWh: [...BILLED, rate('peak', 1, 2)] }, RATES, 'price when'],
    ['no units at them', { ratesKWh: [rate('day', 0, 2), rate('night', 0, 3)] }, RATES, 'price when'],
    ['several on the bill only', { ratesKWh: BILLED }, [rate('all', 9, 25)], 'price when'],
    ['another price without units', {}, [rate('day', 0, 40), rate('night', 5, 25)], 'price'],
    ['no units in the estimate', { ratesKWh: BILLED }, [rate('day', 0, 40), rate('night', 0, 25)], 'price when'],
    ['no positive price', { ratesKWh: [rate('day', 1, 0), rate('night', 1, 0)] }, RATES, 'price when'],
  ] as [string, Partial<BillCheckInput>, typeof RATES, string][])('one part: %s', (_, change, rates, cause) => {
    const { from, to, causes } = sides(change, rates, 4650);
    expect(causes).toEqual([cause]);
    expect(from).toEqual({ pencePerKWh: [close(25)], rateShares: [1] });
    expect(to).toEqual({ pencePerKWh: [close(30)] });
  });
  test('a charge without units has the price that was typed', () => {
    expect(sides({ boughtKWh: 0, pencePerKWh: 27 }, [], 700).to).toEqual({ pencePerKWh: [27] });
    expect(sides({ boughtKWh: 0.001, pencePerKWh: 27 }, [], 7).to).toEqual({ pencePerKWh: [close(7000)] });
    const none = { ...JANUARY, spaceKWh: 0, otherKWh: 0, pence: 0 };
    expect(priceLevers(sampleBill({}), none, [], 4650).from.pencePerKWh).toEqual([close(30)]);
  });
});

describe('standing charge on both sides', () => {
  const withTariff = (
    own = tariff([version([allHours(25)], { standingPencePerDay: 60, vat: { rate: 0.05, included: false } })]),
  ) => ({
    ...ESTIMATE,
    household: {
      ...ESTIMATE.household,
      tariffs: [own],
      prices: { ...ESTIMATE.household.prices, electricityTariffId: 't' },
    },
  });
  test('by the tariff of the estimate, VAT put on: 31 × 63 p', () => {
    const result = check({ billedStandingPence: 2000.4 }, withTariff());
    expect(result.standing).toEqual({ estimatedPence: 1953, billedPence: 2000 });
    expect(result).toMatchObject({ estimatedPence: 2709 + 1953, seasonPence: 3875 + 1953, actualPence: 3875 + 2000 });
    expect(result.expected.value).toBe(3875 + 2000);
    expect(result.expected.low - check({}).expected.low).toBe(2000);
    expect(result.expected.high - check({}).expected.high).toBe(2000);
  });
  test('what the household was told goes before; the bill alone is not enough', () => {
    expect(
      check({ billedStandingPence: 2000, estimatedStandingPencePerDay: 50 }, withTariff()).standing!.estimatedPence,
    ).toBe(1550);
    expect(check({}, withTariff()).standing).toBeUndefined();
    expect(check({ billedStandingPence: 2000 }).standing).toBeUndefined();
  });
  test('with the heat pump’s own meter: 31 × (40 p + 36.50 a year)', () => {
    const ownMeter = { lessPencePerKWh: 5, pencePerYear: 3650 };
    const own = tariff([version([allHours(25)], { standingPencePerDay: 40, ownMeter })]);
    expect(check({ billedStandingPence: 1 }, withTariff(own)).standing!.estimatedPence).toBe(1550);
  });
  test('the version of the day of the estimate', () => {
    const own = tariff([
      version([allHours(25)], { from: '2026-01-01', standingPencePerDay: 40 }),
      version([allHours(25)], { from: '2026-11-26', standingPencePerDay: 90 }),
    ]);
    expect(check({ billedStandingPence: 1 }, withTariff(own)).standing!.estimatedPence).toBe(1240); // 31 × 40 p
  });
});

describe('the figures behind each part', () => {
  /** Cause, grade and the figures of the working. */
  const figures = (change: Partial<BillCheckInput>, estimate?: WrittenEstimate) =>
    check({ degreeDays: 465, ...change }, estimate).parts.map(({ cause, grade, working }) => [
      cause,
      grade,
      working.inputs.map(({ value }) => value),
    ]);
  const near = (...values: number[]) => values.map((value) => close(value, 3));
  test('all that can be metered', () => {
    const change = {
      degreeDays: 565,
      boughtKWh: 200,
      pencePerKWh: 30,
      readings: 'estimated',
      readKWh: 190,
      heatKWh: 460,
      waterHeatKWh: 149,
      immersionKWh: 20,
      billedStandingPence: 1860,
      estimatedStandingPencePerDay: 50,
    } as const;
    // 190 units read less 20 of the heater less 12.4 for pumps are 157.6 for 460 kWh of heat; 311 of it in the rooms.
    const [rooms, water] = [311 / 3, 149 / 2.5];
    const expected = 93 + 100 * PER_DEGREE;
    expect(figures(change)).toEqual([
      ['days', 'estimated', near(31_900, 31, 2709 + 1550, 3875 + 1550)],
      ['price', 'measured', near(25, 30)],
      ['standing-charge', 'measured', near(1550, 1860)],
      ['weather', 'estimated', near(465, 565, PER_DEGREE, 93, expected)],
      ['heat-used', 'estimated', near(460, expected, rooms)],
      ['hot-water', 'measured', near(49.6, water)],
      ['efficiency', 'measured', near(460, 157.6, (rooms + water) / 157.6)],
      ['metering', 'measured', near(200, 190)],
      ['backup', 'estimated', near(20)],
    ]);
  });
  test('the whole house, its machine metered: 190 of 230 units read', () => {
    const change = {
      meter: 'whole-house',
      otherKWh: 70,
      boughtKWh: 240,
      readings: 'estimated',
      readKWh: 230,
      heatPumpKWh: 190,
    } as const;
    const parts = figures(change).slice(3);
    expect(parts).toEqual([
      ['rest', 'estimated', near(155, 240, 70, 190 - 155)],
      ['other-electricity', 'estimated', near(240, 190, 70, 40)],
      ['metering', 'measured', near(240, 230)],
    ]);
  });
  test('a heater cannot have taken more than is left', () => {
    expect(figures({ boughtKWh: 50, immersionKWh: 80 }).at(-1)).toEqual(['backup', 'estimated', near(50)]);
    expect(figures({ boughtKWh: 50, heatPumpKWh: 0, meter: 'whole-house', immersionKWh: 8 }).at(-1)).toEqual([
      'backup',
      'estimated',
      near(0),
    ]);
  });
  test('rooms by the slope: never more than the machine ran for', () => {
    const slope = (change: Partial<BillCheckInput>) => figures({ boughtKWh: 180, ...change }).slice(3);
    expect(slope({ spaceKWh: 110 })).toEqual([
      ['rooms', 'estimated', near(93, 110)],
      ['steady', 'estimated', near(49.6, 180 - 12.4 - 110)],
    ]);
    expect(slope({ spaceKWh: 500 })).toEqual([
      ['rooms', 'estimated', near(93, 167.6)],
      ['steady', 'estimated', near(49.6, 0)],
    ]);
    expect(slope({ spaceKWh: 110, readings: 'estimated' }).map(([, grade]) => grade)).toEqual(['assumed', 'assumed']);
    expect(slope({ spaceKWh: 110, immersionKWh: 0 }).map(([cause]) => cause)).toEqual(['rooms', 'hot-water', 'backup']);
    // Heat metered too: 450 kWh of heat, of 110 units at 3 and 57.6 at 2.5 that would make 474.
    const share = 450 / (110 * 3 + 57.6 * 2.5);
    expect(slope({ spaceKWh: 110, heatKWh: 450 })).toEqual([
      ['heat-used', 'estimated', near(450, 93, 110 * share)],
      ['hot-water', 'estimated', near(49.6, 57.6 * share)],
      ['efficiency', 'assumed', near(450, 167.6, share)],
    ]);
    // Other electricity inside: the slope is not that of the machine, hot water as estimated.
    expect(slope({ spaceKWh: 110, heatKWh: 450, meter: 'whole-house' })).toEqual([
      ['heat-used', 'estimated', near(450, 93, (450 - 124) / 3)],
      ['rest', 'assumed', near(450, 167.6, ((450 - 124) / 3 + 49.6) / 167.6)],
    ]);
  });
  test('hot water cannot be more than all heat', () => {
    const of = (change: Partial<BillCheckInput>) => figures({ boughtKWh: 100, heatKWh: 90, ...change }).slice(3);
    expect(of({ waterHeatKWh: 120 })[1]).toEqual(['hot-water', 'measured', near(49.6, 36)]);
    expect(of({})[0]).toEqual(['heat-used', 'estimated', near(90, 93, 0)]);
  });
  test('heat over units from 0.8 to 10 is a machine; what hardly ran is none', () => {
    // 167.6 units: 134.1 kWh of heat are just over 0.8, 1,675 just under 10.
    const causes = (change: Partial<BillCheckInput>) =>
      figures({ boughtKWh: 180, ...change })
        .slice(3)
        .map(([cause]) => cause);
    expect(causes({ heatKWh: 134.2 })).toEqual(['heat-used', 'efficiency']);
    expect(causes({ heatKWh: 134 })).toEqual(['rest']);
    expect(causes({ heatKWh: 1675 })).toEqual(['heat-used', 'efficiency']);
    expect(causes({ heatKWh: 1677 })).toEqual(['rest']);
    expect(causes({ boughtKWh: 13.5, heatKWh: 3 })).toEqual(['heat-used', 'efficiency']);
    expect(causes({ boughtKWh: 13.3, heatKWh: 2 })).toEqual(['rest']);
    expect(causes({ boughtKWh: 13.5, spaceKWh: 1 })).toEqual(['rooms', 'steady']);
    expect(causes({ boughtKWh: 13.3, spaceKWh: 1 })).toEqual(['rest']);
  });
  test('grades without weather and without a reading', () => {
    const grades = (change: Partial<BillCheckInput>) =>
      check({ boughtKWh: 180, ...change })
        .parts.slice(2)
        .map(({ cause, grade }) => [cause, grade]);
    expect(grades({ heatKWh: 450 })).toEqual([
      ['heat-used', 'assumed'],
      ['efficiency', 'assumed'],
    ]);
    expect(grades({ spaceKWh: 100 })).toEqual([
      ['rooms', 'assumed'],
      ['steady', 'estimated'],
    ]);
    expect(grades({})).toEqual([['rest', 'assumed']]);
    expect(grades({ heatKWh: 450, immersionKWh: 0, degreeDays: 465 })).toContainEqual(['efficiency', 'estimated']);
  });
  test('the grade of each figure of the rest', () => {
    const rest = (change: Partial<BillCheckInput>) =>
      check({ degreeDays: 465, ...change })
        .parts.at(-1)!
        .working.inputs.map(({ grade }) => grade);
    expect(rest({})).toEqual(['estimated', 'measured', 'measured', 'estimated']);
    expect(rest({ readings: 'estimated', otherKWh: 3 })).toEqual(['estimated', 'estimated', 'estimated', 'estimated']);
  });
  test('in summer nothing is expected for rooms, and units are counted as they are', () => {
    // July: 62 units for all else; 20 more that rose with the cold at 25 p.
    const july = {
      from: '2027-07-01',
      to: '2027-08-01',
      boughtKWh: 82,
      spaceKWh: 20,
      immersionKWh: 0,
      degreeDays: 465,
    };
    const parts = check(july)
      .parts.filter(({ pence }) => pence !== 0)
      .map(({ cause, pence }) => [cause, pence]);
    expect(parts).toEqual([
      ['days', 1550 - 2709],
      ['rooms', 500],
    ]);
  });
});

test('above and below begin beyond the range, at either end', () => {
  const { low, high } = check({ degreeDays: 465 }).expected;
  const verdict = (totalPence: number) => check({ degreeDays: 465, totalPence }).verdict;
  // The range follows the price that a total comes to, so the units are told apart by price alone.
  expect(verdict(4000)).toBe('inside');
  const at = (kWh: number) => check({ degreeDays: 465, boughtKWh: kWh }).verdict;
  expect([at((high - 1) / 25), at((high + 1) / 25), at((low + 1) / 25), at((low - 1) / 25)]).toEqual([
    'inside',
    'above',
    'inside',
    'below',
  ]);
});

describe('what panels gave the home in the days of a bill', () => {
  // The estimate has 155 kWh for January at 25 p. 40 of them came from the roof.
  const sunny = { meter: 'whole-house', otherKWh: 100, boughtKWh: 115, pencePerKWh: 25, readings: 'actual' } as const;
  const partsOf = (change: Partial<BillCheckInput>) =>
    new Map(check({ from: '2027-01-01', to: '2027-02-01', ...change }).parts.map(({ cause, pence }) => [cause, pence]));
  test('stands in the bridge as what was not bought, and is no other cause', () => {
    const parts = partsOf({ ...sunny, ownUseKWh: 40 });
    expect(parts.get('own-generation')).toBe(-1000);
    const others = [...parts].filter(([cause]) => cause !== 'own-generation' && cause !== 'days');
    expect(others.map(([, pence]) => pence)).toEqual(others.map(() => 0));
    expect(partsOf(sunny).has('own-generation')).toBe(false);
  });
  test('is not expected on the bill, so that such a bill is as expected', () => {
    const of = (ownUseKWh?: number) =>
      check({ from: '2027-01-01', to: '2027-02-01', ...sunny, ...(ownUseKWh === undefined ? {} : { ownUseKWh }) });
    expect(of(40).expected.value).toBe(115 * 25);
    expect(of(40).verdict).toBe('inside');
    expect(of().expected.value).toBe(155 * 25);
    expect(of(500).expected.value).toBe(0);
  });
  test('is in what the machine itself used, where its own meter says that', () => {
    const parts = partsOf({ ...sunny, ownUseKWh: 40, heatPumpKWh: 155 });
    expect([parts.get('own-generation'), parts.get('other-electricity')]).toEqual([-1000, 0]);
  });
  test('changes nothing on the bill of the heat pump’s own meter', () => {
    const own = { meter: 'heat-pump', boughtKWh: 155, pencePerKWh: 25, readings: 'actual' } as const;
    expect(partsOf({ ...own, ownUseKWh: 40 })).toEqual(partsOf(own));
  });
});
