import { expect, test } from 'vitest';
import type { IntakeContext } from '../../../src/intake/intake.ts';
import { readFile } from '../../../src/intake/read-file.ts';
import { kWhPerUnit } from '../../../src/reference/fuels.ts';

/** Files in the manner of open data sets: few words above the columns, counters, seconds since 1970. */
const context: IntakeContext = {
  zone: 'Europe/London',
  today: '2026-11-25',
  kWhPerUnit,
  gasVolume: { correction: 1.02264, calorificMJPerM3: 39.5, imperialM3PerHundredCubicFeet: 2.83 },
};
const read = (rows: readonly string[]) =>
  readFile('log.csv', new TextEncoder().encode(rows.join('\n')), {}, context).preview;
const codes = ({ remarks }: ReturnType<typeof read>) => remarks.map(({ code }) => code);

/** 1 January 2026 at midnight; so many minutes later as a day and a time. */
const START = Date.UTC(2026, 0, 1);
const stampAfter = (minutes: number) => new Date(START + minutes * 60_000).toISOString().slice(0, 16).replace('T', ' ');
const rowsOf = (count: number, minutes: number, row: (stamp: string, i: number) => string) =>
  Array.from({ length: count }, (_, i) => row(stampAfter(i * minutes), i));

test('a counter of whole kWh that is written each minute has its steps in single minutes', () => {
  const rows = rowsOf(3000, 1, (stamp, i) => `${stamp},${7000 + Math.floor(i / 75)}`);
  const preview = read(['time,import reading (kWh)', ...rows]);
  expect(preview.series[0]).toMatchObject({ carrier: 'electricity', total: 39, present: 2999 });
  expect(codes(preview)).not.toContain('spike');
});

test('what stands above capitals only is no unit within a word', () => {
  const rows = rowsOf(600, 10, (stamp, i) => `${stamp},${400 + (i % 7) * 100}`);
  const preview = read(['time,WHE', ...rows]);
  expect(codes(preview)).toContain('unit-guessed');
});

test('seconds since 1970 beside a date are the time again, never an amount', () => {
  const rows = rowsOf(600, 10, (stamp, i) => `${stamp},${START / 1000 + i * 600},${400 + (i % 7) * 100}`);
  const preview = read(['time,unix,aggregate', ...rows]);
  expect(preview.choices.columns?.value).toBe(2);
});

test('a column of numbers that may be clock times now and then moves no reading', () => {
  const rows = rowsOf(600, 30, (_, i) => `${START / 1000 + i * 1800},${500 + i / 10},${2 + (i % 8) / 10}0`);
  const preview = read(['timestamp,W,A', ...rows]);
  expect(preview.series[0]).toMatchObject({ from: '2026-01-01', carrier: 'electricity' });
  expect(codes(preview)).not.toContain('stamp-is-end');
});

test('counters beside a temperature without a unit are counters, and what a heat pump puts out is heat', () => {
  const rows = rowsOf(600, 30, (stamp, i) => `${stamp},${(3 + Math.sin(i)).toFixed(1)},${5000 + i},${1700 + i / 4}`);
  const preview = read([
    'Timestamp,External_Air_Temperature,Heat_Pump_Energy_Output_kWh,Heat_Pump_Energy_Consumed_kWh',
    ...rows,
  ]);
  expect(preview.choices.shape).toBe('counter');
  expect(preview.series.map(({ carrier, role, total }) => [carrier, role, total])).toEqual([
    ['heat', 'heat-output', 599],
    ['electricity', 'heat-pump', 599 / 4],
  ]);
});

test('the highest and the lowest temperature in the short names of weather services are no columns of marks', () => {
  const rows = rowsOf(60, 1440, (stamp, i) => `${stamp.slice(0, 10)},0,${8 + (i % 3)},0,${2 + (i % 3)}`);
  const preview = read(['date,ind,maxtp,ind,mintp', ...rows]);
  expect(preview.series[0]).toMatchObject({ carrier: 'outdoor-temperature', total: 6 });
});

test('a factor, a yield of so many kW and the number of a row are no amounts', () => {
  const rows = rowsOf(
    90,
    1440,
    (stamp, i) => `${i + 1},${stamp.slice(0, 10)},1.03${i % 9},${(3 + (i % 5)) / 2},${1 + (i % 4)}`,
  );
  const preview = read(['entry,date,therm factor,yield (kWh/kW),gas (therms)', ...rows]);
  expect(preview.series.map(({ name, carrier }) => [name, carrier])).toEqual([['gas (therms)', 'gas']]);
});

test('the lowest temperature of a day beside energy is not taken for its mean', () => {
  const rows = rowsOf(
    90,
    1440,
    (stamp, i) => `${stamp.slice(0, 10)},${9000 + (i % 7) * 500},${2 + (i % 3)},${9 + (i % 5)}`,
  );
  const preview = read(['Date,Energy Used (Wh),Temperature Min,Temperature Max', ...rows]);
  expect(preview.series.map(({ carrier }) => carrier)).toEqual(['electricity']);
});

test('kilowatts are so by any of their names', () => {
  const rows = rowsOf(600, 30, (stamp, i) => `${stamp},0.${3 + (i % 5)}`);
  const preview = read(['time,Home mains (kWatts)', ...rows]);
  expect(preview.choices.unit).toBe('kW');
});
