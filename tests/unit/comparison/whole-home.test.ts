/** Prices that hang on the whole home's use: steps that other electricity fills first, and a charge on the highest half-hour. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { askAboutHome } from '../../../src/model/comparison/ask-about-home.ts';
import { dayShares, splitByBlocks } from '../../../src/model/comparison/block-uses.ts';
import { partWorking } from '../../../src/model/comparison/part-working.ts';
import { planSystems } from '../../../src/model/comparison/plan-systems.ts';
import type { PowerCharge } from '../../../src/model/comparison/power-charge.ts';
import { heaviestOf, heaviestOfSlots, powerCharge } from '../../../src/model/comparison/power-charge.ts';
import { createPricer } from '../../../src/model/comparison/price-plan.ts';
import { choosePrices, type TariffInUse } from '../../../src/model/comparison/prices-of.ts';
import type { RestOfHome } from '../../../src/model/comparison/rest-of-home.ts';
import { restBySlot, restOfHome } from '../../../src/model/comparison/rest-of-home.ts';
import { monthsOf, type Rates, ratesOf, totalOf, type Use } from '../../../src/model/comparison/uses.ts';
import { reckonMachine } from '../../../src/model/heat-pump/spf-from-factors.ts';
import type { Series } from '../../../src/model/shapes/evidence.ts';
import { emptyHousehold, type Household } from '../../../src/model/shapes/household.ts';
import type { TariffBand, TariffVersion } from '../../../src/model/shapes/tariff.ts';
import { tell } from '../../../src/model/shapes/told.ts';
import { rateBuckets } from '../../../src/model/tariff/slot-price.ts';
import { STEADY_HEATING } from '../../../src/model/year/day-profiles.ts';
import { shareOut } from '../../../src/model/year/share-out.ts';
import { reference, referenceOf } from '../../../src/reference/index.ts';
import { sayTold } from '../../../src/words/say-told.ts';
import { EVERY_WAY } from '../appraisal/make-household.ts';
import { allHours, tariff, version } from '../tariff/tariffs.ts';
import { compareBy, makeDemand, SLOTS_2026, SPACE_SHARE } from './make-demand.ts';

const DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);

/** A year of electricity, the same each day; its highest half-hours 1 kWh all day and 2 kWh at 18:00, unless told otherwise. */
function electricity(perDayKWh: number, change: Partial<Series> = {}): Series {
  return {
    id: 's',
    evidenceId: 'e',
    name: 'electricity',
    carrier: 'electricity',
    role: 'import',
    resolution: 'interval',
    intervalMinutes: 30,
    from: '2025-01-01',
    to: '2026-01-01',
    total: perDayKWh * 365,
    days: { first: '2025-01-01', values: new Array<number>(365).fill(perDayKWh) },
    dayPeaks: Array.from({ length: 12 }, () => Array.from({ length: 48 }, (_, half) => (half === 36 ? 2 : 1))),
    dayStray: new Array<number>(48).fill(0),
    present: 17_520,
    expected: 17_520,
    estimatedCount: 0,
    ...change,
  };
}
const home = (change: Partial<Household> = {}, one?: TariffVersion): Household => ({
  ...emptyHousehold('h', 'Home'),
  ...change,
  ...(one ? { tariffs: [tariff([one])], prices: { electricityTariffId: 't' } } : {}),
});
const WINTER = [17, 15, 12, 8, 4, 2, 1.5, 1.5, 3, 8, 12, 16];
/** One way of heating priced in a home of which the rest is known, whatever its own record says. */
function comparePriced(household: Household, rest: RestOfHome, id: string) {
  const demand = makeDemand(10_000, 2000);
  const prices = choosePrices({ household, reference, asOf: '2026-11-25' });
  const machine = reckonMachine({ household, demand, reference });
  const { plans } = planSystems({ household, demand, machine, prices, reference }, []);
  const homeKWh = restBySlot(rest, SLOTS_2026, reference.homeHours);
  const price = createPricer({ slots: SLOTS_2026, spaceShare: SPACE_SHARE, demand, home: rest, homeKWh }, prices);
  return price(plans.find((plan) => plan.id === id)!);
}
const bySystem = (household: Household, series: readonly Series[]) =>
  compareBy({ ...household, beside: EVERY_WAY }, makeDemand(10_000, 2000), { series });

