import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { daysInMonth, WEEKDAYS } from '../../../src/model/calendar/civil.ts';
import { yearSlots } from '../../../src/model/calendar/zone.ts';
import type { TariffBand } from '../../../src/model/shapes/tariff.ts';
import {
  exclVat,
  inclVat,
  rateBuckets,
  standingPencePerDayInclVat,
  sumByBucket,
  versionOn,
} from '../../../src/model/tariff/slot-price.ts';
import { allHours, nightAndDay, tariff, version } from './tariffs.ts';

const london2026 = yearSlots(2026, 'Europe/London');
const sum = (values: ArrayLike<number>) => Array.from(values).reduce((total, value) => total + value, 0);
const countOf = (bucketOfSlot: Uint8Array, bucket: number) => bucketOfSlot.filter((b) => b === bucket).length;

describe('the version that holds', () => {
  const three = tariff(['2025-10-01', '2026-01-01', '2026-04-01'].map((from) => version([allHours(25)], { from })));
  test.each([
    ['2025-09-30', '2025-10-01'],
    ['2025-12-31', '2025-10-01'],
    ['2026-01-01', '2026-01-01'],
    ['2026-03-31', '2026-01-01'],
    ['2030-01-01', '2026-04-01'],
  ])('on %s began on %s', (date, from) => {
    expect(versionOn(three, date).from).toBe(from);
    expect(versionOn({ ...three, versions: three.versions.toReversed() }, date).from).toBe(from);
  });
  test('of two of one day the later in the list', () => {
    const twice = tariff([version([allHours(25)]), version([allHours(27)])]);
    expect(versionOn(twice, '2026-03-01').bands[0]!.pencePerKWh).toBe(27);
  });
});

describe('half-hours sorted into prices', () => {
  test('by a meter that stays on winter time: an hour later on the wall in summer, as in winter else', () => {
    const stays = version([...nightAndDay], { staysOnWinterTime: true });
    const { bucketOfSlot } = rateBuckets(stays, london2026);
    const nightOn = (day: number) => {
      const [start, end] = [london2026.dayStart[day]!, london2026.dayStart[day + 1]!];
      const clock = Array.from({ length: end - start }, (_, i) => [
        london2026.minute[start + i]!,
        bucketOfSlot[start + i]!,
      ]);
      return clock.filter(([, band]) => band === 0).map(([minute]) => minute!);
    };
    const halves = (from: number, to: number) => Array.from({ length: (to - from) / 30 }, (_, i) => from + 30 * i);
    // 15 January, and 15 July by British Summer Time: 00:30 to 07:30 is 23:30 to 06:30 of the winter clock.
    expect(nightOn(14)).toEqual([...halves(0, 390), 1410]);
    expect(nightOn(195)).toEqual(halves(30, 450));
    expect(countOf(bucketOfSlot, 0)).toBe(365 * 14);
    const berlin = rateBuckets(stays, yearSlots(2026, 'Europe/Berlin')).bucketOfSlot;
    expect(countOf(berlin, 0)).toBe(365 * 14);
    // In Sydney summer time holds on 1 January.
    const sydney = yearSlots(2026, 'Australia/Sydney');
    const inSydney = rateBuckets(stays, sydney).bucketOfSlot.slice(sydney.dayStart[10], sydney.dayStart[11]);
    expect([...inSydney].flatMap((band, half) => (band === 0 ? [half * 30] : []))).toEqual(halves(30, 450));
  });
  test('a flat tariff has one price for all 17,520', () => {
    const buckets = rateBuckets(version([allHours(26.32)]), london2026);
    expect(buckets.names).toEqual(['all hours']);
    expect(countOf(buckets.bucketOfSlot, 0)).toBe(17_520);
  });

  test('seven night hours a day are 14 half-hours a day, clock changes or not: both fall into them and cancel', () => {
    const buckets = rateBuckets(version(nightAndDay), london2026);
    expect(countOf(buckets.bucketOfSlot, 0)).toBe(365 * 14);
    expect(countOf(buckets.bucketOfSlot, 1)).toBe(17_520 - 365 * 14);
  });

  test('the spring day has two night half-hours fewer, the autumn day two more', () => {
    const { bucketOfSlot } = rateBuckets(version(nightAndDay), london2026);
    const nightOf = (day: number) =>
      countOf(bucketOfSlot.slice(london2026.dayStart[day]!, london2026.dayStart[day + 1]!), 0);
    const springDay = 31 + 28 + 28; // 29 March 2026
    const autumnDay = 31 + 28 + 31 + 30 + 31 + 30 + 31 + 31 + 30 + 24; // 25 October 2026
    expect([nightOf(springDay - 1), nightOf(springDay), nightOf(autumnDay)]).toEqual([14, 12, 16]);
  });

  test('a winter weekday peak is priced on those days only', () => {
    const peak: TariffBand = {
      name: 'peak',
      pencePerKWh: 40,
      times: [{ months: [12], days: ['mon', 'tue', 'wed', 'thu', 'fri'], from: '16:00', to: '19:00' }],
    };
    const { bucketOfSlot } = rateBuckets(version([allHours(25), peak]), london2026);
    expect(countOf(bucketOfSlot, 1)).toBe(23 * 6); // December 2026 has 23 weekdays
    const slots = [...bucketOfSlot.keys()].filter((slot) => bucketOfSlot[slot] === 1);
    expect(slots.every((i) => london2026.month[i] === 11 && WEEKDAYS[london2026.weekday[i]!] !== 'sat')).toBe(true);
    expect([london2026.minute[slots[0]!], london2026.minute[slots[5]!]]).toEqual([960, 1110]);
  });

  test('is kept for the pair of version and year', () => {
    const v = version(nightAndDay);
    expect(rateBuckets(v, london2026)).toBe(rateBuckets(v, london2026));
    expect(rateBuckets(v, yearSlots(2025, 'Europe/London'))).not.toBe(rateBuckets(v, london2026));
  });

  test('an hour without a price is our own fault by then', () => {
    const gap = version([{ name: 'day', pencePerKWh: 25, times: [{ from: '07:00', to: '24:00' }] }]);
    expect(() => rateBuckets(gap, london2026)).toThrow(/no price on mon, month 1, 00:00/);
  });
});

