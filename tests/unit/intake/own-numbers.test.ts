/** Numbers of meters, supply points and stations: known behind their names, kept by their ends only. */
import { expect, test } from 'vitest';
import { intakeContext } from '../../../src/desk/take-in.ts';
import { numbersInText } from '../../../src/intake/layout/own-numbers.ts';
import { readFile } from '../../../src/intake/read-file.ts';

test.each([
  ['Meter serial number: 19L4102233', 'meter 2233'],
  ['MPAN,1012345678901', 'point 8901'],
  ['MPAN 10 1234 5678 901', 'point 8901'],
  ['Zählernummer: 1EMH0012345678', 'meter 5678'],
  ['Zählpunkt DE0001234567890000000000000012345', 'point 2345'],
  ['Numéro de compteur 021875123456', 'meter 3456'],
  ['CUPS: ES0021000000000001AB0F', 'point AB0F'],
  // None of a meter, or none that is whole.
  ['Meter readings from 2025-10-01', undefined],
  ['Meter number 12/03/2025', undefined],
  ['Bezug am Zähler 2025', undefined],
  ['Supply point: Oak House', undefined],
  ['Report 20251001', undefined],
  ['Serial number of the inverter 1234567', undefined],
])('%s', (line, expected) => {
  expect(numbersInText([line]).map(({ of, end }) => `${of} ${end}`)).toEqual(expected === undefined ? [] : [expected]);
});

const numbersOf = (heading: string, cells: readonly string[], amounts = 'Electricity (kWh)') => {
  const rows = Array.from({ length: 200 }, (_, i) => {
    const day = new Date(Date.UTC(2025, 0, 1 + i)).toISOString().slice(0, 10);
    return `${day},${(6 + (i % 5) / 10).toFixed(1)},${cells[Math.floor((i * cells.length) / 200)]}`;
  });
  const bytes = new TextEncoder().encode([`Date,${amounts},${heading}`, ...rows].join('\n'));
  const { series } = readFile('f.csv', bytes, {}, intakeContext('Europe/London', '2026-11-25')).preview;
  return series[0]!.numbers?.map(({ of, end }) => `${of} ${end}`);
};

test('in a column, with both meters of a file in which one was exchanged', () => {
  expect(numbersOf('Meter number', ['19L4102233'])).toEqual(['meter 2233']);
  expect(numbersOf('Meter number', ['19L4102233', '21M8800417'])).toEqual(['meter 0417', 'meter 2233']);
  expect(numbersOf('MPAN', ["'1012345678901"])).toEqual(['point 8901']);
  expect(numbersOf('Station id', ['10147'], 'Mean outdoor temperature (°C)')).toEqual(['station 0147']);
});

test('no column of other words or numbers, and none that a spreadsheet spoiled', () => {
  expect(numbersOf('MPAN', ['1.01235E+12'])).toBeUndefined();
  expect(numbersOf('Account number', ['850123456'])).toBeUndefined();
  expect(numbersOf('Meter', ['Electricity'])).toBeUndefined();
  expect(
    numbersOf(
      'Meter number',
      Array.from({ length: 20 }, (_, i) => `${1_000_000 + i}`),
    ),
  ).toBeUndefined();
});