describe('the days of the week of other electricity', () => {
  const gas = home({ present: { system: 'gas-condensing' } });
  // 1 January 2025 is a Wednesday: 7 kWh on Saturdays and Sundays, 14 on Mondays, 10 else; 68 kWh a week.
  const ofDay = (day: number) => [10, 10, 10, 7, 7, 14, 10][day % 7]!;
  const record = (count: number) =>
    restOfHome(gas, [
      electricity(0, { days: { first: '2025-01-01', values: Array.from({ length: count }, (_, i) => ofDay(i)) } }),
    ]);
  test('each over the mean, where the record has forty of each', () => {
    const mean = (52 * 68 + 10) / 365;
    expect(record(365).weekdays).toEqual([14, 10, 10, 10, 10, 7, 7].map((kWh) => expect.closeTo(kWh / mean, 9)));
    expect([record(303).weekdays === undefined, record(280).weekdays, record(299).grade]).toEqual([
      false,
      undefined,
      'assumed',
    ]);
  });
  test('bills and months say nothing of them; nothing used is alike on all', () => {
    const periods = DAYS.map((_, month) => ({
      from: `2025-${String(month + 1).padStart(2, '0')}-01`,
      to: month === 11 ? '2026-01-01' : `2025-${String(month + 2).padStart(2, '0')}-01`,
      kWh: 310,
      quality: 'actual' as const,
    }));
    const billed = restOfHome(gas, [electricity(0, { days: undefined, resolution: 'period', periods })]);
    expect([billed.grade, billed.weekdays]).toEqual(['measured', undefined]);
    expect(restOfHome(gas, [electricity(0)]).weekdays).toEqual(new Array(7).fill(1));
  });
});

describe('other electricity', () => {
  test.each<[string, Household['present'], readonly Series[], string, number | null]>([
    ['a record beside a boiler', { system: 'gas-condensing' }, [electricity(8)], 'measured', 2920],
    ['none', { system: 'oil' }, [], 'assumed', null],
    [
      'too short a record',
      { system: 'oil' },
      [electricity(8, { days: { first: '2025-01-01', values: [8, 8] } })],
      'assumed',
      null,
    ],
    ['heating on the same meter', { system: 'storage' }, [electricity(40)], 'assumed', null],
    ['hot water on the same meter', { system: 'oil', hotWaterFrom: 'immersion' }, [electricity(14)], 'assumed', null],
    ['what is sent out', { system: 'oil' }, [electricity(9, { role: 'export' })], 'assumed', null],
  ])('%s', (_, present, series, grade, kWh) => {
    const rest = restOfHome(home({ present }), series);
    expect(rest.grade).toBe(grade);
    if (kWh !== null) expect(sum(rest.monthlyKWh)).toBeCloseTo(kWh, 6);
    if (kWh !== null) expect(rest.monthlyKWh[1]).toBeCloseTo(28 * 8, 9);
  });
  test('as usual: 231 (3 people × 100 m²)^0.4714 is 3,401 kWh a year, most of it in January', () => {
    const three = {
      floorAreaM2: { value: 100, grade: 'measured', origin: '' },
      people: { value: 3, grade: 'measured', origin: '' },
    } as const;
    const { monthlyKWh } = restOfHome(home({ home: three }), []);
    expect(sum(monthlyKWh)).toBeCloseTo(231 * 300 ** 0.4714, 6);
    expect(monthlyKWh.indexOf(Math.max(...monthlyKWh))).toBe(0);
  });
});

