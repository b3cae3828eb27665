/** What stands about the detectors: gaps in the readings, causes that they cannot rule out, prices of a finding's own hours. */
import { describe, expect, test } from 'vitest';
import { addDays } from '../../../src/model/calendar/civil.ts';
import { findBackupInCold } from '../../../src/model/findings/backup-in-cold.ts';
import { findBaseLoad } from '../../../src/model/findings/base-load.ts';
import { cutAtGaps } from '../../../src/model/findings/cut-at-gaps.ts';
import { findEvenLoads } from '../../../src/model/findings/even-loads.ts';
import { findInReadings } from '../../../src/model/findings/find-in-readings.ts';
import type { MeterReadings } from '../../../src/model/findings/meter-days.ts';
import { notRuledOut } from '../../../src/model/findings/not-ruled-out.ts';
import type { Finding } from '../../../src/model/shapes/finding.ts';
import type { TariffVersion } from '../../../src/model/shapes/tariff.ts';
import { daysOf, FIRST, noise, readingsOf } from './made-days.ts';

const prices = { pencePerKWh: 25 };
const close = (value: number, digits = 9) => expect.closeTo(value, digits);
/** 15 p before six, 30 p after. */
const version: TariffVersion = {
  from: '2025-01-01',
  standingPencePerDay: 50,
  vat: { rate: 0.05, included: true },
  bands: [
    { name: 'night', pencePerKWh: 15, times: [{ from: '00:00', to: '06:00' }] },
    { name: 'day', pencePerKWh: 30, times: 'rest' },
  ],
};

describe('a finding over days of which some were not read', () => {
  const finding = {
    from: addDays(FIRST, 2),
    to: addDays(FIRST, 30),
    seen: { days: 10, hours: 40, powerKW: 3 },
    kWh: 100,
    pence: 2500,
    kWhYear: 900,
  } as unknown as Finding;
  const cut = (without: (day: number) => boolean, one = finding) => {
    const all = daysOf(40, () => 1);
    const kept = [...all.dayNumber].filter((_, day) => !without(day));
    return cutAtGaps(one, { ...all, dayNumber: Int32Array.from(kept), count: kept.length });
  };
  test.each([
    ['no gap', () => false],
    ['three days', (day: number) => day >= 10 && day < 13],
    ['days before and after it', (day: number) => day < 2 || day >= 30],
  ])('%s: it stays whole', (_, without) => expect(cut(without)).toEqual([finding]));
  test('four days: two stretches with their shares of units, hours and days', () => {
    // 8 days before the gap, 16 after it.
    const [first, second, ...others] = cut((day) => day >= 10 && day < 14);
    expect(others).toEqual([]);
    expect(first).toEqual({
      ...finding,
      to: addDays(FIRST, 10),
      seen: { days: 3, hours: close(40 / 3), powerKW: 3 },
      kWh: close(100 / 3),
      pence: close(2500 / 3),
    });
    expect(second).toMatchObject({
      from: addDays(FIRST, 14),
      to: addDays(FIRST, 30),
      seen: { days: 7, hours: close(80 / 3) },
      kWh: close(200 / 3),
      kWhYear: 900,
    });
  });
  test('a stretch has a day at least, and no days or hours that were not told', () => {
    const few = { ...finding, seen: { days: 1 } } as unknown as Finding;
    const found = cut((day) => day >= 3 && day < 29, few);
    expect(found.map(({ from, to, seen }) => [from, to, seen])).toEqual([
      [addDays(FIRST, 2), addDays(FIRST, 3), { days: 1 }],
      [addDays(FIRST, 29), addDays(FIRST, 30), { days: 1 }],
    ]);
    const untold = { ...finding, seen: { until: 'x' } } as unknown as Finding;
    expect(cut((day) => day >= 3 && day < 29, untold)[0]!.seen).toEqual({ until: 'x' });
  });
});

