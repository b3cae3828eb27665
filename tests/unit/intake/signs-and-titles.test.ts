/** Signs around numbers and dates, lines drawn below headings, and what a title says that its rows leave out. */
import { describe, expect, test } from 'vitest';
import { timesOfWords } from '../../../src/intake/layout/headings.ts';
import { readAwkwardNumber } from '../../../src/intake/numbers/read-number.ts';
import { codesOf, previewOf } from './read-text.ts';
import { writeWorkbook } from './write-workbook.ts';

const two = (n: number) => String(n).padStart(2, '0');
const range = (n: number) => Array.from({ length: n }, (_, i) => i);
const seriesOf = (preview: ReturnType<typeof previewOf>) =>
  preview.series.map(({ carrier, role, from, to, total }) => `${carrier} ${role} ${from} ${to} ${total.toFixed(1)}`);

test.each([
  ['12,50-', -12.5],
  ['1.234,5- kWh', -1234.5],
  ['7−', -7],
  // Without its cents, as prices are written.
  ['12,-', Number.NaN],
  ['-5-', Number.NaN],
  ['(5-)', Number.NaN],
  ['4,5 t', 4.5],
  ['450 kg', 450],
])('a number as written: %s', (cell, value) => {
  expect(readAwkwardNumber(cell, ',')).toBe(value);
});

test('marks of the way of writing have no width', () => {
  const rows = range(9).map((i) => `\u200e${13 + i}/01/2025\u200f,\u202a${8 + i}.5\u202c`);
  expect(seriesOf(previewOf(['\u200eDate\u200f,Electricity (kWh)\u200f', ...rows]))).toEqual([
    'electricity import 2025-01-13 2025-01-22 112.5',
  ]);
});

test('lines drawn below headings are none', () => {
  const rows = range(9).map(
    (i) => `${13 + i}/01/2025    ${(8.25 + i).toFixed(2).padStart(8)}   ${(61.5 + i).toFixed(1).padStart(7)}`,
  );
  const lined = ['Date          Elec kWh   Gas kWh', '----------    --------   -------', ...rows];
  expect(seriesOf(previewOf(lined))).toEqual([
    'electricity import 2025-01-13 2025-01-22 110.3',
    'gas import 2025-01-13 2025-01-22 589.5',
  ]);
});

describe('days without a year', () => {
  const list = (title: string, dates: readonly string[]) => [
    title,
    'Day,kWh',
    ...dates.map((date, i) => `${date},${10 + i}`),
  ];
  const days = range(9).map((i) => `${two(13 + i)}.01.`);
  test.each([
    ['Gas used in 2025 (kWh)', days],
    ['Gasverbrauch 2025 in kWh', days],
    ['Gas 2025 (kWh)', range(9).map((i) => `${13 + i} Jan`)],
    ['Gas 2025 (kWh)', range(9).map((i) => `${13 + i}/1`)],
    ['Gas 2025 (kWh)', range(9).map((i) => `Jan ${21 - i}`)],
  ])('are of the one that the title names: %s %j', (title, dates) => {
    expect(seriesOf(previewOf(list(title, dates)))).toEqual(['gas import 2025-01-13 2025-01-22 126.0']);
  });
  test('are no Januaries of other years', () => {
    const dates = range(9).map((i) => `Jan ${13 + i}`);
    expect(codesOf(previewOf(list('Gas (kWh)', dates)), 'refusal')).toEqual(['no-dates']);
    const months = ['Jan 24', 'Feb 24', 'Mar 24', 'Apr 24', 'May 24', 'Jun 24'];
    expect(seriesOf(previewOf(list('Gas 2024 (kWh)', months)))[0]).toMatch(/2024-01-01 2024-07-01/);
    const byMonth = ['Jan 22', 'Jan 23', 'Jan 24', 'Feb 22', 'Feb 23', 'Feb 24'];
    expect(codesOf(previewOf(list('Gas 2024 (kWh)', byMonth)), 'refusal')).toEqual([]);
  });
  test.each([
    ['two years', 'Gas 2024 and 2025 (kWh)', days],
    ['no year', 'Gas (kWh)', days],
    ['the year of something else', 'Gas boiler of 2012 (kWh)', days],
    ['a year that ends among them', 'Gas 2025 (kWh)', ['28.12.', '29.12.', '30.12.', '31.12.', '01.01.', '02.01.']],
  ])('are refused with %s', (_, title, dates) => {
    expect(codesOf(previewOf(list(title, dates)), 'refusal')).toEqual(['no-dates']);
  });
});

describe('the order of day and month', () => {
  const hours = (days: number, perDay: number) =>
    range(days * perDay).map((i) => `0${6 + Math.floor(i / perDay)}/01/2025 ${two(i % perDay)}:00,0.4${i % 9}`);
  test('is that in which full days follow each other', () => {
    const preview = previewOf(['Start,Electricity (kWh)', ...hours(4, 24)]);
    expect(seriesOf(preview)[0]).toMatch(/2025-01-06 2025-01-10/);
    expect(codesOf(preview, 'question')).not.toContain('date-order-asked');
  });
  test('stays open where each day has one row', () => {
    expect(codesOf(previewOf(['Date,Electricity (kWh)', ...hours(4, 1)]), 'question')).toContain('date-order-asked');
  });
});

