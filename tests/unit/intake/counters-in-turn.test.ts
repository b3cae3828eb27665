/** Rows of several meters in turn, of which no moment is said twice: by their names, or because each goes up by itself. */
import { describe, expect, test } from 'vitest';
import { codesOf, previewOf } from './read-text.ts';

const read = (rows: readonly string[]) => {
  const preview = previewOf(rows, { fileName: 'log.csv' });
  return {
    series: preview.series.map((s) => `${s.carrier} ${s.role} ${s.total.toFixed(1)}`).sort(),
    codes: codesOf(preview),
  };
};
const HOURS = Array.from({ length: 24 * 40 }, (_, i) => i);
const at = (hour: number, seconds: number) =>
  new Date(Date.UTC(2025, 0, 1) + hour * 3_600_000 + seconds * 1000).toISOString().replace('.000', '');
/** Rises by 0.2, 0.3 and 0.4 kWh in turn. */
const imported = (i: number) => 100 + 0.3 * i - (i % 3 === 1 ? 0.1 : 0) - (i % 3 === 2 ? 0.1 : 0);
/** Rises at noon only. */
const exported = (i: number) => 20 + 2 * Math.floor((i + 12) / 24);

test('counters at their own seconds are told apart by their names', () => {
  const rows = HOURS.flatMap((i) => [
    `${at(i, 1 + (i % 9))},meter.import,${imported(i).toFixed(1)},kWh`,
    `${at(i, 12 + (i % 7))},meter.export,${exported(i).toFixed(1)},kWh`,
  ]);
  const { series, codes } = read(['time,entity,value,unit', ...rows]);
  const last = HOURS.length - 1;
  expect(series).toEqual([
    `electricity export ${(exported(last) - exported(0)).toFixed(1)}`,
    `electricity import ${(imported(last) - imported(0)).toFixed(1)}`,
  ]);
  expect(codes).toContain('registers-by-column');
});

test('a word for the quality of one counter makes no two of it', () => {
  const rows = HOURS.map((i) => `${at(i, 0)},${i % 4 === 1 ? 'calculated' : 'measured'},${imported(i).toFixed(1)}`);
  const { series, codes } = read(['time,method,electricity reading kWh', ...rows]);
  expect(series).toHaveLength(1);
  expect(codes).not.toContain('registers-by-column');
});

/** Bills of two fuels, each with its own days. */
const bills = (first: string, second: string, unit: string) =>
  Array.from({ length: 24 }, (_, i) => {
    const day = (n: number) =>
      new Date(Date.UTC(2025, 0, 5 + 30 * (i >> 1) + 11 * (i % 2) + n)).toISOString().slice(0, 10);
    return `${day(0)},${day(29)},${i % 2 ? second : first},${i % 2 ? 900 - 50 * (i >> 1) : 210 + 7 * (i >> 1)}${unit}`;
  });
const POWER = Array.from({ length: 12 }, (_, i) => 210 + 7 * i).reduce((a, b) => a + b, 0);
const GAS = Array.from({ length: 12 }, (_, i) => 900 - 50 * i).reduce((a, b) => a + b, 0);

test.each([
  ['Electricity', 'Gas'],
  ['Strom', 'Erdgas'],
  ['Électricité', 'Gaz'],
])('bills of %s and %s in one list are two records', (first, second) => {
  const { series, codes } = read(['From,To,Fuel,Used (kWh)', ...bills(first, second, '')]);
  expect(series).toEqual([`electricity import ${POWER.toFixed(1)}`, `gas import ${GAS.toFixed(1)}`]);
  expect(codes).not.toContain('period-overlap');
});

test('bills of something else among them make no sum with either', () => {
  const water = '2025-02-01,2025-03-02,Broadband,1';
  const { series } = read(['From,To,Service,Used (kWh)', ...bills('Electricity', 'Gas', ''), water]);
  expect(series).toEqual(
    expect.arrayContaining([`electricity import ${POWER.toFixed(1)}`, `gas import ${GAS.toFixed(1)}`]),
  );
});

