import { describe, expect, test } from 'vitest';
import type { FittedRecord } from '../../../src/model/demand/fit-record.ts';
import type { HotWaterDemand } from '../../../src/model/demand/hot-water.ts';
import { presentEfficiency } from '../../../src/model/demand/present-efficiency.ts';
import type { HeatRecord } from '../../../src/model/demand/record.ts';
import { questionsOfRecord } from '../../../src/model/demand/record-questions.ts';
import type { TypicalUse } from '../../../src/model/demand/record-use.ts';
import { estimateOfRecord } from '../../../src/model/demand/record-working.ts';
import type { BaseSplit } from '../../../src/model/demand/split-base.ts';
import { factorsAtMeter } from '../../../src/model/heat-pump/field-step.ts';
import type { Series } from '../../../src/model/shapes/evidence.ts';
import type { Household } from '../../../src/model/shapes/household.ts';
import { reference } from '../../../src/reference/index.ts';
import { daySeries, household, typed, year } from './fixtures.ts';

const working = { title: '', formula: '', inputs: [], result: { value: 0, unit: '' } };
const water: HotWaterDemand = { monthlyKWh: [], kWh: 2400, errorKWh: 700, grade: 'estimated', people: 2.449, working };
const split: BaseSplit = { waterKWh: 2000, waterErrorKWh: 300, besideKWh: 700, baseHeatKWh: 2500, leftoverKWh: 500 };
const use: TypicalUse = {
  spaceKWh: 10_000,
  spaceErrorKWh: 600,
  baseKWh: 3400,
  baseErrorKWh: 200,
  baseC: 15,
  weatherShare: 0,
  by: 'signature',
  degreeDays: 2000,
};
const record: HeatRecord = {
  meter: 'fuel',
  carrier: 'gas',
  series: [daySeries('a', 'gas', 'import', '2024-01-01', []), daySeries('b', 'gas', 'import', '2024-01-01', [])],
  spans: [
    { first: 19_723, days: 30, kWh: 2000, estimated: true }, // 1 January 2024
    { first: 19_753, days: 31, kWh: 1500, estimated: false },
  ],
  deliveries: false,
  leftOut: 0,
};
const fitted = (r2 = 0.9, slope = 3, estimatedShare = 0, weather: 'own' | 'typical' = 'own') =>
  ({
    weather: { weather, period: 'day' },
    signature: { line: { r2, slope }, cvRmse: 0.4 },
    days: 61,
    kWh: 3500,
    estimatedShare,
  }) as unknown as FittedRecord;
const ofBills = (cvRmse: number): FittedRecord => {
  const { signature, ...rest } = fitted();
  return { ...rest, weather: { ...rest.weather, period: 'period' }, signature: { ...signature!, cvRmse } };
};

