import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { reckonLifetime } from '../../../src/model/lifetime/reckon-lifetime.ts';
import type { Household } from '../../../src/model/shapes/household.ts';
import type { Lifetime } from '../../../src/model/shapes/lifetime.ts';
import { reference } from '../../../src/reference/index.ts';
import { sayTold } from '../../../src/words/say-told.ts';
import { typed } from '../appraisal/make-household.ts';
import { larchRise, type Variant } from '../leave-behind/larch-rise.ts';

type Purchase = Household['purchase'];

/** Worth today of a year's amount that grows, year by year. */
const worthOf = (first: number, growth: number, rate: number, years: number) =>
  Array.from({ length: years }, (_, k) => (first * (1 + growth) ** k) / (1 + rate) ** (k + 1)).reduce(
    (a, b) => a + b,
    0,
  );
const ANNUITY = worthOf(1, 0, 0.035, 20);

/** Larch Rise pays £1,192.52 a year with the heat pump and £1,608.40 with its old gas boiler. */
function reckon(purchase: Purchase = {}, variant: Variant = {}, draws = 400): Lifetime {
  return reckonLifetime({ household: { purchase }, appraisal: larchRise(variant), reference, draws })!;
}
const bought: Purchase = { heatPumpGBP: typed(15_000), grantGBP: typed(7500), replacementGBP: typed(3000) };
const yearly = { pump: 119_252, beside: 160_840 };
const saving = yearly.beside - yearly.pump;

describe('nothing is assumed where no price was given', () => {
  const running = reckon({ grantGBP: typed(7500), replacementGBP: typed(3000) });
  test('running costs only, and it says so', () => {
    expect([running.kind, running.notes]).toEqual(['running', ['no-purchase']]);
    expect([running.payback, running.netPresentValue, running.annual, running.fallsBehind]).toEqual([
      null,
      null,
      null,
      null,
    ]);
  });
  test('twenty years of the first one', () => {
    expect(running.pump).toHaveLength(21);
    expect(running.pump[0]!.value).toBe(0);
    expect(running.pump[20]!.value).toBeCloseTo(20 * yearly.pump, 4);
    expect(running.saved.value).toBeCloseTo(20 * saving, 4);
  });
  test('nothing to hold it against: no answer', () => {
    const alone = { ...larchRise(), systems: larchRise().systems.slice(0, 1), versus: [] };
    expect(reckonLifetime({ household: { purchase: bought }, appraisal: alone, reference })).toBeNull();
  });
});

describe('with a purchase', () => {
  const whole = reckon({ ...bought, replacementLifeYears: typed(20) });
  const extra = 450_000;
  test('the first day', () => expect([whole.pump[0]!.value, whole.beside[0]!.value]).toEqual([750_000, 300_000]));
  test('payback is the extra price over the saving', () =>
    expect(whole.payback!.simple.years).toBeCloseTo(extra / saving, 9));
  test('worth today is the annuity of the saving less the extra price', () =>
    expect(whole.netPresentValue!.value).toBeCloseTo(saving * ANNUITY - extra, 4));
  test('level costs a year differ by the level worth', () => {
    const apart = whole.annual!.beside.value - whole.annual!.pump.value;
    expect(apart).toBeCloseTo(whole.netPresentValue!.value / ANNUITY, 4);
  });
  test('growing prices follow the closed form of a gradient', () => {
    const grown = reckon({ ...bought, replacementLifeYears: typed(20), electricityGrowthPerYear: typed(0.03) });
    // 120 units of the boiler's own electricity grow as well.
    const moving = 106_252 - 120 * 26.3;
    const more = worthOf(moving, 0.03, 0.035, 20) - moving * ANNUITY;
    expect(whole.netPresentValue!.value - grown.netPresentValue!.value).toBeCloseTo(more, 3);
  });
  test('simple payback within the years and still a loss, as in the published negative case', () => {
    const lossy = reckon({ heatPumpGBP: typed(6238.2), grantGBP: typed(0), replacementGBP: typed(0) });
    expect(lossy.payback!.simple.years).toBeCloseTo(15, 6);
    expect(lossy.payback!.discounted.years).toBeNull();
    expect(lossy.netPresentValue!.value).toBeLessThan(0);
  });
  test.each([
    ['nothing more given', { heatPumpGBP: typed(15_000) }, ['no-grant', 'no-replacement']],
    ['all given', { ...bought, presentYearsLeft: typed(4) }, []],
    ['due now', bought, ['present-due-now']],
    [
      'machine again',
      { ...bought, presentYearsLeft: typed(0), heatPumpLifeYears: typed(12) },
      ['renewal-at-full-price'],
    ],
  ])('what was taken is said: %s', (_, purchase, notes) => expect(reckon(purchase).notes).toEqual(notes));
});

