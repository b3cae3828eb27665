/** JSON with a list for each fuel, or with nothing but a beginning, a step and values. */
import { describe, expect, test } from 'vitest';
import { readFile } from '../../../src/intake/read-file.ts';
import { kWhPerUnit } from '../../../src/reference/fuels.ts';

function read(tree: unknown, fileName = 'use.json') {
  const { preview } = readFile(
    fileName,
    new TextEncoder().encode(JSON.stringify(tree)),
    {},
    {
      zone: 'Europe/London',
      today: '2026-11-25',
      kWhPerUnit,
      gasVolume: { correction: 1.02264, calorificMJPerM3: 39.5, imperialM3PerHundredCubicFeet: 2.83 },
    },
  );
  return {
    series: preview.series.map((s) => `${s.carrier} ${s.role} ${s.from} ${s.to} ${s.total.toFixed(1)}`),
    asked: preview.remarks.filter((r) => r.weight === 'question').map(({ code }) => code),
    refused: preview.remarks.filter((r) => r.weight === 'refusal').map(({ code }) => code),
  };
}

const dayOf2025 = (i: number): string => new Date(Date.UTC(2025, 0, 1 + i)).toISOString().slice(0, 10);
const days = Array.from({ length: 60 }, (_, i) => dayOf2025(i));
const use = (i: number): number => 9 + ((i * 7) % 5);
const gas = (i: number): number => 30 + ((i * 11) % 7);
const ELECTRICITY = 'electricity import 2025-01-01 2025-03-02 660.0';
const GAS = `gas import 2025-01-01 2025-03-02 ${days.reduce((sum, _, i) => sum + gas(i), 0).toFixed(1)}`;

describe('a list under a name of its own', () => {
  const listOf = (of: (i: number) => number, name = 'kwh') => days.map((date, i) => ({ date, [name]: of(i) }));
  test.each([
    ['of each fuel', { electricity: listOf(use), gas: listOf(gas) }],
    ['with names of their own', { electricity: listOf(use), gas: listOf(gas, 'gas_kwh') }],
    [
      'with a unit beside each',
      { electricity: { unit: 'kWh', list: listOf(use, 'used') }, gas: { unit: 'kWh', list: listOf(gas, 'used') } },
    ],
    [
      'of lists side by side',
      { electricity: { days, kwh: days.map((_, i) => use(i)) }, gas: { days, kwh: days.map((_, i) => gas(i)) } },
    ],
    ['beside lists without dates', { meters: [{ id: 1 }, { id: 2 }], electricity: listOf(use), gas: listOf(gas) }],
  ])('%s', (_, tree) => {
    expect(read(tree)).toEqual({ series: [ELECTRICITY, GAS], asked: [], refused: [] });
  });
  test.each([
    ['daily', 'monthly'],
    ['import', 'consumption'],
    ['electricity', 'garage'],
  ])('%s and %s may be one use', (first, second) => {
    expect(read({ [first]: listOf(use), [second]: listOf(gas) })).toMatchObject({
      series: [],
      refused: [expect.any(String)],
    });
  });
  test('lists of years and months go on in each other', () => {
    const all = listOf(use);
    expect(read({ '2025-01': all.slice(0, 31), '2025-02': all.slice(31) }, 'electricity.json').series).toEqual([
      ELECTRICITY,
    ]);
  });
});

describe('values a step apart', () => {
  const values = days.flatMap((_, i) => Array.from({ length: 48 }, () => use(i) / 48));
  test.each([
    [{ start: '2025-01-01T00:00:00Z', interval: 'PT30M' }],
    [{ start: '2025-01-01T00:00:00+00:00', intervalMinutes: 30 }],
    [{ from: '2025-01-01 00:00', step: '30 min' }],
    [{ startTime: '2025-01-01T00:00Z', stepSeconds: 1800 }],
    [{ begin: '2025-01-01T00:00:00Z', resolution: 1800 }],
  ])('%j', (head) => {
    expect(read({ fuel: 'electricity', unit: 'kWh', ...head, values })).toMatchObject({
      series: [ELECTRICITY],
      asked: [],
    });
  });
  test('days', () => {
    const own = days.map((_, i) => use(i));
    expect(read({ fuel: 'electricity', unit: 'kWh', start: '2025-01-01', interval: 'P1D', data: own }).series).toEqual([
      ELECTRICITY,
    ]);
  });
  test('a number that may be minutes or seconds is no step', () => {
    expect(read({ unit: 'kWh', start: '2025-01-01T00:00:00Z', interval: 60, values }).series).toEqual([]);
  });
});
