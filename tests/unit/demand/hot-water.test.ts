import { describe, expect, test } from 'vitest';
import { COMMON_MONTH_DAYS } from '../../../src/model/calendar/civil.ts';
import { cylinderLossKWhPerDay } from '../../../src/model/demand/cylinder-loss.ts';
import { reckonHotWater } from '../../../src/model/demand/hot-water.ts';
import { drawOfPeople } from '../../../src/model/demand/hot-water-draw.ts';
import { peopleOfFloorArea } from '../../../src/model/demand/occupancy.ts';
import type { Household } from '../../../src/model/shapes/household.ts';
import { reference } from '../../../src/reference/index.ts';
import { household, typed } from './fixtures.ts';

const sum = (values: readonly number[]) => values.reduce((total, v) => total + v, 0);
const reckon = (parts: Partial<Household>) => reckonHotWater(household(parts), COMMON_MONTH_DAYS, reference);
/** By the people: `drawOfPeople` is held against published worksheets elsewhere. */
const byPeople = (people: number, showersDraw = true) =>
  drawOfPeople({ people, showerLitresPerMinute: 7, showersDraw }, COMMON_MONTH_DAYS, reference.hotWater).kWh;
/** 4.18 kJ a litre and K, 3,600 kJ a kWh. */
const byLitres = (litres: number, hotC: number) =>
  COMMON_MONTH_DAYS.map((days, m) => {
    const warmedK = Math.max(0, hotC - reference.hotWater.coldMainsC[m]!);
    return (4.18 * litres * reference.hotWater.behaviourFactor[m]! * days * warmedK) / 3600;
  });
const present = { system: 'gas-condensing' } as const;
const foamed = (litres: number) => cylinderLossKWhPerDay({ litres, foamMm: 50, separatelyTimed: true });

describe('hot water of a year: drawn off, cylinder, error, grade', () => {
  test.each([
    ['people counted', { home: { people: typed(3, 'measured') } }, byPeople(3), foamed(180), 0.3, 'estimated', 3],
    ['people guessed by hand', { home: { people: typed(3, 'assumed') } }, byPeople(3), foamed(180), 0.4, 'assumed', 3],
    [
      'people by the area',
      { home: { floorAreaM2: typed(70) } },
      byPeople(peopleOfFloorArea(70)),
      foamed(180),
      0.4,
      'assumed',
      peopleOfFloorArea(70),
    ],
    ['nothing known: 2.4 people', {}, byPeople(2.4), foamed(180), 0.4, 'assumed', 2.4],
    [
      'showers that heat themselves',
      { home: { people: typed(3) }, present: { ...present, hotWaterFrom: 'electric-shower' } },
      byPeople(3, false),
      foamed(180),
      0.3,
      'estimated',
      3,
    ],
    [
      'litres estimated',
      { hotWater: { litresPerDay: typed(120) } },
      byLitres(120, 52),
      foamed(180),
      0.2,
      'estimated',
      2.4,
    ],
    [
      'litres measured, at 48 °C',
      { hotWater: { litresPerDay: typed(120, 'measured'), hotC: typed(48) } },
      byLitres(120, 48),
      foamed(180),
      0.1,
      'measured',
      2.4,
    ],
    [
      'a cylinder of 250 litres',
      { home: { people: typed(3) }, hotWater: { cylinderLitres: typed(250) } },
      byPeople(3),
      1.605,
      0.3,
      'estimated',
      3,
    ],
    [
      'a cylinder with its loss',
      { home: { people: typed(3) }, hotWater: { cylinderLossKWhPerDay: typed(2) } },
      byPeople(3),
      2,
      0.3,
      'estimated',
      3,
    ],
    [
      'no cylinder loss at all',
      { home: { people: typed(3) }, hotWater: { cylinderLossKWhPerDay: typed(0) } },
      byPeople(3),
      0,
      0.3,
      'estimated',
      3,
    ],
  ] satisfies [string, Partial<Household>, readonly number[], number, number, string, number][])(
    '%s',
    (_name, parts, drawn, lossPerDay, share, grade, people) => {
      const found = reckon(parts);
      for (const [m, days] of COMMON_MONTH_DAYS.entries())
        expect(found.monthlyKWh[m]).toBeCloseTo(drawn[m]! + days * lossPerDay, 1.2);
      expect(found.kWh).toBeCloseTo(sum(drawn) + 365 * lossPerDay, 0);
      expect(found.kWh).toBeCloseTo(sum(found.monthlyKWh), 9);
      expect(found.errorKWh).toBeCloseTo(share * sum(drawn), 6);
      expect([found.grade, found.people]).toEqual([grade, people]);
      const [drawnOff, cylinder] = found.working.inputs;
      expect(drawnOff!.value).toBeCloseTo(sum(drawn), 6);
      expect(cylinder!.value).toBeCloseTo(lossPerDay, 3);
      expect(found.working.steps![0]!.result.value).toBeCloseTo(sum(drawn), 6);
    },
  );
  test('a cylinder that was named is estimated, another one assumed', () => {
    const gradeOf = (hotWater: Household['hotWater']) => reckon({ hotWater }).working.inputs[1]!.grade;
    expect([gradeOf({}), gradeOf({ cylinderLitres: typed(250) })]).toEqual(['assumed', 'estimated']);
  });
  test('the working of the draw names people and shower, or litres and temperature', () => {
    const inputs = (parts: Partial<Household>) => reckon(parts).working.steps![0]!.inputs.map(({ value }) => value);
    expect(inputs({ home: { people: typed(4) } })).toEqual([4, 7]);
    expect(inputs({ hotWater: { litresPerDay: typed(120) } })).toEqual([120, 52]);
  });
});
