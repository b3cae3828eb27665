import { describe, expect, test } from 'vitest';
import { addDays, toDayNumber } from '../../../src/model/calendar/civil.ts';
import type { EvenLoad } from '../../../src/model/findings/even-loads.ts';
import {
  heatingDegrees,
  knownWeather,
  type MeterReadings,
  median,
  meterDays,
} from '../../../src/model/findings/meter-days.ts';
import { typicalDay } from '../../../src/model/findings/typical-day.ts';
import { withoutLoads, withoutMachine } from '../../../src/model/findings/without-loads.ts';
import type { Finding } from '../../../src/model/shapes/finding.ts';
import { meanOf } from '../../../src/model/units/sums.ts';
import { daysOf, FIRST } from './made-days.ts';

/** Days of readings that count up from 0, so that each sum is known. */
const counting = (intervalMinutes: number, ...lengths: number[]): MeterReadings => ({
  meter: 'whole-house',
  intervalMinutes,
  days: lengths.map((length, day) => ({ date: addDays(FIRST, day), values: Array.from({ length }, (_, i) => i) })),
});

describe('whole days of half-hours or hours', () => {
  test.each([
    [5, 288, 48, [15, 51], 41_328], // 0 + … + 5 = 15, 6 + … + 11 = 51; 287 × 288 / 2
    [10, 144, 48, [3, 12], 10_296],
    [15, 96, 48, [1, 5], 4560],
    [30, 48, 48, [0, 1], 1128],
    [60, 24, 24, [0, 1], 276],
  ])('%i minutes', (minutes, length, perDay, first, sum) => {
    const days = meterDays(counting(minutes, length, length - 1, length, length + 1))!;
    expect(days).toMatchObject({ meter: 'whole-house', perDay, hours: 24 / perDay, count: 2 });
    expect([...days.kWh.slice(perDay, perDay + 2)]).toEqual(first);
    expect(days.kWh).toHaveLength(2 * perDay);
    expect([...days.dayKWh]).toEqual([sum, sum]);
    expect([...days.dayNumber]).toEqual([toDayNumber(FIRST), toDayNumber(FIRST) + 2]);
    expect(days.outdoorC).toEqual(new Float64Array(2).fill(Number.NaN));
  });
  test.each([0, 7, 20, 40, 45, 120, 1440, Number.NaN])('readings of %d minutes make none', (minutes) => {
    expect(meterDays(counting(minutes, 48))).toBeNull();
  });
  test.each([0, 20, 47])('a day without its reading %i is left out', (place) => {
    const one = counting(30, 48, 48);
    const values = Array.from(one.days[0]!.values).with(place, Number.NaN);
    expect(meterDays({ ...one, days: [{ ...one.days[0]!, values }, one.days[1]!] })!.count).toBe(1);
  });
  test('each day has its own temperature, where there is one', () => {
    const days = meterDays(counting(60, 24, 24, 24, 24, 24), { first: addDays(FIRST, 1), values: [7, null, -3] })!;
    expect([...days.outdoorC]).toEqual([Number.NaN, 7, Number.NaN, -3, Number.NaN]);
    expect(knownWeather(days)).toEqual([1, 3]);
  });
});

test('heating begins below 15.5 °C', () => expect([15.6, 15.5, 15, -4].map(heatingDegrees)).toEqual([0, 0, 0.5, 19.5]));

test.each([
  [[], Number.NaN, Number.NaN],
  [[4], 4, 4],
  [[9, 1], 5, 5],
  [[10, 2, 3], 3, 5],
  [[8, 1, 100, 3], 5.5, 28],
])('%j: middle %d, mean %d', (values, middle, mean) => {
  expect(median(values)).toBe(middle);
  expect(meanOf(values)).toBe(mean);
});

describe('readings less a load', () => {
  // 0.4 kW before, 0.8 kW after, three hours of 3 kW from 2:00 of the second day.
  const days = daysOf(3, (day, hour) =>
    day === 1 && hour >= 2 && hour < 5 ? (hour === 4.5 ? 2 : 3.6) : hour < 3 || day === 0 ? 0.4 : 0.8,
  );
  const step = { day: 1, slot: 4, slots: 6, powerKW: 3, ramp: 0, kWh: 9 };
  const load = { steps: [step] } as unknown as EvenLoad;
  test('no more than its power, what stands about it left, and the days summed anew', () => {
    const without = withoutLoads(days, [load]);
    // Base (0.4 + 0.8) / 2 = 0.6 kW: 3.6 less 3 is 0.6; the cut last reading of 2 less 1.4 is 0.6.
    const [before, ...inside] = Array.from(without.kWh.slice(51, 59), (kWh) => kWh / 0.5);
    expect(before).toBeCloseTo(0.4, 12);
    inside.slice(0, 6).forEach((kW) => {
      expect(kW).toBeCloseTo(0.6, 12);
    });
    expect(inside[6]).toBeCloseTo(0.8, 12);
    expect(without.dayKWh[1]).toBeCloseTo(2 * 0.4 + 3 * 0.6 + 19 * 0.8, 12);
    expect(without.dayKWh[0]).toBeCloseTo(24 * 0.4, 12);
    expect(without.dayKWh[2]).toBeCloseTo(3 * 0.4 + 21 * 0.8, 12);
    expect(days.kWh[52]).toBeCloseTo(1.8, 12);
  });
  test('what stands higher keeps what is over the power; below the base nothing is taken', () => {
    const weaker = withoutLoads(days, [{ steps: [{ ...step, powerKW: 2 }] } as unknown as EvenLoad]);
    expect(weaker.kWh[52]! / 0.5).toBeCloseTo(1.6, 12);
    const early = withoutLoads(days, [{ steps: [{ ...step, slot: 2, slots: 3 }] } as unknown as EvenLoad]);
    // Base (0.4 + 3.6) / 2 = 2: the first two readings of 0.4 stay, the third of 3.6 loses 1.6.
    expect(Array.from(early.kWh.slice(50, 53), (kWh) => kWh / 0.5).map((kW) => Math.round(kW * 1e9) / 1e9)).toEqual([
      0.4, 0.4, 2,
    ]);
  });
  test('without loads they are the same', () => expect(withoutLoads(days, [])).toBe(days));
});

