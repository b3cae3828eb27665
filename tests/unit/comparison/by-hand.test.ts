/** A comparison reckoned by hand, figure by figure, and the rules that hold one system against another. */
import { describe, expect, test } from 'vitest';
import { findSideBySide, pickForPicture } from '../../../src/model/comparison/beside.ts';
import { withRange } from '../../../src/model/comparison/cost-figures.ts';
import { planSystems } from '../../../src/model/comparison/plan-systems.ts';
import { choosePrices } from '../../../src/model/comparison/prices-of.ts';
import { holdAgainst, type Side } from '../../../src/model/comparison/versus.ts';
import { EFFICIENCY_ERROR } from '../../../src/model/demand/demand-assumptions.ts';
import { reckonMachine } from '../../../src/model/heat-pump/spf-from-factors.ts';
import type { Appraisal, Demand, SystemResult } from '../../../src/model/shapes/appraisal.ts';
import type { Told } from '../../../src/model/shapes/told.ts';
import type { Working } from '../../../src/model/shapes/working.ts';
import { reference } from '../../../src/reference/index.ts';
import { sayTold } from '../../../src/words/say-told.ts';
import { EVERY_WAY, type HouseholdChange, makeHousehold, makeTariff, typed } from '../appraisal/make-household.ts';
import { larchRise, larchRiseHousehold } from '../leave-behind/larch-rise.ts';
import { compareBy, makeDemand } from './make-demand.ts';

const DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
const WINTER = [17, 15, 12, 8, 4, 2, 1.5, 1.5, 3, 8, 12, 16];
const near = (values: readonly number[]) => values.map((value) => expect.closeTo(value, 6));
const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
const demand = makeDemand(12_000, 2100);

/** Electricity at 30 p and gas at 8 p with 25 p a day, factors of 4 and 3 metered at H4, service of £150 and £90. */
const home = (change: HouseholdChange = {}) =>
  makeHousehold({
    ...change,
    machine: {
      spaceFactor: typed(4, 'measured'),
      waterFactor: typed(3, 'measured'),
      boundary: 'H4',
      ...change.machine,
    },
    prices: {
      electricityTariffId: 'e',
      gasTariffId: 'g',
      serviceHeatPumpGBP: typed(150),
      serviceGasGBP: typed(90),
      ...change.prices,
    },
    tariffs: [makeTariff('e', 30), makeTariff('g', 8, { fuel: 'gas', standingPencePerDay: 25 })],
    beside: EVERY_WAY,
  });
const resultOf = (id: string, change: HouseholdChange = {}, d: Demand = demand) =>
  compareBy(home(change), d).systems.find((system) => system.id === id)!;
const valuesOf = ({ inputs }: Working) =>
  inputs.map(({ name, value }) => [typeof name === 'string' ? name : name.code, value]);
const spoken = ({ rates }: SystemResult) => rates.map((rate) => ({ ...rate, name: sayTold(rate.name) }));
const winter = 1.281_551_566 * reference.spread.winter.value;

