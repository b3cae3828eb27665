import { describe, expect, test } from 'vitest';
import { findRecord } from '../../../src/model/demand/record.ts';
import { registerHours, registersOfSomeHours, seriesByMeter } from '../../../src/model/evidence/register-hours.ts';
import { splitMeter, sumRegisters } from '../../../src/model/evidence/sum-registers.ts';
import type { Series } from '../../../src/model/shapes/evidence.ts';

const register = (name: string, values: (number | null)[], over: Partial<Series> = {}): Series => ({
  id: name,
  evidenceId: 'one-file',
  name,
  carrier: 'electricity',
  role: 'import',
  resolution: 'day',
  from: '2025-01-01',
  to: '2025-01-04',
  total: values.reduce<number>((sum, kWh) => sum + (kWh ?? 0), 0),
  days: { first: '2025-01-01', values },
  present: values.length,
  expected: values.length,
  estimatedCount: 0,
  ...over,
});
const day = register('Day (kWh)', [3, 4, 5]);
const night = register('Night (kWh)', [10, null, 12]);

describe('registers of one meter', () => {
  test('day and night are added, and a day that one of them lacks is missing', () => {
    expect(sumRegisters([day, night]).map(({ days }) => days?.values)).toEqual([[13, null, 17]]);
  });
  test('beside a register of all hours the others are not counted again', () => {
    expect(sumRegisters([register('Total (kWh)', [13, 14, 17]), day, night])).toHaveLength(1);
  });
  test('one that does not come to their sum is another meter: it stays, and they are added', () => {
    const garage = register('Garage import (kWh)', [1, 1, 1]);
    expect(sumRegisters([garage, day, night]).map(({ name }) => name)).toEqual([
      'Day (kWh) + Night (kWh)',
      'Garage import (kWh)',
    ]);
  });
  test('files of their own stay apart', () => {
    expect(sumRegisters([day, { ...night, evidenceId: 'another-file' }])).toHaveLength(2);
  });
  test('bills are added period by period', () => {
    const bill = (name: string, kWh: number) =>
      register(name, [], {
        days: undefined,
        resolution: 'period',
        periods: [{ from: '2025-01-01', to: '2025-02-01', kWh, quality: 'actual' }],
      });
    expect(sumRegisters([bill('day units', 120), bill('night units', 480)])[0]?.periods).toEqual([
      { from: '2025-01-01', to: '2025-02-01', kWh: 600, quality: 'actual' },
    ]);
  });
  test('the heating record of storage heaters takes both', () => {
    expect(findRecord('storage', [day, night])?.spans.map(({ kWh }) => kWh)).toEqual([13, 17]);
  });
});

test.each([
  ['Electricity', 'all'],
  ['Total (kWh)', 'all'],
  ['Night (kWh)', 'cheap'],
  ['off-peak', 'cheap'],
  ['Off Peak units', 'cheap'],
  ['NT', 'cheap'],
  ['Day', 'dear'],
  ['Peak', 'dear'],
  ['HT', 'dear'],
  ['weekday day', 'some'],
  ['evening and weekend', 'some'],
  ['Rate 1', 'some'],
  ['T02', 'some'],
  ['Weekday nights', 'some'],
  ['electricity_night', 'cheap'],
  ['Heures creuses (kWh)', 'cheap'],
  ['Stromverbrauch Tag', 'dear'],
  ['Højlast', 'all'],
  ['Forbrug høj', 'dear'],
])('a register called “%s” counts %s hours', (name, hours) => expect(registerHours(name)).toBe(hours));

describe('which series are parts of one meter', () => {
  const warm = register('Day temperature', [5, 6, 7], { carrier: 'outdoor-temperature', role: 'weather' });
  test('two registers of some hours, no temperatures, no one by itself', () => {
    expect(registersOfSomeHours([day, night, warm])).toEqual([day, night]);
    expect(registersOfSomeHours([day, warm, register('Total', [1, 2, 3])])).toEqual([]);
  });
  test.each([
    ['Consommation HP (kWh)', 'Consommation HC (kWh)'],
    ['HPJB', 'HCJB', 'HPJR', 'HCJR'],
    ['F1', 'F2', 'F3'],
    ['F1 (kWh)', 'F23 (kWh)'],
    ['P1', 'P2', 'P3', 'P4', 'P5', 'P6'],
    ['Punta', 'Llano', 'Valle'],
    ['Verbruik dal', 'Verbruik normaal'],
    ['Verbrauch Tag', 'Verbrauch Nacht'],
    ['1.8.1', '1.8.2'],
    ['Spids', 'Høj', 'Lav'],
  ])('%j and those beside it are', (...names) => {
    expect(registersOfSomeHours(names.map((name) => register(name, [1, 2, 3])))).toHaveLength(names.length);
  });
  test.each([
    ['HP (kWh)', 'Night (kWh)'],
    ['Consumo dal contatore A', 'Consumo dal contatore B'],
    ['1.8.0', '1.8.1'],
    ['Tag', 'Day'],
  ])('“%s” and “%s” are not', (...names) => {
    expect(registersOfSomeHours(names.map((name) => register(name, [1, 2, 3])))).toEqual([]);
  });
  test('a register that holds two of the others is none beside them', () => {
    const names = ['F1', 'F2', 'F3', 'F23'].map((name) => register(name, [1, 2, 3]));
    expect(registersOfSomeHours(names).map(({ name }) => name)).toEqual(['F1', 'F2', 'F3']);
  });
  test('one import, one carrier, one role, days and bills apart, in their order', () => {
    const others: Partial<Series>[] = [
      { evidenceId: 'x' },
      { carrier: 'gas' },
      { role: 'export' },
      { days: undefined, periods: [] },
    ];
    const series = [day, ...others.map((over) => ({ ...night, ...over })), night] as Series[];
    expect(seriesByMeter(series).map((one) => one.length)).toEqual([2, 1, 1, 1, 1]);
  });
});

