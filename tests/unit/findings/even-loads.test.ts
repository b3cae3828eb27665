import { describe, expect, test } from 'vitest';
import { addDays } from '../../../src/model/calendar/civil.ts';
import { daysAndCost, type EvenLoad, findEvenLoads } from '../../../src/model/findings/even-loads.ts';
import { findFloorLoads } from '../../../src/model/findings/floor-loads.ts';
import { findHeater, isHeater, isWeekly } from '../../../src/model/findings/heater.ts';
import { findLargeLoad } from '../../../src/model/findings/large-load.ts';
import { loadsOf } from '../../../src/model/findings/loads-of.ts';
import type { MeterDays } from '../../../src/model/findings/meter-days.ts';
import { version } from '../tariff/tariffs.ts';
import { daysOf, FIRST } from './made-days.ts';

/** A day, the hour at which a load begins, its power [kW], and for how long [h]. */
type Block = readonly [day: number, hour: number, kW: number, hours?: number];
const withBlocks = (count: number, blocks: readonly Block[], options: Parameters<typeof daysOf>[2] = {}) =>
  daysOf(
    count,
    (day, hour) =>
      blocks.reduce((sum, [on, from, kW, hours = 2]) => {
        const since = (day - on) * 24 + hour - from;
        return sum + (since >= 0 && since < hours ? kW : 0);
      }, 0),
    options,
  );
const on = (days: readonly number[], hour: number, kW: number, hours?: number): Block[] =>
  days.map((day) => [day, hour, kW, hours]);
const span = (from: number, to: number) => Array.from({ length: to - from }, (_, i) => from + i);
const twoRates = [
  { name: 'night', pencePerKWh: 15, times: [{ from: '00:00', to: '06:00' }] },
  { name: 'day', pencePerKWh: 30, times: 'rest' as const },
];
const close = (value: number) => expect.closeTo(value, 9);