describe('a heat pump of 4 and 3', () => {
  const pump = resultOf('heat-pump');
  test('buys 3,000 and 700 kWh for £1,110 and costs £1,260', () => {
    expect(pump.bought.value).toBeCloseTo(3700, 6);
    expect(pump.split).toEqual({
      unitsPence: expect.closeTo(111_000, 6),
      standingPence: 0,
      servicePence: expect.closeTo(15_000, 6),
    });
    expect(pump.cost.value).toBeCloseTo(126_000, 6);
    expect(spoken(pump)).toEqual([{ name: 'electricity', kWh: expect.closeTo(3700, 6), pencePerKWh: 30 }]);
    expect([pump.ownElectricityKWh, pump.spaceEfficiency, pump.waterEfficiency]).toEqual([0, 4, 3]);
  });
  test('by the month: rooms by the winter, hot water by the days', () => {
    const kWh = DAYS.map((days, month) => (3000 * WINTER[month]!) / 100 + (700 * days) / 365);
    expect(pump.monthly.boughtKWh).toEqual(near(kWh));
    expect(pump.monthly.unitsPence).toEqual(near(kWh.map((one) => 30 * one)));
    expect(pump.monthly.servicePence).toEqual(near(DAYS.map((days) => (15_000 * days) / 365)));
    expect(pump.monthly.standingPence).toEqual(near(DAYS.map(() => 0)));
  });
  test('a unit of heat, carbon, and winters met one year in ten', () => {
    expect(pump.pencePerKWhHeat.value).toBeCloseTo(111_000 / 14_100, 9);
    expect(pump.pencePerKWhSpaceHeat).toBeCloseTo(30 / 4, 9);
    expect(pump.carbonKg.value).toBeCloseTo(3700 * reference.carbonKgPerKWh.electricity.value, 6);
    expect(pump.coldYearPence).toBeCloseTo(126_000 + 90_000 * winter, 3);
    expect(pump.mildYearPence).toBeCloseTo(126_000 - 90_000 * winter, 3);
  });
  test('the sums hold all of it', () => {
    expect(valuesOf(pump.bought.working)).toEqual([
      ['heat-for-rooms', 12_000],
      ['heat-for-water', 2100],
      ['factor-for-rooms', 4],
      ['factor-for-water', 3],
      ['bought-for-rooms', 3000],
      ['bought-for-water', 700],
    ]);
    expect(valuesOf(pump.cost.working)).toEqual([
      ['units-at', expect.closeTo(3700, 6)],
      ['price-at', 30],
      ['hours-of-rooms', expect.anything()],
      ['hours-of-water', expect.anything()],
      ['standing-charge', 0],
      ['service-of-year', 150],
    ]);
    expect(valuesOf(pump.pencePerKWhHeat.working)).toEqual([
      ['cost-of-units', expect.closeTo(111_000, 6)],
      ['heat', 14_100],
    ]);
    const rooms = pump.pencePerKWhHeat.working.steps![0]!;
    expect([valuesOf(rooms), rooms.result.value]).toEqual([
      [
        ['price-over-hours', expect.closeTo(30, 9)],
        ['factor-for-rooms', 4],
      ],
      expect.closeTo(7.5, 9),
    ]);
    expect(valuesOf(pump.carbonKg.working)).toEqual([
      ['bought-of', expect.closeTo(3700, 6)],
      ['carbon-of', reference.carbonKgPerKWh.electricity.value],
    ]);
  });
  test('beside a gas cooker the gas standing charge stays', () => {
    const { monthly, split, cost } = resultOf('heat-pump', { present: { cooksOnGas: true } });
    expect(monthly.standingPence).toEqual(near(DAYS.map((days) => 25 * days)));
    expect(split.standingPence).toBeCloseTo(365 * 25, 6);
    const [line] = cost.working.inputs.filter(({ name }) => (name as Told).code === 'standing-charge');
    expect(line).toMatchObject({ value: expect.closeTo(9125, 6), grade: 'measured' });
  });
});

