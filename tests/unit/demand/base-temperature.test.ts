import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  findBaseTemperature,
  internalGainsW,
  meanRoomDropK,
  usefulShare,
} from '../../../src/model/demand/base-temperature.ts';
import { peopleOfFloorArea } from '../../../src/model/demand/occupancy.ts';
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
test('a typed one may be 0.8 K off', () => {
  expect(findBaseTemperature(household({ heat: { baseC: typed(14.2) } }), 21, 200)).toMatchObject({
    errorK: 0.8,
    grade: 'estimated',
  });
});
// With a = 2 the share is (1 + γ)/(1 + γ + γ²); a = 1 + τ/15 is 2 at τ = 15 h, so at 250/(3.6 × 15) W/m²K.
test.each([
  [0.5, 1.5 / 1.75],
  [0.999, 1.999 / (1 + 0.999 + 0.998001)],
  [1, 2 / 3],
  [1.001, 2.001 / (1 + 1.001 + 1.002001)],
  [2, 3 / 7],
])('gains of %d of what is lost are useful to %d', (ratio, share) =>
  expect(usefulShare(1000 * ratio, 1000, 250 / 54)).toBeCloseTo(share, 9),
);
test('a losing home takes no gains as useful', () => expect(usefulShare(500, -10, 2)).toBe(0));
test.each([
  ['an ordinary home', 200, 100, 3],
  ['one that gains more than it loses', 90, 100, 6],
  ['a small one, people unknown', 150, 60, undefined],
])('base temperature of %s, written out', (_name, wPerK, area, count) => {
  // People by SAP Table 1b, gains by SAP 10.2 Table 5 and Appendix L, sun 2.5 W/m², useful share by Table 9a.
  const above = area - 13.9;
  const people = count ?? 1 + 1.76 * (1 - Math.exp(-0.000349 * above * above)) + 0.0013 * above;
  const gains =
    60 * people + (35 + 7 * people) + 25 * people - 40 * people + 26.4 * Math.exp(0.4714 * Math.log(area * people));
  expect(internalGainsW(people, area)).toBeCloseTo(gains, 9);
  const dropK = (0.65 * wPerK) / area;
  const ratio = (gains + 2.5 * area) / (wPerK * (20 - dropK - 7));
  const a = 1 + 250 / (3.6 * (wPerK / area)) / 15;
  const useful = (1 - ratio ** a) / (1 - ratio ** (a + 1));
  const gainsK = ((gains + 2.5 * area) * useful) / wPerK;
  const of = household({ home: { floorAreaM2: typed(area), ...(count ? { people: typed(count) } : {}) } });
  const found = findBaseTemperature(of, 20, wPerK);
  expect(found.value).toBeCloseTo(Math.max(8, 20 - dropK - gainsK), 9);
  expect(found.errorK).toBeCloseTo(Math.sqrt(0.8 ** 2 + (0.5 * dropK) ** 2 + Math.min(3, 0.3 * gainsK) ** 2), 9);
});
test('without area or people it is that of 90 m²', () => {
  const named = household({ home: { floorAreaM2: typed(90), people: typed(peopleOfFloorArea(90)) } });
  expect(findBaseTemperature(household(), 20, 250).value).toBe(findBaseTemperature(named, 20, 250).value);
});
test('nobody lives in less than one person', () => expect(peopleOfFloorArea(10)).toBe(1));
