/**
 * What a further row of a long file costs, counted in patterns and cut texts since time strays: what looks at a sample of the
 * rows costs nothing here, what looks at each of ten years of half-hours does.
 */
import { once } from 'node:events';
import { Worker } from 'node:worker_threads';
import { expect, test } from 'vitest';
import { kWhPerUnit } from '../../../src/reference/fuels.ts';
import type { Work } from './count-work.ts';

const context = {
  zone: 'UTC',
  today: '2026-11-25',
  kWhPerUnit,
  gasVolume: { correction: 1.02264, calorificMJPerM3: 39.5, imperialM3PerHundredCubicFeet: 2.83 },
};
const SLOTS = 48;
const two = (n: number) => String(n).padStart(2, '0');
const day = (index: number) => new Date(Date.UTC(2024, 0, 1) + index * 86_400_000).toISOString().slice(0, 10);
const dotted = (index: number) => day(index).split('-').toReversed().join('.');
const clock = (slot: number) => `${two(Math.floor(slot / 2))}:${slot % 2 === 0 ? '00' : '30'}`;
const wh = (index: number, slot: number) => 100 + ((index * 31 + slot * 37) % 397);
const kWh = (index: number, slot: number) => (wh(index, slot) / 1000).toFixed(3);
const halfHours = (days: number, row: (index: number, slot: number) => string) =>
  Array.from({ length: days * SLOTS }, (_, i) => row(Math.floor(i / SLOTS), i % SLOTS));
const clocks = Array.from({ length: SLOTS }, (_, slot) => clock(slot)).join(',');
const across = (days: number, cell: (index: number, slot: number) => string | number) =>
  Array.from({ length: days }, (_, i) =>
    [dotted(i), ...Array.from({ length: SLOTS }, (_, slot) => cell(i, slot))].join(','),
  );

interface LongFile {
  readonly rows: (days: number) => readonly string[];
  /** More than a hundred where the samples that intake takes have more rows than those of a hundred days. */
  readonly days?: number;
  /** Of these a further row may cost so many. */
  readonly patterns: number;
  readonly texts: number;
}

const FILES: Readonly<Record<string, LongFile>> = {
  'a stamp and a number': {
    rows: (days) => ['Start,Electricity kWh', ...halfHours(days, (i, s) => `${day(i)} ${clock(s)},${kWh(i, s)}`)],
    patterns: 0,
    texts: 0,
  },
  'a German stamp, a comma': {
    rows: (days) => [
      'Zeit;Strombezug (kWh)',
      ...halfHours(days, (i, s) => `${dotted(i)} ${clock(s)};${kWh(i, s).replace('.', ',')}`),
    ],
    patterns: 0,
    texts: 0,
  },
  'date and clock apart': {
    rows: (days) => ['Date,Time,Electricity kWh', ...halfHours(days, (i, s) => `${day(i)},${clock(s)},${kWh(i, s)}`)],
    patterns: 0,
    texts: 0,
  },
  'bought and sent out': {
    rows: (days) => [
      'Start,Import kWh,Export kWh',
      ...halfHours(days, (i, s) => `${day(i)} ${clock(s)},${kWh(i, s)},${kWh(s, i)}`),
    ],
    patterns: 0,
    texts: 0,
  },
  'a mark in each row': {
    rows: (days) => [
      'Start,Electricity kWh,Quality',
      ...halfHours(days, (i, s) => `${day(i)} ${clock(s)},${kWh(i, s)},${s % 9 === 0 ? 'E' : 'A'}`),
    ],
    patterns: 0,
    texts: 1,
  },
  'a counter': {
    rows: (days) => [
      'Time,Meter reading kWh',
      ...halfHours(days, (i, s) => `${day(i)} ${clock(s)},${(10_000 + (i * SLOTS + s) * 0.2).toFixed(1)}`),
    ],
    patterns: 0,
    texts: 0,
  },
  'a row for each way': {
    rows: (days) => [
      'Start,Register,kWh',
      ...halfHours(days, (i, s) => `${day(i)} ${clock(s - (s % 2))},${s % 2 === 0 ? 'Import' : 'Export'},${kWh(i, s)}`),
    ],
    days: 200,
    patterns: 1,
    texts: 5,
  },
  'half-hours across': {
    rows: (days) => [`Date,${clocks}`, ...across(days, kWh)],
    days: 550,
    patterns: 0,
    texts: 0,
  },
  'half-hours across, in whole Wh': {
    rows: (days) => [`Date,${clocks}`, ...across(days, wh)],
    days: 550,
    patterns: 0,
    texts: 0,
  },
};

test('a further row of a long file costs no more patterns and texts than it needs', async () => {
  const longer = Object.values(FILES).flatMap(({ rows, days = 100 }) => [rows(days), rows(days + 20)]);
  const worker = new Worker(new URL('./count-work.ts', import.meta.url), {
    workerData: { files: longer.map((lines) => lines.join('\n')), context },
  });
  const [work] = (await once(worker, 'message')) as [readonly Work[]];
  expect(work.length).toBe(longer.length);
  for (const [at, [name, { patterns, texts }]] of Object.entries(FILES).entries()) {
    const [few, many] = [work[2 * at]!, work[2 * at + 1]!];
    const rows = longer[2 * at + 1]!.length - longer[2 * at]!.length;
    expect(many.present, name).toBeGreaterThan(few.present);
    expect((many.patterns - few.patterns) / rows, `${name}: patterns a row`).toBeLessThanOrEqual(patterns);
    expect((many.texts - few.texts) / rows, `${name}: texts a row`).toBeLessThanOrEqual(texts);
  }
});