describe('a total beside its registers', () => {
  // Of the days that both have, 13 and 17 kWh are 30; 5 in 100 either way are 28.5 and 31.5.
  test.each([
    [[13, 99, 17], true],
    [[13, null, 18.5], true],
    [[13, null, 18.51], false],
    [[13, null, 15.5], true],
    [[13, null, 15.49], false],
    [[null, 20, null], true],
  ])('%j stands for them: %s', (values, whole) => {
    const total = register('Total', values);
    const { added, kept } = splitMeter([total, day, night]);
    expect(added).toEqual(whole ? [] : [day, night]);
    expect(kept).toEqual([total]);
  });
  test('that begins later is held against the days it has', () => {
    const later = register('Total', [17, 40], { from: '2025-01-03', days: { first: '2025-01-03', values: [17, 40] } });
    expect(splitMeter([later, day, night]).added).toEqual([]);
    const wrong = { ...later, days: { first: '2025-01-03', values: [25] } };
    expect(splitMeter([wrong, day, night]).added).toHaveLength(2);
  });
  test('one register alone is kept as it is', () => expect(splitMeter([day])).toEqual({ added: [], kept: [day] }));
});

describe('what is added', () => {
  const late = register('Night', [10, 11, 12, 13], {
    from: '2025-01-02',
    to: '2025-01-06',
    days: { first: '2025-01-02', values: [10, 11, 12, 13] },
    estimatedCount: 3,
    dayShape: [[1]],
    dayPeaks: [[2]],
    filled: [],
  });
  test('days that all have, from the last first to the first last; totals and the most estimated; no shapes of a day', () => {
    const early = { ...day, estimatedCount: 2, dayShape: [[1]] };
    const [sum] = sumRegisters([early, late]);
    expect(sum).toEqual({
      ...day,
      name: 'Day (kWh) + Night',
      from: '2025-01-01',
      to: '2025-01-06',
      total: 12 + 46,
      estimatedCount: 3,
      days: { first: '2025-01-02', values: [14, 16] },
    });
  });
  test('nothing where no day is in both', () => {
    const apart = { ...late, days: { first: '2025-03-01', values: [10] } };
    expect(sumRegisters([day, apart])[0]!.days!.values).toEqual([]);
  });
  test('periods that all have, with the weaker reading and the row of the first', () => {
    const bills = (name: string, ...periods: NonNullable<Series['periods']>) =>
      register(name, [], { days: undefined, resolution: 'period', periods } as Partial<Series>);
    const period = (
      from: string,
      to: string,
      kWh: number,
      quality: 'actual' | 'estimated' = 'actual',
      row?: number,
    ) => ({ from, to, kWh, quality, ...(row ? { row } : {}) });
    const one = bills(
      'day',
      period('2025-01-01', '2025-02-01', 120, 'actual', 4),
      period('2025-02-01', '2025-03-01', 100),
      period('2025-03-01', '2025-04-01', 90),
    );
    const other = bills(
      'night',
      period('2025-01-01', '2025-02-01', 480, 'estimated', 9),
      period('2025-02-01', '2025-03-02', 400),
      period('2025-02-28', '2025-04-01', 5),
    );
    expect(sumRegisters([one, other])[0]!.periods).toEqual([
      { from: '2025-01-01', to: '2025-02-01', kWh: 600, quality: 'estimated', row: 4 },
    ]);
    const total = bills('Total', period('2025-01-01', '2025-02-01', 610), period('2025-05-01', '2025-06-01', 7));
    expect(sumRegisters([total, one, other])).toEqual([total]);
    expect(sumRegisters([bills('Total', period('2025-01-01', '2025-02-01', 640)), one, other])).toHaveLength(2);
    expect(sumRegisters([bills('Total', period('2025-01-01', '2025-02-02', 640)), one, other])).toHaveLength(1);
    expect(sumRegisters([bills('Total', period('2025-01-02', '2025-02-01', 640)), one, other])).toHaveLength(1);
  });
});