describe('even loads', () => {
  test('ten nights of two hours at 3 kW', () => {
    expect(findEvenLoads(withBlocks(12, on(span(1, 11), 2, 3)))).toEqual([
      {
        powerKW: close(3),
        steps: expect.any(Array),
        near: expect.any(Array),
        likeness: 1,
        drift: 0,
        ramp: close(0),
        elsewhere: 0,
        hour: 2,
        days: span(1, 11),
        kWh: close(60),
      },
    ]);
  });
  test.each([
    ['three steps are chance', on([1, 2, 3], 2, 3), []],
    ['four are not', on([1, 2, 3, 4], 2, 3), [4]],
    ['half an hour may have any power', on([1, 2, 3, 4, 5], 2, 3, 0.5), []],
    ['the oftener first', [...on([1, 2, 3, 4], 2, 3), ...on(span(1, 7), 12, 2)], [6, 4]],
    ['a pause of 16 days', on([0, 1, 2, 3, 19, 20, 21, 22], 2, 3), [8]],
    ['a pause of 17 days', on([0, 1, 2, 3, 20, 21, 22, 23], 2, 3), [4, 4]],
    ['a spell of three falls out', on([0, 1, 2, 3, 20, 21, 22], 2, 3), [4]],
    [
      'at most sixteen',
      span(0, 20).flatMap((k) => on(span(4 * k, 4 * k + 4), [1, 6, 11, 16, 21][k % 5]!, 1.5 ** ((k / 5) | 0))),
      new Array(16).fill(4),
    ],
  ] as [string, Block[], number[]][])('%s', (_, blocks, counts) => {
    expect(findEvenLoads(withBlocks(84, blocks)).map(({ steps }) => steps.length)).toEqual(counts);
  });
  test('a load of the night costs the night’s price, one of the day the day’s', () => {
    // Ten nights and ten days of 6 kWh each: half at 15 p, half at 30, 22.5 in the mean; 25 p are paid in the mean of all.
    const days = withBlocks(12, [...on(span(1, 11), 2, 3), ...on(span(1, 11), 12, 2, 3)]);
    const own = { pencePerKWh: 25, versions: [version(twoRates, { from: '2025-01-01' })] };
    const costs = findEvenLoads(days).map((load) => [load.hour, daysAndCost(load, days, own)] as const);
    const cost = (pence: number) => ({
      kWh: close(60),
      pence: close(pence),
      penceYear: expect.closeTo(36.5 * pence, 6),
    });
    expect(new Map(costs)).toEqual(
      new Map([
        [2, expect.objectContaining({ ...cost((1500 * 15) / 22.5), from: addDays(FIRST, 1), to: addDays(FIRST, 11) })],
        [12, expect.objectContaining(cost((1500 * 30) / 22.5))],
      ]),
    );
  });
  test('powers either side of a step of the table, hours either side of the middle', () => {
    // 2.95, 3.0 and 3.07 kW lie on three neighbouring rows of 3.5 %, 0:30, 2:00 and 3:30 three readings apart.
    const kW = [2.95, 2.95, 3, 3.07, 3.07].map((one, i): Block => [i, 2, one]);
    const hours = [0.5, 0.5, 2, 3.5, 3.5].map((hour, i): Block => [i, hour, 3]);
    for (const blocks of [kW, hours])
      expect(findEvenLoads(withBlocks(8, blocks)).map(({ steps, hour }) => [steps.length, hour])).toEqual([[5, 2]]);
  });
  test('the same within 7 %, about the same within a quarter', () => {
    const nights = on([0, 1, 2, 3, 8, 9, 10, 11], 2, 3);
    const others = (...kW: number[]) => kW.map((one, i): Block => [4 + i, 2, one]);
    const find = (...kW: number[]) => findEvenLoads(withBlocks(13, [...nights, ...others(...kW)]))[0];
    const days = [0, 1, 2, 3, 4, 8, 9, 10, 11];
    expect(find(3.2, 3.22, 3.74, 3.78)).toMatchObject({ days, likeness: close(9 / 11), kWh: close(8 * 6 + 6.4) });
    expect(find(2.8, 2.78, 2.2)).toMatchObject({ days, likeness: close(9 / 10), kWh: close(8 * 6 + 5.6) });
  });
  test('what is about the same counts on the days of the spell only', () => {
    const nights = on([2, 3, 5, 6, 8, 9], 2, 3);
    const about = [0, 1, 4, 7, 10, 11].map((day, i): Block => [day, 2, [2.3, 2.4, 2.5, 2.6, 2.35, 2.45][i]!]);
    expect(findEvenLoads(withBlocks(14, [...nights, ...about]))[0]!.likeness).toBeCloseTo(6 / 8, 9);
  });
  test('an hour and a half about its time; the same power at other hours of its days is elsewhere', () => {
    const blocks: Block[] = [...on(span(1, 9), 2, 3), [9, 3.5, 3], [9, 12, 3], [1, 20, 3], [10, 12, 3], [0, 12, 3]];
    const [load] = findEvenLoads(withBlocks(12, blocks));
    expect(load).toMatchObject({ hour: 2, days: span(1, 10), likeness: 1, elsewhere: close(2 / 9) });
    expect(findEvenLoads(withBlocks(12, [...on(span(1, 9), 2, 3), [9, 4, 3]]))[0]).toMatchObject({
      days: span(1, 9),
      elsewhere: 0,
    });
    // On the last day of the spell two hours later: not the same, but the same power elsewhere.
    expect(findEvenLoads(withBlocks(12, [...on(span(1, 9), 2, 3), [8, 5, 3]]))[0]!.elsewhere).toBeCloseTo(1 / 8, 9);
  });
  test.each([
    ['first before', [0, 2, 4], [6, 8, 10]],
    ['first after', [6, 8, 10], [1, 3, 5]],
  ])('about midnight, the %s', (_, before, after) => {
    const blocks = [
      ...on(before, 23.5, 3),
      ...on(
        after.map((day) => day + (day < 6 ? 0 : 1)),
        0.5,
        3,
      ),
    ];
    const loads = findEvenLoads(withBlocks(14, blocks));
    expect(loads.map(({ hour, steps }) => [hour, steps.length])).toEqual([[0, 6]]);
  });
  test('the power is the middle one, its rise that of the steps long enough to show it, if they are a third', () => {
    const rising: Block[] = [0, 1, 2].flatMap((day): Block[] => [
      [day, 2, 2.9],
      [day, 2, 0.1, 0.5],
      [day, 3, 0.2, 1],
      [day, 3.5, -0.1, 0.5],
    ]);
    const short = (count: number) => on(span(3, 3 + count), 2, 3.1, 1.5);
    const [load] = findEvenLoads(withBlocks(14, [...rising, ...short(6)]));
    // Readings of 3, 2.9, 3.1 and 3 kW: inside from 2.9 to 3.1, 3 in the mean.
    expect(load!.ramp).toBeCloseTo(0.2 / 3, 9);
    expect(load!.powerKW).toBeCloseTo(3.1, 9);
    expect(findEvenLoads(withBlocks(14, [...rising, ...short(7)]))[0]!.ramp).toBeNull();
    expect(findEvenLoads(withBlocks(14, [...rising, ...short(3)]))[0]!.powerKW).toBeCloseTo(3.05, 9);
  });
});

