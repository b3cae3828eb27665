/** Each detector over readings made so plain that its days, units, cost and likelihood follow by hand. */
import { describe, expect, test } from 'vitest';
import { addDays, daysBetween } from '../../../src/model/calendar/civil.ts';
import { findBaseLoad } from '../../../src/model/findings/base-load.ts';
import { findBehaviour } from '../../../src/model/findings/behaviour.ts';
import { coldLine } from '../../../src/model/findings/cold-line.ts';
import { findDearHours } from '../../../src/model/findings/dear-hours.ts';
import { findInReadings } from '../../../src/model/findings/find-in-readings.ts';
import { findingWorking } from '../../../src/model/findings/finding-working.ts';
import { type MeterDays, onlyDays } from '../../../src/model/findings/meter-days.ts';
import { findMeterScale } from '../../../src/model/findings/meter-scale.ts';
import { findNightSetback } from '../../../src/model/findings/night-setback.ts';
import { findWaterOften, waterCycles } from '../../../src/model/findings/water-often.ts';
import type { TariffVersion } from '../../../src/model/shapes/tariff.ts';
import { tell } from '../../../src/model/shapes/told.ts';
import { daysOf, FIRST, heating, outdoor, outdoorOn, readingsOf, textbook } from './made-days.ts';

const prices = { pencePerKWh: 25 };
const close = (value: number, digits = 9) => expect.closeTo(value, digits);
/** Up and down from day to day, so that neighbours are never alike and a whole number of pairs has no mean. */
const swing = (day: number, by: number) => (day % 2 ? -by : by);
/** t of the difference of two rows of `n` that swing by `by`: s² = n by² / (n − 2). */
const swingT = (difference: number, n: number, by: number) =>
  difference / Math.sqrt((2 * ((n * by ** 2) / (n - 2))) / n);

describe('base load', () => {
  interface Low {
    readonly count?: number;
    readonly at?: number;
    readonly rise?: (day: number) => number;
    readonly by?: number;
    readonly outdoorC?: (day: number) => number;
    readonly meter?: MeterDays['meter'];
  }
  /** 100 W in the two lowest hours of the day, the one 20 W below the other; 1 kW else. */
  const lows = ({
    count = 60,
    at = 30,
    rise = () => 0.1,
    by = 0.01,
    outdoorC = () => 20,
    meter = 'whole-house',
  }: Low) =>
    daysOf(
      count,
      (day, hour) =>
        hour >= 2 && hour < 4
          ? 0.1 + (hour < 3 ? -0.02 : 0.02) + swing(day, by) + (day >= at ? rise(day) : 0)
          : hour < 12
            ? 1
            : 2,
      { outdoorC, meter },
    );
  const find = (low: Low = {}) => findBaseLoad(lows(low), prices, false);
  test('100 W more from the 31st day on: 72 kWh in 30 days', () => {
    expect(find()).toMatchObject([
      {
        code: 'base-load-rose',
        meter: 'whole-house',
        from: addDays(FIRST, 30),
        to: addDays(FIRST, 60),
        sure: close(0.9),
        grade: 'estimated',
        seen: { riseW: close(100), beforeW: close(100), afterW: close(200) },
        kWh: close(72),
        pence: close(1800),
        kWhYear: close(876),
        penceYear: close(21_900, 6),
      },
    ]);
    expect(find()[0]!.check).toContain('sub-meter');
    expect(find({ meter: 'heat-pump' })[0]!.check).not.toContain('sub-meter');
  });
  test('the less clear it is, the less sure', () => {
    expect(find({ by: 0.05 })[0]!.sure).toBeCloseTo(0.6 + swingT(0.1, 30, 0.05) / 60, 9);
  });
  test.each([
    ['52 W', { rise: () => 0.052, by: 0.002 }, 1],
    ['48 W', { rise: () => 0.048, by: 0.002 }, 0],
    ['less', { rise: () => -0.06, by: 0.002 }, 0],
    ['six weeks', { count: 42, at: 21 }, 1],
    ['a day less', { count: 41, at: 21 }, 0],
    ['on cold days and on mild ones', { outdoorC: (day: number) => (day * 7) % 13, by: 0.001 }, 1],
    [
      'with the cold',
      { outdoorC: (day: number) => (day * 7) % 13, rise: (day: number) => 0.02 * (15.5 - ((day * 7) % 13)), by: 0.001 },
      0,
    ],
    ['weather not known', { outdoorC: () => Number.NaN }, 0],
  ] as [string, Low, number][])('%s', (_, low, count) => expect(find(low)).toHaveLength(count));
  describe('on a meter that heats', () => {
    /** So many of each thirty days have 20 °C and rise by `onWarm` kW; the others have 5.5 °C and rise by 0.1 kW. */
    const findHeated = (warm: number, onWarm = 0.1, meter: MeterDays['meter'] = 'whole-house') => {
      const isWarm = (day: number) => day % 30 < warm;
      const rise = (day: number) => (isWarm(day) ? onWarm : 0.1);
      const made = lows({ rise, by: 0.001, outdoorC: (day) => (isWarm(day) ? 20 : 5.5), meter });
      return findBaseLoad(made, prices, true)[0];
    };
    test.each([
      ['eight days without heating before and since', 8, 0.1, true],
      ['seven', 7, 0.1, false],
      // Of fifteen days w and fifteen 0.1 kW, (w + 0.1) / 2 in the mean: w is three fifths of it at 0.0429 kW.
      ['three fifths of it on warm days', 15, 0.0435, true],
      ['less on warm days', 15, 0.0425, false],
    ] as const)('%s', (_, warm, onWarm, found) => expect(findHeated(warm, onWarm) !== undefined).toBe(found));
    test('since days that are mostly cold for a year, since days mostly warm for these alone, with a question', () => {
      // 0.1 kW are 2.4 kWh a day.
      expect(findHeated(14)).toMatchObject({ kWh: close(72, 6), kWhYear: close(876, 6) });
      expect(findHeated(14)!.may).toBeUndefined();
      expect(findHeated(16)).toMatchObject({
        kWh: close(72, 6),
        kWhYear: close(72, 6),
        penceYear: close(1800, 5),
        may: ['summer-heating', 'base-load'],
        ask: ['heating-in-summer', 'new-appliance', 'tub-or-pool', 'settings-changed'],
        check: ['sub-meter', 'pump-always-on', 'pipes-warm'],
      });
      expect(findHeated(16, 0.1, 'heat-pump')).toMatchObject({
        ask: ['heating-in-summer', 'settings-changed'],
        check: ['pipes-warm', 'pump-always-on'],
      });
    });
  });
  test('where all that is used rose by nearly as many times it may be the meter', () => {
    // Of 34.2 kWh a day 34 are beside the lowest hours, which double: e^0.2 is 1.22 times less.
    const may = (times: number) =>
      findBaseLoad(
        daysOf(
          60,
          (day, hour) =>
            hour >= 2 && hour < 4
              ? (0.1 + swing(day, 0.001)) * (day < 30 ? 1 : 2)
              : (hour < 12 ? 1 : 2) * (day < 30 ? 1 : times) + swing(day, 0.01),
          { meter: 'whole-house', outdoorC: () => 20 },
        ),
        prices,
        false,
      )[0]!.may;
    expect([1.61, 1.66, 2.46].map(may)).toEqual([undefined, ['base-load', 'meter-wrong'], undefined]);
  });
  test('days without weather do not count, at the end neither', () => {
    const [finding] = find({ count: 66, outdoorC: (day) => (day >= 60 || day === 2 || day === 3 ? Number.NaN : 20) });
    expect(finding).toMatchObject({ from: addDays(FIRST, 30), to: addDays(FIRST, 60), kWh: close(72) });
  });
});

