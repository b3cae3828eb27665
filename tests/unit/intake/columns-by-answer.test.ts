/** A column that is read because a person said so is understood by its own heading, and asked about as if it stood alone. */
import { expect, test } from 'vitest';
import type { IntakeChoices } from '../../../src/intake/intake.ts';
import { codesOf, previewOf } from './read-text.ts';

const day = (i: number) => new Date(Date.UTC(2024, 0, 1 + i)).toISOString().slice(0, 10);
const numbers = [12.5, 31, 22.25, 17, 28.5, 9, 14.75];
/** Sixty days; each column so many times the first. */
const days = (heads: string, ...times: number[]) => [
  `Date;${heads}`,
  ...Array.from({ length: 60 }, (_, i) =>
    [day(i), ...times.map((n, at) => (n * numbers[(i + 2 * at) % 7]!).toFixed(2))].join(';'),
  ),
];
const kindsOf = (text: readonly string[], choices: IntakeChoices = {}) =>
  previewOf(text, { choices }).series.map(({ name, carrier, role }) => `${name}: ${carrier} ${role}`);

test.each([
  'Comprada kWh;Vendida kWh',
  'Achat kWh;Vente kWh',
  'Acquistata kWh;Venduta kWh',
  'Kupiona kWh;Sprzedana kWh',
  'Gekocht kWh;Verkocht kWh',
  'Eingekauft kWh;Verkauft kWh',
  'Köpt kWh;Såld kWh',
  'Ostettu kWh;Myyty kWh',
  'Net in kWh;Net out kWh',
  'grid_in_kwh;grid_out_kwh',
  'Netz an Haus kWh;Haus an Netz kWh',
  'Delivered to customer kWh;Received from customer kWh',
  'Grid draw kWh;Spill kWh',
])('what was sold or went to the grid was sent out: %s', (heads) => {
  const kinds = (choices: IntakeChoices) => kindsOf(days(heads, 1, 0.4), choices).map((kind) => kind.split(': ')[1]);
  expect(kinds({})).toEqual(['electricity import', 'electricity export']);
  expect(kinds({ every: true })).toEqual(['electricity import', 'electricity export']);
});

test('hours of running, humidity, wind, what a battery takes and the heat of the surroundings are never read beside energy', () => {
  for (const heads of ['Betriebsstd.', 'Drifttimmar', 'RH', 'FF', 'Battery W', 'Umweltwärme kWh', 'Nachbarn kWh'])
    expect(kindsOf(days(`${heads};Strom kWh`, 3, 1), { every: true })).toEqual(['Strom kWh: electricity import']);
});

test('what the home uses is behind the meter of its grid: both would be counted twice', () => {
  const heads = 'Grid kWh;Home kWh;Electricity kWh';
  const preview = previewOf(days(heads, 1, 2, 0.4), { choices: { every: true } });
  expect(preview.series.map(({ name }) => name)).not.toContain('Home kWh');
  expect(preview.remarks).toContainEqual(
    expect.objectContaining({ code: 'columns-left-out', found: expect.stringContaining('Home kWh') }),
  );
});

test('a heat meter and the pump beside it are each what they say', () => {
  const heads = days('WMZ Heizung kWh;WMZ Warmwasser kWh;Strom WP kWh', 3, 1, 1.2);
  expect(kindsOf(heads)).toEqual([
    'WMZ Heizung kWh: heat heat-output',
    'WMZ Warmwasser kWh: heat heat-output',
    'Strom WP kWh: electricity heat-pump',
  ]);
  expect(kindsOf(days('Avgiven värme kWh;Eltillförsel kWh;COP', 3, 1, 1), { columns: { value: 2 } })).toEqual([
    'Eltillförsel kWh: electricity heat-pump',
  ]);
});

test('a column taken by an answer takes no energy from another, and its unknown words are asked about', () => {
  const text = days('Electricity kWh;Zorbel kWh', 1, 2);
  for (const choices of [{ every: true }, { columns: { value: 2 } }]) {
    const preview = previewOf(text, { choices });
    expect(preview.remarks).toContainEqual(
      expect.objectContaining({ code: 'carrier-guessed', weight: 'question', column: 'Zorbel kWh' }),
    );
    const ofColumns = { 'Zorbel kWh': { carrier: 'electricity' } } as const;
    expect(codesOf(previewOf(text, { choices: { ...choices, ofColumns } }), 'question')).toEqual(['word-asked']);
  }
});

test('the weather of a title is not that of every column taken', () => {
  const text = ['# T in degrees', ...days('T;Zorbel', 0.3, 1)];
  const other = previewOf(text, { fileName: 'temperature.csv', choices: { every: true } }).series[1];
  expect(other?.carrier).not.toBe('outdoor-temperature');
});