describe('loads that stand in the low readings of a fortnight', () => {
  const shape = (days: MeterDays) =>
    findFloorLoads(days).map(({ powerKW, days: on }) => [powerKW.toFixed(2), on.length]);
  const all = (count: number, ...missing: number[]) => span(0, count).filter((day) => !missing.includes(day));
  const nights = (days: readonly number[], kW = 3, hour = 2) => on(days, hour, kW, 3);
  test('four weeks of three hours at 3 kW', () => {
    const [load, ...others] = findFloorLoads(withBlocks(28, nights(all(28))));
    expect(others).toEqual([]);
    expect(load).toMatchObject({ likeness: 1, elsewhere: 0, hour: 2, days: span(0, 28) });
    expect([load!.powerKW, load!.ramp, load!.kWh]).toEqual([close(3), close(0), close(28 * 9)]);
    expect(load!.steps[9]).toMatchObject({ day: 9, slot: 4, slots: 6, powerKW: close(3), kWh: close(9) });
  });
  test.each([
    ['a fortnight', 14, nights(all(14)), [['3.00', 14]]],
    ['a day less', 13, nights(all(13)), []],
    ['three hours are two readings inside and more; an hour and a half one', 28, on(all(28), 2, 3, 1.5), []],
    ['three days missed', 28, nights(all(28, 1, 5, 9)), [['3.00', 25]]],
    ['four of the first fortnight: it begins a week later', 28, nights(all(28, 1, 5, 9, 11)), [['3.00', 19]]],
    ['8 % more is the same', 42, [...nights(span(0, 21)), ...nights(span(21, 42), 3.23)], [['3.00', 42]]],
    [
      'a little more is another',
      42,
      [...nights(span(0, 21)), ...nights(span(21, 42), 3.25)],
      [
        ['3.00', 28],
        ['3.25', 21],
      ],
    ],
    ['an hour later is the same', 42, [...nights(span(0, 21)), ...nights(span(21, 42), 3, 3)], [['3.00', 21]]],
    [
      'half an hour more is another',
      42,
      [...nights(span(0, 21)), ...nights(span(21, 42), 3, 3.5)],
      [
        ['3.00', 21],
        ['3.00', 21],
      ],
    ],
    [
      'an hour and a half earlier is another',
      42,
      [...nights(span(0, 21), 3, 3.5), ...nights(span(21, 42))],
      [
        ['3.00', 21],
        ['3.00', 21],
      ],
    ],
    ['a fortnight between', 28, nights(all(28, 12, 13, 14, 15)), [['3.00', 24]]],
    [
      'three weeks between',
      42,
      nights(all(42, 14, 15, 16, 17)),
      [
        ['3.00', 14],
        ['3.00', 21],
      ],
    ],
  ] as [string, number, Block[], [string, number][]][])('%s', (_, count, blocks, expected) => {
    expect(shape(withBlocks(count, blocks))).toEqual(expected);
  });
  test('on a day with 85 % of its power inside it stands', () => {
    const weaker = (kW: number): Block[] => [...nights(all(28, 8)), [8, 2, 3, 1], [8, 3, kW, 0.5], [8, 3.5, 3, 1.5]];
    expect(shape(withBlocks(28, weaker(2.56)))).toEqual([['3.00', 28]]);
    expect(shape(withBlocks(28, weaker(2.54)))).toEqual([['3.00', 27]]);
    // Its first and last readings are cut by the clock and not asked for; the second and the last but one are.
    const cut = (from: number, hours: number) => shape(withBlocks(28, [...nights(all(28, 8)), [8, from, 3, hours]]));
    expect([cut(2.5, 2), cut(3, 1.5), cut(2.5, 1.5)]).toEqual([[['3.00', 28]], [['3.00', 27]], [['3.00', 27]]]);
  });
  test('over midnight, but not over the last', () => {
    const days = withBlocks(14, [...nights(all(14), 3, 22.5), [0, 0, 3, 1.5]]);
    const [load, ...others] = findFloorLoads(days);
    expect(others).toEqual([]);
    expect(load).toMatchObject({ hour: 22.5, days: span(0, 13), likeness: close(13 / 14), kWh: close(13 * 9) });
  });
});

