import { describe, expect, test } from 'vitest';
import { meterDays } from '../../../src/model/findings/meter-days.ts';
import { findSteps } from '../../../src/model/findings/steps.ts';
import { findLineChange, findTwoLines } from '../../../src/model/findings/two-lines.ts';
import { noise, readingsOf } from './made-days.ts';

const stepsOf = (kW: readonly number[]) => {
  const days = meterDays(readingsOf(3, (day, hour) => (day === 1 ? (kW[hour * 2] ?? 0.5) : 0.5)))!;
  return findSteps(days).map(({ slot, slots, powerKW, kWh }) => [slot, slots, powerKW, kWh]);
};

describe('steps', () => {
  test.each([
    ['none', [], []],
    ['two hours of 3 kW', [0.5, 0.5, 3.5, 3.5, 3.5, 3.5], [[2, 4, 3, 6]]],
    ['cut by the clock at both ends', [0.5, 1.5, 3.5, 3.5, 2], [[1, 4, 3, 4.25]]], // (1 + 3 + 3 + 1.5) / 2
    ['too small', [0.5, 1, 1, 0.5], []],
    ['on top of another', [0.5, 1.7, 1.7, 1.7, 4.7, 4.7, 4.7, 1.7, 1.7], [[4, 3, 3, 4.5]]],
    ['two levels, of which the upper is a step', [0.5, 2.5, 2.5, 4.5, 4.5, 4.5, 2.5, 2.5], [[3, 3, 2, 3]]],
  ])('%s', (_, kW, expected) => {
    const steps = stepsOf(kW);
    expect(steps).toHaveLength(expected.length);
    steps.forEach((step, i) => {
      step.forEach((value, k) => {
        expect(value).toBeCloseTo(expected[i]![k]!, 9);
      });
    });
  });
});

describe('changes of level and line', () => {
  const x = Array.from({ length: 120 }, (_, i) => 6 + 5 * noise(i));
  test('two lines part on their day; the same line has nothing to part', () => {
    const lines = findLineChange(
      x,
      x.map((value, i) => (i < 50 ? 2 + value : 2 + 1.4 * value) + 0.1 * noise(i + 0.4)),
      20,
    )!;
    expect(lines.at).toBe(50);
    expect(lines.after.slope).toBeCloseTo(1.4, 1);
    expect(lines.change).toBeCloseTo(0.4 * 6, 0);
    expect(
      findTwoLines(
        x,
        x.map((value, i) => 2 + value + noise(i + 0.2)),
        20,
      )!.f,
    ).toBeLessThan(6);
  });
  test('too few days are no answer', () => {
    expect(findTwoLines([1, 2, 3], [1, 2, 3], 2)).toBeNull();
  });
  test('lines over days of other temperatures are not compared', () => {
    const apart = x.map((value, i) => (i < 60 ? value + 20 : value));
    expect(
      findLineChange(
        apart,
        apart.map((value) => value ** 1.3),
        20,
      ),
    ).toBeNull();
  });
});
