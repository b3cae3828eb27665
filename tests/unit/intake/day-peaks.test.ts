/** The highest use of each half-hour of the day by month, which a charge on power hangs on. */
import { describe, expect, test } from 'vitest';
import type { IntakeContext } from '../../../src/intake/intake.ts';
import { readFile } from '../../../src/intake/read-file.ts';
import { sumRegisters } from '../../../src/model/evidence/sum-registers.ts';
import { kWhPerUnit } from '../../../src/reference/fuels.ts';

const context: IntakeContext = {
  zone: 'Europe/London',
  today: '2026-11-25',
  kWhPerUnit,
  gasVolume: { correction: 1.02264, calorificMJPerM3: 39.5, imperialM3PerHundredCubicFeet: 2.83 },
};
/** Days of readings from a day of 2026 on, winter time; the value may be left out. */
const seriesOf = (first: string, days: number, minutes: number, kWh: (day: number, slot: number) => number | null) => {
  const perDay = 1440 / minutes;
  const rows = Array.from({ length: days * perDay }, (_, i) => {
    const value = kWh(Math.floor(i / perDay), i % perDay);
    const at = new Date(Date.parse(`${first}T00:00Z`) + i * minutes * 60_000).toISOString().slice(0, 16);
    return value === null ? null : `${at.replace('T', ' ')},${value}`;
  });
  const text = ['Start,Electricity kWh', ...rows.filter((row) => row !== null)].join('\n');
  return readFile('made.csv', new TextEncoder().encode(text), {}, context).preview.series[0]!;
};

describe('the highest half-hours', () => {
  test('are those of any day of the month, each by itself', () => {
    const { dayPeaks } = seriesOf('2026-01-30', 4, 30, (day, half) => (half === 36 ? 1 + day / 10 : 0.2 + half / 1000));
    // 30 and 31 January, then 1 and 2 February.
    expect([dayPeaks![0]![36], dayPeaks![1]![36]]).toEqual([1.1, 1.3]);
    expect(dayPeaks![0]![10]).toBeCloseTo(0.21, 12);
    expect(dayPeaks![2]).toEqual(new Array(48).fill(0));
  });
  test('come of two quarters of an hour together', () => {
    const { dayPeaks } = seriesOf('2026-01-12', 3, 15, (_, slot) =>
      slot === 73 ? 0.9 : slot === 72 ? 0.4 : 0.1 + (slot % 5) / 100,
    );
    expect(dayPeaks![0]![36]).toBeCloseTo(1.3, 12);
  });
  test('leave out a half-hour that is not there', () => {
    const { dayPeaks } = seriesOf('2026-01-12', 3, 30, (day, half) =>
      day === 0 && half === 21 ? null : 0.5 - day / 10 + (half % 7) / 100,
    );
    // 0.50 + 0.06 on the first day; it lacks half-hour 21, so that takes the 0.40 of the second.
    expect([dayPeaks![0]![20], dayPeaks![0]![21]].map((kWh) => kWh!.toFixed(3))).toEqual(['0.560', '0.400']);
  });
  test('are not known of hours, nor of registers that were added', () => {
    expect(seriesOf('2026-01-12', 4, 60, (_, hour) => 0.2 + hour / 100).dayPeaks).toBeUndefined();
    const one = seriesOf('2026-01-12', 3, 30, (_, half) => 0.3 + (half % 7) / 100);
    expect(one.dayPeaks).toBeDefined();
    const day = { ...one, id: 'd', name: 'Day' };
    const night = { ...one, id: 'n', name: 'Night' };
    expect(sumRegisters([day, night]).map(({ name, dayPeaks }) => [name, dayPeaks])).toEqual([
      ['Day + Night', undefined],
    ]);
  });
});

test('how far days stray from the mean weekday of their month: deviation over mean, in each half-hour', () => {
  // 12 to 15 January 2026, Monday to Thursday: 1, 2, 3 and 2 kWh at noon have a mean of 2 and a deviation of √(2/3).
  const { dayStray } = seriesOf('2026-01-12', 4, 30, (day, half) => (half === 24 ? [1, 2, 3, 2][day]! : 0.5));
  expect(dayStray![24]).toBeCloseTo(Math.sqrt(2 / 3) / 2, 12);
  expect(dayStray![3]).toBe(0);
  // Two half-hours together stray less than each: of hours it is not known.
  expect(seriesOf('2026-01-12', 4, 60, (day, hour) => 0.2 + day / 10 + hour / 100).dayStray).toBeUndefined();
});

test('the mean half-hours of weekdays and weekends stand apart', () => {
  // 2026-01-01 is a Thursday.
  const { dayShape, weekShape } = seriesOf('2026-01-01', 7, 30, (day, half) =>
    half === 36 && day % 7 < 2 ? 1.5 : 0.3,
  );
  expect(weekShape!.map((months) => months[0]![36]!.toFixed(6))).toEqual(['0.780000', '0.300000']);
  expect(weekShape!.map((months) => months[0]![10]!.toFixed(6))).toEqual(['0.300000', '0.300000']);
  expect(dayShape![0]![36]).toBeCloseTo((2 * 1.5 + 5 * 0.3) / 7, 9);
  // A month without readings takes the mean of the others.
  expect(weekShape![0]![5]).toEqual(weekShape![0]![0]);
});