const MACHINE = daysOf(60, (_, hour) => (hour >= 2 && hour < 4 ? 3 : 0.1));
/** The same with a compressor of that power for three hours more, on ten of its days. */
const ALIKE = daysOf(60, (day, hour) => (hour >= 2 && hour < 4 ? 3 : day < 10 && hour >= 12 && hour < 15 ? 2.9 : 0.1));
const HOUSE: MeterDays = { ...MACHINE, meter: 'whole-house' };
/** Ten nights of two hours at 3 kW, alike, level and at no other hour, unless told. */
function load({ hours = 2, ...change }: Partial<EvenLoad> & { hours?: number } = {}): EvenLoad {
  const { powerKW = 3, days = span(0, 10) } = change;
  const kWh = powerKW * hours;
  const steps = days.map((day) => ({ day, slot: 4, slots: 4, powerKW, ramp: 0, kWh }));
  return {
    powerKW,
    steps,
    near: steps,
    likeness: 0.5,
    ramp: 0,
    elsewhere: 0,
    drift: 0,
    hour: 2,
    days,
    kWh: days.length * kWh,
    ...change,
  };
}

describe('a heater', () => {
  test.each([
    ['2.57 kW', { powerKW: 2.579 }, MACHINE, false],
    ['3 kW at 225 V', { powerKW: 2.581 }, MACHINE, true],
    ['3 kW at 245 V', { powerKW: 3.179 }, MACHINE, true],
    ['3.19 kW', { powerKW: 3.181 }, MACHINE, false],
    ['6 kW, low', { powerKW: 5.17 }, MACHINE, true],
    ['6 kW, high', { powerKW: 6.35 }, MACHINE, true],
    ['9 kW, low', { powerKW: 7.75 }, MACHINE, true],
    ['9 kW, high', { powerKW: 9.53 }, MACHINE, true],
    ['12 kW', { powerKW: 12 }, MACHINE, false],
    ['3 kW of the house', {}, HOUSE, true],
    ['6 kW of the house', { powerKW: 6 }, HOUSE, false],
    ['as often of another power just before and after', { drift: 0.31 }, MACHINE, false],
    ['seldom so', { drift: 0.29 }, MACHINE, true],
    ['alike enough, level', { likeness: 0.451 }, MACHINE, true],
    ['not alike', { likeness: 0.449 }, MACHINE, false],
    ['alike enough, short', { likeness: 0.751, ramp: null }, MACHINE, true],
    ['short and less alike', { likeness: 0.749, ramp: null }, MACHINE, false],
    ['rising little', { ramp: 0.059 }, MACHINE, true],
    ['rising a little more', { ramp: 0.06 }, MACHINE, true],
    ['rising', { ramp: 0.061 }, MACHINE, false],
    ['falling', { ramp: -0.061 }, MACHINE, false],
    ['once elsewhere for each', { elsewhere: 1 }, MACHINE, true],
    ['oftener elsewhere', { elsewhere: 1.05 }, MACHINE, false],
    ['twelve hours', { hours: 12 }, MACHINE, true],
    ['longer', { hours: 12.5 }, MACHINE, false],
    ['four hours of the house', { hours: 4.1 }, HOUSE, true],
    ['longer, of the house', { hours: 4.3 }, HOUSE, false],
    ['ten days', { days: span(0, 10) }, MACHINE, true],
    ['nine days', { days: span(0, 9) }, MACHINE, false],
    ['ten days of 25', { days: [...span(0, 9), 24] }, MACHINE, true],
    ['ten days of 26', { days: [...span(0, 9), 25] }, MACHINE, false],
    ['as high for longer at another hour', {}, ALIKE, false],
    ['on days without that', { days: span(10, 20) }, ALIKE, true],
    ['four weeks', { days: [0, 7, 14, 21] }, MACHINE, true],
    ['three weeks', { days: [0, 7, 14] }, MACHINE, false],
  ] as [string, Parameters<typeof load>[0], MeterDays, boolean][])('%s: %j', (_, change, days, expected) => {
    expect(isHeater(load(change), days)).toBe(expected);
  });
  test.each([
    ['every seventh day', [0, 7, 14, 21], true],
    ['weeks left out', [0, 14, 28, 35], true],
    ['three times', [0, 7, 14], false],
    ['one of three gaps no week', [0, 7, 14, 22], false],
    ['seven of ten gaps', [0, 7, 14, 21, 28, 35, 42, 49, 50, 51, 52], true],
    ['six of nine gaps', [0, 7, 14, 21, 28, 35, 42, 43, 44, 45], false],
    ['every day', span(0, 10), false],
  ])('weekly: %s', (_, days, expected) => expect(isWeekly(load({ days }), MACHINE)).toBe(expected));
  test('weeks are those of the calendar, not of the readings', () => {
    const everyWeek = { ...MACHINE, dayNumber: MACHINE.dayNumber.map((day, i) => day + 6 * i) };
    expect(isWeekly(load({ days: [0, 1, 2, 3] }), everyWeek)).toBe(true);
    expect(
      isHeater(load({ days: [...span(0, 9), 13] }), { ...MACHINE, dayNumber: MACHINE.dayNumber.map((d, i) => d + i) }),
    ).toBe(
      false, // 10 of 27 days
    );
  });
  test('its days, units and cost: 60 kWh in ten days at 25 p are 2,190 kWh and £547.50 a year', () => {
    const [found] = findHeater(MACHINE, [load()], { pencePerKWh: 25 });
    expect(found).toMatchObject({
      code: 'heater-running',
      meter: 'heat-pump',
      from: '2025-10-01',
      to: '2025-10-11',
      sure: close(0.35 + 0.2 + 0.2 + 0.025),
      grade: 'estimated',
      seen: { powerKW: 3, ratedKW: 3, days: 10, hours: 20, hour: 2 },
      kWh: 60,
      pence: 1500,
      kWhYear: 2190,
      penceYear: 54_750,
    });
    expect(found!.check).toContain('heater-hours');
    expect(findHeater(HOUSE, [load()], { pencePerKWh: 25 })[0]!.sure).toBeCloseTo(0.575, 9);
    expect(findHeater(MACHINE, [load({ days: span(0, 40) })], { pencePerKWh: 25 })[0]!.sure).toBeCloseTo(0.8, 9);
    expect(findHeater(MACHINE, [load({ likeness: 0.3 })], { pencePerKWh: 25 })).toEqual([]);
  });
  test('once a week: four times in 22 days', () => {
    const [found] = findHeater(MACHINE, [load({ days: [2, 9, 16, 23], powerKW: 6 })], { pencePerKWh: 30 });
    expect(found).toMatchObject({ code: 'weekly-pasteurisation', from: '2025-10-03', to: '2025-10-25', kWh: 48 });
    expect(found!.seen).toMatchObject({ ratedKW: 6, days: 4 });
    expect(found!.penceYear).toBeCloseTo((48 * 30 * 365) / 22, 6);
    expect(found!.check).not.toContain('heater-hours');
  });
});

