import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { reckonLifetime } from '../../../src/model/lifetime/reckon-lifetime.ts';
import type { Household } from '../../../src/model/shapes/household.ts';
import type { Lifetime } from '../../../src/model/shapes/lifetime.ts';
import { type Told, tell } from '../../../src/model/shapes/told.ts';
import type { Working } from '../../../src/model/shapes/working.ts';
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
  test.each([0, 1])('a cost that is no number, of system %i: no answer', (place) => {
    const { systems, ...rest } = larchRise();
    for (const value of [Number.NaN, Number.POSITIVE_INFINITY]) {
      const changed = systems.map((one, i) => (i === place ? { ...one, cost: { ...one.cost, value } } : one));
      expect(
        reckonLifetime({ household: { purchase: bought }, appraisal: { ...rest, systems: changed }, reference }),
      ).toBeNull();
    }
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
    const dearerGas = reckon({ ...bought, replacementLifeYears: typed(20), fuelGrowthPerYear: typed(0.02) });
    const gas = 17_380 * 8 - 120 * 26.3;
    expect(dearerGas.netPresentValue!.value - whole.netPresentValue!.value).toBeCloseTo(
      worthOf(gas, 0.02, 0.035, 20) - gas * ANNUITY,
      3,
    );
  });
  test('where nothing is discounted, the worth is what is saved and the level cost a twentieth', () => {
    const plain = reckon({ ...bought, replacementLifeYears: typed(20), discountPerYear: typed(0) });
    expect(plain.netPresentValue!.value).toBeCloseTo(20 * saving - extra, 6);
    expect(plain.annual!.pump.value).toBeCloseTo(yearly.pump + 750_000 / 20, 6);
    expect(plain.payback!.discounted.years).toBeCloseTo(extra / saving, 9);
  });
  test('discounted payback, added up year by year', () => {
    let [open, year] = [extra, 0];
    const worth = () => saving / 1.035 ** (year + 1);
    for (; open > worth(); year++) open -= worth();
    expect(whole.payback!.discounted.years).toBeCloseTo(year + open / worth(), 9);
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
    ['a grant of more', { ...bought, heatPumpGBP: typed(500), presentYearsLeft: typed(4) }, ['grant-above-price']],
    [
      'machine again',
      { ...bought, presentYearsLeft: typed(0), heatPumpLifeYears: typed(12) },
      ['renewal-at-full-price'],
    ],
    [
      'machine again at its own price',
      { ...bought, presentYearsLeft: typed(4), heatPumpLifeYears: typed(12), renewalGBP: typed(6000) },
      [],
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
  test('worth and level cost, from a table of all payments', () => {
    const worth = (first: number, running: number, later: Record<number, number>, left: number) =>
      first +
      worthOf(running, 0, 0.035, 20) +
      Object.entries(later).reduce((sum, [year, pence]) => sum + pence / 1.035 ** Number(year), 0) -
      left / 1.035 ** 20;
    const pump = worth(750_000, yearly.pump, { 15: 600_000 }, 400_000);
    const beside = worth(0, yearly.beside, { 4: 300_000, 14: 300_000 }, 120_000);
    expect(again.netPresentValue!.value).toBeCloseTo(beside - pump, 4);
    expect(again.annual!.pump.value).toBeCloseTo(pump / ANNUITY, 4);
    expect(again.annual!.beside.value).toBeCloseTo(beside / ANNUITY, 4);
  });
  test.each([12_000, 15_000, 17_000])(
    'discounted payback of £%i counts what is bought later at its worth then',
    (pounds) => {
      const lives = { presentYearsLeft: typed(4), replacementLifeYears: typed(10), heatPumpLifeYears: typed(30) };
      const found = reckon({ ...bought, heatPumpGBP: typed(pounds), ...lives }, {}, 0).payback!.discounted.years;
      let [open, year] = [100 * (pounds - 7500), 0];
      const worth = (pence: number) => pence / 1.035 ** (year + 1);
      for (; open > worth(saving); year++) {
        open -= worth(saving);
        if (year + 1 !== 4 && year + 1 !== 14) continue;
        open -= worth(300_000);
        if (open <= 0) break;
      }
      expect(found).toBeCloseTo(open <= 0 ? year + 1 : year + open / worth(saving), 9);
    },
  );
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
  /** Nothing but the heat pump's first year strays, and the other costs what it costs. */
  const onlyPump = (purchase: Purchase, draws = 4000) => {
    const { systems, ...rest } = larchRise();
    const sure = systems.map((one) =>
      one.id === 'present' ? { ...one, cost: { ...one.cost, low: one.cost.value, high: one.cost.value } } : one,
    );
    return reckonLifetime({
      household: { purchase: { growthSpreadPerYear: typed(0), ...purchase } },
      appraisal: { ...rest, systems: sure },
      reference,
      draws,
    })!;
  };
  const pumpRange = { low: 0.88 * yearly.pump, high: 1.17 * yearly.pump };
  test('10, 50 and 90 % of the first year are those of the appraisal', () => {
    const points = reckon({ growthSpreadPerYear: typed(0) }, {}, 4000);
    for (const [point, value] of [
      [points.pump[1]!, yearly.pump],
      [points.beside[1]!, yearly.beside],
    ] as const) {
      expect(point.low / value).toBeCloseTo(0.88, 3);
      expect(point.middle / value).toBeCloseTo(1, 3);
      expect(point.high / value).toBeCloseTo(1.17, 3);
    }
    const { saved } = onlyPump({ years: typed(1) });
    expect(saved.low / (yearly.beside - pumpRange.high)).toBeCloseTo(1, 2);
    expect(saved.high / (yearly.beside - pumpRange.low)).toBeCloseTo(1, 2);
  });
  test('10, 50 and 90 % of a payback are the price over the saving at those points', () => {
    // So dear that it comes back in the twentieth year where the heat pump costs what it does in the dearest tenth.
    const pence = 20 * (yearly.beside - pumpRange.high);
    const price = { heatPumpGBP: typed(pence / 100), heatPumpLifeYears: typed(40) };
    const { simple } = onlyPump({ ...price, years: typed(30) }).payback!;
    expect(simple.low).toBeCloseTo(pence / (yearly.beside - pumpRange.low), 1);
    expect(simple.middle).toBeCloseTo(pence / saving, 1);
    expect(simple.high! / 20).toBeCloseTo(1, 2);
    expect(onlyPump({ ...price, years: typed(20) }).payback!.simple.chance).toBeCloseTo(0.9, 2);
    const short = onlyPump({ ...price, years: typed(10) }).payback!.simple;
    expect([short.years, short.middle, short.high]).toEqual([null, null, null]);
    expect(short.low).toBeCloseTo(pence / (yearly.beside - pumpRange.low), 1);
  });
  test('where no saving is known beside them, the two first years stray apart from each other', () => {
    const apart = reckonLifetime({
      household: { purchase: { years: typed(1), growthSpreadPerYear: typed(0) } },
      appraisal: { ...larchRise(), versus: [] },
      reference,
      draws: 4000,
    })!.saved;
    const half = (value: number) => (0.29 * value) / 2;
    expect((apart.high - apart.low) / 2 / Math.hypot(half(yearly.pump), half(yearly.beside))).toBeCloseTo(1, 1);
  });
  test('a thousand futures where nobody says how many', () => {
    const asked = { household: { purchase: bought }, appraisal: larchRise(), reference };
    expect(reckonLifetime(asked)).toEqual(reckonLifetime({ ...asked, draws: 1000 }));
  });
  test('the same seed, the same range', () => expect(reckon(bought).saved).toEqual(reckon(bought).saved));
  test('without futures a figure is its value', () => {
    const { saved, payback, chanceLess } = reckon(bought, {}, 0);
    expect([saved.low, saved.middle, saved.high, chanceLess]).toEqual([saved.value, saved.value, saved.value, 1]);
    const { years, low, middle, high, chance } = payback!.simple;
    expect([low, middle, high, chance]).toEqual([years, years, years, 1]);
    const never = reckon({ heatPumpGBP: typed(30_000) }, {}, 0);
    expect([never.payback!.simple.chance, never.chanceLess, never.fallsBehind]).toEqual([0, 0, null]);
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

describe('the sums behind the figures', () => {
  const codesOf = (inputs: Working['inputs']) => inputs.map(({ name }) => (name as Told).code);
  const lasting = ['years-ahead', 'electricity-growth', 'fuel-growth', 'growth-doubt'];
  const yearlies = ['first-year-of', 'first-year-of'];
  const left = ['life-left-of', 'life-left-of'];
  test.each<[string, Purchase, string[]]>([
    ['running costs only', { grantGBP: typed(7500) }, []],
    ['a price alone', { heatPumpGBP: typed(15_000) }, ['pump-put-in', 'pump-life']],
    [
      'everything typed',
      { ...bought, renewalGBP: typed(6000) },
      [
        'pump-put-in',
        'grant',
        'present-replaced',
        'machine-again',
        'pump-life',
        'replacement-life',
        'present-years-left',
      ],
    ],
  ])('hold what is counted and no more: %s', (_, purchase, lines) => {
    const found = reckon(purchase, {}, 0);
    expect(codesOf(found.saved.working.inputs)).toEqual([...lines, ...yearlies, ...lasting]);
    if (!found.payback) return;
    expect(codesOf(found.payback.simple.working.inputs)).toEqual([...lines, ...yearlies, ...lasting]);
    expect(codesOf(found.payback.discounted.working.inputs)).toEqual([
      ...lines,
      ...yearlies,
      ...lasting,
      'discount-rate',
    ]);
    for (const { working } of [found.netPresentValue!, found.annual!.pump, found.annual!.beside])
      expect(codesOf(working.inputs)).toEqual([...lines, ...yearlies, ...lasting, 'discount-rate', ...left]);
  });
  test('come to the figures, and stand on the cost of a year of either side', () => {
    const found = reckon(bought, {}, 0);
    for (const { value, working } of [found.saved, found.netPresentValue!, found.annual!.pump, found.annual!.beside])
      expect(working.result.value).toBe(value);
    for (const { years, working } of [found.payback!.simple, found.payback!.discounted])
      expect(working.result).toEqual({ value: years, unit: tell('years') });
    const { inputs, steps } = found.saved.working;
    const line = (code: string) => inputs.filter(({ name }) => (name as Told).code === code).map(({ value }) => value);
    expect([line('first-year-of'), line('pump-put-in'), line('grant')]).toEqual([
      [yearly.pump, yearly.beside],
      [15_000],
      [7500],
    ]);
    expect(steps!.map(({ title, result }) => [(title as Told).data!.whose, result.value])).toEqual([
      [{ code: 'heat-pump' }, yearly.pump],
      [{ code: 'the-other' }, yearly.beside],
    ]);
  });
  test('say that the years are too few where nothing is brought back', () => {
    const { simple, discounted } = reckon({ heatPumpGBP: typed(30_000) }, {}, 0).payback!;
    for (const { working } of [simple, discounted])
      expect(working.result).toEqual({ value: 20, unit: tell('too-few-years') });
  });
});