describe('more since a day of a first winter', () => {
  /** 5 kWh a day and 1 for each degree below 15 °C, 4 more since day 60, when the cold comes too. */
  const winter = (before: readonly number[], since: readonly number[]) => {
    const outdoorC = (day: number) => (day < 60 ? before : since)[day % 6]!;
    const perDay = (day: number) =>
      5 + Math.max(0, 15 - outdoorC(day)) + (day < 60 ? 0 : 4) + swing(Math.floor(day / 6), 0.05);
    return findBehaviour(
      daysOf(120, (day) => perDay(day) / 24, { outdoorC }),
      prices,
    );
  };
  const autumn = [14, 12, 10, 8, 9, 11];
  test('its size is the step of the days about it, and nobody says whether it follows the cold', () => {
    const [finding] = winter(autumn, [1, -1, 0, 9, 2, -2]);
    // 15 − 1.5 = 13.5 degrees and 5 kWh: 18.5 without it.
    expect(finding).toMatchObject({
      from: addDays(FIRST, 60),
      grade: 'assumed',
      seen: { kind: 'unclear', share: close(4 / 18.5, 2), kWhPerDay: close(4, 1) },
      kWh: close(240, -1),
    });
    expect(finding!.kWhYear).toBe(finding!.kWh);
  });
  test.each([
    ['no day since as mild as one before', autumn, [1, -1, 0, 7, 2, -2]],
    ['the first days of heating', [20, 19, 18, 20, 19, 9], [1, -1, 0, 9, 2, -2]],
  ] as const)('%s', (_, before, since) => expect(winter(before, since)).toEqual([]));
});

describe('the season is no change in the home', () => {
  /** From the end of January on, 13 months: what a home uses by day and degrees below 15 °C. */
  const changes = (perDay: (day: number, below: number) => number) => {
    const kW = (day: number) => (swing(day, 0.3) + perDay(day, Math.max(0, 15 - outdoorOn(day)))) / 24;
    const record = onlyDays(daysOf(515, kW, { outdoorC: outdoorOn }), (day) => day >= 116);
    return findBehaviour(record, prices).map(({ from }) => from);
  };
  const heated = (below: number) => 3 + 1.2 * below;
  test('heating that somebody switches on by hand, long after the first mild days', () => {
    const isOff = (day: number) => day >= 212 && day < 375;
    expect(changes((day, below) => (isOff(day) ? 3 : heated(below)))).toEqual([]);
    const since = changes((day, below) => (isOff(day) ? 3 : (day < 430 ? 1 : 1.4) * heated(below)));
    expect(since).toHaveLength(1);
    expect(Math.abs(daysBetween(addDays(FIRST, 430), since[0]!))).toBeLessThanOrEqual(3);
  });
});

