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

test('of one gas in two volumes or kWh the one that is taken is read, and both never', () => {
  const head = ['Month,Gas operating m3,Gas norm m3'];
  const months = Array.from({ length: 12 }, (_, i) => {
    const used = 20 + 160 * Math.abs(6 - i);
    return `${String(i + 1).padStart(2, '0')}/2023,${used},${(used * 0.95).toFixed(1)}`;
  });
  const read = (choices: IntakeChoices) => previewOf([...head, ...months], { choices: { carrier: 'gas', ...choices } });
  const first = ['Gas operating m3'];
  const namesOf = (choices: IntakeChoices) => read(choices).series.map(({ name }) => name);
  expect(codesOf(read({}), 'question')).toContain('column-asked');
  expect(codesOf(read({ every: false }), 'question')).not.toContain('column-asked');
  for (const choices of [{}, { every: false }, { every: true }]) expect(namesOf(choices)).toEqual(first);
  expect(namesOf({ columns: { value: 2 } })).toEqual(['Gas norm m3']);
});

test.each([
  ['Grid kWh (+ export / - import)', 1],
  ['Netz kWh (positiv = Einspeisung, negativ = Bezug)', 1],
  ['Einspeisung(+)/Bezug(-) kWh', 1],
  ['Grid kWh (feed-in positive)', 1],
  ['Grid kWh (import positive, export negative)', -1],
  ['Bezug(+)/Einspeisung(-) kWh', -1],
])('the sign that a heading gives to what was sent out: %s', (heading, sign) => {
  const hours = Array.from({ length: 240 }, (_, i) => {
    const sent = i % 24 > 9 && i % 24 < 16;
    return `2024-06-${String(1 + Math.floor(i / 24)).padStart(2, '0')} ${String(i % 24).padStart(2, '0')}:00;${sent ? sign * 2 : -sign * 0.5}`;
  });
  const preview = previewOf([`Time;${heading}`, ...hours]);
  const totals = preview.series.map(({ role, total }) => [role, Math.round(total)]);
  expect(totals).toEqual([
    ['import', 90],
    ['export', 120],
  ]);
  expect(codesOf(preview)).not.toContain('net-asked');
});

test('where no word says what the sign means, either is an answer', () => {
  const hours = Array.from(
    { length: 48 },
    (_, i) =>
      `2024-06-0${1 + Math.floor(i / 24)} ${String(i % 24).padStart(2, '0')}:00;${i % 24 > 9 && i % 24 < 16 ? 5 : -1}`,
  );
  const totals = (net: IntakeChoices['net']) =>
    previewOf(['Time;Grid - import kWh', ...hours], { choices: { net } }).series.map(({ role, total }) => [
      role,
      total,
    ]);
  expect(codesOf(previewOf(['Time;Grid - import kWh', ...hours]))).not.toContain('espi-net');
  expect(totals('bought')).toEqual([
    ['import', 36],
    ['export', 60],
  ]);
});

const weeks = (head: string, rows = 8) => [
  head,
  ...Array.from({ length: rows }, (_, i) => `2023;${40 + i};${70 + ((i * 37) % 60)};${50 + ((i * 23) % 40)}`),
];
test('a fuel by the week, or by the month under words for its use, is what was used and no delivery', () => {
  const both = previewOf(weeks('Jahr;KW;Pellets kg;Strom Haus kWh'), { zone: 'Europe/Berlin' });
  expect(both.series.map(({ carrier, from, to }) => [carrier, from, to])).toEqual([
    ['pellets', '2023-10-02', '2023-11-27'],
    ['electricity', '2023-10-02', '2023-11-27'],
  ]);
  const months = Array.from(
    { length: 12 },
    (_, i) => `01.${String(i + 1).padStart(2, '0')}.2023;${65 + ((i * 53) % 200)}`,
  );
  for (const head of [
    'Datum;Olieforbrug liter',
    'Datum;Heizölverbrauch Liter',
    'Datum;Oil used litres',
    'Datum;Stookolie verbruik liter',
  ])
    expect(previewOf([head, ...months], { zone: 'Europe/Berlin' }).shape).toBe('bills');
});

test('fuel that came is a delivery, however even its dates', () => {
  const months = Array.from(
    { length: 12 },
    (_, i) => `01.${String(i + 1).padStart(2, '0')}.2023;${65 + ((i * 53) % 200)}`,
  );
  for (const head of ['Datum;Heizöl geliefert Liter', 'Datum;Heizöl Liter'])
    expect(previewOf([head, ...months], { zone: 'Europe/Berlin' }).shape).toBe('deliveries');
  const spread = ['2023;3;900;1', '2023;21;1200;1', '2023;44;1100;1', '2024;7;800;1'];
  expect(previewOf(['Jahr;KW;Pellets kg;Lieferungen', ...spread], { zone: 'Europe/Berlin' }).shape).toBe('deliveries');
});

test('two rows of one month with other amounts may be said to stand both, and are then added', () => {
  const text = ['Month,Tariff,Electricity kWh', 'Jan 2023,A,310', 'Feb 2023,A,280', 'Mar 2023,A,120', 'Mar 2023,B,170'];
  expect(codesOf(previewOf(text), 'question')).toEqual(['unread-doubled-asked']);
  const both = previewOf(text, { choices: { overlaps: 'both' } });
  expect(codesOf(both, 'question')).toEqual([]);
  expect(codesOf(both, 'note')).toContain('period-overlap-asked');
  expect(both.series.map(({ total, periods }) => [total, periods?.length])).toEqual([[880, 3]]);
});

test.each(['236 kWh (est.)', '236 kWh est.', '236 kWh (e)'])('an amount with its unit and its mark: %s', (cell) => {
  const [series] = previewOf([
    'Month,Electricity used',
    'January 2023,233 kWh',
    'February 2023,340 kWh',
    `March 2023,${cell}`,
  ]).series;
  expect([series?.total, series?.estimatedCount]).toEqual([809, 1]);
});

test('a word behind a unit that is no mark leaves the cell unread', () => {
  const preview = previewOf([
    'Month,Electricity used',
    'January 2023,233 kWh',
    'February 2023,340 kWh',
    'March 2023,58 kWh CR',
  ]);
  expect(preview.series[0]?.total).toBe(573);
  expect(codesOf(preview, 'question')).toContain('unread-asked');
});
