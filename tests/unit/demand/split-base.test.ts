import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { reckonHotWater } from '../../../src/model/demand/hot-water.ts';
import { besideWater, knownBase } from '../../../src/model/demand/known-base.ts';
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

describe('hot water out of a base beside the sum written out', () => {
  /** ∫ e^(−o/m)/m φ((x − o)/e)/e do: density at x of an exponential quantity seen with a normal error, by small steps. */
  function density(x: number, error: number, mean: number): number {
    const steps = 400;
    const from = Math.max(0, x - 8 * error);
    const width = (Math.max(0, x) + 8 * error - from) / steps;
    let sum = 0;
    for (let i = 0; i < steps; i++) {
      const o = from + (i + 0.5) * width;
      sum += Math.exp(-o / mean - 0.5 * ((x - o) / error) ** 2);
    }
    return (sum * width) / (mean * error * Math.sqrt(2 * Math.PI));
  }
  /** Bayes’ rule on a fine row of possible amounts. */
  function slowly(need: { kWh: number; errorKWh: number }, rest: number, error: number) {
    const sigma = Math.sqrt(Math.log(1 + (need.errorKWh / need.kWh) ** 2));
    const top = Math.min(rest + 8 * error, need.kWh * Math.exp(8 * sigma));
    const rows = Array.from({ length: 600 }, (_, i) => {
      const w = ((i + 0.5) * top) / 600;
      const before = Math.exp(-0.5 * (Math.log(w / need.kWh) / sigma) ** 2) / w;
      const left = rest - w;
      return { w, p: before * (0.9 * density(left, error, 485) + 0.1 * density(left, error, 5000)) };
    });
    const whole = rows.reduce((sum, { p }) => sum + p, 0);
    const mean = rows.reduce((sum, { w, p }) => sum + w * p, 0) / whole;
    return { mean, error: Math.sqrt(rows.reduce((sum, { w, p }) => sum + p * (w - mean) ** 2, 0) / whole) };
  }
  test.each([
    ['a base like the need', 3, 4000, 0.1, 0.05, false],
    ['a large one', 2, 9000, 0.1, 0.05, false],
    ['a small one', 4, 2500, 0.2, 0.1, false],
    ['one smaller than the people’s need by far', 4, 1500, 0.2, 0.1, false],
    ['with cooking on gas', 3, 4000, 0.15, 0.05, true],
    ['known as good as exactly', 3, 3500, 0.001, 0.001, false],
  ])('%s', (_name, count, kWh, errorShare, ofEfficiency, cooksOnGas) => {
    const home = household({ home: { people: typed(count) }, present: { system: 'gas-condensing', cooksOnGas } });
    const base = { kWh, errorKWh: errorShare * kWh, seen: true };
    const found = splitBase(base, 'fuel', home, { ...EFFICIENCY, error: ofEfficiency }, needOf(count));
    const cooking = cooksOnGas ? 481 + 96 * count : 0;
    const error = 0.75 * Math.hypot(errorShare * kWh, ofEfficiency * kWh, 0.4 * cooking);
    const slow = slowly(needOf(count), 0.75 * (kWh - cooking), error);
    expect(found.waterKWh! / Math.min(slow.mean, 0.75 * kWh)).toBeCloseTo(1, 2);
    expect(found.waterErrorKWh! / slow.error).toBeCloseTo(1, 1.5);
    expect(found.besideKWh).toBeCloseTo(cooking, 9);
    expect(found.baseHeatKWh).toBeCloseTo(0.75 * (kWh - cooking), 9);
    expect(found.leftoverKWh).toBeCloseTo(Math.max(0, found.baseHeatKWh - found.waterKWh!), 9);
  });
  test('no more beside the water than the base holds, and no more water than its heat', () => {
    const found = split(3, 500, { cooksOnGas: true, errorShare: 2 });
    expect([found.besideKWh, found.baseHeatKWh, found.leftoverKWh]).toEqual([500, 0, 0]);
    expect(found.waterKWh).toBeLessThanOrEqual(0.75 * 500);
    expect(split(5, 500, { errorShare: 3 }).waterKWh).toBe(0.75 * 500);
  });
  test('an immersion heater draws on another meter, unless the meter sees the whole house', () => {
    const home = household({ present: { system: 'gas-condensing', hotWaterFrom: 'immersion' } });
    const base = { kWh: 2000, errorKWh: 200, seen: true };
    expect(splitBase(base, 'fuel', home, EFFICIENCY, needOf(3))).toEqual({
      besideKWh: 0,
      baseHeatKWh: 1500,
      leftoverKWh: 1500,
    });
    expect(splitBase(base, 'whole-house', home, EFFICIENCY, needOf(3)).waterKWh).toBeGreaterThan(0);
    const same = household({ present: { system: 'gas-condensing' } });
    expect(splitBase(base, 'fuel', same, EFFICIENCY, needOf(3)).waterKWh).toBeGreaterThan(0);
  });
  test('a base of the method’s own is shared out as it was put together', () => {
    const need = needOf(3);
    expect(split(3, 6000, { seen: false }).leftoverKWh).toBeCloseTo(4500 - need.kWh, 9);
    expect(split(3, 1000, { seen: false })).toMatchObject({
      waterKWh: 750,
      waterErrorKWh: need.errorKWh,
      leftoverKWh: 0,
    });
  });
});

