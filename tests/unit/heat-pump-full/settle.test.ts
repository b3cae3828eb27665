import { describe, expect, test } from 'vitest';
import { askAboutFull } from '../../../src/model/heat-pump/full/full-questions.ts';
import { groundTemperature } from '../../../src/model/heat-pump/full/ground-temperature.ts';
import { type Settled, settleFull } from '../../../src/model/heat-pump/full/settle.ts';
import { groundOfRegion, settleSource } from '../../../src/model/heat-pump/full/settle-source.ts';
import { readSurface } from '../../../src/model/heat-pump/full/surface.ts';
import type { FullYear } from '../../../src/model/heat-pump/full/year.ts';
import type { WhatIf } from '../../../src/model/shapes/appraisal.ts';
import type { FullMachine, Household } from '../../../src/model/shapes/household.ts';
import type { Told } from '../../../src/model/shapes/told.ts';
import type { WorkingInput } from '../../../src/model/shapes/working.ts';
import { reference } from '../../../src/reference/index.ts';
import { type HouseholdChange, typed } from '../appraisal/make-household.ts';
import { fullHousehold, settleInput } from './make-year.ts';

const settle = (full: FullMachine = {}, change: HouseholdChange = {}, whatIf?: WhatIf) =>
  settleFull(settleInput(fullHousehold(full, change), whatIf));
const linesOf = (inputs: readonly WorkingInput[]) => inputs.map(({ name, grade }) => [(name as Told).code, grade]);
const lineOf = (inputs: readonly WorkingInput[], code: string) =>
  inputs.find(({ name }) => (name as Told).code === code);

