import { expect, test } from 'vitest';
import { heatOfDegreeDaysKWh } from '../../src/model/demand/from-heat-loss.ts';
import { gasVolumeToKWh, gasVolumeToM3 } from '../../src/model/units/gas-volume.ts';
import { roundToPenny, withoutVat, withVat } from '../../src/model/units/money.ts';
import { gasVolume, kWhPerUnit } from '../../src/reference/fuels.ts';

const factors = (calorificMJPerM3: number) => ({
  correction: gasVolume.correction.value,
  calorificMJPerM3,
  imperialM3PerHundredCubicFeet: gasVolume.imperialM3PerHundredCubicFeet.value,
});

test.each([
  [100, 'm³', 39.3, 102.264, 1116.382, 0.001, 'energy consultant guide'],
  [100, 'hundred ft³', 39.3, 289.407, 3159.361, 0.005, 'energy consultant guide; its steps are rounded'],
  [100, 'm³', 38.0, 102.264, 1079.45, 0.01, 'supplier help page'],
  [145, 'hundred ft³', 39.7, 419.64, 4627.7, 0.02, 'consumer guide, which prints 4627.69 after rounding'],
] as const)('%i %s at %d MJ/m³ is billed as published', (units, unit, cv, correctedM3, kWh, tolerance, source) => {
  expect(Math.abs(gasVolumeToKWh(units, unit, factors(cv)) - kWh), source).toBeLessThan(tolerance);
  expect(Math.abs(gasVolumeToM3(units, unit, factors(cv)) * factors(cv).correction - correctedM3)).toBeLessThan(0.001);
});

test('the exact cubic foot would bill 3161.24 kWh, so the constant of the bills is used', () => {
  const exact = { ...factors(39.3), imperialM3PerHundredCubicFeet: 2.8316847 };
  expect(gasVolumeToKWh(100, 'hundred ft³', exact)).toBeCloseTo(3161.24, 2); // worked from the exact foot
});

test.each([
  [250, 2463, 14_778.0], // HLC × DD × 24/1000; 2463 is the published UK standard degree-day year
  [250, 2193.55, 13_161.3], // SAP region 0 by Hitchin
])('%i W/K over %d degree days is %d kWh', (wPerK, degreeDays, kWh) => {
  expect(heatOfDegreeDaysKWh(wPerK, degreeDays)).toBeCloseTo(kWh, 1);
});

test('VAT of 5 % turns 31.62 p into the published 33.20 p (Energy Price Guarantee, April 2023)', () => {
  expect(roundToPenny(withVat(3162, 0.05))).toBe(3320);
});

test('a year of gas: 956.40 and 108.33 are £1,064.73, of which VAT £50.70 (VAT Notice 701/19: 5 %)', () => {
  const units = roundToPenny(12_000 * 7.97);
  const standing = roundToPenny(365 * 29.68);
  expect([units, standing, units + standing]).toEqual([95_640, 10_833, 106_473]);
  expect(roundToPenny(units + standing - withoutVat(units + standing, 0.05))).toBe(5070);
});

test('energy per litre follows from the published pairs (UK Government GHG conversion factors 2025)', () => {
  expect(kWhPerUnit.oil.value).toBeCloseTo(0.53078 / 0.05153, 2);
  expect(kWhPerUnit.lpg.value).toBeCloseTo(1.54358 / 0.2141, 2);
  // Carbon of a litre over carbon of a kWh, the other published pair of the same set.
  expect(kWhPerUnit.oil.value).toBeCloseTo(2.54016 / 0.24677, 1);
});