describe('more or less in the same weather', () => {
  // Six days from 0 to 20 °C again and again: 15, 0, 0, 3, 7 and 11 degrees below 15 °C, 6 in the mean.
  const COLD = [0, 20, 16, 12, 8, 4];
  const below = (day: number) => Math.max(0, 15 - COLD[day % 6]!);
  interface Use {
    readonly count?: number;
    readonly at?: number;
    readonly more?: (below: number) => number;
    readonly meter?: MeterDays['meter'];
    readonly base?: number;
    readonly unsteady?: number;
  }
  /** 5 kWh a day and 1 for each degree, 11 in the mean; from a day on `more`; a little up and down by the six days. */
  const days = ({ count = 120, at = 60, more = () => 2, meter = 'heat-pump', base = 5, unsteady = 0.05 }: Use) =>
    daysOf(
      count,
      (day) =>
        (base +
          (base && below(day)) +
          (base && swing(Math.floor(day / 6), unsteady)) +
          (day >= at ? more(below(day)) : 0)) /
        24,
      { meter, outdoorC: (day) => COLD[day % 6]! },
    );
  const find = (use: Use = {}) => findBehaviour(days(use), prices);
  test('on the house’s meter less the machine’s it is the rest of the home, from three tenths more on', () => {
    const rest = (more: number) => findBehaviour(days({ meter: WHOLE, more: () => more }), prices, false);
    expect(rest(3.2)).toEqual([]);
    expect(rest(3.4)[0]).toMatchObject({
      may: ['other-use', 'base-load', 'large-load', 'plug-in-heaters', 'heater', 'meter-wrong'],
      ask: ['meter-exchanged', 'new-appliance', 'tub-or-pool', 'more-people', 'plug-in-heaters'],
      check: ['sub-meter', 'meter-test'],
    });
    expect(rest(-3.4)[0]).toMatchObject({
      may: ['less-other-use', 'home-empty', 'own-generation', 'heater-off', 'meter-wrong'],
      ask: ['meter-exchanged', 'away', 'settings-changed'],
    });
  });
  test.each([
    ['2 kWh a day more', () => 2, 'steady', 2],
    ['3 tenths more for each degree', (below: number) => 0.3 * below, 'with-the-cold', 1.8],
    ['2 kWh a day less', () => -2, 'steady', -2],
  ])('%s', (_, more, kind, perDay) => {
    const [finding] = find({ more });
    expect(finding).toMatchObject({
      code: 'behaviour-changed',
      from: addDays(FIRST, 60),
      to: addDays(FIRST, 120),
      grade: 'assumed',
      seen: { share: close(perDay / 11), kind, kWhPerDay: close(perDay) },
      kWh: close(60 * perDay, 6),
      pence: close(1500 * perDay, 6),
      // What grows with the cold is not drawn out over a year of which these days are a part.
      kWhYear: close((kind === 'steady' ? 365 : 60) * perDay, 6),
      penceYear: close((kind === 'steady' ? 365 : 60) * 25 * perDay, 5),
    });
    expect(finding!.sure).toBeCloseTo(0.8 + Math.abs(perDay / 11) / 2, 9);
    expect(finding!.ask.includes('away')).toBe(perDay < 0);
    expect(finding!.check.includes('water-setpoint')).toBe(perDay > 0 && kind === 'steady');
    expect(finding!.check.includes('heat-made')).toBe(kind !== 'steady' || perDay < 0);
  });
  test.each([
    ['10.5 % on the machine’s meter', { more: () => 1.16 }, 1],
    ['9.5 %', { more: () => 1.04 }, 0],
    ['10.5 % less', { more: () => -1.16 }, 1],
    ['9.5 % less', { more: () => -1.04 }, 0],
    ['18.5 % on the house’s, among its ups and downs', { meter: 'whole-house', unsteady: 0.7, more: () => 2.03 }, 1],
    ['17.5 %', { meter: 'whole-house', unsteady: 0.7, more: () => 1.93 }, 0],
    ['10.5 % on the house’s, in a clear step', { meter: 'whole-house', more: () => 1.16 }, 1],
    ['9.5 % in a clear step', { meter: 'whole-house', more: () => 1.04 }, 0],
    ['eight weeks', { count: 56, at: 28, more: () => 4 }, 1],
    ['a day less', { count: 55, at: 28, more: () => 4 }, 0],
    ['no readings', { count: 0 }, 0],
    ['from nothing', { base: 0, more: () => 5 }, 0],
  ] as [string, Use, number][])('%s', (_, use, count) => expect(find(use)).toHaveLength(count));
  test.each([
    ['eight warm days before and since', 48, 'steady'],
    ['seven: 16 °C is no warm day', 42, 'unclear'],
  ])('the same every day: %s', (_, at, kind) => {
    expect(find({ at, count: 2 * at })[0]!.seen.kind).toBe(kind);
  });
  /** 2 kWh a day more, and beside it what is told by temperature and by the evenness of the six days. */
  const findBeside = (beside: (celsius: number, way: 1 | -1) => number) => {
    const kWh = (day: number) => {
      const celsius = COLD[day % 6]!;
      const way = Math.floor(day / 6) % 2 ? -1 : 1;
      return 5 + below(day) + 0.05 * way + (day >= 60 ? 2 + beside(celsius, way) : 0);
    };
    return findBehaviour(
      daysOf(120, (day) => kWh(day) / 24, { outdoorC: (day) => COLD[day % 6]! }),
      prices,
    )[0]!.seen;
  };
  test.each([
    [0.43, 'steady'],
    [0.47, 'unclear'],
    [-0.43, 'steady'],
    [-0.47, 'unclear'],
  ])('the same every day is nothing that hangs with the cold by more than 0.45: %d is %s', (correlation, kind) => {
    // The six temperatures stray by √46.7 K; so far must the days stray besides for such a correlation.
    const signal = 0.03 * Math.sqrt(280 / 6);
    const noise = signal * Math.sqrt(1 / correlation ** 2 - 1);
    const seen = findBeside((celsius, way) => Math.sign(correlation) * 0.03 * (celsius - 10) + (noise - 0.05) * way);
    expect(seen.coldCorrelation).toBeCloseTo(correlation, 2);
    expect(seen.kind).toBe(kind);
  });
  test('on warm days it must stand out by three times their error', () => {
    // Ten days that stray by n either way: the error is n √(2 / 9), and 0.05 √(2 / 9) before.
    const kinds = [1.4, 1.43].map((n) => findBeside((celsius, way) => (celsius === 20 ? (n - 0.05) * way : 0)).kind);
    const isClear = [1.4, 1.43].map((n) => 2 >= 3 * Math.sqrt(2 / 9) * Math.hypot(n, 0.05));
    expect(isClear).toEqual([true, false]);
    expect(kinds).toEqual(['steady', 'unclear']);
  });
  test('less from February on is the season’s where October, with the sun as high, took hardly more', () => {
    // 2 kWh a day less from day 138 on; `less` on the first 32 days, when the sun stood as high.
    const told = (less: number) =>
      findBehaviour(
        daysOf(
          200,
          (day) => {
            const since = day < 32 ? less : day < 138 ? 0 : 2;
            return (8 + below(day) + swing(Math.floor(day / 6), 0.05) - since) / 24;
          },
          { outdoorC: (day) => COLD[day % 6]! },
        ),
        prices,
      ).map(({ from }) => from);
    // Half of the difference to the line of all before, 2 − 32 x / 138. Of the days as light 4 in 100 are of January, so that
    // (2 − 0.956 x) / (2 − 0.232 x) is a half at 1.19 kWh.
    expect([0, 1.13, 1.25, 2].map(told)).toEqual([[addDays(FIRST, 138)], [addDays(FIRST, 138)], [], []]);
  });
  test('more on heated days: by what share of it is there on warm days too, up to two fifths and from three fifths on', () => {
    // Days of 8 to 12 °C take 1 to 3 kWh more, 2 in the mean, the milder the more: nothing that grows with the cold.
    const celsius = [8, 9, 10, 11, 12, 20];
    const kindAt = (onWarm: number) => {
      const perDay = (day: number) => {
        const degrees = Math.max(0, 15 - celsius[day % 6]!);
        const more = degrees > 0 ? 1 + (7 - degrees) / 2 : onWarm;
        return 5 + degrees + swing(Math.floor(day / 6), 0.05) + (day >= 60 ? more : 0);
      };
      const made = daysOf(120, (day) => perDay(day) / 24, { outdoorC: (day) => celsius[day % 6]! });
      const use = Array.from(made.dayKWh);
      const x = Array.from(coldLine(use, made.outdoorC).below);
      const line = textbook(x.slice(0, 60), use.slice(0, 60));
      const mean = (isIn: (degrees: number) => boolean) => {
        const more = x.flatMap((value, day) => (day >= 60 && isIn(value) ? [use[day]! - line.at(value)] : []));
        return more.reduce((sum, one) => sum + one, 0) / more.length;
      };
      const share = mean((degrees) => degrees === 0) / mean((degrees) => degrees > 0);
      const [finding] = findBehaviour(made, prices);
      return { kind: finding!.seen.kind, expected: share <= 0.4 ? 'while-heated' : share < 0.6 ? 'unclear' : 'steady' };
    };
    const kinds = [0, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 1].map(kindAt);
    expect(kinds.map(({ kind }) => kind)).toEqual(kinds.map(({ expected }) => expected));
    expect(new Set(kinds.map(({ kind }) => kind)).size).toBe(3);
  });
  const WHOLE = 'whole-house' as const;
  const cold3 = (below: number) => 0.3 * below;
  const HEATED = ['machine-works-less', 'more-heat', 'rooms-warmer', 'heater'];
  test.each<readonly [string, Use, readonly string[], readonly string[], readonly string[]]>([
    [
      'steady, on the machine’s meter',
      {},
      ['more-water', 'heater', 'base-load'],
      ['more-people', 'baths', 'new-appliance'],
      ['heater-hours', 'water-setpoint'],
    ],
    [
      'steady, on the house’s: 30 % may be the meter',
      { meter: WHOLE, more: () => 3.3 },
      ['more-water', 'heater', 'other-use', 'base-load', 'large-load', 'meter-wrong'],
      ['meter-exchanged', 'more-people', 'baths', 'new-appliance'],
      ['heater-hours', 'water-setpoint', 'meter-test'],
    ],
    [
      '70 %: the meter first',
      { more: () => 7.7 },
      ['meter-wrong', 'newly-occupied', 'more-water', 'heater', 'base-load'],
      ['meter-exchanged', 'away', 'more-people', 'baths', 'new-appliance'],
      ['meter-test', 'heater-hours', 'water-setpoint'],
    ],
    [
      'with the cold',
      { more: cold3 },
      HEATED,
      ['rooms-warmer', 'rooms-added', 'settings-changed'],
      ['heat-made', 'heating-curve'],
    ],
    [
      'with the cold, on the house’s',
      { meter: WHOLE, more: (below: number) => 0.4 * below },
      [...HEATED, 'plug-in-heaters'],
      ['rooms-warmer', 'rooms-added', 'settings-changed'],
      ['heat-made', 'heating-curve'],
    ],
    [
      'less, steady',
      { more: () => -2 },
      ['less-heat', 'home-empty', 'less-water', 'heater-off'],
      ['away', 'settings-changed'],
      ['heat-made', 'heating-curve'],
    ],
    [
      'less with the cold, on the house’s',
      { meter: WHOLE, more: (below: number) => -0.4 * below },
      ['less-heat', 'machine-works-better', 'home-empty', 'less-other-use', 'own-generation'],
      ['away', 'settings-changed'],
      ['heat-made', 'heating-curve'],
    ],
  ])('what it may be, is asked and is checked: %s', (_, use, may, ask, check) => {
    const [finding] = find(use);
    expect([finding!.may, finding!.ask, finding!.check]).toEqual([may, ask, check]);
  });
  test.each([
    // e^0.25 is 28.4 % more, e^−0.25 22.1 % less; e^0.5 64.9 % more, e^−0.5 39.3 % less. Of 11 kWh a day.
    [3.11, undefined],
    [3.14, 'last'],
    [7.12, 'last'],
    [7.15, 'first'],
    [-2.41, undefined],
    [-2.45, 'last'],
    [-4.31, 'last'],
    [-4.35, 'first'],
  ])('%d kWh a day: a wrong meter is named %s', (more, place) => {
    const { may } = find({ more: () => more })[0]!;
    const at = may!.indexOf('meter-wrong');
    expect(at < 0 ? undefined : at === 0 ? 'first' : at === may!.length - 1 ? 'last' : at).toBe(place);
  });
  test('in days that are mostly warm more may be heating that was left on; not what follows the cold', () => {
    // The same six days, 5 K warmer since: 21, 17 and 25 °C among them, 15 in the mean.
    const warm = (more: (below: number) => number, warmer = 5, colder = 10) => {
      // Of the ten coldest days since, those after the first few are a kelvin milder.
      const milder = (day: number) => Number(day >= 60 + 6 * colder && day % 6 === 0);
      const outdoorC = (day: number) => COLD[day % 6]! + (day < 60 ? 0 : warmer) + milder(day);
      const made = daysOf(
        120,
        (day) => {
          const below = Math.max(0, 15 - outdoorC(day));
          return (5 + below + swing(Math.floor(day / 6), 0.05) + (day >= 60 ? more(below) : 0)) / 24;
        },
        { outdoorC },
      );
      return findBehaviour(made, prices)[0];
    };
    expect(warm(() => 2)!.may!.at(-1)).toBe('summer-heating');
    expect(warm(() => 2)!.ask[0]).toBe('heating-in-summer');
    // The middle of all days since is 10 and 12 °C: 12.1 °C is warm.
    expect([1.9, 2.1].map((warmer) => warm(() => 2, warmer)!.may!.includes('summer-heating'))).toEqual([false, true]);
    // Less is spared by the sun itself; where days are no warmer it is told.
    expect([0, 1.9, 2.1].map((warmer) => warm(() => -2, warmer)?.kWh)).toEqual([
      close(-120),
      close(-120, -1),
      undefined,
    ]);
    expect(warm((below) => 0.9 * below)!.may).not.toContain('summer-heating');
    // Of days that were all above 10 °C nothing is said of the cold, nor where fewer than six of sixty were not.
    const kindOf = ([warmer, colder]: readonly [number, number]) =>
      warm((below) => 0.5 + below, warmer, colder)!.seen.kind;
    expect(
      (
        [
          [10, 10],
          [10.1, 10],
          [10, 6],
          [10, 5],
        ] as const
      ).map(kindOf),
    ).toEqual(['with-the-cold', 'unclear', 'with-the-cold', 'unclear']);
  });
  test('its cost is that of its own hours: at 30 p by day where all are bought at 26.25 p', () => {
    const version: TariffVersion = {
      from: '2025-01-01',
      standingPencePerDay: 50,
      vat: { rate: 0.05, included: true },
      bands: [
        { name: 'night', pencePerKWh: 15, times: [{ from: '00:00', to: '06:00' }] },
        { name: 'day', pencePerKWh: 30, times: 'rest' },
      ],
    };
    // Since day 60 all use is by day: 30 p. Before it a quarter is by night.
    const made = daysOf(
      120,
      (day, hour) => {
        const kWh = 5 + below(day) + swing(Math.floor(day / 6), 0.05) + (day >= 60 ? 2 : 0);
        return day < 60 ? kWh / 24 : hour < 6 ? 0 : kWh / 18;
      },
      { outdoorC: (day) => COLD[day % 6]! },
    );
    const [finding] = findBehaviour(made, { ...prices, versions: [version] });
    const [before, since] = [60 * 11, 60 * 13];
    const mean = (before * 26.25 + since * 30) / (before + since);
    expect(finding!.pence).toBeCloseTo(120 * 25 * (30 / mean), 6);
  });
  describe('a mild day that takes no more than warm ones is one on which nobody has switched the heating on', () => {
    /** 2 kWh a day more since day 60; day 110 at so many °C takes so many kWh. */
    const found = (celsius: number, kWh: number) => {
      const outdoorC = (day: number) => (day === 110 ? celsius : COLD[day % 6]!);
      const perDay = (day: number) => 5 + Math.max(0, 15 - outdoorC(day)) + swing(Math.floor(day / 6), 0.01);
      const kW = (day: number) => (day === 110 ? kWh : perDay(day) + (day < 60 ? 0 : 2)) / 24;
      return findBehaviour(daysOf(120, kW, { outdoorC }), prices)[0]!.kWh;
    };
    // Left out it leaves 59 days of 2 kWh more; else it counts against 5 kWh and 1 for each degree below 15 °C.
    const counted = (celsius: number, kWh: number) => 118 + kWh - 5 - (15 - celsius);
    test.each([
      ['10 °C, less than three tenths of five degrees over 7 kWh', 10, 8.4, false],
      ['more', 10, 8.6, true],
      ['8 °C', 8, 7, false],
      ['below 8 °C', 7.9, 7, true],
      ['two degrees', 13, 7.2, false],
      ['less than two', 13.1, 7.2, true],
    ])('%s', (_, celsius, kWh, isCounted) => {
      const expected = isCounted ? counted(celsius, kWh) : 118;
      expect(Math.abs(found(celsius, kWh) - expected)).toBeLessThan(0.1);
    });
  });
  test('the less clear it is, the less sure', () => {
    const made = daysOf(120, (day) => (5 + below(day) + swing(day, 1.5) + (day >= 60 ? 2 : 0)) / 24, {
      outdoorC: (day) => COLD[day % 6]!,
    });
    const use = Array.from(made.dayKWh);
    const x = Array.from(coldLine(use, made.outdoorC).below);
    const [before, after] = [textbook(x.slice(0, 60), use.slice(0, 60)), textbook(x.slice(60), use.slice(60))];
    const left = before.sse + after.sse;
    const f = (textbook(x, use).sse - left) / 2 / (left / 116);
    const [finding] = findBehaviour(made, prices);
    expect(finding!.from).toBe(addDays(FIRST, 60));
    expect(finding!.sure).toBeCloseTo(0.6 + f / 200 + Number(finding!.seen.share) / 2, 9);
  });
  test('a whole year of days says the difference for all its seasons; fewer only that of the days since', () => {
    // Colder days since: more of what grows with the cold than a year has.
    const outdoorC = (day: number) => COLD[day % 6]! + (day < 200 ? 3 : -1);
    for (const count of [330, 329]) {
      const made = daysOf(
        count,
        (day) => (5 + Math.max(0, 15 - outdoorC(day)) * (day < 200 ? 1 : 1.4) + swing(day, 0.3)) / 24,
        { outdoorC },
      );
      const use = Array.from(made.dayKWh);
      const x = Array.from(coldLine(use, made.outdoorC).below);
      const [before, after] = [textbook(x.slice(0, 200), use.slice(0, 200)), textbook(x.slice(200), use.slice(200))];
      const since = use.slice(200).reduce((sum, kWh, i) => sum + kWh - before.at(x[200 + i]!), 0);
      const ofYear = x.reduce((sum, value) => sum + after.at(value) - before.at(value), 0);
      const [finding] = findBehaviour(made, prices);
      expect(finding).toMatchObject({ grade: count === 330 ? 'estimated' : 'assumed', kWh: close(since, 6) });
      expect(finding!.kWhYear).toBeCloseTo(count === 330 ? (ofYear * 365) / 330 : since, 6);
    }
  });
});

