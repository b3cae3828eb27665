import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { choosable, whyLeftOut } from '../../../src/model/comparison/why-left-out.ts';
import type { SystemResult, WhyLeftOut } from '../../../src/model/shapes/appraisal.ts';
import type { System } from '../../../src/model/shapes/heating.ts';
import { sayTold } from '../../../src/words/say-told.ts';
import { EVERY_WAY, type HouseholdChange, makeHousehold, makeTariff, typed } from '../appraisal/make-household.ts';
import { compareBy, makeDemand } from './make-demand.ts';

const demand = makeDemand(12_000, 2100);
const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
const find = (systems: readonly SystemResult[], id: string) => systems.find((system) => system.id === id)!;
const ids = (change: Parameters<typeof makeHousehold>[0]) =>
  compareBy(makeHousehold(change), demand).systems.map(({ id, kind }) => (id === 'present' ? `present ${kind}` : id));

describe('which systems', () => {
  const off = { house: ['oil', 'lpg', 'pellets'], flat: [] as string[] };
  test.each([
    ['gas now, ground', {}, ['present gas-condensing', 'air-source']],
    ['old gas now', { present: { system: 'gas-old' } }, ['present gas-old', 'air-source', 'gas-condensing']],
    [
      'oil now, air, a house',
      { present: { system: 'oil' }, machine: { source: 'air' } },
      ['present oil', 'lpg', 'pellets', 'ground-source'],
    ],
    [
      'oil now, gas in the street',
      { present: { system: 'oil' }, home: { gasGrid: true } },
      ['present oil', 'gas-condensing', 'air-source'],
    ],
    [
      'storage now, gas not said',
      { present: { system: 'storage' } },
      ['present storage', 'direct-electric', 'air-source'],
    ],
    [
      'storage now, no gas',
      { present: { system: 'storage' }, home: { gasGrid: false } },
      ['present storage', 'direct-electric', 'air-source', ...off.house],
    ],
    [
      'a flat with storage, no gas',
      { present: { system: 'storage' }, home: { kind: 'flat', gasGrid: false } },
      ['present storage', 'direct-electric', 'air-source', ...off.flat],
    ],
    ['a flat, air offered', { home: { kind: 'flat' }, machine: { source: 'air' } }, ['present gas-condensing']],
    ['a heat pump now', { present: { system: 'heat-pump' } }, ['present heat-pump', 'air-source']],
    ['coal now', { present: { system: 'other' } }, ['air-source']],
    [
      'the installer wants oil in and air out',
      { beside: { oil: true, 'air-source': false } },
      ['present gas-condensing', 'oil'],
    ],
  ] as const)('%s', (_, change, beside: readonly string[]) => {
    expect(new Set(ids(change))).toEqual(new Set(['heat-pump', ...beside]));
    expect(ids(change)[0]).toBe('heat-pump');
  });

  const delivered = (why: WhyLeftOut | null) => ({ oil: why, lpg: why, pellets: why });
  const electric = (why: WhyLeftOut | null) => ({ 'direct-electric': why, storage: why });
  const ground = { 'air-source': null, 'ground-source': null } as const;
  const noGround = { 'air-source': null, 'ground-source': 'no-ground' } as const;
  const gas = (why: WhyLeftOut | null) => ({ 'gas-condensing': why });
  test.each<[string, HouseholdChange, Partial<Record<System, WhyLeftOut | null>>]>([
    ['a semi on gas', {}, { ...gas(null), ...delivered('gas-here'), ...electric('not-electric'), ...ground }],
    [
      'a flat on gas',
      { home: { kind: 'flat' } },
      { ...gas(null), ...delivered('no-room'), ...electric('not-electric'), ...noGround },
    ],
    [
      'a terrace on oil',
      { home: { kind: 'terrace' }, present: { system: 'oil' } },
      { ...gas('no-gas'), ...delivered(null), ...electric('not-electric'), ...noGround },
    ],
    [
      'a semi with storage heaters',
      { present: { system: 'storage' } },
      { ...gas('gas-not-said'), ...delivered('gas-not-said'), ...electric(null), ...ground },
    ],
    [
      'a flat with panels',
      { home: { kind: 'flat' }, present: { system: 'direct-electric' } },
      { ...gas('gas-not-said'), ...delivered('no-room'), ...electric(null), ...noGround },
    ],
    [
      'a flat with a heat pump and no gas',
      { home: { kind: 'flat', gasGrid: false }, present: { system: 'heat-pump' } },
      { ...gas('no-gas'), ...electric(null) },
    ],
    [
      'a flat of which nobody said what heats it',
      { home: { kind: 'flat' }, present: { assumed: true } },
      { ...gas('gas-not-said'), ...electric(null) },
    ],
    [
      'a semi taken to have storage heaters',
      { present: { system: 'storage', assumed: true } },
      { ...gas('gas-not-said'), ...electric('not-electric') },
    ],
    [
      'oil beside a gas cooker',
      { present: { system: 'oil', cooksOnGas: true } },
      { ...gas(null), ...delivered('gas-here') },
    ],
    [
      'storage heaters and a gas tariff',
      { present: { system: 'storage' }, prices: { gasTariffId: 'g' } },
      { ...gas(null), ...delivered('gas-here'), ...electric(null) },
    ],
    [
      'oil with gas in the street',
      { present: { system: 'oil' }, home: { gasGrid: true } },
      { ...gas(null), ...delivered('gas-here') },
    ],
    ['gas, whatever is said of the street', { home: { gasGrid: false } }, { ...gas(null), ...delivered('gas-here') }],
    [
      'coal',
      { present: { system: 'other' } },
      { ...gas('gas-not-said'), ...delivered('gas-not-said'), ...electric('not-electric') },
    ],
    [
      'the installer’s word',
      { beside: { oil: true, 'air-source': false } },
      { oil: null, lpg: 'gas-here', 'air-source': 'chosen' },
    ],
  ])('%s: why each is left out', (_, change, expected) => {
    const why = whyLeftOut(makeHousehold(change));
    expect(Object.fromEntries(Object.keys(expected).map((system) => [system, why(system as System)]))).toEqual(
      expected,
    );
  });
  test('nothing is held against itself, but a new boiler against one of known efficiency', () => {
    const ids = (change: HouseholdChange) => choosable(makeHousehold(change));
    expect(ids({})).toEqual(['oil', 'lpg', 'pellets', 'direct-electric', 'storage', 'air-source']);
    expect(ids({ machine: { source: 'air' }, present: { system: 'oil', efficiency: typed(0.8) } })).toEqual([
      'gas-condensing',
      'lpg',
      'pellets',
      'direct-electric',
      'storage',
      'ground-source',
    ]);
    expect(ids({ present: { efficiency: typed(0.8) } })[0]).toBe('gas-condensing');
  });

  test('what could stand and does not is named with its reason', () => {
    const { leftOut } = compareBy(makeHousehold({ home: { kind: 'flat' }, beside: { storage: false } }), demand);
    expect(Object.fromEntries(leftOut!.map(({ system, why }) => [system, why]))).toEqual({
      oil: 'no-room',
      lpg: 'no-room',
      pellets: 'no-room',
      'direct-electric': 'not-electric',
      storage: 'chosen',
    });
  });

  test('what nobody has said is called assumed and asked about, until a record or a word says it', () => {
    const unsaid = compareBy(makeHousehold({ present: { assumed: true } }), demand);
    expect(find(unsaid.systems, 'present').kind).toBe('gas-assumed');
    expect(unsaid.systems.map(({ id }) => id)).not.toContain('gas-condensing');
    expect(unsaid.questions).toEqual([expect.objectContaining({ code: 'present-assumed', field: 'present.system' })]);
    const { working } = demand.space;
    const { questions, systems } = compareBy(makeHousehold({ present: { assumed: true } }), {
      ...demand,
      estimates: [{ way: 'record', spaceKWh: 12_000, spaceErrorKWh: 900, grade: 'measured', working }],
    });
    expect(find(systems, 'present').kind).toBe('gas-condensing');
    expect(questions).toEqual([]);
  });

  test('a typed efficiency brings a new gas boiler beside the present one', () => {
    expect(ids({ present: { system: 'gas-condensing', efficiency: typed(0.78) } })).toContain('gas-condensing');
  });

  test('what has no price is asked about', () => {
    const { questions } = compareBy(makeHousehold({ present: { system: 'other' } }), demand);
    expect(questions).toEqual([expect.objectContaining({ code: 'present-not-priced' })]);
  });

  test('an efficiency above 110 % is refused and the table stands in', () => {
    const { questions, systems } = compareBy(makeHousehold({ present: { efficiency: typed(1.2) } }), demand);
    expect(questions).toEqual([expect.objectContaining({ code: 'efficiency-refused', weight: 'refusal' })]);
    expect(find(systems, 'present').spaceEfficiency).toBe(0.84);
  });

  test('after the present one the others stand by cost', () => {
    const costs = compareBy(makeHousehold({ beside: EVERY_WAY }), demand)
      .systems.slice(2)
      .map(({ cost }) => cost.value);
    expect([...costs].sort((a, b) => a - b)).toEqual(costs);
  });
});