describe('a large load of the house', () => {
  test.each([
    ['a socket', { powerKW: 1.9, hours: 3.01 }, true],
    ['weaker', { powerKW: 1.89, hours: 3 }, false],
    ['shorter', { powerKW: 1.9, hours: 2.9 }, false],
    ['its own supply', { powerKW: 3.3, hours: 1 }, true],
    ['a little weaker', { powerKW: 3.29, hours: 1 }, false],
    ['a little shorter', { powerKW: 3.3, hours: 0.95 }, false],
    ['alike', { powerKW: 7, likeness: 0.5 }, true],
    ['not alike', { powerKW: 7, likeness: 0.49 }, false],
    ['too short to show a rise', { powerKW: 7, ramp: null }, true],
    ['rising little', { powerKW: 7, ramp: 0.06 }, true],
    ['rising', { powerKW: 7, ramp: 0.061 }, false],
    ['falling', { powerKW: 7, ramp: -0.061 }, false],
    ['a week', { powerKW: 7, days: span(0, 7) }, true],
    ['six days', { powerKW: 7, days: span(0, 6) }, false],
    ['a heater', { powerKW: 3, hours: 3.5 }, false],
    ['longer than a heater', { powerKW: 3, hours: 4.5 }, true],
  ] as [string, Parameters<typeof load>[0], boolean][])('%s: %j', (_, change, expected) => {
    expect(findLargeLoad(HOUSE, [load(change)], { pencePerKWh: 20 })).toHaveLength(expected ? 1 : 0);
  });
  test('a compressor that is as high at other hours is none', () => {
    expect(findLargeLoad({ ...ALIKE, meter: 'whole-house' }, [load({ powerKW: 3.3 })], { pencePerKWh: 20 })).toEqual(
      [],
    );
  });
  test.each<readonly [string, own: readonly number[], ownC: number, othersC: (day: number) => number, found: boolean]>([
    ['on days no colder than the others', span(20, 30), 6, () => 6, true],
    ['on the coldest days only: a heater', span(20, 30), 3, () => 6, false],
    ['hardly 3 K colder', span(20, 30), 3.01, () => 6, true],
    ['a little below 3.5 °C', span(20, 30), 3.49, () => 9, false],
    ['3.5 °C', span(20, 30), 3.5, () => 9, true],
    ['a fortnight before and after speaks', span(20, 30), 3, (day) => (day === 6 || day === 43 ? 84 : 0), false],
    ['what lies farther off does not', span(20, 30), 3, (day) => (day < 6 || day > 43 ? 99 : 0), true],
    ['four other days', span(0, 56), 3, () => 9, false],
    ['three other days', span(0, 57), 3, () => 9, true],
  ])('%s', (_, own, ownC, othersC, found) => {
    const outdoorC = HOUSE.outdoorC.map((_, day) => (own.includes(day) ? ownC : othersC(day)));
    const charger = load({ powerKW: 7, days: own });
    expect(findLargeLoad({ ...HOUSE, outdoorC }, [charger], { pencePerKWh: 20 })).toHaveLength(found ? 1 : 0);
  });
  test.each([
    ['a charger', { powerKW: 7, hours: 2 }, false],
    ['for hours at the power of a heater', { powerKW: 2.8, hours: 6 }, true],
    ['a socket for hours', { powerKW: 2.3, hours: 6 }, false],
    ['a heater beside a compressor', { powerKW: 6.19, hours: 3.25 }, true],
    ['stronger', { powerKW: 6.21, hours: 3.25 }, false],
    ['for longer', { powerKW: 6.19, hours: 3.35 }, false],
    ['2.5 kW for hours', { powerKW: 2.5, hours: 6 }, true],
    ['less', { powerKW: 2.49, hours: 6 }, false],
    ['3.2 kW for hours', { powerKW: 3.2, hours: 6 }, true],
    ['more', { powerKW: 3.21, hours: 6 }, false],
  ])('a question with a heater: %s', (_, change, asked) => {
    const [found] = findLargeLoad(HOUSE, [load(change)], { pencePerKWh: 20 });
    expect(found!.may).toEqual(asked ? ['large-load', 'heater'] : undefined);
  });
  test('its days, units and cost: ten nights of four hours at 7 kW', () => {
    const vehicle = load({ powerKW: 7, hours: 4, likeness: 0.6, days: span(1, 11) });
    const [found] = findLargeLoad(HOUSE, [vehicle], { pencePerKWh: 20 });
    expect(found).toMatchObject({
      code: 'large-load',
      meter: 'whole-house',
      from: '2025-10-02',
      to: '2025-10-12',
      sure: close(0.4 + 0.21 + 0.15),
      seen: { powerKW: 7, days: 10, hoursEach: 4, hour: 2 },
      kWh: 280,
      pence: 5600,
      kWhYear: 10_220,
      penceYear: 204_400,
    });
    const socket = findLargeLoad(HOUSE, [load({ powerKW: 3.3, hours: 4, likeness: 0.6 })], { pencePerKWh: 20 });
    expect(socket[0]!.sure).toBeCloseTo(0.61, 9);
    expect(findLargeLoad(MACHINE, [vehicle], { pencePerKWh: 20 })).toEqual([]);
  });
  test('nights on which something beside it changed its height are its own too, once', () => {
    const all = load({ powerKW: 7, hours: 4, likeness: 0.6, days: span(1, 15) });
    const seven = { ...all, steps: all.steps.slice(0, 10), days: span(1, 11), kWh: 280 };
    const eight = { ...all, powerKW: 8, steps: all.steps.slice(2, 14), days: span(3, 15), kWh: 336 };
    expect(findLargeLoad(HOUSE, [seven, eight], { pencePerKWh: 20 })).toMatchObject([
      { kWh: 392, seen: { powerKW: 7, days: 14 } },
    ]);
    // What a home has many of keeps to its own height, or lasts nearly as long: three quarters of three hours at 3.2 kW.
    const socket = (kWh: number) => {
      const near = all.steps.map((step, i) => (i < 10 ? step : { ...step, kWh }));
      return { ...seven, steps: near.slice(0, 10), near, powerKW: 3.2 };
    };
    const daysOfSocket = (kWh: number) => findLargeLoad(HOUSE, [socket(kWh)], { pencePerKWh: 20 })[0]!.seen.days;
    expect([7.1, 7.3].map(daysOfSocket)).toEqual([10, 14]);
  });
});

