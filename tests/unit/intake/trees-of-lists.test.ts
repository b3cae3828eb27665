/** JSON with a list for each fuel, or with nothing but a beginning, a step and values. */
import { describe, expect, test } from 'vitest';
import type { IntakeChoices } from '../../../src/intake/intake.ts';
import { codesOf, previewOf } from './read-text.ts';

function read(tree: unknown, fileName = 'use.json', choices: IntakeChoices = {}) {
  const preview = previewOf(JSON.stringify(tree), { fileName, choices });
  return {
    series: preview.series.map((s) => `${s.carrier} ${s.role} ${s.from} ${s.to} ${s.total.toFixed(1)}`),
    asked: codesOf(preview, 'question'),
    noted: codesOf(preview, 'note'),
    refused: codesOf(preview, 'refusal'),
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
    expect(read(tree)).toMatchObject({ series: [ELECTRICITY, GAS], asked: [], refused: [] });
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

describe('lists without times', () => {
  const electricity = days.map((date, i) => ({ date, kwh: use(i) }));
  const values = days.map((_, i) => gas(i));
  const all: readonly (readonly [string, unknown])[] = [
    ['values beside a list', { electricity, gas: values }],
    ['records of values', { electricity, gas: values.map((kwh) => ({ kwh })) }],
    ['deeper down', { electricity: { unit: 'kWh', days: electricity }, export: { unit: 'kWh', values } }],
    ['beside lists side by side', { electricity: { days, kwh: days.map((_, i) => use(i)) }, gas: { values } }],
    [
      'beside values by date',
      { electricity: { kwh: Object.fromEntries(days.map((d, i) => [d, use(i)])) }, gas: values },
    ],
    ['numbered', { electricity, gas: values.map((kwh, i) => [i, kwh]) }],
    [
      'beside values a step apart',
      { electricity: { start: '2025-01-01', interval: 'P1D', kwh: days.map((_, i) => use(i)) }, gas: { values } },
    ],
  ];
  test.each(all)('%s may be a use', (_, tree) => {
    expect(read(tree)).toMatchObject({ series: [ELECTRICITY], asked: expect.arrayContaining(['unread-lists-asked']) });
    const { asked, noted } = read(tree, 'use.json', { leaveUnread: true });
    expect([asked.includes('unread-lists-asked'), noted.includes('lists-left-out')]).toEqual([false, true]);
  });
  test('as many months as the list with dates has', () => {
    const months = Array.from({ length: 12 }, (_, i) => ({
      month: `2025-${String(i + 1).padStart(2, '0')}`,
      kwh: 300,
    }));
    expect(read({ electricity: months, gas: months.map((_, i) => 900 - i) }).asked).toContain('unread-lists-asked');
    expect(read({ electricity, gas: months.map((_, i) => 900 - i) }).noted).toContain('lists-left-out');
  });
  test.each([
    ['meters', { meters: [{ id: 'a' }, { id: 'b' }] }],
    ['a place', { place: { coordinates: days.map((_, i) => [i, 51]) }, at: [51.5, -0.1] }],
    ['words', { tags: ['a', 'b', 'c', 'd', 'e', 'f'] }],
  ])('%s are no use', (_, beside) => {
    const { asked, noted } = read({ ...beside, electricity });
    expect([asked, noted.includes('lists-left-out')]).toEqual([[], false]);
  });
  test('prices are named', () => {
    const rates = ['day', 'night', 'peak'].map((name, i) => ({ name, pence: 10 + i }));
    expect(read({ electricity, rates })).toMatchObject({
      asked: [],
      noted: expect.arrayContaining(['lists-left-out']),
    });
  });
});

describe('the only list is of what its name says', () => {
  test.each([
    ['gas', 'gas import'],
    ['gasUsage', 'gas import'],
    ['heat_pump', 'electricity heat-pump'],
    ['solar_production', 'electricity generation'],
    ['readings', 'electricity import'],
  ])('%s', (name, expected) => {
    const list = days.map((date, i) => ({ date, kwh: use(i) }));
    const { series, asked } = read({ [name]: list });
    expect(series[0]).toContain(expected);
    expect(asked.includes('carrier-guessed')).toBe(name === 'readings');
  });
  test('the way of one list is not lost below the name of another', () => {
    const list = (kwh: number) => days.map((date, i) => ({ date, kwh: kwh + use(i) }));
    const { series } = read({ electricity: { import: list(0), export: list(1) }, gas: { import: list(2), other: 1 } });
    expect(series.map((one) => one.split(' ').slice(0, 2).join(' '))).toEqual([
      'electricity import',
      'electricity export',
      'gas import',
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
