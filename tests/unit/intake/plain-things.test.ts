/** A file is asked about what is open, and not about what it says plainly; beside each that is plain stands one that is open. */
import { describe, expect, test } from 'vitest';
import { remarkSentence } from '../../../src/words/remarks.ts';
import { codesOf, previewOf } from './read-text.ts';

const noise = (i: number) => (i * 37) % 29;
const day = (i: number, first = '2025-01-06') =>
  new Date(Date.parse(first) + i * 86_400_000).toISOString().slice(0, 10);
const month = (i: number) => `2025-${String(i + 1).padStart(2, '0')}-01`;
const bills = (heading: string, value: (i: number) => string | number) =>
  [`From,To,${heading}`, ...Array.from({ length: 8 }, (_, i) => `${month(i)},${month(i + 1)},${value(i)}`)].join('\n');
const readings = (heading: string, value: (i: number) => string | number) =>
  [`Date,${heading}`, ...Array.from({ length: 9 }, (_, i) => `${month(i)},${value(i)}`)].join('\n');
const hours = (headings: string, value: (i: number) => string) =>
  [
    headings,
    ...Array.from({ length: 24 * 8 }, (_, i) => {
      const at = new Date(Date.parse('2025-01-06') + i * 3_600_000).toISOString().slice(0, 16).replace('T', ' ');
      return value(i).replace('@', at);
    }),
  ].join('\n');
const weeks = (before: (i: number) => string) =>
  [
    'Period,Gas (kWh)',
    ...Array.from({ length: 20 }, (_, i) => {
      const [y, m, d] = day(7 * i).split('-');
      return `${before(i)}${d}/${m}/${y},${200 + noise(i)}`;
    }),
  ].join('\n');
const kWh = (i: number) => (0.1 + noise(i) / 30).toFixed(3);

const asked = (text: string, zone?: string) => codesOf(previewOf(text, zone === undefined ? {} : { zone }), 'question');

describe('units of electricity are kWh', () => {
  const both = (i: number) => `${180 + noise(i)},${70 + noise(i + 3)}`;
  test.each([
    ['of two rates', bills('Day units,Night units', both), []],
    ['of electricity by name', bills('Electricity units', (i) => 250 + noise(i)), []],
    ['of gas they may be cubic metres or feet', bills('Gas units', (i) => 150 + noise(i)), ['unit-guessed']],
    ['of what is not said', bills('Units', (i) => 250 + noise(i)), ['carrier-guessed', 'unit-guessed']],
    ['as many as no home uses', bills('Electricity units', (i) => 30_000 + noise(i)), ['unit-doubtful']],
    ['a bare amount', bills('Electricity', (i) => 250 + noise(i)), ['unit-guessed']],
  ])('%s', (_, text, codes) => {
    expect(asked(text)).toEqual(codes);
  });
});

describe('what is metered is told by the number of its supply point, and by reactive energy beside it', () => {
  test.each([
    ['MPAN', hours('MPAN,Start,kWh', (i) => `1200012345678,@,${kWh(i)}`), []],
    ['POD', hours('POD,Start,Consumption (kWh)', (i) => `IT001E12345678,@,${kWh(i)}`), []],
    ['a title', `MPAN: 1200012345678\n${hours('Start,kWh', (i) => `@,${kWh(i)}`)}`, []],
    ['reactive energy', hours('Start,AI (kWh),RI (kVArh)', (i) => `@,${kWh(i)},${kWh(i + 1)}`), []],
    ['gas by name', hours('POD,Start,Gas (kWh)', (i) => `IT001E12345678,@,${kWh(i)}`), []],
    ['a number that either has', hours('MPRN,Start,kWh', (i) => `1200012345,@,${kWh(i)}`), ['carrier-guessed']],
    [
      'numbers of both',
      hours('MPAN,MPRN,Start,kWh', (i) => `1200012345678,881234567,@,${kWh(i)}`),
      ['carrier-guessed'],
    ],
    ['a place that is called so', hours('Start,Pod (kWh)', (i) => `@,${kWh(i)}`), ['carrier-guessed']],
  ])('%s', (_, text, codes) => {
    expect(asked(text)).toEqual(codes);
    const carrier = /gas/i.test(text.slice(0, 60)) ? 'gas' : 'electricity';
    expect(previewOf(text).series.map((one) => one.carrier)).toEqual([carrier]);
  });
});

