import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type AppraiseInput, appraise, appraiseYears, USUAL_DRAWS } from '../../../src/model/appraise.ts';
import { commonYear, heatOfHousehold } from '../../../src/model/heat-of-household.ts';
import { Appraisal } from '../../../src/model/shapes/appraisal.ts';
import { emptyHousehold } from '../../../src/model/shapes/household.ts';
import { MODEL_VERSION } from '../../../src/model/shapes/model-version.ts';
import type { Working } from '../../../src/model/shapes/working.ts';
import { reference } from '../../../src/reference/index.ts';
import { sayTold } from '../../../src/words/say-told.ts';
import { EVERY_WAY, makeGasBills, makeHousehold, makeTariff, typed } from './make-household.ts';

const GAS = makeGasBills([2000, 1800, 1500, 1000, 600, 300, 250, 250, 300, 800, 1400, 1900]);
const run = (change: Partial<AppraiseInput> = {}) =>
  appraise({ household: makeHousehold(), series: [], reference, asOf: '2026-11-25', draws: 500, ...change });
const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
const codes = (appraisal: Appraisal) => appraisal.questions.map(({ code }) => code);

describe('an appraisal', () => {
  test.each([
    ['of a household of which only the name is known', { household: emptyHousehold('empty', 'Nobody') }],
    ['of the usual household', {}],
    ['with a year of gas bills', { series: [GAS] }],
    [
      'of an all-electric flat',
      { household: makeHousehold({ present: { system: 'storage' }, machine: { source: 'air' } }) },
    ],
    ['of a home with a heat pump already', { household: makeHousehold({ present: { system: 'heat-pump' } }) }],
    ['in a leap year', { asOf: '2028-02-29' }],
  ] as const)('%s has the agreed shape, and nothing in it is not a number', (_, change) => {
    const appraisal = run(change as Partial<AppraiseInput>);
    expect(Appraisal.parse(appraisal)).toEqual(appraisal);
    expect(appraisal.modelVersion).toBe(MODEL_VERSION);
  });

  test('is the same to the last digit for the same input', () => {
    expect(run({ series: [GAS] })).toEqual(run({ series: [GAS] }));
  });

  test('does not change what it was given', () => {
    const household = makeHousehold();
    const before = structuredClone(household);
    run({ household, series: [GAS] });
    expect(household).toEqual(before);
  });

  test('hands the heat of its months on: bought × efficiency gives the heat of each month back', () => {
    const { systems, demand } = run({ household: makeHousehold({ beside: EVERY_WAY }) });
    const panels = systems.find(({ id }) => id === 'direct-electric')!;
    for (let month = 0; month < 12; month++) {
      const heat = demand.monthlySpaceKWh[month]! + demand.monthlyWaterKWh[month]!;
      expect(panels.monthly.boughtKWh[month]).toBeCloseTo(heat, 6);
    }
    expect(sum(panels.monthly.boughtKWh)).toBeCloseTo(demand.total.value, 6);
  });

  test('nests the sum of the heat inside the sum of the cost', () => {
    const { systems, demand } = run({ series: [GAS] });
    const holds = (working: Working, wanted: Working): boolean =>
      working === wanted || (working.steps ?? []).some((step) => holds(step, wanted));
    for (const { cost } of systems) {
      expect(holds(cost.working, demand.space.working)).toBe(true);
      expect(holds(cost.working, demand.water.working)).toBe(true);
    }
  });

  test('gives a bill back: a gas record chosen by itself costs what its units cost, at today’s price', () => {
    const household = makeHousehold({ heat: { use: 'record' }, present: { efficiency: typed(0.84) } });
    const { systems } = run({ household, series: [GAS] });
    const gas = systems.find(({ id }) => id === 'present')!.rates.find(({ name }) => sayTold(name) === 'gas')!;
    // Weather correction and the split of the base by the hot-water method move it by a few hundredths at most.
    expect(gas.kWh / GAS.total).toBeGreaterThan(0.93);
    expect(gas.kWh / GAS.total).toBeLessThan(1.07);
  });

  test.each(['H1', 'H2', 'H3', 'H4'] as const)('gives a heat pump’s own meter back, factors at %s', (boundary) => {
    const pump = {
      ...makeGasBills([700, 620, 500, 300, 150, 110, 100, 100, 110, 250, 480, 660]),
      role: 'heat-pump' as const,
    };
    const household = makeHousehold({
      present: { system: 'heat-pump' },
      heat: { use: 'record' },
      machine: { boundary, waterFactor: undefined },
    });
    const { systems } = run({ household, series: [{ ...pump, carrier: 'electricity' }] });
    const present = systems.find(({ id }) => id === 'present')!;
    // Weather correction and the share of pumps in a usual home instead of this one: 3 in 100.
    expect(Math.abs(present.bought.value / pump.total - 1)).toBeLessThan(0.03);
  });

  test('is narrower about the present cost than about other fuels where a record stands behind it', () => {
    const { systems } = run({
      household: makeHousehold({ heat: { use: 'record' }, beside: EVERY_WAY }),
      series: [GAS],
      draws: 4000,
    });
    const width = (id: string) => {
      const { low, high, value } = systems.find((system) => system.id === id)!.bought;
      return (high - low) / value;
    };
    expect(width('present')).toBeLessThan(width('oil'));
  });
});

