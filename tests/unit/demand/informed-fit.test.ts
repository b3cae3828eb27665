import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { toDayNumber } from '../../../src/model/calendar/civil.ts';
import { estimateDemand } from '../../../src/model/demand/estimate-demand.ts';
import { type FitCircumstances, fitInformed } from '../../../src/model/demand/informed-fit.ts';
import { predictInformed } from '../../../src/model/demand/predict-informed.ts';
import { meanWave, yearWave } from '../../../src/model/demand/season.ts';
import { degreesPerDay, fitSignature } from '../../../src/model/demand/signature.ts';
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

const sum = (values: readonly number[]) => values.reduce((total, v) => total + v, 0);
type Matrix = readonly (readonly number[])[];
const without = (m: Matrix, row: number, column: number) =>
  m.filter((_, i) => i !== row).map((r) => r.filter((_, j) => j !== column));
const determinant = (m: Matrix): number =>
  m.length === 0 ? 1 : sum(m[0]!.map((v, j) => (-1) ** j * v * determinant(without(m, 0, j))));
const inverseOf = (m: Matrix) =>
  m.map((_, i) => m.map((_, j) => ((-1) ** (i + j) * determinant(without(m, j, i))) / determinant(m)));

/** One line of the fit by its definition: every observation a row, what is known beforehand two further rows. */
function lineSlowly(data: SignatureData, { known, weatherErrorK, typedBaseC }: FitCircumstances, baseC: number) {
  const plain = fitSignature(data);
  const n = data.days.length;
  const spans = Array.from({ length: n }, (_, i) => ({
    days: data.days[i]!,
    use: data.perDayKWh[i]!,
    first: data.first[i]!,
  }));
  const mean = sum(spans.map(({ days, use }) => days * use)) / sum(spans.map(({ days }) => days));
  const rho = Math.min(0.95, Math.max(0, plain.rho - 1 / Math.sqrt(n)));
  const times = n > 6 ? 1 : 2;
  const heated = degreesPerDay(data, 15);
  const ownX = degreesPerDay(data, plain.baseC);
  const raw = spans.map(
    (_, i) => 1 / ((0.1 * mean) ** 2 + (weatherErrorK * plain.line.slope) ** 2 * Math.min(1, heated[i]! / 3)),
  );
  const squares = (weights: readonly number[]) =>
    sum(weights.map((p, i) => p * (spans[i]!.use - plain.line.intercept - plain.line.slope * ownX[i]!) ** 2));
  const weights = weatherErrorK > 0 ? raw : spans.map(({ days }) => days);
  const least = weatherErrorK > 0 ? 0.25 : (0.005 * mean) ** 2;
  const variance = Math.max(least, (times * squares(weights)) / (n - 3));
  const x = degreesPerDay(data, baseC);
  const baseError = Math.max(known.errorPerDayKWh, 0.1 * mean);
  const swingError = known.swingError * Math.max(known.perDayKWh, 0.2 * baseError);
  const rows = [
    ...spans.map(({ days, first, use }, i) => {
      const waves = Array.from({ length: days }, (_, k) => yearWave(first + k));
      return { p: (weights[i]! / variance) * ((1 - rho) / (1 + rho)), of: [1, sum(waves) / days, x[i]!], use };
    }),
    { p: baseError ** -2, of: [1, 0, 0], use: known.perDayKWh },
    { p: swingError ** -2, of: [-known.swing, 1, 0], use: 0 },
  ];
  const solve = (kept: readonly number[]) => {
    const normal = kept.map((r) => kept.map((k) => sum(rows.map(({ p, of }) => p * of[r]! * of[k]!))));
    const right = kept.map((r) => sum(rows.map(({ p, of, use }) => p * of[r]! * use)));
    const inverse = inverseOf(normal);
    const found = inverse.map((row) => sum(row.map((v, k) => v * right[k]!)));
    const line = [0, 1, 2].map((r) => (kept.includes(r) ? found[kept.indexOf(r)]! : 0));
    const misfit = sum(rows.map(({ p, of, use }) => p * (use - sum(of.map((v, r) => v * line[r]!))) ** 2));
    return { kept, line, inverse, misfit, determinant: determinant(normal) };
  };
  const xx = sum(rows.map(({ p, of }) => p * of[2]! ** 2));
  const whole = xx > 0 ? solve([0, 1, 2]) : null;
  const [base, , slope] = whole?.line ?? [0, 0, -1];
  const best = base! < 0 ? solve([2]) : slope! < 0 ? solve([0, 1]) : whole!;
  const usual = typedBaseC === undefined ? (baseC - 15) / 1.8 : (baseC - typedBaseC) / 0.8;
  const log =
    -0.5 * (best.misfit + Math.log(best.determinant) + usual ** 2) + (best.kept.includes(2) ? 0.5 * Math.log(xx) : 0);
  const covariance = [0, 1, 2].map((r) =>
    [0, 1, 2].map((k) => {
      if (best.kept.includes(r) && best.kept.includes(k))
        return best.inverse[best.kept.indexOf(r)]![best.kept.indexOf(k)]!;
      return whole && r === 2 && k === 2 ? whole.inverse[2]![2]! : 0;
    }),
  );
  return { baseC, line: best.line, covariance, log, kept: best.kept.length };
}

