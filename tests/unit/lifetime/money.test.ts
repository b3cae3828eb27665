import { describe, expect, test } from 'vitest';
import { evenSpread } from '../../../src/model/chance/multiplier.ts';
import { Z90 } from '../../../src/model/chance/normal-quantile.ts';
import { drawFutures, type FuturesInput } from '../../../src/model/lifetime/draw-futures.ts';
import { settleInputs } from '../../../src/model/lifetime/lifetime-inputs.ts';
import { presentOutlays, pumpOutlays } from '../../../src/model/lifetime/outlays.ts';
import { findCrossings } from '../../../src/model/lifetime/pay-back.ts';
import { costsTogether, runningCost } from '../../../src/model/lifetime/running-cost.ts';
import type { Appraisal, SystemResult } from '../../../src/model/shapes/appraisal.ts';
import type { Household } from '../../../src/model/shapes/household.ts';
import { reference } from '../../../src/reference/index.ts';
import { typed } from '../appraisal/make-household.ts';

describe('crossings, year by year', () => {
  const none = [0, 0, 0, 0];
  test.each([
    ['level savings: cost over saving', [250, 250, 250, 250, 250], [-1000, 0, 0, 0, 0, 0], 4, null],
    ['within a year', [400, 400, 400], [-1000, 0, 0, 0], 2.5, null],
    ['not in these years', [100, 100, 100], [-1000, 0, 0, 0], null, null],
    ['from the first day', [100, 100, 100], [500, 0, 0, 0], 0, null],
    ['cheaper to buy, dearer to run', [-200, -200, -200], [500, 0, 0, 0], null, 2.5],
    ['the other is bought at the end of year 2', [100, 100, 100], [-1000, 0, 900, 0], 2, null],
    ['ahead, bought again, ahead again', [600, 600, 600], [-1000, 0, -500, 0], 2 + 300 / 600, null],
    ['equal throughout', [0, 0, 0], none, 0, null],
    ['down to equal within a year and up again', [-250, -250, 100], [500, 0, 0, 0], 0, null],
    ['down to equal at the end of a year and up again', [-100, 100, 100], [500, -400, 0, 0], 0, null],
    ['behind for good once the machine is bought again', [100, 100, 100], [-50, 0, -500, 0], null, 2],
    ['behind twice: from the later one on', [-200, 300, -400], [100, 0, 0, 0], null, 2.5],
  ])('%s', (_, savings, steps, payback, fallsBehind) => {
    const found = findCrossings(savings, steps);
    if (payback === null) expect(found.payback).toBeNull();
    else expect(found.payback).toBeCloseTo(payback, 9);
    expect(found.fallsBehind).toEqual(fallsBehind);
  });
});

describe('what is reckoned with where nothing is typed, and where all is', () => {
  const valuesOf = (purchase: Household['purchase'], source: 'ground' | 'air') =>
    Object.entries(settleInputs(purchase, source)).map(([field, { value, line }]) => [
      field,
      value,
      line.value,
      line.grade,
    ]);
  // Common practice, no source: 20 years ahead, machines of 20 and 15 years; the Green Book's 3.5 %; prices level, give or take 2 %.
  test.each([
    ['ground', 20],
    ['air', 15],
  ] as const)('%s: the machine lasts %i years', (source, life) =>
    expect(valuesOf({}, source)).toEqual(
      [
        ['years', 20],
        ['discount', 0.035],
        ['electricityGrowth', 0],
        ['fuelGrowth', 0],
        ['growthSpread', 0.02],
        ['pumpLife', life],
        ['replacementLife', 15],
        ['presentYearsLeft', 0],
      ].map(([field, value]) => [field, value, value, 'assumed']),
    ),
  );
  test('as typed', () => {
    const asked = {
      years: 11,
      discountPerYear: 0.06,
      electricityGrowthPerYear: 0.03,
      fuelGrowthPerYear: -0.01,
      growthSpreadPerYear: 0.05,
      heatPumpLifeYears: 18,
      replacementLifeYears: 12,
      presentYearsLeft: 4,
    };
    const purchase = Object.fromEntries(Object.entries(asked).map(([field, value]) => [field, typed(value)]));
    expect(valuesOf(purchase, 'ground').map(([, ...rest]) => rest)).toEqual(
      Object.values(asked).map((value) => [value, value, 'estimated']),
    );
  });
});

