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
