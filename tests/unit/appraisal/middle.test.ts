/** What is shown is the middle of the futures, its parts add up to it, and saving and chance never speak against each other. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { reckonHousehold } from '../../../src/host/reckon-household.ts';
import { type AppraisedYears, appraiseYears } from '../../../src/model/appraise.ts';
import { quantileOf } from '../../../src/model/chance/quantiles.ts';
import { reckonLifetime } from '../../../src/model/lifetime/reckon-lifetime.ts';
import { isEvenChance } from '../../../src/model/shapes/appraisal.ts';
import { HEATERS } from '../../../src/model/shapes/heating.ts';
import { type Household, WaterHours } from '../../../src/model/shapes/household.ts';
import type { Tariff } from '../../../src/model/shapes/tariff.ts';
import { reference } from '../../../src/reference/index.ts';
import { priceSeries } from '../tariff/tariffs.ts';
import { makeHousehold, makeTariff, typed } from './make-household.ts';

const asOf = '2026-11-28';
/** A figure may lie this far from the middle of its futures: 6 % of the width of its range, and £2 where that is less. */
const share = 0.06;
const leastPence = 200;
/** Over decades what bends a home's futures to one side adds up: of 3,000 homes none came to more than 5 %, at the corners of what is drawn one to 6.9 %. */
const shareOverDecades = 0.08;

const grade = fc.constantFrom('measured', 'estimated', 'assumed' as const);
const given = (min: number, max: number) =>
  fc.tuple(fc.double({ min, max, noNaN: true }), grade).map(([value, of]) => typed(value, of));
const maybe = <T>(one: fc.Arbitrary<T>) => fc.option(one, { nil: undefined });

const pence = (min: number, max: number) => fc.double({ min, max, noNaN: true });
/** One price, a cheap night, a dear evening with cheap weekends, steps by the month, and every half-hour its own. */
const tariff: fc.Arbitrary<Tariff> = fc.oneof(
  pence(4, 60).map((price) => makeTariff('e', price)),
  fc.tuple(pence(4, 20), pence(20, 45)).map(([night, day]) =>
    makeTariff('e', [
      { name: 'night', pencePerKWh: night, times: [{ from: '00:30', to: '07:30' }] },
      { name: 'day', pencePerKWh: day, times: 'rest' },
    ]),
  ),
  fc.tuple(pence(30, 70), pence(5, 20), pence(15, 30)).map(([evening, weekend, rest]) =>
    makeTariff('e', [
      { name: 'evening', pencePerKWh: evening, times: [{ from: '16:00', to: '19:00' }] },
      { name: 'weekend', pencePerKWh: weekend, times: [{ days: ['sat', 'sun'], from: '00:00', to: '16:00' }] },
      { name: 'rest', pencePerKWh: rest, times: 'rest' },
    ]),
  ),
  fc.tuple(pence(100, 500), pence(20, 45), pence(15, 30)).map(([upToKWh, first, rest]) =>
    makeTariff('e', [
      {
        name: 'all hours',
        pencePerKWh: rest,
        times: 'rest',
        blocks: { per: 'month', steps: [{ upToKWh, pencePerKWh: first }] },
      },
    ]),
  ),
  pence(5, 40).map((level): Tariff => {
    const one = makeTariff('e', 25);
    const series = priceSeries('2026-01-01', 365, (day, half) => level + ((day * 13 + half * half) % 301) / 15);
    return { ...one, versions: [{ ...one.versions[0]!, series }] };
  }),
);

/** Homes of all sizes of which more or less is known, with every fuel, way of heating and kind of price. */
const anyHome: fc.Arbitrary<Household> = fc
  .record({
    home: fc.record({
      people: maybe(fc.tuple(fc.integer({ min: 1, max: 6 }), grade).map(([n, of]) => typed(n, of))),
      floorAreaM2: maybe(given(25, 300)),
    }),
    present: fc.record({
      system: fc.constantFrom(...HEATERS, 'heat-pump' as const, 'other' as const),
      efficiency: maybe(given(0.6, 0.95)),
      hotWaterFrom: fc.constantFrom('same', 'immersion', 'electric-shower' as const),
      cooksOnGas: fc.boolean(),
    }),
    heat: fc.record({ heatLossKW: maybe(given(0.2, 20)), certificateSpaceKWh: maybe(given(200, 25_000)) }),
    hotWater: fc.record({ hours: maybe(fc.constantFrom(...WaterHours.options)) }),
    machine: fc.record({
      source: fc.constantFrom('ground', 'air' as const),
      way: fc.constantFrom('quick', 'quick', 'quick', 'full' as const),
      spaceFactor: maybe(given(1.5, 6)),
      waterFactor: maybe(given(1.3, 4.5)),
      boundary: fc.constantFrom('H1', 'H2', 'H3', 'H4' as const),
      flowC: maybe(given(28, 62)),
      backupShare: maybe(given(0, 0.3)),
    }),
    oilPencePerLitre: maybe(given(40, 120)),
    electricity: maybe(tariff),
  })
  .map(({ oilPencePerLitre, electricity, ...home }) =>
    makeHousehold({
      ...home,
      prices: { oilPencePerLitre, ...(electricity ? { electricityTariffId: 'e' } : {}) },
      ...(electricity ? { tariffs: [electricity] } : {}),
    }),
  );