describe('the gas boiler that is there, 90 %', () => {
  const change = { present: { efficiency: typed(0.9) } };
  const gas = resultOf('present', change);
  const { waterEfficiency } = gas;
  const mainKWh = 12_000 / 0.9 + 2100 / waterEfficiency;
  test('gas and 160 kWh of its pump and fan', () => {
    expect(gas.spaceEfficiency).toBe(0.9);
    expect(spoken(gas)).toEqual([
      { name: 'gas', kWh: expect.closeTo(mainKWh, 6), pencePerKWh: 8 },
      { name: 'electricity of pump and fan', kWh: expect.closeTo(160, 6), pencePerKWh: 30 },
    ]);
    expect(gas.cost.value).toBeCloseTo(8 * mainKWh + 30 * 160 + 365 * 25 + 9000, 5);
    expect(gas.ownElectricityKWh).toBeCloseTo(160, 9);
    const { gas: ofGas, electricity } = reference.carbonKgPerKWh;
    expect(gas.carbonKg.value).toBeCloseTo(mainKWh * ofGas.value + 160 * electricity.value, 6);
    expect(valuesOf(gas.carbonKg.working).map(([code]) => code)).toEqual([
      'bought-of',
      'carbon-of',
      'electricity-beside',
      'carbon-of',
    ]);
    expect(gas.carbonKg.working.inputs[0]!.value).toBeCloseTo(mainKWh, 6);
    expect(gas.coldYearPence - gas.cost.value).toBeCloseTo((8 * 12_000 * winter) / 0.9, 3);
  });
  test('what is paid whatever is used: 365 days of 25 p and the service, none of it moved by the winter', () => {
    const { terms } = compareBy(home(change), demand).priced.find(({ plan }) => plan.id === 'present')!;
    expect([terms.fixedPence, terms.servicePence]).toEqual([expect.closeTo(9125, 9), expect.closeTo(9000, 9)]);
    expect([terms.spaceKWh, terms.waterKWh]).toEqual(near([12_000 / 0.9, 2100 / waterEfficiency]));
    expect(terms.spacePence + terms.waterPence).toBeCloseTo(8 * mainKWh, 5);
    expect([terms.backupPence, terms.steadyPence, terms.electricWaterPence, terms.ownElectricityPence]).toEqual(
      near([0, 0, 0, 4800]),
    );
  });
  test('its pump runs in proportion below 5,000 kWh of heat', () => {
    const little = (heatKWh: number) => resultOf('present', change, makeDemand(heatKWh - 500, 500)).ownElectricityKWh;
    expect([5000, 2500, 6000].map(little)).toEqual(near([160, 80, 160]));
  });
  test('an immersion heater beside it makes the hot water at 30 p', () => {
    const found = resultOf('present', { present: { efficiency: typed(0.9), hotWaterFrom: 'immersion' } });
    expect(found.rates.map(({ kWh }) => kWh)).toEqual(near([12_000 / 0.9, 160 + 2100]));
    expect([found.waterEfficiency, found.ownElectricityKWh]).toEqual([1, expect.closeTo(2260, 6)]);
    expect(found.cost.value).toBeCloseTo((8 * 12_000) / 0.9 + 30 * 2260 + 365 * 25 + 9000, 5);
    const ofWater = found.bought.working.inputs.filter(({ name }) => (name as Told).code === 'bought-for-water');
    expect(ofWater[0]!.value).toBe(2100);
    const { gas: ofGas, electricity } = reference.carbonKgPerKWh;
    expect(found.carbonKg.value).toBeCloseTo((12_000 / 0.9) * ofGas.value + 2260 * electricity.value, 6);
    const hours = valuesOf(found.cost.working).filter(([code]) => String(code).startsWith('hours'));
    expect(hours).toEqual([['hours-of-water', { code: 'water-drawn' }]]);
  });
  test.each([
    [1.1, true],
    [1.101, false],
    [0.001, true],
    [0, false],
    [-0.5, false],
  ])('an efficiency of %d is taken: %s', (value, taken) => {
    const { questions, systems } = compareBy(home({ present: { efficiency: typed(value) } }), demand);
    const refused = questions.filter(({ code }) => code === 'efficiency-refused').map(({ data }) => data);
    expect(refused).toEqual(taken ? [] : [{ found: value, high: 1.1 }]);
    const table = reference.efficiency['gas-condensing'].space.middle;
    expect(systems.find(({ id }) => id === 'present')!.spaceEfficiency).toBe(taken ? value : table);
  });
});

