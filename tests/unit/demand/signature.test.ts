import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fitLine } from '../../../src/model/demand/least-squares.ts';
import { searchBase } from '../../../src/model/demand/search-base.ts';
import { fitSignature } from '../../../src/model/demand/signature.ts';
import type { SignatureData } from '../../../src/model/demand/signature-data.ts';
import { madeRecord } from './fixtures.ts';

const ofDays = (outdoorC: number[], perDayKWh: number[], first = 0): SignatureData => ({
  first: Int32Array.from(outdoorC, (_, i) => first + i),
  days: Float64Array.from(outdoorC, () => 1),
  perDayKWh: Float64Array.from(perDayKWh),
  outdoorC: Float64Array.from(outdoorC),
  start: Uint32Array.from({ length: outdoorC.length + 1 }, (_, i) => i),
});

/** The same record in spans of `length` days. */
function ofSpans(outdoorC: number[], use: number[], length: number): SignatureData {
  const count = Math.floor(use.length / length);
  const spanUse = Array.from({ length: count }, (_, i) =>
    use.slice(i * length, (i + 1) * length).reduce((sum, v) => sum + v, 0),
  );
  return {
    first: Int32Array.from(spanUse, (_, i) => i * length),
    days: Float64Array.from(spanUse, () => length),
    perDayKWh: Float64Array.from(spanUse, (v) => v / length),
    outdoorC: Float64Array.from(outdoorC.slice(0, count * length)),
    start: Uint32Array.from({ length: count + 1 }, (_, i) => i * length),
  };
}

describe('energy signature', () => {
  test('a record without noise gives back the base, slope and base temperature that made it', () => {
    const tenths = fc.integer({ min: 100, max: 190 });
    const amount = fc.double({ min: 0.5, max: 12, noNaN: true });
    fc.assert(
      fc.property(tenths, amount, amount, (baseTenths, base, slope) => {
        const { temperatures, use } = madeRecord({
          first: '2024-01-01',
          days: 366,
          base,
          slope,
          baseC: baseTenths / 10,
        });
        const found = fitSignature(ofDays(temperatures, use));
        expect(found.baseC).toBe(baseTenths / 10);
        expect(found.line.intercept).toBeCloseTo(base, 6);
        expect(found.line.slope).toBeCloseTo(slope, 6);
        expect(found.line.r2).toBeCloseTo(1, 9);
      }),
      { numRuns: 30 },
    );
  });
  test.each([7, 30, 61])('periods of %i days give it back too, from the degree days of their days', (length) => {
    const { temperatures, use } = madeRecord({ first: '2023-01-01', days: 730, base: 6, slope: 2.5, baseC: 14.3 });
    const found = fitSignature(ofSpans(temperatures, use, length));
    expect(found.baseC).toBe(14.3);
    expect(found.line.slope).toBeCloseTo(2.5, 6);
  });
  test('summing a record into the steps of the grid finds the same base as going through it span by span', () => {
    fc.assert(
      fc.property(fc.integer({ min: 80, max: 220 }), fc.double({ min: 1, max: 20, noNaN: true }), (tenths, noise) => {
        const made = madeRecord({ first: '2024-01-01', days: 200, base: 5, slope: 3, baseC: tenths / 10, noise });
        const days = ofDays(made.temperatures, made.use);
        // An extra day that the last span does not count sends the search down the other way.
        const spans = { ...days, outdoorC: Float64Array.from([...made.temperatures, 0]) };
        expect(searchBase(days)).toBe(searchBase(spans));
      }),
      { numRuns: 40 },
    );
  });
  test('use never runs backwards: base and slope stay at or above zero', () => {
    const record = fc.array(
      fc.tuple(fc.double({ min: -10, max: 28, noNaN: true }), fc.double({ min: 0, max: 90, noNaN: true })),
      {
        minLength: 5,
        maxLength: 60,
      },
    );
    fc.assert(
      fc.property(record, (rows) => {
        const found = fitSignature(
          ofDays(
            rows.map((r) => r[0]),
            rows.map((r) => r[1]),
          ),
        );
        expect(found.line.intercept).toBeGreaterThanOrEqual(0);
        expect(found.line.slope).toBeGreaterThanOrEqual(0);
      }),
    );
  });
  test('a home that uses nothing has a line of nothing', () => {
    const { temperatures } = madeRecord({ first: '2025-01-01', days: 365, base: 0, slope: 0, baseC: 15 });
    const found = fitSignature(
      ofDays(
        temperatures,
        temperatures.map(() => 0),
      ),
    );
    expect([found.line.intercept, found.line.slope, found.cvRmse, found.rho]).toEqual([0, 0, 0, 0]);
  });
});