describe('a home of 6.1 kW at −3.4 °C, rooms at 21 °C, flow at 45 °C, of whose machine nothing else is typed', () => {
  const { input, inputs, installedShare } = settle();
  test('what is taken', () => {
    const { curve, waterFlowC, leastShare, degradation, designKW, backupShare } = input;
    expect(curve).toEqual({
      control: 'weather-compensated',
      emitters: 'radiators',
      designFlowC: 45,
      spreadK: 5,
      designOutdoorC: -3.4,
      designRoomC: 21,
      roomC: 21,
      shiftK: 2,
    });
    // The cylinder is kept at 52 °C (SAP 10.2 Appendix J), its flow 5 K above.
    expect({ waterFlowC, leastShare, degradation, designKW, backupShare }).toEqual({
      waterFlowC: 57,
      leastShare: 1,
      degradation: 0.9,
      designKW: 6.1,
      backupShare: 0,
    });
    expect(readSurface(input.outputKW, 0, 35)).toBeCloseTo(6.1, 12);
    // 90 W for 8 kW, 45 W, 10 W; 180 litres by 8 K once a week.
    expect([input.sourcePumpW, input.circulatorW, input.standbyW]).toEqual([expect.closeTo((90 / 8) * 6.1, 9), 45, 10]);
    expect(input.pasteurisationKWh).toBeCloseTo((52 * 180 * 4.18 * 8) / 3600, 9);
    // The usual machine has 4.59 at B0/W34, of which nine tenths are reached.
    expect(installedShare).toBe(0.9);
    expect(readSurface(input.perHeat, 0, 34)).toBeCloseTo(1 / (0.9 * 4.59), 9);
  });
  test('each with its line, assumed unless typed', () =>
    expect(linesOf(inputs)).toEqual([
      ['rated-points', 'assumed'],
      ['installed-share', 'assumed'],
      ['output', 'assumed'],
      ['control', 'assumed'],
      ['array', 'assumed'],
      ['depth', 'assumed'],
      ['surface-mean', 'assumed'],
      ['brine-drop', 'assumed'],
      ['array-size', 'assumed'],
      ['design-flow', 'estimated'],
      ['design-outdoor', 'estimated'],
      ['emitters', 'estimated'],
      ['flow-control', 'assumed'],
      ['flow-spread', 'assumed'],
      ['curve-shift', 'assumed'],
      ['kept-hot-water', 'assumed'],
      ['source-pump', 'assumed'],
      ['circulator-line', 'assumed'],
      ['standby', 'assumed'],
    ]));
  test('of heat and hot water it is the home’s', () => {
    const { demand } = settleInput(fullHousehold());
    expect(input.spaceKWh).toBe(demand.space.value);
    expect(input.waterByDayKWh.reduce((sum, kWh) => sum + kWh, 0)).toBeCloseTo(demand.water.value, 6);
  });
  test('an air machine runs variably from 30 % up, has its fan inside and its output at the design air', () => {
    const air = settle({}, { machine: { source: 'air' } });
    expect([air.input.leastShare, air.input.sourcePumpW, air.input.source.kind]).toEqual([0.3, 0, 'air']);
    expect(readSurface(air.input.outputKW, -3.4, 35)).toBeCloseTo(6.1, 12);
    expect(lineOf(air.inputs, 'rated-points')!.value).toBe('A-7/W34 2.98, A-7/W52 2.14');
    expect(linesOf(air.inputs).slice(4, 6)).toEqual([
      ['least-output', 'assumed'],
      ['source', 'estimated'],
    ]);
  });
  test('the smallest machine is one of 3 kW', () => {
    const small = settle({}, { heat: { heatLossKW: typed(2) } }).input;
    expect([readSurface(small.outputKW, 0, 35), small.designKW]).toEqual([expect.closeTo(3, 12), 2]);
  });
  test('without a heat loss typed it is that of the demand between room and design air', () => {
    const asked = settleInput(fullHousehold({}, { heat: { heatLossKW: undefined } }));
    expect(settleFull(asked).input.designKW).toBeCloseTo((asked.demand.heatLossWPerK * 24.4) / 1000, 12);
    const bare = settleInput(fullHousehold({}, { heat: { heatLossKW: undefined, roomC: undefined } }));
    expect(settleFull(bare).input.designKW).toBeCloseTo((bare.demand.heatLossWPerK * 23.4) / 1000, 12);
  });
  test.each([
    ['where nobody says: from 4 to 6 and from 13 to 15', undefined, [8, 9, 10, 11, 26, 27, 28, 29]],
    ['schedule', 'schedule', [8, 9, 10, 11, 26, 27, 28, 29]],
    ['night: from half past midnight to half past 7', 'night', [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14]],
    ['drawn: from 6 to 9 and from 17 to 21', 'drawn', [12, 13, 14, 15, 16, 17, 34, 35, 36, 37, 38, 39, 40, 41]],
  ] as const)('hours of hot water, %s', (_, hours, halves) => {
    const { waterHours } = settle({}, { hotWater: hours ? { hours } : {} }).input;
    expect([...waterHours.keys()].filter((half) => waterHours[half]! > 0)).toEqual(halves);
    expect(waterHours).toHaveLength(48);
  });
  test('no weekly heating where it is switched off or no hot water is wanted', () => {
    expect(settle({}, { hotWater: { pasteuriseWeekly: false } }).input.pasteurisationKWh).toBe(0);
    expect(settle({}, {}, { waterShare: 0 }).input.pasteurisationKWh).toBe(0);
  });
});

