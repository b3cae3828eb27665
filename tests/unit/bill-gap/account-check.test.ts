import { expect, test } from 'vitest';
import { accountCheck, type UsedInCheck } from '../../../src/model/bill-gap/account-check.ts';
import type { Series } from '../../../src/model/shapes/evidence.ts';

const record = (id: string, rest: Partial<Series> = {}): Series => ({
  id,
  evidenceId: 'file',
  name: id,
  carrier: 'electricity',
  role: 'import',
  resolution: 'day',
  from: '2026-01-01',
  to: '2026-04-01',
  total: 10,
  days: { first: '2026-01-01', values: [10] },
  present: 1,
  expected: 1,
  estimatedCount: 0,
  ...rest,
});
const BILL = { from: '2026-01-01', to: '2026-04-01' };
const NOTHING: UsedInCheck = { bill: new Set(), weather: new Set(), causes: new Set(), months: new Set() };
const account = (series: readonly Series[], used: Partial<UsedInCheck> = {}) =>
  accountCheck(BILL, series, { ...NOTHING, ...used }).map(({ name, use }) => `${name}: ${use}`);

test('the first thing that a record was used for counts', () => {
  const ids = new Set(['meter']);
  expect(account([record('meter')], { bill: ids, causes: ids, months: ids })).toEqual(['meter: bill-days']);
  expect(account([record('meter')], { causes: ids, months: ids })).toEqual(['meter: causes']);
  expect(account([record('meter')], { months: ids })).toEqual(['meter: months']);
});

test('what no part of the check took says why', () => {
  expect(
    account([
      record('old', { from: '2025-01-01', to: '2026-01-01' }),
      record('same again'),
      record('roof', { role: 'generation' }),
      record('sent', { role: 'export' }),
      record('water', { carrier: 'water' }),
      record('flow', { carrier: 'flow-temperature', role: 'machine' }),
      record('shed', { beside: 'aside' }),
      record('stove', { carrier: 'gas' }),
      record('to February', { to: '2026-02-01' }),
      record('weather to February', { carrier: 'outdoor-temperature', role: 'weather', to: '2026-02-01' }),
    ]),
  ).toEqual([
    'old: other-days',
    'same again: said-otherwise',
    'roof: made-here',
    'sent: sent-out',
    'water: water',
    'flow: not-asked',
    'shed: aside',
    'stove: other-energy',
    'to February: part-of-days',
    'weather to February: part-of-days',
  ]);
});

test('registers of one meter are used together', () => {
  const registers = [record('Day import (kWh)'), record('Night import (kWh)')];
  const used = new Set(['Day import (kWh)']);
  expect(account(registers, { bill: used })).toEqual(['Day import (kWh): bill-days', 'Night import (kWh): bill-days']);
});