describe('a year’s cost by what it follows', () => {
  const systemOf = (carrier: 'gas' | 'electricity', ownElectricityKWh = 0) =>
    ({
      carrier,
      ownElectricityKWh,
      split: { unitsPence: 100_000, standingPence: 12_000, servicePence: 8000 },
      cost: { low: 100_000, value: 120_000, high: 145_000 },
    }) as SystemResult;
  // Units lie between 80,000 and 125,000: ln 1.25 a slope either side at 1.2816 deviations.
  const slope = Math.log(1.25) / 1.281_551_566;
  test.each([
    ['all electric', systemOf('electricity', 120), 25, 100_000],
    ['gas and 120 kWh of its own at 25 p', systemOf('gas', 120), 25, 3000],
    ['gas alone', systemOf('gas'), 25, 0],
    ['its own electricity is no more than all of the units', systemOf('gas', 9000), 25, 100_000],
    ['electricity that is paid for taking it', systemOf('gas', 120), -5, 0],
  ])('%s', (_, system, electricityPencePerKWh, electricityPence) => {
    const found = runningCost(system, { electricityPencePerKWh } as Appraisal['prices']);
    expect([found.electricityPence, found.fuelPence, found.fixedPence]).toEqual([
      electricityPence,
      100_000 - electricityPence,
      20_000,
    ]);
    expect([found.spread.below, found.spread.above]).toEqual([expect.closeTo(slope, 6), expect.closeTo(slope, 6)]);
  });
});

describe('what is paid for equipment, and what is left of it', () => {
  test('nothing where no price was given', () => {
    const inputs = settleInputs({}, 'ground');
    const nothing = { byYear: new Array<number>(21).fill(0), leftPence: 0 };
    expect([pumpOutlays({}, inputs), presentOutlays({}, inputs)]).toEqual([nothing, nothing]);
  });
  test('a price without a grant; a grant beyond the price leaves nothing at the end', () => {
    const heatPumpGBP = typed(8000);
    const inputs = settleInputs({ years: typed(10) }, 'ground');
    expect(pumpOutlays({ heatPumpGBP }, inputs)).toEqual({
      byYear: [800_000, ...new Array(10).fill(0)],
      leftPence: 400_000,
    });
    const generous = pumpOutlays({ heatPumpGBP, grantGBP: typed(9000) }, inputs);
    expect([generous.byYear[0], generous.leftPence]).toEqual([-100_000, 0]);
  });
  const purchase = {
    heatPumpGBP: typed(12_000),
    grantGBP: typed(7500),
    heatPumpLifeYears: typed(20),
    replacementGBP: typed(3000),
    replacementLifeYears: typed(15),
  };
  // By hand: price × (1 − years in use / life) is left; the grant is paid once; what falls on the last day is not bought.
  test.each([
    [15, {}, { 0: 4500 }, 4500 / 4],
    [20, {}, { 0: 4500 }, 0],
    [21, {}, { 0: 4500, 20: 12_000 }, 12_000 * (19 / 20)],
    [30, { renewalGBP: typed(8000) }, { 0: 4500, 20: 8000 }, 4000],
  ])('the heat pump over %i years', (years, more, paid, left) => {
    const all = { ...purchase, ...more, years: typed(years) };
    const outlays = pumpOutlays(all, settleInputs(all, 'ground'));
    expect(outlays.byYear).toEqual(
      Array.from({ length: years + 1 }, (_, y) => 100 * ((paid as Record<number, number>)[y] ?? 0)),
    );
    expect(outlays.leftPence).toBeCloseTo(100 * left, 6);
  });
  test.each([
    [3, 20, { 3: 3000, 18: 3000 }, 3000 * (13 / 15)],
    [0, 15, { 0: 3000 }, 0],
    [0, 16, { 0: 3000, 15: 3000 }, 3000 * (14 / 15)],
    [19, 20, { 19: 3000 }, 3000 * (14 / 15)],
    [20, 20, {}, 0],
  ])('what would replace a boiler with %i years left, over %i', (presentYearsLeft, years, paid, left) => {
    const all = { ...purchase, presentYearsLeft: typed(presentYearsLeft), years: typed(years) };
    const outlays = presentOutlays(all, settleInputs(all, 'ground'));
    expect(outlays.byYear).toEqual(
      Array.from({ length: years + 1 }, (_, y) => 100 * ((paid as Record<number, number>)[y] ?? 0)),
    );
    expect(outlays.leftPence).toBeCloseTo(100 * left, 6);
  });
});

