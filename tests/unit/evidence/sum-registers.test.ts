import { describe, expect, test } from 'vitest';
import { findRecord } from '../../../src/model/demand/record.ts';
import { sumRegisters } from '../../../src/model/evidence/sum-registers.ts';
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
      'Day (kWh) and Night (kWh)',
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
