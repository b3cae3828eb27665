import { describe, expect, test } from 'vitest';
import { COMMON_MONTH_DAYS } from '../../src/model/calendar/civil.ts';
import { baseFromGains, findBaseTemperature } from '../../src/model/demand/base-temperature.ts';
import { cylinderLossKWhPerDay, lossPerLitreFoam, volumeFactor } from '../../src/model/demand/cylinder-loss.ts';
import { findChange } from '../../src/model/demand/find-change.ts';
import { coefficientOfDesignLoad } from '../../src/model/demand/from-heat-loss.ts';
import { drawOfPeople, warmingKWh } from '../../src/model/demand/hot-water-draw.ts';
import { fitLine } from '../../src/model/demand/least-squares.ts';
import { peopleOfFloorArea } from '../../src/model/demand/occupancy.ts';
import { habitsOfRecord } from '../../src/model/demand/predict-span.ts';
import { fitSignatureAt } from '../../src/model/demand/signature.ts';
import { emptyHousehold } from '../../src/model/shapes/household.ts';
import { hotWater } from '../../src/reference/hot-water.ts';

const sum = (values: readonly number[]) => values.reduce((total, v) => total + v, 0);
const draw = (people: number, showerLitresPerMinute = 7) =>
  drawOfPeople({ people, showerLitresPerMinute, showersDraw: true }, COMMON_MONTH_DAYS, hotWater);

describe('people by floor area (SAP Table 1b)', () => {
  test.each([
    [50, 1.6901],
    [70, 2.2461],
    [85, 2.5509],
    [100, 2.7395],
    [120, 2.8633],
    [150, 2.9342],
    [200, 3.0019],
  ])('%i m²: %d', (area, people) => expect(peopleOfFloorArea(area)).toBeCloseTo(people, 4));
  test('13.9 m² and below: one person', () => expect(peopleOfFloorArea(13.9)).toBe(1));
});

describe('hot water drawn off in January, litres a day (two published SAP 10.2 worksheets)', () => {
  // Tolerance 0.001: the worksheets print the number of people to four decimals.
  test.each([
    [2.1468, 52.6878, 27.3868, 38.5426],
    [1.8896, 48.9139, 25.4345, 35.7697],
  ])('%d people: showers %d, baths %d, other %d', (people, showers, baths, other) => {
    const found = draw(people);
    expect(Math.abs(found.showers[0]! - showers)).toBeLessThan(0.001);
    expect(Math.abs(found.baths[0]! - baths)).toBeLessThan(0.001);
    expect(Math.abs(found.other[0]! - other)).toBeLessThan(0.001);
  });
});

describe('hot water of a home of 100 m² by month (worked from SAP 10.2 Tables J1, J2, J5)', () => {
  const found = draw(2.7395);
  test.each([
    ['showers', [61.38, 60.46, 59.12, 56.54, 54.65, 52.53, 51.33, 52.66, 54.12, 56.4, 59.02, 61.15]],
    ['baths', [31.89, 31.41, 30.75, 29.52, 28.59, 27.57, 27.02, 27.68, 28.41, 29.5, 30.75, 31.78]],
    ['other', [44.93, 43.3, 41.66, 40.03, 38.4, 36.76, 36.76, 38.4, 40.03, 41.66, 43.3, 44.93]],
    ['litresPerDay', [138.2, 135.17, 131.53, 126.09, 121.64, 116.87, 115.11, 118.74, 122.56, 127.56, 133.07, 137.86]],
    ['kWh', [218.88, 192.48, 202.15, 172.61, 163.75, 143.7, 139.22, 147.03, 151.13, 173.1, 189.59, 215.85]],
  ] as const)('%s', (part, expected) => {
    found[part].forEach((value, m) => {
      expect(Math.abs(value - expected[m]!)).toBeLessThan(0.011); // printed to 0.01
    });
  });
  test('2,109 kWh a year with a 7 l/min shower, 2,647 with 11 l/min', () => {
    expect(Math.abs(sum(found.kWh) - 2109)).toBeLessThan(1);
    expect(Math.abs(sum(draw(2.7395, 11).kWh) - 2647)).toBeLessThan(1);
  });
  test('SAP 2012 for the same home: 1,644 kWh (its own litres and temperature rises, Tables 1c and 1d)', () => {
    const factor = [1.1, 1.06, 1.02, 0.98, 0.94, 0.9, 0.9, 0.94, 0.98, 1.02, 1.06, 1.1];
    const rise = [41.2, 41.4, 40.1, 37.6, 36.4, 33.9, 30.4, 33.4, 33.5, 36.3, 39.4, 39.9];
    const months = COMMON_MONTH_DAYS.map((days, m) => warmingKWh((25 * 2.7395 + 36) * factor[m]!, days, 0, rise[m]!));
    expect(months[0]).toBeCloseTo(170.45, 1);
    expect(Math.abs(sum(months) - 1644)).toBeLessThan(1);
  });
});

describe('cylinder loss (SAP Tables 2, 2a, 2b)', () => {
  test.each([
    [180, 50, 0.01519, 0.8736, 1.289, 471, 523],
    [250, 50, 0.01519, 0.783, 1.605, 586, 651],
    [210, 80, 0.01155, 0.8298, 1.087, 397, 441],
    [120, 25, 0.02397, 1, 1.553, 567, 630],
  ])('%i litres behind %i mm', (litres, foamMm, perLitre, factor, perDay, timed, notTimed) => {
    expect(lossPerLitreFoam(foamMm)).toBeCloseTo(perLitre, 5);
    expect(volumeFactor(litres)).toBeCloseTo(factor, 4);
    const ofDay = cylinderLossKWhPerDay({ litres, foamMm, separatelyTimed: true });
    expect(ofDay).toBeCloseTo(perDay, 3);
    expect(Math.round(ofDay * 365)).toBe(timed);
    expect(Math.round(cylinderLossKWhPerDay({ litres, foamMm, separatelyTimed: false }) * 365)).toBe(notTimed);
  });
});