describe('what a record says of a year', () => {
  const boiler = home({ present: { system: 'gas-condensing' } });
  const daysFrom = (first: string, values: readonly number[]) =>
    electricity(0, { days: { first, values: [...values] } });
  const months = (...series: Series[]) => restOfHome(boiler, series);
  test.each([
    [299, 'assumed'],
    [300, 'measured'],
  ])('%i days: %s', (days, grade) => {
    const rest = months(daysFrom('2025-01-01', new Array<number>(days).fill(8)));
    expect(rest.grade).toBe(grade);
    if (grade === 'measured') expect(sum(rest.monthlyKWh)).toBeCloseTo(8 * 365, 6);
  });
  test.each([
    // 300 days of 1 to 8 kWh: ten of October are enough to say 12 kWh a day, nine are not.
    [9, (273 * 8 + 9 * 12 + 31 * 8) / (273 + 9 + 31)],
    [10, 12],
  ])('October known by %i days', (known, perDay) => {
    const values = [...new Array<number>(273).fill(8), ...new Array<number>(known).fill(12)];
    const december = daysFrom('2025-01-01', [
      ...values,
      ...new Array<number>(61 + 31 - known - 31).fill(Number.NaN),
      ...new Array<number>(31).fill(8),
    ]);
    expect(months(december).monthlyKWh[9]! / 31).toBeCloseTo(perDay, 6);
  });
  test('of two years the later one', () => {
    const two = daysFrom('2024-01-01', [...new Array<number>(366).fill(20), ...new Array<number>(365).fill(8)]);
    expect(months(two).monthlyKWh).toEqual(DAYS.map((days) => expect.closeTo(8 * days, 6)));
  });
  test.each<[string, Household['present'], boolean]>([
    ['a boiler', { system: 'oil' }, true],
    ['a boiler and electric heaters', { system: 'oil', otherHeat: 'electric heaters' }, false],
    ['a boiler and a wood stove', { system: 'oil', otherHeat: 'wood stove' }, true],
    ['a heat pump', { system: 'heat-pump' }, false],
    ['nobody knows what', { system: 'other' }, false],
  ])('beside %s the meter tells of the rest alone: %s', (_, present, known) => {
    const rest = restOfHome(home({ present }), [electricity(8)]);
    expect([rest.grade, rest.peaks.known]).toEqual(known ? ['measured', true] : ['assumed', false]);
  });
  test('highest half-hours: a month without readings takes the highest of the others', () => {
    const shape = (most: number) => Array.from({ length: 48 }, (_, half) => (half === 36 ? most : 0.1));
    const dayPeaks = DAYS.map((_, month) => (month === 6 ? new Array<number>(48).fill(0) : shape(month === 2 ? 5 : 2)));
    const { peaks } = restOfHome(boiler, [electricity(8, { dayPeaks })]);
    if (!peaks.known) throw new Error(peaks.why);
    expect(peaks.months).toBe(11);
    expect([peaks.kWh[0]![36], peaks.kWh[2]![36], peaks.kWh[6]![36], peaks.kWh[6]![0]]).toEqual([2, 5, 5, 0.1]);
    const nothing = DAYS.map(() => new Array<number>(48).fill(0));
    expect(restOfHome(boiler, [electricity(8, { dayPeaks: nothing })]).peaks).toEqual({
      known: false,
      why: 'no-half-hours',
    });
  });
  test('as usual by month: days × (1 + 0.157 cos(2π (m − 1.78) / 12)), SAP 10.2 Appendix L, from memory', () => {
    const three = { people: { value: 3, grade: 'measured', origin: '' } } as const;
    const { monthlyKWh } = restOfHome(home({ home: three }), []);
    const weights = DAYS.map((days, i) => days * (1 + 0.157 * Math.cos((2 * Math.PI * (i + 1 - 1.78)) / 12)));
    // 90 m² where no floor area is typed.
    expect(monthlyKWh).toEqual(
      weights.map((weight) => expect.closeTo((231 * (3 * 90) ** 0.4714 * weight) / sum(weights), 6)),
    );
    const bySize = sum(
      restOfHome(home({ home: { floorAreaM2: { value: 90, grade: 'measured', origin: '' } } }), []).monthlyKWh,
    );
    // People of 90 m² by SAP 10.2: 1 + 1.76 (1 − e^(−0.000349 × 76.1²)) + 0.0013 × 76.1.
    const people = 1 + 1.76 * (1 - Math.exp(-0.000349 * 76.1 ** 2)) + 0.0013 * 76.1;
    expect(bySize).toBeCloseTo(231 * (people * 90) ** 0.4714, 6);
  });
});

test('a German home without a meter has its Saturdays and Sundays as published', () => {
  const german = referenceOf({ country: 'DE' });
  const [saturday, sunday] = german.homeHours.weekend!.map((months) => months[0]!);
  const working = german.homeHours.byMonth[0]!;
  const steady = { ...restOfHome(home({}), []), stray: new Array<number>(48).fill(0) };
  const kWh = restBySlot({ ...steady, monthlyKWh: DAYS }, SLOTS_2026, german.homeHours);
  const ofDay = (day: number) => kWh.slice(day * 48, (day + 1) * 48);
  // 1 January 2026 is a Thursday; 31 kWh over 22 working days, 5 Saturdays and 4 Sundays.
  const unit = 31 / (22 * sum(working) + 5 * sum(saturday!) + 4 * sum(sunday!));
  expect([...ofDay(0)].map((one, half) => one - working[half]! * unit).every((one) => Math.abs(one) < 1e-9)).toBe(true);
  expect(sum([...ofDay(2)])).toBeCloseTo(sum(saturday!) * unit, 9);
  expect(ofDay(3)[24]).toBeCloseTo(sunday![24]! * unit, 9);
});

test('the part of a day in its month, alike where a month has none', () => {
  const days = Float64Array.from({ length: 365 }, (_, day) => (day < 31 ? day : 0));
  const shares = dayShares(days, SLOTS_2026);
  // 0 + 1 + … + 30 are 465.
  expect([shares[0], shares[30], shares[31], shares[364]]).toEqual([0, 30 / 465, 1 / 28, 1 / 31]);
});

