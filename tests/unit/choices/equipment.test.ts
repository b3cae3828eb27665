/** Roof, battery and car of one home laid over a year, and what its best hours show, by hand. */
import { expect, test } from 'vitest';
import { yearSlots } from '../../../src/model/calendar/zone.ts';
import { changeByEquipment, factsOfRoof, layEquipment } from '../../../src/model/choices/roof-battery-car.ts';
import { heatAndMachine, hoursOn, savingOf } from '../../../src/model/choices/save-by-hours.ts';
import { choosePrices } from '../../../src/model/comparison/prices-of.ts';
import { heatOfHousehold } from '../../../src/model/heat-of-household.ts';
import { findBestHours } from '../../../src/model/hours/best-hours.ts';
import { homeWarmth } from '../../../src/model/hours/warmth.ts';
import type { Household } from '../../../src/model/shapes/household.ts';
import { ownUseByStandard, sunByMonth } from '../../../src/model/sun/sun-by-month.ts';
import { penceBySlot, rateBuckets } from '../../../src/model/tariff/slot-price.ts';
import type { YearTerms } from '../../../src/model/uncertainty/simulate.ts';
import { reference } from '../../../src/reference/index.ts';
import { type HouseholdChange, makeHousehold, makeTariff, typed } from '../appraisal/make-household.ts';

const slots = yearSlots(2027, 'Europe/London');
const midlands = reference.regions.find(({ id }) => id === 6)!;
const asOf = '2026-11-28';
const roof: Household['roof'] = {
  panels: [{ kWp: 4, facing: 'S', pitchDegrees: 30, shading: 'little' }],
  exportPencePerKWh: typed(15),
};
const two = makeTariff('two', [
  { name: 'night', pencePerKWh: 10, times: [{ from: '00:30', to: '07:30' }] },
  { name: 'day', pencePerKWh: 30, times: 'rest' },
]);
const lay = (change: HouseholdChange) => layEquipment(makeHousehold(change), midlands, slots, reference, asOf);
const even = (value: number) => new Float64Array(slots.count).fill(value);
const sum = (values: ArrayLike<number>) => Array.from(values).reduce((total, one) => total + one, 0);
/** 2 p a kWh and 5 p for having bought at all. */
const priceUnits = (kWh: Float64Array) => 2 * sum(kWh) + (sum(kWh) > 0 ? 5 : 0);

test('a home with none of them has nothing laid; one of them is enough, and only a roof is paid', () => {
  expect(lay({})).toBeNull();
  expect(lay({ car: {} })).toMatchObject({ sunKWh: undefined, battery: undefined, exportPence: 0 });
  expect(lay({ battery: { usableKWh: 5 } })).toMatchObject({ sunKWh: undefined, car: undefined, exportPence: 0 });
  expect(lay({ roof })).toMatchObject({ battery: undefined, car: undefined, exportPence: 15 });
});

test('a car alone adds its units; what its charger cannot give is told', () => {
  const car = { kmPerYear: typed(10_000), kWhPer100Km: typed(20) };
  const change = changeByEquipment(lay({ car })!, even(0.25), even(20), priceUnits);
  expect(change).toMatchObject({ exportPence: 0, ownUseKWh: 0, soldKWh: 0, filledKWh: 0, batteryLossKWh: 0 });
  expect([change.unitsPence, change.carKWh, change.carLeftKWh]).toEqual([
    expect.closeTo(4000, 6),
    expect.closeTo(2000, 6),
    expect.closeTo(0, 6),
  ]);
  const slow = lay({ car: { kmPerYear: typed(150_000), kWhPer100Km: typed(20), chargerKW: typed(1) } })!;
  const short = changeByEquipment(slow, even(0.25), even(20), priceUnits);
  // 23 kWh go into the shortest day, and so into each.
  expect([short.carKWh, short.carLeftKWh]).toEqual([expect.closeTo(365 * 23, 6), expect.closeTo(30_000 - 365 * 23, 6)]);
});

test('what does not fit into the hours of a car at home is told apart', () => {
  // 2,000 kWh are 5.48 a day; of 1 kW from 02:00 to 05:00 three fit, on the days on which the clock changes too.
  const car = { kmPerYear: typed(10_000), kWhPer100Km: typed(20), chargerKW: typed(1), from: '02:00', until: '05:00' };
  const change = changeByEquipment(lay({ car })!, even(0.25), even(20), priceUnits);
  expect(change.carOutsideKWh).toBeCloseTo(2000 - 365 * 3, 6);
  const fits = lay({ car: { ...car, chargerKW: typed(7) } })!;
  expect(changeByEquipment(fits, even(0.25), even(20), priceUnits).carOutsideKWh).toBeUndefined();
});