describe('what readings do not rule out', () => {
  const ALWAYS = [
    'machine-works-less',
    'more-heat',
    'rooms-warmer',
    'more-water',
    'heater',
    'meter-wrong',
    'night-setback',
    'home-empty',
  ];
  const BESIDE = ['base-load', 'other-use', 'large-load'];
  const COLD = ['backup-heater'];
  const WARM = ['summer-heating', 'water-often'];
  const machine = (kW = 0.1) => readingsOf(40, () => kW);
  const house: MeterReadings = { ...machine(), meter: 'whole-house' };
  /** So many days of 20 °C, of 3 °C, and the rest of 10 °C. */
  const weather = (warm: number, cold: number, [warmC, coldC] = [16.5, 3.4]) => ({
    first: FIRST,
    values: Array.from({ length: 40 }, (_, day) => (day < warm ? warmC! : day < warm + cold ? coldC! : 10)),
  });
  const open = (
    readings: readonly MeterReadings[],
    outdoor?: ReturnType<typeof weather>,
    found: readonly object[] = [],
  ) => notRuledOut(readings, outdoor, found as Finding[]);
  test.each([
    ['no readings', [], weather(10, 10), []],
    ['readings of days', [{ ...machine(), intervalMinutes: 1440 }], weather(10, 10), []],
    ['no weather', [machine()], undefined, [...ALWAYS, ...WARM, ...COLD]],
    ['warm and cold days of a machine that takes little', [machine()], weather(10, 10), ALWAYS],
    ['nine warm days', [machine()], weather(9, 10), [...ALWAYS, ...WARM]],
    ['nine cold days', [machine()], weather(10, 9), [...ALWAYS, ...COLD]],
    ['warm days that are no such', [machine()], weather(10, 10, [16.4, 3]), [...ALWAYS, ...WARM]],
    ['cold days that are no such', [machine()], weather(10, 10, [20, 3.5]), [...ALWAYS, ...COLD]],
    ['the house alone', [house], weather(10, 10), [...ALWAYS, ...WARM, ...COLD, ...BESIDE]],
    ['the house and the machine', [house, machine()], weather(10, 10), ALWAYS],
  ] as const)('%s', (_, readings, outdoor, causes) => expect(open(readings, outdoor)).toEqual(causes));
  test('warm days that take more than hot water leave room for heating', () => {
    // An hour and a half of 2 kW over the standby are 3 kWh a day.
    const water = (hours: number) => readingsOf(40, (_, hour) => (hour >= 6 && hour < 6 + hours ? 2.1 : 0.1));
    expect(open([water(1.5)], weather(20, 10))).not.toContain('summer-heating');
    expect(open([water(2)], weather(20, 10))).toContain('summer-heating');
  });
  test('what runs all day in summer is not hot water, however little', () => {
    expect(open([machine(0.09)], weather(20, 10))).not.toContain('summer-heating');
    expect(open([machine(0.11)], weather(20, 10))).toContain('summer-heating');
  });
  test('hours are left open where they have prices of their own, and nothing said of them', () => {
    const found = [{ code: 'dear-hours' }] as unknown as Finding[];
    const at = (findings: readonly Finding[], versions: readonly TariffVersion[]) =>
      notRuledOut([machine()], weather(10, 10), findings, { ...prices, versions });
    expect(at([], [version])).toEqual([...ALWAYS, 'dear-hours']);
    expect(at(found, [version])).toEqual(ALWAYS);
    expect(at([], [])).toEqual(ALWAYS);
  });
  test('what a finding names is not named again', () => {
    const named = [{ code: 'heater-running' }, { code: 'behaviour-changed', may: ['rooms-warmer', 'more-heat'] }];
    expect(open([machine()], weather(10, 10), [...named, { code: 'dear-hours' }])).toEqual([
      'machine-works-less',
      'more-water',
      'meter-wrong',
      'night-setback',
      'home-empty',
    ]);
    const weeks = [{ code: 'home-empty', may: ['home-empty', 'less-heat'] }];
    expect(open([machine()], weather(10, 10), weeks)).not.toContain('home-empty');
    const others = ['backup-in-cold', 'meter-scale', 'base-load-rose', 'large-load'].map((code) => ({ code }));
    expect(open([house], undefined, others)).toEqual([
      ...ALWAYS.filter((one) => one !== 'meter-wrong'),
      ...WARM,
      'other-use',
    ]);
  });
});

