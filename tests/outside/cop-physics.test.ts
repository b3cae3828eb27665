/** Heating curve, Carnot fraction and the year's sums against worked tables and published machines. */

import { describe, expect, test } from 'vitest';
import type { YearSlots } from '../../src/model/calendar/zone.ts';
import { pasteurisationKWh } from '../../src/model/heat-pump/extras.ts';
import {
  flowTemperature,
  type HeatingCurve,
  meanWaterTemperature,
} from '../../src/model/heat-pump/full/heating-curve.ts';
import { carnotLimit } from '../../src/model/heat-pump/full/rated-points.ts';
import { runYear } from '../../src/model/heat-pump/full/run-year.ts';
import { outputSurface, perHeatSurface, readSurface } from '../../src/model/heat-pump/full/surface.ts';
import type { RatedPoint } from '../../src/model/shapes/household.ts';
import { CYLINDER_WINDOWS } from '../../src/model/year/day-profiles.ts';
import { ratedPoints } from '../../src/reference/rated-points.ts';

const CURVE: HeatingCurve = {
  control: 'weather-compensated',
  emitters: 'radiators',
  designFlowC: 50,
  spreadK: 5,
  designOutdoorC: -3,
  designRoomC: 20,
  roomC: 20,
  shiftK: 0,
};

describe('Carnot COP between source in and water out (kelvin = °C + 273.15)', () => {
  test.each([
    [0, 35, 8.8043],
    [0, 45, 7.07],
    [0, 55, 5.9664],
    [5, 35, 10.2717],
    [5, 50, 7.1811],
  ])('B%i/W%i: %d', (sourceC, flowC, limit) => expect(carnotLimit(sourceC, flowC)).toBeCloseTo(limit, 4));
  test.each([
    // COP by the regression of Staffell et al. 2012 (Energy Environ. Sci. 5, 9291), and the fraction that it implies.
    [0, 35, 4.419, 0.502],
    [0, 45, 3.506, 0.496],
    [0, 55, 2.74, 0.459],
  ])('fraction at B%i/W%i with COP %d: %d', (sourceC, flowC, cop, fraction) =>
    expect(cop / carnotLimit(sourceC, flowC)).toBeCloseTo(fraction, 3),
  );
  test.each([
    // Quartiles of 123 declared brine units at test point A, an open certification dump: fraction 0.508 and 0.502.
    [34, 4.59, 0.508],
    [52, 3.14, 0.502],
  ])('median certificate at B0/W%i', (flowC, cop, fraction) =>
    expect(Math.abs(cop / carnotLimit(0, flowC) - fraction)).toBeLessThan(0.002),
  );
});

describe('heating curve, room 20 °C, design −3 °C (EN 442 and EN 1264 exponents; worked by hand)', () => {
  test.each([
    [-3, 47.5, 50, 45, 35],
    [0, 44.697, 46.871, 42.38, 33.182],
    [5, 39.794, 41.425, 37.826, 30.106],
    [10, 34.49, 35.577, 32.943, 26.949],
    [15, 28.502, 29.045, 27.5, 23.665],
  ])('at %i °C', (outdoorC, mean50, flow50, flow45, floor35) => {
    expect(meanWaterTemperature(CURVE, outdoorC)).toBeCloseTo(mean50, 3);
    expect(flowTemperature(CURVE, outdoorC)).toBeCloseTo(flow50, 3);
    expect(flowTemperature({ ...CURVE, designFlowC: 45 }, outdoorC)).toBeCloseTo(flow45, 3);
    expect(flowTemperature({ ...CURVE, designFlowC: 35, emitters: 'floor' }, outdoorC)).toBeCloseTo(floor35, 3);
  });
});

// A house of 8 kW at −10 °C and 0 at 16 °C over the average climate of EN 14825; brine 0 to 5 °C; fraction 0.45.
// EN 14825:2018 Annex B, average climate: hours at −10 °C and each kelvin above, as transcribed in a public calculation.
const bins = [
  1, 25, 23, 24, 27, 68, 91, 89, 165, 173, 240, 280, 320, 357, 356, 303, 330, 326, 348, 335, 315, 215, 169, 151, 105,
  74,
].map((hours, i) => ({ outdoorC: i - 10, hours }));
const loadKW = (outdoorC: number) => (8 * (16 - outdoorC)) / 26;
const brineC = (outdoorC: number) => (5 * (outdoorC + 10)) / 26;
const heatKWh = bins.reduce((sum, bin) => sum + bin.hours * loadKW(bin.outdoorC), 0);
const FRACTION: RatedPoint[] = [{ sourceC: 0, flowC: 35, cop: 0.45 * carnotLimit(0, 35) }];

