/** In which order a household’s files are brought changes no figure. */
import { expect, test } from 'vitest';
import type { IntakeChoices } from '../../../src/intake/intake.ts';
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

const dated = (from: string, months: number, kWh: number, more: readonly [heading: string, cell: string]) =>
  [
    `Bill from,Bill to,Gas (kWh),${more[0]}`,
    ...Array.from({ length: months }, (_, i) => {
      const at = (month: number, day: number) =>
        new Date(Date.UTC(Number(from.slice(0, 4)), Number(from.slice(5, 7)) - 1 + month, day))
          .toISOString()
          .slice(0, 10);
      return [at(i, 1), at(i + 1, 0), kWh, more[1]].join();
    }),
  ].join('\n');
const OURS = dated('2022-01-01', 6, 900, ['Meter number', '19L4102233']);
const NEXT = dated('2022-07-01', 6, 400, ['Meter number', '21M8800417']);

test('what goes on under the number of another meter is asked about, and each answer does what it says', async () => {
  const totals: [choices: IntakeChoices, kWh: number][] = [
    [{ beside: 'goes-on' }, 6 * 900 + 6 * 400],
    [{ beside: 'aside' }, 6 * 900],
  ];
  for (const [choices, kWh] of totals) {
    const home = openHome();
    await home.create();
    await home.bring('ours.csv', OURS);
    await expect(home.bring('next.csv', NEXT)).rejects.toMatchObject({
      code: 'records-number-asked',
      message: expect.stringContaining('…2233 → …0417'),
      remedy: expect.stringContaining('goes-on, added, aside'),
    });
    await home.bring('next.csv', NEXT, choices);
    // The next file of a meter that is known is asked about no more.
    const later = choices.beside === 'goes-on' ? NEXT : OURS;
    await home.bring('later.csv', later.replaceAll('2022-', '2023-'));
    expect((await home.open()).series.reduce((sum, { total }) => sum + total, 0)).toBe(
      kWh + 6 * (later === OURS ? 900 : 400),
    );
    home.store.close();
  }
});

test.each([
  ['the same meter', ['Meter number', '19L4102233']],
  ['a number that another program shortened', ['Meter number', '*****2233']],
  ['a number that a spreadsheet spoiled', ['Meter number', '1.9E+11']],
  ['no number', ['Remark', 'paid']],
] as const)('the next bills with %s are asked about by nobody', async (_, column) => {
  const home = openHome();
  await home.create();
  await home.bring('ours.csv', OURS);
  await home.bring('next.csv', dated('2022-07-01', 6, 400, column));
  expect((await home.open()).series.map(({ total }) => total)).toEqual([7800]);
  home.store.close();
});

test('an exchange of the meter at one supply point is none of another home', async () => {
  const home = openHome();
  await home.create();
  const at = (text: string) =>
    text.replaceAll('Meter number', 'Meter number,MPAN').replaceAll(/(\d{2}[LM]\d{7})/g, '$1,1012345678901');
  await home.bring('ours.csv', at(OURS));
  await home.bring('next.csv', at(NEXT));
  expect((await home.open()).series.map(({ total }) => total)).toEqual([7800]);
  home.store.close();
});

test('a counter that begins elsewhere is asked about, one that runs on is not', async () => {
  const counter = (from: number, readings: readonly number[]) =>
    ['Date,Gas meter reading (kWh)', ...readings.map((kWh, i) => `${dayOf(from + 30 * i)},${kWh}`)].join('\n');
  const first = counter(0, [41_000, 41_900, 42_700, 43_100]);
  const home = openHome();
  await home.create();
  await home.bring('first.csv', first);
  await expect(home.bring('other.csv', counter(90, [8120, 8500, 8700]))).rejects.toMatchObject({
    code: 'records-counter-asked',
    message: expect.stringContaining('43,100 then 8,120'),
  });
  await home.bring('next.csv', counter(120, [43_300, 43_400, 43_450]));
  home.store.close();
});

test('days of which a further meter says nothing are named, whichever came last', async () => {
  const half = bills([['2025-07-01', '2025-12-31', 500]]);
  for (const [files, last] of [
    [
      [
        ['main.csv', QUARTERS],
        ['annexe.csv', half, 'added'],
      ],
      'annexe.csv',
    ],
    [
      [
        ['annexe.csv', half, 'added'],
        ['main.csv', QUARTERS],
      ],
      'main.csv',
    ],
  ] as const) {
    const home = openHome();
    await home.create();
    for (const [name, text, beside] of files) await home.bring(name, text, beside ? { beside } : {});
    const { evidence, series } = await home.open();
    // The first half of the year, 181 days.
    expect(
      evidence.find(({ fileName }) => fileName === last)!.remarks.filter(({ code }) => code === 'added-part'),
    ).toMatchObject([{ found: 'annexe.csv', expected: 'main.csv', count: 181, from: '2025-01-01', to: '2025-07-01' }]);
    expect(series.map(({ total }) => Math.round(total))).toEqual([1000 + 4000 + 500]);
    home.store.close();
  }
});

test('a file that was taken back does not return beside one that it contradicts', async () => {
  const home = openHome();
  await home.create();
  const ours = await home.bring('ours.csv', QUARTERS);
  await home.call('evidence.undo', { evidenceId: ours.id });
  const theirs = await home.bring(
    'theirs.csv',
    QUARTERS.replaceAll('00,Actual', '70,Actual').replaceAll('2025-01-01,2025-03-31,5', '2025-01-01,2025-03-31,9'),
  );
  await expect(home.call('evidence.restore', { evidenceId: ours.id })).rejects.toMatchObject({ code: 'records-asked' });
  await home.call('evidence.undo', { evidenceId: theirs.id });
  await home.call('evidence.restore', { evidenceId: ours.id });
  expect((await home.open()).series.map(({ total }) => total)).toEqual([12_000]);
  home.store.close();
});

test('a quarter in the midst of a yearly bill neither is asked about nor moves heat from season to season', async () => {
  const spring = bills([['2025-04-01', '2025-06-30', 2000]]);
  for (const files of orders([YEAR, spring])) {
    const [joined, ...others] = await periodsOf(files);
    expect([joined!.periods, others]).toEqual([[['2025-01-01', '2026-01-01', 12_000]], []]);
  }
});

test('weather of two places is asked about', async () => {
  const weather = (more: number) =>
    [
      'Date,Mean outdoor temperature (°C)',
      ...Array.from({ length: 90 }, (_, i) => `${dayOf(i)},${(4 + ((i * 7) % 11) + more).toFixed(1)}`),
    ].join('\n');
  const home = openHome();
  await home.create();
  await home.bring('here.csv', weather(0));
  await expect(home.bring('south.csv', weather(8))).rejects.toMatchObject({
    code: 'records-weather-asked',
    message: expect.stringContaining('8 °C'),
    remedy: expect.stringContaining('aside, instead'),
  });
  await home.bring('near.csv', weather(0.7));
  await home.bring('south.csv', weather(8), { beside: 'aside' });
  expect((await home.open()).series).toHaveLength(1);
  home.store.close();
});
