/** Battery, roof and car over days so short and plain that every half-hour follows by hand. */
import { describe, expect, test } from 'vitest';
import { balanceHome } from '../../../src/model/balance/balance-home.ts';
import { type Battery, cheapHours, FILL, GIVE, HOLD, halvesToFill } from '../../../src/model/balance/battery.ts';
import { carByHalfHour } from '../../../src/model/balance/car-by-half-hour.ts';
import { settleBattery, settleCar, usualPowerKW } from '../../../src/model/balance/settle-home.ts';
import { usedAtOnceKWh } from '../../../src/model/balance/used-at-once.ts';
import type { YearSlots } from '../../../src/model/calendar/zone.ts';
import { reference } from '../../../src/reference/index.ts';

/** A year of so few days, each of so many half-hours; the first half of the days is January, the other February. */
function daysOf(...lengths: number[]): YearSlots {
  const dayStart = Uint32Array.from([0, ...lengths.map((_, i) => lengths.slice(0, i + 1).reduce((a, b) => a + b, 0))]);
  const ofDay = lengths.flatMap((length, day) => Array.from({ length }, (_, i) => ({ day, minute: 30 * i })));
  return {
    count: ofDay.length,
    dayStart,
    day: Uint16Array.from(ofDay, ({ day }) => day),
    minute: Uint16Array.from(ofDay, ({ minute }) => minute),
    month: Uint8Array.from(ofDay, ({ day }) => (day < lengths.length / 2 ? 0 : 1)),
  } as YearSlots;
}
const DAYS = 6;
const slots = daysOf(...new Array<number>(DAYS).fill(48));
/** The same every day: from one half-hour on until before another so much, one row after the other. */
type Rows = readonly (readonly [from: number, to: number, value: number])[];
const everyDay = (rest: number, ...rows: Rows) =>
  Float64Array.from(
    { length: 48 * DAYS },
    (_, i) => rows.find(([from, to]) => i % 48 >= from && i % 48 < to)?.[2] ?? rest,
  );
const rounded = (values: Float64Array) => [...values].map((one) => Number(one.toFixed(6)) + 0);

/** 4 kWh, a kWh each half-hour, nine tenths each way. */
const battery: Battery = { usableKWh: 4, powerKW: 2, roundTripShare: 0.81, standbyW: 0, fromNight: true };
const night = everyDay(30, [0, 8, 8]);

