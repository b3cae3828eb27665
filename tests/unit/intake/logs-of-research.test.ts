import { describe, expect, it, test } from 'vitest';
import type { IntakeContext } from '../../../src/intake/intake.ts';
import { readFile } from '../../../src/intake/read-file.ts';
import { kWhPerUnit } from '../../../src/reference/fuels.ts';
import { codesOf, previewOf } from './read-text.ts';

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

test('an offset from UTC above the dates holds for each of them', () => {
  // From midnight of a clock that stands five hours behind.
  const rows = rowsOf(600, 60, (stamp, i) => `${stamp},${(0.3 + (i % 24) / 50).toFixed(3)}`);
  const file = new TextEncoder().encode(['"Date Time, GMT-05:00",Import (kWh)', ...rows].join('\n'));
  const { preview } = readFile('log.csv', file, { stamp: 'start' }, { ...context, zone: 'America/New_York' });
  expect(preview.series[0]).toMatchObject({ from: '2026-01-01', to: '2026-01-26', present: 600 });
  expect(codes(preview)).not.toContain('clock-utc');
});

test('the number of a half-hour beside stamps that name its end moves nothing', () => {
  const rows = rowsOf(480, 30, (_, i) => `${stampAfter(30 * (i + 1))},${(i % 48) + 1},0.${100 + ((i * 37) % 300)}`);
  const preview = read(['time,HH,electricity kWh', ...rows]);
  expect(preview.choices.stamp).toBe('end');
  expect(preview.series[0]).toMatchObject({ from: '2026-01-01', to: '2026-01-11' });
});

test.each([
  ['settlement period', (i: number) => `${(i % 48) + 1}`],
  ['time', (i: number) => stampAfter(30 * i).slice(11)],
])('midnight behind each date is none where the %s stands beside it', (heading, part) => {
  const rows = rowsOf(480, 30, (stamp, i) => `${stamp.slice(0, 10)} 00:00:00,${part(i)},0.${100 + ((i * 37) % 300)}`);
  const preview = read([`date,${heading},electricity kWh`, ...rows]);
  expect(preview.series[0]).toMatchObject({ present: 480, from: '2026-01-01', to: '2026-01-11' });
});

test('when the most was made is no time of the row', () => {
  const rows = rowsOf(60, 1440, (stamp, i) => `${stamp.slice(0, 10)},${8 + (i % 3)},1${i % 3}:${10 + (i % 50)}`);
  const preview = read(['date,import (kWh),peak time', ...rows]);
  expect(preview.series[0]).toMatchObject({ resolution: 'day', present: 60 });
});

test('both legs of a supply are added; of rooms beside what is sent out it is asked', () => {
  const rows = rowsOf(480, 30, (stamp, i) => `${stamp},0.2${i % 10},0.3${i % 10},0.${i % 5}`);
  const legs = read(['time,Mains A (kWh),Mains B (kWh),Solar (kWh)', ...rows]);
  expect(legs.series[0]?.total).toBeCloseTo(480 * 0.59, 6);
  const rooms = read(['time,Upstairs (kWh),Downstairs (kWh),Export (kWh)', ...rows]);
  expect(rooms.remarks).toContainEqual(expect.objectContaining({ code: 'column-asked', weight: 'question' }));
});

test('days as records of the open market standard in JSON, each with its half-hours in a list', () => {
  const reads = rowsOf(40, 1440, (stamp) => stamp.slice(0, 10)).flatMap((day) =>
    ['E1', 'B1'].map((registerSuffix, n) => ({
      ...{ servicePointId: 'point-1', registerSuffix, readStartDate: day, unitOfMeasure: 'KWH' },
      intervalRead: { readIntervalLength: 30, intervalReads: Array.from({ length: 48 }, () => 0.25 * (n + 1)) },
    })),
  );
  const preview = read([JSON.stringify({ data: { reads }, links: {}, meta: { totalRecords: 1 } })]);
  expect(preview.series.map(({ role, total }) => [role, total])).toEqual([
    ['import', 480],
    ['export', 960],
  ]);
});

test('a kind of row that says nothing is left out beside those that do', () => {
  const rows = rowsOf(480, 30, (stamp, i) => `home import,${stamp},0.4${i % 7}\nzone,${stamp},20.1`);
  const preview = read(['measurement,time,value (kW)', ...rows]);
  expect(codes(preview)).not.toContain('no-numbers');
});

test('a column whose numbers begin further down is read', () => {
  const rows = rowsOf(900, 30, (stamp, i) => `${stamp},0.4${i % 7},${i < 480 ? '' : `0.1${i % 9}`}`);
  const preview = read(['time,house (kWh),heat pump (kWh)', ...rows]);
  expect(preview.series.map(({ role, present }) => [role, present])).toEqual([
    ['import', 900],
    ['heat-pump', 420],
  ]);
});

test('of a use in two columns by turns it is asked', () => {
  const rows = rowsOf(900, 30, (stamp, i) => `${stamp},${i < 480 ? `0.4${i % 7},` : `,0.4${i % 7}`},0.${i % 5}`);
  const preview = read(['time,usage billed (kWh),usage not yet billed (kWh),generation (kWh)', ...rows]);
  expect(preview.remarks).toContainEqual(expect.objectContaining({ code: 'column-asked', weight: 'question' }));
});