describe('dear hours', () => {
  const version: TariffVersion = {
    from: '2025-01-01',
    standingPencePerDay: 50,
    vat: { rate: 0.05, included: true },
    bands: [
      { name: 'morning', pencePerKWh: 10, times: [{ from: '00:00', to: '12:00' }] },
      { name: 'evening', pencePerKWh: 30, times: 'rest' },
    ],
  };
  interface Moved {
    readonly count?: number;
    readonly at?: number;
    readonly moved?: (day: number) => number;
    readonly by?: number;
    readonly half?: (day: number) => number;
    readonly outdoorC?: (day: number) => number;
    readonly none?: readonly number[];
  }
  /** 10 kWh a day, half before noon; `moved` kWh of them to the evening cost 20 p each. 20 p is the plain mean. */
  const find = ({
    count = 80,
    at = 40,
    moved = () => 3,
    by = 0.1,
    half = () => 5,
    outdoorC,
    none = [],
  }: Moved = {}) => {
    const days = daysOf(
      count,
      (day, hour) => {
        const more = swing(day, by) + (day >= at ? moved(day) : 0);
        if (none.includes(day)) return 0;
        return hour >= 3 && hour < 4 ? half(day) - more : hour >= 15 && hour < 16 ? half(day) + more : 0;
      },
      { minutes: 60, ...(outdoorC && { outdoorC }) },
    );
    return findDearHours(days, { ...prices, versions: [version] });
  };
  test('3 kWh a day moved: 60 p of 200', () => {
    expect(find()).toMatchObject([
      {
        code: 'dear-hours',
        from: addDays(FIRST, 40),
        to: addDays(FIRST, 80),
        sure: close(0.9),
        grade: 'assumed',
        seen: { share: close(0.3), pencePerDay: close(60) },
        kWh: 0,
        pence: close(2400, 6),
        kWhYear: 0,
        penceYear: close(21_900, 6),
      },
    ]);
    expect(find({ by: 1.5 })[0]!.sure).toBeCloseTo(0.6 + swingT(60, 40, 30) / 60, 9);
    expect(find({ outdoorC: () => 20 })[0]!.grade).toBe('estimated');
    expect(find({ outdoorC: (day) => (day === 7 ? Number.NaN : 20) })[0]!.grade).toBe('assumed');
  });
  test('that more is used since is no dear hour of itself: 60 p of 280', () => {
    expect(find({ half: (day) => (day < 40 ? 5 : 7) })).toMatchObject([
      { seen: { share: close(60 / 280), pencePerDay: close(60) }, pence: close(2400, 6) },
    ]);
  });
  test('days without use are no days', () => {
    const [finding] = find({ count: 82, none: [3, 8, 40, 51, 62, 81], at: 41 });
    expect(finding).toMatchObject({ from: addDays(FIRST, 41), to: addDays(FIRST, 81) });
    expect(finding!.pence / Number(finding!.seen.pencePerDay)).toBeCloseTo(38, 9);
    expect(finding!.penceYear).toBeCloseTo((finding!.pence * 365) / 40, 6);
  });
  const cold = (day: number) => (day < 40 ? 5 + ((day * 3) % 11) : 3 + ((day * 3) % 11));
  const withCold = (day: number) => 0.3 * Math.max(0, 15.5 - cold(day));
  test.each([
    ['5.2 % dearer', { moved: () => 0.52, by: 0.01 }, 1],
    ['4.8 %', { moved: () => 0.48, by: 0.01 }, 0],
    ['cheaper', { moved: () => -3 }, 0],
    ['six weeks', { count: 42, at: 21 }, 1],
    ['a day less', { count: 41, at: 21 }, 0],
    ['more on colder days', { at: 0, moved: withCold, outdoorC: cold }, 0],
    ['more on days as cold', { moved: () => 2, outdoorC: cold }, 1],
  ] as [string, Moved, number][])('%s', (_, change, count) => expect(find(change)).toHaveLength(count));
  test('without a tariff nothing is dear', () => {
    expect(
      findDearHours(
        daysOf(80, () => 1),
        prices,
      ),
    ).toEqual([]);
  });
});

