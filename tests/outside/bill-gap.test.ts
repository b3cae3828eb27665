import { describe, expect, test } from 'vitest';
import { shapley } from '../../src/model/bill-gap/shapley.ts';

/** Cost [pence] of 90 days of a heat pump: what the worked example splits. */
const cost = ([degreeDays, heatPerDegreeDay, hotWater, factor, backup, other, rate, standing]: readonly number[]) =>
  ((degreeDays! * heatPerDegreeDay! + hotWater!) / factor! + backup! + other!) * rate! + standing! * 90;

/** Factor, estimated, actual, part [pence]: worked example, computed apart from this project by the subset formula of Shapley (1953). */
const EXAMPLE: readonly [string, number, number, number][] = [
  ['degree days', 650, 720, 4250.8163],
  ['heat a degree day', 7.2, 7.6, 2250.726],
  ['hot water', 700, 760, 491.8255],
  ['seasonal factor', 3.4, 3, 5945.5797],
  ['backup heater', 0, 120, 3131.4],
  ['other electricity', 900, 980, 2087.6],
  ['unit price', 24.5, 27.69, 9004.7654],
  ['standing charge', 55, 57.2, 198],
];

describe('a difference of 273.61 pounds split among eight causes', () => {
  const estimated = EXAMPLE.map(([, value]) => value);
  const actual = EXAMPLE.map(([, , value]) => value);
  const parts = shapley(estimated, actual, cost);

  test('both ends', () => {
    expect(cost(estimated)).toBeCloseTo(65_767.6471, 4); // worked example, as above
    expect(cost(actual)).toBeCloseTo(93_128.36, 4); // worked example, as above
  });
  test.each(EXAMPLE.map(([name, , , part], k) => [name, part, k] as const))('%s has %d p', (_, part, k) => {
    expect(parts[k]).toBeCloseTo(part, 3);
    expect(Math.abs(parts[k]! - part)).toBeLessThan(0.000_06); // the example is printed to four decimals
  });
  test('the parts are the whole', () => {
    const sum = parts.reduce((total, part) => total + part, 0);
    expect(Math.abs(sum / 27_360.7129 - 1)).toBeLessThan(1e-8); // worked example, as above
    expect(Math.abs(sum - (cost(actual) - cost(estimated))) / sum).toBeLessThan(1e-9);
  });

  test('a heat pump of 8,000 miles of driving beside it: other electricity takes it all', () => {
    const driven = actual.with(5, 980 + 2400); // 8,000 miles × 0.3 kWh; mean use from memory
    const more = shapley(actual, driven, cost);
    expect(more[5]).toBeCloseTo(2400 * 27.69, 6);
    expect(more.filter((part) => part !== 0)).toHaveLength(1);
  });
});
