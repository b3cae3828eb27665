import { describe, expect, test } from 'vitest';
import { toCivilDate, toDayNumber } from '../../../src/model/calendar/civil.ts';
import { clockPrices, dearnessOf } from '../../../src/model/findings/clock-prices.ts';
import { meterDays } from '../../../src/model/findings/meter-days.ts';
import type { TariffVersion } from '../../../src/model/shapes/tariff.ts';

/** Four weeks from a Monday. */
const FIRST = toDayNumber('2025-06-02');
const DAYS = 28;
const readings = (minutes: number) => ({
  meter: 'heat-pump' as const,
  intervalMinutes: minutes,
  days: Array.from({ length: DAYS }, (_, day) => ({
    date: toCivilDate(FIRST + day),
    values: Float64Array.from({ length: 1440 / minutes }, () => 0.2),
  })),
});
const days = meterDays(readings(30))!;
const twoRates = (from: string, night: number, day: number): TariffVersion => ({
  from,
  standingPencePerDay: 50,
  vat: { rate: 0.05, included: true },
  bands: [
    { name: 'night', pencePerKWh: night, times: [{ from: '00:00', to: '06:00' }] },
    { name: 'day', pencePerKWh: day, times: 'rest' },
  ],
});
const plain = twoRates('2024-01-01', 15, 30);
/** Day 0 at 10 p by night and 20 by day, and a penny more each day after. */
const dated = (included = true): TariffVersion => ({
  ...plain,
  vat: { rate: 0.05, included },
  series: {
    zone: 'Europe/London',
    days: Array.from({ length: DAYS }, (_, day) => ({
      date: toCivilDate(FIRST + day),
      pencePerKWh: Array.from({ length: 48 }, (_, half) => day + (half < 12 ? 10 : 20)),
    })),
  },
});
const at = (prices: Float64Array | null, day: number, hour: number) => prices?.[day * 48 + hour * 2];

describe('how dear the hours of a load are', () => {
  // A quarter of all units at 15 p, the rest at 30 p: 26.25 p in the mean.
  const atNight = (place: number) => (place % 48 < 4 ? 1 : 0);
  test.each([
    ['a load of the night', [plain], atNight, 15 / 26.25],
    [
      'a load of the day',
      [plain],
      (place: number) => 1 - atNight(place) - (place % 48 < 12 ? 1 - atNight(place) : 0),
      30 / 26.25,
    ],
    ['all units alike', [plain], () => 3, 1],
    [
      'dated prices: the last day has its own',
      [dated()],
      (place: number, day: number) => (day === 27 && place % 48 >= 12 ? 1 : 0),
      47 / 31,
    ],
    ['no tariff', [], atNight, 1],
    ['no load', [plain], () => 0, 1],
  ])('%s', (_, versions, load, dearness) => expect(dearnessOf(days, { versions }, load)).toBeCloseTo(dearness, 9));
});

describe('price of each reading by the clock', () => {
  test.each([
    ['one version by its bands', [plain], [15, 30]],
    // Half of the days at 15 and 30 p, half at 17 and 40 p.
    ['a change in the middle: the mean of both', [plain, twoRates('2025-06-16', 17, 40)], [16, 35]],
    // Weekdays are days 0 to 4, 7 to 11, 14 to 18 and 21 to 25: 12.5 in the mean.
    ['dated prices: the mean of the weekdays', [dated()], [22.5, 32.5]],
    ['the same with VAT put on', [dated(false)], [22.5 * 1.05, 32.5 * 1.05]],
    ['dated prices that begin later do not count before', [plain, { ...dated(), from: '2026-01-01' }], [15, 30]],
  ])('%s', (_, versions, [night, day]) => {
    const prices = clockPrices(days, { versions });
    expect(at(prices, 0, 2)).toBeCloseTo(night!, 9);
    expect(at(prices, 0, 12)).toBeCloseTo(day!, 9);
  });
  test('weekends have their own mean: days 5, 6, 12, 13, 19, 20, 26, 27 are 16 in the mean', () => {
    expect(at(clockPrices(days, { versions: [dated()] }), 5, 12)).toBeCloseTo(36, 9);
  });
  test('an hour takes both its half-hours', () => {
    const hours = clockPrices(meterDays(readings(60))!, { versions: [dated()] })!;
    expect(hours[12]).toBeCloseTo(32.5, 9);
  });
  test('one day is enough, none is not', () => {
    expect(
      at(
        clockPrices(meterDays({ ...readings(30), days: readings(30).days.slice(0, 1) })!, { versions: [plain] }),
        0,
        2,
      ),
    ).toBe(15);
    expect(clockPrices(meterDays({ ...readings(30), days: [] })!, { versions: [plain] })).toBeNull();
  });
  test.each([
    ['no tariff', []],
    ['the same price at all hours', [twoRates('2024-01-01', 28, 28)]],
    [
      'a price that hangs on the amount too',
      [
        {
          ...plain,
          bands: plain.bands.map((band) => ({
            ...band,
            blocks: { per: 'day' as const, steps: [{ upToKWh: 5, pencePerKWh: 40 }] },
          })),
        },
      ],
    ],
  ])('none for %s', (_, versions) => expect(clockPrices(days, { versions })).toBeNull());
  test('of a meter that stays on winter time: in summer an hour later on the wall, where the zone is known', () => {
    const stays = { ...plain, staysOnWinterTime: true };
    const ofZone = (zone?: string) => clockPrices(days, { versions: [stays], ...(zone ? { zone } : {}) });
    const night = (prices: Float64Array | null) =>
      Array.from({ length: 48 }, (_, half) => prices![half]! < 20).flatMap((isNight, half) => (isNight ? [half] : []));
    const [plainNight] = [night(clockPrices(days, { versions: [plain] }))];
    expect(night(ofZone('Europe/London'))).toEqual(plainNight!.map((half) => (half + 2) % 48).sort((a, b) => a - b));
    expect(night(ofZone())).toEqual(plainNight);
  });
  test('of a meter that stays on winter time: the first hour of a month is still the month before, and only that one', () => {
    const first = toDayNumber('2025-05-29');
    const turn = meterDays({
      ...readings(30),
      days: readings(30).days.map((day, i) => ({ ...day, date: toCivilDate(first + i) })),
    })!;
    const [low, rest] = plain.bands;
    const inMay = { ...low!, times: [{ months: [5], from: '00:00', to: '24:00' }] };
    const prices = clockPrices(turn, {
      versions: [{ ...plain, staysOnWinterTime: true, bands: [inMay, rest!] }],
      zone: 'Europe/London',
    });
    // 31 May, 1 June and 8 June, a Sunday too.
    expect([at(prices, 2, 0), at(prices, 3, 0), at(prices, 3, 1), at(prices, 10, 0)]).toEqual([15, 15, 30, 30]);
  });
});
