import { describe, expect, test } from 'vitest';
import { evenSpread, NO_SPREAD } from '../../../src/model/chance/multiplier.ts';
import { Z90 } from '../../../src/model/chance/normal-quantile.ts';
import { drawFutures, type FuturesInput } from '../../../src/model/lifetime/draw-futures.ts';
import { settleInputs } from '../../../src/model/lifetime/lifetime-inputs.ts';
import { presentOutlays, pumpOutlays } from '../../../src/model/lifetime/outlays.ts';
import { findCrossings } from '../../../src/model/lifetime/pay-back.ts';
import { savingWithCost } from '../../../src/model/lifetime/running-cost.ts';
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
  ])('%s', (_, savings, steps, payback, fallsBehind) => {
    const found = findCrossings(savings, steps);
    if (payback === null) expect(found.payback).toBeNull();
    else expect(found.payback).toBeCloseTo(payback, 9);
    expect(found.fallsBehind).toEqual(fallsBehind);
  });
});

describe('what is paid for equipment, and what is left of it', () => {
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

// Of b = a + s with correlation r: σb² = σa² + σs² + 2 r σa σs (any text).
test.each([-1, -0.6, 0, 0.4, 1])('the saving moves with the cost by %f', (r) => {
  const range = (deviation: number) => ({ low: 1000 - Z90 * deviation, high: 1000 + Z90 * deviation });
  const [a, s] = [120, 70];
  expect(savingWithCost(range(a), range(Math.sqrt(a * a + s * s + 2 * r * a * s)), range(s))).toBeCloseTo(r, 9);
  expect(savingWithCost(range(0), range(s), range(s))).toBe(0);
  expect(savingWithCost(range(a), range(a), range(0))).toBe(0);
});

describe('futures', () => {
  const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
  const together = (a: readonly number[], b: readonly number[]) =>
    mean(a.map((v, i) => (v - mean(a)) * (b[i]! - mean(b))));
  const correlation = (a: readonly number[], b: readonly number[]) =>
    together(a, b) / Math.sqrt(together(a, a) * together(b, b));
  const input: FuturesInput = {
    pump: { electricityPence: 90_000, fuelPence: 0, fixedPence: 20_000, spread: evenSpread(0.1) },
    beside: { electricityPence: 4000, fuelPence: 110_000, fixedPence: 30_000, spread: NO_SPREAD },
    twenty: Array.from({ length: 20 }, (_, k) => 10_000 + 2000 * (k - 9.5)),
    savingWithCost: 0.6,
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
    expect(Math.sqrt(together(electricity, electricity))).toBeCloseTo(0.015, 4);
    expect(Math.sqrt(together(fuel, fuel))).toBeCloseTo(0.015, 4);
    expect(correlation(electricity, fuel)).toBeCloseTo(r, 1);
  });
  test.each([-0.5, 0, 0.6, 1])('the first year saves what the twenty say, with the pump’s own cost by %f', (follow) => {
    const futures = drawFutures({ ...input, savingWithCost: follow }, 4096);
    const pump = futures.map(({ pumpShare }) => 90_000 * pumpShare + 20_000);
    const saving = futures.map(({ besideShare }, i) => 114_000 * besideShare + 30_000 - pump[i]!);
    expect(mean(saving) / 10_000).toBeCloseTo(1, 2);
    // Twenty even steps of 2,000 p have a deviation of 2,000 √((20² − 1) / 12), a little less where they are read between.
    expect(Math.sqrt(together(saving, saving)) / (2000 * Math.sqrt(399 / 12))).toBeCloseTo(1, 1);
    expect(correlation(pump, saving)).toBeCloseTo(follow, 1);
  });
  test('no price falls by more than 30 % a year for good, and nothing is paid back for units', () => {
    const futures = drawFutures({ ...input, growthSpread: 0.5, twenty: new Array(20).fill(-500_000) }, 1024);
    expect(Math.min(...futures.map(({ growth }) => Math.min(growth.electricity, growth.fuel)))).toBe(-0.3);
    expect(futures.every(({ besideShare }) => besideShare === 0)).toBe(true);
    const noUnits = drawFutures({ ...input, beside: { ...input.beside, electricityPence: 0, fuelPence: 0 } }, 16);
    expect(noUnits.every(({ besideShare }) => besideShare === 1)).toBe(true);
  });
});