describe('every base temperature beside its line reckoned from the rows themselves', () => {
  /** Spans of 28 days from 1 January; `use` by the mean outdoor temperature. */
  const spansOf = (
    temperatures: readonly number[],
    use: (c: number, i: number) => number,
    length = 28,
  ): SignatureData => ({
    first: Int32Array.from(temperatures, (_, i) => toDayNumber('2024-01-01') + i * length),
    days: Float64Array.from(temperatures, () => length),
    perDayKWh: Float64Array.from(temperatures, use),
    outdoorC: Float64Array.from(temperatures.flatMap((c) => Array.from({ length }, (_, k) => c + (k % 5) - 2))),
    start: Uint32Array.from({ length: temperatures.length + 1 }, (_, i) => i * length),
  });
  const year13 = [4, 4.5, 6, 9, 12, 15, 17, 18, 16, 13, 9, 6, 4.2];
  const wobble = (i: number) => [1.4, -0.8, 0.3, -1.1, 0.9][i % 5]!;
  const usualUse = (c: number, i: number) => 9 + 3 * Math.max(0, 15 - c) + 2 * wobble(i);
  const swing = { perDayKWh: 8, errorPerDayKWh: 4, methodErrorPerDayKWh: 3, swing: 0.2, swingError: 0.06 };
  test.each([
    ['thirteen spans with their own weather', spansOf(year13, usualUse), { known: swing, weatherErrorK: 0 }],
    [
      'neighbours much alike',
      spansOf(year13, (c, i) => usualUse(c, 0) + (i < 7 ? 4 : -4)),
      { known: swing, weatherErrorK: 0 },
    ],
    [
      'six spans, which do not know their scatter',
      spansOf(year13.slice(0, 6), usualUse),
      { known: swing, weatherErrorK: 0 },
    ],
    ['seven spans, which do', spansOf(year13.slice(0, 7), usualUse), { known: swing, weatherErrorK: 0 }],
    ['another year’s weather', spansOf(year13, usualUse), { known: swing, weatherErrorK: 1.3 }],
    ['the same of four spans', spansOf([4, 9, 13, 17], usualUse), { known: swing, weatherErrorK: 1.3 }],
    [
      'a line as good as exact in it',
      spansOf(year13, (c) => 9 + 0.1 * Math.max(0, 15 - c)),
      { known: swing, weatherErrorK: 1.3 },
    ],
    [
      'a line as good as exact',
      spansOf(year13, (c) => 9 + 3 * Math.max(0, 16 - c)),
      { known: swing, weatherErrorK: 0 },
    ],
    ['a base temperature typed', spansOf(year13, usualUse), { known: swing, weatherErrorK: 0, typedBaseC: 13.4 }],
    [
      'little known to be the base',
      spansOf(year13, usualUse),
      { known: { ...swing, perDayKWh: 0.2, errorPerDayKWh: 0.1 }, weatherErrorK: 0 },
    ],
    ['more use the warmer it is', spansOf(year13, (c, i) => 5 + c + wobble(i)), { known: swing, weatherErrorK: 0 }],
    [
      'nothing used on mild days',
      spansOf(year13, (c) => 4 * Math.max(0, 9 - c)),
      { known: { ...swing, perDayKWh: 0.01, errorPerDayKWh: 0 }, weatherErrorK: 0 },
    ],
    [
      'days all milder than the lowest base temperatures',
      spansOf(
        year13.map((c) => c + 9),
        (c) => 5 + 2 * Math.max(0, 19 - c),
      ),
      { known: swing, weatherErrorK: 0 },
    ],
  ] satisfies [string, SignatureData, FitCircumstances][])('%s', (_name, data, how) => {
    const fit = fitInformed(data, fitSignature(data), how);
    expect(fit.lines.map(({ baseC }) => baseC)).toEqual(Array.from({ length: 71 }, (_, i) => (80 + 2 * i) / 10));
    const slow = fit.lines.map(({ baseC }) => lineSlowly(data, how, baseC));
    const most = Math.max(...slow.map(({ log }) => log));
    const whole = sum(slow.map(({ log }) => Math.exp(log - most)));
    for (const [i, { line, covariance, weight }] of fit.lines.entries()) {
      const one = slow[i]!;
      const apart = [
        weight - Math.exp(one.log - most) / whole,
        ...line.map((v, r) => v - one.line[r]!),
        ...covariance.flatMap((row, r) => row.map((v, k) => v - one.covariance[r]![k]!)),
      ];
      expect(Math.max(...apart.map(Math.abs)), `at ${one.baseC} °C`).toBeLessThan(1e-6);
    }
    const middle = sum(fit.lines.map(({ baseC, weight }) => weight * baseC));
    expect(Math.abs(fit.baseC - middle)).toBeLessThanOrEqual(0.05 + 1e-9);
    expect(fit.baseC * 10).toBeCloseTo(Math.round(fit.baseC * 10), 9);
    const variance = sum(fit.lines.map(({ baseC, weight }) => weight * (baseC - middle) ** 2));
    expect(fit.baseErrorK).toBeCloseTo(Math.sqrt(variance), 9);
  });
});

