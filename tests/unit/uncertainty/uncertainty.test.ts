import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  evenSpread,
  evenSpreadOf,
  multiplierAt,
  NO_SPREAD,
  spreadOfRange,
} from '../../../src/model/chance/multiplier.ts';
import { normalQuantile, Z90 } from '../../../src/model/chance/normal-quantile.ts';
import { normalShare } from '../../../src/model/chance/normal-share.ts';
import { INPUTS, isDeliveredPrice, normalDraws } from '../../../src/model/chance/normals.ts';
import {
  quantileOf,
  quantilesOf,
  shareAboveZero,
  TWENTY,
  tenAndNinety,
  valuesAt,
} from '../../../src/model/chance/quantiles.ts';
import { MOST_DIMENSIONS, sobolPoints } from '../../../src/model/chance/sobol.ts';
import { forDelivered } from '../../../src/model/comparison/prices-of.ts';
import { rankDrivers } from '../../../src/model/uncertainty/drivers.ts';
import { type SharedSpreads, simulateYears, type YearTerms } from '../../../src/model/uncertainty/simulate.ts';

describe('normal quantile', () => {
  // Published: tables of the standard normal distribution, for example Abramowitz and Stegun, Table 26.5.
  test.each([
    [0.5, 0],
    [0.9, 1.2815515655],
    [0.95, 1.644853627],
    [0.975, 1.9599639845],
    [0.99, 2.326347874],
    [0.999, 3.0902323062],
    [0.01, -2.326347874],
    [0.6, 0.2533471031],
    [0.7, 0.5244005127],
    [0.2, -0.8416212336],
    [0.03, -1.8807936082],
    [0.02, -2.0537489106],
    [0.98, 2.0537489106],
    [0.0001, -3.7190164855],
    [0.99999, 4.2648907939],
  ])('of %f is %f', (p, z) => {
    expect(normalQuantile(p)).toBeCloseTo(z, 7);
    expect(normalShare(z)).toBeCloseTo(p, 9);
  });

  test('the share below any value lies between 0 and 1, and rises', () => {
    expect([normalShare(-40), normalShare(40)]).toEqual([0, 1]);
    fc.assert(
      fc.property(fc.double({ min: -9, max: 9, noNaN: true }), (z) => {
        expect(normalShare(z) + normalShare(-z)).toBeCloseTo(1, 12);
        expect(normalShare(z + 0.01)).toBeGreaterThanOrEqual(normalShare(z));
      }),
    );
  });
  test('has the ends at infinity and is odd about one half', () => {
    expect(normalQuantile(0)).toBe(Number.NEGATIVE_INFINITY);
    expect(normalQuantile(1)).toBe(Number.POSITIVE_INFINITY);
    fc.assert(
      fc.property(fc.double({ min: 1e-6, max: 0.5, noNaN: true }), (p) => {
        expect(normalQuantile(p)).toBeCloseTo(-normalQuantile(1 - p), 6);
      }),
    );
  });
});