describe('what is odd about a record', () => {
  const ask = (
    of: {
      record?: Partial<HeatRecord>;
      fitted?: FittedRecord;
      use?: Partial<TypicalUse>;
      split?: BaseSplit;
      water?: HotWaterDemand;
    } = {},
    home: Household['home'] = {},
  ) =>
    questionsOfRecord(
      household({ home }),
      { ...record, ...of.record },
      of.fitted ?? fitted(),
      { ...use, ...of.use },
      of.split ?? split,
      of.water ?? water,
      year,
    ).map(({ code, data, field }) => ({ code, data, ...(field ? { field } : {}) }));
  const left = (leftoverKWh: number, baseHeatKWh: number): BaseSplit => ({ ...split, leftoverKWh, baseHeatKWh });
  test.each([
    ['nothing', {}, []],
    ['periods left out', { record: { leftOut: 2 } }, [{ code: 'periods-left-out', data: { count: 2 } }]],
    [
      'estimated readings',
      { fitted: fitted(0.9, 3, 0.49) },
      [{ code: 'estimated-readings', data: { share: 0.49, count: 1 } }],
    ],
    ['a day in a year where two bills meet', { fitted: fitted(0.9, 3, 1 / 366) }, []],
    [
      'weather that stands in',
      { fitted: fitted(0.9, 3, 0, 'typical') },
      [{ code: 'typical-weather-stands-in', data: { region: year.region.name, days: 61 } }],
    ],
    ['a total', { use: { by: 'total' } }, [{ code: 'total-only', data: { days: 61, deliveries: 0 } }]],
    // Two deliveries of bottles, taken for litres.
    [
      'a total that would not heat the water',
      { use: { by: 'total' }, split: left(0, 999) },
      [
        { code: 'total-only', data: { days: 61, deliveries: 0 } },
        { code: 'record-below-hot-water', data: { people: 2.4 } },
      ],
    ],
    [
      'deliveries',
      { use: { by: 'total' }, record: { deliveries: true } },
      [{ code: 'total-only', data: { days: 61, deliveries: 3 } }],
    ],
    [
      'no slope',
      { fitted: fitted(0, 0) },
      [{ code: 'no-heating-in-record', data: { carrier: 'gas', r2: 0 }, field: 'present.system' }],
    ],
    [
      'further meters alone',
      { record: { series: [{ beside: 'added' } as Series] } },
      [{ code: 'further-meters-alone', data: { carrier: 'gas' } }],
    ],
    ['a poor line', { fitted: fitted(0.39) }, [{ code: 'record-scatter', data: { r2: 0.39, cvRmse: 0.4 } }]],
    ['one good enough', { fitted: fitted(0.4) }, []],
    ['bills that stray as those of one home do', { fitted: ofBills(0.3) }, []],
    [
      'bills that stray further',
      { fitted: ofBills(0.31) },
      [{ code: 'record-uneven', data: { period: 'period', cvRmse: 0.31 } }],
    ],
    ['no line at all', { fitted: { ...fitted(), signature: undefined } as unknown as FittedRecord }, []],
    [
      'the whole house',
      { record: { meter: 'whole-house' } },
      [{ code: 'whole-house-meter', data: { baseKWh: 3400, waterKWh: 2000 } }],
    ],
    [
      'the whole house, water elsewhere',
      { record: { meter: 'whole-house' }, split: { ...split, waterKWh: undefined } as unknown as BaseSplit },
      [{ code: 'whole-house-meter', data: { baseKWh: 3400, waterKWh: 0 } }],
    ],
    [
      '801 kWh of 2,200 left over',
      { split: left(801, 2200) },
      [{ code: 'base-unexplained', data: { leftoverKWh: 801, baseKWh: 3400, waterKWh: 2000 } }],
    ],
    ['800 kWh', { split: left(800, 2200) }, []],
    ['less than 35 in 100', { split: left(1000, 3000) }, []],
    ['35 in 100', { split: left(1050, 3000) }, []],
    [
      'a little more',
      { split: left(1051, 3000) },
      [{ code: 'base-unexplained', data: { leftoverKWh: 1051, baseKWh: 3400, waterKWh: 2000 } }],
    ],
    [
      'much left over of a total',
      { use: { by: 'total' }, split: left(2000, 3000) },
      [{ code: 'total-only', data: { days: 61, deliveries: 0 } }],
    ],
    // 2,400 kWh of hot water less twice 700.
    [
      'too little for hot water',
      { split: left(0, 999) },
      [
        {
          code: 'base-below-hot-water',
          data: { baseHeatKWh: 999, predictedKWh: 2400, people: 2.4 },
          field: 'home.people',
        },
      ],
    ],
    ['just enough', { split: left(0, 1000) }, []],
    [
      'too little, but the water is on another meter',
      { split: { ...left(0, 999), waterKWh: undefined } as unknown as BaseSplit },
      [],
    ],
  ] as const)('%s', (_name, of, expected) => expect(ask(of)).toEqual(expected));
  test('people that were counted are not asked for', () => {
    expect(ask({ split: left(0, 999) }, { people: typed(2) })[0]).not.toHaveProperty('field');
  });
});

describe('the record’s estimate', () => {
  const efficiency = {
    space: { value: 0.84, error: 0.03, grade: 'measured', origin: '' },
    water: { value: 0.7, error: 0.08, grade: 'estimated', origin: '' },
  } as const;
  const estimate = (
    of: {
      fitted?: FittedRecord;
      use?: Partial<TypicalUse>;
      split?: BaseSplit;
      record?: Partial<HeatRecord>;
      grade?: 'measured' | 'estimated';
    } = {},
  ) =>
    estimateOfRecord(
      { ...record, ...of.record },
      of.fitted ?? fitted(),
      { ...use, ...of.use },
      { split: of.split ?? split, water },
      { ...efficiency, space: { ...efficiency.space, grade: of.grade ?? 'measured' } },
      reference,
    );
  test('heat is use × efficiency, both errors by squares; hot water as it was split off', () => {
    expect(estimate()).toMatchObject({
      way: 'record',
      spaceKWh: 8400,
      spaceErrorKWh: expect.closeTo(Math.hypot(600 * 0.84, 8400 * 0.03), 9),
      waterKWh: 2000,
      waterErrorKWh: 300,
      grade: 'measured',
    });
    expect(estimate({ split: { ...split, waterKWh: undefined } as unknown as BaseSplit })).not.toHaveProperty(
      'waterKWh',
    );
  });
  test.each([
    ['a total', { use: { by: 'total' as const } }],
    ['weather that stands in', { fitted: fitted(0.9, 3, 0, 'typical') }],
    ['estimated readings', { fitted: fitted(0.9, 3, 0.1) }],
    ['an efficiency that was not measured', { grade: 'estimated' as const }],
  ])('%s makes it estimated', (_name, of) => expect(estimate(of).grade).toBe('estimated'));
  test('its working: slope × degree days, or the total; from the first day to the last', () => {
    const of = (working: ReturnType<typeof estimate>['working'], step: number) => working.steps![step]!;
    const bySlope = of(estimate().working, 0);
    expect(bySlope.inputs.map(({ value }) => value)).toEqual([5, 2000, reference.spread.habits.value]);
    expect(bySlope).toMatchObject({
      result: { value: 10_000 },
      inputs: [
        {
          grade: 'measured',
          origin: { data: { names: 'a, b', kWh: 3500, from: { on: '2024-01-01' }, to: { on: '2024-03-01' } } },
        },
        {},
        {},
      ],
    });
    expect(bySlope.source).toBeDefined();
    const byTotal = of(estimate({ use: { by: 'total' } }).working, 0);
    expect(byTotal.inputs.map(({ value }) => value)).toEqual([3500, 2000, reference.spread.habits.value]);
    expect(byTotal.source).toBeUndefined();
    const warm = of(estimate({ use: { degreeDays: 0, spaceKWh: 0 } }).working, 0);
    expect(warm.inputs[0]!.value).toBe(3500);
    for (const one of [{ fitted: fitted(0.9, 3, 0.1) }, { record: { deliveries: true } }])
      expect(of(estimate(one).working, 0).inputs[0]!.grade).toBe('estimated');
    expect(of(estimate().working, 1).inputs.map(({ value }) => value)).toEqual([2400, 3400, 700, 0.7, 500]);
    expect(of(estimate().working, 1).result.value).toBe(2000);
    expect(
      of(estimate({ split: { ...split, waterKWh: undefined } as unknown as BaseSplit }).working, 1).result.value,
    ).toBe(0);
  });
});