test('a roof alone takes off what is used at once and is paid for the rest', () => {
  const own = lay({ roof })!;
  const change = changeByEquipment(own, even(0.25), even(20), priceUnits);
  const made = sum(own.sunKWh!);
  expect(change.ownUseKWh + change.soldKWh).toBeCloseTo(made, 6);
  expect(change.unitsPence).toBeCloseTo(-2 * change.ownUseKWh, 6);
  expect(change.exportPence).toBeCloseTo(15 * change.soldKWh, 6);
  expect([change.carKWh, change.carLeftKWh]).toEqual([0, 0]);
});

test('what is said of a roof: its year, its cold months, and its own use by the standard with battery and car', () => {
  const household = makeHousehold({
    roof,
    battery: { usableKWh: 5 },
    car: { kmPerYear: typed(6000), kWhPer100Km: typed(20) },
  });
  const own = layEquipment(household, midlands, slots, reference, asOf)!;
  const facts = factsOfRoof(household, own, even(0.25), midlands, reference, asOf)!;
  const months = sunByMonth(roof.panels, midlands, reference.sun);
  // 12 kWh a day, but for an hour less and one more where the clock changes; 1,200 kWh of the car evenly.
  const needed = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31].map(
    (days, month) => 12 * days + 100 + (month === 2 ? -0.5 : month === 9 ? 0.5 : 0),
  );
  expect(facts.madeKWh).toBeCloseTo(sum(months), 9);
  expect(facts.coldShare).toBeCloseTo((months[10]! + months[11]! + months[0]! + months[1]!) / sum(months), 12);
  expect(facts.standardUseKWh).toBeCloseTo(ownUseByStandard(months, needed, 5), 6);
  expect([facts.exportPay?.value, facts.source]).toEqual([15, reference.sun.source]);
  const bare = makeHousehold({ roof });
  const alone = factsOfRoof(
    bare,
    layEquipment(bare, midlands, slots, reference, asOf)!,
    even(0.25),
    midlands,
    reference,
    asOf,
  )!;
  expect(alone.standardUseKWh).toBeCloseTo(
    ownUseByStandard(
      months,
      needed.map((kWh) => kWh - 100),
      0,
    ),
    6,
  );
  expect(factsOfRoof(makeHousehold(), own, even(0.25), midlands, reference, asOf)).toBeUndefined();
});

test('a cylinder holds 4.186 kJ a litre and kelvin over 10 °C, of which 0.8 comes out hot: as much is moved', () => {
  const household = makeHousehold({
    prices: { electricityTariffId: 'two' },
    tariffs: [two],
    hotWater: { cylinderLitres: typed(120), hotC: typed(55) },
  });
  const settle = heatOfHousehold({ household, series: [], reference, asOf });
  const heat = heatAndMachine(settle, []);
  const prices = choosePrices({ household, reference, asOf });
  const terms = { spacePence: 80_000, waterPence: 20_000 } as YearTerms;
  const savedWith = (cylinderKWh: number) =>
    findBestHours({
      year: heat.year,
      pencePerKWh: penceBySlot(rateBuckets(prices.electricity.version, heat.year.slots)),
      warmth: homeWarmth({}, settle.demand.heatLossWPerK, undefined, null),
      roomC: settle.demand.roomC,
      comfort: {},
      cylinderKWh,
      movesWater: true,
    });
  // 120 × 45 × 4.186 / 3600 × 0.8 = 5.0232 kWh; a larger one would save more.
  const saved = hoursOn(heat, prices, terms, null)!.terms;
  const { spaceSaved, waterSaved } = savedWith(5.0232);
  expect([saved.spacePence, saved.waterPence]).toEqual([
    expect.closeTo(80_000 * spaceSaved, 6),
    expect.closeTo(20_000 * waterSaved, 6),
  ]);
  expect(spaceSaved).toBeGreaterThan(0.01);
  expect(savedWith(5.1).waterSaved).toBeGreaterThan(waterSaved + 1e-4);
});