describe('what goes into the cost', () => {
  const gasStanding = 365 * 29.68;
  test.each([
    ['gas', {}, 'present', gasStanding],
    ['a heat pump', {}, 'heat-pump', 0],
    ['a heat pump beside a gas cooker', { present: { cooksOnGas: true } }, 'heat-pump', gasStanding],
    ['oil', {}, 'oil', 0],
    ['panel heaters', {}, 'direct-electric', 0],
  ] as const)('standing charge of %s', (_, change, id, pence) => {
    const { systems } = compareBy(makeHousehold({ ...change, beside: EVERY_WAY }), demand);
    expect(find(systems, id).split.standingPence).toBeCloseTo(pence, 6);
  });

  test('service as typed, else the custom of the trade', () => {
    const { systems } = compareBy(
      makeHousehold({ prices: { serviceHeatPumpGBP: typed(222) }, beside: EVERY_WAY }),
      demand,
    );
    expect(find(systems, 'heat-pump').split.servicePence).toBeCloseTo(22_200, 6);
    expect(find(systems, 'present').split.servicePence).toBeCloseTo(10_000, 6);
    expect(find(systems, 'direct-electric').split.servicePence).toBe(0);
  });

  test('hot water by an immersion heater is bought as electricity beside the fuel', () => {
    const { systems } = compareBy(makeHousehold({ present: { hotWaterFrom: 'immersion' } }), demand);
    const present = find(systems, 'present');
    expect(present.ownElectricityKWh).toBeCloseTo(2100 + 160, 6);
    expect(present.rates.map(({ name, kWh }) => [sayTold(name), Math.round(kWh)])).toEqual([
      ['gas', Math.round(12_000 / 0.84)],
      ['electricity of pump, fan and immersion heater', 2260],
    ]);
  });

  test('a night tariff makes storage heaters buy nine tenths of their heat at night', () => {
    const { systems } = compareBy(makeHousehold({ beside: EVERY_WAY }), makeDemand(9500, 0));
    expect(find(systems, 'storage').rates.map(({ name, kWh }) => [sayTold(name), Math.round(kWh)])).toEqual([
      ['electricity, night', 9000],
      ['electricity, day', 1000],
    ]);
  });
});