describe('both ways of looking', () => {
  // On days 10 to 19 a compressor runs before and after the heater, whose step is then lost.
  const blocks = [...on(span(0, 28), 2, 3, 3), ...on(span(10, 20), 1, 1.5, 1), ...on(span(10, 20), 5, 1.5, 1)];
  const heaters = (days: MeterDays) =>
    loadsOf(days)
      .filter((one) => isHeater(one, days))
      .map((one) => [one.hour, one.days.length, Math.round(one.kWh)]);
  test('what the steps have missed is taken from the low readings, on the machine’s own meter', () => {
    const days = withBlocks(28, blocks);
    expect(heaters(days)).toEqual([[2, 28, 28 * 9]]);
    expect(heaters({ ...days, meter: 'whole-house' })).toEqual([[2, 18, 18 * 9]]);
  });
  test('what the steps have seen is not named twice; another heater is', () => {
    const days = withBlocks(28, on(span(0, 28), 2, 3, 3));
    expect(loadsOf(days)).toEqual(findEvenLoads(days));
    // Another of 6 kW that the compressor hides on ten days stands beside the first.
    const two = withBlocks(28, [
      ...on(span(0, 28), 2, 3, 3),
      ...on(span(0, 28), 12, 6, 3),
      ...on(span(10, 20), 11, 1.5, 1),
      ...on(span(10, 20), 15, 1.5, 1),
    ]);
    expect(heaters(two).toSorted((a, b) => a[0]! - b[0]!)).toEqual([
      [2, 28, 252],
      [12, 28, 504],
    ]);
  });
});