describe('old prices', () => {
  test('are said, with the days and the quarter', () => {
    const household = makeHousehold({ beside: EVERY_WAY });
    const old = run({ household, asOf: '2027-03-01' }).questions.filter(({ code }) => code === 'prices-old');
    expect(old.find(({ data }) => data.fuel === 'electricity')).toMatchObject({
      weight: 'question',
      data: { from: '2026-10-01', to: '2026-12-31', days: 60 },
    });
    expect(old.find(({ data }) => data.fuel === 'gas')).toMatchObject({ weight: 'question' });
    expect(old.find(({ data }) => data.fuel === 'oil')).toMatchObject({ weight: 'note' });
  });
  test('are not said of what is compared with nothing', () => {
    const asked = run({ asOf: '2027-03-01' }).questions.filter(({ code }) => code === 'prices-old');
    expect(asked.map(({ data }) => data.fuel).sort()).toEqual(['electricity', 'gas']);
  });
  test('are not said inside their quarter', () => {
    expect(run().questions.some(({ code, data }) => code === 'prices-old' && data.fuel === 'electricity')).toBe(false);
  });
});

describe('what an appraisal is put together from', () => {
  test.each([
    [2025, '2025-07-01', 2025],
    [2028, '2028-02-29', 2029],
    [2100, '2100-12-31', 2100],
  ])('%i is reckoned as a year of 365 days', (_year, asOf, common) => expect(commonYear(asOf)).toBe(common));

  test('its heat is that of the same steps gone by themselves, a changed room too', () => {
    const household = makeHousehold();
    const input = { household, series: [GAS], reference, asOf: '2026-11-25' };
    for (const whatIf of [undefined, { roomC: 23 }]) {
      const changed = whatIf ? { whatIf } : {};
      const heat = heatOfHousehold({ ...input, ...changed });
      expect(heat.demand).toEqual(run({ series: [GAS], ...changed }).demand);
      expect(heat.year.slots).toMatchObject({ year: 2026, zone: 'Europe/London' });
      expect(heat.year.region.id).toBe(6); // B14 lies in the Midlands (SAP 2012 Appendix U)
      expect(heat.spaceShare.length).toBe(365);
      expect(heat.whatIf).toEqual(whatIf);
      expect('whatIf' in heat).toBe(whatIf !== undefined);
    }
  });
  test('the prices of delivered fuels go by the share asked for, their basis as it is', () => {
    const [asIs, dear] = [run().prices, run({ whatIf: { fuelShare: 1.5 } }).prices];
    for (const fuel of ['oil', 'lpg', 'pellets'] as const) {
      expect(dear[`${fuel}PencePerKWh`]! / asIs[`${fuel}PencePerKWh`]!).toBeCloseTo(1.5, 9);
      expect(dear[fuel]).toEqual(asIs[fuel]);
    }
    expect(dear.gasPencePerKWh / asIs.gasPencePerKWh).toBeCloseTo(1.5, 9);
  });
  test('without draws every range is its value, and there are no possible years', () => {
    const { appraisal, yearsPence } = appraiseYears({
      household: makeHousehold(),
      series: [],
      reference,
      asOf: '2026-11-25',
      draws: 0,
    });
    expect(yearsPence).toBeNull();
    for (const { cost } of appraisal.systems) expect([cost.low, cost.high]).toEqual([cost.value, cost.value]);
  });
  test('4,096 possible years unless another number is asked for', () => {
    const of = (draws?: number) =>
      appraiseYears({
        household: makeHousehold(),
        series: [],
        reference,
        asOf: '2026-11-25',
        ...(draws ? { draws } : {}),
      });
    expect(USUAL_DRAWS).toBe(4096);
    for (const pence of of().yearsPence!.values()) expect(pence).toHaveLength(4096);
    for (const pence of of(64).yearsPence!.values()) expect(pence).toHaveLength(64);
  });
  test('questions of heat, machine and prices, in that order, and the machine by the way asked for', () => {
    const household = makeHousehold({
      machine: { spaceFactor: undefined, way: 'full' },
      heat: { heatLossKW: undefined },
    });
    const full = run({ household, asOf: '2027-03-01', draws: 0 });
    const quick = run({ household: makeHousehold({ machine: { spaceFactor: undefined } }), draws: 0 });
    expect(Math.abs(full.machine.space.value - quick.machine.space.value)).toBeGreaterThan(0.01);
    const stages = full.questions.map(({ stage }) => stage);
    expect(stages.indexOf('heat')).toBeLessThan(stages.indexOf('machine'));
    expect(codes(full)).toContain('prices-old');
  });
});