describe('a battery', () => {
  test('filled at night: 4 / 0.9 kWh in, 4 × 0.9 out', () => {
    const got = balanceHome({
      slots,
      loadKWh: everyDay(0, [20, 30, 0.5]),
      pencePerKWh: night,
      exportPence: 5,
      battery,
    });
    expect(rounded(got.boughtKWh)).toEqual(
      rounded(everyDay(0, [0, 4, 1], [4, 5, 0.4 / 0.9], [27, 28, 0.4], [28, 30, 0.5])),
    );
    expect(got.filledKWh).toBeCloseTo((DAYS * 4) / 0.9, 9);
    expect(got.givenKWh).toBeCloseTo(DAYS * 3.6, 9);
    expect(got.batteryLossKWh).toBeCloseTo(DAYS * (4 / 0.9 - 3.6), 9);
    expect([got.leftKWh, got.ownUseKWh, got.sunLossKWh]).toEqual([expect.closeTo(0, 9), 0, 0]);
  });
  test('its own draw is bought, and lost', () => {
    const one = { slots, loadKWh: everyDay(0), pencePerKWh: everyDay(30), exportPence: 5 };
    const got = balanceHome({ ...one, battery: { ...battery, standbyW: 40 } });
    expect(rounded(got.boughtKWh)).toEqual(rounded(everyDay(0.02)));
    expect(got.batteryLossKWh).toBeCloseTo(0.02 * 48 * DAYS, 9);
  });
  test('its own draw is met by the sun first', () => {
    const one = {
      slots,
      loadKWh: everyDay(0.1),
      sunKWh: everyDay(0, [22, 28, 0.5]),
      pencePerKWh: everyDay(30),
      exportPence: 5,
    };
    const got = balanceHome({ ...one, battery: { ...battery, usableKWh: 0, standbyW: 40 } });
    expect(rounded(got.boughtKWh)).toEqual(rounded(everyDay(0.12, [22, 28, 0])));
    expect(rounded(got.soldKWh)).toEqual(rounded(everyDay(0, [22, 28, 0.38])));
  });
  test('stores surplus sun within its power until it is full, and gives it when the sun is gone', () => {
    // 1.2 kWh over a need of 0.2: one over each half-hour, 0.9 of it kept, and full after the fifth.
    const load = everyDay(0.2);
    const sunKWh = everyDay(0, [22, 28, 1.2]);
    const home = { slots, loadKWh: load, sunKWh, pencePerKWh: everyDay(30), exportPence: 5 };
    const got = balanceHome({ ...home, battery: { ...battery, fromNight: false } });
    expect(rounded(got.soldKWh)).toEqual(rounded(everyDay(0, [26, 27, 1 - 0.4 / 0.9], [27, 28, 1])));
    expect(rounded(got.boughtKWh)).toEqual(rounded(everyDay(0.2, [22, 46, 0])));
    expect(got.ownUseKWh).toBeCloseTo(DAYS * (7.2 - 2 + 0.4 / 0.9), 9);
    expect(got.batteryLossKWh).toBeCloseTo(DAYS * (4 / 0.9 - 3.6), 9);
    expect(got.filledKWh).toBe(0);
    const weak = balanceHome({ ...home, battery: { ...battery, powerKW: 1, fromNight: false } });
    expect(rounded(weak.soldKWh)).toEqual(rounded(everyDay(0, [22, 28, 0.5])));
    const none = balanceHome(home);
    expect(rounded(none.soldKWh)).toEqual(rounded(everyDay(0, [22, 28, 1])));
    expect(none.batteryLossKWh).toBe(0);
  });
  describe('that may do both is set as costs least', () => {
    const sunny = { slots, loadKWh: everyDay(0.2), sunKWh: everyDay(0, [22, 28, 1.2]), pencePerKWh: night, battery };
    test('filled whole where the morning makes room for the sun', () => {
      const got = balanceHome({ ...sunny, exportPence: 5 });
      expect(rounded(got.boughtKWh)).toEqual(
        rounded(everyDay(0, [0, 4, 1.2], [4, 5, 0.2 + 0.4 / 0.9], [5, 8, 0.2], [46, 48, 0.2])),
      );
      // 4 − 2.8 / 0.9 are left by half past ten; what goes in then is over 0.9 of what is over.
      expect(got.soldKWh.reduce((sum, one) => sum + one, 0)).toBeCloseTo(DAYS * (6 - 2.8 / 0.81), 9);
      // Of 4 / 0.9 kWh from the grid and 2.8 / 0.81 from the sun 6.4 come out.
      const [grid, sun] = [4 / 0.9, 2.8 / 0.81];
      expect(got.sunLossKWh).toBeCloseTo((DAYS * (grid + sun - 6.4) * sun) / (grid + sun), 9);
    });
    test('the sun is sent out where it is paid better than a kWh that comes back, not where it is not', () => {
      const sold = (exportPence: number) =>
        balanceHome({ ...sunny, exportPence }).soldKWh.reduce((sum, one) => sum + one, 0);
      // Kept, a kWh saves 0.81 × 30 = 24.3 p.
      expect([sold(24), sold(25)]).toEqual([expect.closeTo(DAYS * (6 - 2.8 / 0.81), 9), expect.closeTo(DAYS * 6, 9)]);
    });
    test('with room left for a usual day’s surplus of its month, where nothing empties it before', () => {
      // Over a need of 0.1, 2.4 kWh a day in the first month, 1.2 in the second: filled to 1.6 and to 2.8 kWh.
      const sunKWh = everyDay(0, [22, 26, 0.7]).map((kWh, i) => (kWh > 0 && i >= 24 * DAYS ? 0.4 : kWh));
      const loadKWh = everyDay(0, [22, 26, 0.1], [28, 48, 0.2]);
      const got = balanceHome({ slots, loadKWh, sunKWh, pencePerKWh: night, exportPence: 5, battery });
      const filled = (day: number) => got.boughtKWh.slice(48 * day, 48 * day + 8).reduce((sum, one) => sum + one, 0);
      expect([filled(1), filled(DAYS - 2)]).toEqual([expect.closeTo(1.6 / 0.9, 9), expect.closeTo(2.8 / 0.9, 9)]);
      expect(Math.max(...got.soldKWh)).toBe(0);
    });
  });
  test('what it holds more at the end than at the start is told', () => {
    // The only sun comes nearly four days before New Year: 1 kWh, of which 0.9 are left for next year.
    const last = 48 * DAYS - 191;
    const sunKWh = everyDay(0).map((_, i) => (i === last ? 1 : 0));
    const one = { slots, loadKWh: everyDay(0), sunKWh, pencePerKWh: everyDay(30), exportPence: 5 };
    const got = balanceHome({ ...one, battery: { ...battery, usableKWh: 1.5, fromNight: false } });
    // As at New Year before it: 0.9 of the 1.5 were in it, so that 0.6 more find room.
    expect([got.leftKWh, got.soldKWh[last]]).toEqual([expect.closeTo(0.6, 9), expect.closeTo(1 - 0.6 / 0.9, 9)]);
  });
});

