/** Roof, battery and car on each tariff, with each way of heating. */

import { expect, test } from 'vitest';
import { appraiseYears } from '../../../src/model/appraise.ts';
import { compareTariffs } from '../../../src/model/choices/compare-tariffs.ts';
import { layEquipment } from '../../../src/model/choices/roof-battery-car.ts';
import { heatAndMachine, hoursOn } from '../../../src/model/choices/save-by-hours.ts';
import { choosePrices } from '../../../src/model/comparison/prices-of.ts';
import { heatOfHousehold } from '../../../src/model/heat-of-household.ts';
import type { Household } from '../../../src/model/shapes/household.ts';
import type { Tariff } from '../../../src/model/shapes/tariff.ts';
import { sumOf } from '../../../src/model/units/sums.ts';
import { findRegion } from '../../../src/model/weather/region.ts';
import { reference } from '../../../src/reference/index.ts';
import { exactPounds } from '../../../src/words/numbers.ts';
import { systemName } from '../../../src/words/systems.ts';
import {
  choiceCountedWith,
  tariffCells,
  tariffHeads,
  tariffNotes,
  waysTable,
} from '../../../src/words/tariff-choice.ts';
import { tariffName } from '../../../src/words/which-tariff.ts';
import { makeHousehold, makeTariff } from '../appraisal/make-household.ts';

const asOf = '2026-11-29';
const night: Tariff = {
  ...makeTariff('night', [
    { name: 'night', pencePerKWh: 8, times: [{ from: '00:00', to: '05:30' }] },
    { name: 'day', pencePerKWh: 30, times: 'rest' },
  ]),
  name: 'Night',
};
const compare = (more: Partial<Household>) =>
  compareTariffs({
    household: makeHousehold({
      prices: { electricityTariffId: 'flat' },
      tariffs: [makeTariff('flat', 25), night],
      ...more,
    }),
    series: [],
    reference,
    asOf,
    draws: 64,
  })!;
/** One tariff alone is enough for what does not compare two: hours are searched for on each. */
const onFlat = { tariffs: [makeTariff('flat', 25)] };
const onNight = { tariffs: [night], prices: { electricityTariffId: 'night' } };
const on = (choice: ReturnType<typeof compare>, id: string | null) =>
  choice.costs.find(({ tariffId }) => tariffId === id)!;
const presentOn = (choice: ReturnType<typeof compare>) =>
  on(choice, 'flat').others.find(({ id }) => id === 'present')!.pence;
const given = (value: number) => ({ value, grade: 'estimated', origin: 'typed' }) as const;
const roof: Household['roof'] = {
  panels: [{ kWp: 4, facing: 'S', pitchDegrees: 30, shading: 'little' }],
  exportPencePerKWh: given(15),
};

test('without any of them nothing is changed', () => {
  const choice = compare({});
  expect(on(choice, 'flat').own).toBeUndefined();
  expect(choice.roof).toBeUndefined();
  expect(tariffHeads(choice)).toHaveLength(tariffCells(choice.costs[0]!, choice).length);
});

test('the parts add up to the whole, and on one price the sun saves what it replaces and earns what it sends out', () => {
  const choice = compare({ roof, ...onFlat });
  const plain = compare(onFlat);
  for (const { own, whole, heatingPence, restPence, standingPence } of choice.costs)
    expect(heatingPence + restPence + standingPence + own!.unitsPence - own!.exportPence).toBeCloseTo(whole.value, 6);
  const { own, whole } = on(choice, 'flat');
  expect(own!.unitsPence).toBeCloseTo(-25 * own!.ownUseKWh, 6);
  expect(own!.exportPence).toBeCloseTo(15 * own!.soldKWh, 6);
  expect(own!.ownUseKWh + own!.soldKWh).toBeCloseTo(choice.roof!.madeKWh, 6);
  expect(whole.value).toBeLessThan(on(plain, 'flat').whole.value);
  expect(choice.roof).toMatchObject({ exportPay: { value: 15 } });
  expect(choice.roof!.coldShare).toBeGreaterThan(0.1);
  expect(choice.roof!.coldShare).toBeLessThan(0.17);
});

