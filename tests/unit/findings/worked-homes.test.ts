/** Homes that are empty, make electricity, help with a heater in the cold or have another meter, each so plain that it follows by hand. */
import { describe, expect, test } from 'vitest';
import { addDays, toDayNumber } from '../../../src/model/calendar/civil.ts';
import { findBackupInCold } from '../../../src/model/findings/backup-in-cold.ts';
import { holidays, sharesOfUsual, weekAbout, weeksOfLess } from '../../../src/model/findings/holidays.ts';
import { emptySpells, findHomeEmpty, findWeeksOfLess, livedInDays } from '../../../src/model/findings/home-empty.ts';
import type { MeterDays } from '../../../src/model/findings/meter-days.ts';
import { findMeterScale } from '../../../src/model/findings/meter-scale.ts';
import { darkHours, findOwnGeneration } from '../../../src/model/findings/own-generation.ts';
import { daysOf, FIRST, textbook } from './made-days.ts';

const prices = { pencePerKWh: 25 };
const close = (value: number, digits = 9) => expect.closeTo(value, digits);

describe('electricity made at home', () => {
  interface Sun {
    readonly count?: number;
    readonly sunny?: (day: number) => boolean;
    readonly kW?: number;
    readonly hours?: readonly number[];
    readonly night?: (day: number, hour: number) => number;
    readonly minutes?: number;
    readonly meter?: MeterDays['meter'];
  }
  /** 100 W by night, 500 W by day, and less in these hours of sunny days. */
  const home = ({ count = 20, sunny = () => true, kW = 0.039, hours = [12, 13], night = () => 0.1, ...rest }: Sun) =>
    daysOf(
      count,
      (day, hour) =>
        hour < 4 || hour >= 22 ? night(day, hour) : sunny(day) && hours.includes(Math.floor(hour)) ? kW : 0.5,
      { meter: 'whole-house', minutes: 60, ...rest },
    );
  const isFound = (sun: Sun) => findOwnGeneration(home(sun)).length > 0;

  test('is said with its days and no amount', () => {
    expect(findOwnGeneration(home({ count: 40, sunny: (day) => day >= 5 && day < 25 }))).toEqual([
      {
        code: 'own-generation',
        meter: 'whole-house',
        from: addDays(FIRST, 5),
        to: addDays(FIRST, 25),
        sure: close(0.85),
        grade: 'measured',
        seen: { days: 20 },
        ...{ kWh: 0, pence: 0, kWhYear: 0, penceYear: 0 },
        ask: ['panels'],
        check: ['panel-meter'],
        cautions: [],
      },
    ]);
  });
  test.each<readonly [string, Sun, boolean]>([
    ['two fifths of what runs all night', { kW: 0.041 }, false],
    ['one hour of it, the next at 81 W: 40 W in the mean', { kW: 0, hours: [12] }, false],
    ['at ten and at three', { hours: [10, 15] }, true],
    ['at nine and at three', { hours: [9, 15] }, false],
    ['at ten and at four', { hours: [10, 16] }, false],
    ['by the half-hour', { minutes: 30 }, true],
    ['by the half-hour, one hour', { minutes: 30, kW: 0, hours: [12] }, false],
    ['on the machine’s meter', { meter: 'heat-pump' }, false],
    ['on twelve days', { sunny: (day) => day < 12 }, true],
    ['on eleven', { sunny: (day) => day < 11 }, false],
    ['on all of twelve days', { count: 12 }, true],
    ['on twelve days in 150', { count: 150, sunny: (day) => day < 11 || day === 149 }, true],
    ['on twelve days in 151', { count: 151, sunny: (day) => day < 11 || day === 150 }, false],
    ['two nights without power', { night: (day) => (day > 17 ? 0 : 0.1) }, true],
    ['three nights without power', { night: (day) => (day > 16 ? 0 : 0.1) }, false],
    ['31 W by night', { night: () => 0.031, kW: 0 }, true],
    ['29 W by night', { night: () => 0.029, kW: 0 }, false],
    ['less from ten on and until four: 60 W', { night: (_, hour) => (hour === 22 || hour === 3 ? 0.06 : 0.1) }, false],
  ])('%s', (_, sun, found) => expect(isFound(sun)).toBe(found));
  test('the dark hours are those from ten to four', () => {
    const dark = darkHours(daysOf(2, (day, hour) => day + hour, { minutes: 60, meter: 'whole-house' }));
    expect([dark.perDay, dark.hours, dark.count]).toEqual([6, 1, 2]);
    expect([...dark.kWh]).toEqual([0, 1, 2, 3, 22, 23, 1, 2, 3, 4, 23, 24]);
    expect([...dark.dayKWh]).toEqual([51, 57]);
  });
});

