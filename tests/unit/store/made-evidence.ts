/** Invented evidence for the tests of store and desk. */
import type { IntervalDays } from '../../../src/intake/intake.ts';
import { addDays } from '../../../src/model/calendar/civil.ts';
import type { Evidence, Series } from '../../../src/model/shapes/evidence.ts';

export function madeSeries(id: string, evidenceId: string, patch: Partial<Series> = {}): Series {
  return {
    id,
    evidenceId,
    name: 'Electricity',
    carrier: 'electricity',
    role: 'import',
    resolution: 'interval',
    intervalMinutes: 30,
    from: '2025-01-01',
    to: '2025-01-04',
    total: 12,
    present: 144,
    expected: 144,
    estimatedCount: 0,
    ...patch,
  };
}

export function madeEvidence(id: string, householdId: string, patch: Partial<Evidence> = {}): Evidence {
  return {
    id,
    householdId,
    fileName: 'march.csv',
    importedOn: '2026-11-25T10:00:00.000Z',
    sha256: `hash of ${id}`,
    shape: 'made up',
    series: [madeSeries(`${id}-a`, id)],
    remarks: [],
    ...patch,
  };
}

/** Days of 48 readings whose values cannot be written exactly in decimal, to show that they come back exact. */
export function madeIntervals(seriesId: string, from: string, count: number): IntervalDays {
  return {
    seriesId,
    intervalMinutes: 30,
    days: Array.from({ length: count }, (_, day) => ({
      date: addDays(from, day),
      values: Float64Array.from({ length: 48 }, (_, i) => (i === 7 ? Number.NaN : (day + 1) / (i + 3))),
    })),
  };
}