test('the same roof stands beside the heating of today: what it saves there is no merit of the heat pump', () => {
  const [choice, plain] = [compare({ roof, ...onFlat }), compare(onFlat)];
  const saved = presentOn(plain)! - presentOn(choice)!;
  const withPump = on(plain, 'flat').whole.value - on(choice, 'flat').whole.value;
  expect(saved).toBeGreaterThan(0);
  // The pump takes more of the sun, so that it gains a little more by it, and far less than twice as much.
  expect(withPump).toBeGreaterThan(saved);
  expect(withPump).toBeLessThan(1.5 * saved);
});

test('every way of heating stands on its own best tariff, with the same roof, battery and car', () => {
  const household = { roof, battery: { usableKWh: 5 }, beside: { oil: true, 'direct-electric': true, storage: true } };
  const choice = compare({ ...household, home: { gasGrid: false } });
  const { rows, caption } = waysTable(choice);
  expect(caption).toContain('the same roof, battery and car');
  const ways = choice.costs[0]!.others.map(({ id }) => id);
  expect(ways).toContain('direct-electric');
  expect(rows).toHaveLength(1 + ways.length);
  for (const id of ways) {
    const onEach = choice.costs.map(({ others }) => others.find((one) => one.id === id)!.pence ?? Infinity);
    const best = choice.costs[onEach.indexOf(Math.min(...onEach))]!;
    expect(rows.map(({ cells }) => cells.join(' '))).toContainEqual(
      `${systemName(id, best.others.find((one) => one.id === id)!.kind, choice.source)} ${tariffName(best)} ${exactPounds(Math.min(...onEach))}`,
    );
  }
  // Heaters use more of the sun than a boiler does, so that the roof is worth more to them.
  const plain = compare({ beside: household.beside, home: { gasGrid: false } });
  const gain = (id: string) => {
    const of = (one: ReturnType<typeof compare>) => on(one, 'flat').others.find((other) => other.id === id)!.pence!;
    return of(plain) - of(compare({ ...household, battery: undefined, home: { gasGrid: false } }));
  };
  expect(gain('direct-electric')).toBeGreaterThan(gain('oil') + 1000);
});

test('on paper stands what was counted: tariff, hours, roof, battery and car', () => {
  const more = { roof, battery: { usableKWh: 5, fromNight: true }, car: { kmPerYear: given(10_000) } };
  const household = makeHousehold({ prices: { electricityTariffId: 'flat' }, ...more });
  expect(
    choiceCountedWith(household, compare({ ...more, ...onFlat })).map(({ what, says }) => `${what}: ${says}`),
  ).toEqual([
    'Tariff of this estimate: “Tariff flat”.',
    'Hours of the heat pump: The usual hours on each tariff.',
    'Solar panels: 4.0 kWp facing south, at a slope of 30°.',
    'Battery: 5.0 kWh usable. It is also filled from the grid in cheap hours.',
    'Electric car: 2,070 kWh a year charged at home.',
  ]);
});

test('a car is charged in the cheap hours of each tariff, and all its units are counted', () => {
  const car = { kmPerYear: given(10_000), kWhPer100Km: given(20), homeShare: given(0.8) };
  const choice = compare({ car });
  expect(on(choice, 'flat').own).toMatchObject({ soldKWh: 0, exportPence: 0 });
  expect(on(choice, 'flat').own!.carKWh).toBeCloseTo(1600, 6);
  expect(on(choice, 'flat').own!.unitsPence).toBeCloseTo(1600 * 25, 4);
  expect(on(choice, 'night').own!.unitsPence).toBeCloseTo(1600 * 8, 4);
  expect(on(choice, 'flat').own!.carLeftKWh).toBeCloseTo(0, 6);
});