describe('weeks without people', () => {
  interface Life {
    readonly count?: number;
    readonly empty?: (day: number) => boolean;
    /** How far neighbouring readings stray, kW: of a day with people, by day and by night, and of one without. */
    readonly lived?: readonly [day: number, night: number];
    readonly left?: readonly [day: number, night: number];
    readonly meter?: MeterDays['meter'];
  }
  /** 1 kW and so much more at every other half-hour. */
  const home = ({ count = 60, lived = [0.2, 0], left = [0, 0], meter = 'whole-house', ...rest }: Life) => {
    const { empty = (day: number) => day >= 20 && day < 40 } = rest;
    return daysOf(
      count,
      (day, hour) => {
        const [byDay, byNight] = empty(day) ? left : lived;
        return 1 + ((2 * hour) % 2) * (hour >= 5.5 ? byDay : byNight);
      },
      { meter },
    );
  };
  const spells = (life: Life, sunny = false) => emptySpells(home(life), sunny);

  test('are found with their first and last day, asked about, and taken out', () => {
    const days = home({});
    const found = emptySpells(days, false);
    expect(found).toEqual([[20, 39]]);
    expect(findHomeEmpty(days, found)).toEqual([
      {
        code: 'home-empty',
        meter: 'whole-house',
        from: addDays(FIRST, 20),
        to: addDays(FIRST, 40),
        sure: close(0.7 + 19 / 300),
        grade: 'estimated',
        seen: { days: 20 },
        ...{ kWh: 0, pence: 0, kWhYear: 0, penceYear: 0 },
        ask: ['away'],
        check: [],
        cautions: [],
      },
    ]);
    const lived = livedInDays(days, found);
    expect([...lived.dayNumber]).toEqual(
      [...days.dayNumber].filter((day) => day < toDayNumber(FIRST) + 20 || day >= toDayNumber(FIRST) + 40),
    );
    expect(livedInDays(days, [])).toBe(days);
  });
  const from20 = (length: number) => (day: number) => day >= 20 && day < 20 + length;
  const VISITS = [24, 27, 30, 33, 36, 39, 42];
  test.each<readonly [string, Life, readonly (readonly [number, number])[]]>([
    ['18 days', { empty: from20(18) }, [[20, 37]]],
    ['17 days', { empty: from20(17) }, []],
    ['36 days, half of them empty', { count: 36, empty: (day) => day < 18 }, [[0, 17]]],
    ['35 days', { count: 35, empty: (day) => day < 18 }, []],
    ['empty for 42 of 60', { empty: (day) => day < 42 }, [[0, 41]]],
    ['empty for 43 of 60: that is how this home is', { empty: (day) => day < 43 }, []],
    [
      'two spells',
      { count: 120, empty: (day) => day < 18 || day >= 100 },
      [
        [0, 17],
        [100, 119],
      ],
    ],
    ['a quarter of the ups and downs left by day', { left: [0.049, 0] }, [[20, 39]]],
    ['more than a quarter', { left: [0.051, 0] }, []],
    ['two fifths, by night as by day: machines', { left: [0.079, 0.079] }, [[20, 39]]],
    ['more than two fifths', { left: [0.081, 0.081] }, []],
    ['much at once counts as 250 W', { lived: [2, 0], left: [0.062, 0] }, [[20, 39]]],
    ['a quarter of that is 62.5 W', { lived: [2, 0], left: [0.063, 0] }, []],
    ['20 W of ups and downs are a life', { lived: [0.0201, 0] }, [[20, 39]]],
    ['fewer are none', { lived: [0.0199, 0] }, []],
    ['as much by night as by day are none', { lived: [0.2, 0.2] }, []],
    ['the machine’s meter', { meter: 'heat-pump' }, []],
    ['visits on 7 days of 28', { empty: (day) => from20(28)(day) && !VISITS.includes(day) }, [[20, 47]]],
    ['visits on 7 days of 27', { empty: (day) => from20(27)(day) && !VISITS.includes(day) }, []],
    [
      'a quiet day before it, but for a visit',
      { empty: (day) => from20(18)(day) || day === 17 || day === 18 },
      [[18, 37]],
    ],
    ['a quiet day farther off', { empty: (day) => from20(18)(day) || day === 17 }, [[20, 37]]],
  ])('%s', (_, life, expected) => expect(spells(life)).toEqual(expected));

  /** One reading of so many kW more at a half-hour of the lived-in days, with or without ups and downs by day. */
  const spike = (slot: number, kW: number, byDay: number) =>
    daysOf(
      60,
      (day, hour) =>
        day >= 20 && day < 40
          ? 1
          : 1 + (hour * 2 === slot ? kW : 0) + (hour >= 5.5 && hour < 19 ? (2 * hour) % 2 : 0) * byDay,
      { meter: 'whole-house' },
    );
  test.each([39, 44])(
    'with panels only the evening counts: half-hour %i and its neighbour, a quarter of 80 W',
    (slot) => {
      expect([0.081, 0.079].map((kW) => emptySpells(spike(slot, kW, 0), true).length)).toEqual([1, 0]);
    },
  );
  test.each([2, 8])('ups and downs of half-hour %i of the night are taken off those of the day', (slot) => {
    // (0.2 + 0.1) / 7 kW by night. By day 25 readings of the 32 and half of one.
    const atLeast = ((0.02 + 0.3 / 7) * 32) / 25.5;
    expect([0.002, -0.002].map((more) => emptySpells(spike(slot, 0.2, atLeast + more), false).length)).toEqual([1, 0]);
  });
});

