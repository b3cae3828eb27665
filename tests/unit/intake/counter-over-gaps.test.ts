/** A counter that was not read for a while still tells what was used meanwhile. */
import { describe, expect, test } from 'vitest';
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
    unread: preview.remarks.find((r) => r.code === 'counter-unread'),
    beside: preview.series
      .slice(1)
      .map((s) => [s.name, s.resolution, ...(s.periods ?? []).map((p) => [p.from, p.to, p.kWh])]),
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

test('more than a fortnight stays a gap, and is a period of its own', () => {
  const away = (day: number) => day > 30 && day < 47;
  const { present, codes, unread, beside } = read(['Date,Electricity meter reading (kWh)', ...days(away)]);
  expect(present).toEqual([72, 89]);
  expect([codes.includes('gap'), codes.includes('counter-shared')]).toEqual([true, false]);
  expect(unread).toMatchObject({ from: dated(30), to: dated(46), count: 1, effectKWh: counter(47) - counter(30) });
  expect(beside).toEqual([
    ['Electricity meter reading (kWh) (…)', 'period', [dated(30), dated(47), counter(47) - counter(30)]],
  ]);
});

test('of a meter that was exchanged meanwhile nothing is known', () => {
  const rows = days((day) => day > 30 && day < 47).map((row, i) => (i < 31 ? row : row.replace(/\d+$/, `${i * 9}`)));
  const { codes, beside } = read(['Date,Electricity meter reading (kWh)', ...rows]);
  expect([codes.includes('register-exchange'), codes.includes('counter-unread'), beside]).toEqual([true, false, []]);
});

test('a register of some hours is only named, since registers are added row by row', () => {
  const rows = days((day) => day > 30 && day < 47).map((row) => `${row},${Number(row.split(',')[1]) / 2}`);
  const preview = previewOf(['Date,Day reading (kWh),Night reading (kWh)', ...rows]);
  expect(preview.series).toHaveLength(2);
  expect(codesOf(preview).filter((code) => code === 'counter-unread')).toHaveLength(2);
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
  // The days at its edges are whole in the period, since of them only hours are known by themselves.
  const [, , [from, to, kWh]] = long.beside[0] as [string, string, [string, string, number]];
  const atDay = (day: number) => 700 + 0.25 * 48 * day;
  expect([from, to, kWh.toFixed(1)]).toEqual([dated(9), dated(13), (atDay(13) - atDay(9)).toFixed(1)]);
});

describe('a counter that begins anew each year', () => {
  const START = Date.UTC(2023, 0, 1);
  const day = (i: number) => new Date(START + i * 86_400_000).toISOString().slice(0, 10);
  const used = (i: number) => 10 + ((i * 7) % 9);
  const DAYS = 900;
  const sum = (from: number, to: number) =>
    Array.from({ length: to - from }, (_, i) => used(from + i)).reduce((all, one) => all + one, 0);
  const newYear = (i: number) => (Date.UTC(Number(day(i).slice(0, 4)), 0, 1) - START) / 86_400_000;
  const since = (i: number) => sum(newYear(i), i + 1);
  const ALL = Array.from({ length: DAYS }, (_, i) => i);
  const whole = `${sum(0, DAYS).toFixed(1)}`;
  test.each(['Meter reading (kWh)', 'Energy (kWh)', 'Heat pump, this year (kWh)'])('%s', (heading) => {
    const { total, days, codes } = read([`Date,${heading}`, ...ALL.map((i) => `${day(i)},${since(i)}`)]);
    expect([total, days!.slice(364, 367)]).toEqual([whole, [364, 365, 366].map(used)]);
    expect([codes.includes('counts-from-year'), codes.includes('register-exchange')]).toEqual([true, false]);
  });
  test('read when the day begins, the last day of the year is not known', () => {
    const { total, codes } = read(['Date,Counter (kWh)', ...ALL.map((i) => `${day(i)},${since(i) - used(i)}`)]);
    const unknown = [364, 730].map(used);
    expect(total).toBe((sum(0, DAYS - 1) - unknown[0]! - unknown[1]!).toFixed(1));
    expect([codes.includes('counts-from-year'), codes.includes('gap')]).toEqual([true, true]);
  });
  test.each([
    ['the last days of months', (i: number) => day(i + 1).endsWith('-01'), sum(0, 882)],
    // What was used after the last reading of a year is not known.
    ['weeks', (i: number) => i % 7 === 6, sum(0, 896) - sum(364, 365) - sum(728, 731)],
  ])('%s', (_, isRead, expected) => {
    const rows = ALL.filter(isRead).map((i) => `${day(i)},${since(i)}`);
    const { total, codes } = read(['Date,Meter reading (kWh)', ...rows]);
    expect([total, codes.includes('counts-from-year')]).toEqual([expected.toFixed(1), true]);
  });
  test('one that ends below ten thousand is not past its end', () => {
    const times = (i: number) => since(i) * 2;
    const rows = ALL.map((i) => `${day(i)},${times(i)}`);
    expect(times(364)).toBeGreaterThan(9000);
    expect(read(['Date,Meter reading (kWh)', ...rows]).codes).not.toContain('register-rollover');
  });
  test.each([
    ['exchanged in June', (i: number) => (i < 160 ? 5000 : 0) + sum(i < 160 ? 0 : 160, i + 1)],
    ['exchanged once at New Year', (i: number) => (i < 365 ? 5000 : 0) + sum(i < 365 ? 0 : 365, i + 1)],
    ['another that begins high', (i: number) => (i < 365 ? 5000 : 3000) + sum(i < 365 ? 0 : 365, i + 1)],
  ])('a meter %s is no such counter', (_, reading) => {
    const { codes } = read(['Date,Meter reading (kWh)', ...ALL.slice(0, 600).map((i) => `${day(i)},${reading(i)}`)]);
    expect([codes.includes('counts-from-year'), codes.includes('register-exchange')]).toEqual([false, true]);
  });
});

describe('a value that leaps to the end of a counter and back', () => {
  const halfHours = (value: (i: number) => number) =>
    Array.from({ length: 336 }, (_, i) => {
      const clock = `${String((i % 48) >> 1).padStart(2, '0')}:${i % 2 === 0 ? '00' : '30'}`;
      return `2025-01-0${1 + Math.floor(i / 48)} ${clock},${value(i)}`;
    });
  test.each([9999, 99_999, 999_999])('%d among equal half-hours makes no counter of them', (huge) => {
    const preview = previewOf(['Time,Electricity kWh', ...halfHours((i) => (i === 100 || i === 200 ? huge : 0.25))]);
    expect(preview.shape).toBe('readings');
    expect(preview.series[0]!.total).toBeCloseTo(83.5, 6);
    expect(codesOf(preview, 'note')).toContain('spike');
  });
  test('in a counter it is left out and named', () => {
    const preview = previewOf(['Time,Electricity reading kWh', ...halfHours((i) => (i === 100 ? 9999 : 10 + i / 4))]);
    expect(preview.series[0]!.total).toBeCloseTo(83.75, 6);
    expect(codesOf(preview, 'note')).toContain('register-peak');
  });
  test('a counter that came to its end bit by bit turns over', () => {
    const preview = previewOf(['Time,Electricity reading kWh', ...halfHours((i) => (99_980 + i / 4) % 100_000)]);
    expect(preview.series[0]!.total).toBeCloseTo(83.75, 6);
    expect(codesOf(preview, 'note')).toContain('register-rollover');
  });
});