describe('days of a home that are not alike', () => {
  const steady = { ...restOfHome(home({}), []), stray: new Array<number>(48).fill(0) };
  const mean = restBySlot(steady, SLOTS_2026, reference.homeHours);
  const stray = restBySlot({ ...steady, stray: new Array<number>(48).fill(0.8) }, SLOTS_2026, reference.homeHours);
  const of = (kWh: Float64Array, half: number) =>
    [...kWh].filter((_, i) => SLOTS_2026.minute[i] === half * 30 && SLOTS_2026.month[i] === 4);

  test('keep what each half-hour of the day comes to in each month', () => {
    for (const half of [3, 24, 36]) expect(sum(of(stray, half))).toBeCloseTo(sum(of(mean, half)), 9);
    expect(sum([...stray])).toBeCloseTo(sum([...mean]), 8);
  });
  test('stray by as much as is said', () => {
    const kinds = Map.groupBy(SLOTS_2026.minute.keys(), (i) =>
      [SLOTS_2026.month[i], SLOTS_2026.minute[i], SLOTS_2026.weekday[i]! < 5].join(),
    );
    const logs = [...kinds.values()].map((ofKind) => ofKind.map((i) => Math.log(stray[i]! / mean[i]!)));
    const squares = logs.flatMap((ofKind) => ofKind.map((one) => (one - sum(ofKind) / ofKind.length) ** 2));
    // Of a normal spread of logarithms: ln(1 + 0.8²) is their variance.
    expect(sum(squares) / (squares.length - kinds.size)).toBeCloseTo(Math.log(1.64), 1);
  });
  test('take the use of the same weekday 52 weeks before, where the meter shows it', () => {
    const values = Array.from({ length: 365 }, (_, day) => (day === 40 ? 24 : 8));
    const own = electricity(8, { days: { first: '2025-01-01', values } });
    const rest = restOfHome(home({ present: { system: 'gas-condensing' } }), [own]);
    const kWh = restBySlot(rest, SLOTS_2026, reference.homeHours);
    const ofDay = (day: number) => sum([...kWh.slice(SLOTS_2026.dayStart[day]!, SLOTS_2026.dayStart[day + 1]!)]);
    // 10 February 2025 is a Monday, as is 9 February 2026: 24 kWh of the month’s 240, and 8 on each other day.
    expect(ofDay(39)).toBeCloseTo(24, 6);
    expect([ofDay(38), ofDay(40)]).toEqual([expect.closeTo(8, 6), expect.closeTo(8, 6)]);
  });
  test('of a meter that was read by the day for some weeks only stand beside usual ones as they are', () => {
    // Ten months billed at 8 kWh a day; then 1 to 20 November read by the day, the same 8 kWh but for one day of 24.
    const days = Array.from({ length: 20 }, (_, day) => (day === 9 ? 24 : 8));
    const { days: _, dayStray: __, ...bare } = electricity(8);
    const billed: Series = {
      ...bare,
      resolution: 'period',
      from: '2025-01-01',
      to: '2025-11-01',
      periods: [{ from: '2025-01-01', to: '2025-11-01', kWh: 304 * 8, quality: 'actual' }],
    };
    const read: Series = {
      ...bare,
      id: 'r',
      resolution: 'day',
      from: '2025-11-01',
      to: '2025-11-21',
      days: { first: '2025-11-01', values: days },
    };
    const rest = restOfHome(home({ present: { system: 'gas-condensing' } }), [billed, read]);
    const kWh = restBySlot({ ...rest, stray: new Array<number>(48).fill(0) }, SLOTS_2026, reference.homeHours);
    const ofDay = (day: number) => sum([...kWh.slice(SLOTS_2026.dayStart[day]!, SLOTS_2026.dayStart[day + 1]!)]);
    // 25 November 2026 was not read; 9 November 2026 is 10 November 2025.
    expect(ofDay(312) / ofDay(311)).toBeCloseTo(3, 9);
    expect(ofDay(328) / ofDay(311)).toBeCloseTo((20 * 8 + 16) / 20 / 8, 9);
    expect(rest.monthlyKWh[10]).toBeCloseTo((30 * (20 * 8 + 16)) / 20, 9);
  });
  test('are those of the meter where it shows them, of half-hours apart', () => {
    const own = electricity(8, { dayStray: Array.from({ length: 48 }, (_, half) => (half < 24 ? 0 : 1)) });
    const { stray } = restOfHome(home({ present: { system: 'gas-condensing' } }), [own]);
    expect([stray![3], stray![30]]).toEqual([0, 1]);
  });
});

