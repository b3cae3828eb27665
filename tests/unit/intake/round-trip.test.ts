import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { IntakeContext } from '../../../src/intake/intake.ts';
import { readFile } from '../../../src/intake/read-file.ts';
import { toCivilDate, toDayNumber } from '../../../src/model/calendar/civil.ts';
import { localStamp, minutesInDay, offsetMinutes, startOfDay } from '../../../src/model/calendar/zone.ts';
import { kWhPerUnit } from '../../../src/reference/fuels.ts';

const contextOf = (zone: string): IntakeContext => ({
  zone,
  today: '2026-11-25',
  kWhPerUnit,
  gasVolume: { correction: 1.02264, calorificMJPerM3: 39.5, imperialM3PerHundredCubicFeet: 2.83 },
});
const ZONES = [
  'Europe/London',
  'Europe/Dublin',
  'Europe/Berlin',
  'America/New_York',
  'Australia/Adelaide',
  'Asia/Kolkata',
];
/** Days on which one of the zones changes its clocks in 2025, and one ordinary day. */
const MIDDLES = ['2025-03-30', '2025-10-26', '2025-03-09', '2025-11-02', '2025-04-06', '2025-10-05', '2025-06-15'];

interface Day {
  readonly date: string;
  readonly start: number;
  readonly values: number[];
}

/** Whole local days of readings between 0.001 and 3 kWh around a given day. */
const days = fc
  .record({
    zone: fc.constantFrom(...ZONES),
    middle: fc.constantFrom(...MIDDLES),
    before: fc.integer({ min: 2, max: 4 }),
    after: fc.integer({ min: 2, max: 4 }),
    minutes: fc.constantFrom(15, 30, 60),
    seed: fc.array(fc.integer({ min: 1, max: 3000 }), { minLength: 17, maxLength: 23 }),
  })
  .map(({ zone, middle, before, after, minutes, seed }) => {
    let n = 0;
    const list: Day[] = [];
    for (let day = toDayNumber(middle) - before; day <= toDayNumber(middle) + after; day++) {
      const values = Array.from({ length: minutesInDay(zone, day) / minutes }, () => seed[n++ % seed.length]! / 1000);
      list.push({ date: toCivilDate(day), start: startOfDay(zone, day), values });
    }
    return { zone, minutes, days: list };
  });

type Written = { zone: string; minutes: number; days: Day[] };
const each = (w: Written, row: (ms: number, value: number) => string): string[] =>
  w.days.flatMap((d) => d.values.map((value, i) => row(d.start + i * w.minutes * 60_000, value)));
const isoUtc = (ms: number) => new Date(ms).toISOString().slice(0, 16);
const civil = (zone: string, ms: number) => localStamp(zone, ms).replace('T', ' ');
const british = (stamp: string) => `${stamp.slice(8, 10)}/${stamp.slice(5, 7)}/${stamp.slice(0, 4)} ${stamp.slice(11)}`;
const signed = (minutes: number) => {
  const size = Math.abs(minutes);
  const digits = `${String(Math.floor(size / 60)).padStart(2, '0')}:${String(size % 60).padStart(2, '0')}`;
  return `${minutes < 0 ? '-' : '+'}${digits}`;
};

const LAYOUTS: Record<string, (w: Written) => string> = {
  'long, local start stamps': (w) =>
    ['Start,Electricity kWh', ...each(w, (ms, v) => `${civil(w.zone, ms)},${v}`)].join('\n'),
  'long, local end stamps': (w) =>
    [
      'Period end;Electricity kWh',
      ...each(w, (ms, v) => `${civil(w.zone, ms + w.minutes * 60_000)};${String(v).replace('.', ',')}`),
    ].join('\r\n'),
  'long, UTC': (w) => ['Start (UTC),Electricity kWh', ...each(w, (ms, v) => `${isoUtc(ms)},${v}`)].join('\n'),
  'long, offsets, newest first': (w) =>
    [
      'Start\tElectricity Wh',
      ...each(
        w,
        (ms, v) => `${localStamp(w.zone, ms)}${signed(offsetMinutes(w.zone, ms))}\t${Math.round(v * 1000)}`,
      ).reverse(),
    ].join('\n'),
  'long, day first, quoted': (w) =>
    ['"Start","Electricity kWh"', ...each(w, (ms, v) => `"${british(civil(w.zone, ms))}","${v}"`)].join('\n'),
  'wide, columns by count': (w) => {
    const most = Math.max(...w.days.map((d) => d.values.length), 1440 / w.minutes);
    const names = Array.from({ length: most }, (_, i) => `HH${String(i + 1).padStart(2, '0')}`);
    const rows = w.days.map((d) => [d.date, ...Array.from({ length: most }, (_, i) => d.values[i] ?? '')].join(','));
    return [['Electricity kWh', ...names].join(','), ...rows].join('\n');
  },
};

describe('a series written in any layout reads back the same', () => {
  test.each(Object.entries(LAYOUTS))('%s', (_, write) => {
    fc.assert(
      fc.property(days, (w) => {
        // A few days early in a month cannot tell day from month, which is asked; this is the answer.
        const choices = { dayFirst: true };
        const { preview, intervals } = readFile(
          'any.csv',
          new TextEncoder().encode(write(w)),
          choices,
          contextOf(w.zone),
        );
        expect(preview.remarks.filter((r) => r.weight === 'refusal')).toEqual([]);
        expect(intervals[0]?.intervalMinutes).toBe(w.minutes);
        expect(intervals[0]?.days.map((d) => d.date)).toEqual(w.days.map((d) => d.date));
        w.days.forEach((day, i) => {
          expect(Array.from(intervals[0]!.days[i]!.values, (v) => Math.round(v * 1000) / 1000)).toEqual(day.values);
        });
        const sum = w.days.flatMap((d) => d.values).reduce((a, b) => a + b, 0);
        expect(preview.series[0]!.total).toBeCloseTo(sum, 6);
        expect(preview.series[0]!.days?.values.every((v) => v !== null)).toBe(true);
      }),
      { numRuns: 60 },
    );
  });
  test('whatever rows are left out, the rest keeps its place and the missing count as missing', () => {
    fc.assert(
      fc.property(days, fc.integer({ min: 2, max: 9 }), (w, drop) => {
        const rows = each(w, (ms, v) => `${isoUtc(ms)}Z,${v}`);
        const kept = rows.filter((_, i) => i % 11 !== drop || i === 0 || i === rows.length - 1);
        const text = ['Start,Electricity kWh', ...kept].join('\n');
        const { preview } = readFile('any.csv', new TextEncoder().encode(text), {}, contextOf(w.zone));
        expect([preview.series[0]!.present, preview.series[0]!.expected]).toEqual([kept.length, rows.length]);
      }),
      { numRuns: 40 },
    );
  });
});
