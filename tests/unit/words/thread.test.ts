import { describe, expect, test } from 'vitest';
import type { Series } from '../../../src/model/shapes/evidence.ts';
import { threadLines } from '../../../src/words/thread.ts';
import { figure, larchRise } from '../leave-behind/larch-rise.ts';

const gas: Series = {
  id: 'gas',
  evidenceId: 'e',
  name: 'gas',
  carrier: 'gas',
  role: 'import',
  resolution: 'period',
  from: '2024-10-01',
  to: '2026-10-01',
  total: 30_000,
  present: 24,
  expected: 24,
  estimatedCount: 0,
};
const electricity: Series = {
  ...gas,
  carrier: 'electricity',
  resolution: 'interval',
  from: '2025-10-01',
  to: '2026-10-01',
  present: 17_328,
  expected: 17_520,
  days: { first: '2025-10-01', values: Array.from({ length: 365 }, (_, i) => (i < 4 ? null : 20)) },
};
const estimate = {
  number: 12,
  madeOn: '2026-11-25T10:00:00Z',
  heatPumpPence: 119_000,
  lowPence: 104_000,
  highPence: 140_000,
  grade: 'assumed' as const,
};
const check = {
  verdict: 'above' as const,
  actualPence: 67_400,
  expected: { value: 1, low: 1, high: 1 },
  madeOn: '2027-02-01',
};
const results = (input: Parameters<typeof threadLines>[0]) =>
  threadLines(input).map((line) => [line.name, line.result, line.grade]);

describe('the thread', () => {
  test('a written estimate and its check stay in the money of their day', () => {
    const inEuros = { ...estimate, id: 'p1', currency: 'EUR' as const };
    const checks = [{ ...check, estimateId: 'p1' }];
    const input = { evidence: [], appraisal: null, estimates: [inEuros], checks };
    expect(
      results(input)
        .slice(-2)
        .map(([, result]) => result),
    ).toEqual(['€1,190 a year, no. 12 of 25 November 2026', '€670, above the estimate’s range']);
  });
  test('an empty household says what each stage needs', () => {
    expect(results({ evidence: [], appraisal: null, estimates: [], checks: [] })).toEqual([
      ['Bills and readings', 'needs a bill or a meter file', 'missing'],
      ['Heat needed', 'nothing to show yet', 'missing'],
      ['Heat pump', 'nothing to show yet', 'missing'],
      ['Prices', 'nothing to show yet', 'missing'],
      ['Running cost', 'nothing to show yet', 'missing'],
      ['Written estimate', 'none yet', 'missing'],
      ['Bill check', 'needs a written estimate and a later bill', 'missing'],
    ]);
  });
  test('a whole case reads downwards', () => {
    const input = {
      evidence: [{ series: [gas, electricity] }],
      appraisal: larchRise(),
      estimates: [estimate],
      checks: [check],
    };
    expect(results(input)).toEqual([
      ['Bills and readings', 'gas 24 months, electricity 361 days in 365', 'measured'],
      ['Heat needed', '13,900 kWh a year, give or take 1,100', 'estimated'],
      ['Heat pump', 'seasonal factor 3.4 for heating and hot water (H4)', 'estimated'],
      ['Prices', '26.3 p and 8.0 p, October to December 2026', 'measured'],
      ['Running cost', '£1,190 a year; 8 in 10 homes like yours: £1,050 to £1,400', 'estimated'],
      ['Written estimate', '£1,190 a year, no. 12 of 25 November 2026', 'assumed'],
      ['Bill check', '£670, above the estimate’s range', 'measured'],
    ]);
  });
  test('prices of different months each say their own, and the weaker one counts', () => {
    const rise = larchRise();
    const gasBasis = {
      ...rise.prices.gas!,
      from: '2026-01-01',
      to: '2026-04-01',
      staleDays: 200,
      grade: 'assumed' as const,
    };
    const appraisal = { ...rise, prices: { ...rise.prices, gas: gasBasis } };
    expect(results({ evidence: [], appraisal, estimates: [], checks: [] })[3]).toEqual([
      'Prices',
      '26.3 p (October to December 2026) and 8.0 p (January to April 2026, old)',
      'assumed',
    ]);
  });
  test('what is not known is missing, never a nought', () => {
    const rise = larchRise();
    const unknown = figure(Number.NaN, Number.NaN, Number.NaN, '');
    const appraisal = {
      ...rise,
      demand: { ...rise.demand, total: unknown },
      machine: { ...rise.machine, whole: unknown },
      prices: { ...rise.prices, electricityPencePerKWh: Number.NaN },
      systems: [],
    };
    const lines = threadLines({ evidence: [], appraisal, estimates: [estimate], checks: [] });
    expect(lines.filter((line) => line.grade === 'missing').map((line) => line.stage)).toEqual([
      'evidence',
      'heat',
      'machine',
      'prices',
      'cost',
      'check',
    ]);
    expect(lines.at(-1)?.result).toBe('needs a later bill');
  });
});