test.each(['kWh', 'GJ'])('heat used in %s is heat', (unit) => {
  const used = (i: number) => 3 + ((i * 7) % 5);
  const sumTo = (i: number): number => Array.from({ length: i + 1 }, (_, n) => used(n)).reduce((a, b) => a + b, 100);
  const rows = rowsOf(90, 1440, (stamp, i) => `${stamp.slice(0, 10)},${sumTo(i)},${used(i)},1.2`);
  const preview = read([`Date,Cumulative heat (${unit}),Heat used (${unit}),Volume (m³)`, ...rows]);
  expect(preview.series[0]).toMatchObject({ carrier: 'heat', role: 'heat-output' });
  expect(preview.series.map(({ carrier }) => carrier)).not.toContain('electricity');
});

test('an index that goes up is a reading where nothing else is an amount', () => {
  const rows = rowsOf(12, 1440 * 30, (stamp, i) => `${stamp.slice(0, 10)},G4A1,${4200 + i * i * 3 + i * 7},ft3 x100`);
  const preview = read(['Read Date,Serial,Index,Units', ...rows]);
  expect(preview.choices.shape).toBe('counter');
  expect(codes(preview)).not.toContain('no-readable-rows');
});

test('the temperature that is said to be out of doors goes before those of rooms', () => {
  const rows = rowsOf(960, 30, (stamp, i) => `${stamp},20.${i % 9},${(3 + 4 * Math.sin(i / 48)).toFixed(1)}`);
  const preview = read(['time,Bedroom temp (C),Outside temp (C)', ...rows]);
  expect(preview.series.map(({ name }) => name)).toEqual(['Outside temp (C)']);
});

test('how long something ran is no time of the row', () => {
  const rows = rowsOf(60, 1440, (stamp, i) => `${stamp.slice(0, 10)},1${i % 3}:${10 + (i % 50)},${8 + (i % 3)}`);
  expect(read(['date,run time,import (kWh)', ...rows]).series[0]).toMatchObject({ resolution: 'day', present: 60 });
});

test('days of 288 columns of five minutes', () => {
  const row = Array.from({ length: 288 }, (_, i) => `0.0${(i % 8) + 1}`).join(',');
  const rows = rowsOf(20, 1440, (stamp) => `${stamp.slice(0, 10)},${row}`);
  const heads = Array.from({ length: 288 }, (_, i) => stampAfter(5 * i).slice(11)).join(',');
  const preview = read([`Date,${heads}`, ...rows]);
  expect(preview.series[0]).toMatchObject({ present: 20 * 288 });
});

test('a row of units may name the clock of the times', () => {
  const rows = rowsOf(96, 30, (stamp, i) => `${stamp},0.${3 + (i % 4)},0.${1 + (i % 2)}`);
  const preview = read(['time,grid import,grid export', 'UTC,kWh,kWh', ...rows]);
  expect(preview.series.map(({ role }) => role)).toEqual(['import', 'export']);
  expect(codes(preview)).toContain('clock-utc');
});

test('what was used a week before stands there to compare with', () => {
  const rows = rowsOf(60, 1440, (stamp, i) => `${stamp.slice(0, 10)},${8 + (i % 3)},${7 + (i % 4)}`);
  const preview = read(['date,electricity import (kWh),same day last week (kWh)', ...rows]);
  expect(preview.series.map(({ name }) => name)).toEqual(['electricity import (kWh)']);
});

describe('days across of several kinds', () => {
  const slots = Array.from({ length: 24 }, (_, hour) => `${String(hour).padStart(2, '0')}:00`);
  const daysOf = (kinds: readonly string[], heading = 'kind') => [
    `date,${heading},${slots.join(',')}`,
    ...Array.from({ length: 60 }, (_, day) => new Date(Date.UTC(2025, 0, 1 + day)).toISOString().slice(0, 10)).flatMap(
      (date, day) =>
        kinds.map((kind, at) => `${date},${kind},${slots.map((_, hour) => ((day + hour) % 7) * 0.1 + at)}`),
    ),
  ];

  it('bear the words of their rows, each of which is asked about where it is not known', () => {
    const { series, remarks } = previewOf(daysOf(['GC', 'GG']));
    expect(series.map(({ name }) => name)).toEqual(['GC', 'GG']);
    expect(remarks.filter(({ code }) => code === 'carrier-guessed').map(({ column }) => column)).toEqual(['GC', 'GG']);
  });

  it('are answered one by one', () => {
    const choices = { ofColumns: { GG: { role: 'generation' } } } as const;
    expect(previewOf(daysOf(['GC', 'GG']), { choices }).series.map(({ role }) => role)).toEqual([
      'import',
      'generation',
    ]);
  });

  it('have the unit that the heading of their kinds names', () => {
    const preview = previewOf(daysOf(['Electricity', 'Gas'], 'kWh of'));
    expect(preview.series.map(({ name, carrier }) => `${name} ${carrier}`)).toEqual([
      'Electricity electricity',
      'Gas gas',
    ]);
    expect(codesOf(preview, 'question')).not.toContain('unit-guessed');
  });
});

test('a day of the year beside its year is a date', () => {
  const rows = Array.from(
    { length: 90 },
    (_, i) => `${i < 60 ? 2024 : 2025},${i < 60 ? 307 + i : i - 59},${8 + (i % 5)}.5`,
  );
  const { series } = previewOf(['year,doy,electricity kWh', ...rows]);
  expect(series[0]).toMatchObject({ from: '2024-11-02', to: '2025-01-31', resolution: 'day' });
});

test('the time of a stamp is no register', () => {
  const rows = rowsOf(96, 30, (stamp, i) => `2025-01-01T00:00:00Z,${stamp}Z,0.${3 + (i % 4)}`);
  expect(codesOf(previewOf(['_start,_time,electricity (kWh)', ...rows]), 'question')).toEqual([]);
});