test('the week about a day is the day and three on either side, as far as they are there', () => {
  const share = [1, 2, 3, 4, 50, 60, 70, 800];
  expect([3, 4, 0, 7].map((day) => weekAbout(share, day))).toEqual([
    (1 + 2 + 3 + 4 + 50 + 60 + 70) / 7,
    (2 + 3 + 4 + 50 + 60 + 70 + 800) / 7,
    (1 + 2 + 3 + 4) / 4,
    (50 + 60 + 70 + 800) / 4,
  ]);
});

/** What sixty days took of the usual, 1 but for what is told from a day on. */
const shareOf = (...told: readonly (readonly [from: number, shares: readonly number[]])[]) => {
  const share = new Array<number>(60).fill(1);
  for (const [from, shares] of told) share.splice(from, shares.length, ...shares);
  return share;
};
const many = (count: number, share: number) => new Array<number>(count).fill(share);

test.each<readonly [string, readonly number[], readonly (readonly [number, number])[]]>([
  ['four days, and three on which walls get warm', shareOf([20, many(4, 0.6)]), [[20, 26]]],
  ['three days', shareOf([20, many(3, 0.6)]), []],
  ['three weeks', shareOf([20, many(21, 0.6)]), [[20, 43]]],
  ['69 % of the usual', shareOf([20, many(4, 0.69)]), [[20, 26]]],
  ['71 %', shareOf([20, many(4, 0.71)]), []],
  ['a day of 77 % among them', shareOf([20, [0.5, 0.5, 0.5, 0.77]]), [[20, 26]]],
  ['a day of 79 %', shareOf([20, [0.5, 0.5, 0.5, 0.79]]), []],
  ['60 % beside ten days before with 90 % in the middle', shareOf([15, many(5, 0.8)], [20, many(4, 0.6)]), [[20, 26]]],
  ['60 % beside 85 %', shareOf([15, many(5, 0.8)], [10, many(5, 0.9)], [20, many(4, 0.6)]), []],
  ['60 % before days of 87 %', shareOf([20, many(4, 0.6)], [25, many(10, 0.87)]), [[20, 26]]],
  ['60 % before days of 85 %', shareOf([20, many(4, 0.6)], [25, many(10, 0.85)]), []],
  [
    'two',
    shareOf([20, many(4, 0.6)], [40, many(5, 0.5)]),
    [
      [20, 26],
      [40, 47],
    ],
  ],
  ['up to the last day but one', shareOf([54, many(4, 0.6)]), [[54, 59]]],
  ['up to the last day: nobody came back', shareOf([56, many(4, 0.6)]), []],
  ['a day without weather among them', shareOf([20, [0.6, 0.6, Number.NaN, 0.6, 0.6]]), [[20, 27]]],
])('a holiday: %s', (_, share, expected) => {
  const days = daysOf(60, () => 1);
  expect(holidays(days, [...share])).toEqual(expected);
});

