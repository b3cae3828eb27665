/** What a table says twice counts once, what stands beside it is read or asked about, and units may count in tens or tenths. */
import { expect, test } from 'vitest';
import type { IntakeChoices } from '../../../src/intake/intake.ts';
import { readFile } from '../../../src/intake/read-file.ts';
import { kWhPerUnit } from '../../../src/reference/fuels.ts';

const GAS = { correction: 1.02264, calorificMJPerM3: 39.5, imperialM3PerHundredCubicFeet: 2.83 };

function read(lines: readonly string[], zone = 'Europe/London', choices: IntakeChoices = {}) {
  const bytes = new TextEncoder().encode(lines.join('\n'));
  const { preview } = readFile('a.csv', bytes, choices, { zone, today: '2026-11-25', kWhPerUnit, gasVolume: GAS });
  return {
    asked: preview.remarks.filter((r) => r.weight !== 'note').map(({ code }) => code),
    noted: preview.remarks.filter((r) => r.weight === 'note').map(({ code }) => code),
    series: preview.series.map((s) => `${s.carrier} ${s.role} ${s.total.toFixed(1)}`),
  };
}
const DAYS = Array.from({ length: 60 }, (_, i) => new Date(Date.UTC(2025, 0, 1 + i)).toISOString().slice(0, 10));
const HOURS = Array.from({ length: 240 }, (_, i) => new Date(Date.UTC(2025, 0, 10, i)).toISOString().slice(0, 16));
const amount = (i: number) => 4 + ((i * 37) % 50) / 10;
const sumOf = (count: number, times = 1) =>
  Array.from({ length: count }, (_, i) => amount(i) * times).reduce((a, b) => a + b);
const upTo = (i: number, from: number, times = 1) => (from + (i === 0 ? 0 : sumOf(i, times))).toFixed(2);

test('a counter and the same from nought are one record', () => {
  const rows = HOURS.flatMap((at, i) => [
    `grid_import_energy,${at}Z,${upTo(i, 5000)},${upTo(i, 0)}`,
    `grid_export_energy,${at}Z,${upTo(i, 700, 2)},${upTo(i, 0, 2)}`,
  ]);
  const { series, noted } = read(['statistic,start,state [kWh],sum [kWh]', ...rows]);
  expect(series).toEqual([
    `electricity import ${sumOf(239).toFixed(1)}`,
    `electricity export ${sumOf(239, 2).toFixed(1)}`,
  ]);
  expect(noted).toContain('repeat-left-out');
});

test('a counter of the house beside that of its heat pump is read as well, in rows of their own too', () => {
  const rows = HOURS.flatMap((at, i) => [`${at}:02,${upTo(i, 5000, 2)},`, `${at}:07,,${upTo(i, 300)}`]);
  const { series } = read(['time,house energy (kWh),heat pump energy (kWh)', ...rows]);
  expect(series.map((one) => one.split(' ').slice(0, 2).join(' '))).toEqual([
    'electricity import',
    'electricity heat-pump',
  ]);
});

test.each([
  ['Heat energy (0.1 kWh)', 0.1],
  ['Heat energy [100 Wh]', 0.1],
  ['Heat energy (10 kWh)', 10],
  ['Heat energy (kWh x10)', 10],
  ['Heat energy (kWh)', 1],
])('%s', (heading, times) => {
  expect(read([`Date,${heading}`, ...DAYS.map((day, i) => `${day},${amount(i)}`)]).series).toEqual([
    `heat heat-output ${(sumOf(60) * times).toFixed(1)}`,
  ]);
});

test('a column of units counts in what it says, and is no amount itself', () => {
  const rows = HOURS.map((at, i) => `${at.replace('T', ' ')};${amount(i)};0.1 kWh`);
  const { series } = read(['Time;Value;Unit', ...rows], 'Europe/London', { carrier: 'electricity' });
  expect(series).toEqual([`electricity import ${sumOf(240, 0.1).toFixed(1)}`]);
});

test.each(['Mean temperature (°C x10)', 'Mean temperature (0.1 °C)'])('%s', (heading) => {
  const { series } = read([`Date,${heading}`, ...DAYS.map((day, i) => `${day},${20 + (i % 9) * 10}`)]);
  expect(series).toEqual(['outdoor-temperature weather 5.8']);
});

test('gas in m³ and in kWh row by row is one use', () => {
  const rows = HOURS.flatMap((at, i) => [
    `${at.replace('T', ' ')};Afname;${amount(i).toFixed(3)};m³`,
    `${at.replace('T', ' ')};Afname;${(amount(i) * 11.3).toFixed(3)};kWh`,
  ]);
  const { series } = read(['Tijdstip;Register;Volume;Eenheid', ...rows], 'Europe/Brussels');
  expect(series).toEqual([`gas import ${sumOf(240, 11.3).toFixed(1)}`]);
});