describe('straight line', () => {
  test('kept from running backwards it is the best line that does not: no other from or above nothing fits better', () => {
    const coordinate = fc.double({ min: -10, max: 10, noNaN: true });
    const one = fc.record({
      x: fc.double({ min: 0, max: 20, noNaN: true }),
      y: coordinate,
      w: fc.integer({ min: 1, max: 31 }),
    });
    const other = fc.record({
      slope: fc.double({ min: 0, max: 3, noNaN: true }),
      intercept: fc.double({ min: 0, max: 10, noNaN: true }),
    });
    fc.assert(
      fc.property(
        fc.array(one, { minLength: 2, maxLength: 12 }),
        fc.array(other, { minLength: 20, maxLength: 20 }),
        (points, others) => {
          const [x, y, w] = [points.map((p) => p.x), points.map((p) => p.y), points.map((p) => p.w)];
          const best = fitLine(x, y, w, { notNegative: true });
          expect(best.slope).toBeGreaterThanOrEqual(0);
          expect(best.intercept).toBeGreaterThanOrEqual(0);
          const errorOf = ({ slope, intercept }: { slope: number; intercept: number }) =>
            points.reduce((sum, p) => sum + p.w * (p.y - intercept - slope * p.x) ** 2, 0);
          expect(best.squaredError).toBeCloseTo(errorOf(best), 6);
          const near = [0.99, 1.01].flatMap((times) => [
            { slope: best.slope * times, intercept: best.intercept },
            { slope: best.slope, intercept: best.intercept * times },
          ]);
          for (const line of [...others, ...near])
            expect(errorOf(line)).toBeGreaterThanOrEqual(best.squaredError - 1e-6);
        },
      ),
    );
  });

  test('weights count as repeats', () => {
    const point = fc.tuple(
      fc.double({ min: -5, max: 5, noNaN: true }),
      fc.double({ min: -5, max: 5, noNaN: true }),
      fc.integer({ min: 1, max: 4 }),
    );
    fc.assert(
      fc.property(fc.array(point, { minLength: 4, maxLength: 12 }), (points) => {
        const many = points.flatMap((p) => Array.from({ length: p[2] }, () => p));
        const weighted = fitLine(
          points.map((p) => p[0]),
          points.map((p) => p[1]),
          points.map((p) => p[2]),
        );
        const repeated = fitLine(
          many.map((p) => p[0]),
          many.map((p) => p[1]),
        );
        expect(weighted.squaredError).toBeCloseTo(repeated.squaredError, 6);
      }),
    );
  });
  test.each([
    ['all at one x', [4.1, 4.1, 4.1, 4.1]],
    ['apart by rounding alone', [1e-160, 3e-160, 2e-160, 0]],
    ['apart in the last digit', [0.1 + 0.2, 0.3, 0.3, 0.3]],
  ])('points %s have no slope, and a mean', (_name, x) => {
    const line = fitLine(x, [1, 2, 3, 6], [3, 1, 2, 1]);
    expect([line.slope, line.slopeError]).toEqual([0, 0]);
    expect(line.intercept).toBeCloseTo(17 / 7, 12);
  });
});
