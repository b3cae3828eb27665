import { describe, expect, test } from 'vitest';
import { coefficientOfDesignLoad, demandFromHeatLoss } from '../../../src/model/demand/from-heat-loss.ts';
import { demandFromCertificate, demandFromFloorArea } from '../../../src/model/demand/from-papers.ts';
import type { Household } from '../../../src/model/shapes/household.ts';
import type { ClimateRegion, Reference } from '../../../src/model/shapes/reference.ts';
import { reference } from '../../../src/reference/index.ts';
import { household, typed, year } from './fixtures.ts';

const Z90 = 1.2816;
const dd = (baseC: number) => year.dailyMeanC.reduce((sum, c) => sum + Math.max(0, baseC - c), 0);

describe('the certificate’s own figures, a quarter unsure', () => {
  test.each([
    ['measured', 'estimated'],
    ['estimated', 'estimated'],
    ['assumed', 'assumed'],
  ] as const)('%s becomes %s', (given, grade) => {
    const heat = { certificateSpaceKWh: typed(12_000, given), certificateWaterKWh: typed(2000) };
    const water = { waterKWh: 2000, waterErrorKWh: 500 };
    expect(demandFromCertificate(heat)).toMatchObject({
      way: 'certificate',
      spaceKWh: 12_000,
      spaceErrorKWh: 3000,
      grade,
      ...water,
    });
  });
  test('without hot water it says nothing of it; without heat it says nothing', () => {
    expect(demandFromCertificate({ certificateSpaceKWh: typed(12_000) })).not.toHaveProperty('waterKWh');
    expect(demandFromCertificate({ certificateWaterKWh: typed(2000) })).toBeNull();
  });
});

describe('floor area with age', () => {
  const row = (ageBand: string, low: number, middle: number, high: number) => ({
    ageBand,
    low,
    middle,
    high,
    source: ageBand,
    provenance: 'memory' as const,
  });
  const made: Reference = {
    ...reference,
    spacePerM2: [row('before 1930', 80, 100, 125), row('2003 to 2012', 160, 200, 250)],
  };
  const average = reference.regions.find(({ id }) => id === 0)!;
  const estimate = (home: Household['home'], region: ClimateRegion = average) =>
    demandFromFloorArea(home, region, made);

  test('area × heat per m² of the band; the spread of the band is its error', () => {
    const found = estimate({ floorAreaM2: typed(120), ageBand: typed('2003 to 2012') });
    expect(found.spaceKWh).toBeCloseTo(120 * 200, 6);
    expect(found.spaceErrorKWh / found.spaceKWh).toBeCloseTo(Math.log(250 / 160) / (2 * Z90), 9);
    expect(found).toMatchObject({
      way: 'floor-area',
      grade: 'assumed',
      working: { source: '2003 to 2012', inputs: [{ value: 120 }, { value: 200 }, {}] },
    });
  });
  test.each([
    ['no age', undefined],
    ['an age that is not listed', typed('1967 to 1982' as const)],
  ])('%s: the mean of the bands, as wide as each and as far as they lie apart', (_name, ageBand) => {
    const found = estimate({ floorAreaM2: typed(120), ...(ageBand ? { ageBand } : {}) });
    expect(found.spaceKWh).toBeCloseTo(120 * 150, 6);
    // Both bands reach a factor of 1.25 either way; they lie ln(150/100) and ln(200/150) from their mean.
    const among = Math.sqrt((Math.log(1.5) ** 2 + Math.log(4 / 3) ** 2) / 2);
    expect(found.spaceErrorKWh / found.spaceKWh).toBeCloseTo(Math.sqrt((Math.log(1.25) / Z90) ** 2 + among ** 2), 9);
    expect(found.working.inputs[1]!.value).toBe(150);
  });
  test('an area nobody named is 90 m², half or double: 0.4 more by squares', () => {
    const found = estimate({ ageBand: typed('before 1930') });
    expect(found.spaceKWh).toBeCloseTo(9000, 6);
    expect(found.spaceErrorKWh / 9000).toBeCloseTo(Math.hypot(Math.log(125 / 80) / (2 * Z90), 0.4), 9);
    const titleOf = (home: Household['home']) => estimate(home).working.title;
    expect([titleOf({}), titleOf({ floorAreaM2: typed(120) })]).toEqual([
      { code: 'room-heat-of-usual-home' },
      { code: 'room-heat-by-floor-area' },
    ]);
  });
  test('a colder region needs more by its degree days (E. R. Hitchin’s formula)', () => {
    const days = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
    const hitchin = ({ monthlyMeanC }: ClimateRegion) =>
      monthlyMeanC.reduce((sum, c, m) => sum + (days[m]! * (15.5 - c)) / (1 - Math.exp(-0.71 * (15.5 - c))), 0);
    const north = reference.regions.find(({ id }) => id === 20)!;
    const found = estimate({ floorAreaM2: typed(100), ageBand: typed('before 1930') }, north);
    expect(found.spaceKWh).toBeCloseTo((10_000 * hitchin(north)) / hitchin(average), 5);
    expect(found.spaceKWh).toBeGreaterThan(10_500);
  });
});