test('what a car needs and its charger cannot give is named, and no unit of it is lost', () => {
  const car = { kmPerYear: given(150_000), kWhPer100Km: given(20), chargerKW: given(1) };
  const { own } = on(compare({ car }), 'flat');
  expect(own!.carKWh + own!.carLeftKWh).toBeCloseTo(30_000, 6);
  expect(own!.carKWh).toBeLessThanOrEqual(365 * 24);
  expect(own!.carKWh).toBeGreaterThan(8000);
});

test('a battery that may be filled at night earns where the night is cheap, and on one price only loses', () => {
  const battery = { usableKWh: 10, fromNight: true };
  const choice = compare({ battery });
  expect(on(choice, 'night').own!.unitsPence).toBeLessThan(-10_000);
  expect(on(choice, 'flat').own!.unitsPence).toBeCloseTo(25 * on(choice, 'flat').own!.batteryLossKWh, 6);
});

test('they are compared on the published average where no tariff was typed', () => {
  const choice = compare({ tariffs: [], prices: {}, roof });
  expect(choice.costs.map(({ tariffId }) => tariffId)).toEqual([null]);
});

test('a tariff that charges for the highest half-hour is left out with a battery', () => {
  const power = makeTariff('power', 20);
  const demand = { pencePerKWPerMonth: 300 };
  const tariffs = [{ ...power, versions: power.versions.map((one) => ({ ...one, demand })) }];
  const { leftOut } = compare({ tariffs, prices: {}, battery: { usableKWh: 5 } });
  expect(leftOut.map(({ why }) => why)).toEqual(['power-unknown']);
});

test('a tariff that pays its own price for what is sent out is counted with that', () => {
  const paying = { ...night, id: 'paying', versions: night.versions.map((one) => ({ ...one, exportPencePerKWh: 20 })) };
  const others = ['second', 'third', 'fourth'].map((id) => ({ ...paying, id, name: id }));
  const choice = compare({ roof, tariffs: [night, paying, ...others], prices: {} });
  const [other, own] = [on(choice, 'night'), on(choice, 'paying')];
  expect(own.own!.exportPence).toBeCloseTo((other.own!.exportPence / 15) * 20, 4);
  expect(own.whole.value).toBeLessThan(other.whole.value);
  const said = tariffNotes(choice).join(' ');
  expect(said).toContain('a kWh sent out is counted at 20.0 p, as that tariff pays. On the other tariffs a kWh');
  // One that is not named would be said to pay what the others do.
  expect(said.match(/as that tariff pays/g)).toHaveLength(4);
});

test('what is said: how much in the cold months, both figures of own use, what is paid and by whom it is known', () => {
  const notes = tariffNotes(compare({ roof: { panels: roof!.panels }, battery: { usableKWh: 5 }, car: {}, ...onFlat }));
  expect(notes).toContainEqual(
    expect.stringMatching(/^The panels make about .* 1[0-6]% of it from November to February/),
  );
  expect(notes).toContainEqual(
    expect.stringMatching(/uses about \d+% of it itself; the standard’s monthly rule says \d+%/),
  );
  expect(notes).toContainEqual(expect.stringMatching(/^A kWh sent out is counted at 9.3 p: Ofgem/));
  expect(notes).toContainEqual(expect.stringContaining('with the same roof, battery and car'));
  expect(notes).toContainEqual(expect.stringMatching(/^The car takes 3,350 kWh a year/));
});

test('more panels than a home could use, and more paid for a kWh than any costs, are asked about by name', () => {
  const notes = tariffNotes(
    compare({ roof: { panels: [{ ...roof!.panels[0]!, kWp: 100 }], exportPencePerKWh: given(26) }, ...onFlat }),
  );
  expect(notes.filter((note) => note.includes('Check'))).toEqual([
    'That is less than a tenth of what the panels make. Check their kWp: a home has seldom more than 20.',
    'On “Tariff flat” more is paid for a kWh sent out than any kWh costs. Check that price.',
  ]);
  expect(tariffNotes(compare({ roof, ...onFlat })).join(' ')).not.toContain('Check');
});