test.each<readonly [string, readonly number[], number, readonly (readonly [number, number])[]]>([
  ['below 11 °C', shareOf([20, many(20, 0.4)]), 10.9, [[20, 39]]],
  ['at 11 °C', shareOf([20, many(20, 0.4)]), 11, []],
  ['two last days of 84 %', shareOf([20, [...many(20, 0.4), 0.84, 0.84]]), 5, [[20, 41]]],
  ['of 86 %', shareOf([20, [...many(20, 0.4), 0.86, 0.86]]), 5, [[20, 39]]],
  ['last four days at 68 % of those after', shareOf([20, [...many(20, 0.4), 0.5, 0.74, 0.74, 0.74]]), 5, [[20, 43]]],
  ['at 72 %', shareOf([20, [...many(20, 0.4), 0.6, 0.76, 0.76, 0.76]]), 5, []],
  ['first four days at 59 %', shareOf([20, [0.5, 0.62, 0.62, 0.62, ...many(20, 0.4)]]), 5, [[20, 43]]],
  ['at 61 %: they begin later', shareOf([20, [0.5, 0.65, 0.65, 0.65, ...many(20, 0.4)]]), 5, [[24, 43]]],
])('weeks of less in which it is heated: %s', (_, share, celsius, expected) => {
  const days = daysOf(60, () => 1, { outdoorC: () => celsius });
  expect(weeksOfLess(days, true, [...share]).map(({ spell }) => spell)).toEqual(expected);
});

test('the usual is that of ordinary days: those with less than half of it do not lower it', () => {
  const outdoorC = (day: number) => 2 + (day % 6);
  const isOut = (day: number) => day >= 20 && day < 32;
  const days = daysOf(80, (day) => ((isOut(day) ? 0.3 : 1) * (10 + 15.5 - outdoorC(day))) / 24, { outdoorC });
  expect(sharesOfUsual(days)).toEqual(Array.from({ length: 80 }, (_, day) => close(isOut(day) ? 0.3 : 1)));
});

