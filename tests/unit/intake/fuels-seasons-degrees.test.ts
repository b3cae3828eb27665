/** Fuels that share a column, rows that are named by seasons, heat that comes by a pipe, and degrees in words. */
import { describe, expect, test } from 'vitest';
import { codesOf, previewOf } from './read-text.ts';

const read = (rows: readonly string[], zone = 'Europe/London') => {
  const preview = previewOf(rows, { zone });
  return {
    series: preview.series.map((s) => `${s.carrier} ${s.total.toFixed(0)}`),
    asked: codesOf(preview, 'question'),
    refused: codesOf(preview, 'refusal'),
    left: preview.remarks.flatMap((one) => (one.code === 'columns-left-out' ? [one.found] : [])),
  };
};
const days = (cell: (day: number) => string) =>
  Array.from({ length: 28 }, (_, i) => `2025-01-${String(i + 1).padStart(2, '0')},${cell(i + 1)}`);

describe('what no way of heating burns, beside a fuel in one column', () => {
  const deliveries = (first: string, other: string) => [
    `2024-01-03,${first}`,
    `2024-06-02,${other}`,
    `2025-01-01,${first}`,
    `2025-02-01,${other}`,
  ];
  test.each([
    ['Heating oil,500,litres', 'Logs,2,m3', 'oil 5150'],
    ['Heating oil,500,litres', 'Logs,300,kg', 'oil 5150'],
    ['Pellets,500,kg', 'Kiln dried logs,700,kg', 'pellets 2400'],
    ['Kerosene,500,litres', 'Coal,100,kg', 'oil 5150'],
  ])('%s beside %s is read apart, and what is left out is named and asked about', (first, other, series) => {
    const found = read(['Date,Product,Quantity,Unit', ...deliveries(first, other)]);
    expect(found).toEqual({ series: [series], asked: ['other-fuel-asked'], refused: [], left: [other.split(',')[0]] });
  });
  test('is asked about in a column of its own too, until it is said that it may be left out', () => {
    const rows = ['Date,Gas kWh,Brennholz kg', ...days((d) => `${30 + (d % 5)},${d % 7}`)];
    expect(read(rows)).toMatchObject({ series: ['gas 896'], asked: ['other-fuel-asked'] });
    expect(codesOf(previewOf(rows, { choices: { leaveUnread: true } }), 'question')).toEqual([]);
  });
  test('two fuels are two records', () => {
    const rows = ['Date,Fuel,Quantity,Unit', ...deliveries('Heating oil,500,litres', 'Pellets,700,kg')];
    expect(read(rows)).toMatchObject({ series: ['oil 5150', 'pellets 3360'], asked: [], left: [] });
  });
  test('a place that is named after a fuel is left in', () => {
    const rows = ['Date,Place,Electricity kWh', ...days((d) => `${d % 2 ? 'Coal shed' : 'House'},${5 + (d % 3)}`)];
    expect(read(rows).left).toEqual([]);
  });
});

test.each([
  ['Ordered', 'Delivered', 'Heating oil litres'],
  ['Bestellt am', 'Geliefert am', 'Heizöl Liter'],
  ['Commandé le', 'Livré le', 'Fioul litres'],
  ['Pedido', 'Entrega', 'Gasóleo litros'],
  ['Ordine', 'Consegna', 'Gasolio litri'],
  ['Besteld', 'Geleverd', 'Stookolie liter'],
  ['Bestilt', 'Leveret', 'Fyringsolie liter'],
])('of “%s” and “%s” the day counts on which the fuel came', (ordered, came, oil) => {
  const rows = ['02.09.2022;19.09.2022;2015', '11.08.2023;30.08.2023;1988', '03.06.2024;12.06.2024;2240'];
  const { series } = previewOf([`${ordered};${came};${oil}`, ...rows], { zone: 'Europe/Berlin' });
  expect(series.map(({ from, to }) => [from, to])).toEqual([['2022-09-19', '2024-06-12']]);
});

test('a list that has the day of the order alone is read by it', () => {
  const { series } = previewOf(['Order date;Heating oil litres', '2022-09-02;900', '2023-09-02;900', '2024-09-02;800']);
  expect(series.map(({ from, to }) => [from, to])).toEqual([['2022-09-02', '2024-09-02']]);
});

describe('rows named by seasons', () => {
  test.each([
    ['2021/22', '2022/23', '2023/24'],
    ['2009/10', '2010/11', '2011/12'],
    ['2009-10', '2010-11', '2011-12'],
    ['2021/2022', '2022/2023', '2023/2024'],
    ['Winter 21/22', 'Winter 22/23', 'Winter 23/24'],
  ])('%s, %s and %s are no months and no years', (...names) => {
    const rows = ['Season,Gas kWh', ...names.map((name, i) => `${name},${12_000 + ((i * 7) % 3) * 100}`)];
    expect(read(rows)).toMatchObject({ series: [], refused: ['rows-of-seasons'] });
  });
  test('months and dates beside a season are', () => {
    const months = ['2009/10', '2009/11', '2009/12', '2010/01'].map(
      (name, i) => `${name},${1200 + ((i * 7) % 3) * 100}`,
    );
    expect(read(['Month,Gas kWh', ...months]).refused).toEqual([]);
    const dated = ['2022/23,2022-10-01,2023-09-30,12000', '2023/24,2023-10-01,2024-09-30,11500'];
    expect(read(['Season,From,To,Gas kWh', ...dated])).toMatchObject({ series: ['gas 23500'], refused: [] });
  });
});

test.each([
  'Réseau de chaleur',
  'Réseau de chaleur urbain',
  'Heat network',
  'Wärmenetz',
  'Fernheizung',
  'Teleriscaldamento',
  'Warmtenet',
  'Fjernvarme',
])('“%s” above a table is heat', (title) => {
  const rows = ['Date,kWh', ...days((d) => `${30 + (d % 5)}`)];
  expect(read([title, ...rows])).toMatchObject({ series: [expect.stringMatching(/^heat /)], asked: [] });
  expect(read([`Date,${title} (kWh)`, ...rows.slice(1)])).toMatchObject({ series: [expect.stringMatching(/^heat /)] });
});

test.each([
  ['Grad C', 5, 5],
  ['Aussen Grad Celsius', 5, 5],
  ['Temperatur °Celsius', 5, 5],
  ['graden C buiten', 5, 5],
  ['Outdoor temperature degrees F', 41, 5],
  ['Aussentemperatur (Grad F)', 41, 5],
])('“%s” is a temperature', (heading, written, celsius) => {
  const preview = previewOf([`Date,${heading}`, ...days((d) => (written + (d % 2 ? 1.8 : -1.8)).toFixed(1))]);
  expect(codesOf(preview, 'question').filter((code) => code !== 'weather-smooth-asked')).toEqual([]);
  expect(preview.series[0]).toMatchObject({ carrier: 'outdoor-temperature', name: heading });
  const known = preview.series[0]!.days!.values.filter((value) => value !== null);
  expect(known.reduce((sum, value) => sum + value, 0) / known.length).toBeCloseTo(celsius, 6);
});
