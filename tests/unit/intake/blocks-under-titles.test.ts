/** Blocks of one sheet under titles of their own: told apart by energy, meter and home, joined where only the time differs. */
import { describe, expect, test } from 'vitest';
import { codesOf, previewOf } from './read-text.ts';

const MONTHS = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];
const months = (year: number, least: number) => MONTHS.map((name, i) => `${name} ${year},${least + ((i * 7) % 5)}`);
const readings = (first: number) =>
  ['01-01', '04-01', '07-01', '10-01'].map((day, i) => `2025-${day},${first + 400 * i}`);

function read(rows: readonly string[], sheet?: string) {
  const preview = previewOf(rows, { choices: sheet === undefined ? {} : { sheet } });
  return {
    series: preview.series.map((s) => `${s.carrier} ${s.from} ${s.to} ${s.total.toFixed(0)}`),
    sheets: preview.sheets,
    asked: codesOf(preview, 'question'),
    refused: codesOf(preview, 'refusal'),
  };
}

describe('blocks of different days, of which nothing else would tell', () => {
  test.each<readonly [what: string, names: readonly [string, string], rows: readonly string[]]>([
    [
      'under titles without headings',
      ['Electricity kWh', 'Gas kWh'],
      ['Electricity kWh', ...months(2024, 200), 'Gas kWh', ...months(2025, 900)],
    ],
    [
      'under titles below headings',
      ['Electricity', 'Gas'],
      ['Month,kWh', 'Electricity,', ...months(2024, 200), 'Gas,', ...months(2025, 900)],
    ],
    [
      'under titles in place of the word for dates',
      ['Electricity, kWh', 'Gas, kWh'],
      ['Electricity,kWh', ...months(2024, 200), '', 'Gas,kWh', ...months(2025, 900)],
    ],
    [
      'under titles over headings without a word for dates',
      ['Electricity', 'Gas'],
      ['Electricity', ',kWh', ...months(2024, 200), 'Gas', ',kWh', ...months(2025, 900)],
    ],
    [
      'in ruled tables',
      ['## Electricity', '## Gas'],
      [
        '## Electricity',
        '| Month | kWh |',
        '| --- | ---: |',
        ...months(2024, 200).map((row) => `| ${row.replace(',', ' | ')} |`),
        '',
        '## Gas',
        '| Month | kWh |',
        '| --- | ---: |',
        ...months(2025, 900).map((row) => `| ${row.replace(',', ' | ')} |`),
      ],
    ],
  ])('%s are asked about, and each is read by its name', (_, names, rows) => {
    expect(read(rows)).toMatchObject({ asked: ['sheet-tables-asked'], sheets: names });
    expect(read(rows, names[0])).toMatchObject({ asked: [], series: ['electricity 2024-01-01 2025-01-01 2422'] });
    expect(read(rows, names[1])).toMatchObject({ asked: [], series: ['gas 2025-01-01 2026-01-01 10822'] });
  });

  test.each([
    ['Meter 1', 'Meter 2'],
    ['12 Mill Lane', '14 Mill Lane'],
    ['MPAN: 1200012345678', 'MPAN: 1200098765432'],
    ['House A', 'House B'],
  ])('%s and %s are two', (one, other) => {
    const rows = [
      one,
      'Month,Electricity kWh',
      ...months(2024, 200),
      other,
      'Month,Electricity kWh',
      ...months(2025, 200),
    ];
    expect(read(rows).asked).toEqual(['sheet-tables-asked']);
  });
});

test('counters of the same days are two, under titles or without any', () => {
  const heads = 'Date,Electricity reading (kWh)';
  const titled = [heads, 'Meter A', ...readings(10_000), 'Meter B', ...readings(2000)];
  expect(read(titled).asked).toEqual(['sheet-tables-asked']);
  expect(read([heads, ...readings(10_000), ...readings(2000)]).refused).toContain('times-doubled');
  expect(read([heads, ...readings(2000), ...readings(10_000)]).refused).toContain('times-doubled');
  const exchanged = [heads, ...readings(10_000).slice(0, 3), 'New meter fitted', '2025-07-01,0', '2025-10-01,300'];
  expect(read(exchanged)).toMatchObject({ asked: [], refused: [], series: ['electricity 2025-01-01 2025-10-01 1100'] });
});

describe('what says only when, or what happened, parts nothing', () => {
  const heads = 'Month,Electricity kWh';
  const [first, second] = [months(2024, 200), months(2025, 200)];
  test.each<readonly [what: string, rows: readonly string[]]>([
    ['pages', ['Page 1', heads, ...first, 'Page 2', heads, ...second]],
    ['years', ['Electricity 2024', heads, ...first, 'Electricity 2025', heads, ...second]],
    ['seasons', ['Winter', heads, ...first, '', 'Summer', heads, ...second]],
    ['a table that goes on', ['Use', heads, ...first, '', 'Use (continued)', heads, ...second]],
    ['an event', ['Electricity', heads, ...first, 'Heat pump installed', ...second]],
    ['a note', ['Electricity', heads, ...first, '', 'all estimated from here', ...second]],
  ])('%s', (_, rows) => {
    expect(read(rows)).toMatchObject({ asked: [], series: ['electricity 2024-01-01 2026-01-01 4844'] });
  });

  test('bills with headings over each are all read', () => {
    const bill = (n: number, from: string, to: string) => [
      `Bill ${n}`,
      'From,To,Electricity kWh',
      `${from},${to},${600 + n}`,
    ];
    const rows = [
      ...bill(1, '2025-01-01', '2025-03-31'),
      ...bill(2, '2025-04-01', '2025-06-30'),
      ...bill(3, '2025-07-01', '2025-09-30'),
    ];
    expect(read(rows)).toMatchObject({ asked: [], series: ['electricity 2025-01-01 2025-10-01 1806'] });
  });
});

test('a remark above the headings that comes again among the rows is the title of nothing', () => {
  const rows = Array.from({ length: 60 }, (_, i) => {
    const at = new Date(Date.UTC(2025, 0, 1, i)).toISOString().slice(0, 16).replace('T', ' ');
    return `${at},0.${100 + ((i * 37) % 300)},0.01`;
  });
  const lines = [
    '# Keep for 6 years',
    '#',
    'Start,Electricity,Cost',
    ',kWh,',
    ...rows.slice(0, 40),
    '# Keep for 6 years',
  ];
  const preview = previewOf([...lines, ...rows.slice(40)]);
  expect(codesOf(preview)).not.toContain('sheet-tables-asked');
  expect(preview.series[0]!.present).toBe(60);
});
