/** What is one end of a day, one part of a whole, or as long as a column says; read right, or asked. */
import { describe, expect, test } from 'vitest';
import type { IntakeChoices } from '../../../src/intake/intake.ts';
import { codesOf, previewOf } from './read-text.ts';

const read = (rows: readonly string[], { fileName = 'a.csv', choices = {} as IntakeChoices } = {}) => {
  const preview = previewOf(rows, { fileName, choices });
  return {
    series: preview.series.map((s) => `${s.carrier} ${s.role} ${s.from} ${s.to} ${s.total.toFixed(1)}`),
    asked: codesOf(preview, 'question'),
    noted: codesOf(preview, 'note'),
    refused: codesOf(preview, 'refusal'),
  };
};

const dayOf2025 = (i: number): string => new Date(Date.UTC(2025, 0, 1 + i)).toISOString().slice(0, 10);
const days = (row: (i: number) => string): string[] =>
  Array.from({ length: 90 }, (_, i) => `${dayOf2025(i)},${row(i)}`);
/** As days differ from each other. */
const warmth = days((i) => (5 + ((i * 37) % 11) * 0.9).toFixed(1));

describe('the warmest or the coldest of each day is no mean', () => {
  test.each([
    ['Temperature (°C)', 'tmax.csv', true],
    ['Temperature (°C)', 'daily-maximum.csv', true],
    ['Höchsttemperatur', 'a.csv', true],
    ['Température minimale (°C)', 'a.csv', true],
    ['TN °C', 'a.csv', true],
    ['Overnight low °C', 'a.csv', true],
    ['Maksimumtemperatur °C', 'a.csv', true],
    ['Temperature (°C)', 'Max Muster.csv', false],
    ['Temperature (°C)', 'daily maximum and minimum.csv', false],
    ['Mean temperature (°C)', 'daily-maximum.csv', false],
    ['Temperature (°C), every 10 min', 'a.csv', false],
    ['Temp mean of max and min (°C)', 'a.csv', false],
    ['High Street (°C)', 'a.csv', false],
  ])('%s in %s', (heading, fileName, isAsked) => {
    const { asked, refused } = read([`date,"${heading}"`, ...warmth], { fileName });
    expect([...asked, ...refused].some((code) => code.startsWith('weather-extreme'))).toBe(isAsked);
  });
  test('beside the mean it is left out', () => {
    const rows = warmth.map((row, i) => `${row},${i % 9}`);
    const found = read(['date,Température moyenne (°C),Température minimale (°C)', ...rows]);
    expect([found.asked, found.series.length]).toEqual([[], 1]);
  });
  test('said to be the mean it is kept, and else refused', () => {
    const rows = ['date,TN °C', ...warmth];
    expect(read(rows, { choices: { weatherMeasured: true } }).asked).toEqual([]);
    expect(read(rows, { choices: { weatherMeasured: false } }).refused).toEqual(['weather-typical']);
  });
});