/** A calendar with one "day" to a bin of EN 14825, and one for the rest of the year. */
function binCalendar(): YearSlots {
  const slotsOf = [...bins.map((bin) => bin.hours * 2), 17_520 - 9820];
  const dayStart = Uint32Array.from([0, ...slotsOf.map((_, i) => slotsOf.slice(0, i + 1).reduce((a, b) => a + b, 0))]);
  const count = 17_520;
  const zeros = new Uint16Array(count);
  const day = Uint16Array.from({ length: count }, (_, slot) => dayStart.findIndex((start) => start > slot) - 1);
  return {
    year: 2026,
    zone: 'none',
    count,
    day,
    month: new Uint8Array(count),
    weekday: new Uint8Array(count),
    minute: zeros,
    dayStart,
  };
}
const slots = binCalendar();

function runBins(
  curve: Partial<HeatingCurve>,
  water = 0,
  pumps = { sourcePumpW: 0, standbyW: 0, pasteurisationKWh: 0 },
) {
  const perHeat = perHeatSurface(FRACTION).surface;
  return runYear({
    slots,
    outdoorC: Float64Array.from({ length: slots.count }, (_, i) => bins[slots.day[i]!]?.outdoorC ?? 20),
    spaceKWh: heatKWh,
    spaceShare: [...bins.map((bin) => (bin.hours * loadKW(bin.outdoorC)) / heatKWh), 0],
    waterByDayKWh: Float64Array.from([...bins.map(() => 0), water]),
    waterFlowC: 57,
    waterHours: CYLINDER_WINDOWS,
    source: { kind: 'typed', byDayC: Float64Array.from([...bins.map((bin) => brineC(bin.outdoorC)), 4]) },
    curve: { ...CURVE, designOutdoorC: -10, ...curve },
    perHeat,
    // Output of 8 kW whatever the brine.
    outputKW: outputSurface([-30, 40].map((sourceC) => ({ sourceC, flowC: 35, outputKW: 8 }))),
    leastShare: 1,
    // No loss by stopping and starting in this example.
    degradation: 1,
    designKW: 8,
    backupShare: 0,
    circulatorW: 0,
    ...pumps,
  });
}

describe('bin example: house of 8 kW, 4,910 h of EN 14825, fraction 0.45 (worked by hand)', () => {
  test('heat 16,524.9 kWh', () => expect(heatKWh).toBeCloseTo(16_524.9, 1));
  test.each<[string, Partial<HeatingCurve>, number, number, number]>([
    ['floor 35', { designFlowC: 35, emitters: 'floor' }, 3221.21, 5.13, 28.98],
    ['radiators 45', { designFlowC: 45 }, 3983.82, 4.148, 36.04],
    ['radiators 50', {}, 4321.87, 3.8236, 39.28],
    ['radiators 55', { designFlowC: 55 }, 4652.72, 3.5517, 42.53],
    ['radiators 45, curve 5 K too high', { designFlowC: 45, shiftK: 5 }, 4504.97, 3.6682, 41.04],
    ['fixed flow 45', { control: 'fixed', designFlowC: 45 }, 4911.25, 3.3647, 45],
    ['fixed flow 50', { control: 'fixed' }, 5403.45, 3.0582, 50],
    ['fixed flow 55', { control: 'fixed', designFlowC: 55 }, 5880.65, 2.8101, 55],
  ])('%s', (_, curve, electricityKWh, factor, meanFlowC) => {
    const year = runBins(curve);
    // The tables are read a kelvin apart; 0.05 % is ten times their error.
    expect(Math.abs(year.electricityKWh / electricityKWh - 1)).toBeLessThan(5e-4);
    expect(Math.abs(year.year.factors!.H1 / factor - 1)).toBeLessThan(5e-4);
    expect(Math.abs(year.means.flowC - meanFlowC)).toBeLessThan(0.02);
    expect(year.coldestSourceC).toBe(0);
  });
  test.each([
    [-10, 45, 0, 3.1815],
    [0, 38.138, 1.9231, 3.868],
    [10, 30.498, 3.8462, 5.127],
  ])('at %i °C', (outdoorC, flowC, sourceC, cop) => {
    const foundC = flowTemperature({ ...CURVE, designOutdoorC: -10, designFlowC: 45 }, outdoorC);
    expect(foundC).toBeCloseTo(flowC, 3);
    expect(brineC(outdoorC)).toBeCloseTo(sourceC, 4);
    expect(0.45 * carnotLimit(sourceC, flowC)).toBeCloseTo(cop, 3);
    expect(Math.abs(1 / readSurface(perHeatSurface(FRACTION).surface, sourceC, flowC) / cop - 1)).toBeLessThan(5e-4);
  });
});