describe('the house less the machine', () => {
  const house = daysOf(4, (day) => 1 + day, { minutes: 60, meter: 'whole-house', outdoorC: (day) => day });
  const machine = daysOf(4, (day, hour) => (hour < 1 ? 9 : 0.25 * day), { minutes: 60 });
  test('hour by hour on the days of both, never below zero', () => {
    const part = (first: number) => ({
      ...machine,
      count: 3,
      dayNumber: machine.dayNumber.slice(first),
      kWh: machine.kWh.slice(first * 24),
    });
    const rest = withoutMachine(house, part(1))!;
    expect(rest).toMatchObject({ meter: 'whole-house', count: 3, perDay: 24, hours: 1 });
    expect([...rest.dayNumber]).toEqual([1, 2, 3].map((day) => toDayNumber(FIRST) + day));
    expect([...rest.outdoorC]).toEqual([1, 2, 3]);
    expect([...rest.kWh.slice(0, 3)]).toEqual([0, 1.75, 1.75]);
    expect(rest.kWh[2 * 24 + 5]).toBe(4 - 0.75);
    expect([...rest.dayKWh]).toEqual([23 * 1.75, 23 * 2.5, 23 * 3.25]);
  });
  test('half-hours are not taken off hours', () =>
    expect(
      withoutMachine(
        house,
        daysOf(4, () => 1),
      ),
    ).toBeNull());
});

describe('the day behind a finding', () => {
  // Day d uses d kW at all hours; the weather of each day is told.
  const days = (count: number, outdoorC?: (day: number) => number) =>
    daysOf(count, (day, hour) => day + (hour < 1 ? 0.5 : 0), { minutes: 60, ...(outdoorC && { outdoorC }) });
  const finding = (from: number, to: number, code: Finding['code'] = 'heater-running') =>
    ({ code, from: addDays(FIRST, from), to: addDays(FIRST, to) }) as Finding;
  const noons = (found: ReturnType<typeof typicalDay>) => [found!.seen[12], found!.otherwise?.[12]];
  test.each([
    // Days 2 and 3 at 5 and 9 °C; of the others day 0 has 5.4 °C, day 5 has 9 °C.
    ['nearest in temperature', days(6, (day) => [5.4, 20, 5, 9, 6, 9][day]!), [2.5, (0 + 5) / 2]],
    // Day 1 and day 4 are equally warm: the nearer in time.
    ['equally warm: nearest in time', days(6, (day) => [0, 7, 7, 7, 7, 0][day]!), [2.5, (1 + 4) / 2]],
    ['no weather: nearest in time', days(7), [2.5, (1 + 4) / 2]],
    ['weather of some days only', days(6, (day) => [Number.NaN, Number.NaN, 4, 4, Number.NaN, 4][day]!), [2.5, 5]],
  ])('%s', (_, all, expected) => {
    const found = typicalDay(all, finding(2, 4))!;
    expect(found).toMatchObject({ minutes: 60, seenDays: 2 });
    expect(found.seen).toHaveLength(24);
    expect(found.seen[0]).toBe(3);
    expect(noons(found)).toEqual(expected);
  });
  test('what is on every day has nothing beside it; days that nobody read have no picture', () => {
    expect(typicalDay(days(4), finding(0, 4))).toEqual(expect.not.objectContaining({ otherwise: expect.anything() }));
    expect(typicalDay(days(4), finding(8, 9))).toBeNull();
    expect(typicalDay(days(4), finding(4, 6))).toBeNull();
  });
  test('once a week is held against the other days of those weeks', () => {
    // Days 3 and 10 of days 3 to 10; beside them in time stand days 4 and 9, days 2 and 11 are outside.
    const found = typicalDay(days(14), finding(3, 11, 'weekly-pasteurisation'))!;
    expect(found.seenDays).toBe(2);
    expect(noons(found)).toEqual([6.5, 6.5]);
    expect(noons(typicalDay(days(14), finding(3, 11))!)).toEqual([6.5, (4 * 2 + 4 * 11) / 8]);
  });
});
