import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import type { IntakeContext } from '../../../src/intake/intake.ts';
import { readFile } from '../../../src/intake/read-file.ts';
import { kWhPerUnit } from '../../../src/reference/fuels.ts';

const text = readFileSync(fileURLToPath(new URL('../../corpus/weather-record.epw', import.meta.url)), 'utf8');
const contextOf = (zone: string): IntakeContext => ({
  zone,
  today: '2026-11-25',
  kWhPerUnit,
  gasVolume: { correction: 1.02264, calorificMJPerM3: 39.5, imperialM3PerHundredCubicFeet: 2.83 },
});
const read = (words: string, zone = 'Europe/London') =>
  readFile('any.epw', new TextEncoder().encode(words), {}, contextOf(zone));

describe('hours of a weather file', () => {
  // The file is made as 6 + 4 × sin(2π × (hour − 9) ÷ 24), rounded to a tenth: coldest at three, 2.0; warmest at 15, 10.0.
  test('hour 1 is the hour that begins at midnight of the file’s own winter time', () => {
    const { preview, intervals } = read(text);
    expect(preview.firstDays.slice(0, 4)).toEqual([
      { at: '2025-03-28T00:00', value: 3.2 },
      { at: '2025-03-28T01:00', value: 2.5 },
      { at: '2025-03-28T02:00', value: 2.1 },
      { at: '2025-03-28T03:00', value: 2 },
    ]);
    // In summer time the warmest hour of the file, 15 by winter time, is 16 by the clock: the 15th slot of a 23-hour day.
    const change = intervals[0]!.days.find((d) => d.date === '2025-03-30')!.values;
    expect([change.length, change.indexOf(10)]).toEqual([23, 15]);
    expect(intervals[0]!.days.find((d) => d.date === '2025-03-31')!.values.indexOf(10)).toBe(16);
  });
  test('99.9 is a missing temperature', () => {
    const { preview } = read(text.replace(',0,?9?9?9?9E0,3.2,', ',0,?9?9?9?9E0,99.9,'));
    expect([preview.series[0]?.present, preview.series[0]?.expected]).toEqual([95, 96]);
    expect(preview.remarks.map((r) => r.code)).toEqual(['gap', 'epw-place']);
  });
  test('years that follow each other are a record', () => {
    const next = text
      .replaceAll(/^2025,3,(\d+),/gm, '2024,12,$1,')
      .replaceAll(/^2024,12,31,/gm, '2025,1,1,')
      .replaceAll(/^2024,12,(28|29|30),/gm, (_, day) => `2024,12,${Number(day) + 1},`);
    const { preview } = read(next);
    expect([preview.series[0]?.from, preview.series[0]?.to]).toEqual(['2024-12-29', '2025-01-02']);
  });
});

describe('stations that have been read for longer than meters', () => {
  const warmth = (day: number) => 10 - 7 * Math.cos((day / 365.25) * 2 * Math.PI) + ((day * 37) % 50) / 10;
  test('days from before 1990 are left out by a note that counts them', () => {
    const first = Date.UTC(1985, 0, 1) / 86_400_000;
    const count = Date.UTC(1991, 0, 1) / 86_400_000 - first;
    const rows = Array.from({ length: count }, (_, i) => {
      const day = new Date((first + i) * 86_400_000).toISOString().slice(0, 10).replaceAll('-', '');
      return `  260,${day},${(10 * warmth(first + i)).toFixed(0)},${(10 * warmth(first + i) - 30).toFixed(0)}`;
    });
    const head = 'TG = daily mean temperature in (0.1 degrees Celsius)\n\nSTN,YYYYMMDD,   TG,   TN\n';
    const { preview } = read(`${head}${rows.join('\n')}\n`, 'Europe/Amsterdam');
    expect([preview.series[0]?.from, preview.series[0]?.to]).toEqual(['1990-01-01', '1991-01-01']);
    expect(preview.remarks.find(({ code }) => code === 'rows-early')?.count).toBe(365 * 5 + 1);
    expect(preview.remarks.filter(({ weight }) => weight !== 'note')).toEqual([]);
  });
  test('year, m and d beside each other are a date', () => {
    const rows = Array.from({ length: 96 }, (_, i) => `2025,3,${1 + Math.floor(i / 24)},${i % 24}:00,${i % 7}.5`);
    const { preview } = read(`Year,m,d,Time,Air temperature (degC)\n${rows.join('\n')}\n`, 'Europe/Helsinki');
    expect(preview.series.map(({ carrier, from, to, present }) => [carrier, from, to, present])).toEqual([
      ['outdoor-temperature', '2025-03-01', '2025-03-05', 96],
    ]);
  });
  test('seconds since 1970 are no days and hours of the eighteenth century', () => {
    const rows = Array.from({ length: 1000 }, (_, i) => `${1_735_686_000 + i * 1800},0.${i % 7}`);
    const { preview } = read(`Inicio,Electricidad (kWh)\n${rows.join('\n')}\n`, 'Europe/Madrid');
    expect(preview.series.map(({ carrier, present }) => [carrier, present])).toEqual([['electricity', 1000]]);
  });
  test('a column that names UTC in each row settles the clock', () => {
    const rows = Array.from({ length: 96 }, (_, i) => {
      const at = new Date(Date.UTC(2025, 2, 29) + i * 3_600_000).toISOString();
      return `${at.slice(0, 10)},${at.slice(11, 16)},UTC,${i % 7}.5`;
    });
    const { preview, intervals } = read(`Date,Time,Time zone,Air temperature (degC)\n${rows.join('\n')}\n`);
    expect(preview.remarks.map(({ code }) => code)).toEqual(['clock-utc']);
    expect(intervals[0]!.days.map(({ date, values }) => [date, values.length])).toContainEqual(['2025-03-30', 23]);
  });
  test('a lone old year among others is a slip', () => {
    const rows = ['2025-01-01,1', '1925-01-02,2', '2025-01-03,3', '2025-01-04,4', '2025-01-05,5', '2025-01-06,6'];
    const { preview } = read(`Date,Electricity kWh\n${rows.join('\n')}\n`);
    expect(preview.remarks.filter(({ code }) => code === 'date-impossible').map(({ row }) => row)).toEqual([3]);
    expect([preview.series[0]?.from, preview.series[0]?.total]).toEqual(['2025-01-01', 19]);
  });
  test('months in lined-up columns below titles with gaps of their own are read', () => {
    const rows = Array.from({ length: 24 }, (_, i) => {
      const mean = 10 - 7 * Math.cos((i / 12) * 2 * Math.PI);
      const [year, month] = [2023 + Math.floor(i / 12), (i % 12) + 1];
      const cells = [String(month).padStart(4), (mean + 4).toFixed(1).padStart(8), (mean - 4).toFixed(1).padStart(8)];
      return `   ${year}${cells.join('')}${'     ---'}`;
    });
    const head = [
      'Nowhere',
      'Location: 450900E 207200N, Lat 51.7 Lon -1.2, 63 metres amsl',
      'Missing data (more than 2 days missing in month) is marked by  ---.',
      '   yyyy  mm    tmax    tmin     sun',
      '               degC    degC   hours',
    ];
    const { preview } = read(`${[...head, ...rows].join('\n')}\n`);
    const [series] = preview.series;
    expect([series?.carrier, series?.from, series?.to]).toEqual(['outdoor-temperature', '2023-01-01', '2025-01-01']);
    expect(preview.remarks.flatMap(({ code, found }) => (code === 'columns-not-understood' ? [found] : []))).toEqual([
      'sun hours',
    ]);
  });
});