describe('the same house at 45 °C with hot water, pumps and standby (worked by hand)', () => {
  const pasteurisation = pasteurisationKWh(200, 50);
  const { year } = runBins({ designFlowC: 45 }, 3057, {
    sourcePumpW: 90,
    standbyW: 10,
    pasteurisationKWh: pasteurisation,
  });
  const { electricityKWh: used, factors } = year;
  test.each<[string, number, number]>([
    ['hot water', used.water, 1090.55],
    ['pasteurisation', used.pasteurisation, 120.76],
    ['source pump', used['source-pump'], 220.3],
    ['standby', used.standby, 87.6],
    ['compressor and standby', used.space + used.water + used.standby, 5161.97],
  ])('%s, kWh', (_, value, kWh) => expect(Math.abs(value / kWh - 1)).toBeLessThan(5e-4));
  test('H1 3.7935, H2 3.6382, H3 3.5803', () => {
    expect(factors!.H1).toBeCloseTo(3.7935, 2);
    expect(factors!.H2).toBeCloseTo(3.6382, 2);
    expect(factors!.H3).toBeCloseTo(3.5803, 2);
  });
  test('H4 3.4614 with a circulator of 45 W for 4,200 h', () => {
    const all = Object.values(used).reduce((sum, kWh) => sum + kWh, 0) + 189;
    expect((heatKWh + 3057 + pasteurisation) / all).toBeCloseTo(3.4614, 2);
  });
});

// EN 14511 tables of data sheets, as carried by the open IBPSA Modelica library (BSD licence): heat and power in W.
type SheetRow = readonly [name: string, sourceC: number, flowC: number, heatW: number, powerW: number];
const BRINE_15_KW: readonly SheetRow[] = [
  ['B-5/W35', -5, 35, 12_762, 3225],
  ['B0/W35', 0, 35, 14_500, 3300],
  ['B5/W35', 5, 35, 16_100, 3300],
  ['B-5/W45', -5, 45, 12_100, 4000],
  ['B0/W45', 0, 45, 13_900, 4000],
  ['B5/W45', 5, 45, 15_600, 4000],
  ['B-5/W55', -5, 55, 11_513, 4825],
  ['B0/W55', 0, 55, 13_200, 4900],
  ['B5/W55', 5, 55, 14_900, 4900],
];
const AIR_20_KW: readonly SheetRow[] = [
  ['A-10/W35', -10, 35, 11_600, 4300],
  ['A2/W35', 2, 35, 17_000, 4400],
  ['A7/W35', 7, 35, 20_200, 4600],
  ['A-10/W50', -10, 50, 10_200, 6300],
  ['A2/W50', 2, 50, 15_600, 6400],
  ['A7/W50', 7, 50, 18_800, 6600],
];
const pointOf = ([, sourceC, flowC, heatW, powerW]: SheetRow): RatedPoint => ({
  sourceC,
  flowC,
  cop: heatW / powerW,
  outputKW: heatW / 1000,
});