describe('steps in the comparison', () => {
  const band = (upToKWh: number, first: number, per: 'day' | 'month' = 'month'): TariffBand => ({
    ...allHours(20),
    blocks: { per, steps: [{ upToKWh, pencePerKWh: first }] },
  });
  const stepCost = (kWh: number, upTo: number, first: number) =>
    Math.min(kWh, upTo) * first + Math.max(0, kWh - upTo) * 20;

  test.each([
    ['month', 300, 40],
    ['month', 300, 10],
    ['day', 9, 40],
  ] as const)(
    'by the %s, up to %f kWh at %i p: the heating pays what comes on top of 8 kWh a day',
    (per, upTo, first) => {
      const household = home({}, version([band(upTo, first, per)]));
      const [pump] = bySystem(household, [electricity(8)]).systems;
      const expected = sum(
        pump!.monthly.boughtKWh.map((kWh, month) => {
          const most = per === 'day' ? upTo * DAYS[month]! : upTo;
          const other = 8 * DAYS[month]!;
          return stepCost(other + kWh, most, first) - stepCost(other, most, first);
        }),
      );
      expect(pump!.split.unitsPence).toBeCloseTo(expected, 5);
      // So does a boiler’s pump and fan: 160 kWh by the winter.
      const boiler = bySystem(home({ present: { system: 'gas-condensing' } }, version([band(upTo, first, per)])), [
        electricity(8),
      ]);
      const beside = boiler.systems.find(({ id }) => id === 'present')!.rates.slice(1);
      const ofPump = sum(
        WINTER.map((share, month) => {
          const most = per === 'day' ? upTo * DAYS[month]! : upTo;
          const other = 8 * DAYS[month]!;
          return stepCost(other + 1.6 * share, most, first) - stepCost(other, most, first);
        }),
      );
      expect(sum(beside.map(({ kWh, pencePerKWh }) => kWh * pencePerKWh))).toBeCloseTo(ofPump, 5);
      expect(pump!.cost.working.inputs).toContainEqual(
        expect.objectContaining({
          name: { code: 'other-use' },
          value: 2920,
          grade: 'measured',
        }),
      );
    },
  );
  test('steps in one of two bands: each band fills its own, other use first at its half-hours, two uses by their parts', () => {
    // Night from 0 to 6: a quarter of the hours. By day 60 kWh a month at 40 p, then 20 p; by night 10 p.
    const stepped = version(
      [
        { name: 'night', pencePerKWh: 10, times: [{ from: '00:00', to: '06:00' }] },
        { ...allHours(20), name: 'day', blocks: { per: 'month', steps: [{ upToKWh: 60, pencePerKWh: 40 }] } },
      ],
      { vat: { rate: 0.05, included: false } },
    );
    const buckets = rateBuckets(stepped, SLOTS_2026);
    const what = tell('carrier-electricity');
    const names = buckets.names.map((when) => tell('rate-at', { what, when }));
    const rates: Rates = {
      what,
      names,
      pencePerKWh: buckets.pencePerKWh.map((pence) => 1.5 * pence),
      beside: false,
      times: 1.5,
    };
    const shares = shareOut(SPACE_SHARE, STEADY_HEATING, SLOTS_2026, buckets);
    const elsewhere: Use = { kWh: 77, shares, rates: { ...rates } };
    const uses: Use[] = [{ kWh: 2000, shares, rates }, { kWh: 1000, shares, rates }, elsewhere];
    const other = new Float64Array(SLOTS_2026.count).fill(2 / 48);
    const found = splitByBlocks(uses, rates, stepped, SLOTS_2026, other);
    expect(found[2]).toBe(elsewhere);
    const list = ratesOf(found.slice(0, 2));
    expect(list.map(({ name }) => sayTold(name))).toEqual([
      'electricity, night',
      'electricity, day, first 60 kWh a month',
      'electricity, day, above 60 kWh a month',
    ]);
    expect(list.map(({ pencePerKWh }) => pencePerKWh)).toEqual(
      [10, 40, 20].map((pence) => expect.closeTo(pence * 1.05 * 1.5, 9)),
    );
    const [night, first, above] = [0, 1, 2].map((i) => list[i]!.kWh);
    const expected = [0, 0, 0];
    for (let month = 0; month < 12; month++) {
      const [ofNight, ofDay] = [0, 1].map((band) => 3000 * shares.byMonthBand[2 * month + band]!) as [number, number];
      let dayHalves = 0;
      for (let slot = 0; slot < SLOTS_2026.count; slot++) {
        if (SLOTS_2026.month[slot] !== month) continue;
        if (SLOTS_2026.minute[slot]! >= 360) dayHalves++;
      }
      const left = Math.max(0, 60 - (2 * dayHalves) / 48);
      expected[0]! += ofNight;
      expected[1]! += Math.min(ofDay, left);
      expected[2]! += Math.max(0, ofDay - left);
    }
    expect([night, first, above]).toEqual(expected.map((kWh) => expect.closeTo(kWh!, 6)));
    expect(first!).toBeGreaterThan(1);
    // Each use has its part of every step.
    const [two, one] = [totalOf([found[0]!]).pence, totalOf([found[1]!]).pence];
    expect(two / one).toBeCloseTo(2, 9);
    expect(sum(monthsOf(found.slice(0, 2)).unitsPence)).toBeCloseTo(two + one, 6);
  });
  test('what the home uses and how the price is stepped is asked where it is assumed', () => {
    const stepped = home({}, version([band(300, 40)]));
    const codes = (series: readonly Series[]) =>
      bySystem(stepped, series).questions.map(({ code, weight }) => `${code} ${weight}`);
    expect(codes([])).toContain('blocks-other-use question');
    expect(codes([electricity(8)])).toContain('blocks-other-use note');
    expect(bySystem(home({}, version([allHours(20)])), []).questions.map(({ code }) => code)).not.toContain(
      'blocks-other-use',
    );
  });
  test('the more the home uses, the less of dear first steps is left for the heating', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 30 }), fc.integer({ min: 0, max: 30 }), (a, b) => {
        const cost = (perDay: number) =>
          bySystem(home({}, version([band(300, 40)])), [electricity(perDay)]).systems[0]!.split.unitsPence;
        const [less, more] = a < b ? [a, b] : [b, a];
        expect(cost(more)).toBeLessThanOrEqual(cost(less) + 1e-6);
      }),
      { numRuns: 15 },
    );
  });
});