describe('what is typed stands', () => {
  const points = [
    { sourceC: 0, flowC: 35, cop: 4.6, outputKW: 9 },
    { sourceC: 0, flowC: 55, cop: 3 },
  ];
  const full: FullMachine = {
    ratedPoints: typed(points, 'measured'),
    installedShare: typed(0.95),
    control: 'variable',
    leastShare: typed(0.4),
    flow: 'fixed',
    curveShiftK: typed(2),
    spreadK: typed(7),
    sourcePumpW: typed(111),
    circulatorW: typed(33),
    standbyW: typed(7),
  };
  const change: HouseholdChange = {
    machine: { emitters: 'floor', backupShare: typed(0.03) },
    hotWater: { hotC: typed(50), cylinderLitres: typed(250) },
  };
  const { input, inputs, installedShare } = settle(full, change);
  test('in the year', () => {
    expect(input.curve).toMatchObject({ control: 'fixed', emitters: 'floor', spreadK: 7, shiftK: 2 });
    expect([input.leastShare, input.sourcePumpW, input.circulatorW, input.standbyW]).toEqual([0.4, 111, 33, 7]);
    expect([input.waterFlowC, input.backupShare, installedShare]).toEqual([55, 0.03, 0.95]);
    expect(input.pasteurisationKWh).toBeCloseTo((52 * 250 * 4.18 * 10) / 3600, 9);
    expect(readSurface(input.outputKW, 0, 50)).toBeCloseTo(9, 12);
    expect(readSurface(input.perHeat, 0, 35)).toBeCloseTo(1 / (0.95 * 4.6), 6);
  });
  test('in the lines', () => {
    expect(linesOf(inputs).slice(0, 5)).toEqual([
      ['rated-points', 'measured'],
      ['installed-share', 'estimated'],
      ['output', 'measured'],
      ['control', 'estimated'],
      ['least-output', 'estimated'],
    ]);
    expect(lineOf(inputs, 'curve-shift')!.value).toBe(2);
    expect(lineOf(inputs, 'flow-control')!.grade).toBe('estimated');
    expect(lineOf(inputs, 'rated-points')!.value).toBe('B0/W35 4.6, B0/W55 3');
  });
  test('an output typed stands above those of the points; fixed speed above a least share', () => {
    const sized = settle({ ...full, capacityKW: typed(7), control: 'fixed-speed' }, change);
    expect(readSurface(sized.input.outputKW, 0, 50)).toBeCloseTo(7, 12);
    expect(sized.input.leastShare).toBe(1);
    expect(lineOf(sized.inputs, 'output')).toMatchObject({ value: 7, grade: 'estimated' });
  });
  test('a flow asked for is one, whatever the machine was designed for', () => {
    const asked = settle({}, { machine: { flowC: undefined, emitters: undefined } }, { flowC: 38 });
    expect(asked.input.curve.designFlowC).toBe(38);
    expect(lineOf(asked.inputs, 'design-flow')).toMatchObject({ grade: 'estimated', origin: { code: 'what-if' } });
    const usual = settle({}, { machine: { flowC: undefined, emitters: undefined } });
    expect(usual.input.curve.designFlowC).toBe(50);
    expect(lineOf(usual.inputs, 'design-flow')!.grade).toBe('assumed');
    expect(lineOf(usual.inputs, 'emitters')!.grade).toBe('assumed');
  });
});

