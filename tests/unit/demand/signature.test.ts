import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fitLine } from '../../../src/model/demand/least-squares.ts';
import { searchBase } from '../../../src/model/demand/search-base.ts';
import { degreesPerDay, fitSignature, fitSignatureAt } from '../../../src/model/demand/signature.ts';
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

/** Spans of 2, 1, 3, 1 and 2 days, with a gap before the fourth. */
const fiveSpans: SignatureData = {
  first: Int32Array.of(0, 2, 3, 8, 9),
  days: Float64Array.of(2, 1, 3, 1, 2),
  perDayKWh: Float64Array.of(9, 33, 20, 62, 6),
  outdoorC: Float64Array.of(10, 20, 5, 0, 14, 16, -5, 15, 12),
  start: Uint32Array.of(0, 2, 3, 6, 7, 9),
};

describe('a signature at a base temperature of 15 °C', () => {
  const found = fitSignatureAt(fiveSpans, 15);
  test('degrees below it are a mean over the days of each span', () => {
    expect([...degreesPerDay(fiveSpans, 15)]).toEqual([2.5, 10, 16 / 3, 20, 1.5]);
  });
  test('scatter and likeness of neighbours, weighed by their days, by their definitions', () => {
    const { intercept, slope, variance } = found.line;
    const [a, b, c, d, e] = [2.5, 10, 16 / 3, 20, 1.5].map(
      (x, i) => Math.sqrt(fiveSpans.days[i]!) * (fiveSpans.perDayKWh[i]! - intercept - slope * x),
    ) as [number, number, number, number, number];
    const squares = a * a + b * b + c * c + d * d + e * e;
    expect(variance).toBeCloseTo(squares / 2, 9); // 5 spans, 3 parameters
    const meanUse = (2 * 9 + 33 + 3 * 20 + 62 + 2 * 6) / 9;
    expect(found.cvRmse).toBeCloseTo(Math.sqrt((squares / 9) * (5 / 2)) / meanUse, 9);
    expect(found.rho).toBeCloseTo((a * b + b * c + d * e) / squares, 9); // the third and the fourth are no neighbours
  });
});

test('the base found is that of the best line on the grid from 8 to 22 °C, the lowest of equals', () => {
  const tenths = fc.integer({ min: -50, max: 260 });
  const span = fc.record({
    temperatures: fc.array(tenths, { minLength: 1, maxLength: 3 }),
    use: fc.integer({ max: 90, min: 0 }),
  });
  fc.assert(
    fc.property(fc.array(span, { minLength: 5, maxLength: 14 }), fc.boolean(), (rows, byDay) => {
      const spans = rows.map(({ temperatures, use }) => ({
        use,
        t: (byDay ? temperatures.slice(0, 1) : temperatures).map((t) => t / 10),
      }));
      const start = [0];
      for (const { t } of spans) start.push(start.at(-1)! + t.length);
      const data: SignatureData = {
        first: Int32Array.from(start.slice(0, -1)),
        days: Float64Array.from(spans, ({ t }) => t.length),
        perDayKWh: Float64Array.from(spans, ({ use }) => use),
        outdoorC: Float64Array.from(spans.flatMap(({ t }) => t)),
        start: Uint32Array.from(start),
      };
      const grid = Array.from({ length: 141 }, (_, i) => (80 + i) / 10);
      const errors = grid.map(
        (baseC) => fitLine(degreesPerDay(data, baseC), data.perDayKWh, data.days, { notNegative: true }).squaredError,
      );
      const found = grid.indexOf(searchBase(data));
      const least = Math.min(...errors);
      expect(errors[found]!).toBeLessThanOrEqual(least + 1e-6);
      expect(Math.min(...errors.slice(0, found))).toBeGreaterThanOrEqual(least - 1e-6);
    }),
    { numRuns: 60 },
  );
  const flat = ofDays([0, 5, 10, 30], [4, 4, 4, 4]);
  expect(searchBase(flat)).toBe(8);
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

  const [x, y, w] = [
    [1, 2, 4, 7, 9],
    [3, 4, 9, 11, 20],
    [1, 2, 1, 3, 2],
  ] as const;
  test.each([
    ['two parameters unless told', {}, 3],
    ['three where told', { parameters: 3 }, 2],
    ['as many as points', { parameters: 5 }, 0],
  ])('weighted, %s: the normal equations by Cramer’s rule', (_name, options, freedom) => {
    const sum = (of: (i: number) => number) => x.reduce<number>((total, _, i) => total + w[i]! * of(i), 0);
    const [s1, sx, sy] = [sum(() => 1), sum((i) => x[i]!), sum((i) => y[i]!)];
    const [sxx, sxy] = [sum((i) => x[i]! ** 2), sum((i) => x[i]! * y[i]!)];
    const determinant = s1 * sxx - sx * sx;
    const intercept = (sxx * sy - sx * sxy) / determinant;
    const slope = (s1 * sxy - sx * sy) / determinant;
    const squaredError = sum((i) => (y[i]! - intercept - slope * x[i]!) ** 2);
    const variance = freedom > 0 ? squaredError / freedom : Number.POSITIVE_INFINITY;
    const expected = {
      intercept,
      slope,
      squaredError,
      variance,
      interceptError: Math.sqrt((variance * sxx) / determinant),
      slopeError: Math.sqrt((variance * s1) / determinant),
      covariance: (-variance * sx) / determinant,
      r2: 1 - squaredError / sum((i) => (y[i]! - sy / s1) ** 2),
      count: 5,
    };
    const found = fitLine(x, y, w, options);
    for (const [name, value] of Object.entries(expected)) expect(found[name as 'slope'], name).toBeCloseTo(value, 9);
  });
  test.each([
    ['falls', [0, 1, 2], [6, 5, 1], 0, 4],
    ['falls below nothing', [0, 1, 2], [-1, -2, -3], 0, 0],
    ['starts below nothing', [1, 2, 3], [0, 1, 5], 17 / 14, 0], // Σxy/Σx²
    ['is below nothing all along', [1, 2], [-5, -4], 0, 0],
    ['has no degrees and is below nothing', [0, 0], [-1, -3], 0, 0],
    ['rises from nothing', [1, 2], [1, 2], 1, 0],
    ['rises from above nothing', [1, 2], [3, 4], 1, 2],
  ])('that %s is kept from running backwards', (_name, x, y, slope, intercept) => {
    const line = fitLine(x, y, null, { notNegative: true });
    expect(line.slope).toBeCloseTo(slope, 12);
    expect(line.intercept).toBeCloseTo(intercept, 12);
  });
  test('through a flat record explains nothing of it', () => expect(fitLine([1, 2, 3], [4, 4, 4]).r2).toBe(0));

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