describe('Sobol points beside their definition', () => {
  // Degree of the polynomial is the number of first values. Source: S. Joe and F. Y. Kuo, new-joe-kuo-6.21201 (2008),
  // dimensions 2 to 14 and 16 to 21: coefficients a, first values m.
  const published: readonly (readonly [a: number, m: readonly number[]])[] = [
    [0, [1]],
    [1, [1, 3]],
    [1, [1, 3, 1]],
    [2, [1, 1, 1]],
    [1, [1, 1, 3, 3]],
    [4, [1, 3, 5, 13]],
    [2, [1, 1, 5, 5, 17]],
    [4, [1, 1, 5, 5, 5]],
    [7, [1, 1, 7, 11, 19]],
    [11, [1, 1, 5, 1, 1]],
    [13, [1, 1, 1, 3, 11]],
    [14, [1, 3, 5, 5, 31]],
    [1, [1, 3, 3, 9, 7, 49]],
    [16, [1, 3, 1, 13, 27, 49]],
    [19, [1, 1, 1, 15, 7, 5]],
    [22, [1, 3, 1, 15, 13, 25]],
    [25, [1, 1, 5, 5, 19, 61]],
    [1, [1, 3, 7, 11, 23, 15, 103]],
    [4, [1, 3, 7, 13, 13, 15, 69]],
  ];
  /** m[k] = 2 a1 m[k−1] ⊕ 4 a2 m[k−2] ⊕ … ⊕ 2^s m[k−s] ⊕ m[k−s]. */
  function firstValues(side: number, count: number): number[] {
    if (side === 0) return Array.from({ length: count }, () => 1);
    const [a, first] = published[side - 1]!;
    const m: number[] = first.slice(0, count);
    const s = first.length;
    for (let k = s; k < count; k++) {
      let next = m[k - s]! ^ (m[k - s]! << s);
      for (let j = 1; j < s; j++) if ((a >> (s - 1 - j)) & 1) next ^= m[k - j]! << j;
      m.push(next);
    }
    return m;
  }
  test('every side has the published direction numbers', () => {
    expect(MOST_DIMENSIONS).toBe(published.length + 1);
    const BITS = 11;
    for (const [side, points] of sobolPoints(2 ** BITS, MOST_DIMENSIONS, 5).entries()) {
      // The shift falls out between two points; in Gray code the points 2^k − 1 and 2^k part by direction number k.
      const whole = Array.from(points, (x) => x * 2 ** 32 - 0.5);
      const found = Array.from(
        { length: BITS },
        (_, k) => ((whole[2 ** k]! ^ whole[2 ** k - 1]!) >>> 0) / 2 ** (31 - k),
      );
      expect(found, `side ${side}`).toEqual(firstValues(side, BITS));
      for (let i = 1; i < 64; i++) {
        const gray = i ^ (i >> 1);
        let expected = 0;
        for (let k = 0; k < 6; k++) if ((gray >> k) & 1) expected ^= found[k]! * 2 ** (31 - k);
        expect((whole[i]! ^ whole[0]!) >>> 0).toBe(expected >>> 0);
      }
    }
  });
  test('shifts of sides and seeds are apart, and no point lies on an edge', () => {
    const firsts = [1, 2, 3].flatMap((seed) => sobolPoints(1, MOST_DIMENSIONS, seed).map((side) => side[0]!));
    expect(new Set(firsts).size).toBe(firsts.length);
    expect(Math.min(...firsts)).toBeGreaterThan(0);
    expect(Math.max(...firsts)).toBeLessThan(1);
    // As even as chance makes 60 of them.
    expect(Math.abs(firsts.reduce((sum, x) => sum + x, 0) / firsts.length - 0.5)).toBeLessThan(
      3 * Math.sqrt(1 / 12 / 60),
    );
  });
  test('one side at least', () => expect(() => sobolPoints(8, 0, 1)).toThrow(RangeError));
});

describe('Sobol points', () => {
  const points = sobolPoints(1024, MOST_DIMENSIONS, 7);
  test('fall one into each of 1,024 slices of every side', () => {
    for (const side of points) {
      const slices = new Set(Array.from(side, (x) => Math.floor(x * 1024)));
      expect(slices.size).toBe(1024);
    }
  });

  test('fill every pair of sides evenly: 16 points in each of 64 cells, give or take 8', () => {
    for (let a = 0; a < MOST_DIMENSIONS; a++) {
      for (let b = a + 1; b < MOST_DIMENSIONS; b++) {
        const cells = new Array<number>(64).fill(0);
        for (let i = 0; i < 1024; i++) cells[Math.floor(points[a]![i]! * 8) * 8 + Math.floor(points[b]![i]! * 8)]! += 1;
        expect(Math.min(...cells), `sides ${a} and ${b}`).toBeGreaterThanOrEqual(8);
        expect(Math.max(...cells), `sides ${a} and ${b}`).toBeLessThanOrEqual(24);
      }
    }
  });

  test('are the same for the same seed and others for another', () => {
    expect(sobolPoints(64, 3, 7)).toEqual(sobolPoints(64, 3, 7));
    expect(sobolPoints(64, 3, 8)).not.toEqual(sobolPoints(64, 3, 7));
  });

  test('refuse more sides than there are numbers for', () => {
    expect(() => sobolPoints(8, MOST_DIMENSIONS + 1, 1)).toThrow(RangeError);
  });
});

test('normal draws have mean 0, variance 1 and no correlation to speak of', () => {
  const draws = normalDraws(10_000);
  const mean = (values: ArrayLike<number>) => Array.from(values).reduce((sum, v) => sum + v, 0) / values.length;
  for (const one of INPUTS) {
    // 10,000 is no power of two, so the mean is off by a little; by chance it would be off by 0.01.
    expect(Math.abs(mean(draws[one]))).toBeLessThan(0.001);
    for (const other of INPUTS) {
      const product = mean(draws[one].map((z, i) => z * draws[other][i]!));
      expect(Math.abs(product - Number(one === other)), `${one} with ${other}`).toBeLessThan(0.01);
    }
  }
});

test('draws of one count are kept, the last four counts', () => {
  // Counts that no other test asks for: modules are shared, and one that is held already would be the first to go.
  const counts = [131, 137, 139, 149];
  const kept = counts.map(normalDraws);
  expect(counts.map(normalDraws)).toEqual(kept);
  for (const [i, count] of counts.entries()) expect(normalDraws(count)).toBe(kept[i]);
  normalDraws(151);
  expect(normalDraws(137)).toBe(kept[1]);
  expect(normalDraws(131)).not.toBe(kept[0]);
  expect([...normalDraws(131).winter]).toEqual([...kept[0]!.winter]);
  expect(INPUTS.filter(isDeliveredPrice)).toEqual(['oilPrice', 'lpgPrice', 'pelletsPrice']);
});