describe('how sure each is, and how far it strays', () => {
  test('a cost is as sure as its prices: those of the gas, those of the electricity beside it', () => {
    const gradesOf = (id: string, prices: HouseholdChange['prices']) => {
      const found = compareBy(makeHousehold({ ...home(), prices }), demand).systems.find((system) => system.id === id)!;
      const lines = found.cost.working.inputs.filter(({ name }) => (name as Told).code === 'price-at');
      return [found.bought.grade, found.cost.grade, ...lines.map(({ grade }) => grade)];
    };
    const own = { electricityTariffId: 'e' };
    expect(gradesOf('heat-pump', own)).toEqual(['estimated', 'estimated', 'measured']);
    expect(gradesOf('heat-pump', {})).toEqual(['estimated', 'assumed', 'assumed']);
    expect(gradesOf('present', own).slice(1)).toEqual(['assumed', 'assumed', 'measured']);
    expect(gradesOf('present', { gasTariffId: 'g' }).slice(2)).toEqual(['measured', 'assumed']);
    expect(gradesOf('oil', { oilPencePerLitre: typed(70, 'measured') }).slice(2)).toEqual(['measured', 'assumed']);
    expect(gradesOf('oil', own).slice(2)).toEqual(['assumed', 'measured']);
  });
  test('the lines beside the factors stand in what is bought', () => {
    const { bought } = resultOf('heat-pump', { machine: { boundary: 'H1' } });
    const codes = valuesOf(bought.working).map(([code]) => code);
    expect(codes.slice(6)).toEqual(['source-pump-line', 'pasteurisation-line', 'circulator-line']);
    expect(sum(bought.working.inputs.slice(4).map(({ value }) => Number(value)))).toBeCloseTo(bought.value, 6);
  });

  const panels = (d: Demand, grade: 'measured' | 'estimated' | null = 'estimated', winter?: 'typical' | 'cold') => {
    const efficiency = grade ? { efficiency: typed(0.9, grade) } : {};
    const household = home({ present: { system: 'direct-electric', ...efficiency } });
    const more = { draws: 4096, ...(winter ? { whatIf: { winter } } : {}) };
    const { low, high } = compareBy(household, d, more).systems.find(({ id }) => id === 'present')!.bought;
    return (Math.log(high / low) / (2 * 1.281_551_566)) ** 2;
  };
  const rooms = makeDemand(12_000, 0);
  test('an efficiency strays as one of its grade does', () => {
    const [surely, less] = [panels(rooms, 'measured'), panels(rooms, 'estimated')];
    // Drawn years are a sample: a fifth of so small a difference is theirs.
    const told = (less - surely) / (EFFICIENCY_ERROR.estimated ** 2 - EFFICIENCY_ERROR.measured ** 2);
    expect(Math.abs(told - 1)).toBeLessThan(0.2);
    const { low, high } = reference.efficiency['direct-electric'].space;
    const ofTable = (Math.log(high / low) / (2 * 1.281_551_566)) ** 2;
    expect(Math.abs(panels(rooms, null) - surely - ofTable + EFFICIENCY_ERROR.measured ** 2)).toBeLessThan(0.0004);
  });
  test('what the record gave takes no part in what the same system buys, by its weight among the estimates', () => {
    const { working } = demand.space;
    const one = (way: 'record' | 'certificate') => ({
      way,
      spaceKWh: 12_000,
      spaceErrorKWh: 900,
      grade: 'measured' as const,
      working,
    });
    const by = (chosen: Demand['chosen'], ...ways: ('record' | 'certificate')[]) =>
      panels({ ...rooms, chosen, estimates: ways.map(one) });
    const [none, whole] = [by('together', 'certificate'), by('record', 'record', 'certificate')];
    const squared = EFFICIENCY_ERROR.estimated ** 2;
    // Heat of the variance h² that holds w of the efficiency's deviation e, over that efficiency: h² + e² − 2 w e².
    expect(Math.abs((none - whole) / squared - 2)).toBeLessThan(0.2);
    expect(Math.abs((none - by('together', 'record', 'certificate')) / squared - 1)).toBeLessThan(0.2);
    expect(by('certificate', 'record', 'certificate')).toBeCloseTo(none, 9);
  });
  test('a winter that was chosen is no longer unknown', () => {
    expect(panels(rooms, 'estimated', 'typical')).toBe(panels(rooms));
    expect(panels(rooms) - panels(rooms, 'estimated', 'cold')).toBeGreaterThan(
      0.5 * reference.spread.winter.value ** 2,
    );
  });
});

