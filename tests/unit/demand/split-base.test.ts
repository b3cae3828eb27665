import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { reckonHotWater } from '../../../src/model/demand/hot-water.ts';
import { splitBase } from '../../../src/model/demand/split-base.ts';
import { reference } from '../../../src/reference/index.ts';
import { household, typed } from './fixtures.ts';

const MONTH_DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
const EFFICIENCY = { value: 0.75, error: 0.05, grade: 'estimated', origin: 'test' } as const;
const needOf = (people: number) =>
  reckonHotWater(household({ home: { people: typed(people) } }), MONTH_DAYS, reference);

function split(people: number, kWh: number, more: { cooksOnGas?: boolean; errorShare?: number; seen?: boolean } = {}) {
  const { cooksOnGas = false, errorShare = 0.1, seen = true } = more;
  const home = household({ home: { people: typed(people) }, present: { system: 'gas-condensing', cooksOnGas } });
  return splitBase({ kWh, errorKWh: errorShare * kWh, seen }, 'fuel', home, EFFICIENCY, needOf(people));
}
const PEOPLE = [1, 2, 3, 4, 5, 6];
const people = fc.constantFrom(...PEOPLE);
const base = fc.double({ min: 0, max: 40_000, noNaN: true });

describe('one base of 6,000 kWh of gas at 75 %, 1 to 6 people', () => {
  test.each(PEOPLE)('%d: within the spread of what so many need, the rest left over', (count) => {
    const need = needOf(count);
    const found = split(count, 6000);
    expect(Math.abs(found.waterKWh! - need.kWh)).toBeLessThan(1.5 * need.errorKWh);
    expect(found.waterKWh! + found.leftoverKWh).toBeCloseTo(4500, 6);
  });
  test('one person leaves far more over than six', () => {
    expect(split(1, 6000).leftoverKWh).toBeGreaterThan(4 * split(6, 6000).leftoverKWh);
  });
});

describe('at any base', () => {
  test('more people never take less', () => {
    fc.assert(
      fc.property(people, people, base, (one, other, kWh) => {
        const [few, many] = [Math.min(one, other), Math.max(one, other)];
        expect(split(many, kWh).waterKWh!).toBeGreaterThanOrEqual(split(few, kWh).waterKWh! - 1);
      }),
    );
  });
  test('never more than the base makes, nor than half as much again as the people need; the parts are no less than nothing', () => {
    fc.assert(
      fc.property(
        people,
        base,
        fc.boolean(),
        fc.double({ min: 0.01, max: 0.5, noNaN: true }),
        (count, kWh, cooksOnGas, errorShare) => {
          const found = split(count, kWh, { cooksOnGas, errorShare });
          expect(found.waterKWh!).toBeGreaterThanOrEqual(0);
          expect(found.waterKWh!).toBeLessThanOrEqual(0.75 * kWh + 1e-9);
          expect(found.waterKWh!).toBeLessThan(1.5 * needOf(count).kWh);
          expect(found.leftoverKWh).toBeGreaterThanOrEqual(0);
          expect(found.besideKWh).toBeLessThanOrEqual(kWh);
          expect(Number.isFinite(found.waterErrorKWh!)).toBe(true);
        },
      ),
    );
  });
  test('with the base known the hot water is surer than by the people alone, unless the base is far too large', () => {
    for (const count of PEOPLE) {
      const need = needOf(count);
      const usual = need.kWh / 0.75;
      for (const share of [0.5, 1, 1.3]) {
        expect(split(count, share * usual).waterErrorKWh!).toBeLessThan(need.errorKWh);
      }
    }
  });
  test('a base nobody is sure of leaves the people’s need; one known well is followed down', () => {
    const need = needOf(3);
    const enough = (need.kWh + 485) / 0.75;
    expect(Math.abs(split(3, enough, { errorShare: 1 }).waterKWh! / need.kWh - 1)).toBeLessThan(0.15);
    expect(split(3, 1500, { errorShare: 0.02 }).waterKWh!).toBeLessThan(1.01 * 0.75 * 1500);
    expect(split(3, 1500, { errorShare: 0.02 }).waterKWh!).toBeGreaterThan(0.85 * 0.75 * 1500);
  });
});

test('an error of so much heat weighs the same, whether of the use or of the efficiency', () => {
  const home = household({ home: { people: typed(3) }, present: { system: 'gas-condensing' } });
  const found = (baseError: number, efficiencyError: number) =>
    splitBase(
      { kWh: 3000, errorKWh: 3000 * baseError, seen: true },
      'fuel',
      home,
      { ...EFFICIENCY, error: efficiencyError },
      needOf(3),
    );
  const sure = found(0.01, 0);
  for (const share of [0.05, 0.1, 0.2]) {
    const [ofUse, ofEfficiency] = [found(share, 0), found(0, share)];
    expect(ofEfficiency.waterKWh!).toBeCloseTo(ofUse.waterKWh!, 6);
    expect(ofEfficiency.waterErrorKWh!).toBeCloseTo(ofUse.waterErrorKWh!, 6);
    expect(ofEfficiency.waterErrorKWh!).toBeGreaterThan(1.1 * sure.waterErrorKWh!);
    // 3, 4 and 5 on a right triangle: two independent errors add by squares.
    expect(found(0.6 * share, 0.8 * share).waterErrorKWh!).toBeCloseTo(ofUse.waterErrorKWh!, 6);
  }
});

test('a base that came from the method says nothing new: its error stays', () => {
  expect(split(3, 6000, { seen: false })).toMatchObject({
    waterKWh: needOf(3).kWh,
    waterErrorKWh: needOf(3).errorKWh,
  });
});
