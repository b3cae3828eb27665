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
