/** Prices that hang on the whole home's use: steps that other electricity fills first, and a charge on the highest half-hour. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { partWorking } from '../../../src/model/comparison/part-working.ts';
import { heaviestOf, powerCharge } from '../../../src/model/comparison/power-charge.ts';
import { restOfHome } from '../../../src/model/comparison/rest-of-home.ts';
import type { Series } from '../../../src/model/shapes/evidence.ts';
import { emptyHousehold, type Household } from '../../../src/model/shapes/household.ts';
import type { TariffBand, TariffVersion } from '../../../src/model/shapes/tariff.ts';
import { sayTold } from '../../../src/words/say-told.ts';
import { EVERY_WAY } from '../appraisal/make-household.ts';
import { allHours, tariff, version } from '../tariff/tariffs.ts';
import { compareBy, makeDemand, SLOTS_2026 } from './make-demand.ts';

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
const bySystem = (household: Household, series: readonly Series[]) =>
  compareBy({ ...household, beside: EVERY_WAY }, makeDemand(10_000, 2000), { series });

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
      expect(pump!.cost.working.inputs).toContainEqual(
        expect.objectContaining({
          name: { code: 'other-use' },
          value: 2920,
          grade: 'measured',
        }),
      );
    },
  );
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