describe('sums hold', () => {
  const twoRate = makeTariff('two', [
    { name: 'night', pencePerKWh: 15, times: [{ from: '00:30', to: '07:30' }] },
    { name: 'peak', pencePerKWh: 40, times: [{ from: '16:00', to: '19:00', months: [1, 2, 3, 10, 11, 12] }] },
    { name: 'day', pencePerKWh: 28, times: 'rest' },
  ]);
  const household = makeHousehold({
    machine: { boundary: 'H1', backupShare: typed(0.02) },
    present: { hotWaterFrom: 'immersion' },
    prices: { electricityTariffId: 'two' },
    tariffs: [twoRate],
    beside: EVERY_WAY,
  });

  test('months to the year, bands to the energy, bands × prices to the units, split to the cost', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 40_000, noNaN: true }),
        fc.double({ min: 0, max: 8000, noNaN: true }),
        (space, water) => {
          for (const system of compareBy(household, makeDemand(space, water)).systems) {
            const { monthly, split, bought, cost, rates } = system;
            expect(sum(monthly.boughtKWh)).toBeCloseTo(bought.value, 6);
            expect(sum(rates.map(({ kWh }) => kWh))).toBeCloseTo(bought.value, 6);
            expect(sum(rates.map(({ kWh, pencePerKWh }) => kWh * pencePerKWh))).toBeCloseTo(split.unitsPence, 5);
            expect(sum(monthly.unitsPence)).toBeCloseTo(split.unitsPence, 6);
            expect(sum(monthly.standingPence)).toBeCloseTo(split.standingPence, 6);
            expect(sum(monthly.servicePence)).toBeCloseTo(split.servicePence, 6);
            expect(split.unitsPence + split.standingPence + split.servicePence).toBeCloseTo(cost.value, 6);
          }
        },
      ),
      { numRuns: 30 },
    );
  });

  test('with no heat needed every system costs its standing charge and service, and nothing is not a number', () => {
    const { systems, versus, drivers } = compareBy(household, makeDemand(0, 0), { draws: 200 });
    for (const { split, cost, bought, pencePerKWhHeat, carbonKg } of systems) {
      expect(cost.value).toBeCloseTo(split.standingPence + split.servicePence, 9);
      expect([bought.value, pencePerKWhHeat.value, carbonKg.value]).toEqual([0, 0, 0]);
    }
    expect(JSON.stringify({ systems, versus, drivers })).not.toMatch(/NaN|null,"value"|Infinity/);
    for (const one of versus) expect(Object.values(one).every((value) => !Number.isNaN(value))).toBe(true);
  });
});