test('notes beside some rows only lose no row', () => {
  const rows = Array.from({ length: 20 }, (_, i) => {
    const day = new Date(Date.UTC(2025, 0, 1 + i)).toISOString().slice(0, 10);
    return `${day},${8 + (i % 4)},${i % 5 === 0 ? '' : i % 2 ? 'gas fire on' : 'electric heater on'}`;
  });
  const { series } = read(['Date,Electricity (kWh),Notes', ...rows]);
  expect(series).toEqual([`electricity import ${(8 * 20 + 30).toFixed(1)}`]);
});

test('bills of what is drawn and what is sent out are two records', () => {
  const { series } = read(['Statement,From,To,Used (kWh)', ...bills('Import', 'Export', '').map(statement)]);
  expect(series).toEqual([`electricity export ${GAS.toFixed(1)}`, `electricity import ${POWER.toFixed(1)}`]);
});

test('a supplier after another is no other energy, whatever it is called', () => {
  const rows = bills('', '', '')
    .filter((_, i) => i % 2 === 0)
    .map((row, i) => `${row},${i < 6 ? 'Hillside Electric' : 'Valley Gas'}`);
  const { codes } = read(['From,To,Of,Used (kWh),Supplier', ...rows]);
  expect(codes).not.toContain('registers-by-column');
});

test('bills that lie over each other under words that say nothing are refused', () => {
  const { codes } = read(['Statement,From,To,Electricity (kWh)', ...bills('Oak', 'Elm', '').map(statement)]);
  expect(codes).toContain('times-doubled');
});

/** With what it is of before its dates. */
function statement(row: string): string {
  const [from, to, of, used] = row.split(',');
  return [of, from, to, used].join(',');
}

/** Rows of two homes, each on its own day of the month. */
const ofTwo = (names: readonly string[], apart: number, amount: (i: number, home: number) => number) =>
  Array.from({ length: 8 }, (_, i) =>
    names.map((name, home) => {
      const day = new Date(Date.UTC(2025, i, 3 + home * apart)).toISOString().slice(0, 10);
      return `${name},${day},${amount(i, home)}`;
    }),
  ).flat();
const used = (i: number, home: number) => 200 + home * 40 + ((i * 37) % 30);
const counted = (i: number, home: number) => 1000 + home * 4000 + i * (200 + home * 40);

test.each([
  ['Address', ['12 Hill Road', '14 Hill Road']],
  ['Site', ['1', '2']],
  ['Account', ['1001', '1002']],
  ['Account', ['A-1001', 'A-1002']],
  ['Meter serial number', ['445566', '778899']],
  ['Zählernummer', ['1ABC0012', '1ABC0034']],
  // Words that say nothing, and dates that are even for each of them only.
  ['Where', ['House', 'Garage']],
])('%s of two homes on days of their own', (heading, names) => {
  for (const [amounts, of] of [
    ['Used (kWh)', used],
    ['Reading (kWh)', counted],
  ] as const) {
    const rows = ofTwo(names, 9, of);
    for (const order of [rows, rows.toSorted()]) {
      const { series, codes } = read([`${heading},As of,${amounts}`, ...order]);
      expect(series.map((one) => one.split(' ').slice(0, 2).join(' '))).toEqual([
        'electricity import',
        'electricity import',
      ]);
      expect(codes).toContain('registers-by-column');
    }
  }
});

test.each([
  ['an account that followed another', 'Account', ['A', 'A', 'A', 'A', 'B', 'B', 'B', 'B'], used],
  ['a house after another', 'Address', ['1 Elm', '1 Elm', '1 Elm', '2 Oak', '2 Oak', '2 Oak', '2 Oak', '2 Oak'], used],
  ['who read the meter', 'Customer', ['Jo', 'Al', 'Jo', 'Al', 'Jo', 'Al', 'Jo', 'Al'], counted],
  ['how it was paid', 'Paid by', ['card', 'cash', 'card', 'cash', 'card', 'cash', 'card', 'cash'], used],
  ['a number of each bill', 'Contract ref', ['K1', 'K2', 'K3', 'K4', 'K5', 'K6', 'K7', 'K8'], used],
])('%s is of one home', (_, heading, words, of) => {
  const rows = ofTwo([''], 0, of).map((row, i) => `${words[i]}${row}`);
  const { series, codes } = read([`${heading},As of,${of === used ? 'Used' : 'Reading'} (kWh)`, ...rows]);
  expect([series.length, codes.includes('registers-by-column')]).toEqual([1, false]);
});

