import { describe, expect, test } from 'vitest';
import { electricityWith, type SweepDriver } from '../../../src/model/heat-pump/full/sweep.ts';
import { typed } from '../appraisal/make-household.ts';
import { fullHousehold, reckonFull, settleInput } from './make-year.ts';

const input = settleInput(fullHousehold());

describe('one thing changed, the rest as it is', () => {
  test.each<[SweepDriver, readonly number[], 'worse' | 'better']>([
    ['flow', [35, 40, 45, 50, 55, 60, 65], 'worse'],
    ['hot-water', [45, 48, 50, 52, 55, 60], 'worse'],
    ['array', [0.5, 0.75, 1, 1.25, 1.5, 2], 'better'],
  ])('%s: each step takes %s', (driver, values, direction) => {
    const kWh = values.map((value) => electricityWith(input, driver, value));
    for (let i = 1; i < kWh.length; i++) {
      if (direction === 'worse') expect(kWh[i]).toBeGreaterThan(kWh[i - 1]!);
      else expect(kWh[i]).toBeLessThan(kWh[i - 1]!);
    }
  });

  test.each<[SweepDriver, number, ReturnType<typeof reckonFull>]>([
    ['flow', 52, reckonFull({}, {}, { flowC: 52 })],
    ['hot-water', 60, reckonFull({}, { hotWater: { hotC: typed(60) } })],
    ['array', 0.5, reckonFull({ ground: { kind: 'vertical', size: typed(0.5) } })],
  ])('%s at %d is the year of a home so typed', (driver, value, { full }) =>
    expect(electricityWith(input, driver, value)).toBeCloseTo(full.electricityKWh, 9),
  );

  test.each<[SweepDriver, number]>([
    ['flow', 45],
    ['array', 1],
  ])('%s at the home’s own value gives the home’s own year', (driver, value) => {
    expect(electricityWith(input, driver, value)).toBeCloseTo(reckonFull().full.electricityKWh, 9);
  });

  test('floor heating takes less than radiators at the same design flow', () => {
    const { household } = input;
    const floor = {
      ...input,
      household: { ...household, machine: { ...household.machine, emitters: 'floor' as const } },
    };
    for (const flowC of [35, 45, 55]) {
      expect(electricityWith(floor, 'flow', flowC)).toBeLessThan(electricityWith(input, 'flow', flowC));
    }
  });
});
