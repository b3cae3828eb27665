/** Ground temperatures against the Kusuda-Achenbach formula worked by hand, and against British surveys. */
import { describe, expect, test } from 'vitest';
import {
  boreholeTemperature,
  dampingDepthM,
  type GroundYear,
  groundTemperature,
  lagDays,
  perDay,
  swingAtDepth,
} from '../../src/model/heat-pump/full/ground-temperature.ts';
import { groundOfRegion } from '../../src/model/heat-pump/full/settle-source.ts';
import { reference } from '../../src/reference/index.ts';

const GROUND: GroundYear = { meanC: 10.5, swingK: 8.5, coldestDay: 30, diffusivityM2PerDay: perDay(0.6e-6) };

describe('Kusuda and Achenbach 1965 (ASHRAE Transactions 71(1)), worked table: mean 10.5 °C, swing 8.5 K, day 30, 0.6e-6 m²/s', () => {
  test('damping depth 2.4542 m', () => expect(dampingDepthM(GROUND.diffusivityM2PerDay)).toBeCloseTo(2.4542, 4));
  test.each([
    [0, 8.5, 0, [2.282, 2.32, 8.153, 18.659, 12.776]],
    [0.5, 6.933, 11.84, [4.293, 3.585, 7.277, 16.625, 13.67]],
    [1, 5.655, 23.67, [6.052, 4.894, 6.912, 14.856, 14.05]],
    [1.2, 5.213, 28.4, [6.676, 5.406, 6.876, 14.231, 14.091]],
    [1.5, 4.613, 35.51, [7.523, 6.145, 6.913, 13.385, 14.062]],
    [2, 3.763, 47.34, [8.704, 7.272, 7.156, 12.21, 13.829]],
    [5, 1.108, 118.35, [11.235, 10.711, 9.686, 9.744, 11.32]],
    [10, 0.144, 236.71, [10.554, 10.614, 10.635, 10.45, 10.365]],
  ])('%d m', (depthM, swing, lag, onDays) => {
    expect(swingAtDepth(GROUND, depthM)).toBeCloseTo(swing, 3);
    expect(lagDays(GROUND, depthM)).toBeCloseTo(lag, 1);
    [15, 46, 105, 196, 288].forEach((day, i) => {
      // Printed to three decimals.
      expect(Math.abs(groundTemperature(GROUND, depthM, day) - onDays[i]!)).toBeLessThan(0.0011);
    });
  });
});

const region = (name: string) => groundOfRegion(reference.regions.find((one) => one.name === name)!, reference.ground);
/** Lapse of the mean with height, K/m, to bring a region's row to sea level; from memory. */
const LAPSE = 0.0065;
const heightOf = (name: string) => reference.regions.find((one) => one.name === name)!.heightM;

describe('British ground (Busby 2015, QJEGH 48, abstract; 106 stations; within 1 K of a country-wide rule)', () => {
  test.each([
    ['Southern England', 12.7],
    ['Highland', 8.8],
    ['Orkney', 8.8],
  ])('mean at 1 m of %s, sea level: %d °C', (name, meanC) =>
    expect(Math.abs(region(name).meanC + LAPSE * heightOf(name) - meanC)).toBeLessThan(1),
  );
  test.each([
    ['Southern England', 10.3],
    ['South East England', 10.3],
    ['Highland', 7.9],
    ['Orkney', 7.9],
  ])('peak to peak at 1 m of %s: %d K', (name, rangeK) =>
    expect(Math.abs(2 * swingAtDepth(region(name), 1) - rangeK)).toBeLessThan(1),
  );
  test.each([
    [100, 13],
    [200, 16],
  ])('at %i m about %i °C (Busby, Kingdon and Williams 2011, QJEGH 44)', (depthM, expectedC) => {
    // A borehole's mean to twice the depth is the ground's own temperature at it.
    const foundC = boreholeTemperature(region('UK average').meanC, reference.ground.gradientKPerM.value, 2 * depthM);
    expect(Math.abs(foundC - expectedC)).toBeLessThan(1);
  });
});