describe('a finding costs what its own hours cost', () => {
  test('a base load is there at all hours alike', () => {
    // 0.1 kW more from day 30 on. All that is counted: 10 kWh by night and 5 by day each day, and the base.
    const low = (day: number) => 0.1 + (day % 2 ? -0.01 : 0.01) + (day >= 30 ? 0.1 : 0);
    const days = daysOf(60, (day, hour) => (hour >= 2 && hour < 4 ? low(day) : hour < 6 ? 2.5 : hour < 12 ? 1 : 0.5), {
      meter: 'whole-house',
      outdoorC: () => 20,
    });
    const [finding] = findBaseLoad(days, { ...prices, versions: [version] }, false);
    const night = 60 * 10 + 60 * 0.2 + 30 * 0.2;
    const day = 60 * (6 + 6);
    const mean = (night * 15 + day * 30) / (night + day);
    // Six hours at 15 p and eighteen at 30 p.
    expect(finding!.pence).toBeCloseTo(72 * 25 * (26.25 / mean), 6);
    expect(finding!.penceYear).toBeCloseTo(876 * 25 * (26.25 / mean), 6);
  });
  test('help in the cold at the hours of the days that it helped on', () => {
    // Mild days by night, cold days by day.
    const outdoorC = (day: number) => (day % 5 === 2 ? 3 - (((day / 5) % 4) | 0) : 4 + ((day * 3) % 8));
    const isCold = (day: number) => outdoorC(day) < 3.5;
    const kWh = (day: number) => 10 + 2 * (15.5 - outdoorC(day)) + (isCold(day) ? 8 + 4 * (3.5 - outdoorC(day)) : 0);
    const days = daysOf(
      60,
      (day, hour) => (isCold(day) ? (hour < 6 ? 0 : kWh(day) / 18) : hour < 6 ? kWh(day) / 6 : 0),
      {
        outdoorC,
        minutes: 60,
      },
    );
    // By night 6 kW on milder days already: the cold days must rise above them, so that they take an hour of 9 kW.
    const [place] = [...days.dayNumber.keys()].filter(isCold);
    expect(place).toBe(2);
    for (const day of days.dayNumber.keys())
      if (isCold(day)) {
        days.kWh.fill(0, day * 24, day * 24 + 24);
        days.kWh[day * 24 + 12] = days.dayKWh[day]!;
      }
    const [finding] = findBackupInCold(days, { ...prices, versions: [version] });
    const all = [...days.dayNumber.keys()];
    const sum = (of: readonly number[]) => of.reduce((total, day) => total + days.dayKWh[day]!, 0);
    const [cold, mild] = [sum(all.filter(isCold)), sum(all.filter((day) => !isCold(day)))];
    const mean = (cold * 30 + mild * 15) / (cold + mild);
    expect(finding!.pence / finding!.kWh).toBeCloseTo((25 * 30) / mean, 9);
  });
});

describe('how often a load of another power stood just before and after', () => {
  /** Ten nights of 3 kW from a day on; 2.5 kW is about the same, 2 kW another. */
  const driftOf = (first: number, about: readonly (readonly [day: number, kW: number])[], count = 100) => {
    const nights = Array.from({ length: 10 }, (_, i): readonly [number, number] => [first + i, 3]);
    const all = new Map([...nights, ...about]);
    const days = daysOf(count, (day, hour) => (hour >= 2 && hour < 4 ? (all.get(day) ?? 0) : 0));
    return findEvenLoads(days).find(({ powerKW }) => Math.abs(powerKW - 3) < 0.01)!.drift;
  };
  test.each<readonly [string, number, readonly (readonly [number, number])[], number, number]>([
    ['never', 40, [], 100, 0],
    [
      'twice in 25 days before and 25 after',
      40,
      [
        [39, 2.5],
        [50, 2.4],
      ],
      100,
      2 / 50,
    ],
    ['of another power', 40, [[39, 2]], 100, 0],
    [
      'on the first and the last of them',
      40,
      [
        [15, 2.5],
        [74, 2.5],
      ],
      100,
      2 / 50,
    ],
    [
      'a day farther off',
      40,
      [
        [14, 2.5],
        [75, 2.5],
      ],
      100,
      0,
    ],
    ['two days before the end', 40, [[50, 2.5]], 52, 1 / 27],
    ['five days after the beginning', 5, [[4, 2.5]], 100, 1 / 30],
    ['all days are its own', 0, [], 10, 0],
  ])('%s', (_, first, about, count, drift) => expect(driftOf(first, about, count)).toBeCloseTo(drift, 9));
});

