import { describe, expect, test } from 'vitest';
import { addDays, daysBetween } from '../../../src/model/calendar/civil.ts';
import type { TariffVersion } from '../../../src/model/shapes/tariff.ts';
import { FIRST, found, heating, noise, outdoorOn, readingsOf } from './made-days.ts';

const DAYS = 300;
const house = (day: number, hour: number) =>
  0.25 + 0.6 * Math.max(0, Math.sin(((hour - 6) / 24) * 2 * Math.PI)) * (1 + 0.4 * noise(day * 48 + hour * 2 + 7));

describe('a heater left on', () => {
  const heater = (day: number, hour: number) => (day >= 99 && day < 141 && hour >= 2 && hour < 4 ? 2.9 : 0);
  test.each([30, 60])('is found with its days, power and units, readings every %i minutes', (minutes) => {
    const readings = readingsOf(DAYS, (d, h) => heating(d, h) + heater(d, h), { minutes });
    const [finding, ...others] = found('heater-running', [readings], DAYS);
    expect(others).toEqual([]);
    expect(finding).toMatchObject({ meter: 'heat-pump', from: addDays(FIRST, 99), to: addDays(FIRST, 141) });
    expect(finding!.seen.powerKW).toBeCloseTo(2.9, 1);
    expect(Math.abs(finding!.kWh / (42 * 2 * 2.9) - 1)).toBeLessThan(0.03); // 42 days × 2 h × 2.9 kW
    expect(Math.abs(finding!.penceYear / (365 * 2 * 2.9 * 25) - 1)).toBeLessThan(0.03);
    expect(finding!.sure).toBeGreaterThan(0.9);
    expect(finding!.cautions).toEqual(['electrical', 'scalding', 'legionella']);
  });
  test('is not found where there is none', () => {
    expect(found('heater-running', [readingsOf(DAYS, heating)], DAYS)).toEqual([]);
  });
  test('once a week it is called the weekly heating of the cylinder', () => {
    const weekly = (day: number, hour: number) => (day % 7 === 3 && hour >= 3 && hour < 5 ? 2.9 : 0);
    const readings = [readingsOf(DAYS, (d, h) => heating(d, h) + weekly(d, h))];
    expect(found('heater-running', readings, DAYS)).toEqual([]);
    const [weeks, ...others] = found('weekly-pasteurisation', readings, DAYS);
    expect(others).toEqual([]);
    // The estimate has it: nobody at home is asked about a switch or about baths.
    expect(weeks!.ask).toEqual([]);
  });
  test('a cylinder cycle of the same power, rising as the water gets hot, is none', () => {
    const cycle = (day: number, hour: number) =>
      hour >= 2 && hour < 4 ? 2.9 * (0.85 + 0.15 * (hour - 2)) * (1 + 0.06 * noise(day)) : 0;
    expect(found('heater-running', [readingsOf(DAYS, (d, h) => heating(d, h) + cycle(d, h))], DAYS)).toEqual([]);
  });
});

describe('a vehicle on the house’s meter', () => {
  const charge = (day: number, hour: number) => (noise(day + 0.3) > 0.2 && hour >= 1 && hour < 5 ? 7.1 : 0);
  test.each([
    ['charging', charge, 1],
    ['none', () => 0, 0],
  ])('%s', (_, load, count) => {
    const readings = readingsOf(DAYS, (d, h) => house(d, h) + heating(d, h) + load(d, h), { meter: 'whole-house' });
    const findings = found('large-load', [readings], DAYS);
    expect(findings).toHaveLength(count);
    if (count > 0) expect(findings[0]!.seen.powerKW).toBeCloseTo(7.1, 1);
    expect(found('heater-running', [readings], DAYS)).toEqual([]);
  });
});

test('a change that begins with a load may be the rest of it, and the load is asked about first', () => {
  // Two hours of a heater at its own time, and as much again at times of no pattern.
  const on = (d: number) => d >= 110;
  const heater = (d: number, h: number) => (on(d) && h >= 2 && h < 4 ? 2.9 : 0);
  const stray = (d: number, h: number) => (on(d) && Math.floor(h) === Math.floor(12 + 8 * noise(d)) ? 6 : 0);
  const readings = readingsOf(DAYS, (d, h) => heating(d, h) + heater(d, h) + stray(d, h));
  expect(found('heater-running', [readings], DAYS)[0]!.from).toBe(addDays(FIRST, 110));
  const [change] = found('behaviour-changed', [readings], DAYS);
  expect(change!.may![0]).toBe('heater');
  expect(change!.ask[0]).toBe('heater-switch');
});