test('beside a battery that gives all that is used by day, best hours save what they do where a kWh costs what it gives it at', () => {
  const three = makeTariff('three', [
    { name: 'night', pencePerKWh: 14, times: [{ from: '02:00', to: '05:00' }] },
    { name: 'peak', pencePerKWh: 41, times: [{ from: '16:00', to: '19:00' }] },
    { name: 'day', pencePerKWh: 25, times: 'rest' },
  ]);
  const hotWater = { cylinderLitres: typed(120), hotC: typed(55) };
  const household = makeHousehold({ prices: { electricityTariffId: 'three' }, tariffs: [three], hotWater });
  const settle = heatOfHousehold({ household, series: [], reference, asOf });
  const heat = heatAndMachine(settle, []);
  const { year } = heat;
  const prices = choosePrices({ household, reference, asOf });
  const pence = penceBySlot(rateBuckets(prices.electricity.version, year.slots));
  const otherKWh = new Float64Array(year.slots.count).fill(0.2);
  // Whatever the clock says, a kWh costs 14 p in the three hours of the night and 14 / 0.85 p out of the battery.
  const { spaceSaved, waterSaved, electricity } = findBestHours({
    year,
    pencePerKWh: pence.map((one) => (one === 14 ? 14 : 14 / 0.85)),
    warmth: homeWarmth({}, settle.demand.heatLossWPerK, undefined, null),
    roomC: settle.demand.roomC,
    comfort: {},
    cylinderKWh: 5.0232,
    movesWater: true,
    atHome: { otherKWh, sunPence: 0 },
  });
  const { space, water } = electricity!.usual;
  const costOf = (kWh: Float64Array) => sum(kWh.map((one, i) => one * (pence[i] === 14 ? 14 : 14 / 0.85)));
  const terms = { spaceKWh: sum(space), waterKWh: sum(water) } as YearTerms;
  const battery = { usableKWh: 200, powerKW: 200, roundTripShare: 0.85, standbyW: 0, fromNight: true };
  const own = { slots: year.slots, sunKWh: undefined, battery, car: undefined, exportPence: 0 };
  const priceUnits = (kWh: Float64Array) => sum(kWh.map((one, i) => one * pence[i]!));
  const found = hoursOn(heat, prices, terms, { own, otherKWh, priceUnits })!.terms;
  const expected = spaceSaved * costOf(space) + waterSaved * costOf(water);
  expect(expected).toBeGreaterThan(100);
  expect((found.spacePence + found.waterPence) / expected).toBeCloseTo(1, 2);
});

test('the best hours take off shares of what rooms and hot water cost, and how far a cold day cools the home is told', () => {
  const on = (change: HouseholdChange = {}, tariff = two) => {
    const household = makeHousehold({ prices: { electricityTariffId: tariff.id }, tariffs: [tariff], ...change });
    const settle = heatOfHousehold({ household, series: [], reference, asOf });
    const heat = heatAndMachine(settle, []);
    const terms = {
      spacePence: 80_000,
      waterPence: 20_000,
      backupPence: 7,
      steadyPence: 7,
      fixedPence: 7,
    } as YearTerms;
    return { hours: hoursOn(heat, choosePrices({ household, reference, asOf }), terms, null), heat };
  };
  const { hours, heat } = on();
  const { terms, shown } = hours!;
  expect(terms).toMatchObject({ backupPence: 0, steadyPence: 0, ownElectricityPence: 0, electricWaterPence: 0 });
  expect(terms).toMatchObject({ fixedPence: 0, servicePence: 0 });
  const shared = {} as Parameters<typeof savingOf>[1];
  const saved = terms.spacePence + terms.waterPence;
  expect(savingOf(hours!, shared, 0)).toEqual({ value: saved, low: saved, high: saved });
  expect(saved).toBeGreaterThan(0);
  // The coldest month's mean, a home of which nobody has said how it is built: 15 hours.
  const { outdoorC, slots: ofYear } = heat.year;
  const { roomC } = heat.settle.demand;
  const meanOf = (values: Float64Array) => sum(values) / values.length;
  const coldest = Math.min(
    ...[0, 1, 11].map((month) => meanOf(outdoorC.filter((_, slot) => ofYear.month[slot] === month))),
  );
  expect(shown.coolsIn3HoursK).toBeCloseTo((roomC - coldest) * (1 - Math.exp(-3 / 15)), 6);
  expect(shown.warmth).toEqual({ known: 'assumed', timeConstantHours: 15 });
  expect([shown.leastRoomC, shown.mostRoomC]).toEqual([expect.closeTo(roomC - 1, 6), expect.closeTo(roomC + 0.5, 6)]);
  // Water that is made at night already saves nothing; one price, or no heat to move, has no best hours.
  expect(on({ hotWater: { hours: 'night' } }).hours!.terms.waterPence).toBe(0);
  expect(on({}, makeTariff('one', 25)).hours).toBeNull();
});
