/** A day a row in columns of some hours each: by the clocks at which they begin or end, by spans, or by words. */
import { expect, test } from 'vitest';
import { codesOf, previewOf } from './read-text.ts';

const DAYS = Array.from({ length: 28 }, (_, i) => `2025-01-${String(i + 1).padStart(2, '0')}`);
/** The first block of a day has 1.1 kWh, the next 1.2. */
const rowsOf = (blocks: number) =>
  DAYS.map((day, i) =>
    [day, ...Array.from({ length: blocks }, (_, b) => (1.1 + b / 10 + (i % 2) / 100).toFixed(2))].join(','),
  );
const hours = (blocks: number, name: (from: number, to: number) => string) =>
  Array.from({ length: blocks }, (_, b) => name((b * 24) / blocks, ((b + 1) * 24) / blocks)).join(',');
const two = (hour: number) => String(hour).padStart(2, '0');
const half = (hour: number) => `${hour % 12 === 0 ? 12 : hour % 12}${hour % 24 < 12 ? 'am' : 'pm'}`;

test.each<readonly [number, string]>([
  [6, hours(6, (from) => `${two(from)}:00`)],
  [6, hours(6, (_, to) => `${two(to)}:00`)],
  [6, hours(6, (from, to) => `${two(from)}:00-${two(to)}:00 kWh`)],
  [6, hours(6, (from, to) => `${two(from)}:00-${two(to % 24)}:00`)],
  [6, hours(6, (from, to) => `${from}-${to} Uhr`)],
  [6, hours(6, (from, to) => `${half(from)} to ${half(to)}`)],
  [12, hours(12, (from) => `${two(from)}:00`)],
  [12, hours(12, (from, to) => `${two(from)}-${two(to)}`)],
  [8, hours(8, (from, to) => `${two(from)}:00–${two(to)}:00`)],
  [4, 'Night (00-06),Morning (06-12),Afternoon (12-18),Evening (18-24)'],
])('%d blocks of a day, headed %s', (blocks, heads) => {
  const preview = previewOf(['Electricity used (kWh)', `Date,${heads}`, ...rowsOf(blocks)]);
  const [one, ...others] = preview.series;
  expect([others, codesOf(preview, 'question'), codesOf(preview, 'refusal')]).toEqual([[], [], []]);
  expect([one!.intervalMinutes, one!.from, one!.to]).toEqual([1440 / blocks, '2025-01-01', '2025-01-29']);
  expect(one!.days!.values[0]).toBeCloseTo((blocks * (1.1 + 1.1 + (blocks - 1) / 10)) / 2, 6);
});

test.each([
  ['a column missing', '00:00,04:00,08:00,12:00,16:00'],
  ['blocks of different length', '00-07,07-12,12-18,18-24'],
])('%s makes no day of blocks', (_, heads) => {
  const preview = previewOf(['Electricity used (kWh)', `Date,${heads}`, ...rowsOf(heads.split(',').length)]);
  expect(preview.shape).not.toBe('days across');
  expect(codesOf(preview, 'question')).toContain('column-asked');
});

test('the parts of a day by their words are registers of one meter', () => {
  const rows = (heads: string) =>
    previewOf([heads, ...rowsOf(4)], { choices: { unit: 'kWh', decimal: '.' } }).series.length;
  for (const heads of ['Date,Night,Morning,Afternoon,Evening', 'Datum,Nacht,Morgen,Nachmittag,Abend'])
    expect(rows(heads)).toBe(4);
});
