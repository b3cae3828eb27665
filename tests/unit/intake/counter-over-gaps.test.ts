/** A counter that was not read for a while still tells what was used meanwhile. */
import { expect, test } from 'vitest';
import { codesOf, previewOf } from './read-text.ts';

const read = (rows: readonly string[]) => {
  const preview = previewOf(rows);
  const [one] = preview.series;
  return {
    total: one!.total.toFixed(1),
    present: [one!.present, one!.expected],
    days: one!.days?.values,
    codes: codesOf(preview),
    shared: preview.remarks.find((r) => r.code === 'counter-shared'),
  };
};
const dated = (day: number) => new Date(Date.UTC(2025, 0, 1 + day)).toISOString().slice(0, 10);
/** Goes on by 8, 9, 10, 11 and 12 kWh in turn. */
const counter = (day: number) => 5000 + 10 * day + [0, -2, -3, -3, -2][day % 5]!;
const days = (missing: (day: number) => boolean) =>
  Array.from({ length: 90 }, (_, day) => day)
    .filter((day) => !missing(day))
    .map((day) => `${dated(day)},${counter(day)}`);

test('days that are missing share what it rose by, and the note says so', () => {
  const whole = read(['Date,Electricity meter reading (kWh)', ...days(() => false)]);
  const gaps = read(['Date,Electricity meter reading (kWh)', ...days((day) => [20, 21, 40].includes(day))]);
  expect([gaps.total, gaps.present]).toEqual([whole.total, whole.present]);
  expect(gaps.days!.slice(19, 22)).toEqual(Array(3).fill((counter(22) - counter(19)) / 3));
  expect(gaps.shared).toMatchObject({ count: 3, effectKWh: counter(22) - counter(19) + counter(41) - counter(39) });
  expect([gaps.codes.includes('gap'), whole.codes.includes('counter-shared')]).toEqual([false, false]);
});

test('more than a fortnight stays a gap', () => {
  const { present, codes } = read(['Date,Electricity meter reading (kWh)', ...days((day) => day > 30 && day < 47)]);
  expect(present).toEqual([72, 89]);
  expect([codes.includes('gap'), codes.includes('counter-shared')]).toEqual([true, false]);
});

const half = (i: number) => {
  const stamp = new Date(Date.UTC(2025, 0, 1) + i * 1_800_000).toISOString().slice(0, 16).replace('T', ' ');
  return `${stamp},${(700 + 0.25 * i + 0.05 * (i % 3)).toFixed(2)}`;
};
const halves = (missing: (i: number) => boolean) =>
  Array.from({ length: 48 * 40 }, (_, i) => i)
    .filter((i) => !missing(i))
    .map(half);

test('half-hours that are missing within a day share it too, longer ones stay a gap', () => {
  const heading = 'Time,Electricity meter reading (kWh)';
  const whole = read([heading, ...halves(() => false)]);
  const hours = read([heading, ...halves((i) => i >= 480 && i < 490)]);
  const long = read([heading, ...halves((i) => i >= 480 && i < 580)]);
  expect([hours.total, hours.present]).toEqual([whole.total, whole.present]);
  expect(hours.shared).toMatchObject({ count: 10 });
  expect([long.codes.includes('gap'), long.codes.includes('counter-shared')]).toEqual([true, false]);
});
