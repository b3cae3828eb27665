/** Lists of several homes ask which one is meant; a column that only sounds so stays what it is. */
import { describe, expect, test } from 'vitest';
import type { IntakeChoices } from '../../../src/intake/intake.ts';
import { readFile } from '../../../src/intake/read-file.ts';
import { kWhPerUnit } from '../../../src/reference/fuels.ts';
import { answersTo } from '../../../src/words/remark-answers.ts';

const gasVolume = { correction: 1.02264, calorificMJPerM3: 39.5, imperialM3PerHundredCubicFeet: 2.83 };

function read(lines: readonly string[], given: IntakeChoices = {}) {
  const context = { zone: 'Europe/London', today: '2026-11-25', kWhPerUnit, gasVolume };
  const bytes = new TextEncoder().encode(lines.join('\n'));
  const { preview } = readFile('electricity.csv', bytes, { carrier: 'electricity', ...given }, context);
  const asked = preview.remarks.find(({ code }) => code === 'sheet-homes-asked');
  return {
    asked: preview.remarks.filter(({ weight }) => weight !== 'note').map(({ code }) => code),
    homes: asked ? answersTo(asked, preview).map(({ choice }) => choice.sheet) : [],
    totals: preview.series.map(({ total }) => total.toFixed(1)),
  };
}

const days = Array.from({ length: 60 }, (_, i) => new Date(Date.UTC(2025, 4, 1 + i)).toISOString().slice(0, 10));
const use = (day: number, home: number) => 5 + home * 3 + ((day * (home + 4)) % 13) / 2;
const total = (home: number) => days.reduce((sum, _, i) => sum + use(i, home), 0).toFixed(1);
const rows = (names: readonly string[]) =>
  days.flatMap((day, i) => names.map((name, home) => `${day},${name},${use(i, home)}`));

test.each<[string, string[], string[]]>([
  ['Flat', ['Flat 1', 'Flat 2', 'Flat 3'], ['Flat 1', 'Flat 2', 'Flat 3']],
  ['Unit', ['101', '102', '201'], ['Unit 101', 'Unit 102', 'Unit 201']],
  ['Apartment no.', ['1A', '1B'], ['Apartment no. 1A', 'Apartment no. 1B']],
  ['Wohnung', ['EG links', 'EG rechts', '1. OG'], ['EG links', 'EG rechts', '1. OG']],
  ['Flat', Array.from({ length: 15 }, (_, i) => `${i + 1}`), Array.from({ length: 15 }, (_, i) => `Flat ${i + 1}`)],
])('rows under “%s” are asked for their home', (heading, names, homes) => {
  const lines = [`Date,${heading},kWh`, ...rows(names)];
  const found = read(lines);
  expect(found).toEqual({ asked: ['sheet-homes-asked'], homes, totals: [total(0)] });
  for (const [home, sheet] of homes.entries())
    expect(read(lines, { sheet })).toEqual({ asked: [], homes: [], totals: [total(home)] });
});

test('a row of a bill for each home', () => {
  const lines = [
    'Flat,From,To,kWh',
    ...['A', 'B', 'C'].map((flat, i) => `${flat},2025-01-01,2025-12-31,${2100 + i * 313}`),
  ];
  expect(read(lines)).toMatchObject({ asked: ['sheet-homes-asked'], homes: ['A', 'B', 'C'], totals: ['2100.0'] });
  expect(read(lines, { sheet: 'C' })).toMatchObject({ asked: [], totals: ['2726.0'] });
});

test.each<[string, string[]]>([
  ['one home', days.map((day, i) => `${day},Flat 7,${use(i, 0)}`)],
  ['no home', days.map((day, i) => `${day},,${use(i, 0)}`)],
])('a column of %s is no list of homes', (_, lines) => {
  expect(read(['Date,Flat,kWh', ...lines])).toMatchObject({ asked: [], totals: [total(0)] });
});

test.each(['Unit', 'Flat', 'Wohnung', 'House'])('what one home used under “%s” is no list of homes', (heading) => {
  const lines = days.map((day, i) => `${day},${use(i, 0).toFixed(0)},${use(i, 1)}`);
  expect(read([`Date,${heading},Heat pump (kWh)`, ...lines]).asked).not.toContain('sheet-homes-asked');
});

test('units of measure are no homes', () => {
  const lines = days.flatMap((day, i) => [`${day},kWh,${use(i, 0)}`, `${day},m3,${use(i, 1)}`]);
  expect(read(['Date,Unit,Amount', ...lines]).asked).not.toContain('sheet-homes-asked');
});

describe('homes of which one begins where another ends', () => {
  const half = (home: string, from: number) =>
    days.slice(from, from + 30).map((day, i) => `${day},${home},${use(from + i, 0)}`);
  const sum = (from: number, to: number) =>
    days
      .slice(from, to)
      .reduce((all, _, i) => all + use(from + i, 0), 0)
      .toFixed(1);
  test.each(['Property', 'Site', 'Address', 'House', 'Objekt'])('are asked about under “%s”', (heading) => {
    const lines = [`Date,${heading},kWh`, ...half('Hill House', 0), ...half('The Barn', 30)];
    const all = 'Hill House + The Barn';
    expect(read(lines)).toMatchObject({ asked: ['sheet-homes-asked'], homes: ['Hill House', 'The Barn', all] });
    expect(read(lines, { sheet: 'The Barn' })).toMatchObject({ asked: [], totals: [sum(30, 60)] });
    expect(read(lines, { sheet: all })).toMatchObject({ asked: [], totals: [total(0)] });
  });
  test('are none where the names come again, or are the rates of a day', () => {
    for (const names of [
      ['Day', 'Night'],
      ['1', '2'],
    ]) {
      const lines = days.map((day, i) => `${day},${names[i % 2]},${use(i, 0)}`);
      expect(read(['Date,House,kWh', ...lines]).asked).not.toContain('sheet-homes-asked');
    }
  });
});
