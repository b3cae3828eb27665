import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cubicAt, findRising, neighbours } from '../../../src/model/cycle/interpolate.ts';
import { fromBarAbsolute, toBarAbsolute } from '../../../src/model/cycle/pressure.ts';
import { pressureAt, temperatureAt } from '../../../src/model/cycle/saturation.ts';
import { liquidEnthalpy } from '../../../src/model/cycle/states.ts';
import { REFRIGERANTS } from '../../../src/model/shapes/refrigerant.ts';
import { refrigerants } from '../../../src/reference/refrigerants.ts';

const names = fc.constantFrom(...REFRIGERANTS);
const sides = fc.constantFrom('dew' as const, 'bubble' as const);

test.each([
  // reading, bar absolute; 1 psi is 6.894757 kPa, one atmosphere 1.01325 bar
  [{ value: 0, unit: 'bar', basis: 'gauge' }, 1.01325],
  [{ value: 50, unit: 'psi', basis: 'gauge' }, 4.460629],
  [{ value: 250, unit: 'psi', basis: 'gauge' }, 18.250143],
  [{ value: 345, unit: 'kPa', basis: 'absolute' }, 3.45],
] as const)('%o is %d bar absolute', (reading, bar) => {
  expect(toBarAbsolute(reading)).toBeCloseTo(bar, 5);
  expect(fromBarAbsolute(bar, reading.unit, reading.basis)).toBeCloseTo(reading.value, 3);
});

describe.each(REFRIGERANTS)('%s', (name) => {
  const { rows } = refrigerants[name];
  test('every row is hit, both ways, on both sides', () => {
    for (const row of rows) {
      expect(pressureAt(refrigerants[name], row.temperatureC, 'dew')).toBeCloseTo(row.dewBar, 9);
      expect(temperatureAt(refrigerants[name], row.bubbleBar, 'bubble')).toBeCloseTo(row.temperatureC, 9);
    }
  });
  test('rows rise, dew never above bubble, a pure fluid has one pressure and h_g − h_f is its latent heat', () => {
    rows.forEach((row, index) => {
      expect(row.dewBar).toBeLessThanOrEqual(row.bubbleBar);
      if (index > 0) expect(row.dewBar).toBeGreaterThan(rows[index - 1]!.dewBar);
      if (['R410A', 'R407C', 'R454B'].includes(name)) return;
      expect(row.dewBar).toBe(row.bubbleBar);
      expect(Math.abs(row.vapourKJPerKg - row.liquidKJPerKg - row.latentKJPerKg)).toBeLessThan(0.02);
    });
  });
});

test('there and back again', () => {
  fc.assert(
    fc.property(names, sides, fc.double({ min: -30, max: 70, noNaN: true }), (name, side, celsius) => {
      const bar = pressureAt(refrigerants[name], celsius, side)!;
      expect(temperatureAt(refrigerants[name], bar, side)).toBeCloseTo(celsius, 6);
    }),
  );
});

test('outside the table there is no pressure, never a made-up one', () => {
  for (const name of REFRIGERANTS) {
    for (const celsius of [-30.1, 70.1, Number.NaN]) expect(pressureAt(refrigerants[name], celsius, 'dew')).toBeNull();
    for (const bar of [0.5, 80, Number.NaN]) expect(temperatureAt(refrigerants[name], bar, 'bubble')).toBeNull();
  }
});

test('between two rows ln p is a straight line over 1/T', () => {
  const { rows } = refrigerants.R407C;
  const [low, high] = [rows[6]!, rows[7]!];
  const inverse = (celsius: number) => 1 / (celsius + 273.15);
  for (const celsius of [low.temperatureC + 1, low.temperatureC + 3.3]) {
    const share =
      (inverse(celsius) - inverse(low.temperatureC)) / (inverse(high.temperatureC) - inverse(low.temperatureC));
    const bar = low.dewBar ** (1 - share) * high.dewBar ** share;
    expect(pressureAt(refrigerants.R407C, celsius, 'dew')! / bar).toBeCloseTo(1, 10);
    expect(temperatureAt(refrigerants.R407C, bar, 'dew')).toBeCloseTo(celsius, 8);
  }
});

describe('reading between rows', () => {
  const xs = [0, 1, 2, 3, 4, 5, 6, 7, 8, 9];
  test.each([
    [-1, 0],
    [0, 0],
    [0.5, 0],
    [2, 0],
    [2.1, 1],
    [5, 3],
    [5.5, 4],
    [8, 6],
    [9, 6],
    [11, 6],
  ])('the four about %d begin at %i', (x, first) => expect(neighbours(xs, x, 4)).toBe(first));
  // Through the four points a, b, c, d of x⁴ goes the cubic x⁴ − (x − a)(x − b)(x − c)(x − d).
  test.each([
    [1.5, 0],
    [5.5, 4],
    [8.9, 6],
    [4, 2],
  ])('x⁴ at %d by the cubic through four rows from %i', (x, first) => {
    const rest = [0, 1, 2, 3].reduce((product, i) => product * (x - first - i), 1);
    const fourth = xs.map((one) => one ** 4);
    expect(cubicAt(xs, fourth, x)).toBeCloseTo(x ** 4 - rest, 9);
  });
  test.each([
    [27, 3],
    [0, 0],
    [64, 4],
    [-1, null],
    [65, null],
  ])('x³ is %d at %s between 0 and 4', (target, x) => {
    const found = findRising((one) => one ** 3, target, 0, 4);
    if (x === null) expect(found).toBeNull();
    else expect(found).toBeCloseTo(x, 9);
  });
});

test('pressed liquid: h = h_f + (p − p_bubble)(1 − βT)/ρ, β = −(dρ/dT)/ρ', () => {
  const { rows } = refrigerants.R134a;
  const row = rows.find(({ temperatureC }) => temperatureC === 30)!;
  const density = (celsius: number) => {
    const [xs, ys] = [rows.map((one) => one.temperatureC), rows.map((one) => one.liquidKgPerM3)];
    return cubicAt(xs, ys, celsius);
  };
  const perK = (density(31) - density(29)) / 2;
  const bar = row.bubbleBar + 20;
  const pressed = (20 * 100 * (1 + (perK / row.liquidKgPerM3) * 303.15)) / row.liquidKgPerM3;
  expect(liquidEnthalpy(refrigerants.R134a, 30, bar)).toBeCloseTo(row.liquidKJPerKg + pressed, 9);
  // R134a at 30 °C: β about 0.003 a kelvin; from memory. So a tenth of what the pressure alone would add.
  expect(Math.abs(pressed)).toBeLessThan(0.4);
  expect(liquidEnthalpy(refrigerants.R134a, 71, bar)).toBeNull();
});
