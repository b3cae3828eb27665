/** What a kept text says of people, and what it goes on saying of the record. All names and numbers are invented. */
import { describe, expect, test } from 'vitest';
import { intakeContext } from '../../../src/desk/take-in.ts';
import { foundWithoutPeople, namesWithoutPeople, withoutPeople } from '../../../src/intake/layout/without-people.ts';
import { readFile } from '../../../src/intake/read-file.ts';
import { cpuMs } from '../cpu-ms.ts';

describe('whom a text is of goes', () => {
  test.each([
    ['Customer: Hetty Plumtree', 'Customer: –'],
    ['Account holder Hetty Plumtree', 'Account holder –'],
    ['Name Hetty Plumtree', 'Name –'],
    ['kunde_hetty_plumtree_gas_2025.csv', 'kunde_–_gas_2025.csv'],
    ['Kunde H. Pflaum.csv', 'Kunde –.csv'],
    ['ms_plumtree_electricity.xml', 'ms_–_electricity.xml'],
    ['Mr Plumtree Gas', '– Gas'],
    ['Titular: Marta Ciruelo Gil', 'Titular: –'],
    ['Nom: Prunier Odile', 'Nom: –'],
    ['Customer: April Plumtree', 'Customer: –'],
    ['Mrs May Plumtree gas', '– gas'],
    ['Dear June Plumtree,', 'Dear –,'],
    ['Plumtree’s house', '– house'],
    ['Premises: High Plum', 'Premises: –'],
    ['Property: Plum Cottage', 'Property: –'],
    ['Plum Lodge, Upper Thorn, ZZ9 9ZZ', '–, –, –'],
    ['Klant: Jet van der Pruim', 'Klant: –'],
    ['hetty@plumtree.example', '–'],
    ['Supply address: Rose Cottage, Upper Thorn', 'Supply address: –'],
    ['7 Thornfield Crescent, ZZ9 9ZZ', '7 –, –'],
    ['Pflaumenweg 14, 99998 Musterdorf', '– 14, –'],
    ['calle Ciruelo 12', '– 12'],
    ['3 Mill Court gas', '3 – gas'],
    ['12 allée des Pruniers', '12 –'],
    ['Am_Pflaumenbaum_4_gas.csv', '–_4_gas.csv'],
    ['Hetty Plumtree', '–'],
    ['H. Plumtree & N. Thornfield', '–'],
    ['PLUMTREE, Ned kWh', '– kWh'],
    ['kWh, Ned Plumtree', 'kWh, –'],
    ['Electricity readings H Plumtree', 'Electricity readings –'],
    ['Lastgang Strom Jürgen Pflaum', 'Lastgang Strom –'],
    ['Jane Wood gas', '– gas'],
    ['Invoice_N_Plumtree_Oct.pdf', 'Invoice_–_Oct.pdf'],
    ['jane-plumtree-gas.csv', '–-gas.csv'],
    ['MPAN 2099912345670', 'MPAN …5670'],
    ['20 9991 2345 670', '…5670'],
    ['meter 099912345670123456789', 'meter …6789'],
    ['account 88123', 'account …23'],
    ['readings 0099-1234-5678', 'readings …5678'],
  ])('%s', (text, kept) => {
    expect(withoutPeople(text)).toBe(kept);
    expect(withoutPeople(kept)).toBe(kept);
  });
});

test.each([
  'Towel Rail',
  'Ice Maker',
  'Fire Alarm',
  'Brand Melder',
  'Brightwater Overview',
  'Milking Parlour',
  'Werkstatt Licht',
  'Koi Filter (kWh)',
  'Nurse Call [kW]',
  'Half-hourly electricity',
  'Wood Lane heat pump',
  'Mill Court heat pump',
  'Larch Rise gas.csv',
  'May Saver',
  'Customer: May 2025',
  'Name: June Readings',
  'Landlord’s meter',
  'Site: Ground Floor',
  'Property: Village Hall',
  'March Fix',
  'Mark Two Tariff',
  'Brightwater Energy',
  'Stadtwerke Oberhain',
  'Thornby Standard',
  'Wärmestrom Plus',
  'Zeitreihe Wirkarbeit',
  'Im Januar 2026',
  'Phase A',
  'Flat B gas',
  'Living Room (kWh)',
  'Heures Creuses',
  'HalfHourlyReadings.csv',
  'Name: Half-hourly electricity',
  'Meter name: Main',
  'Customer Usage Data',
  'Customer charge (EUR)',
  'client_export_2025.csv',
  'Name der Messstelle',
  'Nombre de lectura',
  'Address',
  '17520 Readings',
  'readings_20250101-20251231.csv',
  '31122025.csv',
  '20250101T0030Z',
  'usage 2024_2025.csv',
  'Flat 1 (kWh)',
  'VD HEIZEN TAG',
  'VD ABTAUEN TAG',
])('%s stays as it is', (text) => expect(withoutPeople(text)).toBe(text));

test('a reading that a remark repeats stays, a number as long as a meter’s goes', () => {
  expect(foundWithoutPeople('12345678')).toBe('12345678');
  expect(foundWithoutPeople('2025-03-30 01:30')).toBe('2025-03-30 01:30');
  expect(foundWithoutPeople('2099912345670')).toBe('…5670');
});

test('sheets of several people are still told apart', () => {
  expect(namesWithoutPeople(['Mieter: Pflaum', 'Mieter: Kirsch', 'Gas'])).toEqual([
    'Mieter: –',
    'Mieter: – (2)',
    'Gas',
  ]);
});

test.each([
  `customer ${'de '.repeat(300)}1`,
  `mr ${'A-'.repeat(480)}1`,
  `Mr ${'de '.repeat(300)}1`,
  `rue ${' '.repeat(900)}`,
  'a-'.repeat(500),
  'Ab '.repeat(333),
  'x'.repeat(100_000),
])('a heading made to be slow takes no time: %.12s…', (text) => {
  const begun = cpuMs();
  withoutPeople(text);
  expect(cpuMs() - begun).toBeLessThan(500);
});

test.each([
  ['House name', 'Electricity – (kWh)'],
  ['Supply address', 'Electricity – (kWh)'],
  // A site is as often a room.
  ['Site', 'Electricity Plum Cottage (kWh)'],
])('a house named below “%s” leaves the name of the record %s', (heading, record) => {
  const rows = Array.from({ length: 20 }, (_, i) => `2025-01-${i + 10},Plum Cottage,${9 + (i % 4)}.2`);
  const text = [`Date,${heading},Electricity Plum Cottage (kWh)`, ...rows].join('\n');
  const context = intakeContext('Europe/London', '2026-11-25');
  const { preview } = readFile('plum.csv', new TextEncoder().encode(text), {}, context);
  expect(preview.series.map(({ name }) => name)).toEqual([record]);
});