describe('all detectors on one meter', () => {
  const codes = (readings: readonly MeterReadings[], outdoorC: (day: number) => number, versions?: TariffVersion[]) =>
    findInReadings({
      readings,
      outdoor: { first: FIRST, values: Array.from({ length: 120 }, (_, day) => outdoorC(day)) },
      prices: { ...prices, ...(versions ? { versions } : {}) },
    });
  const mild = (day: number) => 8 + ((day * 5) % 7);
  /** Ups and downs of people by day, standby by night, half of the use in the evening from day 60 on. */
  const home = (noonKW: (day: number) => number) =>
    readingsOf(
      120,
      (day, hour) =>
        hour < 5 || hour >= 23
          ? 0.2
          : hour >= 10 && hour < 15
            ? noonKW(day)
            : 0.6 + ((2 * hour) % 2) * 0.4 + (hour >= 18 && day >= 60 ? 0.36 : hour < 6 && day < 60 ? 1.8 : 0),
      { meter: 'whole-house' },
    );
  test('where electricity is made at home no move into dear hours is told', () => {
    const told = (noonKW: (day: number) => number) => codes([home(noonKW)], mild, [version]).map(({ code }) => code);
    expect(told(() => 0.5)).toContain('dear-hours');
    const sunny = told((day) => (day % 2 ? 0 : 0.5));
    expect(sunny).toContain('own-generation');
    expect(sunny).not.toContain('dear-hours');
  });
  test('what heats more since a day is told once, with every day since, the coldest too', () => {
    // 0, 10, 6, 8, 3 and 5 °C again and again; 5 kWh a day and 1 for each degree below 15 °C, 3 more since day 60.
    const outdoorC = (day: number) => [0, 10, 6, 8, 3, 5][day % 6]!;
    const perDay = (day: number) => 5 + 15 - outdoorC(day) + (Math.floor(day / 6) % 2 ? 0.05 : -0.05);
    // The hours of a day stray from 0.8 to 1.2 times their mean, so that no load is even.
    const kW = (day: number, hour: number) =>
      ((perDay(day) + (day >= 60 ? 3 : 0)) / 24) * (0.8 + ((2 * hour) % 5) / 10);
    const mean = Array.from({ length: 48 }, (_, half) => 0.8 + (half % 5) / 10).reduce((sum, one) => sum + one, 0) / 48;
    const found = codes([readingsOf(120, (day, hour) => kW(day, hour) / mean)], outdoorC);
    expect(found).toMatchObject([
      {
        code: 'behaviour-changed',
        meter: 'heat-pump',
        from: addDays(FIRST, 60),
        to: addDays(FIRST, 120),
        kWh: close(180, 6),
        pence: close(4500, 5),
      },
    ]);
  });
  test('two journeys are told as two', () => {
    const isAway = (day: number) => (day >= 30 && day < 50) || (day >= 80 && day < 100);
    // People by day, standby by night and while nobody is there.
    const lived = readingsOf(
      120,
      (day, hour) => (isAway(day) || hour < 5 || hour >= 23 ? 0.2 : 0.6 + ((2 * hour) % 2) * 0.4),
      { meter: 'whole-house' },
    );
    const found = codes([lived], () => 8).filter(({ code }) => code === 'home-empty');
    expect(found.map(({ from, to }) => [from, to]).toSorted()).toEqual([
      [addDays(FIRST, 30), addDays(FIRST, 50)],
      [addDays(FIRST, 80), addDays(FIRST, 100)],
    ]);
  });
  test('what is counted twice is told once, and loads of it at their true power', () => {
    // 100 W, 400 W by day, 3 kW for two hours every night; all of it doubled since day 60.
    const readings = readingsOf(120, (day, hour) => {
      const kW = (hour < 5 ? 0.1 : 0.4) + (hour >= 2 && hour < 4 ? 3 : 0);
      return kW * (day >= 60 ? 2 : 1);
    });
    const found = codes([readings], (day) => (day % 2 ? 18 : 6 + (day % 3)));
    expect(found.map(({ code }) => code).sort()).toEqual(['heater-running', 'meter-scale']);
    const heater = found.find(({ code }) => code === 'heater-running')!;
    expect(heater.seen.powerKW).toBeCloseTo(3, 1);
    expect(heater.from).toBe(FIRST);
    expect(heater.to).toBe(addDays(FIRST, 120));
  });
});