describe('a meter that counts otherwise, in cold days alone', () => {
  const outdoorC = (day: number) => (day * 5) % 11;
  /** 50 W of standby between runs of 2 kW that are longer the colder it is; `heat` and `count` since day 60. */
  const find = (heat: number, count: number) =>
    findMeterScale(
      daysOf(
        120,
        (day, hour) => {
          const since = day >= 60;
          const runs = hour % 4 < 0.12 * (14 - outdoorC(day)) * (since ? heat : 1);
          return (0.05 + (runs ? 2 : 0)) * (since ? count : 1);
        },
        { outdoorC },
      ),
      prices,
    )[0];
  test('standby, middle and top twice as high: the meter', () => {
    const found = find(1, 2)!;
    expect(found).toMatchObject({ code: 'meter-scale', from: addDays(FIRST, 60), seen: { times: close(2) } });
  });
  test.each([
    ['heat half as much again, which leaves standby and power as they are', 1.5, 1],
    ['a third more counted, which a house may do', 1, 1.4],
    ['nothing', 1, 1],
  ])('%s: no', (_, heat, count) => expect(find(heat, count)).toBeUndefined());
});

describe('hot water on warm days', () => {
  /** Standby of 100 W, and an hour of `kW` at each of these hours. */
  const find = (
    hours: (day: number) => readonly number[],
    kW = 1.6,
    outdoorC: (day: number) => number = () => 16.5,
    count = 12,
  ) => {
    const days = daysOf(
      count,
      (day, hour) => (hours(day).some((start) => hour >= start && hour < start + 1) ? kW : 0.1),
      { outdoorC },
    );
    return { cycles: waterCycles(days), finding: findWaterOften(days, prices)[0] };
  };
  const FOUR = [6, 11, 15, 19];
  test('four times an hour at 1.6 kW: 6 kWh a day over the standby', () => {
    const { finding } = find(
      () => FOUR,
      1.6,
      (day) => (day === 0 || day === 11 ? 16.4 : 16.5),
    );
    expect(finding).toMatchObject({
      code: 'water-often',
      from: addDays(FIRST, 1),
      to: addDays(FIRST, 11),
      sure: close(0.5 + 0.5 / 6),
      seen: { cyclesPerDay: 4, kWhPerDay: close(6), days: 10 },
      kWh: close(60),
      pence: close(1500),
      may: ['water-often', 'summer-heating', 'more-water'],
      kWhYear: close(60),
      penceYear: close(1500),
    });
    const five = find(() => [...FOUR, 22]).finding!;
    expect(five.sure).toBeCloseTo(0.75, 9);
    expect(five.may).toEqual(['water-often', 'summer-heating']);
  });
  test.each([
    ['three and four times', (day: number) => FOUR.slice(day % 2), 1.6, 12, 3.5],
    ['0.31 kW over the standby is running', () => FOUR, 0.41, 12, 4],
    ['0.29 kW is not', () => FOUR, 0.39, 12, 0],
    ['ten warm days', () => FOUR, 1.6, 10, 4],
    ['nine warm days', () => FOUR, 1.6, 9, undefined],
  ])('%s', (_, hours, kW, count, perDay) => {
    const { cycles, finding } = find(hours, kW, () => 16.5, count);
    expect(cycles?.perDay).toBe(perDay);
    expect(finding !== undefined).toBe((perDay ?? 0) >= 3.5);
  });
  test('a day after one below 15.5 °C is none of them: ten days are left, or nine', () => {
    const after = (celsius: number) =>
      find(
        () => FOUR,
        1.6,
        (day) => (day === 0 ? celsius : 16.5),
        11,
      ).cycles?.days.length;
    expect([15.5, 15.4].map(after)).toEqual([10, undefined]);
  });
  test('starts of cool nights are of heating that is nearly over', () => {
    expect(find(() => [1, 3, 5, 7, 12]).finding).toBeUndefined();
    // Only on the cooler half of the warm days.
    const cool = (day: number) => (day < 6 ? 16.6 : 19);
    expect(find((day) => (day < 6 ? FOUR : [12]), 1.6, cool).finding).toBeUndefined();
    expect(find((day) => (day < 6 ? [12] : FOUR), 1.6, cool).cycles!.perDay).toBe(4);
  });
  test('a day of twice as much moves the middle little; the house’s meter does not show the cylinder', () => {
    expect(find((day) => (day === 4 ? [0, 3, 6, 9, 12, 15, 18, 21] : FOUR)).cycles!.kWhPerDay).toBeCloseTo(6, 9);
    const house = daysOf(20, () => 1, { meter: 'whole-house', outdoorC: () => 20 });
    expect(waterCycles(house)).toBeNull();
  });
  test('a cycle of two hours is one, and one over midnight counts on both days', () => {
    const long = daysOf(12, (_, hour) => (hour < 1 || (hour >= 9 && hour < 11) || hour >= 23 ? 2 : 0.1), {
      outdoorC: () => 20,
    });
    expect(waterCycles(long)!.perDay).toBe(3);
  });
});