describe('a counter that sets thousands apart', () => {
  const grouped = (i: number, first: number, step: number) => (first + i * step + noise(i)).toLocaleString('en-GB');
  test.each([
    [
      '98,234 kWh',
      readings('Electricity meter reading (kWh)', (i) => `"${grouped(i, 98_234, 260)}"`),
      [],
      8 * 260 + noise(8),
    ],
    ['17,537 kWh', readings('Gas meter reading (kWh)', (i) => `"${grouped(i, 17_537, 260)}"`), [], 8 * 260 + noise(8)],
    [
      'German',
      readings('Zählerstand Strom (kWh)', (i) => grouped(i, 98_234, 260).replace(',', '.'))
        .replaceAll(/^(\S+?),/gm, '$1;')
        .replace('Date', 'Datum'),
      [],
      8 * 260 + noise(8),
    ],
    // A home may use so many thousandths or so much.
    [
      'thousands as well as thousandths',
      readings('Electricity meter reading (kWh)', (i) => `"${grouped(i, 98_234, 9500)}"`),
      ['decimal-asked'],
      undefined,
    ],
    [
      'of no unit',
      readings('Reading', (i) => `"${grouped(i, 98_234, 260)}"`),
      ['decimal-asked', 'carrier-guessed', 'unit-guessed'],
      undefined,
    ],
    [
      'beside semicolons',
      readings('Gas meter reading (kWh)', (i) => grouped(i, 98_234, 260)).replaceAll(/^(\S+?),/gm, '$1;'),
      ['decimal-asked'],
      undefined,
    ],
  ])('%s', (_, text, codes, total) => {
    const preview = previewOf(text);
    expect(codesOf(preview, 'question')).toEqual(codes);
    if (total !== undefined) expect(preview.series[0]?.total).toBe(total);
  });
});

describe('what was used since the last reading', () => {
  const counted = (i: number) =>
    Array.from({ length: i + 1 }, (__, n) => 260 + noise(n)).reduce((a, b) => a + b, 41_000);
  test('is no unknown word, and up to its date', () => {
    const preview = previewOf(
      readings(
        'Electricity reading (kWh),Used since last (kWh)',
        (i) => `${counted(i)},${i === 0 ? '' : 260 + noise(i)}`,
      ),
    );
    expect(codesOf(preview, 'question')).toEqual([]);
    expect(preview.series.map(({ from, to, total }) => [from, to, total])).toEqual([
      ['2025-01-01', '2025-09-01', counted(8) - counted(0)],
    ]);
  });
  test('has the unit of the counter beside it', () => {
    const preview = previewOf(
      readings('Gas meter (m³),Used since last reading', (i) => `${counted(i)},${i === 0 ? '' : 260 + noise(i)}`),
    );
    expect(codesOf(preview, 'question')).toEqual(['calorific-assumed']);
  });
  test('since last year is another matter', () => {
    expect(previewOf(readings('Electricity saved since last year (kWh)', (i) => 200 + noise(i))).series).toEqual([]);
  });
});

describe('what a battery takes and gives', () => {
  test.each([
    [
      'beside the grid',
      hours(
        'Time,Grid import (kWh),Grid export (kWh),Battery in (kWh),Battery out (kWh)',
        (i) => `@,${kWh(i)},${noise(i) % 3},${noise(i + 1) / 30},${noise(i + 2) / 30}`,
      ),
      [],
      ['import', 'export'],
    ],
    [
      'before it',
      hours('Time,Battery charge (kWh),Electricity (kWh)', (i) => `@,${noise(i + 1) / 30},${kWh(i)}`),
      [],
      ['import'],
    ],
    [
      'by itself',
      hours('Time,Battery charge (kWh)', (i) => `@,${kWh(i)}`),
      ['carrier-guessed', 'part-asked'],
      ['import'],
    ],
    [
      'storage heaters are a use',
      hours('Time,Electricity (kWh),Storage heaters input (kWh)', (i) => `@,${kWh(i)},${kWh(i + 1)}`),
      ['column-asked'],
      ['import'],
    ],
    [
      'a word that is not known',
      hours('Time,Electricity (kWh),Glimmer (kWh)', (i) => `@,${kWh(i)},${kWh(i + 1)}`),
      ['column-asked'],
      ['import'],
    ],
  ])('%s', (_, text, codes, roles) => {
    const preview = previewOf(text);
    expect(codesOf(preview, 'question')).toEqual(codes);
    expect(preview.series.map(({ role }) => role)).toEqual(roles);
    if (codes.length === 0)
      expect(preview.remarks.find(({ code }) => code === 'columns-left-out')?.found).toContain('Battery');
  });
});