test.each(['House', 'Home', 'Building', 'Meter'])('what was used under “%s” numbers no homes', (heading) => {
  const rows = Array.from({ length: 60 }, (_, i) => {
    const day = new Date(Date.UTC(2025, 0, 1 + i)).toISOString().slice(0, 10);
    return `${day},${9 + ((i * 7) % 5) + (i % 11 === 0 ? 2 : 0)},${3 + ((i * 3) % 4)}`;
  });
  expect(read([`Date,${heading},Garage (kWh)`, ...rows]).codes).not.toContain('registers-by-column');
});

describe('rows that each tell of one way', () => {
  const SLOTS = Array.from({ length: 48 * 29 }, (_, i) => i);
  const isNoon = (i: number) => i % 48 >= 20 && i % 48 < 30;
  const kWh = (i: number) => 20 + (i % 7);
  const netted = (drawn: string, sent: string, heading = 'Type') => [
    `Time,${heading},kWh`,
    ...SLOTS.map((i) => `${at(i / 2, 0)},${isNoon(i) ? sent : drawn},0.${kWh(i)}`),
  ];
  const sumOf = (is: (i: number) => boolean) => SLOTS.filter(is).reduce((sum, i) => sum + kWh(i), 0) / 100;
  const [sent, drawn] = [sumOf(isNoon), sumOf((i) => !isNoon(i))];
  test.each([
    ['Import', 'Export', 'Type'],
    ['in', 'out', 'Direction'],
    ['Bezug', 'Einspeisung', 'Richtung'],
    ['bought', 'sold', 'Kind'],
    ['usage', 'feed-in', 'Type'],
    ['Verbrauch', 'Einspeisung', 'Art'],
    ['no', 'yes', 'Export?'],
    ['0', '1', 'Is export'],
  ])('%s and %s under %s: the other is nought meanwhile', (one, other, heading) => {
    const preview = previewOf(netted(one, other, heading), { fileName: 'log.csv' });
    expect(
      preview.series
        .map((s) => [s.role, Number(s.total.toFixed(2)), s.present === s.expected])
        .toSorted()
        .toReversed(),
    ).toEqual([
      ['import', drawn, true],
      ['export', sent, true],
    ]);
    const codes = codesOf(preview);
    expect([codes.includes('ways-in-turn'), codes.includes('gap')]).toEqual([true, false]);
  });
  test.each([
    ['I', 'E'],
    ['+', '-'],
    ['C', 'P'],
  ])('%s and %s may be ways', (one, other) => {
    const preview = previewOf(netted(one, other), { fileName: 'log.csv' });
    const asked = preview.remarks.filter(({ code }) => code === 'direction-asked').map(({ column }) => column);
    expect(asked).toEqual([`kWh, ${one}`, `kWh, ${other}`]);
    expect(codesOf(preview)).not.toContain('estimated');
  });
  test.each([
    ['marks of readings', 'A', 'E', 'Type'],
    ['a quality', 'I', 'E', 'Quality'],
    ['two rates', 'Peak', 'Off-peak', 'Type'],
  ])('%s are of one record', (_, one, other, heading) => {
    const { series, codes } = read(netted(one, other, heading));
    expect([series, codes.includes('ways-in-turn')]).toEqual([
      [`electricity import ${(drawn + sent).toFixed(1)}`],
      false,
    ]);
  });
  test('rows that are missing altogether stay a gap', () => {
    const [head, ...rows] = netted('Import', 'Export');
    const preview = previewOf([head!, ...rows.slice(0, 500), ...rows.slice(560)], { fileName: 'log.csv' });
    expect(codesOf(preview).filter((code) => code === 'gap')).toHaveLength(2);
  });
  test('two that are read in turn have no noughts between', () => {
    const rows = SLOTS.map((i) => `${at(i / 2, 0)},${i % 2 ? 'Export' : 'Import'},0.${kWh(i)}`);
    expect(read(['Time,Type,kWh', ...rows]).codes).not.toContain('ways-in-turn');
  });
  test('one way a day is no record of days', () => {
    const days = Array.from(
      { length: 60 },
      (_, i) => `${at(24 * i, 0).slice(0, 10)},${i % 2 ? 'in' : 'out'},${kWh(i)}`,
    );
    expect(read(['Date,Direction,kWh', ...days]).series).toEqual([]);
  });
});
