import { expect, test } from 'vitest';
import { readFile } from '../../../src/intake/read-file.ts';
import { sumRegisters } from '../../../src/model/evidence/sum-registers.ts';

/** Two days of hours: 0.1 kWh each before seven, 0.2 after. */
const lines = Array.from({ length: 48 }, (_, i) => {
  const hour = i % 24;
  const time = `2026-01-${String(10 + Math.floor(i / 24)).padStart(2, '0')}T${String(hour).padStart(2, '0')}:00:00`;
  return hour < 7 ? `${time},0,0.1` : `${time},0.2,0`;
});

test.each([
  ['Day (kWh)', 'Night (kWh)'],
  ['Day rate import (kWh)', 'Night rate import (kWh)'],
  ['Rate 1 (kWh)', 'Rate 2 (kWh)'],
])('%s and %s of a file are one meter', (first, second) => {
  const bytes = new TextEncoder().encode([`Time,${first},${second}`, ...lines].join('\n'));
  const { preview } = readFile('two.csv', bytes, { carrier: 'electricity', role: 'import' }, {
    zone: 'Europe/London',
    today: '2026-11-25',
    gasVolume: { calorificMJPerM3: 39.5, correction: 1.02264 },
  } as Parameters<typeof readFile>[3]);
  expect(preview.series).toHaveLength(2);
  const series = preview.series.map((one) => ({ ...one, evidenceId: 'one-file' }));
  // 7 × 0.1 + 17 × 0.2 each day.
  expect(sumRegisters(series as Parameters<typeof sumRegisters>[0]).map(({ total }) => total.toFixed(3))).toEqual([
    '8.200',
  ]);
});

test('two meters behind each other, each longer than any sample, are two records', () => {
  const stamps = Array.from({ length: 48 * 730 }, (_, i) =>
    new Date(Date.UTC(2023, 0, 1) + i * 1_800_000).toISOString().slice(0, 16),
  );
  const rows = [
    ['house', 0.3],
    ['garage', 0.1],
  ].flatMap(([meter, kWh]) => stamps.map((stamp) => `${meter},${stamp},${kWh}`));
  const bytes = new TextEncoder().encode(['meter,time,kWh', ...rows].join('\n'));
  const { preview } = readFile('behind.csv', bytes, { carrier: 'electricity', role: 'import', clock: 'utc' }, {
    zone: 'Europe/London',
    today: '2026-11-25',
    gasVolume: { calorificMJPerM3: 39.5, correction: 1.02264 },
  } as Parameters<typeof readFile>[3]);
  expect(preview.series.map(({ total }) => Math.round(total))).toEqual([10_512, 3504]);
});
