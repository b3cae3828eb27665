import { describe, expect, test } from 'vitest';
import { addDays, toCivilDate } from '../../../src/model/calendar/civil.ts';
import { findInReadings } from '../../../src/model/findings/find-in-readings.ts';
import { meterDays } from '../../../src/model/findings/meter-days.ts';
import { bandsOf } from '../../../src/model/findings/slot-prices.ts';
import type { EvidencePeriod } from '../../../src/model/shapes/evidence.ts';
import type { TariffVersion } from '../../../src/model/shapes/tariff.ts';
import { FIRST, outdoor, outdoorOn, readingsOf } from './made-days.ts';

/** Months of 30 days whose use follows the cold exactly. */
function bills(change: (month: number, kWh: number) => Partial<EvidencePeriod>): EvidencePeriod[] {
  return Array.from({ length: 9 }, (_, month): EvidencePeriod => {
    let kWh = 0;
    for (let day = month * 30; day < (month + 1) * 30; day++) kWh += 8 + 1.2 * Math.max(0, 15.5 - outdoorOn(day));
    const span = { from: addDays(FIRST, month * 30), to: addDays(FIRST, (month + 1) * 30) };
    return { ...span, kWh, quality: 'actual', ...change(month, kWh) };
  });
}

describe('estimated readings', () => {
  const estimate = (error: number, back: number) => (month: number, kWh: number) =>
    month === 4 ? { kWh: kWh + error, quality: 'estimated' as const } : month === 5 ? { kWh: kWh - back } : {};
  test.each([
    ['200 too much, all of it back', estimate(200, 200), 200],
    ['200 too little, all of it charged later', estimate(-200, -200), -200],
    ['a good estimate', estimate(8, 8), null],
    ['too much, not yet back', estimate(200, 0), null],
  ])('%s', (_, change, kWh) => {
    const input = { readings: [], outdoor: outdoor(280), prices: { pencePerKWh: 25 }, periods: bills(change) };
    const findings = findInReadings(input).filter(({ code }) => code === 'estimate-corrected');
    expect(findings.map((finding) => Math.round(finding.kWh))).toEqual(kWh === null ? [] : [kWh]);
    expect(findings.every(({ kWhYear, penceYear }) => kWhYear === 0 && penceYear === 0)).toBe(true);
  });
});

describe('registers', () => {
  const version: TariffVersion = {
    from: '2025-01-01',
    standingPencePerDay: 50,
    vat: { rate: 0.05, included: true },
    bands: [
      { name: 'night', pencePerKWh: 12, times: [{ from: '00:00', to: '07:00' }] },
      { name: 'day', pencePerKWh: 32, times: 'rest' },
    ],
  };
  // 1 kW by day, 0.5 kW by night: 17 and 3.5 kWh a day; 60 days are 1,020 and 210 kWh.
  const readings = readingsOf(80, (_, hour) => (hour < 7 ? 0.5 : 1), { meter: 'whole-house' });
  const span = { from: FIRST, to: addDays(FIRST, 60) };
  test.each([
    ['right', { dearKWh: 1020, cheapKWh: 210 }, []],
    ['a little off', { dearKWh: 1000, cheapKWh: 230 }, []],
    ['exchanged', { dearKWh: 210, cheapKWh: 1020 }, [-16_200]], // 810 kWh × (12 − 32) p
  ])('%s', (_, bill, pence) => {
    const registers = [{ ...span, ...bill }];
    const findings = findInReadings({
      readings: [readings],
      prices: { pencePerKWh: 25, versions: [version] },
      registers,
    });
    const swapped = findings.filter(({ code }) => code === 'registers-swapped');
    expect(swapped.map((finding) => Math.round(finding.pence))).toEqual(pence);
  });
  test('a bank holiday has the price of its own kind of day', () => {
    const holidays: TariffVersion = {
      ...version,
      bankHolidays: 'england-and-wales',
      bands: [
        { name: 'night', pencePerKWh: 12, times: [{ days: ['bank-holiday'], from: '00:00', to: '24:00' }] },
        version.bands[1]!,
      ],
    };
    const days = meterDays(
      readingsOf(90, () => 1, { meter: 'whole-house' }),
      undefined,
    )!;
    const bands = bandsOf(days, holidays);
    const cheap = Array.from(days.dayNumber)
      .filter((_, day) => bands[day * days.perDay] === 0)
      .map(toCivilDate);
    expect(cheap).toEqual(['2025-12-25', '2025-12-26']); // Banking and Financial Dealings Act 1971, Schedule 1
  });
});
