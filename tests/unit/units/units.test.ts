import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { heatOfDegreeDaysKWh } from '../../../src/model/demand/from-heat-loss.ts';
import { gasVolumeToKWh, gasVolumeToM3 } from '../../../src/model/units/gas-volume.ts';
import { roundToPenny, withoutVat, withVat } from '../../../src/model/units/money.ts';

const factors = { correction: 1.02264, calorificMJPerM3: 39.5, imperialM3PerHundredCubicFeet: 2.83 };

describe('energy', () => {
  test('gas energy grows in step with volume and calorific value', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 1e5, noNaN: true }),
        fc.double({ min: 0.5, max: 2, noNaN: true }),
        (m3, k) => {
          const once = gasVolumeToKWh(m3, 'm³', factors);
          const scaled = gasVolumeToKWh(m3 * k, 'm³', factors);
          const richer = gasVolumeToKWh(m3, 'm³', { ...factors, calorificMJPerM3: 39.5 * k });
          expect(scaled).toBeCloseTo(once * k, 5);
          expect(richer).toBeCloseTo(once * k, 5);
        },
      ),
    );
  });
  test('3 m³ at a correction of 1.02264 and 39.5 MJ/m³ are 3 × 1.02264 × 39.5 / 3.6 = 33.6619 kWh, 10 hundred cubic feet 317.544', () => {
    expect(gasVolumeToKWh(3, 'm³', factors)).toBeCloseTo(33.6619, 4);
    expect(gasVolumeToKWh(10, 'hundred ft³', factors)).toBeCloseTo(28.3 * 11.220633, 3);
  });
  test('250 W/K over 2,000 K·day are 250 × 2,000 × 24 h = 12,000 kWh', () =>
    expect(heatOfDegreeDaysKWh(250, 2000)).toBe(12_000));
  test('an imperial meter reads 2.83 m³ a unit', () =>
    expect(gasVolumeToM3(10, 'hundred ft³', factors)).toBeCloseTo(28.3));
  test('heat is in step with the heat loss coefficient', () =>
    expect(heatOfDegreeDaysKWh(500, 2000)).toBeCloseTo(2 * heatOfDegreeDaysKWh(250, 2000), 9));
});

describe('money', () => {
  test.each([
    [0.5, 1],
    [1.4999, 1],
    [2.5, 3],
    [-2.5, -3],
    [1.005 * 100, 101],
    [0.2, 0],
  ])('%d p rounds to %d p', (pence, whole) => expect(roundToPenny(pence)).toBe(whole));
  test('a small refund is nothing, never minus nothing', () => expect(Object.is(roundToPenny(-0.2), 0)).toBe(true));
  test('5 % off 105 is 100, onto 100 is 105', () =>
    expect([withoutVat(105, 0.05), withVat(100, 0.05)]).toEqual([100, 105]));
  test('VAT off and on again', () => expect(withVat(withoutVat(33.2, 0.05), 0.05)).toBeCloseTo(33.2, 12));
});