describe('sums over a year', () => {
  const energy = fc
    .integer({ min: 1, max: 1000 })
    .map((seed) => Float64Array.from({ length: 17_520 }, (_, i) => ((i * 7919 + seed * 104_729) % 1000) / 500));
  test('by month and price they are the energy again, and on a flat tariff the cost is price × energy', () => {
    fc.assert(
      fc.property(energy, fc.double({ min: 1, max: 60, noNaN: true }), (kWh, price) => {
        const total = sum(kWh);
        const timed = sumByBucket(rateBuckets(version(nightAndDay), london2026), london2026, kWh);
        expect(sum(timed)).toBeCloseTo(total, 6);
        const flat = rateBuckets(version([allHours(price)]), london2026);
        const cost = sum(sumByBucket(flat, london2026, kWh)) * flat.pencePerKWh[0]!;
        expect(cost / (total * price)).toBeCloseTo(1, 10);
      }),
      { numRuns: 20 },
    );
  });
  test('a unit used in one half-hour is found under its month and its price, and nowhere else', () => {
    const buckets = rateBuckets(version(nightAndDay), london2026);
    for (const slot of [0, 20, 1487, 1488, 9000, 17_519]) {
      const kWh = new Float64Array(17_520);
      kWh[slot] = 3;
      const [month, hour] = [london2026.month[slot]!, london2026.minute[slot]! / 60];
      const place = 2 * month + (hour >= 23.5 || hour < 6.5 ? 0 : 1);
      expect([...sumByBucket(buckets, london2026, kWh)]).toEqual(
        Array.from({ length: 24 }, (_, i) => (i === place ? 3 : 0)),
      );
    }
  });
  test('one kWh in every half-hour gives each month its own length', () => {
    const buckets = rateBuckets(version(nightAndDay), london2026);
    const byMonth = sumByBucket(buckets, london2026, new Float64Array(17_520).fill(1));
    const months = Array.from({ length: 12 }, (_, m) => byMonth[2 * m]! + byMonth[2 * m + 1]!);
    const clockChange = [0, 0, -2, 0, 0, 0, 0, 0, 0, 2, 0, 0];
    expect(months).toEqual(clockChange.map((change, m) => daysInMonth(2026, m + 1) * 48 + change));
  });
});

describe('VAT', () => {
  const bare = version([allHours(31.62)], { vat: { rate: 0.05, included: false }, standingPencePerDay: 50.4 });
  test('prices without VAT are raised, prices with it are left', () => {
    expect(rateBuckets(bare, london2026).pencePerKWh[0]).toBeCloseTo(33.201, 10);
    expect(standingPencePerDayInclVat(bare)).toBeCloseTo(52.92, 10);
    expect(standingPencePerDayInclVat(version([allHours(25)]))).toBe(50);
  });
  test('a standing charge by the month is twelve of them over 365 days, VAT on it too', () => {
    const monthly = { standingPencePerDay: 0, standingPencePerMonth: 1825 }; // 21,900 p a year, 60 p a day
    expect(standingPencePerDayInclVat(version([allHours(25)], monthly))).toBeCloseTo(60, 10);
    const bareMonthly = { ...monthly, vat: { rate: 0.2, included: false } };
    expect(standingPencePerDayInclVat(version([allHours(25)], bareMonthly))).toBeCloseTo(72, 10);
    // Both at once is asked about elsewhere; until then both are counted, which is the dearer reading.
    expect(standingPencePerDayInclVat(version([allHours(25)], { ...monthly, standingPencePerDay: 10 }))).toBeCloseTo(
      70,
      10,
    );
  });
  test('there and back is the same price', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 500, noNaN: true }), fc.boolean(), (pence, included) => {
        const v = version([allHours(pence)], { vat: { rate: 0.05, included } });
        expect(inclVat(v, pence) / 1.05).toBeCloseTo(exclVat(v, pence), 9);
      }),
    );
  });
});
