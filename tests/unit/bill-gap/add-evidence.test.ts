import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { withEvidence } from '../../../src/model/bill-gap/add-evidence.ts';
import { addDays } from '../../../src/model/calendar/civil.ts';
import type { MeterReadings } from '../../../src/model/findings/meter-days.ts';
import type { Series } from '../../../src/model/shapes/evidence.ts';
import { FIRST, heating, outdoorOn, readingsOf } from '../findings/made-days.ts';
import { sampleBill } from './sample-estimate.ts';

const DAYS = 330;
const kW = (day: number, hour: number) =>
  heating(day, hour) + (hour >= 13 && hour < 15 ? 1.5 : 0) + (day >= 60 && day < 90 && hour >= 2 && hour < 4 ? 2.9 : 0);
const machine = readingsOf(DAYS, kW);

const series = (role: Series['role'], carrier: Series['carrier'], values: readonly (number | null)[]): Series => ({
  id: role,
  evidenceId: 'e',
  name: 'made',
  carrier,
  role,
  resolution: 'day',
  from: FIRST,
  to: addDays(FIRST, values.length),
  total: 0,
  days: { first: FIRST, values: [...values] },
  present: values.length,
  expected: values.length,
  estimatedCount: 0,
});
const daily = machine.days.map(({ values }) => Array.from(values).reduce((sum, kWh) => sum + kWh, 0));
const outdoor = daily.map((_, day) => outdoorOn(day));
const known = [
  series('heat-pump', 'electricity', daily),
  series('weather', 'outdoor-temperature', outdoor),
  series(
    'heat-output',
    'heat',
    daily.map((kWh) => kWh * 3),
  ),
];
// The bill: the last 100 days, so that the warm days before and in it count; the heater ran before it and in it.
const bill = (change: object = {}) =>
  sampleBill({ from: addDays(FIRST, 75), to: addDays(FIRST, 240), boughtKWh: 1, ...change });
const inBill = (values: readonly number[]) => values.slice(75, 240).reduce((sum, kWh) => sum + kWh, 0);