describe('nights let go cold', () => {
  interface Night {
    readonly night?: number;
    readonly morning?: number;
    readonly scale?: number;
    readonly hours?: readonly [nightFrom: number, nightTo: number, morningFrom: number, morningTo: number];
    readonly evening?: number;
    readonly coldC?: number;
    readonly warmC?: number;
    readonly coldDays?: number;
    readonly warmDays?: number;
    readonly meter?: MeterDays['meter'];
    readonly other?: number;
  }
  /** Heat of `scale` kW all day, a share of it in the night and a multiple in the morning; beside it hot water. */
  const find = (change: Night = {}) => {
    const {
      night = 0.2,
      morning = 2.2,
      scale = 1,
      hours = [0, 5, 5, 8],
      evening = 1,
      coldC = 8.9,
      warmC = 17,
    } = change;
    const { coldDays = 15, warmDays = 15, meter = 'heat-pump', other = 0.2 } = change;
    const shape = (hour: number) =>
      hour >= hours[0] && hour < hours[1]
        ? night
        : hour >= hours[2] && hour < hours[3]
          ? morning
          : hour >= 16
            ? evening
            : 1;
    const days = daysOf(coldDays + warmDays, (day, hour) => other + (day < coldDays ? scale * shape(hour) : 0), {
      meter,
      outdoorC: (day) => (day < coldDays ? coldC : warmC),
    });
    return findNightSetback(days)[0];
  };
  test('rooms heated all night beside summer nights that are heated too are none; nights that do not grow with the cold are', () => {
    // 0 to 8 °C for sixty days, 0.1 kW a degree below 10 °C; twenty days of 20 °C with 0.5 kW in their nights.
    const outdoorC = (day: number) => (day < 60 ? (day * 5) % 9 : 20);
    const found = (night: number, summerNight: number, morning = 2.2) => {
      const days = daysOf(
        80,
        (day, hour) => {
          if (day >= 60) return hour < 5 ? summerNight : 0;
          const shape = hour < 5 ? night : hour < 8 ? morning : 1;
          return 0.1 * (10 - outdoorC(day)) * shape;
        },
        { outdoorC },
      );
      return findNightSetback(days).length;
    };
    expect(found(1, 0.5)).toBe(0);
    expect(found(0.3, 0)).toBe(1);
    expect(found(0.3, 0.5)).toBe(1);
    expect(found(0.65, 0.2)).toBe(0);
    // Without a morning that makes up for it a night rests with a quarter of the day’s power, 0.6 kW in the middle.
    expect([0.24, 0.28].map((night) => found(night, 0, 1))).toEqual([1, 0]);
  });
  test('its shares, units and likelihood, hot water taken out', () => {
    expect(find()).toMatchObject({
      code: 'night-setback',
      from: FIRST,
      to: addDays(FIRST, 15),
      grade: 'estimated',
      seen: { nightShare: close(0.2), morningShare: close(2.2), days: 15, recoveryKWhPerDay: close(6.6) },
      // What the cool night saves is not known, so neither is the cost.
      kWh: 0,
      pence: 0,
      penceYear: 0,
    });
    expect(find({ night: 0.5, morning: 1.8, scale: 0.5 })!.sure).toBeCloseTo(0.5 + 0.05 / 2 + 0.3 / 3, 9);
  });
  test.each([
    ['a night of 55 %', { night: 0.549 }, true],
    ['more', { night: 0.551 }, false],
    ['a morning of 150 %', { morning: 1.501 }, true],
    ['less', { morning: 1.499 }, false],
    ['150 W of heating', { scale: 0.151 }, true],
    ['too little', { scale: 0.149 }, false],
    ['9 °C', { coldC: 9 }, false],
    ['15 cold days', { coldDays: 15 }, true],
    ['14 cold days', { coldDays: 14 }, false],
    ['the house, 15 warm days', { meter: 'whole-house', warmC: 16.6 }, true],
    ['the house, 16.5 °C', { meter: 'whole-house', warmC: 16.5 }, false],
    ['the house, 14 warm days', { meter: 'whole-house', warmDays: 14 }, false],
  ] as [string, Night, boolean][])('%s', (_, change, isFound) => expect(find(change) !== undefined).toBe(isFound));
  test.each([
    // The lowest three hours before five, the highest two between half past four and ten.
    ['night from half past two', { hours: [2.5, 5.5, 6, 9] }, [(0.5 + 2.5 * 0.2) / 3, 2.2, 6.6]],
    ['two hours of night', { hours: [0, 2, 6, 9] }, [(2 * 0.2 + 1) / 3, 2.2, 6.6]],
    ['morning until after ten', { hours: [0, 5, 8.5, 10.5] }, [0.2, (0.5 + 1.5 * 2.2) / 2, 1.5 * 2.2]],
    ['morning before half past four', { hours: [0, 4, 4, 6] }, [0.2, (0.5 + 1.5 * 2.2) / 2, 1.5 * 2.2]],
    // From ten to four 1 kW, from four to ten at night 2 kW: the middle of the day is 1.5 kW.
    ['the middle of ten to ten', { evening: 2, morning: 3.3 }, [0.2 / 1.5, 3.3 / 1.5, 9.9]],
    ['fewer than 15 warm days: hot water stays in', { warmDays: 14 }, [0.4 / 1.2, 2.4 / 1.2, 7.2]],
    ['no heat at night is nought, not less', { night: -0.1 }, [0, 2.2, 6.6]],
  ] as [string, Night, number[]][])('%s', (_, change, shares) => {
    const { nightShare, morningShare, recoveryKWhPerDay } = find(change)!.seen;
    expect([nightShare, morningShare, recoveryKWhPerDay]).toEqual(shares.map((share) => close(share)));
  });
});