describe('weeks of less', () => {
  interface Weeks {
    readonly count?: number;
    /** Share of 10 kWh and 1 for each degree below 15.5 °C that a day takes. */
    readonly share?: (day: number) => number;
    readonly outdoorC?: (day: number) => number;
    readonly meter?: MeterDays['meter'];
  }
  const within = (from: number, length: number) => (day: number) => day >= from && day < from + length;
  const home = ({ count = 120, share = () => 1, outdoorC = (day) => 2 + (day % 6), meter = 'heat-pump' }: Weeks) =>
    daysOf(count, (day) => (share(day) * (10 + Math.max(0, 15.5 - outdoorC(day)))) / 24, { meter, outdoorC });
  const away = (from: number, length: number, left: number) => (day: number) => (within(from, length)(day) ? left : 1);
  const spells = (weeks: Weeks, heats = true) => weeksOfLess(home(weeks), heats).map(({ spell }) => spell);

  test('are a question with the days, the share and the units that they lack', () => {
    const days = home({ share: away(50, 28, 0.4) });
    const weeks = weeksOfLess(days, true);
    expect(weeks).toHaveLength(1);
    const [{ spell, share, lessKWh }] = weeks as [(typeof weeks)[number]];
    expect(spell).toEqual([50, 77]);
    expect(share).toBeCloseTo(0.4, 2);
    const usual = Array.from({ length: 28 }, (_, i) => 25.5 - (2 + ((50 + i) % 6))).reduce((sum, kWh) => sum + kWh, 0);
    expect(lessKWh / (0.6 * usual)).toBeCloseTo(1, 1);
    expect(findWeeksOfLess(days, weeks, prices)).toEqual([
      {
        code: 'home-empty',
        meter: 'heat-pump',
        from: addDays(FIRST, 50),
        to: addDays(FIRST, 78),
        sure: close(0.75 + (0.5 - share) / 2),
        grade: 'estimated',
        seen: { days: 28, share },
        kWh: -lessKWh,
        pence: -25 * lessKWh,
        kWhYear: -lessKWh,
        penceYear: -25 * lessKWh,
        may: ['home-empty', 'less-heat'],
        ask: ['away', 'settings-changed'],
        check: [],
        cautions: [],
      },
    ]);
    const [ofHouse] = findWeeksOfLess({ ...days, meter: 'whole-house' }, weeks, prices);
    expect(ofHouse!.may).toEqual(['home-empty', 'less-heat', 'less-other-use']);
  });
  const warm = (day: number) => 12 + (day % 6);
  test.each<readonly [string, Weeks, number] | readonly [string, Weeks, number, boolean]>([
    ['18 days', { share: away(50, 18, 0.4) }, 1],
    ['17 days are a holiday', { share: away(50, 17, 0.4) }, 0],
    ['150 days', { count: 500, share: away(50, 150, 0.4) }, 1],
    ['151 days are how the home is', { count: 500, share: away(50, 151, 0.4) }, 0],
    ['four days before them', { share: away(4, 28, 0.4) }, 0],
    ['none after them', { share: away(92, 28, 0.4) }, 0],
    ['a half of it', { share: away(50, 28, 0.5) }, 1],
    ['two thirds', { share: away(50, 28, 0.66) }, 0],
    ['57 % of it', { count: 400, share: away(50, 28, 0.57) }, 1],
    ['57 % of it on the house’s meter', { count: 400, share: away(50, 28, 0.57), meter: 'whole-house' }, 0],
    ['one odd day among them', { share: (day) => (day === 60 ? 1 : away(50, 28, 0.4)(day)) }, 1],
    ['two odd days', { share: (day) => (day === 60 || day === 61 ? 1 : away(50, 28, 0.4)(day)) }, 0],
    ['less little by little', { share: (day) => (within(50, 28)(day) ? 1 - (day - 49) / 40 : 1) }, 0],
    ['as much again little by little', { share: (day) => (within(50, 28)(day) ? 0.2 + (day - 49) / 35 : 1) }, 0],
    ['a summer', { share: away(50, 28, 0.4), outdoorC: warm }, 0],
    ['a summer of what does not heat', { share: away(50, 28, 0.4), outdoorC: warm }, 1, false],
    ['nothing at all', { share: away(50, 28, 0) }, 1],
  ])('%s', (_, weeks, count, heats = true) => expect(spells(weeks, heats)).toHaveLength(count));
});