test('two lines answer together: the mean of their means, and the mean of their variances plus the variance of their means', () => {
  const one = [
    [0.04, 0.01, -0.003],
    [0.01, 0.09, 0.002],
    [-0.003, 0.002, 0.0016],
  ];
  const other = one.map((row) => row.map((v) => 2 * v));
  const lines = [
    { baseC: 14, weight: 0.25, line: [6, 1, 4], covariance: one },
    { baseC: 16, weight: 0.75, line: [8, 2, 3], covariance: other },
  ] as const;
  const found = predictInformed(
    { lines, baseC: 15.5, baseErrorK: 0.9 },
    { days: 100, waveSum: 40, degreeDays: (baseC) => (baseC === 14 ? 500 : 700) },
  );
  // One: base 6 × 100 + 1 × 40 = 640, rooms 4 × 500 = 2,000. The other: 8 × 100 + 2 × 40 = 880 and 3 × 700 = 2,100.
  const [baseMean, roomMean] = [0.25 * 640 + 0.75 * 880, 0.25 * 2000 + 0.75 * 2100];
  expect(found.baseKWh).toBeCloseTo(baseMean, 9);
  expect(found.spaceKWh).toBeCloseTo(roomMean, 9);
  expect(found.totalKWh).toBeCloseTo(baseMean + roomMean, 9);
  const ofBase = 0.04 * 100 ** 2 + 0.09 * 40 ** 2 + 2 * 0.01 * 100 * 40;
  const across = (degreeDays: number) => 2 * degreeDays * (-0.003 * 100 + 0.002 * 40);
  const rooms = [0.0016 * 500 ** 2, 2 * 0.0016 * 700 ** 2] as const;
  const within = (a: number, b: number) => 0.25 * a + 0.75 * b;
  const among = (a: number, b: number) => 0.25 * 0.75 * (a - b) ** 2;
  expect(found.baseErrorKWh).toBeCloseTo(Math.sqrt(within(ofBase, 2 * ofBase) + among(640, 880)), 9);
  expect(found.spaceErrorKWh).toBeCloseTo(Math.sqrt(within(...rooms) + among(2000, 2100)), 9);
  const whole = within(ofBase + rooms[0] + across(500), 2 * ofBase + rooms[1] + 2 * across(700));
  expect(found.totalErrorKWh).toBeCloseTo(Math.sqrt(whole + among(2640, 2980)), 9);
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
    expect(solveSymmetric([[-2]], [1])).toBeNull();
  });
  test('the wave of the year is highest in January, lowest in July, and cancels over a year', () => {
    expect(yearWave(toDayNumber('2025-01-16'))).toBeCloseTo(1, 3);
    expect(yearWave(toDayNumber('2025-07-16'))).toBeCloseTo(-1, 2);
    expect(meanWave(toDayNumber('2025-01-01'), 365)).toBeCloseTo(0, 2);
    // 31 + 28 + 31 + 16 days before 17 April, of which 15 before the peak; 31 December 2024 ends a leap year.
    const wave = (days: number) => Math.cos((2 * Math.PI * days) / 365.25);
    expect(yearWave(toDayNumber('2025-04-17'))).toBeCloseTo(wave(91), 12);
    expect(yearWave(toDayNumber('2024-12-31'))).toBeCloseTo(wave(350), 12);
    expect(meanWave(toDayNumber('2025-04-17'), 3)).toBeCloseTo((wave(91) + wave(92) + wave(93)) / 3, 12);
  });
});
