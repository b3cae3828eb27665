import { describe, expect, test } from 'vitest';
import { toDayNumber } from '../../../src/model/calendar/civil.ts';
import { yearSlots } from '../../../src/model/calendar/zone.ts';
import type { TariffBand } from '../../../src/model/shapes/tariff.ts';
import { bandAt, dayKindOn } from '../../../src/model/tariff/band-times.ts';
import { findTariffFaults } from '../../../src/model/tariff/check-tariff.ts';
import { rateBuckets } from '../../../src/model/tariff/slot-price.ts';
import { allHours, tariff, version } from './tariffs.ts';

const quiet: TariffBand = {
  name: 'quiet days',
  pencePerKWh: 15,
  times: [{ days: ['sat', 'sun', 'bank-holiday'], from: '00:00', to: '24:00' }],
};
const bands = [quiet, allHours(30)];
const england = version(bands, { bankHolidays: 'england-and-wales' });

describe('bank holidays as a kind of day', () => {
  test.each([
    ['a Friday in July', '2026-07-10', 'all hours'],
    ['a Saturday', '2026-07-11', 'quiet days'],
    ['Good Friday', '2026-04-03', 'quiet days'],
    ['Easter Monday', '2026-04-06', 'quiet days'],
    ['Monday in place of Boxing Day', '2026-12-28', 'quiet days'],
    ['2 January, kept in Scotland only', '2026-01-02', 'all hours'],
  ])('%s, %s', (_, date, name) => {
    const place = bandAt(england, Number(date.slice(5, 7)), dayKindOn(england, toDayNumber(date)), 600);
    expect(england.bands[place]!.name).toBe(name);
  });

  test('a year has eight more quiet days than its weekends, in Scotland ten in 2026', () => {
    const slots = yearSlots(2026, 'Europe/London');
    const quietSlots = (one: typeof england) =>
      rateBuckets(one, slots).bucketOfSlot.filter((band) => band === 0).length;
    const weekends = 104;
    // The two clock changes fall on Sundays and cancel.
    expect(quietSlots(england)).toBe((weekends + 8) * 48);
    expect(quietSlots(version(bands, { bankHolidays: 'scotland' }))).toBe((weekends + 10) * 48);
    expect(
      quietSlots(version([{ ...quiet, times: [{ days: ['sat', 'sun'], from: '00:00', to: '24:00' }] }, allHours(30)])),
    ).toBe(weekends * 48);
  });

  test('a window for bank holidays needs to know whose', () => {
    expect(findTariffFaults(tariff([version(bands)]))).toMatchObject([
      { code: 'holidays-without-region', weight: 'refusal', data: { name: 'quiet days' } },
    ]);
    expect(findTariffFaults(tariff([england]))).toEqual([]);
  });

  test('bank holidays forgotten are named', () => {
    const week: TariffBand = {
      name: 'week',
      pencePerKWh: 20,
      times: [{ days: ['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun'], from: '00:00', to: '24:00' }],
    };
    expect(findTariffFaults(tariff([version([week], { bankHolidays: 'northern-ireland' })]))).toMatchObject([
      { code: 'band-gap', data: { month: 1, day: 'bank-holiday', from: '00:00', to: '24:00', count: 12 } },
    ]);
  });
});