describe('a heater that helps in the cold', () => {
  interface Cold {
    readonly mild?: number;
    readonly coldest?: number;
    /** kWh a day beyond the line, by degrees below 3.5 °C. */
    readonly more?: (degrees: number, place: number) => number;
    readonly peakKW?: number;
    readonly off?: number;
    readonly meter?: MeterDays['meter'];
    readonly mildC?: (place: number) => number;
  }
  /** Four mild days, then one cold one, again and again; 10 kWh and 2 for each degree below 15.5 °C, an hour of it at its peak. */
  const home = (cold: Cold) => {
    const { mild = 40, coldest = 10, more = (degrees) => 8 + 4 * degrees, peakKW = 6, off = 0, meter } = cold;
    const { mildC = (place: number) => 4 + ((place * 3) % 8) } = cold;
    const kinds = Array.from({ length: mild + coldest }, (_, day) =>
      day % 5 === 2 && day / 5 < coldest ? 'cold' : 'mild',
    );
    const place = kinds.map((kind, day) => kinds.slice(0, day).filter((one) => one === kind).length);
    const outdoorC = (day: number) => (kinds[day] === 'cold' ? 3 - (place[day]! % 5) : mildC(place[day]!));
    return daysOf(
      mild + coldest,
      (day, hour) => {
        const isCold = kinds[day] === 'cold';
        const peak = isCold ? peakKW : 4;
        const extra = isCold ? more(3.5 - outdoorC(day), place[day]!) : (day % 2 ? 1 : -1) * off;
        const kWh = 10 + 2 * (15.5 - outdoorC(day)) + extra;
        return hour < 1 ? peak : (kWh - peak) / 23;
      },
      { minutes: 60, outdoorC, ...(meter && { meter }) },
    );
  };
  const find = (cold: Cold = {}) => findBackupInCold(home(cold), prices)[0];

  test('its units beyond the line, the days it helped on, and how warm it was at most', () => {
    // 3 °C to −1 °C twice: 8 + 4 × (0.5 + … + 4.5) / 5 = 18 kWh a day.
    expect(find()).toMatchObject({
      code: 'backup-in-cold',
      meter: 'heat-pump',
      from: addDays(FIRST, 2),
      to: addDays(FIRST, 48),
      sure: close(0.9),
      grade: 'estimated',
      seen: { days: 10, belowC: 3, kWhPerDay: close(18), coldCorrelation: close(-1) },
      kWh: close(180, 6),
      pence: close(4500, 5),
      kWhYear: close(180, 6),
      penceYear: close(4500, 5),
      ask: ['heater-switch'],
      check: ['heater-hours', 'heater-control', 'heating-curve'],
      cautions: ['electrical'],
    });
    expect(find()!.may).toBeUndefined();
    expect(find({ meter: 'whole-house' })).toMatchObject({
      may: ['backup-heater', 'plug-in-heaters'],
      ask: ['plug-in-heaters', 'heater-switch'],
    });
  });
  // Without it a cold day takes 10 + 2 × 14.5 = 39 kWh in the mean.
  const grows = (mean: number) => (degrees: number) => mean + 0.2 * (degrees - 2.5);
  test.each<readonly [string, Cold, boolean]>([
    ['30 mild days', { mild: 30, coldest: 7 }, true],
    ['29', { mild: 29, coldest: 7 }, false],
    ['5 cold days', { coldest: 5 }, true],
    ['4', { coldest: 4 }, false],
    ['a fifth more', { more: grows(7.81) }, true],
    ['less than a fifth', { more: grows(7.79) }, false],
    ['the greatest hour 1.41 kW higher', { peakKW: 5.41 }, true],
    ['1.39 kW higher', { peakKW: 5.39 }, false],
    ['less the colder it is', { more: (degrees) => 20 - 4 * degrees }, false],
    ['hardly more the colder it is', { more: (degrees, place) => 18 + (place % 2 ? -8 : 8) + degrees }, false],
    ['mild days of 12 °C are not heated', { mildC: () => 12 }, false],
  ])('%s', (_, cold, found) => expect(find(cold) !== undefined).toBe(found));

  test('the less clear it is, the less sure; days within the ordinary are not helped', () => {
    const cold: Cold = { off: 1.5, more: (degrees) => 4 + 3 * degrees };
    const days = home(cold);
    const all = [...days.outdoorC.keys()];
    const [mild, coldest] = [
      all.filter((day) => days.outdoorC[day]! >= 3.5),
      all.filter((day) => days.outdoorC[day]! < 3.5),
    ];
    const below = (day: number) => 15.5 - days.outdoorC[day]!;
    const [x, y] = [mild.map(below), mild.map((day) => days.dayKWh[day]!)];
    const line = textbook(x, y);
    const mean = (values: readonly number[]) => values.reduce((sum, one) => sum + one, 0) / values.length;
    const usual = (day: number) => {
      const about = mild.filter((one) => Math.abs(one - day) <= 14);
      return line.at(below(day)) + mean(about.map((one) => days.dayKWh[one]! - line.at(below(one))));
    };
    const excess = coldest.map((day) => days.dayKWh[day]! - usual(day));
    const variance = line.sse / (mild.length - 2);
    const sxx = x.reduce((sum, one) => sum + (one - mean(x)) ** 2, 0);
    const apart = mean(coldest.map(below)) - mean(x);
    const t = mean(excess) / Math.sqrt(variance * (1 / coldest.length + apart ** 2 / sxx));
    const helped = excess.filter((one) => one > 2 * Math.sqrt(variance));
    const found = find(cold)!;
    expect(t).toBeLessThan(18);
    expect(found.sure).toBeCloseTo(0.6 + t / 60, 9);
    expect(found.seen.days).toBe(helped.length);
    expect(found.kWh).toBeCloseTo(
      helped.reduce((sum, one) => sum + one, 0),
      6,
    );
  });
});