test.each(['Cold generated (kWh)', 'Cooling output (kWh)', 'Kälteenergie (kWh)'])(
  '%s is neither made nor heat',
  (cold) => {
    const rows = DAYS.map((day, i) => `${day},${amount(i)},${amount(i) * 3},${amount(i + 3)}`);
    const { series } = read([`Date,Electricity used (kWh),Heat output (kWh),${cold}`, ...rows]);
    expect(series).toEqual([
      `electricity heat-pump ${sumOf(60).toFixed(1)}`,
      `heat heat-output ${sumOf(60, 3).toFixed(1)}`,
    ]);
  },
);

test('a column of the product says what was sold, and nothing of making', () => {
  const rows = DAYS.map((day, i) => `${day};${amount(i)};kWh;Fjernvarme`);
  expect(read(['Dato;Mengde;Enhet;Produkt', ...rows], 'Europe/Oslo').series).toEqual([
    `heat heat-output ${sumOf(60).toFixed(1)}`,
  ]);
});

test('gallons without a word are asked about', () => {
  const rows = ['10/13/2024,180.2,3.41,614.48', '12/20/2024,171,3.55,607.05', '02/23/2025,190.4,3.6,685.44'];
  expect(read(['Fill date,Gallons,$/gal,Total', ...rows], 'America/New_York').asked).toContain('carrier-guessed');
});

test('three phases by the letter before their name are added', () => {
  const rows = HOURS.map((at, i) => `${at}Z,${amount(i)},${amount(i) * 2},${amount(i) * 3}`);
  const { series } = read(['time,a_act_energy (Wh),b_act_energy (Wh),c_act_energy (Wh)', ...rows], 'Europe/London', {
    carrier: 'electricity',
  });
  expect(series).toEqual([`electricity import ${sumOf(240, 0.006).toFixed(1)}`]);
});

test.each([
  ['what is made, before and behind the inverter', 'PV output (kWh),Inverter output, solar (kWh)', 0.98],
  ['what was reckoned of what was sent out', 'Export (kWh),Export deemed (kWh)', 0.5],
])('%s', (_, headings, times) => {
  const rows = DAYS.map((day, i) => `${day},${amount(i)},${(amount(i) * times).toFixed(2)}`);
  const table = [`Date,${headings.replace(', solar', ' solar')}`, ...rows];
  expect(read(table).asked).toContain('column-asked');
  expect(read(table, 'Europe/London', { every: true }).asked).not.toContain('column-asked');
});

test('temperatures of several places are refused; of one that is said to be out of doors that is taken', () => {
  const rows = (words: readonly string[]) =>
    DAYS.flatMap((day, i) => words.map((word, k) => `${word},${day},${(amount(i) + k).toFixed(1)}`));
  expect(read(['station,date,mean temp (°C)', ...rows(['Hill', 'Valley'])]).asked).toEqual(['places-several']);
  const { asked, series } = read(['sensor,date,temperature (°C)', ...rows(['Hall', 'Outdoor'])]);
  expect([asked, series]).toEqual([[], [`outdoor-temperature weather ${(sumOf(60) / 60 + 1).toFixed(1)}`]]);
});

test.each(['Date,Actual,Target', 'Date,This year,Last year', 'Date,Ist,Soll'])(
  'what was used is told from what it is compared with: %s',
  (heads) => {
    const { series } = read([heads, ...DAYS.map((day, i) => `${day},${8 + (i % 7)},${9 + (i % 5)}`)]);
    const sum = DAYS.reduce((kWh, _, i) => kWh + 8 + (i % 7), 0);
    expect(series).toEqual([`electricity import ${sum}.0`]);
  },
);

test('a column that says whether a reading was an actual one is no amount', () => {
  const { series } = read(['Date,kWh,Actual', ...DAYS.map((day, i) => `${day},${8 + (i % 7)},${i % 2}`)]);
  expect(series).toHaveLength(1);
});

test('headings of ends that come again over a row of units are no second table', () => {
  const rows = HOURS.slice(1).map((at, i) => `${at},0.${100 + ((i * 37) % 300)},0`);
  const again = [...rows.slice(0, 100), 'Fecha fin,Consumo,Excedente', ...rows.slice(100)];
  const { asked, series } = read(['Fecha fin,Consumo,Excedente', ',kWh,kWh', ...again], 'Europe/Madrid');
  expect(asked).not.toContain('sheet-tables-asked');
  expect(series).toHaveLength(2);
});
