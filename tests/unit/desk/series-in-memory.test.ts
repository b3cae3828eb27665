/** A record that goes on past the day of an estimate tells it nothing of later days. */
import { expect, test } from 'vitest';
import type { WholeHousehold } from '../../../src/desk/household-file.ts';
import { seriesInMemory } from '../../../src/desk/join/stored-series.ts';
import type { Series } from '../../../src/model/shapes/evidence.ts';
import { emptyHousehold } from '../../../src/model/shapes/household.ts';

const shared = {
  evidenceId: 'e',
  name: 'n',
  role: 'import',
  total: 0,
  present: 0,
  expected: 0,
  estimatedCount: 0,
} as const;
const byDay: Series = {
  ...shared,
  id: 'days',
  carrier: 'electricity',
  resolution: 'day',
  from: '2026-01-30',
  to: '2026-02-04',
  days: { first: '2026-01-30', values: [1, 2, 3, 4, 5] },
  dayPeaks: [[1]],
};
const byPeriod: Series = {
  ...shared,
  id: 'bills',
  carrier: 'gas',
  resolution: 'period',
  from: '2025-12-01',
  to: '2026-03-01',
  periods: [
    { from: '2025-12-01', to: '2026-02-01', kWh: 10, quality: 'actual' },
    { from: '2026-02-01', to: '2026-03-01', kWh: 20, quality: 'actual' },
  ],
};
const later: Series = { ...byDay, id: 'later', carrier: 'outdoor-temperature', role: 'weather', from: '2026-02-01' };
const whole = {
  household: emptyHousehold('h', 'Home'),
  evidence: [byDay, byPeriod, later].map((one, i) => ({
    import: {
      id: `e${i}`,
      householdId: 'h',
      fileName: 'f',
      importedOn: '',
      sha256: '',
      shape: '',
      remarks: [],
      series: [{ ...one, evidenceId: `e${i}` }],
    },
    intervals: [],
  })),
} as unknown as WholeHousehold;

test('days and bills end with the day; a record that begins later is not there', () => {
  const known = seriesInMemory(whole, '2026-02-01');
  expect(known.map(({ id, to }) => [id, to])).toEqual([
    ['days', '2026-02-01'],
    ['bills', '2026-02-01'],
  ]);
  expect(known[0]!.days!.values).toEqual([1, 2]);
  expect(known[0]!.dayPeaks).toBeUndefined();
  expect(known[1]!.periods!.map(({ kWh }) => kWh)).toEqual([10]);
});
test('without a day nothing is cut', () => {
  const all = seriesInMemory(whole);
  expect(all.map(({ id }) => id)).toEqual(['days', 'bills', 'later']);
  expect(all[0]!.days!.values).toEqual([1, 2, 3, 4, 5]);
});