describe('heat loss', () => {
  const find = (heat: Household['heat'], home: Household['home'] = {}, roomC = 20) =>
    demandFromHeatLoss(household({ heat, home }), typed(roomC), year, reference);
  test('none typed is missing, without a question', () => {
    expect(find({})).toEqual({ missing: 'no-heat-loss', questions: [] });
  });
  test.each([
    ['measured', 0.08, 'estimated'],
    ['estimated', 0.15, 'estimated'],
    ['assumed', 0.25, 'assumed'],
  ] as const)('%s: its error, and that of the base temperature, by squares', (given, share, grade) => {
    const found = find({ heatLossKW: typed(6, given), designOutdoorC: typed(-4), baseC: typed(15) });
    const spaceKWh = (250 * dd(15) * 24) / 1000;
    const ofBase = ((250 * 24) / 1000) * ((dd(15.8) - dd(14.2)) / 2);
    expect(found.wPerK).toBeCloseTo(250, 9);
    expect(found.baseC).toBe(15);
    expect(found.estimate!.grade).toBe(grade);
    expect(found.estimate!.spaceKWh).toBeCloseTo(spaceKWh, 6);
    expect(found.estimate!.spaceErrorKWh).toBeCloseTo(Math.sqrt((share * spaceKWh) ** 2 + ofBase ** 2), 6);
    expect(found.questions).toEqual([]);
  });
  test.each([
    // kW over 20 K; area; whether it is hardly a home: beyond 20 to 2,500 W/K, or 0.3 to 8 W/K a m².
    [0.4, undefined, false],
    [0.39, undefined, true],
    [50, undefined, false],
    [50.1, undefined, true],
    [0.6, 100, false],
    [0.59, 100, true],
    [16, 100, false],
    [16.1, 100, true],
  ])('%d kW over 20 K on %s m² asked about: %s', (kW, area, asked) => {
    const { questions } = find(
      { heatLossKW: typed(kW), designOutdoorC: typed(0), baseC: typed(15) },
      area ? { floorAreaM2: typed(area) } : {},
    );
    expect(questions.map(({ code }) => code)).toEqual(asked ? ['heat-loss-unlikely'] : []);
    if (!asked) return;
    const [wPerK, perM2] = [kW * 50, area ? (kW * 50) / area : 0];
    expect(questions[0]!.data).toEqual({
      heatLossWPerK: expect.closeTo(wPerK, 9),
      floorAreaM2: area ?? 0,
      wattsPerKM2: expect.closeTo(perM2, 9),
    });
  });
  test.each([
    [-1, 20, 0, 'heat-loss-zero'],
    [6, 10, 10, 'room-below-design'],
    [6, 10, 10.1, 'room-below-design'],
    [6, 10, 9.9, undefined],
  ])('%d kW, room at %d and outdoors at %d °C: %s', (kW, roomC, outdoorC, missing) => {
    const found = find({ heatLossKW: typed(kW), designOutdoorC: typed(outdoorC), baseC: typed(9) }, {}, roomC);
    expect(found.missing).toBe(missing);
    if (missing) expect(found.questions).toMatchObject([{ code: missing, weight: 'refusal' }]);
  });
  test('6.1 kW between 21 and −3.4 °C is 250 W/K', () =>
    expect(coefficientOfDesignLoad(6.1, 21, -3.4)).toBeCloseTo(250, 9));
});
