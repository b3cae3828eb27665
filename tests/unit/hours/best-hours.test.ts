/** What the best hours of a tariff save in a whole home, and what they keep to. */
import { describe, expect, test } from 'vitest';
import { compareTariffs } from '../../../src/model/choices/compare-tariffs.ts';
import { homeWarmth, shareCooled } from '../../../src/model/hours/warmth.ts';
import type { Household } from '../../../src/model/shapes/household.ts';
import type { Tariff } from '../../../src/model/shapes/tariff.ts';
import { reference } from '../../../src/reference/index.ts';
import { makeHousehold, makeTariff } from '../appraisal/make-household.ts';

describe('a home without heat', () => {
  // 100 m², 20 °C indoors, 5 °C outdoors, no gains: worked out from ISO 13790's masses apart from this program.
  test.each([
    ['very light', 100, 22.2, 1.89],
    ['light', 300, 10.2, 3.82],
    ['medium', 200, 22.9, 1.84],
    ['heavy', 150, 48.1, 0.91],
    ['very heavy', 100, 102.8, 0.43],
  ] as const)('built %s, losing %i W/K, cools as published', (mass, wPerK, hours, dropK) => {
    const { timeConstantHours, known } = homeWarmth({ mass }, wPerK, 100);
    expect(known).toBe('built');
    expect(timeConstantHours).toBeCloseTo(hours, 1);
    expect(Math.abs(15 * shareCooled(3, timeConstantHours) - dropK)).toBeLessThanOrEqual(0.01);
  });
  test('nobody has described keeps warm for the short end of what was measured; a typed time stands above', () => {
    expect(homeWarmth({ mass: 'heavy' }, 200, undefined)).toMatchObject({ timeConstantHours: 15, known: 'assumed' });
    expect(homeWarmth({ mass: 'heavy', timeConstantHours: 40 }, 200, 100).kWhPerK).toBeCloseTo(8, 9);
  });
});

const night: Tariff = makeTariff('two', [
  { name: 'night', pencePerKWh: 10, times: [{ from: '00:30', to: '07:30' }] },
  { name: 'day', pencePerKWh: 30, times: 'rest' },
]);
const compared = (comfort: Household['comfort'], more: Partial<Household> = {}) => {
  const household = makeHousehold({
    prices: { electricityTariffId: 'two' },
    tariffs: [night, makeTariff('flat', 25)],
    ...(comfort ? { comfort } : {}),
    ...more,
  });
  const { costs } = compareTariffs({ household, series: [], reference, asOf: '2026-11-28', draws: 64 })!;
  return {
    two: costs.find(({ tariffId }) => tariffId === 'two')!,
    flat: costs.find(({ tariffId }) => tariffId === 'flat')!,
  };
};

