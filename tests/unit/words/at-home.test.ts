import { describe, expect, test } from 'vitest';
import { groundAtHome, radiatorShare, waterAtHome } from '../../../src/model/at-home.ts';
import { tankSentence } from '../../../src/words/at-home.ts';
import { typed } from '../appraisal/make-household.ts';
import { larchRise, larchRiseHousehold } from '../leave-behind/larch-rise.ts';

const household = larchRiseHousehold();

describe('hot water of a full tank', () => {
  // 180 l from 10 to 52 °C are 8.8 kWh; 180 × 42 / 30 = 252 litres at 40 °C.
  test.each([
    [6, 87.78],
    [3, 175.56],
    [8, 65.835],
  ])('a machine of %d kW heats it in %d minutes', (kW, minutes) => {
    const water = waterAtHome({ ...household, hotWater: {}, heat: { heatLossKW: typed(kW) } });
    expect(water.reheatMinutes).toBeCloseTo(minutes, 3);
    expect(water.mixedLitres).toBeCloseTo(252, 3);
    expect([water.isOwn, water.kW]).toEqual([false, kW]);
  });
  test('the machine’s own output goes before the heat loss; without either nobody knows how long', () => {
    const machine = { ...household.machine, full: { capacityKW: typed(12) } };
    const water = waterAtHome({ machine, hotWater: { cylinderLitres: typed(180) }, heat: { heatLossKW: typed(6) } });
    expect(water).toMatchObject({ isOwn: true, kW: 12, tankLitres: 180, storeC: 52 });
    expect(waterAtHome({ machine: household.machine, hotWater: {}, heat: {} })).toMatchObject({
      kW: null,
      reheatMinutes: null,
    });
  });
  test('is said, the usual tank as a usual one', () => {
    const water = waterAtHome({ ...household, hotWater: {}, heat: { heatLossKW: typed(6) } });
    expect(tankSentence(water)).toBe(
      'A usual tank of 180 litres at 52 °C gives up to 250 litres for showers. At 6.0 kW it takes about 90 minutes to heat from cold.',
    );
    const own = waterAtHome({ ...household, hotWater: { cylinderLitres: typed(250), hotC: typed(55) }, heat: {} });
    expect(tankSentence(own)).toBe('A tank of 250 litres at 55 °C gives up to 370 litres for showers.');
  });
});

// Rated at 50 K above rooms of 20 °C, exponent 1.3, 5 K between flow and return.
test.each([
  [22, 0],
  [35, 0.16494],
  [40, 0.2554],
  [45, 0.35416],
  [50, 0.4597],
  [55, 0.57119],
])('at %d °C a radiator gives %d of its label', (flowC, share) => {
  expect(radiatorShare(flowC, 20)).toBeCloseTo(share, 4);
});

test('a borehole for 8 kW at a factor of 4', () => {
  const appraisal = larchRise();
  const machine = { ...appraisal.machine, space: { ...appraisal.machine.space, value: 4 } };
  const yields = { boreWPerM: [20, 60], trenchWPerM2: [10, 40] } as const;
  const home = { ...household, heat: { heatLossKW: typed(8) } };
  const ground = groundAtHome(home, { ...appraisal, machine }, yields)!;
  expect(ground.groundKW).toBeCloseTo(6, 9);
  expect(ground.boreM.map(Math.round)).toEqual([100, 300]);
  expect(ground.trenchM2.map(Math.round)).toEqual([150, 600]);
  expect(groundAtHome({ ...home, heat: {} }, appraisal, yields)).toBeNull();
});
