import fc from 'fast-check';
import { expect, test } from 'vitest';
import { findBaseTemperature, meanRoomDropK, usefulShare } from '../../../src/model/demand/base-temperature.ts';
import { household, typed } from './fixtures.ts';

test('base temperature of any home is a temperature below its rooms, with an error', () => {
  const home = fc.record({
    area: fc.double({ min: 10, max: 5000, noNaN: true }),
    people: fc.integer({ min: 1, max: 30 }),
    roomC: fc.double({ min: 10, max: 30, noNaN: true }),
    wPerK: fc.double({ min: 1e-4, max: 20_000, noNaN: true }),
  });
  fc.assert(
    fc.property(home, ({ area, people, roomC, wPerK }) => {
      const of = household({ home: { floorAreaM2: typed(area), people: typed(people) } });
      const found = findBaseTemperature(of, roomC, wPerK);
      expect(found.value).toBeGreaterThanOrEqual(8);
      expect(found.value).toBeLessThanOrEqual(Math.max(8, roomC));
      expect(found.errorK).toBeGreaterThan(0);
      expect(Number.isFinite(found.errorK)).toBe(true);
    }),
  );
});
test('more gains against losses are of less use, smoothly through as much as is lost', () => {
  const shares = [0.2, 0.6, 0.999999, 1, 1.000001, 1.6, 40].map((ratio) => usefulShare(1000 * ratio, 1000, 2));
  for (const [i, share] of shares.entries()) {
    expect(share).toBeGreaterThan(0);
    expect(share).toBeLessThanOrEqual(1);
    if (i > 0) expect(share).toBeLessThanOrEqual(shares[i - 1]! + 1e-9);
  }
  expect(usefulShare(1000, 0, 2)).toBe(0);
});
test.each([
  ['an ordinary home', 250, 90, 1.8],
  ['a well-insulated one', 80, 100, 0.5],
  ['a barn', 5000, 100, 4],
])('rooms not all warm all day: %s', (_name, wPerK, area, drop) =>
  expect(meanRoomDropK(wPerK, area)).toBeCloseTo(drop, 1),
);
test('a base temperature that was typed stands', () => {
  expect(findBaseTemperature(household({ heat: { baseC: typed(14.2) } }), 21, 200).value).toBe(14.2);
});
