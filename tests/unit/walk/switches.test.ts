import { describe, expect, test } from 'vitest';
import { householdWith, switchesOf, type Turned } from '../../../src/screens/walk/choose/switches.ts';
import { makeTariff } from '../appraisal/make-household.ts';
import { larchRiseHousehold } from '../leave-behind/larch-rise.ts';

const usual = {
  ...larchRiseHousehold(),
  tariffs: [makeTariff('own', [{ name: 'all hours', pencePerKWh: 25, times: 'rest' }])],
};
const night = { ...usual, hotWater: { ...usual.hotWater, hours: 'night' as const } };

describe('hot water at night, switched at the table', () => {
  test.each<[typeof usual, Turned, boolean]>([
    [usual, [], false],
    [usual, ['night-water'], true],
    [night, [], true],
    [night, ['night-water'], false],
  ])('stands as the household has it, and otherwise once it is turned (%#)', (household, turned, isOn) => {
    expect(switchesOf(household, turned)[0]).toEqual({ name: 'night-water', label: 'hot water at night', isOn });
    expect(householdWith(household, turned).hotWater.hours === 'night').toBe(isOn);
  });

  test('turned and turned again leaves the household as it was', () => {
    const { hours: _, ...asSet } = usual.hotWater;
    const plain = { ...usual, hotWater: asSet };
    expect(householdWith(householdWith(plain, ['night-water']), ['night-water'])).toEqual(plain);
  });
});

test('hours are no choice where no tariff is typed: on the published average each costs the same', () => {
  expect(switchesOf({ ...usual, tariffs: [] }, [])).toEqual([]);
});

test('the best hours are switched on and off, beside a battery too, and on the published average where the sun makes hours better', () => {
  const on = householdWith(usual, ['best-hours']);
  expect(on.comfort).toEqual({ hours: 'best' });
  expect(householdWith(on, ['best-hours']).comfort).toEqual({});
  const names = (household: typeof usual) => switchesOf(household, []).map(({ name }) => name);
  expect(names(usual)).toEqual(['night-water', 'best-hours']);
  expect(names({ ...usual, battery: { usableKWh: 5 } })).toEqual(['night-water', 'best-hours', 'battery']);
  const roof = { panels: [{ kWp: 4, facing: 'S' as const, pitchDegrees: 30, shading: 'little' as const }] };
  expect(names({ ...usual, tariffs: [], roof })).toEqual(['best-hours', 'roof']);
});

test('roof, battery and car stand there only where the household has them, and are taken out by themselves', () => {
  const equipped = { ...usual, battery: { usableKWh: 5 }, car: {} };
  expect(switchesOf(equipped, ['car']).map(({ name, isOn }) => [name, isOn])).toEqual([
    ['night-water', usual.hotWater.hours === 'night'],
    ['best-hours', false],
    ['battery', true],
    ['car', false],
  ]);
  const left = householdWith(equipped, ['car']);
  expect(left).toEqual({ ...usual, battery: { usableKWh: 5 } });
});
