import { describe, expect, test } from 'vitest';
import { balanceOf, fanInCop } from '../../../src/model/heat-pump/full/balance.ts';

const uses = {
  space: 3000,
  water: 1000,
  'source-pump': 100,
  backup: 50,
  pasteurisation: 0,
  circulator: 80,
  standby: 60,
};
const factorsOf = (kind: 'ground' | 'air') => balanceOf(9000, 3000, uses, fanInCop(kind)).factors!;

test('balance of a year, by hand (SEPEMO-Build D4.2)', () => {
  const all = { ...uses, pasteurisation: 30 };
  const { resistanceHeatKWh, sourceHeatKWh, factors } = balanceOf(9000, 3000, all, 0);
  expect([resistanceHeatKWh, sourceHeatKWh]).toEqual([80, 8000]);
  expect(factors).toEqual({
    H1: expect.closeTo(12_000 / 4060, 12),
    H2: expect.closeTo(12_000 / 4160, 12),
    H3: expect.closeTo(12_080 / 4240, 12),
    H4: expect.closeTo(12_080 / 4320, 12),
  });
});

test.each<[string, number, Partial<typeof uses>, boolean, number?]>([
  ['half a unit of hot water', 0, { space: 0, water: 0.2, backup: 0, standby: 0 }, true, 0.5],
  ['nothing heated', 0, { space: 0, water: 0, backup: 0, standby: 60 }, false],
  ['resistance alone, and not even standby', 0, { space: 0, water: 0, backup: 50, standby: 0 }, false],
  ['resistance alone and standby', 0, { space: 0, water: 0, backup: 50, standby: 0.5 }, true],
  ['half a unit of heat', 0.5, { space: 0.2, water: 0, backup: 0, standby: 0 }, true],
])('%s', (_, spaceKWh, change, has, waterKWh = 0) =>
  expect(balanceOf(spaceKWh, waterKWh, { ...uses, ...change }, 0).factors !== null).toBe(has),
);

describe('where the fan of an air machine stands (SEPEMO-Build D4.2: outside H1, inside H2)', () => {
  // By hand: the fan takes 20 W per kW, so 0.02 × 12,000 = 240 of the 4,000 kWh that the tested COP holds.
  test('H1 is the compressor without it', () => expect(factorsOf('air').H1).toBeCloseTo(12_000 / (3760 + 60), 10));
  test('H2 to H4 are as they would be with the fan in the compressor’s line', () => {
    const { H1: _air, ...air } = factorsOf('air');
    const { H1: _ground, ...ground } = factorsOf('ground');
    for (const [boundary, factor] of Object.entries(air))
      expect(factor).toBeCloseTo(ground[boundary as keyof typeof ground], 10);
  });
  test('a ground machine’s pump is measured beside its COP', () => {
    expect(factorsOf('ground').H1).toBeCloseTo(12_000 / 4060, 10);
    expect(fanInCop('ground')).toBe(0);
  });
});