describe('what if', () => {
  const cost = (whatIf: AppraiseInput['whatIf'], id = 'heat-pump') =>
    run(whatIf ? { whatIf } : {}).systems.find((system) => system.id === id)!.cost.value;
  test.each([
    ['warmer rooms cost more', { roomC: 23 }, 1],
    ['cooler rooms cost less', { roomC: 18 }, -1],
    ['more hot water costs more', { waterShare: 1.5 }, 1],
    ['a lower flow temperature costs less', { flowC: 35 }, -1],
    ['dearer electricity costs more', { electricityShare: 1.2 }, 1],
    ['a cold winter costs more', { winter: 'cold' }, 1],
    ['a mild winter costs less', { winter: 'mild' }, -1],
  ] as const)('%s', (_, whatIf, direction) => {
    expect(Math.sign(cost(whatIf) - cost(undefined))).toBe(direction);
  });

  test('a cold winter by the slider is the cold year of the cost page', () => {
    const asIs = run().systems[0]!;
    expect(cost({ winter: 'cold' })).toBeCloseTo(asIs.coldYearPence, -1);
  });

  test('with no change nothing moves', () => {
    expect(run({ whatIf: {} }).systems).toEqual(run().systems);
    expect(run({ whatIf: { electricityShare: 1, fuelShare: 1, waterShare: 1, winter: 'typical' } }).systems).toEqual(
      run().systems,
    );
  });

  test('a lower flow temperature is held against the heat pump as it runs now', () => {
    const household = makeHousehold({ present: { system: 'heat-pump' } });
    const saving = run({ household, whatIf: { flowC: 38 } }).versus.find(({ against }) => against === 'present')!;
    expect(saving.saving.value).toBeGreaterThan(0);
    expect(run({ household }).versus[0]!.saving.value).toBeCloseTo(0, 9);
  });
});

test('refusals of every part stand together', () => {
  const household = makeHousehold({
    machine: { spaceFactor: typed(12) },
    present: { efficiency: typed(1.5) },
    prices: { gasTariffId: 'gone' },
    tariffs: [makeTariff('unused', 20)],
  });
  const refused = run({ household }).questions.filter(({ weight }) => weight === 'refusal');
  expect(refused.map(({ code }) => code).sort()).toEqual(['efficiency-refused', 'factor-refused', 'tariff-missing']);
});

test('any household that the schema lets through gives numbers, ranges in order and chances', () => {
  const share = fc.double({ min: 0, max: 1, noNaN: true });
  fc.assert(
    fc.property(
      fc.record({
        system: fc.constantFrom(
          'gas-condensing',
          'gas-old',
          'oil',
          'lpg',
          'direct-electric',
          'storage',
          'heat-pump',
          'other',
        ),
        source: fc.constantFrom('ground', 'air'),
        boundary: fc.constantFrom('H1', 'H2', 'H3', 'H4', undefined),
        space: fc.option(fc.double({ min: 1, max: 8, noNaN: true })),
        water: fc.option(fc.double({ min: 1, max: 8, noNaN: true })),
        efficiency: fc.option(fc.double({ min: 0.2, max: 1.1, noNaN: true })),
        heatLossKW: fc.option(fc.double({ min: 0.001, max: 200, noNaN: true })),
        backup: fc.option(share),
        cooks: fc.boolean(),
        hotWaterFrom: fc.constantFrom('same', 'immersion', 'electric-shower', undefined),
      }),
      (drawn) => {
        const given = (value: number | null) => (value === null ? undefined : typed(value));
        const household = makeHousehold({
          present: {
            system: drawn.system as 'oil',
            efficiency: given(drawn.efficiency),
            cooksOnGas: drawn.cooks,
            hotWaterFrom: drawn.hotWaterFrom as 'same',
          },
          heat: { heatLossKW: given(drawn.heatLossKW) },
          machine: {
            source: drawn.source as 'ground',
            boundary: drawn.boundary as 'H1',
            spaceFactor: given(drawn.space),
            waterFactor: given(drawn.water),
            backupShare: given(drawn.backup),
          },
        });
        const appraisal = run({ household, draws: 64 });
        expect(Appraisal.safeParse(appraisal).error).toBeUndefined();
        for (const { cost, bought } of appraisal.systems) {
          expect(cost.low).toBeLessThanOrEqual(cost.value);
          expect(cost.value).toBeLessThanOrEqual(cost.high);
          expect(bought.value).toBeGreaterThanOrEqual(0);
        }
        for (const { chanceLess } of appraisal.versus) {
          expect(chanceLess).toBeGreaterThanOrEqual(0);
          expect(chanceLess).toBeLessThanOrEqual(1);
        }
      },
    ),
    { numRuns: 100 },
  );
});

test('codes of questions are written with dashes', () => {
  const all = codes(run({ household: emptyHousehold('empty', 'Nobody'), asOf: '2027-06-01' }));
  for (const code of all) expect(code).toMatch(/^[a-z]+(-[a-z]+)*$/);
  expect(all.length).toBeGreaterThan(2);
});