describe('the best hours of a tariff', () => {
  const usual = compared(undefined);
  const best = compared({ hours: 'best' });

  test('are those of the home as it stands, whatever was asked before', () => {
    const savingOf = (comfort: Household['comfort'], more: Partial<Household> = {}) =>
      compared(comfort, more).two.bestHours!.saving.value;
    const floor = { value: 200, grade: 'measured', origin: 'typed' } as const;
    const cases = [
      () => savingOf(undefined),
      () => savingOf({ downK: 0.2 }),
      () => savingOf({ mass: 'heavy' }, { home: { floorAreaM2: floor } }),
      () => savingOf(undefined, { hotWater: { cylinderLitres: { ...floor, value: 90 } } }),
    ];
    const first = cases.map((of) => of());
    expect(new Set(first).size).toBe(cases.length);
    expect(cases.toReversed().map((of) => of())).toEqual(first.toReversed());
  });

  test('show a cold day: more heat than usual in its cheap hours, less in its dear ones, the rooms within the band', () => {
    const { day } = best.two.bestHours!;
    const kWhAt = (kW: readonly number[], pence: number) =>
      kW.reduce((sum, one, i) => sum + (day.pencePerKWh[i] === pence ? one / 2 : 0), 0);
    expect(day.pencePerKWh.filter((pence) => pence === 10)).toHaveLength(14);
    expect(kWhAt(day.bestKW, 10)).toBeGreaterThan(kWhAt(day.usualKW, 10) + 1);
    expect(kWhAt(day.bestKW, 30)).toBeLessThan(kWhAt(day.usualKW, 30) - 1);
    expect(Math.min(...day.roomC)).toBeGreaterThanOrEqual(20 - 1e-6);
    expect(Math.max(...day.roomC)).toBeLessThanOrEqual(21.5 + 1e-6);
    // Warmest when the cheap hours end.
    const warmest = day.roomC.indexOf(Math.max(...day.roomC));
    expect(warmest).toBeGreaterThanOrEqual(2);
    expect(warmest).toBeLessThanOrEqual(15);
  });

  test('save what they say, once they are chosen; a range stands about it', () => {
    const { saving, counted } = usual.two.bestHours!;
    expect(counted).toBe(false);
    expect(saving.value).toBeGreaterThan(5000);
    expect(saving.low).toBeLessThan(saving.value);
    expect(saving.high).toBeGreaterThan(saving.value);
    expect(best.two.bestHours!.counted).toBe(true);
    expect(usual.two.whole.value - best.two.whole.value).toBeCloseTo(saving.value, 6);
    expect(usual.two.heatingPence - best.two.heatingPence).toBeCloseTo(saving.value, 6);
  });
  test('never cost less than every unit of the heating at the cheapest price', () => {
    expect(best.two.heatingPence).toBeGreaterThan((usual.flat.heatingPence * 10) / 25);
  });
  test('do nothing on one price all day', () => {
    expect(best.flat.bestHours).toBeUndefined();
    expect(best.flat.whole.value).toBeCloseTo(usual.flat.whole.value, 6);
  });
  test('save less the more a battery already moves by night, and never cost more', () => {
    const savedBeside = (usableKWh: number) => {
      const more = { battery: { usableKWh, fromNight: true } };
      const [without, counted] = [undefined, 'best' as const].map(
        (hours) => compared({ ...(hours ? { hours } : {}) }, more).two,
      );
      const { saving, day } = counted!.bestHours!;
      expect(without!.whole.value - counted!.whole.value).toBeCloseTo(saving.value, 6);
      // The price shown is that of the tariff, whatever the battery makes of it.
      expect([...new Set(day.pencePerKWh)].toSorted()).toEqual([10, 30]);
      return saving.value;
    };
    const [small, large] = [savedBeside(2), savedBeside(40)];
    expect(small).toBeLessThan(usual.two.bestHours!.saving.value * 1.02);
    expect(large).toBeLessThan(small);
    expect(large).toBeGreaterThanOrEqual(0);
  });
  test('take the sun on one price all day: more heat at noon, and less than a kWh of sun earns otherwise is not saved', () => {
    const roof = (exportPence: number) => ({
      roof: {
        panels: [{ kWp: 5, facing: 'S', pitchDegrees: 30, shading: 'little' } as const],
        exportPencePerKWh: { value: exportPence, grade: 'measured', origin: 'typed' } as const,
      },
    });
    const onFlat = { tariffs: [makeTariff('flat', 25)], prices: { electricityTariffId: 'flat' } };
    const [low, high, same] = [5, 15, 25].map(
      (pence) => compared(undefined, { ...roof(pence), ...onFlat }).flat.bestHours!.saving.value,
    );
    expect(low).toBeGreaterThan(1000);
    expect(high).toBeLessThan(low!);
    expect(Math.abs(same!)).toBeLessThan(150);
  });
  test('are those of the other heat pump too', () => {
    const of = ({ two }: typeof best) => two.others.find(({ id }) => id === 'air-source')!.pence!;
    expect(of(usual) - of(best)).toBeGreaterThan(5000);
    expect(best.flat.others).toEqual(usual.flat.others);
  });
  test('keep the rooms within the band, and move more of a narrower one less', () => {
    const wide = usual.two.bestHours!;
    expect(wide.mostRoomC - wide.leastRoomC).toBeLessThanOrEqual(1.5 + 1e-9);
    const narrow = compared({ downK: 0.5, upK: 0 }).two.bestHours!;
    expect(narrow.saving.value).toBeLessThan(wide.saving.value);
    expect(narrow.mostRoomC - narrow.leastRoomC).toBeLessThanOrEqual(0.5 + 1e-9);
  });
  test('never take the rooms below 18 °C', () => {
    const heat = { roomC: { value: 18.4, grade: 'estimated', origin: 'asked' } } as const;
    const cool = compared({ downK: 3 }, { heat: { ...makeHousehold().heat, ...heat } }).two.bestHours!;
    expect(cool.leastRoomC).toBeGreaterThanOrEqual(18 - 1e-9);
  });
  test('move hot water alone where the rooms may not move', () => {
    const still = compared({ downK: 0, upK: 0 }).two.bestHours!;
    expect(still.mostRoomC - still.leastRoomC).toBeLessThan(1e-9);
    expect(still.saving.value).toBeGreaterThan(0);
    expect(still.saving.value).toBeLessThan(usual.two.bestHours!.saving.value);
  });
});
