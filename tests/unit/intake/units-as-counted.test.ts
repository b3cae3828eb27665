/** Units that are written in tens, hundreds, thousands or parts, above a column or in a row of units below it. */
import { expect, test } from 'vitest';
import { codesOf, previewOf } from './read-text.ts';

const days = (cells: string) =>
  Array.from({ length: 28 }, (_, i) => `2025-01-${String(i + 1).padStart(2, '0')},${cells}`);
const totalOf = (rows: readonly string[]) => previewOf(rows).series[0]?.total ?? Number.NaN;
const askedOf = (rows: readonly string[]) => codesOf(previewOf(rows), 'question');

test.each([
  ['100 ft³', 'ccf'],
  ['(100 ft³)', 'ccf'],
  ['100 cu ft', 'ccf'],
  ['100s of ft³', 'ccf'],
  ['ft³ x 100', 'ccf'],
])('“%s” alone in a row of units is “%s”', (written, usual) => {
  const rows = (unit: string) => ['Date,Gas,Read type', `,${unit},`, ...days('2.75,A')];
  expect(totalOf(rows(written))).toBeCloseTo(totalOf(rows(usual)), 6);
  expect(totalOf(rows(written))).toBeCloseTo(totalOf([`Date,Gas (${usual}),Read type`, ...days('2.75,A')]), 6);
});

test('a number with its unit is data where all data bear theirs', () => {
  const rows = [
    'Month,Electricity',
    'Jan (from the 14th),100 kWh',
    ...['Feb', 'Mar', 'Apr'].map((m, i) => `${m} 2025,${210 + 7 * i} kWh`),
  ];
  expect(codesOf(previewOf(rows), 'note')).toContain('date-unreadable');
});

test.each([
  ['kWh', 8, 224],
  ['10 kWh', 0.8, 224],
  ['Wh x 1000', 8, 224],
  ['10³ Wh', 8, 224],
  ['kWh x 1,000', 0.008, 224],
  ['1/10 kWh', 80, 224],
  ['0.1 kWh', 80, 224],
  ['GWh', 0.000008, 224],
  ['MW·h', 0.008, 224],
  ['MWhr', 0.008, 224],
  ['kW-hr', 8, 224],
  ['kW hours', 8, 224],
])('days in “%s”', (unit, amount, total) => {
  const rows = [`Date\tElectricity (${unit})`, ...days(String(amount)).map((row) => row.replace(',', '\t'))];
  expect(totalOf(rows)).toBeCloseTo(total, 6);
});

test('of power come kWh by the length of its readings, and of the power of a day a question', () => {
  const hours = Array.from(
    { length: 48 },
    (_, i) => `2025-01-${i < 24 ? '01' : '02'} ${String(i % 24).padStart(2, '0')}:00,0.002`,
  );
  for (const heading of ['Time,Electricity MW', 'Time,Electricity (megawatts)'])
    expect(totalOf([heading, ...hours])).toBeCloseTo(96, 6);
  expect(askedOf(['Date,Electricity MW', ...days('0.002')])).toEqual(['unit-doubtful']);
});

test.each(['kWh x 20', 'kWh ×40', 'kWh/10', 'kWh ÷ 100'])('what “%s” counts is asked', (unit) => {
  expect(askedOf([`Date,Electricity ${unit}`, ...days('8')])).toEqual(['unit-doubtful']);
});

test.each(['kWh/30 min', 'kWh x1', 'kWh 2025', 'kWh (3 x 230 V)'])('“%s” counts nothing', (unit) => {
  expect(askedOf([`Date,Electricity ${unit}`, ...days('8')])).not.toContain('unit-doubtful');
});