describe('a column that says how long each period was', () => {
  const BILLS = [
    ['2024-12-20', 92, 900],
    ['2025-03-22', 92, 1200],
    ['2025-06-20', 90, 700],
    ['2025-09-19', 91, 600],
    ['2025-12-18', 90, 810],
  ] as const;
  test.each([
    ['Bill to,Days', ''],
    ['Reading date,Period', ' days'],
    ['Facture du,Nb jours', ' jours'],
    ['Rechnung bis,Zeitraum', ''],
  ])('%s with "%s"', (heads, word) => {
    const rows = BILLS.map(([day, length, kWh]) => `${day},${length}${word},${kWh}`);
    expect(read([`${heads},Electricity kWh`, ...rows])).toMatchObject({
      series: ['electricity import 2024-09-19 2025-12-18 4210.0'],
      asked: [],
    });
  });
  test('the last days of months belong to their periods', () => {
    const rows = ['2025-03-31,90,900', '2025-06-30,91,700', '2025-09-30,92,600', '2025-12-31,92,1000'];
    expect(read(['Bill to,Days,Electricity kWh', ...rows]).series).toEqual([
      'electricity import 2025-01-01 2026-01-01 3200.0',
    ]);
  });
  test('prices that happen to be whole are no lengths', () => {
    const rows = BILLS.map(([day, , kWh]) => `${day},92,${kWh}`);
    expect(read(['Bill date,Points,Electricity kWh', ...rows]).series[0]).toContain('2024-12-20 2025-12-18');
  });

  /** Dates so many days apart, and those days as the amounts of the rows that they end. */
  const apart = (lengths: readonly number[]) => {
    const sum = (n: number) => lengths.slice(0, n + 1).reduce((all, one) => all + one, 0);
    return lengths.map((length, n) => `${dayOf2025(sum(n))},${length}`);
  };
  const UNEVEN = [31, 28, 33, 30, 29, 35];
  test.each([
    ['Date,Value', apart(UNEVEN)],
    ['Date,Usage', apart([7, 7, 7, 7, 7, 7])],
    ['Month,Amount', ['2025-01,31', '2025-02,28', '2025-03,31', '2025-04,30']],
    ['From,To,Units', ['2025-01-01,2025-01-31,31', '2025-02-01,2025-02-28,28', '2025-03-01,2025-03-31,31']],
  ])('%s, each the days of its row, may be a count of them', (heads, rows) => {
    expect(read([heads, ...rows]).asked).toContain('amount-days-asked');
    expect(read([heads, ...rows], { choices: { role: 'import' } }).asked).not.toContain('amount-days-asked');
    // One day less in one row is no count.
    const other = [...rows.slice(0, -1), rows.at(-1)!.replace(/\d+$/, '26')];
    expect(read([heads, ...other]).asked).not.toContain('amount-days-asked');
  });
  test.each(['Date,Gas', 'Date,Usage kWh', 'Date,kWh'])('%s says that it is none, and of which side', (heads) => {
    const { asked } = read([heads, ...apart(UNEVEN)]);
    expect([asked.includes('amount-days-asked'), asked.includes('period-side-asked')]).toEqual([false, true]);
  });
  test('what was used of one fuel tells no side of another', () => {
    const rows = apart(UNEVEN).map((row, i) => `${row},${300 + i}`);
    expect(read(['Date,Used,Gas kWh', ...rows]).asked).toContain('period-side-asked');
    expect(read(['Date,Days used,Gas kWh', ...rows]).asked).not.toContain('period-side-asked');
  });
  test('even weeks tell no side by a number that is seven but once', () => {
    const rows = apart([7, 7, 7, 7, 7, 7]).map((row, i) => `${row.replace(/7$/, i === 5 ? '8' : '7')},${30 + i}`);
    expect(read(['Date,People,Electricity kWh', ...rows]).asked).toContain('period-side-asked');
  });
});

describe('a part beside the whole that holds it counts once', () => {
  const whole = (i: number) => 9 + ((i * 7) % 5);
  const part = (i: number) => 2 + ((i * 3) % 4);
  const both = (heading: string, of: readonly ((i: number) => number)[] = [whole, part]) => [
    heading,
    ...days((i) => of.map((one) => one(i)).join(',')),
  ];
  const ALL = 'electricity import 2025-01-01 2025-04-01 990.0';
  test.each([
    'Electricity (kWh),of which night (kWh)',
    'Electricity total (kWh),Off-peak (kWh)',
    'Strom kWh,davon NT kWh',
    'Électricité (kWh),dont heures creuses (kWh)',
    'Stroom kWh,waarvan dal kWh',
    '1.8.0 (kWh),1.8.2 (kWh)',
    'Electricity (kWh),thereof car (kWh)',
    'Strom gesamt (1.8.0) kWh,davon NT (1.8.2) kWh',
    'Import (kWh),of which import at night (kWh)',
    'Stromverbrauch gesamt (kWh),inkl. Wallbox (kWh)',
  ])('%s', (heads) => {
    expect(read(both(`date,${heads}`))).toMatchObject({ series: [ALL], asked: [] });
  });
  test('registers in rows', () => {
    const rows = days((i) => `Total,${whole(i)}`).flatMap((row, i) => [row, `${dayOf2025(i)},Night,${part(i)}`]);
    expect(read(['date,register,Electricity kWh', ...rows])).toMatchObject({
      series: [ALL],
      noted: expect.arrayContaining(['part-left-out']),
    });
  });
  test('where no word says that the one holds the other it is asked', () => {
    expect(read(both('date,Electricity (kWh),Night (kWh)')).asked).toEqual(['column-asked']);
    // What is more than the other on some days is no part of it.
    expect(read(both('date,Electricity (kWh),Night (kWh)', [part, whole])).asked).toEqual([]);
  });
  test('the heat pump within a whole', () => {
    const heads = 'date,Gesamtverbrauch (kWh),inkl. Wallbox (kWh),inkl. Wärmepumpe (kWh)';
    const rest = (i: number) => whole(i) - part(i);
    expect(read(both(heads, [whole, part, rest])).series.map((one) => one.split(' ')[1])).toEqual([
      'import',
      'heat-pump',
    ]);
  });
  test('two rates of a whole are read by themselves, and the heat pump is', () => {
    const rest = (i: number) => whole(i) - part(i);
    expect(read(both('date,Strom gesamt kWh,davon HT,davon NT', [whole, part, rest])).series).toHaveLength(2);
    expect(read(both('date,Strom kWh,davon Wärmepumpe kWh')).series[1]).toContain('heat-pump');
  });
  test('of a use what came from the roof is asked about, and taken off where the grid has its own column', () => {
    expect(read(both('date,Electricity used (kWh),of which from solar (kWh)'))).toMatchObject({
      series: [ALL],
      asked: ['own-use-asked'],
    });
    const rest = (i: number) => whole(i) - part(i);
    const heads = 'date,Electricity used (kWh),of which from solar (kWh),of which from the grid (kWh)';
    const drawn = days(() => '').reduce((sum, _, i) => sum + rest(i), 0);
    expect(read(both(heads, [whole, part, rest]))).toMatchObject({
      series: [`electricity import 2025-01-01 2025-04-01 ${drawn.toFixed(1)}`],
      asked: [],
    });
  });
});