/** Over decades a machine held against itself at other hours differs by a few pounds, and so does its range. */
const unlikeHome = anyHome.filter(({ present }) => present.system !== 'heat-pump');

function holdMiddle({ appraisal, yearsPence }: AppraisedYears) {
  const middle = (values: Float64Array) => quantileOf(values.slice(), 0.5);
  const near = (figure: { value: number; low: number; high: number }, median: number, of: string) =>
    expect(Math.abs(figure.value - median), of).toBeLessThanOrEqual(
      Math.max(share * (figure.high - figure.low), leastPence),
    );
  for (const { id, cost, split, monthly } of appraisal.systems) {
    near(cost, middle(yearsPence!.get(id)!), id);
    const { unitsPence, standingPence, servicePence } = split;
    expect(unitsPence + standingPence + servicePence, id).toBeCloseTo(cost.value, 6);
    const months = [monthly.unitsPence, monthly.standingPence, monthly.servicePence].flat();
    expect(
      months.reduce((sum, pence) => sum + pence, 0),
      id,
    ).toBeCloseTo(cost.value, 6);
  }
  const pump = yearsPence!.get('heat-pump')!;
  for (const { against, saving, chanceLess, verdict } of appraisal.versus) {
    const other = yearsPence!.get(against)!;
    near(saving, middle(other.map((pence, i) => pence - pump[i]!)), `saving against ${against}`);
    if (chanceLess >= 0.45 && chanceLess <= 0.55) expect(verdict).toBe('about-same');
    else expect([Math.sign(saving.value), verdict]).toEqual(chanceLess > 0.5 ? [1, 'less'] : [-1, 'more']);
  }
}

/** The years to come: sums, worth and level costs, and what has been paid by each year. */
function holdLifetime(household: Household, { appraisal }: AppraisedYears) {
  const lifetime = reckonLifetime({ household, appraisal, reference })!;
  const { saved, netPresentValue, annual, pump, beside, chanceLess } = lifetime;
  for (const figure of [saved, netPresentValue!, annual!.pump, annual!.beside, ...pump, ...beside])
    expect(Math.abs(figure.value - figure.middle)).toBeLessThanOrEqual(
      Math.max(shareOverDecades * (figure.high - figure.low), leastPence),
    );
  if (!isEvenChance(chanceLess)) expect(Math.sign(saved.value)).toBe(chanceLess > 0.5 ? 1 : -1);
}

describe('the middle of 4,096 futures', () => {
  test('of the years to come: what is paid in all, its worth today and by the year', () => {
    fc.assert(
      fc.property(unlikeHome, fc.integer({ min: 5, max: 30 }), given(4000, 25_000), (household, years, heatPumpGBP) => {
        const bought = { ...household, purchase: { heatPumpGBP, years: typed(years) } };
        holdLifetime(bought, appraiseYears({ household: bought, series: [], reference, asOf }));
      }),
      { numRuns: 40 },
    );
  });

  test.each(['larch-rise', 'holm-farm', 'mill-lane', 'quay-flat', 'beacon-view'])('of %s', async (name) => {
    const task = { withCheck: false, withDocument: false };
    const { whole, series } = await reckonHousehold(`sample-bills/${name}/household.json`, asOf, task);
    holdMiddle(appraiseYears({ household: whole.household, series, reference, asOf }));
  });

  test('of any home: cost, parts, months, saving and the side that is named', () => {
    fc.assert(
      fc.property(anyHome, (household) => holdMiddle(appraiseYears({ household, series: [], reference, asOf }))),
      { numRuns: 80 },
    );
  });
});

describe('the same without what differs from home to home', () => {
  test('moves less than homes do, about the same middle', () => {
    const { appraisal } = appraiseYears({ household: makeHousehold(), series: [], reference, asOf });
    for (const { cost, yearToYear } of appraisal.systems) {
      expect(yearToYear!.lowPence).toBeGreaterThan(cost.low);
      expect(yearToYear!.highPence).toBeLessThan(cost.high);
      expect(yearToYear!.lowPence).toBeLessThan(cost.value);
      expect(yearToYear!.highPence).toBeGreaterThan(cost.value);
    }
  });

  test('as designed: the units for rooms and hot water go with the factors, all else stays', () => {
    const { appraisal } = appraiseYears({ household: makeHousehold(), series: [], reference, asOf, draws: 0 });
    const [pump] = appraisal.systems;
    const { asDesigned, space, water } = appraisal.machine;
    // At H4 nothing but the two factors is bought: 3.6 and 2.7 as typed.
    expect([asDesigned!.space, asDesigned!.water]).toEqual([3.6, 2.7]);
    expect(space.value / 3.6).toBeCloseTo(water.value / 2.7, 9);
    const { unitsPence } = pump!.split;
    expect(pump!.asDesigned!.costPence).toBeCloseTo(pump!.cost.value - unitsPence * (1 - space.value / 3.6), 6);
  });
});
