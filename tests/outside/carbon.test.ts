/** Carbon against the government's conversion factors. */
import { describe, expect, test } from 'vitest';
import { reference } from '../../src/reference/index.ts';
import { makeHousehold, typed } from '../unit/appraisal/make-household.ts';
import { compareBy, makeDemand } from '../unit/comparison/make-demand.ts';

describe('kg CO2e per kWh', () => {
  test.each([
    ['electricity', 0.13096 + 0.01853], // UK Government GHG conversion factors (DESNZ) 2026 generation, 2025 transmission and distribution
    ['gas', 0.18231], // UK Government GHG conversion factors (DESNZ) 2026, natural gas, gross
    ['oil', 0.24677], // UK Government GHG conversion factors (DESNZ) 2025, burning oil, gross
    ['lpg', 0.2141], // UK Government GHG conversion factors (DESNZ) 2025, propane, gross
  ] as const)('%s', (carrier, factor) => {
    expect(reference.carbonKgPerKWh[carrier].value).toBeCloseTo(factor, 5);
    expect(reference.carbonKgPerKWh[carrier].source).toMatch(/DESNZ\) 202[56]/);
  });
});

test('a litre of heating oil makes 2.54 kg (UK Government GHG conversion factors 2025: 2.54016)', () => {
  // 10.30 kWh is rounded from the same table, hence the tolerance of 0.005 kg.
  expect(reference.kWhPerUnit.oil.value * reference.carbonKgPerKWh.oil.value).toBeCloseTo(2.54016, 2);
});

test('a litre of propane makes 1.54 kg (UK Government GHG conversion factors 2025: 1.54358)', () => {
  expect(reference.kWhPerUnit.lpg.value * reference.carbonKgPerKWh.lpg.value).toBeCloseTo(1.54358, 2);
});

test('10,000 kWh of gas at 100 % and no hot water make 1,823 kg, with 160 kWh of pump and fan 1,847 kg', () => {
  // 10,000 × 0.18231 + 160 × 0.14949, the factors above.
  const { systems } = compareBy(makeHousehold({ present: { efficiency: typed(1) } }), makeDemand(10_000, 0));
  expect(systems.find(({ id }) => id === 'present')!.carbonKg.value).toBeCloseTo(1823.1 + 23.92, 1);
});