describe('hot water', () => {
  const cycles = (hours: readonly number[]) => (_: number, hour: number) =>
    hours.some((start) => hour >= start && hour < start + 1) ? 1.6 : 0;
  test.each([
    ['twice a day', [6, 18], 0],
    ['five times a day', [1, 6, 11, 15, 20], 1],
  ])('%s', (_, hours, count) => {
    const readings = readingsOf(365, (d, h) => heating(d, h) + cycles(hours)(d, h));
    const findings = found('water-often', [readings], 365);
    expect(findings).toHaveLength(count);
    if (count > 0) expect(findings[0]!.seen.cyclesPerDay).toBeCloseTo(hours.length, 0);
  });
});

describe('nights', () => {
  const share = (hour: number) => (hour < 5 ? 0.2 : hour < 8 ? 2.2 : 1);
  test.each([
    ['even', () => 1, 0],
    ['a little cooler', (hour: number) => (hour < 5 ? 0.8 : 1), 0],
    ['let go, with hard mornings', share, 1],
  ])('%s', (_, shape, count) => {
    const readings = readingsOf(DAYS, (d, h) => 0.06 + (heating(d, h) - 0.06) * shape(h));
    expect(found('night-setback', [readings], DAYS)).toHaveLength(count);
  });
  test('a night that is let go counts without a hard morning: a heavy house catches up all day', () => {
    const shape = (hour: number) => (hour < 5.5 ? 0.05 : 1.25);
    const readings = readingsOf(DAYS, (d, h) => 0.06 + (heating(d, h) - 0.06) * shape(h));
    const [finding] = found('night-setback', [readings], DAYS);
    expect(Number(finding!.seen.morningShare)).toBeLessThan(1.3);
    // With a car that charges on some nights the house’s meter cannot say what its nights take for a degree.
    const car = (d: number, h: number) => (h >= 1 && h < 4 && noise(d * 7) > 0 ? 7 : 0);
    const withCar = readingsOf(DAYS, (d, h) => heating(d, h) + house(d, h) + car(d, h), { meter: 'whole-house' });
    expect(found('night-setback', [withCar], DAYS)).toEqual([]);
  });
  test('what the mornings take is seen; what it costs or saves nobody knows', () => {
    // 1 kW on every day below 9 °C, 0.2 kW before five, 2.2 kW for three hours: 6.6 kWh a morning, all above the day's 1 kW.
    const readings = readingsOf(DAYS, (d, h) => 0.06 + (outdoorOn(d) < 9 ? share(h) : 0));
    const [finding] = found('night-setback', [readings], DAYS);
    const cold = Array.from({ length: DAYS }, (_, day) => outdoorOn(day)).filter((c) => c < 9).length;
    expect(finding!.seen).toMatchObject({ days: cold });
    expect(finding!.seen.recoveryKWhPerDay).toBeCloseTo(6.6, 6);
    expect(finding!.seen.nightShare).toBeCloseTo(0.2, 6);
    expect(finding!.seen.morningShare).toBeCloseTo(2.2, 6);
    expect(finding).toMatchObject({ kWh: 0, pence: 0, kWhYear: 0, penceYear: 0 });
  });
});