describe('wood to burn', () => {
  const list = (title: string, heading: string) => [
    title,
    `Date,${heading}`,
    ...range(5).map((i) => `1${i}/0${i + 1}/2024,${6 + i}`),
  ];
  test.each(['Brennholz Lieferungen', 'Firewood bought', 'Bois de chauffage'])(
    'is refused by its title: %s',
    (title) => {
      expect(codesOf(previewOf(list(title, 'Menge')), 'refusal')).toContain('other-fuel');
    },
  );
  test.each([
    ['Mrs Wood, Coal Lane', 'Electricity (kWh)'],
    ['Gas since the firewood stove went', 'Gas (kWh)'],
  ])('is no name or place, nor a title above another fuel: %s', (title, heading) => {
    expect(codesOf(previewOf(list(title, heading)), 'refusal')).not.toContain('other-fuel');
  });
});

test('rates that take turns in one column are one record of all hours', () => {
  const rows = range(96 * 3).map((i) => {
    const hour = Math.floor((i % 96) / 4);
    const at = `2025-04-0${7 + Math.floor(i / 96)} ${two(hour)}:${two((i % 4) * 15)}`;
    return `${at},Afname ${hour < 7 || hour >= 22 ? 'Nacht' : 'Dag'},0.${100 + (i % 90)},kWh`;
  });
  const sent = rows.map((row) => row.replace('Afname', 'Injectie').replace(/,0\.(\d+),/, ',0.0$1,'));
  const preview = previewOf(['Van,Register,Volume,Eenheid', ...rows, ...sent], { zone: 'Europe/Brussels' });
  expect(preview.series.map(({ role }) => role)).toEqual(['import', 'export']);
  expect(codesOf(preview, 'question')).not.toContain('part-register-asked');
});

test('a column that names the energy in another language tells what the amounts are', () => {
  const rows = range(72).map(
    (i) => `Sähkö;2025-03-0${1 + Math.floor(i / 24)}T${two(i % 24)}:00:00Z;0,${40 + (i % 50)}`,
  );
  const preview = previewOf(['Tuotteen tyyppi;Alkuaika;Määrä', ...rows], { zone: 'Europe/Helsinki' });
  expect(codesOf(preview, 'question')).not.toContain('carrier-guessed');
});

describe('days by their numbers alone', () => {
  const list = (title: string, numbers: readonly number[]) => [
    title,
    'Day,Electricity kWh',
    ...numbers.map((n, i) => `${n},${8 + (i % 3)}`),
  ];
  const all = range(31).map((i) => i + 1);
  test('are of the month that a title names', () => {
    expect(seriesOf(previewOf(list('January 2025', all)))).toEqual(['electricity import 2025-01-01 2025-02-01 278.0']);
  });
  test.each([
    ['no month', 'Our electricity', all],
    ['two months', 'January 2025 to February 2025', all],
    ['days that begin again', 'January 2025', [...all.slice(0, 20), 1, 2, 3]],
  ])('are refused with %s', (_, title, numbers) => {
    expect(codesOf(previewOf(list(title, numbers)), 'refusal')).toContain('no-dates');
  });
});

test('a sheet that is called by its year gives it to its days', () => {
  const rows = range(40).map((i) => [`${two(1 + (i % 28))}.${two(1 + Math.floor(i / 28))}.`, 3 + (i % 4)]);
  const book = writeWorkbook([{ name: '2024', rows: [['Tag', 'Strom kWh'], ...rows] }]);
  expect(seriesOf(previewOf(book, { fileName: 'strom.xlsx', zone: 'Europe/Berlin' }))[0]).toMatch(
    /2024-01-01 2024-02-13/,
  );
});

test('a point behind the day, as in Hungary', () => {
  const rows = range(9).map((i) => `2025.01.0${i + 1}.;${8 + i}`);
  expect(seriesOf(previewOf(['Datum;Strom kWh', ...rows]))).toEqual(['electricity import 2025-01-01 2025-01-10 108.0']);
});

test('a column of the year behind its quarters is their sum', () => {
  const rows = [2022, 2023, 2024].map((year, i) => [year, 800 + i, 500 + i, 400 + i, 700 + i, 2400 + 4 * i].join(','));
  const preview = previewOf(['Electricity (kWh),Q1,Q2,Q3,Q4,Year', ...rows]);
  expect(seriesOf(preview)).toEqual(['electricity import 2022-01-01 2025-01-01 7212.0']);
});

test.each([
  ["gas used ('000 kwh)", 1000],
  ['gas in thousands of kwh', 1000],
  ['tsd. kwh', 1000],
  ['gas (kwh)', 1],
  ['2000 kwh tariff', 1],
])('how often a number counts: %s', (words, times) => {
  expect(timesOfWords(words)).toBe(times);
});

test('a meter that rises for a year shows readings, however young it is', () => {
  const readings = [2310, 2385, 2441, 2460, 2466, 2470, 2474, 2480, 2499, 2540, 2601, 2680, 2760];
  const dates = range(13).map((i) => `${i === 12 ? 2025 : 2024}-${two((i % 12) + 1)}-01`);
  const preview = previewOf([
    'Date,Gas meter (100s cubic feet)',
    ...readings.map((reading, i) => `${dates[i]},${reading}`),
  ]);
  expect(preview.series[0]?.counter).toMatchObject({ first: 2310, last: 2760 });
  expect(codesOf(preview, 'question')).not.toContain('register-rising-asked');
});

test('degrees by their letter under the words for the ends of a day', () => {
  const rows = range(31).map((i) => `2025-01-${two(i + 1)},${40 + (i % 9)},${24 + (i % 9)},${32 + (i % 9)}`);
  const preview = previewOf(['Date,High (F),Low (F),Avg (F)', ...rows], { zone: 'America/Chicago' });
  expect(preview.series[0]).toMatchObject({ name: 'Avg (F)', carrier: 'outdoor-temperature' });
});