describe('a heater beside what a heat pump draws', () => {
  const rows = (heads: string) => [
    `date,${heads}`,
    ...days((i) => `${20 + (i % 5)},${i % 40 === 39 ? 3 : 0},${60 + ((i * 7) % 9)}`),
  ];
  test.each([
    ['Electric power consumption (kWh),Backup heater (kWh),Heat output (kWh)', true],
    ['Stromaufnahme kWh,Heizstab kWh,Wärme kWh', true],
    ['Electric power (W),Backup heater power (W),Heat output (W)', true],
    ['Compressor (kWh),Booster heater (kWh),Heat output (kWh)', false],
  ])('%s', (heads, isAsked) => {
    expect(read(rows(heads)).asked.includes('column-asked')).toBe(isAsked);
  });
  test('is added, or is within', () => {
    const heads = 'Electric power consumption (kWh),Backup heater (kWh),Heat output (kWh)';
    const roles = (every: boolean) => read(rows(heads), { choices: { every } }).series.map((one) => one.split(' ')[1]);
    expect([roles(true), roles(false)]).toEqual([
      ['heat-pump', 'heat-pump', 'heat-output'],
      ['heat-pump', 'heat-output'],
    ]);
  });
});

test.each([
  ['Waermemenge (kWh)', 'heat heat-output'],
  ['Rueckspeisung (kWh)', 'electricity export'],
  ['Ueberschuss (kWh)', 'electricity export'],
])('%s without its letters', (heading, kind) => {
  expect(read([`date,${heading}`, ...days((i) => `${9 + ((i * 7) % 5)}`)]).series[0]).toContain(kind);
});

const MONTHS = ['2024-11', '2024-12', '2025-01', '2025-02', '2025-03', '2025-04'];
describe('readings of months', () => {
  const readings = [61000, 61300, 61500, 61750, 61900, 62100];
  test.each([
    ['Reading at month end', '2024-12-01 2025-05-01', []],
    ['Opening reading', '2024-11-01 2025-04-01', []],
    ['Meter reading', '2024-12-01 2025-05-01', ['period-side-asked']],
  ])('%s', (heading, span, asked) => {
    const rows = MONTHS.map((month, i) => `${month},${readings[i]}`);
    expect(read([`Month,${heading} (kWh)`, ...rows], { fileName: 'electricity.csv' })).toMatchObject({
      series: [`electricity import ${span} 1100.0`],
      asked,
    });
  });
  test('what they rose by is read where it stands beside them', () => {
    const used = readings.map((reading, i) => (i === 0 ? 250 : reading - readings[i - 1]!));
    const rows = MONTHS.map((month, i) => `${month},${readings[i]},${used[i]}`);
    expect(read(['Month,Reading,Used', ...rows], { fileName: 'electricity kWh.csv' }).series).toEqual([
      'electricity import 2024-11-01 2025-05-01 1350.0',
    ]);
  });
});

test('last days of quarters close their quarters', () => {
  const rows = ['2024-12-31,900', '2025-03-31,1200', '2025-06-30,700', '2025-09-30,600'];
  expect(read(['Quarter end,Electricity kWh', ...rows]).series).toEqual([
    'electricity import 2024-10-01 2025-10-01 3400.0',
  ]);
  expect(read(['Reading date,Electricity kWh', ...rows]).series).toEqual([
    'electricity import 2024-12-31 2025-09-30 2500.0',
  ]);
});

