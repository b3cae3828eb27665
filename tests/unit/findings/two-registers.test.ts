import { describe, expect, test } from 'vitest';
import { registerHours } from '../../../src/model/evidence/register-hours.ts';
import { registersOf } from '../../../src/model/findings/two-registers.ts';
import type { Series } from '../../../src/model/shapes/evidence.ts';

const register = (name: string, kWh: readonly number[], evidenceId = 'one-bill'): Series => ({
  id: name,
  evidenceId,
  name,
  carrier: 'electricity',
  role: 'import',
  resolution: 'period',
  from: '2025-01-01',
  to: '2025-03-01',
  total: kWh.reduce((sum, one) => sum + one, 0),
  periods: kWh.map((one, i) => ({
    from: i === 0 ? '2025-01-01' : '2025-02-01',
    to: i === 0 ? '2025-02-01' : '2025-03-01',
    kWh: one,
    quality: 'actual',
  })),
  present: kWh.length,
  expected: kWh.length,
  estimatedCount: 0,
});

describe('day and night registers of one meter', () => {
  const day = register('Day kWh', [120, 110]);
  const night = register('Night kWh', [480, 450]);
  test('each bill gives the units of both, the dear hours first', () => {
    expect(registersOf([night, day])).toEqual([
      { from: '2025-01-01', to: '2025-02-01', dearKWh: 120, cheapKWh: 480 },
      { from: '2025-02-01', to: '2025-03-01', dearKWh: 110, cheapKWh: 450 },
    ]);
  });
  test('a bill that only one register has gives nothing', () => {
    expect(registersOf([day, register('Night kWh', [480])])).toHaveLength(1);
  });
  test.each([
    ['two files', [day, register('Night kWh', [480, 450], 'another-bill')]],
    ['a third register beside them', [day, night, register('Evening kWh', [30, 30])]],
    ['a total and one of its parts', [register('Total kWh', [600, 560]), night]],
    [
      'another fuel',
      [
        { ...day, carrier: 'gas' as const },
        { ...night, carrier: 'gas' as const },
      ],
    ],
    [
      'another role',
      [
        { ...day, role: 'export' as const },
        { ...night, role: 'export' as const },
      ],
    ],
    [
      'bills of other days',
      [
        register('Day kWh', [120]),
        {
          ...night,
          periods: night.periods!.map((one, i) => ({
            ...one,
            ...(i === 0 ? { to: '2025-01-31' } : { to: '2025-02-01' }),
          })),
        },
      ],
    ],
    ['names that do not say which hours', [register('Rate 1', [120, 110]), register('Rate 2', [480, 450])]],
  ])('%s are not paired', (_, series) => {
    expect(registersOf(series)).toEqual([]);
  });
  test('a total beside them is no third register', () => {
    expect(registersOf([register('Total kWh', [600, 560]), day, night])).toHaveLength(2);
  });
});

test.each([
  ['Day rate import (kWh)', 'dear'],
  ['Normal rate', 'dear'],
  ['Rate 1 (day)', 'dear'],
  ['HT', 'dear'],
  ['Off-peak (kWh)', 'cheap'],
  ['Low rate units', 'cheap'],
  ['NT', 'cheap'],
  ['Rate 2', 'some'],
  ['Weekday evening', 'some'],
  ['Reading R01', 'some'],
  ['Daily use (kWh)', 'all'],
  ['Import (kWh)', 'all'],
])('“%s” counts %s hours', (name, hours) => expect(registerHours(name)).toBe(hours));
