import { existsSync, readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { describe, expect, test } from 'vitest';
import type { IntakeContext } from '../../../src/intake/intake.ts';
import { readFile } from '../../../src/intake/read-file.ts';
import { kWhPerUnit } from '../../../src/reference/fuels.ts';

/** A British home, April 2020 to December 2022: sample data of the open library openeemeter/eemeter (Apache License 2.0), kept beside the checkout. */
const FOLDER = resolve(import.meta.dirname, '../../../../shared/reference/open-data');
const isHere = existsSync(FOLDER);
const context: IntakeContext = {
  zone: 'Europe/London',
  today: '2026-11-25',
  kWhPerUnit,
  gasVolume: { correction: 1.02264, calorificMJPerM3: 39.5, imperialM3PerHundredCubicFeet: 2.83 },
};

describe.skipIf(!isHere)('a real home', () => {
  // Rows and the gas total are those stated with the data set; the others were summed apart from intake, with awk.
  test.each([
    ['home-a-gas-hourly-kwh.csv', 'gas', 16_878.262],
    ['home-a-electricity-hourly-kwh.csv', 'electricity', 3789.626],
    ['home-a-outdoor-temperature-hourly-c.csv', 'outdoor-temperature', 10.527],
  ])('%s: every one of 23,508 readings in its local hour', (name, carrier, total) => {
    const { preview, intervals } = readFile(name, new Uint8Array(readFileSync(`${FOLDER}/${name}`)), {}, context);
    expect(preview.remarks.filter((r) => r.weight !== 'note')).toEqual([]);
    expect(preview.choices.clock).toBe('utc');
    const [series] = preview.series;
    expect([series?.carrier, series?.present, series?.expected]).toEqual([carrier, 23_508, 23_508]);
    expect(series?.total).toBeCloseTo(total, 3);
    const lengths = new Map(intervals[0]!.days.map((d) => [d.date, d.values.length]));
    expect([lengths.get('2021-03-28'), lengths.get('2021-10-31'), lengths.get('2021-06-01')]).toEqual([23, 25, 24]);
  });
});

test.runIf(!isHere)('NOT RUN: the open data set is not beside this checkout', () => {
  console.warn(`The real home was NOT RUN: ${FOLDER} is absent.`);
});