describe('what readings add to a bill', () => {
  const full = withEvidence(bill({ meter: 'whole-house' }), { series: known, readings: [machine] });
  test.each([
    ['sub-meter', full.heatPumpKWh, inBill(daily), 1e-6],
    ['heat meter', full.heatKWh, inBill(daily) * 3, 1e-6],
    ['heater, 15 days of 5.8 kWh in the bill', full.immersionKWh, 15 * 5.8, 3],
  ])('%s', (_, value, expected, within) => {
    expect(Math.abs(value! - expected)).toBeLessThan(within);
  });
  test.each<[string, number[], string, number | undefined]>([
    ['on the days of the bill', [40, 75, 130, 240, 300], 'actual', 165 * 20],
    ['the evening before and the evening of the last day', [40, 74, 130, 239], 'customer', 165 * 20],
    ['the evening before, then on the first day after', [74, 130, 240], 'unknown', 165 * 20],
    ['two days late', [77, 130, 240], 'actual', undefined],
    ['not at the end', [75, 130, 230, 260], 'actual', undefined],
    ['by an estimate', [75, 130, 240], 'estimated', undefined],
  ])('a heat meter read by hand %s', (_, days, quality, expected) => {
    const { days: none, ...rest } = series('heat-output', 'heat', []);
    const periods = days.slice(1).map((to, i) => ({
      ...{ from: addDays(FIRST, days[i]!), to: addDays(FIRST, to), kWh: (to - days[i]!) * 20 },
      quality: quality as 'actual',
    }));
    const read = { ...rest, resolution: 'period' as const, periods };
    const { heatKWh, seriesIds } = withEvidence(bill(), { series: [read], readings: [] });
    if (expected === undefined) expect(heatKWh).toBeUndefined();
    else expect(heatKWh).toBeCloseTo(expected, 6);
    expect(seriesIds).toEqual(expected === undefined ? undefined : ['heat-output']);
    // A stretch that nobody read, or a meter that counts in no sum.
    const holed = { ...read, periods: periods.filter((_one, i) => i !== 1) };
    for (const one of [holed, { ...read, beside: 'aside' as const }])
      expect(withEvidence(bill(), { series: [one], readings: [] }).heatKWh).toBeUndefined();
  });
  test('units that rose with the cold: all but 3 kWh of hot water and 1.44 of standby a day', () => {
    const rooms = inBill(daily) - 15 * 5.8 - 165 * 4.44;
    expect(full.spaceKWh).toBeUndefined(); // the days up to the bill's end have no warm ones yet
    const later = bill({ from: addDays(FIRST, 165), to: addDays(FIRST, DAYS) });
    const { spaceKWh } = withEvidence({ ...later, boughtKWh: 1 }, { series: known, readings: [machine] });
    const units = daily.slice(165).reduce((sum, kWh) => sum + kWh, 0);
    expect(rooms).toBeGreaterThan(0);
    expect(Math.abs(spaceKWh! - (units - 165 * 4.44))).toBeLessThan(0.05 * units);
  });
  test('an estimated bill on the sub-meter is read again; what was typed stands', () => {
    const estimated = withEvidence(bill({ readings: 'estimated' }), { series: known, readings: [] });
    expect(estimated.readKWh).toBeCloseTo(inBill(daily), 6);
    expect(withEvidence(bill({ heatKWh: 5 }), { series: known, readings: [] }).heatKWh).toBe(5);
  });
  test('own use of panels: what was made less what was sent out, on the bill of a whole home that no machine’s meter splits', () => {
    const even = (role: Series['role'], kWh: number) => series(role, 'electricity', new Array<number>(DAYS).fill(kWh));
    const panels = [even('generation', 7), even('export', 4.5)];
    const whole = bill({ meter: 'whole-house', otherKWh: 10 });
    const of = (one: typeof whole, list: readonly Series[]) =>
      withEvidence(one, { series: list, readings: [] }).ownUseKWh;
    expect(of(whole, panels)).toBeCloseTo(165 * 2.5, 6);
    expect(of(whole, [even('generation', 2), even('export', 4.5)])).toBe(0);
    expect(of(whole, panels.slice(0, 1))).toBeUndefined();
    expect(of(bill({ meter: 'heat-pump' }), panels)).toBeUndefined();
    // Without a word on the rest the machine's own meter makes the bill, and holds the sun already.
    expect(
      of({ ...whole, otherKWh: undefined, boughtKWh: 9999 } as never, [...panels, even('heat-pump', 5)]),
    ).toBeUndefined();
  });
  test('a missing day, no readings and no heater say nothing', () => {
    const gap = [
      series(
        'heat-pump',
        'electricity',
        daily.map((kWh, day) => (day === 100 ? null : kWh)),
      ),
    ];
    expect(withEvidence(bill({ meter: 'whole-house' }), { series: gap, readings: [] })).toEqual(
      bill({ meter: 'whole-house' }),
    );
    const calm = readingsOf(DAYS, heating);
    expect(withEvidence(bill(), { series: [], readings: [calm] }).immersionKWh).toBeUndefined();
  });
  test('units by price, by the clock', () => {
    const version = {
      from: '2025-01-01',
      standingPencePerDay: 50,
      vat: { rate: 0.05, included: true },
      bands: [
        { name: 'night', pencePerKWh: 12, times: [{ from: '00:00', to: '07:00' }] },
        { name: 'day', pencePerKWh: 32, times: 'rest' as const },
      ],
    };
    const { ratesKWh } = withEvidence(bill(), { series: known, readings: [machine], version });
    expect(ratesKWh!.map(({ name }) => name)).toEqual(['night', 'day']);
    expect(ratesKWh!.reduce((sum, { kWh }) => sum + kWh, 0)).toBeCloseTo(inBill(daily), 6);
  });
});