describe('efficiency of what heats the home', () => {
  const of = (
    present: Household['present'],
    machine: Partial<Household['machine']> = {},
    meter: 'fuel' | 'heat' | 'heat-pump' = 'fuel',
  ) => presentEfficiency(household({ present, machine: { source: 'ground', ...machine } }), meter, reference);
  /** 10 and 90 % points as a share of the middle. */
  const share = ({ low, middle, high }: { low: number; middle: number; high: number }) =>
    (high - low) / 2 / 1.2816 / middle;
  const gas = reference.efficiency['gas-condensing'];
  test('a heat meter counts heat, give or take 2 %', () => {
    for (const one of Object.values(of({ system: 'oil' }, {}, 'heat')))
      expect(one).toMatchObject({ value: 1, error: 0.02, grade: 'measured' });
  });
  test.each([
    ['gas-condensing', gas],
    ['other', gas],
    ['oil', reference.efficiency.oil],
  ] as const)('%s by the table', (system, row) => {
    const { space, water } = of({ system });
    expect(space).toMatchObject({
      value: row.space.middle,
      error: expect.closeTo(share(row.space), 12),
      grade: 'assumed',
    });
    expect(water).toMatchObject({
      value: row.water.middle,
      error: expect.closeTo(share(row.water), 12),
      grade: 'assumed',
    });
  });
  test.each([
    ['measured', 0.03],
    ['estimated', 0.05],
    ['assumed', 0.07],
  ] as const)('%s: %d unsure; hot water below the rooms as in the table, and as much less sure', (grade, error) => {
    const { space, water } = of({ system: 'gas-condensing', efficiency: typed(0.9, grade) });
    expect(space).toMatchObject({ value: 0.9, error, grade });
    const [value, high] = [(0.9 * gas.water.middle) / gas.space.middle, gas.water.high];
    expect(value).toBeLessThan(Math.max(0.9, high));
    expect(water).toMatchObject({
      value,
      error: expect.closeTo(Math.hypot(error, share(gas.water)), 12),
      grade: 'assumed',
    });
    // Where the table knows no difference the figure stands for both.
    const electric = of({ system: 'direct-electric', efficiency: typed(0.97, grade) });
    expect(electric.water).toMatchObject({ value: 0.97, grade });
  });
  test.each([
    // A designer's factor strays as the field strays from designs; one derived from it by a tenth more.
    ['from the field', {}, 'field', 'field'],
    ['measured', { spaceFactor: typed(3.5, 'measured'), waterFactor: typed(2.8, 'measured') }, 0.03, 0.03],
    ['measured for the rooms alone', { spaceFactor: typed(3.5, 'measured') }, 0.03, Math.hypot(0.07, 0.1)],
    ['designed', { spaceFactor: typed(4), waterFactor: typed(3) }, 'step', 'step'],
    ['designed for the rooms alone', { spaceFactor: typed(4) }, 'step', 'step and derived'],
  ] as const)('a heat pump’s factors, %s', (_name, machine, ofSpace, ofWater) => {
    const field = reference.fieldFactor.ground;
    const step = Math.hypot(field.deviation, 0.5 * reference.designDeviation.value);
    const errors = { field: share(field), step, 'step and derived': Math.hypot(step, 0.1) };
    const errorOf = (one: number | keyof typeof errors) => (typeof one === 'number' ? one : errors[one]);
    const { space, water } = of({ system: 'heat-pump' }, machine, 'heat-pump');
    expect(space.error).toBeCloseTo(errorOf(ofSpace), 12);
    expect(water.error).toBeCloseTo(errorOf(ofWater), 12);
    const atMeter = factorsAtMeter(
      household({ present: { system: 'heat-pump' }, machine: { source: 'ground', ...machine } }),
      reference,
    );
    if (ofSpace === 'field') expect(space.value).toBe(field.middle);
    else expect([space.value, water.value]).toEqual([atMeter.space.value, atMeter.water.value]);
  });
});