describe('where the heat is taken', () => {
  const { year } = settleInput(fullHousehold());
  const sourceOf = (full: FullMachine) => settleSource(fullHousehold(full), reference, year);
  const { meanC } = groundOfRegion(year.region, reference.ground);
  const undisturbed = (full: FullMachine) => {
    const { source } = sourceOf(full);
    return source.kind === 'ground' ? source : undefined;
  };
  test('ground: its mean 0.7 K above the air’s, its half swing 1.22 of the air’s, coldest at the end of January', () => {
    const monthlyMeanC = [3, 5, 7, 9, 12, 15, 17, 16, 14, 11, 7, 4];
    const ground = groundOfRegion({ ...year.region, monthlyMeanC }, reference.ground);
    expect(ground.meanC).toBeCloseTo(10.7, 12);
    expect(ground.swingK).toBeCloseTo(1.22 * 7, 12);
    expect([ground.coldestDay, ground.diffusivityM2PerDay]).toEqual([30, expect.closeTo(6e-7 * 86_400, 12)]);
  });
  test('boreholes of 100 m and 13 K where nothing is typed: 0.028 K/m warmer half-way down, whatever the day', () => {
    const usual = undisturbed({})!;
    expect(usual.undisturbedC).toHaveLength(365);
    for (const day of [0, 180, 364]) expect(usual.undisturbedC[day]).toBeCloseTo(meanC + 0.028 * 50, 9);
    expect(usual.dropK).toBe(13);
    const own = undisturbed({ ground: { kind: 'vertical', depthM: typed(60), dropK: typed(10), size: typed(2) } })!;
    expect([own.undisturbedC[7], own.dropK]).toEqual([expect.closeTo(meanC + 0.028 * 30, 9), 5]);
  });
  test('trenches of 1.2 m and 8 K: the ground at that depth from 1 January on', () => {
    const trenches = undisturbed({ ground: { kind: 'horizontal' } })!;
    const ground = groundOfRegion(year.region, reference.ground);
    for (const day of [1, 40, 365])
      expect(trenches.undisturbedC[day - 1]).toBeCloseTo(groundTemperature(ground, 1.2, day), 9);
    expect(trenches.dropK).toBe(8);
  });
  test.each<['vertical' | 'horizontal', number, boolean]>([
    ['vertical', 14.9, false],
    ['vertical', 15, true],
    ['vertical', 400, true],
    ['vertical', 400.1, false],
    ['horizontal', 0.29, false],
    ['horizontal', 0.3, true],
    ['horizontal', 15, true],
    ['horizontal', 15.1, false],
  ])('%s at %d m makes sense: %s', (kind, depthM, fits) => {
    const { inputs, questions } = sourceOf({ ground: { kind, depthM: typed(depthM) } });
    const usual = kind === 'vertical' ? 100 : 1.2;
    expect(lineOf(inputs, 'depth')).toMatchObject(
      fits ? { value: depthM, grade: 'estimated' } : { value: usual, grade: 'assumed' },
    );
    const [low, high] = kind === 'vertical' ? [15, 400] : [0.3, 15];
    expect(questions.map(({ code, weight, data }) => [code, weight, data])).toEqual(
      fits ? [] : [['array-depth-refused', 'refusal', { found: depthM, low, high, kind }]],
    );
    expect(lineOf(inputs, 'array')).toMatchObject({
      grade: 'estimated',
      value: { code: kind === 'vertical' ? 'boreholes' : 'trenches' },
    });
  });
  test('brine typed by month is that, each month keeping its mean', () => {
    const monthly = [4, 3, 3, 4, 6, 8, 10, 11, 10, 8, 6, 5];
    const { source, inputs } = sourceOf({ brineMonthlyC: typed(monthly, 'measured') });
    expect(inputs).toMatchObject([
      { value: '4.0, 3.0, 3.0, 4.0, 6.0, 8.0, 10.0, 11.0, 10.0, 8.0, 6.0, 5.0', grade: 'measured' },
    ]);
    if (source.kind !== 'typed') throw new Error(source.kind);
    const mean = (from: number, days: number) =>
      source.byDayC.slice(from, from + days).reduce((a, b) => a + b, 0) / days;
    expect([mean(0, 31), mean(31, 28), mean(334, 31)]).toEqual([4, 3, 5].map((c) => expect.closeTo(c, 6)));
  });
});

describe('what is asked', () => {
  const field = { ...reference.fieldFactor.ground, low: 2.5, middle: 3.2, high: 4 };
  const ask = (
    machine: Partial<Household['machine']>,
    year: { coldestSourceC: number; backupShare: number },
    whole = 4,
    bent = false,
  ) =>
    askAboutFull(
      fullHousehold({}, { machine: { full: { ratedPoints: typed([{ sourceC: 0, flowC: 35, cop: 4 }]) }, ...machine } }),
      { questions: [], bent } as unknown as Settled,
      year as unknown as FullYear,
      whole,
      field,
    ).map(({ code, data }) => [code, data]);
  const fine = { coldestSourceC: 0, backupShare: 0.01 };
  test.each<[string, ReturnType<typeof ask>, unknown]>([
    ['nothing, at every limit', ask({}, fine), []],
    ['no points', ask({ full: {} }, fine), [['points-assumed', {}]]],
    ['points bent', ask({}, fine, 4, true), [['points-bent', {}]]],
    ['brine below 0 °C', ask({}, { ...fine, coldestSourceC: -0.1 }), [['brine-too-cold', { coldestC: -0.1 }]]],
    ['air below 0 °C is no matter', ask({ source: 'air' }, { ...fine, coldestSourceC: -9 }), []],
    ['more resistance than 1 %', ask({}, { ...fine, backupShare: 0.0105 }), [['capacity-short', { share: 0.0105 }]]],
    ['no more than 1 % beside what is typed', ask({ backupShare: typed(0.05) }, { ...fine, backupShare: 0.06 }), []],
    [
      'a factor above the field',
      ask({}, fine, 4.01),
      [['full-above-field', { reckoned: 4.01, low: 2.5, middle: 3.2, high: 4 }]],
    ],
  ])('%s', (_, found, expected) => expect(found).toEqual(expected));
});