test('what hot water in the cheap hours saves is what the whole home pays less beside its roof, battery and car', () => {
  const more = { roof, battery: { usableKWh: 10, fromNight: true }, car: {}, ...onNight };
  const [usual, atNight] = [
    on(compare(more), 'night'),
    on(compare({ ...more, hotWater: { hours: 'night' } }), 'night'),
  ];
  expect(usual.nightWaterPence).toBeCloseTo(usual.whole.value - atNight.whole.value, 6);
  // The battery serves the day's hot water from the night already.
  expect(usual.nightWaterPence).toBeLessThan(0.9 * on(compare(onNight), 'night').nightWaterPence!);
});

test('on a stepped price the sun saves the last steps, not the first', () => {
  const stepped = makeTariff('stepped', [
    {
      name: 'all hours',
      pencePerKWh: 30,
      times: 'rest',
      blocks: { per: 'month', steps: [{ upToKWh: 50, pencePerKWh: 10 }] },
    },
  ]);
  const choice = compare({ tariffs: [stepped], prices: { electricityTariffId: 'stepped' }, roof });
  const { own } = on(choice, 'stepped');
  expect(own!.unitsPence).toBeCloseTo(-30 * own!.ownUseKWh, 4);
});

test('in the best hours the sun used at home is that of those hours', () => {
  const more = { roof, battery: { usableKWh: 5 }, comfort: { hours: 'best' as const }, ...onNight };
  const [usual, best] = [on(compare({ ...more, comfort: {} }), 'night'), on(compare(more), 'night')];
  expect(best.bestHours!.saving.value).toBeGreaterThan(500);
  expect(best.own!.ownUseKWh).not.toBeCloseTo(usual.own!.ownUseKWh, 0);
  expect(best.own!.ownUseKWh + best.own!.soldKWh).toBeCloseTo(usual.own!.ownUseKWh + usual.own!.soldKWh, 6);
  // What is sent out is paid at the same price, and the parts still make the whole.
  expect(best.own!.exportPence).toBeCloseTo(15 * best.own!.soldKWh, 6);
  const { heatingPence, restPence, standingPence, own, whole } = best;
  expect(heatingPence + restPence + standingPence + own!.unitsPence - own!.exportPence).toBeCloseTo(whole.value, 6);
});

test('hours beside a roof go by the month’s usual day: which of its days are sunny changes none of them', () => {
  const household = makeHousehold({ roof, tariffs: [night], prices: { electricityTariffId: 'night' } });
  const whole = { household, series: [], reference, asOf };
  const heat = heatAndMachine(heatOfHousehold(whole), []);
  const { terms } = appraiseYears({ ...whole, draws: 0 }).priced[0]!;
  const { slots } = heat.year;
  const own = layEquipment(household, findRegion(household.home, reference).region, slots, reference, asOf)!;
  // The first three weeks of March stand in the other order.
  const swapped = own.sunKWh!.map((kWh, i) => {
    const day = slots.day[i]!;
    return day < 59 || day > 79 ? kWh : own.sunKWh![slots.dayStart[138 - day]! + i - slots.dayStart[day]!]!;
  });
  const priceUnits = (kWh: Float64Array) => sumOf(kWh.map((one, i) => one * (slots.minute[i]! < 330 ? 8 : 30)));
  const hours = (sunKWh: Float64Array) => {
    const otherKWh = new Float64Array(slots.count).fill(0.2);
    const home = { own: { ...own, sunKWh }, otherKWh, priceUnits };
    return hoursOn(heat, choosePrices(whole), terms, home)!.balance!.boughtKWh;
  };
  const [first, second] = [hours(own.sunKWh!), hours(swapped)];
  // By night all that is needed is bought, so that what is bought shows the hours.
  const apart = first.map((kWh, i) => (own.sunKWh![i]! + swapped[i]! === 0 ? Math.abs(kWh - second[i]!) : 0));
  expect(Math.max(...apart)).toBeLessThan(1e-6);
});