describe('spread of a range', () => {
  test('gives low, value and high back at the 10, 50 and 90 % points', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 1e5, noNaN: true }),
        fc.double({ min: 0.3, max: 1, noNaN: true }),
        fc.double({ min: 1, max: 3, noNaN: true }),
        (value, down, up) => {
          const spread = spreadOfRange({ value, low: value * down, high: value * up });
          expect(value * multiplierAt(spread, -Z90)).toBeCloseTo(value * down, 4);
          expect(multiplierAt(spread, 0)).toBe(1);
          expect(value * multiplierAt(spread, Z90)).toBeCloseTo(value * up, 4);
        },
      ),
    );
  });
  test('is even where one side will not do: half the width of its logarithm', () => {
    expect(evenSpreadOf({ low: 80, high: 125 })).toEqual(evenSpread(Math.log(125 / 80) / 2 / 1.2815515655446004));
    expect(evenSpread(0.3)).toEqual({ below: 0.3, above: 0.3 });
    for (const none of [
      { low: 0, high: 100 },
      { low: 100, high: 100 },
      { low: 100, high: 90 },
    ])
      expect(evenSpreadOf(none)).toEqual(NO_SPREAD);
    expect(evenSpreadOf({ low: 1, high: 1e9 })).toEqual(evenSpread(2));
  });
  test('that reaches below nothing, or does not hold its value', () => {
    // The whole of 100 − (−50) over 100, in standard deviations of 1.28155.
    expect(spreadOfRange({ value: 100, low: -50, high: 100 })).toEqual({
      below: expect.closeTo(1.5 / 1.2815515655, 9),
      above: 0,
    });
    expect(spreadOfRange({ value: 100, low: 120, high: 80 })).toEqual({ below: 0, above: 0 });
    expect(spreadOfRange({ value: 100, low: 1e-9, high: 1e9 })).toEqual({ below: 2, above: 2 });
  });
  test('of nothing is no spread', () => {
    expect(spreadOfRange({ value: 0, low: 0, high: 100 })).toEqual(NO_SPREAD);
  });
  test('of a range down to nothing stays finite', () => {
    const spread = spreadOfRange({ value: 100, low: 0, high: 1e9 });
    expect(multiplierAt(spread, 4)).toBeLessThan(Number.POSITIVE_INFINITY);
    expect(multiplierAt(spread, -4)).toBeGreaterThan(0);
  });
});

describe('points of a sample', () => {
  /** The plain way: interpolated between middles of equal slices of the sorted sample. */
  function quantileOfSorted(sorted: ArrayLike<number>, p: number): number {
    const place = Math.min(sorted.length - 1, Math.max(0, p * sorted.length - 0.5));
    const [below, above] = [sorted[Math.floor(place)]!, sorted[Math.ceil(place)]!];
    return below + (place % 1) * (above - below);
  }

  test.each([
    [[1, 2, 3, 4], 0.5, 2.5],
    [[1, 2, 3, 4], 0, 1],
    [[1, 2, 3, 4], 1, 4],
    [[5], 0.9, 5],
    [[10, 20, 30, 40], 0.3, 17],
    [[10, 20, 30, 40], 0.125, 10],
    [[10, 20, 30, 40], 0.1, 10],
    [[10, 20, 30, 40], 0.875, 40],
    [[10, 20, 30, 40], 0.85, 39],
    [[10, 20, 30, 40], 0.9, 40],
    [[7], 0.5, 7],
  ])('of middles of equal slices of %j the share %d lies below %d', (sorted, p, value) => {
    expect(quantileOf(Float64Array.from(sorted.toReversed()), p)).toBeCloseTo(value, 12);
  });

  test('any points of a sample of any size are those of the sorted sample, which stays as it was', () => {
    const sample = fc.record({
      count: fc.integer({ min: 1, max: 3000 }),
      seed: fc.integer(),
      kinds: fc.constantFrom(1, 3, 50, 1e9),
      // Evenly, nearly all in one place, or with one value far from all others.
      bend: fc.constantFrom(
        (value: number) => value - 25,
        (value: number) => value ** 9,
        (value: number) => (value === 0 ? 1e300 : value),
        (value: number) => (value % 7 === 0 ? Number.POSITIVE_INFINITY : value),
      ),
    });
    const shares = fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 1, maxLength: 12 });
    fc.assert(
      fc.property(sample, shares, ({ count, seed, kinds, bend }, asked) => {
        let state = seed;
        const values = Float64Array.from({ length: count }, () => {
          state = (Math.imul(state, 1_103_515_245) + 12_345) >>> 0;
          return bend((state >>> 3) % kinds);
        });
        const before = values.slice();
        const sorted = values.toSorted();
        const places = asked.map((p) => Math.floor(p * (count - 1)));
        expect(valuesAt(values, places)).toEqual(places.map((place) => sorted[place]));
        if (sorted[count - 1]! < Number.POSITIVE_INFINITY) {
          expect(quantilesOf(values, asked)).toEqual(asked.map((p) => quantileOfSorted(sorted, p)));
          const { low, high } = tenAndNinety(values);
          expect([low, high]).toEqual([quantileOfSorted(sorted, 0.1), quantileOfSorted(sorted, 0.9)]);
        }
        expect(values).toEqual(before);
      }),
      { numRuns: 60 },
    );
  });

  test('both neighbours of every point are found', () => {
    const random = normalDraws(1531).habits.map((z, i) => z * ((i * 7919) % 1531));
    const sorted = random.toSorted();
    for (let k = 1; k < 200; k++) expect(quantileOf(random, k / 200)).toBe(quantileOfSorted(sorted, k / 200));
  });

  test('twenty futures ascend, and their count above zero is near the chance', () => {
    const sample = Float64Array.from({ length: 1000 }, (_, i) => 749.5 - i);
    const twenty = quantilesOf(sample, TWENTY);
    expect(twenty).toHaveLength(20);
    expect(twenty[0]).toBeCloseTo(-225, 9);
    expect(twenty[19]).toBeCloseTo(725, 9);
    expect([...twenty].sort((a, b) => a - b)).toEqual(twenty);
    expect(twenty.filter((saving) => saving > 0)).toHaveLength(15);
    expect(shareAboveZero(sample)).toBe(0.75);
  });

  test.each([
    [[0, 0, 0], 0.5],
    [[-1, 0, 1], 0.5],
    [[-2, -1], 0],
    [[1, 2], 1],
  ])('share of %j above zero is %f', (sample, share) => {
    expect(shareAboveZero(sample)).toBe(share);
  });
});

