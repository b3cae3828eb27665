/** Brine and water against worked sums. */
import { expect, test } from 'vitest';
import {
  brineProperties,
  freezingPoint,
  heatOfFlowKW,
  massPercent,
  waterProperties,
} from '../../src/model/site-readings/brine.ts';
import { fluids } from '../../src/reference/brine.ts';

test.each([
  // Worked sums with properties of Melinder 2010 (IIR) at 0 °C: 0.50 l/s over 3.0 K.
  ['propylene', 25, 5.958],
  ['ethylene', 30, 5.734],
] as const)('0.5 l/s of %s %d %% over 3 K carries %d kW', (kind, percent, kW) => {
  const fluid = brineProperties(fluids, kind, percent, 0)!;
  expect(heatOfFlowKW(30, fluid, 3)).toBeCloseTo(kW, 2);
});

test.each([
  // Melinder 2010 (IIR), mass percent.
  ['ethylene', 25, -10.97],
  ['ethylene', 35, -18.84],
  ['propylene', 20, -7.17],
  ['propylene', 30, -12.79],
] as const)('%s %d %% freezes at %d °C', (kind, percent, celsius) => {
  expect(freezingPoint(fluids, kind, percent)).toBeCloseTo(celsius, 2);
});

test.each([
  // Protection to −10 °C by straight line in the same table.
  ['ethylene', 23.4],
  ['propylene', 25.4],
] as const)('%s: −10 °C needs about %d %% by mass', (kind, percent) => {
  expect(Math.abs(freezingPoint(fluids, kind, percent)! + 10)).toBeLessThan(0.05);
});

test('8 kW at 45 °C and 5 K is 23.19 l/min of water; IAPWS-95', () => {
  expect(heatOfFlowKW(23.19, waterProperties(fluids, 45)!, 5)).toBeCloseTo(8, 2);
});

test.each([
  // Handbook custom, from memory: propylene 24 % by volume is about 25 % by mass, ethylene 28 % about 30 %.
  ['propylene', 24, 25],
  ['ethylene', 28, 30],
] as const)('%s %d %% by volume is about %d %% by mass', (kind, volume, mass) => {
  expect(Math.abs(massPercent(fluids, kind, volume) - mass)).toBeLessThan(0.5);
});