describe('by hand', () => {
  /** Six days from 0 to 20 °C again and again; 3 kWh a day and half a unit for each degree below 15 °C. */
  const COLD = [0, 20, 18, 12, 8, 4];
  const outdoorC = (day: number) => COLD[day % 6]!;
  const use = (day: number) => 3 + 0.5 * Math.max(0, 15 - outdoorC(day));
  const rows = (count: number, value: (day: number) => number | null) =>
    Array.from({ length: count }, (_, day) => value(day));
  const weather = (count: number, value: (day: number) => number | null = outdoorC) =>
    series('weather', 'outdoor-temperature', rows(count, value));
  /** The last 30 of so many days; they use 6 kWh in the mean. */
  const last30 = (count: number, change: object = {}) =>
    sampleBill({ from: addDays(FIRST, count - 30), to: addDays(FIRST, count), boughtKWh: 180, ...change });
  const spaceOf = (
    count: number,
    values: (day: number) => number | null = use,
    change: object = {},
    days = weather(count),
  ) =>
    withEvidence(last30(count, change), {
      series: [series('heat-pump', 'electricity', rows(count, values)), days],
      readings: [],
    }).spaceKWh;
  test('units that rose with the cold: 30 days less 3 kWh a day', () => {
    expect(spaceOf(90)).toBeCloseTo(30 * 3, 6);
    // Sixty days are enough, twenty of them warm.
    expect(spaceOf(60)).toBeCloseTo(90, 6);
    expect(spaceOf(59)).toBeUndefined();
    expect(spaceOf(90, use, { immersionKWh: 10 })).toBeCloseTo(90, 6);
    const none = spaceOf(90, (day) => (day < 60 ? 5 + use(day) : 0.1));
    expect(none).toBe(0);
  });
  test.each([
    ['15 days above 16 °C', 15, 16.1, true],
    ['14', 14, 16.1, false],
    ['at 16 °C they are not warm', 15, 16, false],
  ])('%s', (_, count, warmC, isKnown) => {
    const outdoor = (day: number) => (day % 6 === 1 && day < 6 * count ? warmC : 2 + (day % 6));
    const values = (day: number) => 3 + 0.5 * Math.max(0, 15 - outdoor(day));
    expect(spaceOf(120, values, {}, weather(120, outdoor)) !== undefined).toBe(isKnown);
  });
  test('days before the last 400 are of other habits; a day without a value or weather is left out', () => {
    const changed = (day: number) => use(day) + (day < 100 ? 40 : 0);
    expect(spaceOf(500, changed)).toBeCloseTo(90, 6);
    expect(Math.abs(spaceOf(500, (day) => use(day) + (day < 101 ? 40 : 0))! - 90)).toBeGreaterThan(0.01);
    const later = withEvidence(sampleBill({ from: addDays(FIRST, 60), to: addDays(FIRST, 90), boughtKWh: 180 }), {
      series: [
        series(
          'heat-pump',
          'electricity',
          rows(120, (day) => use(day) + (day < 90 ? 0 : 50)),
        ),
        weather(120),
      ],
      readings: [],
    });
    expect(later.spaceKWh, 'days after the bill').toBeCloseTo(90, 6);
    const odd = (day: number) => (day === 5 ? null : day === 9 ? 77 : use(day));
    expect(
      spaceOf(
        90,
        odd,
        {},
        weather(90, (day) => (day === 9 ? null : outdoorC(day))),
      ),
    ).toBeCloseTo(90, 6);
  });
  test('the house’s meter less other electricity, which has more in the dark months', () => {
    // SAP's use of appliances, most on a 23 January: 1 + 0.157 cos(2π days / 365.25), 300 units in the 30 days of the bill.
    // From 23 January 2020 to 1 October 2025 there are 2,078 days.
    const share = (day: number) => 1 + 0.157 * Math.cos((2 * Math.PI * (day + 2078)) / 365.25);
    const inBill = Array.from({ length: 30 }, (_, i) => share(170 + i)).reduce((sum, value) => sum + value, 0);
    const other = (day: number) => (300 * share(day)) / inBill;
    const house = series(
      'import',
      'electricity',
      rows(200, (day) => use(day) + other(day)),
    );
    const bill = (meter: 'whole-house' | 'heat-pump') => last30(200, { meter, otherKWh: 300 });
    const found = (meter: 'whole-house' | 'heat-pump') =>
      withEvidence(bill(meter), { series: [house, weather(200)], readings: [] });
    expect(found('whole-house').spaceKWh).toBeCloseTo(180 - 90, 6);
    expect(found('heat-pump').spaceKWh).toBeUndefined();
    expect(found('whole-house').seriesIds).toBeUndefined();
    const gas = { ...house, carrier: 'gas' as const };
    expect(withEvidence(bill('whole-house'), { series: [gas, weather(200)], readings: [] }).spaceKWh).toBeUndefined();
  });
  test('sums of the days of the bill, from the first series that has them all; which were used is said', () => {
    const holed = {
      ...series(
        'heat-pump',
        'electricity',
        rows(90, (day) => (day === 75 ? null : 1)),
      ),
      id: 'holed',
    };
    const whole = {
      ...series(
        'heat-pump',
        'electricity',
        rows(90, () => 2),
      ),
      id: 'whole',
    };
    const heat = series(
      'heat-output',
      'heat',
      rows(90, () => 7),
    );
    const found = (change: object, all = [holed, whole, heat]) =>
      withEvidence(last30(90, change), { series: all, readings: [] });
    expect(found({ meter: 'whole-house' })).toMatchObject({
      heatPumpKWh: 60,
      heatKWh: 210,
      seriesIds: ['whole', 'heat-output'],
    });
    expect(found({ meter: 'whole-house' }).readKWh).toBeUndefined();
    expect(found({ meter: 'heat-pump', readings: 'unknown' })).toMatchObject({ readKWh: 60 });
    // The bill is marked actual and the meter shows a third of it: both are said.
    expect(found({ meter: 'heat-pump' }).readKWh).toBe(60);
    expect(found({ meter: 'heat-pump', boughtKWh: 61 }).readKWh).toBeUndefined();
    expect(found({ meter: 'whole-house' }, [holed]).heatPumpKWh).toBeUndefined();
    // What the machine's own meter shows, typed, says what went into other things.
    const { otherKWh: _unsaid, ...ofHome } = sampleBill({ meter: 'whole-house', boughtKWh: 300, heatPumpKWh: 180 });
    expect(withEvidence(ofHome, { series: [], readings: [] })).toMatchObject({ boughtKWh: 180, otherKWh: 120 });
    expect(
      found({ meter: 'whole-house' }, [
        series(
          'heat-pump',
          'electricity',
          rows(89, () => 2),
        ),
      ]).heatPumpKWh,
    ).toBeUndefined();
  });
  const version = {
    from: '2025-01-01',
    standingPencePerDay: 50,
    vat: { rate: 0.05, included: false },
    bands: [
      { name: 'night', pencePerKWh: 12, times: [{ from: '00:00', to: '07:00' }] },
      { name: 'day', pencePerKWh: 32, times: 'rest' as const },
    ],
  };
  test.each([
    ['57 of 60 days', 3, true],
    ['56 of 60 days', 4, false],
  ])('units by price and of the heater with %s', (_, missing, isKnown) => {
    // 1 kW by night and 0.5 kW by day, a heater of 3 kW from 2 to 4 on forty nights, thirty of them in the bill.
    const all = readingsOf(
      90,
      (day, hour) => (hour < 7 ? 1 : 0.5) + (day >= 20 && day < 60 && hour >= 2 && hour < 4 ? 3 : 0),
    );
    const readings = [{ ...all, days: all.days.slice(0, 90 - missing) }];
    const bill = sampleBill({ from: addDays(FIRST, 30), to: addDays(FIRST, 90) });
    const { ratesKWh, immersionKWh } = withEvidence(bill, { series: [], readings, version });
    expect(ratesKWh).toEqual(
      isKnown
        ? [
            { name: 'night', kWh: expect.closeTo(7 * 57 + 6 * 30, 6), pencePerKWh: expect.closeTo(12.6, 9) },
            { name: 'day', kWh: expect.closeTo(8.5 * 57, 6), pencePerKWh: expect.closeTo(33.6, 9) },
          ]
        : undefined,
    );
    if (isKnown) expect(immersionKWh).toBeCloseTo(180, 6);
    else expect(immersionKWh).toBeUndefined();
    const onePrice = { ...version, bands: version.bands.map((band) => ({ ...band, pencePerKWh: 20 })) };
    expect(withEvidence(bill, { series: [], readings, version: onePrice }).ratesKWh).toBeUndefined();
  });
  test('the heater’s units are taken off each day before the line, and off the bill', () => {
    const all = readingsOf(90, (day, hour) => use(day) / 24 + (day >= 20 && day < 70 && hour >= 2 && hour < 4 ? 3 : 0));
    const kWh = all.days.map(({ values }) => Array.from(values).reduce((sum, one) => sum + one, 0));
    const machine = series('heat-pump', 'electricity', kWh);
    const found = withEvidence(last30(90), { series: [machine, weather(90)], readings: [all] });
    expect(found.immersionKWh).toBeCloseTo(60, 6);
    expect(found.spaceKWh).toBeCloseTo(90, 4);
  });
  test('once a week is in the estimate already and no cause', () => {
    const all = readingsOf(90, (day, hour) => 0.1 + (day % 7 === 3 && hour >= 2 && hour < 4 ? 3 : 0));
    expect(withEvidence(last30(90), { series: [], readings: [all] }).immersionKWh).toBeUndefined();
  });
});

test('the invented complaint: a heater of 3 kW from 2 to 4 in the night, 8 January to 18 February 2026', () => {
  const path = new URL('../../../sample-bills/mill-lane/heat-pump-hourly.csv', import.meta.url);
  const byDay = new Map<string, number[]>();
  for (const line of readFileSync(path, 'utf8').trim().split('\n').slice(1)) {
    const [stamp, kWh] = line.split(';') as [string, string];
    const date = stamp.slice(0, 10);
    byDay.set(date, [...(byDay.get(date) ?? []), Number(kWh.replace(',', '.'))]);
  }
  const readings: MeterReadings = {
    meter: 'heat-pump',
    intervalMinutes: 60,
    days: [...byDay].map(([date, values]) => ({ date, values: Float64Array.from(values) })),
  };
  const winter = sampleBill({ from: '2025-12-01', to: '2026-03-01', boughtKWh: 2264 });
  const { immersionKWh } = withEvidence(winter, { series: [], readings: [readings] });
  expect(Math.abs(immersionKWh! - 42 * 6)).toBeLessThan(8); // 42 nights × 2 h × 3 kW
});