describe('all of them', () => {
  const heater = (day: number, hour: number) => (day >= 10 && day < 30 && hour >= 2 && hour < 4 ? 3 : 0);
  const charge = (_: number, hour: number) => (hour >= 20 && hour < 22 ? 7 : 0);
  const machine = readingsOf(60, (day, hour) => 0.1 + heater(day, hour));
  const house = readingsOf(60, (day, hour) => 0.3 + heater(day, hour) + charge(day, hour), { meter: 'whole-house' });
  const found = (readings: Parameters<typeof findInReadings>[0]['readings']) =>
    findInReadings({ readings, outdoor: outdoor(60), prices }).map(({ code, meter }) => [code, meter]);
  test('the dearest first; what the machine’s meter shows is not named twice', () => {
    expect(found([machine, house])).toEqual([
      ['large-load', 'whole-house'],
      ['heater-running', 'heat-pump'],
    ]);
    expect(found([house])).toEqual([
      ['large-load', 'whole-house'],
      ['heater-running', 'whole-house'],
    ]);
    expect(found([machine])).toEqual([['heater-running', 'heat-pump']]);
  });
  test('a heater left on is no change of habits', () => {
    const readings = readingsOf(120, (day, hour) => heating(day, hour) + (day >= 60 && hour >= 2 && hour < 5 ? 3 : 0));
    const codes = findInReadings({ readings: [readings], outdoor: outdoor(120), prices }).map(({ code }) => code);
    expect(codes).toEqual(['heater-running']);
  });
});