describe('a change from a day on', () => {
  test('base load, with its watts', () => {
    const machine = readingsOf(DAYS, heating);
    const readings = (rise: number) =>
      readingsOf(DAYS, (d, h) => heating(d, h) + house(d, h) + (d >= 150 ? rise : 0), { meter: 'whole-house' });
    expect(found('base-load-rose', [readings(0), machine], DAYS)).toEqual([]);
    // Where the heating is on the same meter and no warm day came before, nobody can tell it from the rooms.
    expect(found('base-load-rose', [readings(0.15)], DAYS)).toEqual([]);
    const [finding] = found('base-load-rose', [readings(0.15), machine], DAYS);
    expect(finding!.from).toBe(addDays(FIRST, 150));
    expect(finding!.seen.riseW).toBeCloseTo(150, -1);
    expect(finding!.kWhYear).toBeCloseTo(0.15 * 8760, -2);
  });
  test('a holiday in the autumn is no change of habits, and hides none in the winter', () => {
    const away = (d: number) => (d >= 20 && d < 32 ? 0.2 : 1);
    const plain = readingsOf(DAYS, (d, h) => 0.06 + heating(d, h) * away(d));
    expect(found('behaviour-changed', [plain], DAYS)).toEqual([]);
    const since = addDays(FIRST, 110);
    const warmer = readingsOf(DAYS, (d, h) => 0.06 + heating(d, h) * away(d) * (d >= 110 ? 1.3 : 1));
    const [finding] = found('behaviour-changed', [warmer], DAYS);
    expect(Math.abs(daysBetween(since, finding!.from))).toBeLessThanOrEqual(3);
    expect(Number(finding!.seen.share)).toBeCloseTo(0.3, 1);
  });
  test('a little less in a summer that has no summer before it may be the season', () => {
    const shorter = readingsOf(DAYS, (d, h) => 0.06 + (heating(d, h) + 0.15) * (d >= 210 ? 0.75 : 1));
    expect(found('behaviour-changed', [shorter], DAYS)).toEqual([]);
  });
  test.each([
    ['warmer rooms', 1.3, 'with-the-cold'],
    ['nothing', 1, undefined],
    ['cooler rooms', 0.7, 'with-the-cold'],
  ])('behaviour: %s', (_, share, kind) => {
    const readings = readingsOf(DAYS, (d, h) => 0.06 + (heating(d, h) - 0.06) * (d >= 120 ? share : 1));
    const [finding] = found('behaviour-changed', [readings], DAYS);
    expect(finding?.seen.kind).toBe(kind);
    if (!kind) return;
    expect(finding!.from).toBe(addDays(FIRST, 120));
    expect(Math.sign(finding!.kWh)).toBe(Math.sign(share - 1));
  });
  test('a winter says nothing of a summer: no change where the days are not alike', () => {
    const readings = readingsOf(DAYS, (d, h) => heating(d, h) * (outdoorOn(d) > 9 ? 1.6 : 1));
    expect(found('behaviour-changed', [readings], DAYS)).toEqual([]);
  });
  const version: TariffVersion = {
    from: '2025-01-01',
    standingPencePerDay: 50,
    vat: { rate: 0.05, included: true },
    bands: [
      { name: 'peak', pencePerKWh: 45, times: [{ from: '16:00', to: '19:00' }] },
      { name: 'rest', pencePerKWh: 22, times: 'rest' },
    ],
  };
  test.each([
    ['moved to the peak', 16.5, 1],
    ['moved within the cheap hours', 10, 0],
  ])('hot water %s', (_, hour, count) => {
    const water = (day: number, at: number) => {
      const start = day >= 130 ? hour : 2;
      return at >= start && at < start + 1.5 ? 2 : 0;
    };
    const readings = readingsOf(DAYS, (d, h) => heating(d, h) + water(d, h));
    const findings = found('dear-hours', [readings], DAYS, { pencePerKWh: 25, versions: [version] });
    expect(findings).toHaveLength(count);
    if (count > 0) {
      expect(findings[0]).toMatchObject({ from: addDays(FIRST, 130), kWh: 0 });
      expect(Math.abs(findings[0]!.penceYear / (365 * 3 * 23) - 1)).toBeLessThan(0.35); // 3 kWh a day × 23 p dearer
    }
  });
});

test('gaps, clock changes and odd readings do not stop the detectors', () => {
  const whole = readingsOf(120, heating);
  const days = whole.days.map((day, i) => {
    if (i % 9 === 0) return { ...day, values: Float64Array.from(day.values, (v, k) => (k === 5 ? Number.NaN : v)) };
    if (i === 25) return { ...day, values: Float64Array.from({ length: 50 }, () => 0.1) };
    return day;
  });
  expect(found('heater-running', [{ ...whole, days }], 120)).toEqual([]);
  expect(found('heater-running', [{ ...whole, days: [] }], 120)).toEqual([]);
  expect(found('heater-running', [{ ...whole, intervalMinutes: 1440 }], 120)).toEqual([]);
});