describe('a charge on the highest half-hour', () => {
  const charged = version([allHours(20)], { demand: { pencePerKWPerMonth: 300 } });
  const peaks = (f: (month: number, half: number) => number) =>
    ({
      known: true,
      months: 12,
      kWh: Array.from({ length: 12 }, (_, m) => Array.from({ length: 48 }, (__, h) => f(m, h))),
    }) as const;
  const heating = (f: (month: number, half: number) => number) =>
    Array.from({ length: 12 }, (_, m) => Float64Array.from({ length: 48 }, (__, h) => f(m, h)));

  test.each([
    // 2 kWh at 18:00 is 4 kW. Heating of 0.5 kWh at night stays below: 1 + 0.5 < 2.
    ['below the home’s own', (_m: number, h: number) => (h < 12 ? 0.5 : 0), 0],
    // At the same half-hour: 1 kW more in each of twelve months at £3.
    ['at the same half-hour', (_m: number, h: number) => (h === 36 ? 0.5 : 0), 12 * 300],
    // 1 + 3 kWh by night is 8 kW, 4 kW more than 4, in January alone.
    ['by night, in one month', (m: number, h: number) => (m === 0 && h === 4 ? 3 : 0), 4 * 300],
    ['no heating', () => 0, 0],
  ])('%s', (_, f, pence) => {
    const charge = powerCharge(
      charged,
      peaks((_m, h) => (h === 36 ? 2 : 1)),
      heating(f),
    )!;
    expect(charge.pence).toBeCloseTo(pence, 9);
    expect(charge.working.result.value).toBe(charge.pence);
    const [without, withIt, price] = charge.working.inputs.map(({ value }) => Number(value));
    expect((withIt! - without!) * price!).toBeCloseTo(pence, 6);
  });
  test('VAT is in it', () => {
    const plain = { ...charged, vat: { rate: 0.2, included: false } };
    expect(
      powerCharge(
        plain,
        peaks(() => 1),
        heating(() => 0.5),
      )!.pence,
    ).toBeCloseTo(12 * 300 * 1.2, 9);
  });
  test('it is never less than nothing, never more than the heating alone would reach, and grows with it', () => {
    const half = fc.array(fc.double({ min: 0, max: 5, noNaN: true }), { minLength: 48, maxLength: 48 });
    fc.assert(
      fc.property(half, half, fc.double({ min: 1, max: 4, noNaN: true }), (own, heat, times) => {
        const charge = (factor: number) =>
          powerCharge(
            charged,
            peaks((_m, h) => own[h]!),
            heating((_m, h) => factor * heat[h]!),
          )!.pence;
        expect(charge(1)).toBeGreaterThanOrEqual(0);
        expect(charge(1)).toBeLessThanOrEqual(12 * 300 * 2 * Math.max(...heat) + 1e-6);
        expect(charge(times)).toBeGreaterThanOrEqual(charge(1) - 1e-6);
      }),
    );
  });
  test('the months may stand in any order', () => {
    const f = (m: number, h: number) => ((m * 7 + h * 5) % 11) / 4;
    const turned = (m: number, h: number) => f(11 - m, h);
    const one = powerCharge(
      charged,
      peaks((m, h) => f(m, h + 3)),
      heating(f),
    )!.pence;
    expect(
      powerCharge(
        charged,
        peaks((m, h) => turned(m, h + 3)),
        heating(turned),
      )!.pence,
    ).toBeCloseTo(one, 9);
  });
  test('the heaviest day of a month is laid over its hours', () => {
    const dayShare = Float64Array.from({ length: 365 }, (_, day) =>
      day === 3 ? 0.5 : day === 4 ? 0.25 : day === 364 ? 0.25 : 0,
    );
    const [january, , , , , , , , , , , december] = heaviestOf(
      [{ kWh: 100, dayShare, weights: Array.from({ length: 48 }, (_, h) => (h < 2 ? 1 : 0)) }],
      SLOTS_2026,
    );
    expect([january![0], january![1], january![2], december![0]]).toEqual([25, 25, 0, 12.5]);
  });

  test('of uses known by the half-hour the most of each clock time in each month, all of them together', () => {
    const [one, other] = [new Float64Array(SLOTS_2026.count), new Float64Array(SLOTS_2026.count)];
    one[48 * 2 + 10] = 3;
    other[48 * 2 + 10] = 0.5;
    one[48 * 9 + 10] = 2;
    other[48 * 9 + 11] = 4;
    one[SLOTS_2026.count - 1] = 7;
    const found = heaviestOfSlots([one, other], SLOTS_2026);
    expect([found[0]![10], found[0]![11], found[0]![12], found[1]![10], found[11]![47]]).toEqual([3.5, 4, 0, 0, 7]);
  });
  test('two uses on one heaviest day are added, each by its own weights', () => {
    const even = Float64Array.from({ length: 365 }, () => 1 / 365);
    const at = (half: number) => Array.from({ length: 48 }, (_, h) => (h === half ? 2 : h === 0 ? 6 : 0));
    const [january] = heaviestOf(
      [
        { kWh: 365, dayShare: even, weights: at(7) },
        { kWh: 730, dayShare: even, weights: at(9) },
      ],
      SLOTS_2026,
    );
    expect([january![0], january![7], january![9], january![8]]).toEqual(
      [2.25, 0.25, 0.5, 0].map((kWh) => expect.closeTo(kWh, 9)),
    );
  });
  test('its highest half-hours as power, each month’s price, and how sure it is', () => {
    const charge = powerCharge(
      charged,
      peaks((m, h) => (h === 36 ? 2 + m / 10 : 1)),
      heating((_m, h) => (h === 36 ? 0.5 : 0)),
    )!;
    expect([charge.homeKW, charge.withKW]).toEqual([expect.closeTo(6.2, 9), expect.closeTo(7.2, 9)]);
    expect(charge.byMonthPence).toEqual(DAYS.map(() => expect.closeTo(300, 9)));
    expect(charge.working.inputs.map(({ grade }) => grade)).toEqual(['measured', 'assumed', 'measured']);
    const eleven = { ...peaks(() => 1), months: 11 };
    expect(
      powerCharge(
        charged,
        eleven,
        heating(() => 1),
      )!.working.inputs[0]!.grade,
    ).toBe('estimated');
  });
  test.each<[string, TariffVersion, Parameters<typeof powerCharge>[1]]>([
    ['there is none', version([allHours(20)]), peaks(() => 1)],
    [
      'a power is agreed',
      version([allHours(20)], { demand: { pencePerKWPerMonth: 300, agreedKW: 8 } }),
      peaks(() => 1),
    ],
    ['half-hours are not known', charged, { known: false, why: 'no-half-hours' }],
  ])('no charge where %s', (_, one, ofHome) =>
    expect(
      powerCharge(
        one,
        ofHome,
        heating(() => 1),
      ),
    ).toBeNull(),
  );
  test.each<[string, object, Parameters<typeof askAboutHome>[2], unknown[]]>([
    [
      'counted',
      {},
      { homeKW: 4, withKW: 6, pence: 900 } as PowerCharge,
      [['power-charge-counted', 'note', { homeKW: 4, withKW: 6, pence: 900 }]],
    ],
    [
      'not known',
      { peaks: { known: false, why: 'no-half-hours' } },
      null,
      [['power-charge-unknown', 'question', { why: 'no-half-hours', pence: 12 * 300 * 1.2 }]],
    ],
    ['known and nothing to count', {}, null, []],
  ])('what is said of a charge that is %s', (_, rest, power, expected) => {
    const inUse = {
      tariff: tariff([charged]),
      version: { ...charged, vat: { rate: 0.2, included: false } },
    } as unknown as TariffInUse;
    const known = { monthlyKWh: DAYS, grade: 'measured', peaks: peaks(() => 1), ...rest } as unknown as RestOfHome;
    expect(askAboutHome(inUse, known, power).map(({ code, weight, data }) => [code, weight, data])).toEqual(
      expected.map((one) => {
        const [code, weight, data] = one as [string, string, object];
        return [code, weight, { tariff: 'Invented prices', ...data }];
      }),
    );
  });
  test('agreed power with VAT, and steps with what else is used', () => {
    const agreed = version([{ ...allHours(20), blocks: { per: 'day', steps: [{ upToKWh: 3, pencePerKWh: 30 }] } }], {
      demand: { pencePerKWPerMonth: 100, agreedKW: 7 },
      vat: { rate: 0.2, included: false },
    });
    const rest = { monthlyKWh: DAYS, grade: 'assumed', peaks: peaks(() => 1) } as unknown as RestOfHome;
    const found = askAboutHome({ tariff: tariff([agreed]), version: agreed } as unknown as TariffInUse, rest, null);
    expect(found.map(({ code, weight, data }) => [code, weight, data])).toEqual([
      ['blocks-other-use', 'question', { tariff: 'Invented prices', kWh: 365, grade: 'assumed' }],
      ['power-agreed', 'question', { tariff: 'Invented prices', kW: 7, pence: expect.closeTo(7 * 12 * 120, 9) }],
    ]);
  });

  describe('in the comparison', () => {
    const household = home({}, charged);
    const plain = home({}, version([allHours(20)]));
    test('with half-hourly readings every system bears its own part, beside the standing charge', () => {
      const withCharge = bySystem(household, [electricity(8)]);
      const without = bySystem(plain, [electricity(8)]);
      const more = (id: string) => {
        const cost = (from: typeof without) => from.systems.find((one) => one.id === id)!.cost.value;
        return cost(withCharge) - cost(without);
      };
      expect(more('heat-pump')).toBeGreaterThan(0);
      expect(more('direct-electric')).toBeGreaterThan(more('heat-pump'));
      // A boiler's pump and fan draw next to nothing.
      expect(more('present')).toBeLessThan(more('heat-pump') / 5);
      const [pump] = withCharge.systems;
      expect(pump!.split.standingPence).toBeCloseTo(more('heat-pump'), 6);
      expect(sum(pump!.monthly.standingPence)).toBeCloseTo(pump!.split.standingPence, 6);
      const part = partWorking(pump!.cost.working, 'standing', pump!.split.standingPence);
      expect(part.inputs.map(({ name }) => sayTold(name))).toEqual(['Standing charge', 'Charge on power']);
      expect(part.steps?.[0]).toMatchObject({
        title: { code: 'charge-on-power' },
        result: { value: pump!.split.standingPence },
      });
    });
    // On the coldest day of a month, its mean here, the highest half-hour of each kind of hours; hot water 2,000 / 365 a day.
    // Sums of the weights: 47.8 of a heat pump's day, 35.7 of a day that is heated while somebody is up.
    const space = WINTER.map((share, month) => (10_000 * share) / 100 / DAYS[month]!);
    const water = 2000 / 365;
    const { 'direct-electric': panels, storage } = reference.efficiency;
    test.each<[string, string, Household['present'], (roomsKWh: number) => number]>([
      // From 13:00 to 15:00: rooms at 1.1, hot water in half of its eight half-hours.
      ['a heat pump', 'heat-pump', {} as Household['present'], (kWh) => (kWh * 1.1) / 47.8 / 3.24 + water / 8 / 3.24],
      // From 6 to 9: rooms at 1.5, hot water in six of its fourteen half-hours.
      [
        'panels',
        'direct-electric',
        {} as Household['present'],
        (kWh) => (kWh * 1.5) / 35.7 / panels.space.middle + water / 14 / panels.water.middle,
      ],
      // From 6:00 to 7:30: nine tenths of the rooms and four fifths of the water by night, and water drawn besides.
      [
        'storage',
        'storage',
        {} as Household['present'],
        (kWh) => (kWh * 0.9) / 14 / storage.space.middle + water / 14 / storage.water.middle,
      ],
      [
        'a boiler with an immersion heater',
        'present',
        { system: 'gas-condensing', hotWaterFrom: 'immersion' },
        (kWh) => ((kWh / 10_000) * 160 * 1.5) / 35.7 + water / 14,
      ],
    ])('%s bears twelve months of its highest half-hour', (_, id, present, highest) => {
      const flat = DAYS.map(() => new Array<number>(48).fill(0.5));
      const plain = home({ present: { system: 'gas-condensing' } }, charged);
      const household = { ...plain, prices: { electricityTariffId: 't', storageTariffId: 't' } };
      const series = [electricity(8, { dayPeaks: flat })];
      const rest = restOfHome(household, series);
      const priced = comparePriced(
        { ...household, present: { ...household.present, ...present }, beside: EVERY_WAY },
        rest,
        id,
      );
      expect(priced!.power!.pence).toBeCloseTo(sum(space.map((kWh) => 2 * 300 * highest(kWh))), 6);
    });
    test.each<[string, Household, readonly Series[], string, object]>([
      ['half-hours are known', household, [electricity(8)], 'power-charge-counted', { homeKW: 4 }],
      ['there is no record', household, [], 'power-charge-unknown', { why: 'no-half-hours', pence: 3600 }],
      [
        'only days are known',
        household,
        [electricity(8, { dayPeaks: undefined })],
        'power-charge-unknown',
        { why: 'no-half-hours' },
      ],
      [
        'the old heating is in it',
        { ...household, present: { system: 'storage' } },
        [electricity(40)],
        'power-charge-unknown',
        { why: 'heating-in-record' },
      ],
      [
        'a power is agreed',
        home({}, { ...charged, demand: { pencePerKWPerMonth: 300, agreedKW: 8 } }),
        [],
        'power-agreed',
        { kW: 8, pence: 28_800 },
      ],
    ])('%s', (_, one, series, code, data) => {
      const result = bySystem(one, series);
      expect(result.questions).toContainEqual(expect.objectContaining({ code, data: expect.objectContaining(data) }));
      if (code !== 'power-charge-counted') expect(result.systems[0]!.split.standingPence).toBe(0);
    });
  });
});