describe('heat loss (worked from the degree-day method)', () => {
  test('20 °C, 500 W of gains and 250 W/K need heating below 18.0 °C', () => {
    expect(baseFromGains(20, 500, 250)).toBeCloseTo(18, 12);
  });
  test('an ordinary home of 90 m² and 250 W/K kept at 20 °C comes near the standard base of 15.5 °C', () => {
    // 15.5 °C is the base that UK degree days are published to; within the error that the estimate itself states.
    const found = findBaseTemperature(emptyHousehold('h', 'Ordinary home'), 20, 250);
    expect(Math.abs(found.value - 15.5)).toBeLessThan(0.5);
    expect(found.errorK).toBeGreaterThan(1);
    expect(found.errorK).toBeLessThan(2);
  });
  test('250 W/K from 21 °C to −3.4 °C is a design load of 6,100 W', () => {
    expect(coefficientOfDesignLoad(6.1, 21, -3.4)).toBeCloseTo(250, 9);
  });
});

describe('Whiteside’s house, weekly gas against outdoor temperature', () => {
  // Figures: Hand et al., A Handbook of Small Data Sets (1993), p. 69; Venables and Ripley (2002), data set whiteside.
  // Outdoor °C and thousands of cubic feet a week.
  // biome-ignore format: a table of pairs
  const before = [
    [-0.8, 7.2], [-0.7, 6.9], [0.4, 6.4], [2.5, 6], [2.9, 5.8], [3.2, 5.8], [3.6, 5.6], [3.9, 4.7], [4.2, 5.8],
    [4.3, 5.2], [5.4, 4.9], [6, 4.9], [6, 4.3], [6, 4.4], [6.2, 4.5], [6.3, 4.6], [6.9, 3.7], [7, 3.9], [7.4, 4.2],
    [7.5, 4], [7.5, 3.9], [7.6, 3.5], [8, 4], [8.5, 3.6], [9.1, 3.1], [10.2, 2.6],
  ];
  // biome-ignore format: a table of pairs
  const after = [
    [-0.7, 4.8], [0.8, 4.6], [1, 4.7], [1.4, 4], [1.5, 4.2], [1.6, 4.2], [2.3, 4.1], [2.5, 4], [2.5, 3.5], [3.1, 3.2],
    [3.9, 3.9], [4, 3.5], [4, 3.7], [4.2, 3.5], [4.3, 3.5], [4.6, 3.7], [4.7, 3.5], [4.9, 3.4], [4.9, 3.7], [4.9, 4],
    [5, 3.6], [5.3, 3.7], [6.2, 2.8], [7.1, 3], [7.2, 2.8], [7.5, 2.6], [8, 2.7], [8.7, 2.8], [8.8, 1.3], [9.7, 1.5],
  ];
  test.each([
    ['before', before, 26, 6.85383, -0.39324, 0.11842, 0.01959, 0.28133, 0.94381],
    ['after', after, 30, 4.72385, -0.27793, 0.12974, 0.02518, 0.35485, 0.81308],
  ] as const)('%s insulation: the published line', (_name, rows, n, intercept, slope, ofIntercept, ofSlope, s, r2) => {
    const line = fitLine(
      rows.map((row) => row[0]!),
      rows.map((row) => row[1]!),
    );
    expect(line.count).toBe(n);
    expect(line.intercept).toBeCloseTo(intercept, 5);
    expect(line.slope).toBeCloseTo(slope, 5);
    expect(line.interceptError).toBeCloseTo(ofIntercept, 5);
    expect(line.slopeError).toBeCloseTo(ofSlope, 5);
    expect(Math.sqrt(line.variance)).toBeCloseTo(s, 5);
    expect(line.r2).toBeCloseTo(r2, 5);
  });
  test('put end to end, the break is found where the walls were filled, with the published slopes on either side', () => {
    const rows = [...before, ...after].map((row) => ({ outdoorC: row[0]!, gas: row[1]! }));
    const data = {
      first: Int32Array.from(rows, (_, i) => 7 * i),
      days: Float64Array.from(rows, () => 7),
      perDayKWh: Float64Array.from(rows, (row) => row.gas),
      outdoorC: Float64Array.from(rows.flatMap((row) => new Array<number>(7).fill(row.outdoorC))),
      start: Uint32Array.from({ length: rows.length + 1 }, (_, i) => 7 * i),
    };
    const usualSpread = (days: number) => habitsOfRecord({ yearShare: 0.085, recordYears: days / 365.25, byDay: true });
    const found = findChange(data, fitSignatureAt(data, 15.5), { usualSpread })!;
    expect(found.index).toBe(26); // 26 weeks before, 30 after
    expect(found.before.slope).toBeCloseTo(0.39324, 5); // Venables and Ripley (2002), whiteside
    expect(found.after.slope).toBeCloseTo(0.27793, 5); // the same
    expect(found.share).toBeCloseTo(-0.29, 2); // 29 % less
    expect(found.latest - found.earliest).toBeLessThanOrEqual(2);
    expect(found.sure).toBeGreaterThan(0.97);
  });
});