describe('when it is filled', () => {
  const modes = (prices: readonly (readonly number[])[], change: Partial<Battery> = {}, giveHalves = 48) => {
    const days = daysOf(...prices.map((day) => day.length));
    const one = { ...battery, usableKWh: 8, powerKW: 3, roundTripShare: 0.85, ...change };
    const all = cheapHours(Float64Array.from(prices.flat()), days, one, { fillHalves: halvesToFill(one), giveHalves });
    return prices.map((day, i) => {
      const ofDay = [...all.slice(days.dayStart[i]!, days.dayStart[i]! + day.length)];
      return [FILL, HOLD, GIVE].map((mode) => ofDay.filter((one) => one === mode).length);
    });
  };
  const day = (...parts: readonly (readonly [count: number, pence: number])[]) =>
    parts.flatMap(([count, pence]) => new Array<number>(count).fill(pence));
  // 8 kWh at 1.5 × √0.85 kWh each take 6 half-hours.
  test.each([
    ['8.8 p comes out at 10.35 p', day([10, 8.8], [38, 10.4]), [10, 0, 38]],
    ['not for 10.3 p', day([10, 8.8], [38, 10.3]), [0, 0, 48]],
    ['no more than are needed, with all of the same price', day([4, 8], [4, 9], [40, 30]), [8, 0, 40]],
    ['the dearer of them where the others pay for it', day([5, 8], [1, 25], [42, 30]), [6, 0, 42]],
    ['else without them', day([4, 8], [4, 28], [40, 30]), [4, 0, 44]],
    ['what is hardly dearer is left to the grid', day([6, 8], [1, 9.4], [1, 9.5], [40, 30]), [6, 1, 41]],
    ['for the hours that pay, and not for one that is hardly dearer', day([6, 8.8], [1, 9], [41, 10.38]), [6, 1, 41]],
    ['one price all day', day([48, 20]), [0, 0, 48]],
    ['paid to take it, what comes out costs no more', day([6, -10], [1, -9.9], [41, 20]), [6, 0, 42]],
    ['for nothing', day([6, 0], [1, 0.1], [41, 20]), [6, 0, 42]],
  ])('%s', (_, prices, counts) => expect(modes([prices])).toEqual([counts]));
  test('the half-hours that fill it: half of the power, less what is lost on the way in', () => {
    const sized = (usableKWh: number, powerKW: number, roundTripShare: number) =>
      halvesToFill({ ...battery, usableKWh, powerKW, roundTripShare });
    // 1.5 kWh a half-hour, of which 0.8 arrive.
    expect([sized(9, 3, 0.64), sized(9, 3, 1), sized(9.1, 3, 1)]).toEqual([8, 6, 7]);
  });
  test('kept for the most expensive hours, with all of the same price', () => {
    const prices = day([6, 8], [36, 25], [6, 41]);
    expect([48, 42, 12, 6, 1].map((giveHalves) => modes([prices], {}, giveHalves)[0])).toEqual([
      [6, 0, 42],
      [6, 0, 42],
      [6, 0, 42],
      [6, 36, 6],
      [6, 36, 6],
    ]);
  });
  test('half of a day’s half-hours at most', () => {
    const prices = day([24, 8], [1, 9], [23, 30]);
    expect(modes([prices], { usableKWh: 60 })).toEqual([[24, 1, 23]]);
  });
  test('each day by its own prices, whatever its length', () => {
    const cheap = day([6, 8], [42, 30]);
    expect(modes([cheap, cheap, day([48, 30]), cheap, day([6, 8], [40, 30]), day([6, 8], [44, 30])])).toEqual([
      [6, 0, 42],
      [6, 0, 42],
      [0, 0, 48],
      [6, 0, 42],
      [6, 0, 40],
      [6, 0, 44],
    ]);
  });
  test('a day that differs from the one before in its last half-hour only', () => {
    const last = day([42, 30], [5, 8], [1, 30]);
    expect(modes([last, last.with(47, 8)])).toEqual([
      [5, 0, 43],
      [6, 0, 42],
    ]);
  });
});