describe('others', () => {
  test('panel heaters: heat is what is bought, and none of it is serviced', () => {
    const { bought, cost, split } = resultOf('direct-electric');
    const { space, water } = reference.efficiency['direct-electric'];
    expect(bought.value).toBeCloseTo(12_000 / space.middle + 2100 / water.middle, 6);
    expect(cost.value).toBeCloseTo(30 * bought.value, 5);
    expect([split.standingPence, split.servicePence]).toEqual([0, 0]);
  });
  test('the other kind of machine has the factor of the field for both', () => {
    const air = resultOf('air-source');
    const { middle } = reference.fieldFactor.air;
    expect([air.spaceEfficiency, air.waterEfficiency]).toEqual([middle, middle]);
    expect(air.bought.value).toBeCloseTo(14_100 / middle, 6);
    expect(air.cost.value).toBeCloseTo((30 * 14_100) / middle + 15_000, 5);
    expect(valuesOf(air.bought.working).slice(2, 4)).toEqual([
      ['factor-for-rooms', middle],
      ['factor-for-water', middle],
    ]);
    const ground = resultOf('ground-source', { machine: { source: 'air' } });
    expect(ground.spaceEfficiency).toBe(reference.fieldFactor.ground.middle);
  });
  test('the other kind of machine moves with the flow asked for, its hot water does not', () => {
    const at = (machine: HouseholdChange['machine'], flowC: number) => {
      const { systems } = compareBy(home({ machine }), demand, { whatIf: { flowC } });
      const { spaceEfficiency, waterEfficiency } = systems.find(({ id }) => id === 'air-source')!;
      return [spaceEfficiency, waterEfficiency];
    };
    const { middle } = reference.fieldFactor.air;
    // 1.32 for 20 K of design flow: from 45 °C as typed, else from the usual 50 °C of radiators or 35 °C of a floor.
    expect(at({}, 35)).toEqual([expect.closeTo(middle * 1.32 ** 0.5, 9), middle]);
    expect(at({ flowC: undefined }, 40)).toEqual([expect.closeTo(middle * 1.32 ** 0.5, 9), middle]);
    expect(at({ flowC: undefined, emitters: 'floor' }, 35)).toEqual([middle, middle]);
  });
  test('a machine that stands there already is the one without what is asked of the new one', () => {
    const household = home({ present: { system: 'heat-pump' } });
    const of = (whatIf?: { flowC: number }) =>
      reckonMachine({ household, demand, reference, ...(whatIf ? { whatIf } : {}) });
    const [machine, presentMachine] = [of({ flowC: 35 }), of()];
    const prices = choosePrices({ household, reference, asOf: '2026-11-25' });
    const plansOf = (input: object) =>
      planSystems({ household, demand, machine, prices, reference, ...input }, []).plans;
    expect(plansOf({ presentMachine })[1]).toMatchObject({ id: 'present', kind: 'heat-pump', spaceEfficiency: 4 });
    expect(plansOf({})[1]!.spaceEfficiency).toBeCloseTo(4 * 1.32 ** 0.5, 9);
  });
  test('a designed machine has its cost as designed beside it', () => {
    const pump = resultOf('heat-pump', { machine: { spaceFactor: typed(4), waterFactor: typed(3) } });
    const designed = 30 * (12_000 / 4 + 2100 / 3) + 15_000;
    expect(pump.asDesigned!.costPence).toBeCloseTo(designed, 5);
    expect(pump.cost.value).toBeGreaterThan(designed);
    expect(resultOf('heat-pump')).not.toHaveProperty('asDesigned');
  });
  test('with no heat for rooms their unit of heat costs nothing, and its price is that of all hours', () => {
    const pump = resultOf('heat-pump', {}, makeDemand(0, 2100));
    expect([pump.pencePerKWhSpaceHeat, pump.pencePerKWhHeat.value]).toEqual([0, expect.closeTo(10, 9)]);
    expect(pump.pencePerKWhHeat.working.steps![0]!.inputs[0]!.value).toBeCloseTo(30, 9);
  });
  test('prices of the moment: over the machine’s hours, over a boiler’s; of what nobody buys the price of the rest', () => {
    const prices = compareBy(home(), demand, { whatIf: { electricityShare: 1.5, fuelShare: 2 } });
    expect([prices.electricityPencePerKWh, prices.gasPencePerKWh]).toEqual(near([45, 16]));
    const times = { name: 'night', pencePerKWh: 4, times: [{ from: '00:00', to: '12:00' }] };
    const two = {
      ...home(),
      tariffs: [
        makeTariff('e', 30),
        makeTariff('g', [times, { name: 'day', pencePerKWh: 12, times: 'rest' }], { fuel: 'gas' }),
      ],
    };
    const found = compareBy(two, demand);
    const gas = found.systems
      .find(({ id }) => id === 'present')!
      .rates.filter(({ name }) => /night|day/.test(sayTold(name)));
    const mean = sum(gas.map(({ kWh, pencePerKWh }) => kWh * pencePerKWh)) / sum(gas.map(({ kWh }) => kWh));
    expect(found.gasPencePerKWh).toBeCloseTo(mean, 9);
    expect(mean).toBeLessThan(11);
    const noGas = makeHousehold({ ...home(), present: { system: 'storage' }, home: { gasGrid: false }, beside: {} });
    expect(compareBy(noGas, demand, { whatIf: { fuelShare: 2 } }).gasPencePerKWh).toBeCloseTo(16, 9);
  });
});

test.each([
  [{ low: 80, high: 130 }, 80, 130],
  [{ low: 105, high: 130 }, 100, 130],
  [{ low: 80, high: 95 }, 80, 100],
  [null, 100, 100],
])('a figure of 100 with the points %j lies from %d to %d', (points, low, high) => {
  const rest = { unit: 'p', grade: 'measured' as const, working: {} as Working };
  expect(withRange(100, points, rest)).toEqual({ value: 100, low, high, ...rest });
});