test('the working of a finding: what was seen with its units, the days, and the cost', () => {
  const finding = {
    code: 'heater-running',
    meter: 'heat-pump',
    from: '2026-01-08',
    to: '2026-02-19',
    sure: 0.9,
    grade: 'estimated',
    seen: { powerKW: 3, riseW: 150, likelyKWh: 40, hours: 84, days: 42, share: 0.2, until: '2026-02-01' },
    kWh: 250,
    pence: 7000,
    kWhYear: 2190,
    penceYear: 61_320,
    ask: [],
    check: [],
    cautions: [],
  } as const;
  const { inputs, result } = findingWorking({ ...finding, ask: [], check: [], cautions: [] });
  expect(inputs.map(({ value, unit }) => [value, unit])).toEqual([
    [3, 'kW'],
    [150, 'W'],
    [40, 'kWh'],
    [84, 'h'],
    [42, tell('days')],
    [0.2, ''],
    ['2026-02-01', ''],
    [42, tell('days')], // 8 January to 18 February
    [250, 'kWh'],
    [28, 'p/kWh'],
    [2190, 'kWh'],
    [61_320, 'pence'],
  ]);
  expect(inputs.every(({ grade }) => grade === 'estimated')).toBe(true);
  expect(inputs[1]!.name).toEqual(tell('seen-riseW'));
  const other = findingWorking({ ...finding, seen: { unheardOf: 3 }, ask: [], check: [], cautions: [] });
  expect(other.inputs[0]!.name).toEqual(tell('seen-amount', { field: 'unheardOf' }));
  expect(result).toEqual({ value: 7000, unit: 'pence' });
  // Without units there is no price of one.
  const dear = findingWorking({ ...finding, code: 'dear-hours', kWh: 0, ask: [], check: [], cautions: [] });
  expect(dear.inputs.map(({ unit }) => unit)).not.toContain('p/kWh');
  const formulaOf = (change: { kWh?: number; pence?: number }) =>
    findingWorking({ ...finding, ...change, ask: [], check: [], cautions: [] }).formula;
  expect([{}, { kWh: 0 }, { kWh: 0, pence: 0 }].map(formulaOf)).toEqual([
    tell('units-by-price-and-year'),
    tell('paid-less-before'),
    tell('amount-not-known'),
  ]);
  const titles = [-5, 5, 0].map(
    (kWh) => findingWorking({ ...finding, code: 'behaviour-changed', kWh, ask: [], check: [], cautions: [] }).title,
  );
  const [less, changed] = [tell('found-less-used'), tell('found-behaviour-changed')];
  expect(titles).toEqual([less, changed, changed]);
});