describe('two meters of one home', () => {
  const COLD = [0, 10, 6, 8, 3, 5];
  const outdoor = { first: FIRST, values: Array.from({ length: 150 }, (_, day) => COLD[day % 6]!) };
  /** Half-hours up and down, so that neither is an even load. */
  const both = (machine: (day: number) => number, rest: (day: number) => number) => {
    const below = (day: number) => 15.5 - COLD[day % 6]!;
    const ofMachine = (day: number, hour: number) =>
      0.3 + 0.02 * noise(day) + machine(day) * 0.06 * below(day) * (1 + ((2 * hour) % 3) / 9);
    const ofRest = (day: number, hour: number) => 0.1 + 0.01 * noise(day + 0.5) + (rest(day) * ((2 * hour) % 5)) / 10;
    return findInReadings({
      readings: [
        readingsOf(150, ofMachine),
        readingsOf(150, (day, hour) => ofMachine(day, hour) + ofRest(day, hour), { meter: 'whole-house' }),
      ],
      outdoor,
      prices,
    });
  };
  const since = (day: number) => (day >= 75 ? 3 : 1);
  const usual = () => 1;
  test('that rise together do not count otherwise: people may have moved in', () => {
    const changes = both(since, since).filter(({ code }) => code === 'behaviour-changed');
    expect(changes.map(({ meter, may }) => [meter, may?.[0]])).toEqual([
      ['heat-pump', 'newly-occupied'],
      ['whole-house', 'newly-occupied'],
    ]);
    for (const { may, ask, check } of changes) {
      expect(may).not.toContain('meter-wrong');
      expect(ask).not.toContain('meter-exchanged');
      expect(check).not.toContain('meter-test');
    }
    const [alone] = both(usual, since).filter(({ code }) => code === 'behaviour-changed');
    expect([alone!.meter, alone!.may?.[0]]).toEqual(['whole-house', 'meter-wrong']);
  });
  test.each([
    [21, 'newly-occupied'],
    [22, 'meter-wrong'],
    [-21, 'newly-occupied'],
    [-22, 'meter-wrong'],
  ])('the rest of the home %i days after the machine: %s first', (later, first) => {
    const from = (begin: number) => (day: number) => (day >= begin ? 3 : 1);
    const changes = both(from(75), from(75 + later)).filter(({ code }) => code === 'behaviour-changed');
    expect(changes.map(({ may }) => may?.[0])).toEqual([first, first]);
  });
  test('that fall together for weeks: nobody at home, where one alone may be the heating', () => {
    const weeks = (day: number) => (day >= 60 && day < 95 ? 0.05 : 1);
    const less = (findings: readonly Finding[]) =>
      findings.filter(({ code }) => code === 'home-empty').map(({ meter, may }) => [meter, may]);
    expect(less(both(weeks, weeks)).toSorted()).toEqual([
      ['heat-pump', ['home-empty']],
      ['whole-house', ['home-empty']],
    ]);
    expect(less(both(weeks, usual))).toEqual([['heat-pump', ['home-empty', 'less-heat']]]);
  });
});