describe('held against one other, by hand', () => {
  interface Made {
    readonly cost: number;
    readonly years?: readonly number[];
    readonly terms?: Partial<Side['priced']['terms']>;
    readonly unitsPence?: number;
    readonly meanPencePerKWh?: number;
  }
  const side = ({ cost, years, terms = {}, unitsPence = 0, meanPencePerKWh = 0 }: Made, id = 'oil') => {
    const none = {
      spaceKWh: 0,
      waterKWh: 0,
      backupKWh: 0,
      steadyKWh: 0,
      electricWaterKWh: 0,
      spacePence: 0,
      waterPence: 0,
    };
    const rest = { backupPence: 0, steadyPence: 0, fixedPence: 0, servicePence: 0, carrier: 'gas' };
    return {
      priced: { plan: { id, kind: id }, terms: { ...none, ...rest, ...terms }, meanPencePerKWh },
      result: {
        id,
        cost: { value: cost, grade: 'measured', working: { title: id, inputs: [], steps: [] } },
        split: { unitsPence },
      },
      costPence: years ? Float64Array.from(years) : null,
    } as unknown as Side;
  };
  // 3,000 and 1,000 kWh of gas for £200 and £80 make 3,500 kWh of heat, all of it by gas.
  const boiler = { spaceKWh: 3000, waterKWh: 1000, spacePence: 20_000, waterPence: 8000 };
  const pumpTerms = { carrier: 'electricity' as const, fixedPence: 500, servicePence: 1500 };
  const pump = (cost = 30_000) =>
    side({ cost, terms: pumpTerms, unitsPence: 28_000, meanPencePerKWh: 28 }, 'heat-pump');
  const heat = makeDemand(2500, 1000);
  const hold = (other: Side, one = pump(), d: Demand = heat) => holdAgainst(one, other, d, 3.2);

  test('break-even by units, by all costs, and by prices', () => {
    const found = hold(side({ cost: 37_000, terms: boiler }));
    expect(found.saving.value).toBe(7000);
    // 7 p a unit of gas, 87.5 % of it heat.
    expect(found.breakEvenFactor).toBeCloseTo((28 / 7) * 0.875, 12);
    expect(found.priceRatio).toBeCloseTo(4, 12);
    expect(found.breakEvenPriceRatio).toBeCloseTo(3.2 / 0.875, 12);
    // £350 are left for the pump's units once its own £20 stand: at 3.2 they are £280.
    expect(found.breakEvenFactorAllCosts).toBeCloseTo((3.2 * 28_000) / 35_000, 12);
    expect(found.saving.working.inputs.map(({ value }) => value)).toEqual([37_000, 30_000]);
    expect(found.saving.working.steps!.map(({ title }) => title)).toEqual(['oil', 'heat-pump']);
    expect(found.saving.working.steps![0]).not.toHaveProperty('steps');
  });
  test('resistance and standing parts count as fuel, hot water by electricity beside it does not count as its heat', () => {
    const terms = {
      ...boiler,
      backupKWh: 500,
      backupPence: 3500,
      steadyKWh: 500,
      steadyPence: 3500,
      electricWaterKWh: 1000,
    };
    const found = hold(side({ cost: 37_000, terms }));
    expect(found.priceRatio).toBeCloseTo(28 / 7, 12);
    expect(found.breakEvenFactor).toBeCloseTo((28 / 7) * (2500 / 5000), 12);
  });
  test('against electric heating there is a factor and no ratio of prices', () => {
    const found = hold(side({ cost: 37_000, terms: { ...boiler, carrier: 'electricity' } }));
    expect([found.priceRatio, found.breakEvenPriceRatio]).toEqual([null, null]);
    expect(found.breakEvenFactor).toBeCloseTo(3.5, 12);
  });
  const none = { breakEvenFactor: null, breakEvenFactorAllCosts: null, priceRatio: null, breakEvenPriceRatio: null };
  test.each<[string, () => ReturnType<typeof hold>]>([
    ['no heat', () => hold(side({ cost: 1, terms: boiler }), pump(), makeDemand(0, 0))],
    [
      'all heat by electricity beside the fuel',
      () => hold(side({ cost: 1, terms: { ...boiler, electricWaterKWh: 3500 } })),
    ],
    ['nothing bought', () => hold(side({ cost: 1 }))],
    ['a fuel that costs nothing', () => hold(side({ cost: 1, terms: { ...boiler, spacePence: 0, waterPence: 0 } }))],
    [
      'free electricity',
      () => hold(side({ cost: 1, terms: boiler }), side({ cost: 1, terms: pumpTerms }, 'heat-pump')),
    ],
  ])('none with %s', (_, found) => expect(found()).toMatchObject(none));
  test('no factor by all costs where the other costs no more than the pump’s standing charge and service', () => {
    expect(hold(side({ cost: 2000, terms: boiler })).breakEvenFactorAllCosts).toBeNull();
    expect(hold(side({ cost: 2000.5, terms: boiler })).breakEvenFactorAllCosts).toBeCloseTo((3.2 * 28_000) / 0.5, 6);
  });
  test.each([
    [37_000, 1, 'less'],
    [30_000, 0.5, 'about-same'],
    [29_999.5, 0, 'more'],
  ])('without possible years, a cost of %d: chance %d, %s', (cost, chance, verdict) => {
    const found = hold(side({ cost, terms: boiler }));
    expect([found.chanceLess, found.verdict]).toEqual([chance, verdict]);
    expect(found.twenty).toEqual(new Array<number>(20).fill(cost - 30_000));
    expect([found.saving.low, found.saving.high]).toEqual([cost - 30_000, cost - 30_000]);
  });
  test('with them: the chance, twenty futures, and the 10 and 90 % points, each year against itself', () => {
    // Forty years, of which the pump saves −500, −400 … 3,400 in whichever order.
    const savings = Array.from({ length: 40 }, (_, i) => 100 * ((i * 7) % 40) - 500);
    const pumpYears = savings.map((_, i) => 30_000 + 37 * i);
    const one = { ...pump(), costPence: Float64Array.from(pumpYears) };
    const found = hold(
      side({ cost: 31_450, terms: boiler, years: savings.map((pence, i) => pumpYears[i]! + pence) }),
      one,
    );
    expect(found.chanceLess).toBeCloseTo(34.5 / 40, 12);
    // Of forty in order the 10 % point lies half-way between the fourth and the fifth.
    expect([found.saving.low, found.saving.high]).toEqual(near([-150, 3050]));
    expect(found.twenty).toEqual(near(Array.from({ length: 20 }, (_, k) => -450 + 200 * k)));
  });
});