const TERMS: YearTerms = {
  carrier: 'electricity',
  spaceKWh: 3000,
  waterKWh: 1000,
  backupKWh: 0,
  steadyKWh: 0,
  ownElectricityKWh: 0,
  electricWaterKWh: 0,
  spacePence: 90_000,
  waterPence: 30_000,
  backupPence: 0,
  steadyPence: 0,
  ownElectricityPence: 0,
  electricWaterPence: 0,
  fixedPence: 10_000,
  servicePence: 0,
  serviceSpread: 0,
  spaceSpread: evenSpread(0.1),
  waterSpread: evenSpread(0.1),
  moves: 'machine',
};
const CERTAIN: SharedSpreads = {
  spaceHeat: NO_SPREAD,
  waterHeat: NO_SPREAD,
  waterFollows: 0,
  heatRestsOn: null,
  winter: 0,
  habits: 0,
  electricityPrice: 0,
  gasPrice: 0,
  priceCorrelation: 0.9,
  deliveredPrice: forDelivered(() => 0),
  machineExtras: 0,
  boilerElectricity: 0,
  useful: { spaceKWh: 10_000, waterKWh: 3000 },
};

describe('possible years', () => {
  test('are all the one year where nothing is uncertain', () => {
    const sure = { ...TERMS, spaceSpread: NO_SPREAD, waterSpread: NO_SPREAD };
    const [years] = simulateYears([sure], CERTAIN, 256);
    for (const cost of years!.costPence) expect(cost).toBeCloseTo(130_000, 6);
    for (const pence of years!.pencePerKWhHeat) expect(pence).toBeCloseTo(120_000 / 13_000, 9);
  });

  test('move both sides together by what they share, so that two equal systems never differ', () => {
    const shared = { ...CERTAIN, spaceHeat: evenSpread(0.2), winter: 0.1, habits: 0.1, electricityPrice: 0.1 };
    const [a, b] = simulateYears([TERMS, { ...TERMS, fixedPence: 0 }], shared, 512);
    const gaps = a!.costPence.map((cost, i) => cost - b!.costPence[i]!);
    for (const gap of gaps) expect(gap).toBeCloseTo(10_000, 6);
  });

  test('leave the fuel of the record alone when only the present efficiency is unsure', () => {
    const boiler: YearTerms = { ...TERMS, carrier: 'gas', moves: 'efficiency', waterKWh: 0, waterPence: 0 };
    const shared: SharedSpreads = {
      ...CERTAIN,
      spaceHeat: evenSpread(0.1),
      heatRestsOn: { moves: 'efficiency', spread: evenSpread(0.1), weight: 1 },
    };
    const [present, pump] = simulateYears([boiler, { ...TERMS, spaceSpread: NO_SPREAD }], shared, 256);
    for (const kWh of present!.boughtKWh) expect(kWh).toBeCloseTo(3000, 6);
    const { low, high } = tenAndNinety(pump!.boughtKWh.slice());
    expect(high - low).toBeGreaterThan(500);
  });

  test('have the range of the one thing that is uncertain', () => {
    const sure = { ...TERMS, spaceSpread: NO_SPREAD, waterSpread: NO_SPREAD };
    const [years] = simulateYears([sure], { ...CERTAIN, electricityPrice: 0.1 }, 10_000);
    const { low, high } = tenAndNinety(years!.costPence);
    // 10 and 90 % points of a lognormal price: 120,000 × e^(∓1.2816 × 0.1) + 10,000.
    expect(low).toBeCloseTo(120_000 * Math.exp(-0.12815515655) + 10_000, -1.5);
    expect(high).toBeCloseTo(120_000 * Math.exp(0.12815515655) + 10_000, -1.5);
  });
});

