/** In which order a household’s files are brought changes no figure. */
import { expect, test } from 'vitest';
import { openHome } from './open-home.ts';

const dayOf = (day: number) => new Date(Date.UTC(2025, 0, 1) + day * 86_400_000).toISOString().slice(0, 10);
const daily = (from: number, to: number, times = 1) =>
  [
    'Date,Gas (kWh)',
    ...Array.from({ length: to - from }, (_, i) => `${dayOf(from + i)},${(20 + ((from + i) % 9)) * times}`),
  ].join('\n');
const bills = (spans: readonly (readonly [from: string, last: string, kWh: number, kind?: string])[]) =>
  [
    'Bill from,Bill to,Gas (kWh),Reading',
    ...spans.map(([from, last, kWh, kind = 'Actual']) => [from, last, kWh, kind].join()),
  ].join('\n');

const YEAR = bills([['2025-01-01', '2025-12-31', 12_000]]);
const QUARTERS = bills([
  ['2025-01-01', '2025-03-31', 5000],
  ['2025-04-01', '2025-06-30', 2000],
  ['2025-07-01', '2025-09-30', 1000],
  ['2025-10-01', '2025-12-31', 4000],
]);
const MONTHS = bills([
  ['2025-03-01', '2025-03-31', 1300],
  ['2025-04-01', '2025-04-30', 1100],
  ['2025-05-01', '2025-05-31', 600],
]);

const orders = <T>(all: readonly T[]): T[][] =>
  all.length < 2 ? [[...all]] : all.flatMap((one, i) => orders(all.toSpliced(i, 1)).map((rest) => [one, ...rest]));

async function periodsOf(files: readonly string[]) {
  const home = openHome();
  await home.create();
  for (const text of files) await home.bring(`${text.length}.csv`, text);
  const { series } = await home.open();
  home.store.close();
  return series.map(({ total, periods, days }) => ({
    total: Math.round(total * 1000) / 1000,
    days: days?.values.map((kWh) => kWh && Math.round(kWh * 1000)),
    periods: periods?.map(({ from, to, kWh }) => [from, to, Math.round(kWh)]),
  }));
}

test('the statement of a year is not added to its quarters, and does not take their place', async () => {
  for (const files of orders([YEAR, QUARTERS])) {
    const [joined, ...others] = await periodsOf(files);
    expect(others).toEqual([]);
    expect(joined).toMatchObject({ total: 12_000, periods: { length: 4 } });
  }
});

test('of a quarter of which months are known the rest has what those leave', async () => {
  for (const files of orders([YEAR, QUARTERS, MONTHS])) {
    const [joined] = await periodsOf(files);
    expect(joined!.periods).toEqual([
      ['2025-01-01', '2025-03-01', 3700],
      ['2025-03-01', '2025-04-01', 1300],
      ['2025-04-01', '2025-05-01', 1100],
      ['2025-05-01', '2025-06-01', 600],
      ['2025-06-01', '2025-07-01', 300],
      ['2025-07-01', '2025-10-01', 1000],
      ['2025-10-01', '2026-01-01', 4000],
    ]);
  }
});

test('of two files that differ a little the one that goes on later counts', async () => {
  const found = await Promise.all(orders([daily(0, 60, 0.95), daily(0, 100), daily(90, 140)]).map(periodsOf));
  for (const one of found) expect(one).toEqual(found[0]);
  expect(found[0]![0]!.days!.slice(0, 2)).toEqual([20_000, 21_000]);
});

test('what was said of one file does not hold for another that goes on', async () => {
  const home = openHome();
  await home.create();
  await home.bring('ours.csv', daily(0, 60));
  await home.bring('neighbours.csv', daily(60, 90, 2), { beside: 'aside' });
  expect((await home.open()).series.map(({ to }) => to)).toEqual([dayOf(60)]);
  home.store.close();
});

test('a corrected bill is asked about, and counts instead where that is said', async () => {
  const home = openHome();
  await home.create();
  await home.bring('quarters.csv', QUARTERS);
  const corrected = bills([['2025-04-01', '2025-06-30', 1900]]);
  await expect(home.bring('corrected.csv', corrected)).rejects.toMatchObject({ code: 'records-asked' });
  await home.bring('corrected.csv', corrected, { beside: 'instead' });
  expect((await home.open()).series.map(({ total }) => total)).toEqual([11_900]);
  home.store.close();
});