describe('headings in two rows', () => {
  const days60 = Array.from({ length: 60 }, (_, i) => `${dayOf2025(i)},${9 + (i % 4)},${2 + (i % 3)}`);
  test.each([
    ['Date,Electricity,', ',Day kWh,Night kWh', ['electricity', 'electricity']],
    ['Date,Electricity,Gas', ',kWh,kWh', ['electricity', 'gas']],
  ])('%s over %s', (above, own, carriers) => {
    expect(read([above, own, ...days60]).series.map((one) => one.split(' ')[0])).toEqual(carriers);
  });
  test('merged cells where the dates stand in the upper row', () => {
    const use = [290, 340, 310, 260, 300, 220];
    const upTo = (i: number) => use.slice(0, i + 1).reduce((sum, one) => sum + one, 0);
    const rows = MONTHS.map((month, i) =>
      [`${month}-28`, 5000 + upTo(i), use[i], 2000 + 2 * upTo(i), 2 * use[i]!, [7, 6, 8, 7, 9, 5][i]].join(';'),
    );
    const found = read(['Datum;Strom;;Gas;;Wasser', ';Stand;kWh;Stand;kWh;m³', ...rows]);
    expect(found.series.map((one) => one.split(' ')[0])).toEqual(['electricity', 'gas', 'water']);
  });
  test('merged cells over a reading and what was used', () => {
    const rows = MONTHS.map((month, i) => `${month}-28,${5000 + i * 300},300,${2000 + i * 90},90`);
    const found = read(['Date,Electricity,,Gas,', ',Reading,Used kWh,Reading,Used m3', ...rows]);
    expect(found.series.map((one) => one.split(' ')[0])).toEqual(['electricity', 'gas']);
  });
});

test.each([
  ['heat pump.csv', 'Total energy consumed (kWh),Total energy produced (kWh)'],
  ['ashp-log.csv', 'Used (kWh),Generated (kWh)'],
])('%s: %s are electricity and heat', (fileName, heads) => {
  const rows = days((i) => `${8000 + i * 9 + (i % 2)},${25000 + i * 30 + (i % 3)}`);
  expect(read([`date,${heads}`, ...rows], { fileName }).series.map((one) => one.split(' ')[1])).toEqual([
    'heat-pump',
    'heat-output',
  ]);
});
test('a total of two energies in rows is of none', () => {
  const rows = days((i) => `Electricity,${9 + (i % 4)}`).flatMap((row, i) => [
    row,
    `${dayOf2025(i)},Gas,${30 + (i % 5)}`,
    `${dayOf2025(i)},Total,${39 + (i % 4) + (i % 5)}`,
  ]);
  const found = read(['date,fuel,kWh', ...rows]);
  expect([found.asked, found.series.map((one) => one.split(' ')[0])]).toEqual([[], ['electricity', 'gas']]);
});

test('cold that was made is no heat', () => {
  const heads = 'date,Heating energy in (kWh),Heating energy out (kWh),Cooling energy out (kWh)';
  expect(read([heads, ...days((i) => `${9 + (i % 4)},${30 + (i % 5)},${i % 3}`)]).series).toHaveLength(2);
});

test('beside what was sent out the electricity is the home’s, though heat stands there too', () => {
  const heads = 'date,Stroom (kWh),Teruglevering (kWh),Warmte (kWh)';
  const found = read([heads, ...days((i) => `${9 + (i % 4)},${2 + (i % 3)},${30 + (i % 5)}`)]);
  expect([found.asked, found.series.map((one) => one.split(' ')[1])]).toEqual([
    [],
    ['import', 'export', 'heat-output'],
  ]);
});

test.each([
  ['House kWh,HP kWh', ['import', 'heat-pump']],
  ['HP kWh,Heat kWh', ['heat-pump', 'heat-output']],
  ['Conso HP (kWh),Conso HC (kWh)', ['import', 'import']],
  ['HP (kWh),HC (kWh)', ['import', 'import']],
  ['HP (kWh),Note', ['import']],
])('HP in %s', (heads, roles) => {
  const rows = days((i) => `${20 + (i % 5)},${8 + ((i * 3) % 4)}`);
  expect(read([`date,${heads}`, ...rows]).series.map((one) => one.split(' ')[1])).toEqual(roles);
});