describe('what is spoken of together', () => {
  const systemsOf = (...ids: string[]) => larchRise().systems.filter(({ id }) => ids.includes(id));
  const beside = (systems: SystemResult[]) => findSideBySide({ ...larchRise(), systems } as Appraisal);
  test('the present one, else the cheapest of the others, with what the heat pump saves against it', () => {
    const all = beside(larchRise().systems);
    expect([all.pump.id, all.present?.id, all.beside?.id, all.versus?.against]).toEqual([
      'heat-pump',
      'present',
      'present',
      'present',
    ]);
    const without = beside(systemsOf('direct-electric', 'oil', 'gas-condensing', 'heat-pump'));
    const cheapest = systemsOf('direct-electric', 'oil', 'gas-condensing').reduce((a, b) =>
      b.cost.value < a.cost.value ? b : a,
    );
    expect([without.present, without.beside?.id, without.versus?.against]).toEqual([
      undefined,
      cheapest.id,
      cheapest.id,
    ]);
    const alone = beside(systemsOf('heat-pump'));
    expect([alone.beside, alone.versus]).toEqual([undefined, undefined]);
    expect(() => beside(systemsOf('present'))).toThrow(/without a heat pump/);
  });
  test.each([
    [false, true],
    [true, false],
  ])('a record of its own: left out %s, there %s', (withoutRecord, hasRecord) =>
    expect(findSideBySide(larchRise({ withoutRecord })).hasRecord).toBe(hasRecord),
  );
  test('in a picture: the heat pump, the present one, then what the home could have, as households ask', () => {
    const household = { ...larchRiseHousehold(), present: { system: 'gas-old' as const } };
    const ids = (most: number, beside: Parameters<typeof makeHousehold>[0] = {}) =>
      pickForPicture(larchRise(), { ...household, ...beside } as typeof household, most).map(({ id }) => id);
    // A gas home: no oil, and no electric heaters where there were none.
    expect(ids(9)).toEqual(['heat-pump', 'present', 'gas-condensing']);
    expect(ids(2)).toEqual(['heat-pump', 'present']);
    expect(ids(9, { beside: EVERY_WAY })).toEqual(['heat-pump', 'present', 'gas-condensing', 'oil', 'direct-electric']);
    // What is there already does not stand there twice.
    const twice = larchRise().systems.map((one) => (one.id === 'present' ? { ...one, kind: 'gas-condensing' } : one));
    expect(pickForPicture({ systems: twice.toReversed() }, household, 9).map(({ id }) => id)).toEqual([
      'heat-pump',
      'present',
    ]);
  });
});

