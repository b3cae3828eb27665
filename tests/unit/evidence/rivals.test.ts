import { describe, expect, test } from 'vitest';
import { accountFiles } from '../../../src/model/demand/account-records.ts';
import { findRivals, settleBeside } from '../../../src/model/evidence/rivals.ts';
import type { Series } from '../../../src/model/shapes/evidence.ts';
import { emptyHousehold } from '../../../src/model/shapes/household.ts';

const days = (id: string, first: string, values: (number | null)[], more: Partial<Series> = {}): Series => ({
  id,
  evidenceId: id,
  name: id,
  carrier: 'gas',
  role: 'import',
  resolution: 'day',
  from: first,
  to: new Date(Date.parse(first) + values.length * 86_400_000).toISOString().slice(0, 10),
  total: values.reduce<number>((sum, v) => sum + (v ?? 0), 0),
  days: { first, values },
  present: values.length,
  expected: values.length,
  estimatedCount: 0,
  ...more,
});
const ten = (kWh: number) => new Array<number>(10).fill(kWh);

describe('two records of one kind', () => {
  test('that follow each other are none that differ', () => {
    expect(findRivals([days('a', '2025-01-01', ten(40)), days('b', '2025-01-11', ten(90))])).toEqual([]);
  });
  test('that overlap alike are none either, bills and days too', () => {
    const bill = days('b', '2025-01-01', [], {
      resolution: 'period',
      to: '2025-01-11',
      periods: [{ from: '2025-01-01', to: '2025-01-11', kWh: 410, quality: 'actual' }],
    });
    const { days: _, ...bills } = bill;
    expect(findRivals([days('a', '2025-01-01', ten(40)), bills])).toEqual([]);
  });
  test('of the same days with other values are told, with their days and by how much', () => {
    const [found] = findRivals([days('a', '2025-01-01', ten(40)), days('b', '2025-01-03', ten(10))]);
    expect([found?.one.id, found?.other.id, found?.days, found?.moreKWh]).toEqual(['a', 'b', 8, 240]);
  });
  test('of other carriers, roles, or what is sent out, are not held against each other', () => {
    const sun = { carrier: 'electricity', role: 'export' } as const;
    expect(findRivals([days('a', '2025-01-01', ten(40)), days('b', '2025-01-01', ten(9), { carrier: 'oil' })])).toEqual(
      [],
    );
    expect(findRivals([days('a', '2025-01-01', ten(4), sun), days('b', '2025-01-01', ten(9), sun)])).toEqual([]);
  });
});

describe('once it is said what they are', () => {
  test('a further meter is added on the days of both', () => {
    const [sum, ...others] = settleBeside([
      days('a', '2025-01-01', ten(40)),
      days('b', '2025-01-03', [...ten(10), 1], { beside: 'added' }),
    ]);
    expect(others).toEqual([]);
    expect([sum?.from, sum?.to, sum?.total, sum?.days?.values]).toEqual([
      '2025-01-03',
      '2025-01-11',
      400,
      new Array(8).fill(50),
    ]);
  });
  test('days are added to the bills of the other', () => {
    const { days: _, ...bills } = days('b', '2025-01-01', [], {
      resolution: 'period',
      to: '2025-01-11',
      periods: [{ from: '2025-01-01', to: '2025-01-11', kWh: 100, quality: 'actual' }],
    });
    const [sum] = settleBeside([bills, days('a', '2025-01-01', ten(40), { beside: 'added' })]);
    expect(sum?.periods?.map(({ kWh }) => kWh)).toEqual([500]);
  });
  test('what is kept aside is gone, and every record is accounted for', () => {
    const own = [days('a', '2025-01-01', ten(40)), days('b', '2025-01-01', ten(10), { beside: 'aside' })];
    const joined = settleBeside(own);
    expect(joined.map(({ id }) => id)).toEqual(['a']);
    const household = {
      ...emptyHousehold('h', 'Fern'),
      present: { ...emptyHousehold('h', 'Fern').present, system: 'gas-condensing' as const },
    };
    const weather = days('w', '2025-01-01', ten(5), { carrier: 'outdoor-temperature', role: 'weather' });
    const sun = days('s', '2025-01-01', ten(3), { carrier: 'electricity', role: 'generation' });
    const file = {
      id: 'e',
      householdId: 'h',
      fileName: 'f',
      importedOn: '',
      sha256: '',
      shape: '',
      remarks: [],
      series: [...own, weather, sun].map((one) => ({ ...one, name: one.id })),
    };
    const [account] = accountFiles(household, [file], [...joined, weather, sun]);
    expect(account!.records.map(({ name, use }) => `${name} ${use}`)).toEqual([
      'a heat',
      'b aside',
      'w weather',
      's made-here',
    ]);
  });
});
