import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fromBarAbsolute, toBarAbsolute } from '../../../src/model/cycle/pressure.ts';
import { pressureAt, temperatureAt } from '../../../src/model/cycle/saturation.ts';
import { RefrigerantName } from '../../../src/model/shapes/refrigerant.ts';
import { refrigerants } from '../../../src/reference/refrigerants.ts';

const names = fc.constantFrom(...RefrigerantName.options);
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

describe.each(RefrigerantName.options)('%s', (name) => {
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
      if (name === 'R410A' || name === 'R407C') return;
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
  for (const name of RefrigerantName.options) {
    for (const celsius of [-30.1, 70.1, Number.NaN]) expect(pressureAt(refrigerants[name], celsius, 'dew')).toBeNull();
    for (const bar of [0.5, 80, Number.NaN]) expect(temperatureAt(refrigerants[name], bar, 'bubble')).toBeNull();
  }
});