// Of s = b − a with correlation r of a and b: σs² = σa² + σb² − 2 r σa σb (any text).
test.each([-1, -0.6, 0, 0.4, 1])('two yearly costs that move together by %f', (r) => {
  const range = (deviation: number) => ({ low: 1000 - Z90 * deviation, high: 1000 + Z90 * deviation });
  const [a, b] = [0.5, 0.7];
  expect(costsTogether(range(a), range(b), range(Math.sqrt(a * a + b * b - 2 * r * a * b)))).toBeCloseTo(r, 9);
  expect(costsTogether(range(0), range(b), range(b))).toBe(0);
  expect(costsTogether(range(a), range(0), range(a))).toBe(0);
  // Ranges that no correlation gives are taken for the nearest.
  expect([costsTogether(range(a), range(b), range(0)), costsTogether(range(a), range(b), range(2))]).toEqual([1, -1]);
});

describe('futures', () => {
  const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
  const covariance = (a: readonly number[], b: readonly number[]) => {
    const [ofA, ofB] = [mean(a), mean(b)];
    return mean(a.map((v, i) => (v - ofA) * (b[i]! - ofB)));
  };
  const correlation = (a: readonly number[], b: readonly number[]) =>
    covariance(a, b) / Math.sqrt(covariance(a, a) * covariance(b, b));
  const input: FuturesInput = {
    pump: { electricityPence: 90_000, fuelPence: 0, fixedPence: 20_000, spread: evenSpread(0.1) },
    beside: { electricityPence: 4000, fuelPence: 110_000, fixedPence: 30_000, spread: evenSpread(0.15) },
    together: 0.6,
    electricityGrowth: 0.01,
    fuelGrowth: 0.02,
    growthSpread: 0.015,
    carrier: 'gas',
    spread: reference.spread,
  };
  test.each([
    ['gas', reference.spread.priceCorrelation.value],
    ['oil', 0],
  ] as const)('growth of %s: about the one taken, its whole spread, with electricity by %f', (carrier, r) => {
    const growth = drawFutures({ ...input, carrier }, 4096).map((one) => one.growth);
    const [electricity, fuel] = [growth.map((one) => one.electricity), growth.map((one) => one.fuel)];
    expect(mean(electricity)).toBeCloseTo(0.01, 4);
    expect(mean(fuel)).toBeCloseTo(0.02, 4);
    expect(Math.sqrt(covariance(electricity, electricity))).toBeCloseTo(0.015, 4);
    expect(Math.sqrt(covariance(fuel, fuel))).toBeCloseTo(0.015, 4);
    expect(correlation(electricity, fuel)).toBeCloseTo(r, 1);
  });
  test.each([-0.5, 0, 0.6, 1])('the first years keep their own spreads and move together by %f', (r) => {
    const futures = drawFutures({ ...input, together: r }, 4096);
    const [pump, beside] = [
      futures.map(({ pumpShare }) => Math.log(pumpShare)),
      futures.map(({ besideShare }) => Math.log(besideShare)),
    ];
    expect([mean(pump), mean(beside)].map((one) => Math.abs(one) < 0.001)).toEqual([true, true]);
    expect(Math.sqrt(covariance(pump, pump))).toBeCloseTo(0.1, 3);
    expect(Math.sqrt(covariance(beside, beside))).toBeCloseTo(0.15, 3);
    expect(correlation(pump, beside)).toBeCloseTo(r, 1);
  });
  test('no price falls by more than 30 % a year for good', () => {
    const growth = drawFutures({ ...input, growthSpread: 0.5 }, 1024).map((one) => one.growth);
    expect(Math.min(...growth.map(({ electricity, fuel }) => Math.min(electricity, fuel)))).toBe(-0.3);
  });
});