describe('a meter that counts otherwise, with warm days', () => {
  interface Counted {
    readonly count?: number;
    readonly at?: number;
    readonly times?: number;
    /** What runs all day, beside the rest, since then. */
    readonly standby?: number;
    readonly peak?: number;
    readonly outdoorC?: (day: number) => number;
  }
  /** 100 W, 400 W by day and an hour of 2 kW; heated every other day. */
  const find = ({ count = 60, at = 30, times = 2, standby = times, peak = times, ...rest }: Counted = {}) => {
    const { outdoorC = (day: number) => (day % 2 ? 18 : 5 + (day % 3)) } = rest;
    const days = daysOf(
      count,
      (day, hour) => {
        const since = day >= at;
        const heat = day % 2 ? 1 : 2;
        if (hour < 5) return 0.1 * (since ? standby : 1);
        return hour < 6 ? 2 * heat * (since ? peak : 1) : 0.4 * heat * (since ? times : 1);
      },
      { outdoorC, minutes: 60, meter: 'whole-house' },
    );
    return findMeterScale(days, prices)[0];
  };
  test('twice as much of everything: half of what was counted since', () => {
    // 0.5 + 2 + 18 × 0.4 = 9.7 kWh and, heated, 18.9 kWh a day before; the same again is counted beyond.
    expect(find()).toEqual({
      code: 'meter-scale',
      meter: 'whole-house',
      from: addDays(FIRST, 30),
      to: addDays(FIRST, 60),
      sure: close(0.95),
      grade: 'estimated',
      seen: { times: close(2) },
      kWh: close(15 * (9.7 + 18.9)),
      pence: close(25 * 15 * (9.7 + 18.9), 6),
      kWhYear: close(15 * (9.7 + 18.9)),
      penceYear: close(25 * 15 * (9.7 + 18.9), 6),
      ask: ['meter-exchanged'],
      check: ['meter-test', 'supplier-bill'],
      cautions: ['electrical'],
    });
    const half = find({ times: 0.5 })!;
    expect(half.seen.times).toBeCloseTo(0.5, 9);
    expect(half.kWh).toBeCloseTo((-15 * (9.7 + 18.9)) / 2, 9);
  });
  test.each<readonly [string, Counted, boolean]>([
    ['1.39 times', { times: 1.39 }, true],
    ['1.37 times', { times: 1.37 }, false],
    ['1 / 1.39', { times: 1 / 1.39 }, true],
    ['1 / 1.37', { times: 1 / 1.37 }, false],
    ['standby alone as before', { standby: 1 }, false],
    ['the greatest hour alone as before', { peak: 1 }, false],
    ['standby a little beyond', { standby: 2 * Math.exp(0.15) }, true],
    ['standby further beyond', { standby: 2 * Math.exp(0.18) }, false],
    ['42 days', { count: 42, at: 21 }, true],
    ['41 days', { count: 41, at: 21 }, false],
    ['a winter that was 1 K colder', { outdoorC: (day) => (day % 2 ? 18 : 5 + (day % 3) - (day < 30 ? 0 : 1)) }, true],
    [
      'days as cold were not there before',
      { outdoorC: (day) => (day % 2 ? (day < 30 ? 18 : 21) : 5 + (day < 30 ? 0 : 2)) },
      false,
    ],
  ])('%s', (_, counted, found) => expect(find(counted) !== undefined).toBe(found));
  test('the farther apart, the less sure', () => {
    const found = find({ standby: 2 * Math.exp(0.1) })!;
    const times = Number(found.seen.times);
    expect(found.sure).toBeCloseTo(0.95 - Math.log((2 * Math.exp(0.1)) / times), 9);
  });
});
