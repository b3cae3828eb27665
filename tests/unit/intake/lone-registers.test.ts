/** A register of some hours counts as the whole home only where its other one is there, or a person says so. */
import { expect, test } from 'vitest';
import type { IntakeChoices } from '../../../src/intake/intake.ts';
import { readFile } from '../../../src/intake/read-file.ts';
import { kWhPerUnit } from '../../../src/reference/fuels.ts';

const gasVolume = { correction: 1.02264, calorificMJPerM3: 39.5, imperialM3PerHundredCubicFeet: 2.83 };
const context = { zone: 'Europe/London', today: '2026-11-25', kWhPerUnit, gasVolume };

function read(lines: readonly string[], fileName = 'electricity.csv', given: IntakeChoices = {}) {
  const { preview } = readFile(fileName, new TextEncoder().encode(lines.join('\n')), given, context);
  return {
    asked: preview.remarks.filter(({ code }) => code === 'part-register-asked').map(({ found }) => found),
    refused: preview.remarks.filter(({ weight }) => weight === 'refusal').map(({ code }) => code),
    series: preview.series.length,
  };
}

const days = (count = 200) =>
  Array.from({ length: count }, (_, i) => new Date(Date.UTC(2025, 2, 1 + i)).toISOString().slice(0, 10));
const kWh = (i: number) => (6 + ((i * 11) % 17) / 3).toFixed(2);
const isWeekend = (day: string) => [0, 6].includes(new Date(day).getUTCDay());
/** The second register takes over after half of the days. */
const halves = (first: string, second: string) =>
  days().map((day, i) => `${day},${i < 100 ? first : second},${kWh(i)}`);

test.each<[string, string[]]>([
  ['a register for the first half, the other for the rest', ['Date,Register,kWh', ...halves('Day', 'Night')]],
  ['rates by their German letters', ['Datum,Tarif,Strom (kWh)', ...halves('HT', 'NT')]],
  ['one register in each row', ['Date,Poste,kWh', ...days().map((day, i) => `${day},HC,${kWh(i)}`)]],
  ['a column of a register alone', ['Date,Night units (kWh)', ...days().map((day, i) => `${day},${kWh(i)}`)]],
  ['a title', ['Register: off-peak', 'Date,kWh', ...days().map((day, i) => `${day},${kWh(i)}`)]],
  [
    'bills of one register after the other',
    [
      'From,To,Rate,kWh',
      ...Array.from(
        { length: 10 },
        (_, m) =>
          `2025-${String(m + 1).padStart(2, '0')}-01,2025-${String(m + 2).padStart(2, '0')}-01,${m < 5 ? 'Peak' : 'Off-peak'},${150 + ((m * 37) % 60)}`,
      ),
    ],
  ],
])('%s is asked about, until it is said', (_, lines) => {
  const { asked, refused } = read(lines);
  expect(refused).toEqual([]);
  expect(asked).toHaveLength(1);
  expect(read(lines, 'electricity.csv', { role: 'import' }).asked).toEqual([]);
  expect(read(lines, 'electricity.csv', { beside: 'added' }).asked).toEqual([]);
});

test('two columns of which each has the other half of the days are asked about both', () => {
  const rows = days().map((day, i) => (i < 100 ? `${day},${kWh(i)},` : `${day},,${kWh(i)}`));
  expect(read(['Date,Day kWh,Night kWh', ...rows])).toMatchObject({ series: 2, asked: ['day', 'night'] });
});

test('the name of a file says it too', () => {
  const rows = days().map((day, i) => `${day},${kWh(i)}`);
  expect(read(['Date,kWh', ...rows], 'night-rate.csv').asked).toEqual(['night']);
});

test.each<[string, string[]]>([
  [
    'both registers of each day',
    ['Date,Day kWh,Night kWh', ...days().map((day, i) => `${day},${kWh(i)},${kWh(i + 5)}`)],
  ],
  [
    'both in rows',
    ['Date,Register,kWh', ...days().flatMap((day, i) => [`${day},Day,${kWh(i)}`, `${day},Night,${kWh(i + 5)}`])],
  ],
  [
    'a rate for the weekend',
    ['Date,Tariff,kWh', ...days().map((day, i) => `${day},${isWeekend(day) ? 'Off-peak' : 'Peak'},${kWh(i)}`)],
  ],
  ['a single rate', ['Date,Tariff,kWh', ...days().map((day, i) => `${day},Standard,${kWh(i)}`)]],
  ['a mark', ['Date,Status,kWh', ...days().map((day, i) => `${day},Normal,${kWh(i)}`)]],
  ['how long a row is', ['Date,Resolution,kWh', ...days().map((day, i) => `${day},Day,${kWh(i)}`)]],
  ['an amount a day', ['Date,kWh per day', ...days().map((day, i) => `${day},${kWh(i)}`)]],
  ['the prices of both', ['Day rate 28 p, night rate 12 p', 'Date,kWh', ...days().map((day, i) => `${day},${kWh(i)}`)]],
  ['the price of one', ['Night rate 12 p/kWh', 'Date,kWh', ...days().map((day, i) => `${day},${kWh(i)}`)]],
])('%s is the whole home', (_, lines) => {
  expect(read(lines)).toMatchObject({ asked: [], refused: [] });
});
