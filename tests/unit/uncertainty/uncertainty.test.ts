import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { evenSpread, multiplierAt, NO_SPREAD, spreadOfRange } from '../../../src/model/chance/multiplier.ts';
import { normalQuantile, Z90 } from '../../../src/model/chance/normal-quantile.ts';
import { normalShare } from '../../../src/model/chance/normal-share.ts';
import { INPUTS, normalDraws } from '../../../src/model/chance/normals.ts';
import { quantileOfSorted, shareAboveZero, tenAndNinety, twentyOfSorted } from '../../../src/model/chance/quantiles.ts';
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
  test.each([
    [[1, 2, 3, 4], 0.5, 2.5],
    [[1, 2, 3, 4], 0, 1],
    [[1, 2, 3, 4], 1, 4],
    [[5], 0.9, 5],
  ])('%j at %f is %f', (sample, p, value) => {
    expect(quantileOfSorted(sample, p)).toBeCloseTo(value, 12);
  });

  test('10 and 90 % points without sorting equal those with sorting', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: -50, max: 50 }), { minLength: 1, maxLength: 200 }), (values) => {
        const sorted = Float64Array.from(values).sort();
        const { low, high } = tenAndNinety(Float64Array.from(values));
        expect(low).toBeCloseTo(quantileOfSorted(sorted, 0.1), 9);
        expect(high).toBeCloseTo(quantileOfSorted(sorted, 0.9), 9);
      }),
    );
  });

  test('twenty futures ascend, and their count above zero is near the chance', () => {
    const sorted = Float64Array.from({ length: 1000 }, (_, i) => i - 249.5);
    const twenty = twentyOfSorted(sorted);
    expect(twenty).toHaveLength(20);
    expect([...twenty].sort((a, b) => a - b)).toEqual(twenty);
    expect(twenty.filter((saving) => saving > 0)).toHaveLength(15);
    expect(shareAboveZero(sorted)).toBe(0.75);
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
    mean(a.map((value, i) => (value - mean(a)) * (b[i]! - mean(b))));
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

describe('drivers', () => {
  const normals = normalDraws(4096);
  test('of a sum are its parts by their variance', () => {
    const values = normals.spaceFactor.map((z, i) => 3 * z + normals.winter[i]!);
    const drivers = rankDrivers(values, normals);
    expect(drivers.map(({ input }) => input)).toEqual(['space-factor', 'winter']);
    expect(drivers[0]!.share).toBeCloseTo(0.9, 2);
    expect(drivers[1]!.share).toBeCloseTo(0.1, 2);
  });
  test('of what does not vary are none', () => {
    expect(rankDrivers(new Float64Array(4096).fill(5), normals)).toEqual([]);
  });
});