describe('where hours matter: 10 p from 00:30 to 07:30, 30 p else', () => {
  const night = makeTariff('e', [
    { name: 'night', pencePerKWh: 10, times: [{ from: '00:30', to: '07:30' }] },
    { name: 'day', pencePerKWh: 30, times: 'rest' },
  ]);
  const nightly = (change: HouseholdChange = {}) => ({ ...home(change), tariffs: [night, home().tariffs[1]!] });
  const shareAtNight = (id: string, change: HouseholdChange, d: Demand) => {
    const found = compareBy(nightly(change), d).systems.find((system) => system.id === id)!;
    const [first, second] = found.rates.filter(({ name }) => /night|day/.test(sayTold(name)));
    return first!.kWh / (first!.kWh + second!.kWh);
  };
  // Weights of the half-hours by hand: day-profiles names the hours, common practice.
  test.each<[string, string, HouseholdChange, Demand, number]>([
    // 00:30 to 06:00 at 0.75 and 06:00 to 07:30 at 1.1, of 47.8.
    ['rooms by a heat pump', 'heat-pump', {}, makeDemand(8000, 0), (11 * 0.75 + 3 * 1.1) / 47.8],
    // 04:00 to 06:00 of that and 13:00 to 15:00.
    ['hot water by schedule', 'heat-pump', {}, makeDemand(0, 2000), 0.5],
    [
      'hot water by night, a fifth of it by day',
      'heat-pump',
      { hotWater: { hours: 'night' } },
      makeDemand(0, 2000),
      0.8 + 0.2 * (3 / 14),
    ],
    ['hot water as it is drawn', 'heat-pump', { hotWater: { hours: 'drawn' } }, makeDemand(0, 2000), 3 / 14],
    // 06:00 to 07:30 at 1.5, of 6 × 1.5 + 14 × 0.7 + 13 × 1.3.
    ['panel heaters', 'direct-electric', {}, makeDemand(8000, 0), (3 * 1.5) / (6 * 1.5 + 14 * 0.7 + 13 * 1.3)],
    ['storage heaters, a tenth in the evening', 'storage', {}, makeDemand(8000, 0), 0.9],
  ])('%s', (_, id, change, d, share) => expect(Math.abs(shareAtNight(id, change, d) - share)).toBeLessThan(0.002));
  test('storage heaters make their hot water at night, on one price all day as well', () => {
    const storage = { system: 'storage', hotWaterFrom: 'same' } as const;
    const hoursOn = (electricityTariffId: string | undefined, storageTariffId: string | undefined) =>
      compareBy(nightly({ present: storage, prices: { electricityTariffId, storageTariffId } }), demand).priced.find(
        ({ plan }) => plan.id === 'present',
      )!.waterHours;
    expect([hoursOn('e', undefined), hoursOn(undefined, undefined)]).toEqual(['night', 'night']);
    const even = { ...nightly({ present: storage, prices: { storageTariffId: 'flat' } }) };
    const tariffs = [...even.tariffs, makeTariff('flat', 20)];
    const { priced } = compareBy({ ...even, tariffs }, demand);
    expect(priced.find(({ plan }) => plan.id === 'present')!.waterHours).toBe('night');
  });
  test('standby runs by day and night alike', () => {
    const { rates } = compareBy(
      nightly({ machine: { spaceFactor: typed(4), waterFactor: typed(3), boundary: 'H3' } }),
      makeDemand(0, 0.001),
    ).systems[0]!;
    expect(rates[0]!.kWh / (rates[0]!.kWh + rates[1]!.kWh)).toBeCloseTo(7 / 24, 2);
  });
  test('the mean price is that of the machine’s own hours', () => {
    const { electricityPencePerKWh, systems } = compareBy(nightly(), demand);
    const { split, bought } = systems[0]!;
    expect(electricityPencePerKWh).toBeCloseTo(split.unitsPence / bought.value, 9);
    expect(sum(systems[0]!.rates.map(({ kWh, pencePerKWh }) => kWh * pencePerKWh))).toBeCloseTo(split.unitsPence, 5);
  });
});
