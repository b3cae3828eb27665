import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { withEvidence } from '../../../src/model/bill-gap/read-evidence.ts';
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
