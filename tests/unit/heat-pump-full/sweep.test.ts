import { describe, expect, test } from 'vitest';
import {
  ARRAY_STEPS,
  FLOW_STEPS_C,
  HOT_WATER_STEPS_C,
  ROOM_STEPS_C,
  type SweepDriver,
  sweepDriver,
  sweepEmitters,
} from '../../../src/model/heat-pump/full/sweep.ts';
import { fullHousehold, reckonFull, settleInput } from './make-year.ts';

const input = settleInput(fullHousehold());

describe('one thing changed, the rest as it is', () => {
  test.each<[SweepDriver, readonly number[], 'worse' | 'better']>([
    ['flow', FLOW_STEPS_C, 'worse'],
    ['room', ROOM_STEPS_C, 'worse'],
    ['hot-water', HOT_WATER_STEPS_C, 'worse'],
    ['array', ARRAY_STEPS, 'better'],
  ])('%s: each step takes %s', (driver, values, direction) => {
    const points = sweepDriver(input, driver, values);
    expect(points.map(({ value }) => value)).toEqual(values);
    for (let i = 1; i < points.length; i++) {
      const [before, after] = [points[i - 1]!.electricityKWh, points[i]!.electricityKWh];
      if (direction === 'worse') expect(after).toBeGreaterThan(before);
      else expect(after).toBeLessThan(before);
    }
  });

  test('the step that is the home’s own gives the home’s own year', () => {
    const [own] = sweepDriver(input, 'flow', [45]);
    expect(own!.electricityKWh).toBeCloseTo(reckonFull().full.electricityKWh, 9);
    const [room] = sweepDriver(input, 'room', [input.demand.roomC]);
    expect(room!.electricityKWh).toBeCloseTo(own!.electricityKWh, 9);
    const [array] = sweepDriver(input, 'array', [1]);
    expect(array!.electricityKWh).toBeCloseTo(own!.electricityKWh, 9);
  });

  test('floor heating runs cooler than radiators at every design flow', () => {
    const { radiators, floor } = sweepEmitters(input);
    radiators.forEach((point, i) => {
      expect(floor[i]!.meanFlowC).toBeLessThan(point.meanFlowC);
      expect(floor[i]!.electricityKWh).toBeLessThan(point.electricityKWh);
    });
  });

  test('cost is every half-hour at its price', () => {
    const bucketOfSlot = new Uint8Array(input.year.slots.count);
    const prices = { names: ['all hours'], pencePerKWh: [26], bucketOfSlot };
    const [point] = sweepDriver({ ...input, prices }, 'flow', [45]);
    expect(point!.costPence).toBeCloseTo(point!.electricityKWh * 26, 6);
    expect(sweepDriver(input, 'flow', [45])[0]!.costPence).toBeNull();
  });
});