describe('what is known of a base beforehand', () => {
  const efficiency = {
    space: { ...EFFICIENCY },
    water: { value: 0.8, error: 0.06, grade: 'estimated', origin: 'test' },
  } as const;
  const water = needOf(3);
  // SAP 10.2 Appendix L: 231 (A N)^0.4714 kWh of lights and appliances; BREDEM 2012: 481 + 96 N of gas for cooking.
  const electric = 231 * Math.exp(0.4714 * Math.log(120 * 3));
  const gas = 481 + 96 * 3;
  const ofWater = water.kWh / 0.8;
  test.each([
    ['gas', 'fuel', {}, ofWater, 0],
    ['gas with cooking', 'fuel', { cooksOnGas: true }, ofWater, 0.4 * gas],
    ['a heat pump beside a gas cooker', 'heat-pump', { cooksOnGas: true }, ofWater, 0],
    ['the whole house', 'whole-house', { cooksOnGas: true }, ofWater, 0.35 * electric],
    ['gas beside an immersion heater', 'fuel', { hotWaterFrom: 'immersion', cooksOnGas: true }, 0, 0.4 * gas],
    ['the whole house with one', 'whole-house', { hotWaterFrom: 'immersion' }, ofWater, 0.35 * electric],
  ] as const)('%s', (_name, meter, present, waterKWh, besideErrorKWh) => {
    const besideKWh = meter === 'whole-house' ? electric : besideErrorKWh > 0 ? gas : 0;
    const home = household({ home: { floorAreaM2: typed(120) }, present: { system: 'gas-condensing', ...present } });
    const beside = besideWater(meter, home, 3);
    expect(beside.kWh).toBeCloseTo(besideKWh, 6);
    expect(beside.errorKWh).toBeCloseTo(besideErrorKWh, 6);
    const found = knownBase(home, meter, efficiency, water);
    // Pipes that nobody counts, 485 kWh of heat (SAP 2009 Table 3), as much their error; other losses of a whole house are in the rest.
    const uncountedKWh = waterKWh > 0 && meter !== 'whole-house' ? 485 / 0.8 : 0;
    const wholeKWh = waterKWh + uncountedKWh + besideKWh;
    expect(found.perDayKWh).toBeCloseTo(wholeKWh / 365.25, 9);
    expect(found.errorPerDayKWh).toBeCloseTo((0.45 * wholeKWh) / 365.25, 9);
    const ofNeed = waterKWh > 0 ? water.errorKWh / 0.8 : 0;
    const whole = Math.hypot(ofNeed, 0.06 * waterKWh, uncountedKWh, besideErrorKWh);
    expect(found.methodErrorPerDayKWh).toBeCloseTo(whole / 365.25, 9);
    // 7.1 kWh a day in January and 4.5 in July (SAP 10.2 Appendix J, 100 m²): half the swing over the mean is 0.22, said as a fifth.
    expect([found.swing, found.swingError]).toEqual([0.2, 0.06]);
  });
  test('an area nobody named is 90 m²', () => {
    expect(besideWater('whole-house', household(), 2).kWh).toBeCloseTo(231 * 180 ** 0.4714, 9);
  });
});