describe('what moves together', () => {
  const logs = (values: Float64Array, fixed: number) => Array.from(values, (value) => Math.log(value - fixed));
  const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
  const covariance = (a: readonly number[], b: readonly number[]) =>
    mean(a.map((value, i) => value * b[i]!)) - mean(a) * mean(b);
  const deviation = (a: readonly number[]) => Math.sqrt(covariance(a, a));

  // A correlated draw r z + √(1 − r²) z′ has the spread of either at every r: anything else makes the range too narrow.
  test.each([0, 0.3, 0.6, 0.88, 1])('prices with spreads of 0.1 and 0.15, correlated by %f, keep them', (r) => {
    const sure = { ...TERMS, spaceSpread: NO_SPREAD, waterSpread: NO_SPREAD };
    const [electricity, gas] = simulateYears(
      [sure, { ...sure, carrier: 'gas' }],
      {
        ...CERTAIN,
        electricityPrice: 0.1,
        gasPrice: 0.15,
        priceCorrelation: r,
      },
      8192,
    ).map(({ costPence }) => logs(costPence, TERMS.fixedPence));
    expect(deviation(electricity!)).toBeCloseTo(0.1, 3);
    expect(deviation(gas!)).toBeCloseTo(0.15, 3);
    expect(covariance(electricity!, gas!) / (0.1 * 0.15)).toBeCloseTo(r, 1);
  });

  test.each([0, 0.6, 1])(
    'heat for rooms and hot water with spreads of 0.1 and 0.2, correlated by %f, keep them',
    (r) => {
      const sure = { ...TERMS, fixedPence: 0, spaceSpread: NO_SPREAD, waterSpread: NO_SPREAD };
      const [rooms, water] = simulateYears(
        [
          { ...sure, waterPence: 0 },
          { ...sure, spacePence: 0 },
        ],
        { ...CERTAIN, spaceHeat: evenSpread(0.1), waterHeat: evenSpread(0.2), waterFollows: r },
        8192,
      ).map(({ costPence }) => logs(costPence, 0));
      expect(deviation(rooms!)).toBeCloseTo(0.1, 3);
      expect(deviation(water!)).toBeCloseTo(0.2, 3);
      expect(covariance(rooms!, water!) / (0.1 * 0.2)).toBeCloseTo(r, 2);
    },
  );

  test('the factors of one machine for rooms and for hot water: each its whole spread, 0.7 of it together; a boiler’s are one', () => {
    const only = (change: Partial<YearTerms>) => ({ ...TERMS, fixedPence: 0, ...change });
    const spreads = { spaceSpread: evenSpread(0.1), waterSpread: evenSpread(0.2) };
    for (const [moves, together] of [
      ['machine', 0.7],
      ['efficiency', 1],
    ] as const) {
      const [rooms, water] = simulateYears(
        [only({ ...spreads, moves, waterPence: 0 }), only({ ...spreads, moves, spacePence: 0 })],
        CERTAIN,
        8192,
      ).map(({ costPence }) => logs(costPence, 0));
      expect(deviation(rooms!)).toBeCloseTo(0.1, 3);
      expect(deviation(water!)).toBeCloseTo(0.2, 3);
      expect(covariance(rooms!, water!) / (0.1 * 0.2)).toBeCloseTo(together, 2);
    }
  });

  test('the part of a spread that is drawn by itself is taken out of it by variance', () => {
    // 20 % in all of which 12 % come from the efficiency that the heat rests on: the two together are 20 % again.
    const shared: SharedSpreads = {
      ...CERTAIN,
      spaceHeat: evenSpread(0.2),
      heatRestsOn: { moves: 'efficiency', spread: evenSpread(0.12), weight: 1 },
    };
    const [rooms] = simulateYears([{ ...TERMS, spaceSpread: NO_SPREAD, waterPence: 0 }], shared, 8192);
    expect(deviation(logs(rooms!.costPence, TERMS.fixedPence))).toBeCloseTo(0.2, 3);
  });
});