describe('weeks by the day with which they begin or end', () => {
  test.each([
    ['w/c', weeks(() => 'w/c '), [], '2025-01-06'],
    ['week commencing', weeks(() => 'Week commencing '), [], '2025-01-06'],
    ['w/e', weeks(() => 'w/e '), [], '2024-12-31'],
    ['no word', weeks(() => ''), ['period-side-asked'], '2025-01-06'],
    ['a word now and then', weeks((i) => (i % 2 ? 'w/c ' : '')), ['period-side-asked'], '2025-01-06'],
  ])('%s', (_, text, codes, from) => {
    const preview = previewOf(text);
    expect(codesOf(preview, 'question')).toEqual(codes);
    expect(preview.series[0]?.from).toBe(from);
  });
});

describe('how full a tank is', () => {
  const level = (i: number) => 1900 - 11 * (i % 90) - (noise(i) % 4);
  const daily = (heading: string, value: (i: number) => number) =>
    [`Date,${heading}`, ...Array.from({ length: 120 }, (_, i) => `${day(i)},${value(i)}`)].join('\n');
  test.each([
    ['Oil tank level (litres)', level],
    ['LPG level (%)', (i: number) => 80 - ((i * 0.6) % 55)],
    ['Füllstand Öltank (l)', level],
    ['Oil (litres)', level],
  ])('%s is refused with what to bring', (heading, value) => {
    const { remarks, series } = previewOf(daily(heading, value));
    expect(series).toEqual([]);
    expect(remarks.filter(({ weight }) => weight === 'refusal').map(remarkSentence)).toEqual([
      `Column "${heading}" of a.csv is how full the tank is. The use is not worked out from that, since each filling hides what was used. Bring the deliveries instead, or type them: the date and the amount of each.`,
    ]);
  });
  const LEVELS = [900, 620, 1350, 1150, 1010, 900];
  const gauged = (heads: string) => [
    heads,
    ...LEVELS.map((litres, i) => `2025-0${i + 1}-14,${litres},${i === 2 ? '1000' : ''}`),
  ];
  test.each(['Gauge date,Tank litres,Filled', 'Date,Tank reading (litres),Delivery', 'Date,Reading litres,Filled up'])(
    'a tank read now and then is no list of deliveries: %s',
    (heads) => expect(codesOf(previewOf(gauged(heads)), 'refusal')).toEqual(['tank-level']),
  );
  test.each(['Date,Litres left,Litres added', 'Date,Dip (l),Delivered', 'Date,Stock litres,Delivered'])(
    'beside its fillings a level counts for nothing: %s',
    (heads) => {
      const { series, remarks } = previewOf([...gauged(heads), '2025-10-20,1500,800']);
      expect(series.map(({ periods }) => periods!.map(({ quantity }) => quantity))).toEqual([[800]]);
      expect(remarks.some(({ weight }) => weight === 'refusal')).toBe(false);
    },
  );
  test('the price of a unit is no cost of the delivery', () => {
    const rows = ['2025-01-10,900,0.62,558.00', '2025-03-15,600,0.65,390.00', '2025-10-20,1000,0.60,600.00'];
    const { series } = previewOf(['Delivery date,Kerosene litres,Price/unit,Total £', ...rows]);
    expect(series[0]!.periods!.map(({ costPence }) => costPence)).toEqual([39_000, 60_000]);
  });
  test('what is burnt by the day, and what is delivered into the tank, are amounts', () => {
    expect(codesOf(previewOf(daily('Oil burnt (litres)', (i) => 3 + noise(i) / 4)))).not.toContain('tank-level');
    const delivered = ['Date,Oil delivered to tank (litres)', '2024-01-15,800', '2024-05-14,650', '2024-10-01,900'];
    expect(previewOf(delivered).series.map(({ carrier }) => carrier)).toEqual(['oil']);
  });
});