describe.each([
  ['brine unit of 15 kW', BRINE_15_KW],
  ['air unit of 20 kW', AIR_20_KW],
])('%s, every point of its EN 14511 sheet', (_, sheet) => {
  const points = sheet.map(pointOf);
  const { surface, bent } = perHeatSurface(points);
  const output = outputSurface(points.map((point) => ({ ...point, outputKW: point.outputKW! })));
  test('the points agree with each other', () => expect(bent).toBe(false));
  test.each(sheet)('%s: COP and output come back', (...row) => {
    const { sourceC, flowC, cop, outputKW } = pointOf(row);
    expect(Math.abs(1 / readSurface(surface, sourceC, flowC) / cop - 1)).toBeLessThan(0.001);
    expect(readSurface(output, sourceC, flowC)).toBeCloseTo(outputKW!, 6);
  });
});

/** How far a sheet's point, foretold from the points given, lies off the published COP [1]. */
function missed(
  sheet: readonly SheetRow[],
  given: (row: SheetRow) => boolean,
  [, sourceC, flowC, heatW, powerW]: SheetRow,
) {
  const { surface } = perHeatSurface(sheet.filter(given).map(pointOf));
  return 1 / readSurface(surface, sourceC, flowC) / (heatW / powerW) - 1;
}

describe('each point of a sheet foretold from all others', () => {
  test.each<[string, readonly SheetRow[], number]>([
    // Reached / with the Carnot fraction run straight between the points: 2.2 % / 7.3 %.
    ['brine: all nine within 3 %', BRINE_15_KW, 0.03],
    // A point in the middle: 1.8 % / 2.3 %.
    ['air, A2: within 3 %', AIR_20_KW.filter(([, sourceC]) => sourceC === 2), 0.03],
    // An outer point, 12 K beyond the next of its flow: 6.7 % / 14.7 %. Not within 3 %, and the screen says so.
    ['air, A-10 and A7: within 7 %', AIR_20_KW.filter(([, sourceC]) => sourceC !== 2), 0.07],
  ])('%s', (_, left, within) => {
    const sheet = left === BRINE_15_KW ? BRINE_15_KW : AIR_20_KW;
    for (const row of left) expect(Math.abs(missed(sheet, (each) => each !== row, row)), row[0]).toBeLessThan(within);
  });
});

describe('many points of a sheet foretold from a few', () => {
  test.each<[string, readonly SheetRow[], (row: SheetRow) => boolean, number]>([
    // One source only, so nothing is known of the other sources: Carnot's limit has to do. Reached: 5.1 %.
    ['brine, from B0/W35, B0/W45 and B0/W55', BRINE_15_KW, ([, sourceC]) => sourceC === 0, 0.052],
    // Reached / before: 1.6 % / 4.3 %.
    ['brine, from its four corners', BRINE_15_KW, ([, sourceC, flowC]) => sourceC !== 0 && flowC !== 45, 0.02],
    // Reached / before: 1.8 % / 3.9 %.
    ['air, A2 from A-10 and A7', AIR_20_KW, ([, sourceC]) => sourceC !== 2, 0.02],
  ])('%s', (_, sheet, isGiven, within) => {
    for (const row of sheet) expect(Math.abs(missed(sheet, isGiven, row)), row[0]).toBeLessThan(within);
  });
});

describe('the usual machine beside published sources', () => {
  // Quartiles of declared COP at A7/W35 were not at hand; the regression of Staffell et al. 2012 is the other witness.
  test.each([
    ['ground', 0, 35, 4.419],
    ['ground', 0, 45, 3.506],
    ['air', 2, 35, 3.503],
  ] as const)('%s %i/%i: installed COP within 10 %% of the regression', (source, sourceC, flowC, cop) => {
    const { surface } = perHeatSurface(ratedPoints[source].points, 0.9);
    expect(Math.abs(1 / readSurface(surface, sourceC, flowC) / cop - 1)).toBeLessThan(0.1);
  });
  test('COP falls 1.5 to 2.6 % a kelvin of lift at B0/W35 (Staffell et al. 2012: 2.2 %; Carnot alone: 2.5 %)', () => {
    const { surface } = perHeatSurface(ratedPoints.ground.points);
    const fall = readSurface(surface, 0, 36) / readSurface(surface, 0, 35) - 1;
    expect(fall).toBeGreaterThan(0.015);
    expect(fall).toBeLessThan(0.026);
  });
});
