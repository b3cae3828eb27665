/** Workbooks with a sheet for each year or month, read as one record; and sheets that are no such thing. */
import { expect, test } from 'vitest';
import { codesOf, previewOf } from './read-text.ts';
import { type Cell, serialOf, writeWorkbook } from './write-workbook.ts';

const MONTHS = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];

function read(sheets: readonly (readonly [name: string, rows: readonly (readonly Cell[])[]])[], sheet?: string) {
  const book = writeWorkbook(sheets.map(([name, rows]) => ({ name, rows })));
  const preview = previewOf(book, { fileName: 'use.xlsx', choices: sheet === undefined ? {} : { sheet } });
  return {
    series: preview.series.map((s) => `${s.name} ${s.role} ${s.from} ${s.to} ${s.total.toFixed(0)}`),
    asked: codesOf(preview, 'question'),
    noted: codesOf(preview, 'note'),
    sheets: preview.sheets,
  };
}

const byName = (heads: readonly string[], plus = 0) => [heads, ...MONTHS.map((name, i) => [name, 300 - i + plus])];
const dated = (year: number, from = 0, to = 12) => [
  ['Month', 'Electricity (kWh)'],
  ...MONTHS.slice(from, to).map((_, i): Cell[] => [
    { serial: serialOf(new Date(Date.UTC(year, from + i, 1)).toISOString().slice(0, 10)), form: 'date' },
    300 - i,
  ]),
];

test.each([
  ['2024', '2025'],
  ['Electricity 2024', 'Electricity 2025'],
])('the year of months stands in the names %s and %s', (first, second) => {
  const heads = ['Month', 'Electricity (kWh)'];
  const sheets = [
    [first, byName(heads)],
    [second, byName(heads, 10)],
  ] as const;
  expect(read(sheets)).toMatchObject({
    series: ['Electricity (kWh) import 2024-01-01 2026-01-01 7188'],
    asked: [],
    noted: expect.arrayContaining(['sheets-joined']),
    sheets: [`${first} + ${second}`, first, second],
  });
  // One of them alone is had by its name.
  expect(read(sheets, second).series).toEqual([`${second}: Electricity (kWh) import 2025-01-01 2026-01-01 3654`]);
});
test('a sheet for each month goes on, without a year in its name too', () => {
  const names = (year: string) => [0, 1, 2].map((m) => [`${MONTHS[m]}${year}`, dated(2025, m, m + 1)] as const);
  const rows = (sheets: ReturnType<typeof names>) =>
    sheets.map(([name, own], m) => [name, [...own, ...dated(2025, m + 3, m + 4).slice(1)]] as const);
  for (const year of ['', ' 25']) expect(read(rows(names(year))).asked).toEqual([]);
});
test.each([
  ['two homes', ['Main house', dated(2024)], ['Annexe', dated(2025)]],
  ['two homes whose names are like months', ['Main', dated(2024)], ['Octavia', dated(2025)]],
  ['the same days twice', ['2024', dated(2024)], ['2025', dated(2024)]],
  ['two fuels', ['Gas 2024', byName(['Month', 'kWh'])], ['Electricity 2025', byName(['Month', 'kWh'])]],
] as const)('%s are asked about', (_, first, second) => {
  const found = read([first, second]);
  expect([found.asked, found.noted.includes('sheets-joined')]).toEqual([['sheet-asked'], false]);
});
test('two fuels go on in two records, of which one is read', () => {
  const sheets = ['Electric 24', 'Electric 25', 'Gas 24', 'Gas 25'].map(
    (name) => [name, dated(2000 + Number(name.slice(-2)))] as const,
  );
  const found = read(sheets, 'Gas 24 + Gas 25');
  expect(found.sheets?.slice(0, 2)).toEqual(['Electric 24 + Electric 25', 'Gas 24 + Gas 25']);
  expect(found.series[0]).toContain('2024-01-01 2026-01-01');
  expect(read(sheets).asked).toEqual(['sheet-asked']);
});
test('beside a sheet of something else it is asked', () => {
  const sums = ['Summary', [['Year', 'kWh'], ...[2023, 2024, 2025].map((year) => [`${year}`, 3600])]] as const;
  expect(read([sums, ['2024', dated(2024)], ['2025', dated(2025)]]).asked).toEqual(['sheet-asked']);
});
