import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { pennyParts } from '../../../src/model/bill-gap/bill-parts.ts';
import { shapley } from '../../../src/model/bill-gap/shapley.ts';

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);

/** A cost with every kind of joint effect: products of neighbours, a quotient and a sum. */
const cost = (v: readonly number[]) =>
  v.reduce((total, value, i) => total + value * (v[(i + 1) % v.length] ?? 1), 0) / (1 + Math.abs(v[0]!));

const sides = fc
  .integer({ min: 2, max: 8 })
  .chain((n) =>
    fc.tuple(
      fc.array(fc.double({ min: 0.1, max: 100, noNaN: true }), { minLength: n, maxLength: n }),
      fc.array(fc.double({ min: 0.1, max: 100, noNaN: true }), { minLength: n, maxLength: n }),
    ),
  );

/** The definition, order by order. */
function byEveryOrder(estimated: readonly number[], actual: readonly number[]): number[] {
  const parts = estimated.map(() => 0);
  let orders = 0;
  const walk = (values: readonly number[], left: readonly number[], gains: readonly number[]) => {
    if (left.length === 0) {
      orders++;
      gains.forEach((gain, k) => {
        parts[k]! += gain;
      });
      return;
    }
    for (const k of left) {
      const next = values.with(k, actual[k]!);
      walk(
        next,
        left.filter((other) => other !== k),
        gains.with(k, cost(next) - cost(values)),
      );
    }
  };
  walk(estimated, [...estimated.keys()], parts);
  return parts.map((part) => part / orders);
}

describe('the Shapley value', () => {
  test('parts sum to the difference', () => {
    fc.assert(
      fc.property(sides, ([estimated, actual]) => {
        const gap = cost(actual) - cost(estimated);
        const scale = Math.max(Math.abs(cost(actual)), Math.abs(cost(estimated)), 1);
        expect(Math.abs(sum(shapley(estimated, actual, cost)) - gap) / scale).toBeLessThan(1e-9);
      }),
    );
  });
  test('is the mean over every order', () => {
    fc.assert(
      fc.property(
        sides.filter(([p]) => p.length <= 5),
        ([estimated, actual]) => {
          const slow = byEveryOrder(estimated, actual);
          shapley(estimated, actual, cost).forEach((part, k) => {
            expect(part).toBeCloseTo(slow[k]!, 6);
          });
        },
      ),
      { numRuns: 40 },
    );
  });
  test('what did not change has no part; what the cost ignores has none either', () => {
    fc.assert(
      fc.property(sides, ([estimated, actual]) => {
        const same = actual.with(0, estimated[0]!);
        expect(shapley(estimated, same, cost)[0]).toBe(0);
        expect(shapley(estimated, actual, ([, ...rest]) => sum(rest))[0]).toBeCloseTo(0, 9);
      }),
    );
  });
  test('two that do the same get the same', () => {
    const [a, b, c] = shapley([2, 2, 5], [3, 3, 7], ([x, y, z]) => x! * y! * z!);
    expect(a).toBeCloseTo(b!, 12);
    expect(a! + b! + c!).toBeCloseTo(63 - 20, 12);
  });
  test('a sum splits into its own differences', () => {
    expect(shapley([1, 2, 3], [2, 5, 1], sum)).toEqual([1, 3, -2].map((v) => expect.closeTo(v, 12)));
  });
  test('no factor, unequal sides, thirteen factors', () => {
    expect(shapley([], [], () => 5)).toEqual([]);
    expect(() => shapley([1], [], sum)).toThrow(RangeError);
    expect(() => shapley(new Array(13).fill(1), new Array(13).fill(2), sum)).toThrow(/12 factors/);
  });
});

describe('parts in whole pence', () => {
  test.each([
    [[0.4, 0.4, 0.2], 1, [1, 0, 0]],
    [[10.5, -3.5], 7, [11, -4]],
    [[-0.3, -0.3, -0.4], -1, [0, 0, -1]],
    [[5, 5], 10, [5, 5]],
  ])('%j to %d', (parts, total, expected) => {
    expect(pennyParts(parts, total)).toEqual(expected);
  });
  test('sum exactly and move by less than a penny each', () => {
    const parts = fc.array(fc.double({ min: -1e6, max: 1e6, noNaN: true }), { minLength: 1, maxLength: 9 });
    fc.assert(
      fc.property(parts, (first) => {
        const whole = Math.round(sum(first)) + 0;
        const raw = [...first, whole - sum(first)];
        const pence = pennyParts(raw, whole);
        expect(sum(pence)).toBe(whole);
        pence.forEach((value, i) => {
          expect(Number.isInteger(value) && Object.is(value, -0) === false).toBe(true);
          expect(Math.abs(value - raw[i]!)).toBeLessThan(1 + 1e-6);
        });
      }),
    );
  });
  test('parts that do not belong to the total are refused', () => {
    expect(() => pennyParts([1, 1], 50)).toThrow(/miss 50/);
    expect(() => pennyParts([1], 1.5)).toThrow(/whole number/);
  });
});
