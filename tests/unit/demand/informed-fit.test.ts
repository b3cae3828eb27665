import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { toDayNumber } from '../../../src/model/calendar/civil.ts';
import { estimateDemand } from '../../../src/model/demand/estimate-demand.ts';
import { fitInformed } from '../../../src/model/demand/informed-fit.ts';
import { meanWave, yearWave } from '../../../src/model/demand/season.ts';
import { fitSignature } from '../../../src/model/demand/signature.ts';
import type { SignatureData } from '../../../src/model/demand/signature-data.ts';
import { solveSymmetric } from '../../../src/model/demand/symmetric.ts';
import { reference } from '../../../src/reference/index.ts';
import { household, madeRecord, periodSeries, typed, year } from './fixtures.ts';

const known = { perDayKWh: 8, errorPerDayKWh: 4, methodErrorPerDayKWh: 3, swing: 0, swingError: 0.01 };
const circumstances = { known, weatherErrorK: 0 };
const ofDays = (outdoorC: number[], perDayKWh: number[]): SignatureData => ({
  first: Int32Array.from(outdoorC, (_, i) => toDayNumber('2024-01-01') + i),
  days: Float64Array.from(outdoorC, () => 1),
  perDayKWh: Float64Array.from(perDayKWh),
  outdoorC: Float64Array.from(outdoorC),
  start: Uint32Array.from({ length: outdoorC.length + 1 }, (_, i) => i),
});

describe('weighed base temperatures', () => {
  test('a full record of days outweighs what homes are like: base temperature and slope come back', () => {
    fc.assert(
      fc.property(fc.integer({ min: 55, max: 90 }), (fifths) => {
        const made = madeRecord({ first: '2024-01-01', days: 366, base: 8, slope: 3, baseC: fifths / 5, noise: 2 });
        const data = ofDays(made.temperatures, made.use);
        const fit = fitInformed(data, fitSignature(data), circumstances);
        expect(Math.abs(fit.baseC - fifths / 5)).toBeLessThan(0.6);
        const slope = fit.lines.reduce((sum, l) => sum + l.weight * l.line[2], 0);
        expect(Math.abs(slope / 3 - 1)).toBeLessThan(0.12);
        expect(fit.lines.reduce((sum, l) => sum + l.weight, 0)).toBeCloseTo(1, 9);
      }),
      { numRuns: 12 },
    );
  });
  test('use never runs backwards, whatever the record', () => {
    const row = fc.tuple(fc.double({ min: -10, max: 28, noNaN: true }), fc.double({ min: 0, max: 90, noNaN: true }));
    fc.assert(
      fc.property(fc.array(row, { minLength: 6, maxLength: 40 }), (rows) => {
        const data = ofDays(
          rows.map((r) => r[0]),
          rows.map((r) => r[1]),
        );
        for (const { line, weight } of fitInformed(data, fitSignature(data), circumstances).lines) {
          expect(line[0]).toBeGreaterThanOrEqual(0);
          expect(line[2]).toBeGreaterThanOrEqual(0);
          expect(weight).toBeGreaterThanOrEqual(0);
        }
      }),
      { numRuns: 50 },
    );
  });
  test('months of a whole-house meter in typical weather do not make heating of lights and hot water', () => {
    // 8 kWh a day of anything else, 2 kWh per K below 13.6 °C: about 3,000 kWh of heat and 2,900 of the rest.
    const made = madeRecord({ first: '2024-11-01', days: 335, base: 8, slope: 2, baseC: 13.6, noise: 3 });
    const periods = Array.from({ length: 11 }, (_, i) => {
      const date = (k: number) => new Date(Date.UTC(2024, 10 + k, 1)).toISOString().slice(0, 10);
      const [from, to] = [date(i), date(i + 1)];
      const start = toDayNumber(from) - toDayNumber('2024-11-01');
      const kWh = made.use.slice(start, toDayNumber(to) - toDayNumber('2024-11-01')).reduce((sum, v) => sum + v, 0);
      return { from, to, kWh, quality: 'actual' as const };
    });
    const mains = { ...periodSeries('mains', 'electricity', periods) };
    const home = { floorAreaM2: typed(70), people: typed(2) };
    const { demand } = estimateDemand({
      household: household({ present: { system: 'direct-electric' }, home, heat: { use: 'record' } }),
      series: [mains],
      reference,
      year,
    });
    const truth = 2 * year.dailyMeanC.reduce((sum, t) => sum + Math.max(0, 13.6 - t), 0);
    expect(demand.space.low).toBeLessThan(truth);
    expect(demand.space.high).toBeGreaterThan(truth);
    expect(Math.abs(demand.space.value / truth - 1)).toBeLessThan(0.25);
  });
});

describe('beneath it', () => {
  test('a matrix times its inverse is one', () => {
    const a = [
      [4, 1, 0.5],
      [1, 3, -0.2],
      [0.5, -0.2, 2],
    ];
    const { solution, inverse, logDeterminant } = solveSymmetric(a, [1, 2, 3])!;
    const times = a.map((row) => row.map((_, k) => row.reduce((sum, v, j) => sum + v * inverse[j]![k]!, 0)));
    times.forEach((row, i) => {
      for (const [k, v] of row.entries()) expect(v).toBeCloseTo(i === k ? 1 : 0, 12);
    });
    const back = a.map((row) => row.reduce((sum, v, j) => sum + v * solution[j]!, 0));
    for (const [i, v] of back.entries()) expect(v).toBeCloseTo([1, 2, 3][i]!, 12);
    // By the rule of Sarrus: 24 − 0.1 − 0.1 − 0.75 − 0.16 − 2 = 20.89.
    expect(Math.exp(logDeterminant)).toBeCloseTo(20.89, 10);
    expect(solveSymmetric([[0]], [1])).toBeNull();
  });
  test('the wave of the year is highest in January, lowest in July, and cancels over a year', () => {
    expect(yearWave(toDayNumber('2025-01-16'))).toBeCloseTo(1, 3);
    expect(yearWave(toDayNumber('2025-07-16'))).toBeCloseTo(-1, 2);
    expect(meanWave(toDayNumber('2025-01-01'), 365)).toBeCloseTo(0, 2);
  });
});