describe('what must never happen', () => {
  const costOf = (change: Parameters<typeof makeHousehold>[0], id = 'heat-pump', whatIf = {}) =>
    find(compareBy(makeHousehold(change), demand, { whatIf }).systems, id).cost.value;

  test('a dearer unit never costs less', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 100, noNaN: true }),
        fc.double({ min: 1, max: 3, noNaN: true }),
        (price, times) => {
          const at = (pence: number) =>
            costOf({ prices: { electricityTariffId: 'own' }, tariffs: [makeTariff('own', pence)] });
          expect(at(price * times)).toBeGreaterThanOrEqual(at(price));
        },
      ),
      { numRuns: 40 },
    );
  });

  test('a higher factor never costs more, at any boundary', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 7, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.constantFrom('H1' as const, 'H2' as const, 'H3' as const, 'H4' as const),
        fc.boolean(),
        (factor, more, boundary, water) => {
          const at = (value: number) =>
            costOf({
              machine: {
                spaceFactor: typed(value),
                boundary,
                waterFactor: water ? typed(2) : undefined,
                backupShare: typed(0.05),
              },
            });
          expect(at(factor + more)).toBeLessThanOrEqual(at(factor) + 1e-6);
        },
      ),
      { numRuns: 60 },
    );
  });

  test('the shares of a what-if move the unit prices and leave the standing charge', () => {
    const asIs = find(compareBy(makeHousehold(), demand).systems, 'present');
    const dearer = find(compareBy(makeHousehold(), demand, { whatIf: { fuelShare: 2 } }).systems, 'present');
    expect(dearer.split.standingPence).toBe(asIs.split.standingPence);
    const electricity = 160 * 26.32;
    expect(dearer.split.unitsPence).toBeCloseTo(2 * (asIs.split.unitsPence - electricity) + electricity, 5);
    expect(costOf({}, 'heat-pump', { electricityShare: 2 })).toBeGreaterThan(costOf({}, 'heat-pump'));
  });

  test('months in another order cost the same at one price', () => {
    const turned = { ...demand, monthlyWaterKWh: [...demand.monthlyWaterKWh].reverse() };
    const cost = (d: typeof demand) => compareBy(makeHousehold(), d).systems.map(({ cost: { value } }) => value);
    for (const [i, value] of cost(turned).entries()) expect(value).toBeCloseTo(cost(demand)[i]!, 6);
  });

  test('a cold year costs more than a typical one, a mild one less', () => {
    for (const { cost, coldYearPence, mildYearPence } of compareBy(makeHousehold(), demand).systems) {
      expect(coldYearPence).toBeGreaterThan(cost.value);
      expect(mildYearPence).toBeLessThan(cost.value);
    }
  });
});

