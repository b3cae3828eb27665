import { existsSync, readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { describe, expect, test } from 'vitest';
import { ruleSeconds } from '../../../src/intake/espi/local-time.ts';
import type { IntakeContext } from '../../../src/intake/intake.ts';
import { readFile } from '../../../src/intake/read-file.ts';
import { kWhPerUnit } from '../../../src/reference/fuels.ts';

/** Sample feeds of the standard (EnergyOS.org, Apache License 2.0), kept beside the checkout. */
const FOLDER = resolve(import.meta.dirname, '../../../../shared/reference/espi-samples');
const isHere = existsSync(FOLDER);
const contextOf = (zone: string): IntakeContext => ({
  zone,
  today: '2026-11-25',
  kWhPerUnit,
  gasVolume: { correction: 1.02264, calorificMJPerM3: 39.5, imperialM3PerHundredCubicFeet: 2.83 },
});

describe.skipIf(!isHere)('published sample feeds', () => {
  // Counts and sums of the values as written in the files, summed apart from intake; 1 therm = 29.3071 kWh.
  test.each([
    ['Electric.xml', 'electricity', 'period', 2, 5965.053, '2012-04-01', '2012-05-12'],
    ['Gas.xml', 'gas', 'period', 13, 1074.821 * 29.3071, '2011-04-01', '2012-04-15'],
    ['1dayLP_45Days.xml', 'electricity', 'day', 45, 2958.004, '2012-03-01', '2012-04-15'],
  ])('%s, in the zone of its home', (name, carrier, resolution, count, kWh, from, to) => {
    const bytes = new Uint8Array(readFileSync(`${FOLDER}/${name}`));
    const { preview } = readFile(name, bytes, {}, contextOf('America/New_York'));
    const [series, ...more] = preview.series;
    expect(more).toEqual([]);
    expect(preview.dataRows).toBe(count);
    expect([series?.carrier, series?.role, series?.resolution]).toEqual([carrier, 'import', resolution]);
    expect(series?.total).toBeCloseTo(kWh, 3);
    expect([series?.from, series?.to]).toEqual([from, to]);
    expect(series?.present).toBe(series?.expected);
    // Costs in dollars and a billing summary are there and are left out; nothing else is worth a word.
    expect(preview.remarks.map((r) => [r.code, r.weight])).toEqual([
      ['espi-currency', 'note'],
      ['espi-summary', 'note'],
    ]);
  });

  test('a day of 82,800 seconds is a day, also where the home is said to stand in another zone', () => {
    const bytes = new Uint8Array(readFileSync(`${FOLDER}/1dayLP_45Days.xml`));
    const there = readFile('days.xml', bytes, {}, contextOf('America/New_York')).preview.series[0];
    const here = readFile('days.xml', bytes, {}, contextOf('Europe/London')).preview;
    expect(here.series[0]?.days).toEqual(there?.days);
    // 2012-03-11, when clocks went forward: 73,284 Wh in the file.
    expect(there?.days?.values[10]).toBeCloseTo(73.284, 6);
    expect(here.remarks.map((r) => r.code)).toContain('espi-other-clock');
  });
});

test.runIf(!isHere)('NOT RUN: the sample feeds are not beside this checkout', () => {
  console.warn(`The published sample feeds were NOT RUN: ${FOLDER} is absent.`);
});

describe('coded rules of summer time', () => {
  const at = (rule: string, year: number) => new Date((ruleSeconds(rule, year) ?? Number.NaN) * 1000).toISOString();
  test.each([
    // Second Sunday of March and first Sunday of November, as US law has it since 2007; the codes stand in published feeds.
    ['360E2000', 2012, '2012-03-11T02:00:00.000Z'],
    ['B40E2000', 2012, '2012-11-04T02:00:00.000Z'],
    ['360E2000', 2025, '2025-03-09T02:00:00.000Z'],
    ['B40E2000', 2025, '2025-11-02T02:00:00.000Z'],
    // Last Sunday of March at one o'clock, as in Britain (code made from the rule).
    ['3E0E1000', 2025, '2025-03-30T01:00:00.000Z'],
  ])('%s in %i', (rule, year, expected) => expect(at(rule, year)).toBe(expected));
  test('no code is no rule', () => {
    expect(ruleSeconds('', 2025)).toBeUndefined();
    expect(ruleSeconds('00000000', 2025)).toBeUndefined();
  });
});