describe('small amounts move too', () => {
  const sure = { ...TERMS, spaceSpread: NO_SPREAD, waterSpread: NO_SPREAD };
  const boiler: YearTerms = { ...sure, carrier: 'gas', moves: 'efficiency' };
  // 10 and 90 % points of 1 + 0.3 z and 1 + 0.25 z: half the range is 1.2816 × 0.3 × 20,000 p, or 1.2816 × 0.25 × 18,000 p.
  test.each([
    ['pumps and standby', { ...sure, steadyPence: 20_000 }, { machineExtras: 0.3 }, 7689],
    ['electricity of a boiler', { ...boiler, ownElectricityPence: 20_000 }, { boilerElectricity: 0.3 }, 7689],
    ['service of a machine', { ...sure, servicePence: 18_000, serviceSpread: 0.25 }, {}, 5767],
    ['service of a boiler', { ...boiler, servicePence: 18_000, serviceSpread: 0.25 }, {}, 5767],
    ['a service price agreed', { ...sure, servicePence: 18_000 }, {}, 0],
    ['a standing charge', { ...sure, fixedPence: 50_000 }, { machineExtras: 0.3, boilerElectricity: 0.3 }, 0],
  ] satisfies [string, YearTerms, Partial<SharedSpreads>, number][])('%s', (_, terms, spreads, half) => {
    const [years] = simulateYears([terms], { ...CERTAIN, ...spreads }, 8192);
    const { low, high } = tenAndNinety(years!.costPence);
    expect((high - low) / 2).toBeCloseTo(half, -1.5);
  });

  test('a machine and a boiler are serviced at their own prices', () => {
    const serviced = { servicePence: 10_000, serviceSpread: 0.25 };
    const [a, b] = simulateYears(
      [
        { ...sure, ...serviced },
        { ...boiler, ...serviced },
      ],
      CERTAIN,
      8192,
    );
    const { low, high } = tenAndNinety(b!.costPence.map((cost, i) => cost - a!.costPence[i]!));
    // Two independent spreads: √2 × 1.2816 × 0.25 × 10,000 p.
    expect((high - low) / 2 / 4531).toBeCloseTo(1, 2);
  });

  test('never below nothing', () => {
    const [years] = simulateYears([{ ...sure, steadyPence: 20_000 }], { ...CERTAIN, machineExtras: 1 }, 4096);
    expect(Math.min(...years!.costPence)).toBeCloseTo(130_000, 6);
  });
});