describe('ranges', () => {
  const { systems, versus, drivers } = compareBy(makeHousehold(), demand, { draws: 2000 });

  test('low ≤ value ≤ high for every figure', () => {
    const figures = [
      ...systems.flatMap(({ bought, cost, pencePerKWhHeat, carbonKg }) => [bought, cost, pencePerKWhHeat, carbonKg]),
      ...versus.map(({ saving }) => saving),
    ];
    for (const { low, value, high } of figures) {
      expect(low).toBeLessThanOrEqual(value);
      expect(value).toBeLessThanOrEqual(high);
      expect(low).toBeLessThan(high);
    }
  });

  test('chances lie between 0 and 1 and agree with the twenty futures', () => {
    for (const { chanceLess, twenty } of versus) {
      expect(chanceLess).toBeGreaterThanOrEqual(0);
      expect(chanceLess).toBeLessThanOrEqual(1);
      expect([...twenty].sort((a, b) => a - b)).toEqual(twenty);
      expect(twenty.filter((saving) => saving > 0).length / 20).toBeCloseTo(chanceLess, 1);
    }
  });

  test('the saving is the difference of the costs, and drivers sum to 1', () => {
    for (const { against, saving } of versus) {
      expect(saving.value).toBeCloseTo(find(systems, against).cost.value - systems[0]!.cost.value, 6);
    }
    expect(sum(drivers.map(({ share }) => share))).toBeCloseTo(1, 9);
    expect(drivers[0]!.share).toBeGreaterThanOrEqual(drivers.at(-1)!.share);
  });

  test.each([
    ['by custom', {}, true],
    ['typed for both', { serviceHeatPumpGBP: typed(180), serviceGasGBP: typed(100) }, false],
  ])('service %s', (_, prices, moves) => {
    const ranked = compareBy(makeHousehold({ prices }), demand, { draws: 2000 }).drivers;
    expect(ranked.some(({ input }) => input === 'service')).toBe(moves);
  });

  test.each([
    ['a heat pump that stands there already', { present: { system: 'heat-pump' } }, []],
    ['no priced system: the cheapest other', { present: { system: 'other' } }, [expect.anything()]],
  ] as const)('drivers are those of what it is shown beside, %s', (_, change, first) => {
    const ranked = compareBy(makeHousehold(change), demand, { draws: 2000 }).drivers;
    expect(ranked.slice(0, 1)).toEqual(first);
  });

  test('the same again to the last digit', () => {
    expect(compareBy(makeHousehold(), demand, { draws: 2000 })).toEqual({
      systems,
      versus,
      drivers,
      leftOut: expect.any(Array),
      questions: [],
      electricityPencePerKWh: expect.any(Number),
      gasPencePerKWh: expect.any(Number),
      yearsPence: expect.any(Map),
      priced: expect.any(Array),
      shared: expect.any(Object),
    });
  });

  test('without draws every range is its value and the chance is certain', () => {
    for (const { saving, chanceLess, twenty } of compareBy(makeHousehold(), demand).versus) {
      expect([saving.low, saving.high]).toEqual([saving.value, saving.value]);
      expect([0, 0.5, 1]).toContain(chanceLess);
      expect(new Set(twenty)).toEqual(new Set([saving.value]));
    }
  });
});

test('every working gives its own figure, and the cost rests on the energy bought', () => {
  for (const { cost, bought, carbonKg, pencePerKWhHeat } of compareBy(makeHousehold(), demand).systems) {
    for (const figure of [cost, bought, carbonKg, pencePerKWhHeat]) {
      expect(figure.working.result.value).toBe(figure.value);
      expect(figure.working.inputs.length).toBeGreaterThan(1);
    }
    expect(cost.working.steps).toEqual([bought.working]);
    expect(bought.working.steps).toContain(demand.space.working);
    // Recomputed from the working's own inputs: units × price, band by band, plus standing charge and service.
    const inputs = cost.working.inputs.map(({ name, value }) => [sayTold(name), Number(value)] as const);
    const of = (start: string) => inputs.filter(([name]) => name.startsWith(start)).map(([, value]) => value);
    const units = of('kWh, ').reduce((total, kWh, i) => total + kWh * of('Unit price')[i]!, 0);
    expect(units + of('Standing charge')[0]! + of('Service')[0]! * 100).toBeCloseTo(cost.value, 6);
  }
});
