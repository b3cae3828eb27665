import { describe, expect, test } from 'vitest';
import type { PriceQuarter } from '../../../src/model/shapes/reference.ts';
import { priceSpread } from '../../../src/model/tariff/price-spread.ts';
import { deliveredPrices, quarters } from '../../../src/reference/prices.ts';

const made = (fuel: PriceQuarter['fuel'], prices: readonly number[]): PriceQuarter[] =>
  prices.map((pencePerKWh, i) => ({
    fuel,
    from: `${2030 + i}-01-01`,
    to: `${2030 + i}-12-31`,
    pencePerKWh,
    standingPencePerDay: 0,
    source: 'invented',
    provenance: 'computed',
  }));

describe('the spread of next year’s price', () => {
  test('by hand: 20 then four at 22, 25: changes 0.10 and 25.75 % of the second', () => {
    // 20 → mean(22, 22, 22, 22) = +0.10; 22 → mean(22, 22, 22, 25) = 22.75 → +0.0340909…
    const electricity = made('electricity', [20, 22, 22, 22, 22, 25]);
    const gas = made('gas', [10, 9, 9, 9, 9, 9]); // −0.10 and 0
    const spread = priceSpread([...electricity, ...gas]);
    expect(spread.electricity).toBeCloseTo(Math.hypot(0.1, 0.75 / 22), 12);
    expect(spread.gas).toBeCloseTo(0.1, 12);
    expect(spread.correlation).toBeCloseTo(-0.1 / Math.hypot(0.1, 0.75 / 22), 12);
    expect(spread.count).toBe(2);
  });
  test('prices that never move have none', () => {
    const still = [...made('electricity', [20, 20, 20, 20, 20, 20]), ...made('gas', [5, 5, 5, 5, 5, 5])];
    expect(priceSpread(still)).toMatchObject({ electricity: 0, gas: 0 });
  });
  test('too few quarters are refused', () => {
    const both = (count: number, gas = count) => [
      ...made('electricity', [20, 21, 22, 23, 24, 25, 26].slice(0, count)),
      ...made('gas', [5, 6, 7, 8, 9, 8, 7].slice(0, gas)),
    ];
    for (const [count, gas] of [
      [0, 0],
      [3, 3],
      [5, 5],
      [6, 5],
      [7, 6],
    ])
      expect(() => priceSpread(both(count!, gas)), `${count} and ${gas}`).toThrow(/six quarters/);
    expect(priceSpread(both(6)).count).toBe(2);
  });
  test('quarters are sorted, and those before the day asked for are left out', () => {
    const rows = [...made('electricity', [90, 20, 22, 22, 22, 22, 25]), ...made('gas', [1, 10, 9, 9, 9, 9, 9])];
    const kept = [...made('electricity', [20, 22, 22, 22, 22, 25]), ...made('gas', [10, 9, 9, 9, 9, 9])];
    expect(priceSpread(rows.toReversed(), '2031-01-01')).toEqual(priceSpread(kept));
  });
  test('the built-in quarters: nine windows from October 2023', () => {
    const { electricity, gas, correlation, count } = priceSpread(quarters);
    expect(count).toBe(9);
    expect(electricity).toBeCloseTo(0.089, 3);
    expect(gas).toBeCloseTo(0.112, 3);
    expect(correlation).toBeCloseTo(0.877, 3);
  });
  test('the built-in spread of oil is the one its yearly means give', () => {
    const changes = [77 / 95 - 1, 66 / 77 - 1, 62 / 66 - 1];
    const stated = deliveredPrices.find(({ fuel }) => fuel === 'oil')!.spread;
    expect(stated).toBeCloseTo(Math.sqrt(changes.reduce((sum, change) => sum + change ** 2, 0) / 2), 2);
  });
});