describe('equipment is bought again at the end of its life', () => {
  const again = reckon({
    ...bought,
    presentYearsLeft: typed(4),
    replacementLifeYears: typed(10),
    heatPumpLifeYears: typed(15),
    renewalGBP: typed(6000),
  });
  const outlays = (side: Lifetime['pump']) =>
    side.flatMap(({ year, outlay }) => (outlay === 0 ? [] : [[year, outlay]]));
  test('heat pump and boiler in their years', () => {
    expect(outlays(again.pump)).toEqual([
      [0, 750_000],
      [15, 600_000],
    ]);
    expect(outlays(again.beside)).toEqual([
      [4, 300_000],
      [14, 300_000],
    ]);
  });
  test('life left at the end is counted by a straight line', () => {
    const line = again.netPresentValue!.working.inputs.filter(({ name }) => sayTold(name).startsWith('Life left'));
    expect(line.map(({ value }) => value)).toEqual([
      expect.closeTo((600_000 * 10) / 15, 6),
      expect.closeTo((300_000 * 4) / 10, 6),
    ]);
  });
});

describe('ranges', () => {
  test('the first year strays as far as the appraisal says', () => {
    const { saving: apart } = larchRise().versus[0]!;
    const first = reckon({ years: typed(1), growthSpreadPerYear: typed(0) }, {}, 4000).saved;
    expect(Math.abs(first.low - apart.low)).toBeLessThan(3000);
    expect(Math.abs(first.high - apart.high)).toBeLessThan(3000);
  });
  test('the same seed, the same range', () => expect(reckon(bought).saved).toEqual(reckon(bought).saved));
  test('without futures a figure is its value', () => {
    const { saved, payback, chanceLess } = reckon(bought, {}, 0);
    expect([saved.low, saved.high, payback!.simple.chance, chanceLess]).toEqual([saved.value, saved.value, 1, 1]);
  });
  test('low, value and high stand in order, whatever is typed', () => {
    const gbp = fc.integer({ min: 0, max: 60_000 });
    const growth = fc.double({ min: -0.1, max: 0.2, noNaN: true });
    const life = fc.integer({ min: 5, max: 50 });
    fc.assert(
      fc.property(
        fc.record({
          heatPumpGBP: gbp,
          grantGBP: gbp,
          replacementGBP: gbp,
          presentYearsLeft: fc.integer({ min: 0, max: 40 }),
        }),
        fc.record({
          electricityGrowthPerYear: growth,
          fuelGrowthPerYear: growth,
          discountPerYear: fc.double({ min: 0, max: 0.2, noNaN: true }),
        }),
        fc.record({ heatPumpLifeYears: life, replacementLifeYears: life, years: fc.integer({ min: 1, max: 40 }) }),
        fc.double({ min: 0, max: 4, noNaN: true }),
        (money, rates, lives, electricityShare) => {
          const purchase = Object.fromEntries(
            Object.entries({ ...money, ...rates, ...lives }).map(([field, value]) => [field, typed(value)]),
          ) as Purchase;
          const found = reckon(purchase, { electricityShare }, 40);
          expect(found.pump).toHaveLength(lives.years + 1);
          for (const point of [...found.pump, ...found.beside, found.saved, found.netPresentValue!]) {
            expect(Number.isFinite(point.value)).toBe(true);
            expect(point.low).toBeLessThanOrEqual(point.value);
            expect(point.high).toBeGreaterThanOrEqual(point.value);
          }
          const { simple } = found.payback!;
          if (simple.years !== null) {
            expect(simple.years).toBeGreaterThanOrEqual(0);
            expect(simple.years).toBeLessThanOrEqual(lives.years);
            expect(found.saved.value).toBeGreaterThanOrEqual(-0.01);
          } else expect(found.saved.value).toBeLessThan(0);
        },
      ),
      { numRuns: 60 },
    );
  });
});

describe('edges', () => {
  test('zero saving: never brought back, where there is something to bring back', () => {
    const electricityShare = 1 + saving / 106_252;
    const level = reckon({ heatPumpGBP: typed(8000), grantGBP: typed(7500) }, { electricityShare }, 0);
    expect(level.saved.value).toBeCloseTo(-50_000, 3);
    expect(level.payback!.simple.years).toBeNull();
  });
  test('a heat pump that costs more to run and less to buy falls behind', () => {
    const dear = reckon(
      { ...bought, replacementGBP: typed(12_000), replacementLifeYears: typed(20) },
      { electricityShare: 2 },
      0,
    );
    expect(dear.payback!.simple.years).toBeNull();
    expect(dear.fallsBehind).toBeCloseTo(450_000 / (yearly.pump + 106_252 - yearly.beside), 1);
  });
  test('held against electric heaters both follow one price', () => {
    const systems = larchRise().systems.filter(({ id }) => id === 'heat-pump' || id === 'direct-electric');
    const versus = larchRise().versus.filter(({ against }) => against === 'direct-electric');
    const found = reckonLifetime({
      household: { purchase: { electricityGrowthPerYear: typed(0.05), fuelGrowthPerYear: typed(0.2) } },
      appraisal: { ...larchRise(), systems, versus },
      reference,
      draws: 0,
    })!;
    const ratio = (1.05 ** 20 - 1) / 0.05;
    expect(found.beside[20]!.value).toBeCloseTo(13_900 * 26.3 * ratio, 2);
  });
});
