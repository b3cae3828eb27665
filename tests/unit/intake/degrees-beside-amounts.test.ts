/** Degrees beside amounts: never added as phases are, never multiplied by days, and their row of units is no heading. */
import { describe, expect, test } from 'vitest';
import { codesOf, previewOf } from './read-text.ts';

const read = (text: string, zone = 'Europe/London') => {
  const preview = previewOf(text, { zone });
  return {
    series: preview.series.map((s) => `${s.carrier} ${s.role} ${s.total.toFixed(1)} from ${s.from}`),
    codes: codesOf(preview),
  };
};
const two = (n: number) => String(n).padStart(2, '0');
const MEAN = (i: number) => 10 - 7 * Math.cos((2 * Math.PI * i) / 60);
const station = (form: string, degrees: string, join = ',') =>
  [
    ['Garden station', '62 m'].join(join),
    ['Date', 'Tmax', 'Tmin', 'Tmean', 'Rain', 'Wind max'].join(join),
    [form, degrees, degrees, degrees, 'mm', 'mph'].join(join),
    ...Array.from({ length: 60 }, (_, i) => {
      const day = new Date(Date.UTC(2025, 0, 1 + i));
      const date = `${two(day.getUTCDate())}/${two(day.getUTCMonth() + 1)}/2025`;
      return [
        date,
        (MEAN(i) + 3 + (i % 3)).toFixed(1),
        (MEAN(i) - 4 + (i % 2)).toFixed(1),
        MEAN(i).toFixed(1),
        i % 4,
        9 + i,
      ].join(join);
    }),
  ].join('\n');
const WHOLE = Array.from({ length: 60 }, (_, i) => Number(MEAN(i).toFixed(1))).reduce((a, b) => a + b, 0) / 60;

describe('a row of units below the headings of a station', () => {
  test.each([
    ['dd/mm/yyyy', 'deg C'],
    ['DD-MM-YYYY', '°C'],
    ['[yyyy-mm-dd]', 'deg.C'],
    ['TT.MM.JJJJ', '°C'],
  ])('is known by the form of its dates: %s', (form, degrees) => {
    const { series, codes } = read(station(form, degrees));
    expect(series).toEqual([`outdoor-temperature weather ${WHOLE.toFixed(1)} from 2025-01-01`]);
    expect(codes).not.toContain('phases-added');
  });
});

test('three columns named alike are no phases of one supply', () => {
  const rows = Array.from(
    { length: 30 },
    (_, i) => `2025-01-${two(i + 1)},${14 + (i % 5)},${2 + (i % 3)},${8 + (i % 4)}`,
  );
  expect(read(['Date,deg C,deg C,deg C', ...rows].join('\n')).codes).not.toContain('phases-added');
});

test.each([
  ['Avg Daily Temp (F)', 50, 10],
  ['Mean daily temperature (°C)', 10, 10],
])('a daily mean of degrees on a bill stays one: %s', (heading, written, celsius) => {
  const rows = Array.from({ length: 10 }, (_, i) => `${two(i + 2)}/15/2025,30,${100 - 5 * i},${written}`);
  const { series, codes } = read(
    [`Read Date,Billing Days,Gas (therms),${heading}`, ...rows].join('\n'),
    'America/Chicago',
  );
  expect(series.filter((s) => s.startsWith('outdoor'))).toEqual([
    expect.stringMatching(new RegExp(`outdoor-temperature weather ${celsius.toFixed(1)} `)),
  ]);
  expect(codes).not.toContain('per-day-multiplied');
});