describe('every draw beside the year written out', () => {
  const terms: YearTerms = {
    carrier: 'oil',
    spaceKWh: 3000,
    waterKWh: 1000,
    backupKWh: 200,
    steadyKWh: 150,
    ownElectricityKWh: 120,
    electricWaterKWh: 400,
    spacePence: 90_000,
    waterPence: 31_000,
    backupPence: 6100,
    steadyPence: 4700,
    ownElectricityPence: 3300,
    electricWaterPence: 12_100,
    fixedPence: 10_000,
    servicePence: 9000,
    serviceSpread: 0.2,
    spaceSpread: { below: 0.1, above: 0.12 },
    waterSpread: { below: 0.15, above: 0.2 },
    moves: 'machine',
  };
  const shared: SharedSpreads = {
    spaceHeat: { below: 0.2, above: 0.25 },
    waterHeat: { below: 0.3, above: 0.22 },
    waterFollows: 0,
    heatRestsOn: { moves: 'efficiency', spread: { below: 0.05, above: 0.06 }, weight: 0.8 },
    winter: 0.1,
    habits: 0.04,
    electricityPrice: 0.11,
    gasPrice: 0.16,
    priceCorrelation: 0.6,
    deliveredPrice: { oil: 0.2, lpg: 0.17, pellets: 0.13 },
    machineExtras: 0.3,
    boilerElectricity: 0.25,
    useful: { spaceKWh: 10_000, waterKWh: 3000 },
  };
  const COUNT = 1100;
  const normals = normalDraws(COUNT);
  const times = ({ below, above }: { below: number; above: number }, z: number) =>
    Math.exp(z * (z < 0 ? below : above));
  test.each([
    ['machine', 'electricity', 'efficiency', 'spaceFactor'],
    ['machine', 'electricity', 'machine', 'spaceFactor'],
    ['other-machine', 'electricity', 'efficiency', 'otherFactor'],
    ['efficiency', 'gas', 'efficiency', 'efficiency'],
    ['efficiency', 'oil', null, 'efficiency'],
    ['other-efficiency', 'lpg', 'machine', 'otherEfficiency'],
    ['other-efficiency', 'pellets', 'efficiency', 'otherEfficiency'],
  ] as const)('%s on %s, the heat resting on %s', (moves, carrier, rests, draw) => {
    const heatRestsOn = rests && { ...shared.heatRestsOn!, moves: rests };
    const [years] = simulateYears([{ ...terms, moves, carrier }], { ...shared, heatRestsOn }, COUNT);
    expect(years!.onlyYearsPence).toHaveLength(1024);
    const boiler = moves.endsWith('efficiency');
    const left = (whole: number, part: number) => (rests ? Math.sqrt(whole ** 2 - (0.8 * part) ** 2) : whole);
    const alone = { below: left(0.2, 0.05), above: left(0.25, 0.06) };
    for (let i = 0; i < COUNT; i += 7) {
      const z = Object.fromEntries(INPUTS.map((input) => [input, normals[input][i]!])) as Record<
        (typeof INPUTS)[number],
        number
      >;
      const ofRest = rests
        ? times(heatRestsOn!.spread, z[rests === 'machine' ? 'spaceFactor' : 'efficiency']) ** 0.8
        : 1;
      const [habits, winter] = [Math.exp(0.04 * z.habits), 1 + 0.1 * z.winter];
      const rooms = times(alone, z.spaceHeat) * ofRest * habits * winter;
      const water = times(shared.waterHeat, z.waterHeat) * habits;
      const electricity = Math.exp(0.11 * z.electricityPrice);
      const price = {
        electricity,
        gas: Math.exp(0.16 * (0.6 * z.electricityPrice + 0.8 * z.fuelPrice)),
        oil: Math.exp(0.2 * z.oilPrice),
        lpg: Math.exp(0.17 * z.lpgPrice),
        pellets: Math.exp(0.13 * z.pelletsPrice),
      }[carrier];
      const ofRooms = times(terms.spaceSpread, z[draw]);
      const ofWater = times(terms.waterSpread, boiler ? z[draw] : 0.7 * z[draw] + Math.sqrt(0.51) * z.waterFactor);
      const [extras, own] = [Math.max(0, 1 + 0.3 * z.machineExtras), 1 + 0.25 * z.boilerElectricity];
      const service = 1 + 0.2 * z[boiler ? 'otherService' : 'machineService'];
      const main = (space: number, hot: number, backup: number, steady: number) =>
        (space * rooms) / ofRooms +
        (hot * water) / ofWater +
        (backup * (10 * rooms + 3 * water)) / 13 +
        steady * extras;
      const units = main(90_000, 31_000, 6100, 4700) * price + (3300 * own + 12_100 * water) * electricity;
      expect(years!.costPence[i]).toBeCloseTo(units + 9000 * service + 10_000, 6);
      expect(years!.boughtKWh[i]).toBeCloseTo(main(3000, 1000, 200, 150) + 120 * own + 400 * water, 7);
      expect(years!.pencePerKWhHeat[i]).toBeCloseTo(units / (10_000 * rooms + 3000 * water), 9);
      if (i >= 1024) continue;
      // One home from year to year: winter, habits and prices alone. 10 parts in 13 of the backup’s £61 go with the rooms.
      const ofYear =
        ((90_000 + 61_000 / 13) * habits * winter + (31_000 + 18_300 / 13) * habits + 4700) * price +
        (3300 + 12_100 * habits) * electricity;
      expect(years!.onlyYearsPence[i]).toBeCloseTo(ofYear + 19_000, 6);
    }
  });
  test('a boiler’s two efficiencies of one spread are one; a home without heat has no price of it', () => {
    const boiler = { ...terms, moves: 'efficiency' as const, waterSpread: terms.spaceSpread };
    const [years] = simulateYears([boiler], { ...shared, useful: { spaceKWh: 0, waterKWh: 0 } }, 64);
    expect(new Set(years!.pencePerKWhHeat)).toEqual(new Set([0]));
    const only = {
      ...boiler,
      waterKWh: 1000,
      spaceKWh: 0,
      backupKWh: 0,
      steadyKWh: 0,
      ownElectricityKWh: 0,
      electricWaterKWh: 0,
    };
    const [water] = simulateYears([only], CERTAIN, 64);
    const z = normalDraws(64).efficiency;
    for (const [i, kWh] of water!.boughtKWh.entries())
      expect(kWh).toBeCloseTo(1000 / times(terms.spaceSpread, z[i]!), 9);
    const [lopsided] = simulateYears([{ ...only, waterSpread: { below: 0.1, above: 0.3 } }], CERTAIN, 64);
    for (const [i, kWh] of lopsided!.boughtKWh.entries())
      expect(kWh).toBeCloseTo(1000 / times({ below: 0.1, above: 0.3 }, z[i]!), 9);
  });
  test('a winter is never below nothing, a correlation never beyond one', () => {
    const [wild] = simulateYears(
      [{ ...TERMS, spaceSpread: NO_SPREAD, waterSpread: NO_SPREAD }],
      { ...CERTAIN, winter: 2 },
      256,
    );
    expect(Math.min(...wild!.costPence)).toBeCloseTo(40_000, 9);
    expect(Math.min(...wild!.onlyYearsPence)).toBeCloseTo(40_000, 9);
    for (const priceCorrelation of [1.5, -1.5]) {
      const gas = { ...TERMS, carrier: 'gas' as const, spaceSpread: NO_SPREAD, waterSpread: NO_SPREAD };
      const [years] = simulateYears([gas], { ...CERTAIN, gasPrice: 0.1, priceCorrelation }, 64);
      const z = normalDraws(64).electricityPrice;
      for (const [i, cost] of years!.costPence.entries())
        expect(cost).toBeCloseTo(120_000 * Math.exp(0.1 * Math.sign(priceCorrelation) * z[i]!) + 10_000, 6);
    }
  });
  test('no more is taken out of a spread than it holds', () => {
    const heatRestsOn = { moves: 'efficiency' as const, spread: evenSpread(0.3), weight: 1 };
    const [years] = simulateYears(
      [{ ...TERMS, spaceSpread: NO_SPREAD, waterKWh: 0 }],
      { ...CERTAIN, spaceHeat: evenSpread(0.2), heatRestsOn },
      64,
    );
    const z = normalDraws(64).efficiency;
    for (const [i, kWh] of years!.boughtKWh.entries()) expect(kWh).toBeCloseTo(3000 * Math.exp(0.3 * z[i]!), 7);
  });
});