describe('a car', () => {
  const year = daysOf(48, 48, 48);
  const car = { kWhPerYear: 9, chargerKW: 2, fromMinute: 18 * 60, untilMinute: 7 * 60 };
  const charged = (change: Partial<typeof car>, pence: (slot: number) => number = () => 25) =>
    [
      ...carByHalfHour(
        { ...car, ...change },
        year,
        Float64Array.from({ length: 144 }, (_, i) => pence(i % 48)),
      ),
    ].flatMap((kWh, slot) => (kWh > 0 ? [[slot, Number(kWh.toFixed(9))]] : []));
  const each = (...rows: readonly (readonly [slot: number, kWh: number])[]) =>
    [0, 48, 96].flatMap((day) => rows.map(([slot, kWh]) => [day + slot, kWh]));
  test.each<
    readonly [
      string,
      Parameters<typeof charged>[0],
      ((slot: number) => number) | undefined,
      readonly (readonly [number, number])[],
    ]
  >([
    [
      'as it comes home',
      {},
      undefined,
      [
        [36, 1],
        [37, 1],
        [38, 1],
      ],
    ],
    [
      'what is left in the last of them',
      { kWhPerYear: 7.5 },
      undefined,
      [
        [36, 1],
        [37, 1],
        [38, 0.5],
      ],
    ],
    [
      'in the cheapest hours of the night',
      {},
      (slot) => (slot < 11 ? 8 : 30),
      [
        [0, 1],
        [1, 1],
        [2, 1],
      ],
    ],
    [
      'in the last before it leaves',
      {},
      (slot) => (slot === 13 ? 5 : slot === 14 ? 1 : 30),
      [
        [13, 1],
        [36, 1],
        [37, 1],
      ],
    ],
    [
      'by day, where it stands by day',
      { fromMinute: 600, untilMinute: 900 },
      undefined,
      [
        [20, 1],
        [21, 1],
        [22, 1],
      ],
    ],
    [
      'where it stands too short, in what follows',
      { fromMinute: 600, untilMinute: 630 },
      undefined,
      [
        [20, 1],
        [21, 1],
        [22, 1],
      ],
    ],
    [
      'a stand of a whole day',
      { fromMinute: 600, untilMinute: 600 },
      (slot) => (slot === 19 ? 1 : 9),
      [
        [19, 1],
        [20, 1],
        [21, 1],
      ],
    ],
  ])('%s', (_, change, pence, rows) => expect(charged(change, pence)).toEqual(each(...rows)));
  test('no more than a charger gives in the shortest day', () => {
    const all = charged({ kWhPerYear: 1000 });
    expect(all.reduce((sum, [, kWh]) => sum + kWh!, 0)).toBeCloseTo(3 * 46, 9);
  });
});

test('sun within a half-hour: all of it, 0.6748 r^0.297 of the need, or all the need', () => {
  // The middle rule meets the others at r = 0.5716 and r = 3.7573.
  expect([0.57, 0.573, 2, 3.75, 3.77].map((made) => usedAtOnceKWh(made, 1))).toEqual([
    0.57,
    expect.closeTo(0.6748 * 0.573 ** 0.297, 12),
    expect.closeTo(0.6748 * 2 ** 0.297, 12),
    expect.closeTo(0.6748 * 3.75 ** 0.297, 12),
    1,
  ]);
  expect([usedAtOnceKWh(1, 0), usedAtOnceKWh(0, 1), usedAtOnceKWh(4, 2)]).toEqual([
    0,
    0,
    expect.closeTo(2 * 0.6748 * 2 ** 0.297, 12),
  ]);
});

test('what nobody has said of battery and car is that of a usual one', () => {
  const given = (value: number) => ({ value, grade: 'measured', origin: 'typed' }) as const;
  const { battery: usual, car } = reference;
  expect(settleBattery({ usableKWh: 10 }, reference)).toEqual({
    usableKWh: 10,
    powerKW: 10 * usual.powerPerKWh.value,
    roundTripShare: usual.roundTripShare.value,
    standbyW: usual.standbyW.value,
    fromNight: false,
  });
  expect(usualPowerKW(10, reference)).toBe(10 * usual.powerPerKWh.value);
  const typed = { usableKWh: 5, powerKW: given(2), roundTripShare: given(0.7), standbyW: given(0), fromNight: true };
  expect(settleBattery(typed, reference)).toEqual({
    usableKWh: 5,
    powerKW: 2,
    roundTripShare: 0.7,
    standbyW: 0,
    fromNight: true,
  });
  expect(settleCar({}, reference)).toEqual({
    kWhPerYear: (car.kmPerYear.value * car.kWhPer100Km.value) / 100,
    chargerKW: car.chargerKW.value,
    fromMinute: 1080,
    untilMinute: 420,
  });
  const own = { kmPerYear: given(5000), kWhPer100Km: given(18), homeShare: given(0.5), chargerKW: given(3) };
  expect(settleCar({ ...own, from: '09:30', until: '16:00' }, reference)).toEqual({
    kWhPerYear: 450,
    chargerKW: 3,
    fromMinute: 570,
    untilMinute: 960,
  });
});
