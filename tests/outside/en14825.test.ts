/** Bin hours and seasonal COP of EN 14825 against published sums and a worked example. */
import { describe, expect, test } from 'vitest';
import { partLoadShare } from '../../src/model/heat-pump/full/part-load.ts';
import {
  partLoadRatio,
  type ScopInput,
  seasonalEfficiencyPercent,
  seasonalScop,
} from '../../src/model/heat-pump/full/scop.ts';
import { binClimates } from '../../src/reference/en14825.ts';

describe('bin hours', () => {
  // Hours from EN 14825 as transcribed; the equivalent hours are those of Regulation (EU) 811/2013 Annex VII 4(c).
  test.each([
    ['average', 26, 4910, 2065.62, 2066],
    ['warmer', 14, 3590, 1335.79, 1336],
    ['colder', 38, 6446, 2464.76, 2465],
  ] as const)(
    '%s: %i bins, %i h, times part load %d, the regulation %i',
    (name, bins, hours, equivalent, regulation) => {
      const climate = binClimates[name];
      const sum = (value: (bin: { outdoorC: number; hours: number }) => number) =>
        climate.bins.reduce((total, bin) => total + value(bin), 0);
      expect(climate.bins).toHaveLength(bins);
      expect(sum((bin) => bin.hours)).toBe(hours);
      expect(sum((bin) => bin.hours * partLoadRatio(bin.outdoorC, climate.designC))).toBeCloseTo(equivalent, 2);
      expect(climate.equivalentHours).toBe(regulation);
    },
  );
  test.each([
    ['average', -10, 1],
    ['average', 2, 320],
    ['average', 15, 74],
    ['warmer', 7, 162],
    ['colder', -22, 1],
    ['colder', 1, 533],
  ] as const)('%s at %i °C: %i h (EN 14825:2018 Annex B as transcribed)', (name, outdoorC, hours) =>
    expect(binClimates[name].bins.find((bin) => bin.outdoorC === outdoorC)?.hours).toBe(hours),
  );
});

/** An invented machine of 10 kW design load, worked by hand with the formulas of EN 14825. */
const EXAMPLE: ScopInput = {
  climate: binClimates.average,
  designKW: 10,
  degradation: 0.9,
  points: [
    { outdoorC: -10, outputKW: 8.7, cop: 3.95 },
    { outdoorC: -7, outputKW: 8.84, cop: 4.1 },
    { outdoorC: 2, outputKW: 9.2, cop: 4.6 },
    { outdoorC: 7, outputKW: 9.4, cop: 4.95 },
    { outdoorC: 12, outputKW: 9.6, cop: 5.2 },
  ],
  thermostatOffKW: 0.02,
  standbyKW: 0.015,
  crankcaseKW: 0,
  offKW: 0.015,
};

describe('worked example by the formulas of EN 14825 and Regulation (EU) 811/2013', () => {
  const found = seasonalScop(EXAMPLE);
  test.each<[string, number, number, number]>([
    ['SCOPon', found.on, 4.1239, 4],
    ['SCOPnet', found.net, 4.1447, 4],
    ['SCOP', found.scop, 4.0761, 4],
    ['heat, kWh', found.heatKWh, 20656.15, 2],
    ['electricity, kWh', found.electricityKWh, 5008.917, 3],
    ['supplement, kWh', found.supplementKWh, 33.227, 3],
    ['Q_H, kWh', found.yearHeatKWh, 20660, 6],
    ['Q_HE, kWh', found.yearElectricityKWh, 5068.51, 2],
    ['efficiency, %', seasonalEfficiencyPercent(found.scop, 'ground'), 155.05, 1],
  ])('%s', (_, value, expected, digits) => expect(value).toBeCloseTo(expected, digits));
  test.each([
    [-10, 10, 8.7, 1.3, 3.95, 10, 3.5025],
    [-7, 8.8462, 8.84, 0.0062, 4.1, 212.308, 51.894],
    [0, 6.1538, 9.12, 0, 4.2522, 1476.923, 347.3354],
    [2, 5.3846, 9.2, 0, 4.2956, 1723.077, 401.1237],
    [7, 3.4615, 9.4, 0, 4.2252, 1128.462, 267.0819],
    [12, 1.5385, 9.6, 0, 3.4121, 260, 76.2],
    [15, 0.3846, 9.72, 0, 2.9242, 28.462, 9.733],
  ])('bin %i °C', (outdoorC, load, output, supplement, cop, heat, electricity) => {
    const bin = found.bins.find((one) => one.outdoorC === outdoorC)!;
    expect(bin.loadKW).toBeCloseTo(load, 4);
    expect(bin.outputKW).toBeCloseTo(output, 4);
    expect(bin.supplementKW).toBeCloseTo(supplement, 4);
    expect(bin.cop).toBeCloseTo(cop, 4);
    expect(bin.heatKWh).toBeCloseTo(heat, 3);
    expect(bin.electricityKWh).toBeCloseTo(electricity, 3);
  });
  test.each([
    [2, 5.3846 / 9.2, 4.2956 / 4.6],
    [7, 3.4615 / 9.4, 4.2252 / 4.95],
    [12, 1.5385 / 9.6, 3.4121 / 5.2],
  ])('part load of the fixed machine at %i °C, C = 0.9', (_, ratio, share) =>
    expect(partLoadShare(ratio)).toBeCloseTo(share, 4),
  );
});