describe('drivers', () => {
  const normals = normalDraws(4096);
  test('of a sum are its parts by their variance', () => {
    const values = normals.spaceFactor.map((z, i) => 3 * z + normals.winter[i]!);
    const drivers = rankDrivers(values, normals);
    expect(drivers.map(({ input }) => input)).toEqual(['space-factor', 'winter']);
    expect(drivers[0]!.share).toBeCloseTo(0.9, 2);
    expect(drivers[1]!.share).toBeCloseTo(0.1, 2);
  });
  test('go under one name where they are one unknown; a share below half a hundredth is chance', () => {
    const mix = (weights: Partial<Record<(typeof INPUTS)[number], number>>) =>
      normals.winter.map((_, i) =>
        Object.entries(weights).reduce((sum, [input, w]) => sum + w * normals[input as 'winter'][i]!, 500),
      );
    const of = (weights: Parameters<typeof mix>[0]) =>
      Object.fromEntries(rankDrivers(mix(weights), normals).map(({ input, share }) => [input, share]));
    // Squares of 1, 2, 3, 4 …: the shares of one name are added.
    const found = of({
      spaceFactor: 1,
      waterFactor: 2,
      otherFactor: 3,
      winter: 4,
      fuelPrice: 1,
      oilPrice: 2,
      lpgPrice: 3,
      pelletsPrice: 2,
    });
    const sum = 1 + 4 + 9 + 16 + 1 + 4 + 9 + 4;
    expect(found['space-factor']).toBeCloseTo(14 / sum, 2);
    expect(found['other-fuel-price']).toBeCloseTo(18 / sum, 2);
    expect(found.winter).toBeCloseTo(16 / sum, 2);
    expect(Object.values(found).reduce((total, share) => total + share, 0)).toBeCloseTo(1, 12);
    const rest = of({
      efficiency: 1,
      otherEfficiency: 1,
      machineExtras: 1,
      boilerElectricity: 2,
      machineService: 2,
      otherService: 2,
      habits: 1,
      spaceHeat: 2,
      waterHeat: 1,
      electricityPrice: 1,
    });
    const shares = {
      'other-efficiency': 2,
      'own-electricity': 5,
      service: 8,
      habits: 1,
      'space-heat': 4,
      'water-heat': 1,
      'electricity-price': 1,
    };
    for (const [name, share] of Object.entries(shares)) expect(rest[name], name).toBeCloseTo(share / 22, 2);
    expect(of({ winter: 1, habits: Math.sqrt(0.0065) })).toHaveProperty('habits');
    expect(of({ winter: 1, habits: Math.sqrt(0.004) })).toEqual({ winter: 1 });
    const ranked = (weights: Parameters<typeof mix>[0]) => rankDrivers(mix(weights), normals).map(({ input }) => input);
    expect(ranked({ winter: 3, habits: 2, spaceHeat: 1 })).toEqual(['winter', 'habits', 'space-heat']);
    expect(ranked({ winter: 3, habits: 1, spaceHeat: 2 })).toEqual(['winter', 'space-heat', 'habits']);
    // Squares of what varies: as good as none beside 1, or beside the square of the mean.
    const vary = (mean: number, by: number) =>
      rankDrivers(
        normals.winter.map((z) => mean + by * z),
        normals,
      ).length;
    const one = Math.sqrt(1e-9 / 4096);
    expect([vary(0, 1.1 * one), vary(0, 0.9 * one), vary(0.1, 1.1 * one)]).toEqual([1, 0, 1]);
    expect([vary(1000, 1100 * one), vary(1000, 900 * one)]).toEqual([1, 0]);
  });
  test('of what does not vary are none', () => {
    expect(rankDrivers(new Float64Array(4096).fill(5), normals)).toEqual([]);
  });
});
