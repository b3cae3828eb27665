/** The parts of a home's bill on one tariff, each by hand. */
import { describe, expect, test } from 'vitest';
import { appraise } from '../../../src/model/appraise.ts';
import { compareTariffs } from '../../../src/model/choices/compare-tariffs.ts';
import type { WhatIf } from '../../../src/model/shapes/appraisal.ts';
import type { Series } from '../../../src/model/shapes/evidence.ts';
import type { Tariff, TariffVersion } from '../../../src/model/shapes/tariff.ts';
import { tell } from '../../../src/model/shapes/told.ts';
import { reference } from '../../../src/reference/index.ts';
import { EVERY_WAY, type HouseholdChange, makeHousehold, makeTariff, typed } from '../appraisal/make-household.ts';
import { priceSeries } from '../tariff/tariffs.ts';

const twoPrices = (night: number, day: number) =>
  makeTariff('two', [
    { name: 'night', pencePerKWh: night, times: [{ from: '00:30', to: '07:30' }] },
    { name: 'day', pencePerKWh: day, times: 'rest' },
  ]);
const two = twoPrices(10, 30);
const withVersion = (tariff: Tariff, more: Partial<TariffVersion>): Tariff => ({
  ...tariff,
  versions: tariff.versions.map((version) => ({ ...version, ...more })),
});
const choose = (
  tariffs: readonly Tariff[],
  series: readonly Series[] = [],
  more: HouseholdChange = {},
  what: { draws?: number; whatIf?: WhatIf } = {},
) => {
  const household = makeHousehold({ prices: { electricityTariffId: tariffs[0]?.id }, tariffs: [...tariffs], ...more });
  return compareTariffs({ household, series, reference, asOf: '2026-11-28', draws: 0, ...what })!;
};
const costOn = (choice: ReturnType<typeof choose>, id: string | null) =>
  choice.costs.find(({ tariffId }) => tariffId === id)!;

/** 10 kWh a day: from October to March by night, else by day; months of which the half-hours are not known. */
function record(unknown: readonly number[] = [], more: Partial<Series> = {}): Series {
  const shape = Array.from({ length: 12 }, (_, month) =>
    Array.from({ length: 48 }, (_, half) =>
      !unknown.includes(month) && half === (month < 3 || month > 8 ? 4 : 30) ? 10 : 0,
    ),
  );
  return {
    id: 's',
    evidenceId: 'e',
    name: 'meter',
    carrier: 'electricity',
    role: 'import',
    resolution: 'interval',
    intervalMinutes: 30,
    from: '2025-10-01',
    to: '2026-10-01',
    total: 3650,
    days: { first: '2025-10-01', values: new Array<number>(365).fill(10) },
    dayShape: shape,
    dayPeaks: shape,
    dayStray: new Array<number>(48).fill(0),
    present: 17_520,
    expected: 17_520,
    estimatedCount: 0,
    ...more,
  };
}

// 182 days from October to March, 183 from April to September.
const byMonth = 10 * (182 * 10 + 183 * 30);

describe('what the home uses beside heating', () => {
  test('lies by its own half-hours of each month', () => {
    expect(costOn(choose([two], [record()]), 'two').restPence).toBeCloseTo(byMonth, 6);
  });
  test('at other hours on Saturdays and Sundays, where its readings show them apart', () => {
    const evening: Tariff = makeTariff('evening', [
      {
        name: 'evening',
        pencePerKWh: 50,
        times: [{ from: '16:00', to: '20:00', days: ['mon', 'tue', 'wed', 'thu', 'fri'] }],
      },
      { name: 'other', pencePerKWh: 20, times: 'rest' },
    ]);
    const at = (half: number) =>
      Array.from({ length: 12 }, () => Array.from({ length: 48 }, (_, i) => (i === half ? 10 : 0)));
    // Mondays to Fridays at six in the evening, at weekends at noon: 261 days of 2026 against 104.
    const one = record([], { weekShape: [at(36), at(24)] });
    expect(costOn(choose([evening], [one]), 'evening').restPence).toBeCloseTo(10 * (261 * 50 + 104 * 20), 6);
  });
  test('in a month of which nobody knows them as in the mean of all others', () => {
    // Of eleven others five lie in the day where January is unknown: (6 × 30 + 5 × 10) / 11.
    const january = 310 * ((6 * 30 + 5 * 10) / 11 - 10);
    expect(costOn(choose([two], [record([0])]), 'two').restPence).toBeCloseTo(byMonth + january, 6);
    // Nothing is known: all half-hours alike, but for the two days on which the clock changes.
    const all = Array.from({ length: 12 }, (_, month) => month);
    expect(costOn(choose([two], [record(all)]), 'two').restPence / 3650).toBeCloseTo(30 - (20 * 14) / 48, 2);
  });
  test('fills steps by the day each day anew, and costs nothing where nothing is used', () => {
    const steps = makeTariff('two', [
      {
        name: 'all',
        pencePerKWh: 10,
        times: 'rest',
        blocks: { per: 'day', steps: [{ upToKWh: 4, pencePerKWh: 40 }] },
      },
    ]);
    // 4 kWh of each day at 40 p and 6 at 10.
    expect(costOn(choose([steps], [record()]), 'two').restPence).toBeCloseTo(365 * (4 * 40 + 6 * 10), 6);
    // From Monday to Friday 2 kWh, all at 40 p; on Saturdays and Sundays 16: 4 at 40 p and 12 at 10.
    const weekly = Array.from({ length: 365 }, (_, day) => ((day + 2) % 7 >= 5 ? 16 : 2));
    const atWeekends = record([], { total: 2186, days: { first: '2025-10-01', values: weekly } });
    const byHand = 261 * 2 * 40 + 104 * (4 * 40 + 12 * 10);
    // The weekends of a month move from one year to the next.
    expect(costOn(choose([steps], [atWeekends]), 'two').restPence / byHand).toBeCloseTo(1, 1);
    const none = record([], { total: 0, days: { first: '2025-10-01', values: new Array<number>(365).fill(0) } });
    expect(costOn(choose([steps], [none]), 'two').restPence).toBe(0);
  });
  test('costs twice as much where all prices double', () => {
    const once = costOn(choose([two], [record()]), 'two');
    const twice = costOn(choose([two], [record()], {}, { whatIf: { electricityShare: 2 } }), 'two');
    expect(twice.restPence).toBeCloseTo(2 * once.restPence, 6);
    expect(twice.standingPence).toBe(once.standingPence);
  });
});

describe('what is paid beside units', () => {
  const charge = { pencePerKWPerMonth: 300 };
  test('a power that is agreed, VAT on it, whoever knows the half-hours', () => {
    const agreed = withVersion(two, { demand: { ...charge, agreedKW: 8 }, vat: { rate: 0.05, included: false } });
    const { standingPence } = costOn(choose([agreed]), 'two');
    expect(standingPence).toBeCloseTo(1.05 * (365 * 50 + 12 * 8 * 300), 6);
  });
  test('else the highest half-hour of each month, 20 kW', () => {
    const { standingPence } = costOn(choose([withVersion(two, { demand: charge })], [record()]), 'two');
    expect(standingPence).toBeCloseTo(365 * 50 + 12 * 20 * 300, 6);
  });
  test('which a battery or a car would move, a roof would not, and an agreed power does not follow', () => {
    const left = (more: HouseholdChange, demand: TariffVersion['demand'] = charge) =>
      choose([withVersion(two, { demand })], [record()], more).leftOut.map(({ name, why }) => `${name} ${why}`);
    expect(left({ battery: { usableKWh: 5 } })).toEqual(['Tariff two power-moved']);
    expect(left({ car: {} })).toEqual(['Tariff two power-moved']);
    expect(left({ battery: { usableKWh: 5 } }, { ...charge, agreedKW: 8 })).toEqual([]);
    const panels = [{ kWp: 1, facing: 'S', pitchDegrees: 30, shading: 'little' } as const];
    expect(left({ roof: { panels } })).toEqual([]);
  });
});

test('a tariff with a fault is left out and named', () => {
  const gap = withVersion(two, { bands: two.versions[0]!.bands.slice(0, 1) });
  const choice = choose([makeTariff('one', 25), gap]);
  expect(choice.leftOut).toEqual([{ name: 'Tariff two', why: 'faulty' }]);
  expect(choice.costs.map(({ tariffId }) => tariffId).sort()).toEqual([null, 'one'].sort());
});

test('prices of thirty days are none of a year', () => {
  const short = withVersion(two, { series: priceSeries('2025-01-01', 30, () => 5) });
  const choice = choose([makeTariff('one', 25), short]);
  expect(choice.leftOut).toEqual([{ name: 'Tariff two', why: 'part-year' }]);
  expect(choose([withVersion(two, { series: priceSeries('2025-01-01', 365, () => 5) })]).leftOut).toEqual([]);
});

test('a gas tariff is none to choose, nor is there any without a tariff, roof, battery or car', () => {
  const gas = makeTariff('g', 8, { fuel: 'gas' });
  expect(choose([gas])).toBeNull();
  expect(choose([gas, makeTariff('one', 25)]).costs).toHaveLength(2);
  expect(choose([], [], { car: {} }).costs.map(({ tariffId }) => tariffId)).toEqual([null]);
  expect(choose([], [], { battery: { usableKWh: 5 } }).inUse).toBeNull();
});

describe('without possible years', () => {
  const choice = choose([makeTariff('one', 25), two], [record()]);
  test('there is no range and no share', () => {
    for (const { whole, cheapestShare, bestHours } of choice.costs) {
      expect([whole.low, whole.high, cheapestShare]).toEqual([whole.value, whole.value, 0]);
      if (bestHours)
        expect([bestHours.saving.low, bestHours.saving.high]).toEqual([bestHours.saving.value, bestHours.saving.value]);
    }
  });
  test('the working holds the parts', () => {
    const { whole, heatingPence, restPence, standingPence } = costOn(choice, 'one');
    expect(whole.working.inputs.map(({ name, value }) => [name, value])).toEqual([
      [tell('heating-of-pump'), heatingPence],
      [tell('rest-of-home'), restPence],
      [tell('standing-of-electricity'), standingPence],
    ]);
    expect(whole.working.formula).toEqual(tell('heating-and-rest-and-standing'));
    expect(whole.working.result.value).toBe(heatingPence + restPence + standingPence);
    expect(choice.rest).toEqual({
      kWh: expect.closeTo(3650, 6),
      grade: 'measured',
      origin: tell('record-without-heating'),
      hours: 'own',
    });
    const usual = choose([two]);
    expect(usual.rest).toMatchObject({ hours: 'published', hoursSource: reference.homeHours.source });
  });
});

test('what the grid takes off by the year for a heat pump is taken off its heating, with VAT, and off no other way', () => {
  // A price sheet of 2025 (ewwanfried.de): 131.88 € a year without VAT, 156.94 with it.
  const made = makeTariff('net', 25);
  const [version] = made.versions;
  const net = (reducedPencePerYear?: number): Tariff => ({
    ...made,
    versions: [
      { ...version!, vat: { rate: 0.19, included: false }, ...(reducedPencePerYear ? { reducedPencePerYear } : {}) },
    ],
  });
  const [plain, reduced] = [net(), net(13_188)].map((tariff) => costOn(choose([tariff]), 'net'));
  expect(plain!.whole.value - reduced!.whole.value).toBeCloseTo(15_693.72, 2);
  expect(plain!.heatingPence - reduced!.heatingPence).toBeCloseTo(15_693.72, 2);
  const other = (cost: typeof plain, name: string) => cost!.others.find(({ id }) => id === name)!.pence!;
  expect(other(reduced, 'present')).toBeCloseTo(other(plain, 'present'), 6);
  expect(other(plain, 'air-source') - other(reduced, 'air-source')).toBeCloseTo(15_693.72, 2);
});

describe('a heat pump on a meter of its own', () => {
  // A price sheet of 2025 (ewwanfried.de): 8.62 ct a kWh of network price without VAT, of which 60 % is taken off.
  const less = 0.6 * 8.62;
  const made = makeTariff('net', 25, {});
  const [version] = made.versions;
  const vat = { rate: 0.19, included: false };
  const net: Tariff = { ...made, versions: [{ ...version!, vat }] };
  const own: Tariff = {
    ...made,
    versions: [{ ...version!, vat, ownMeter: { lessPencePerKWh: less, pencePerYear: 1500 } }],
  };
  const on = (tariff: Tariff, change: HouseholdChange = {}) => costOn(choose([tariff], [], change), 'net');

  test('pays less for each of its kWh and for its meter, and nobody else does', () => {
    const [plain, lower] = [on(net), on(own)];
    const kWh = plain.heatingPence / (25 * 1.19);
    // The service is in it beside the kWh; it is the same on both.
    expect(lower.restPence).toBe(plain.restPence);
    const saved = plain.heatingPence - lower.heatingPence + 1500 * 1.19;
    expect(saved / (less * 1.19)).toBeGreaterThan(0.6 * kWh);
    const bought = plain.others.find(({ id }) => id === 'present')!.pence!;
    expect(lower.others.find(({ id }) => id === 'present')!.pence!).toBeCloseTo(bought, 6);
    const flat = makeTariff('net', 25 - less);
    const asFlat = on({ ...flat, versions: [{ ...flat.versions[0]!, vat }] });
    expect(lower.heatingPence).toBeCloseTo(asFlat.heatingPence + 1500 * 1.19, 6);
  });

  test('gets no sun and no battery', () => {
    const panels = [{ kWp: 6, facing: 'S', pitchDegrees: 35, shading: 'little' } as const];
    const sun: HouseholdChange = { roof: { panels } };
    expect(on(own, sun).own!.ownUseKWh).toBeLessThan(on(net, sun).own!.ownUseKWh - 100);
  });

  test('with a sum by the year besides it is refused', () => {
    const both = { ...own, versions: [{ ...own.versions[0]!, reducedPencePerYear: 13_188 }] };
    expect(choose([both]).leftOut).toEqual([{ name: 'Tariff net', why: 'faulty' }]);
  });
});

describe('what a unit costs over the year', () => {
  // 14 of 48 half-hours are cheap on every day: the two hours that the clock takes and gives lie among them.
  const mean = 30 - (20 * 14) / 48;
  test.each<[string, () => ReturnType<typeof choose>, object | undefined, boolean]>([
    ['two prices', () => choose([two]), { least: 10, most: 30, mean: expect.closeTo(mean, 9) }, false],
    [
      'doubled',
      () => choose([two], [], {}, { whatIf: { electricityShare: 2 } }),
      { least: 20, most: 60, mean: expect.closeTo(2 * mean, 9) },
      false,
    ],
    [
      'of a market, 1 p in January and 3 p after it',
      () => choose([withVersion(two, { series: priceSeries('2025-01-01', 365, (day) => (day < 31 ? 1 : 3)) })]),
      { least: 1, most: 3, mean: expect.closeTo((31 + 3 * 334) / 365, 2) },
      true,
    ],
    [
      'by steps, where it hangs on the amount',
      () =>
        choose([
          makeTariff('two', [
            {
              name: 'all',
              pencePerKWh: 30,
              times: 'rest',
              blocks: { per: 'month', steps: [{ upToKWh: 50, pencePerKWh: 10 }] },
            },
          ]),
        ]),
      undefined,
      false,
    ],
  ])('%s', (_, choice, unitPence, followsMarket) => {
    const found = costOn(choice(), 'two');
    expect([found.unitPence, found.followsMarket]).toEqual([unitPence, followsMarket]);
  });
});

test.each([
  ['two', false],
  ['one', true],
])(
  'another way of heating on %s is its cost of the comparison with the same rest and standing charge',
  (id, isEven) => {
    const tariffs = [two, makeTariff('one', 25)];
    const change = { beside: EVERY_WAY, prices: { electricityTariffId: id } };
    const household = makeHousehold({ tariffs, ...change });
    const { systems } = appraise({ household, series: [record()], reference, asOf: '2026-11-28', draws: 0 });
    const { restPence, standingPence, others } = costOn(choose(tariffs, [record()], change), id);
    const rest = { two: byMonth, one: 25 * 3650 }[id]!;
    expect([restPence, standingPence]).toEqual([expect.closeTo(rest, 6), 365 * 50]);
    expect(others).toEqual(
      systems.slice(1).map(({ id, kind, cost }) => ({
        id,
        kind,
        // Storage heaters do not buy at one price all day.
        pence: isEven && kind === 'storage' ? null : expect.closeTo(cost.value + rest + 365 * 50, 6),
      })),
    );
    expect(others.map(({ id }) => id)).toEqual(expect.arrayContaining(['present', 'air-source', 'storage', 'oil']));
  },
);

test('of two tariffs alike neither costs more, in any of the years; one a penny dearer is never the cheapest', () => {
  const shares = choose([two, { ...two, id: 'again' }, makeTariff('dear', 31)], [], {}, { draws: 64 }).costs;
  expect(shares.map(({ tariffId, cheapestShare }) => [tariffId, cheapestShare])).toEqual([
    ['two', 1],
    ['again', 1],
    [null, 0],
    ['dear', 0],
  ]);
});

test('hot water in the cheap hours saves what the heating then costs less, of a machine worked out by the half-hour too', () => {
  const full: HouseholdChange = {
    machine: { way: 'full', source: 'air', spaceFactor: undefined, waterFactor: undefined },
  };
  const [usual, night] = [{}, { hotWater: { hours: 'night' as const } }].map((more) =>
    costOn(choose([two], [record()], { ...full, ...more }), 'two'),
  );
  expect(usual!.nightWaterPence).toBeGreaterThan(500);
  expect(usual!.nightWaterPence).toBeCloseTo(usual!.heatingPence - night!.heatingPence, 6);
});

test('with car and roof the possible years lie about the cost, units moved by the price and what is sent out not', () => {
  const panels = [{ kWp: 4, facing: 'S', pitchDegrees: 35, shading: 'little' } as const];
  const equipment = { roof: { panels, exportPencePerKWh: typed(15) }, car: { kmPerYear: typed(20_000) } };
  const change = { ...equipment, comfort: { hours: 'best' as const } };
  const { whole, own, bestHours } = costOn(choose([two], [record()], change, { draws: 256 }), 'two');
  // Car, sun, what is sent out and what the hours save are each a large part of it.
  const parts = [10 * own!.carKWh, 30 * own!.ownUseKWh, own!.exportPence, bestHours!.saving.value];
  expect(Math.min(...parts)).toBeGreaterThan(0.06 * whole.value);
  expect(whole.low).toBeLessThan(0.95 * whole.value);
  // Prices spread upwards more than down.
  const middle = (whole.low + whole.high) / 2 / whole.value;
  expect(middle).toBeGreaterThan(1);
  expect(middle).toBeLessThan(1.06);
});

describe('in the best hours', () => {
  const best = { comfort: { hours: 'best' } } as const;
  const savingOn = (tariff: Tariff, change: HouseholdChange = {}) =>
    costOn(choose([tariff], [], change), 'two').bestHours!.saving.value;

  test('a machine on a meter of its own goes by the prices of that meter, whatever the roof makes', () => {
    const ownMeter = withVersion(two, { ownMeter: { lessPencePerKWh: 5, pencePerYear: 1500 } });
    const lower = twoPrices(5, 25);
    expect(savingOn(ownMeter)).toBeCloseTo(savingOn(lower), 6);
    expect(savingOn(lower)).not.toBeCloseTo(savingOn(two), 0);
    const panels = [{ kWp: 6, facing: 'S', pitchDegrees: 35, shading: 'little' } as const];
    expect(savingOn(ownMeter, { roof: { panels } })).toBeCloseTo(savingOn(lower), 6);
  });

  test('what the heating costs is said to be that of the best hours, where the price has any', () => {
    const choice = choose([two, makeTariff('one', 25)], [], best);
    const originOn = (id: string) => costOn(choice, id).whole.working.inputs[0]!.origin;
    expect([originOn('two'), originOn('one')]).toEqual([
      tell('from-cost-in-best-hours'),
      tell('from-cost-of-year-below'),
    ]);
  });

  test('a battery alone sends nothing out, and is paid nothing', () => {
    const { own, bestHours, whole } = costOn(choose([two], [], { ...best, battery: { usableKWh: 5 } }), 'two');
    expect(bestHours!.counted).toBe(true);
    expect(own).toMatchObject({ soldKWh: 0, exportPence: 0, ownUseKWh: 0 });
    expect(whole.working.result.value).toBe(whole.value);
  });

  test('the heat pump that is there already runs in them too, and so does one of the other kind', () => {
    const there = { ...best, present: { system: 'heat-pump' as const } };
    const { whole, others } = costOn(choose([two], [], there), 'two');
    const penceOf = (id: string) => others.find((one) => one.id === id)!.pence!;
    expect(penceOf('present')).toBeCloseTo(whole.value, 6);
    const unknown = { spaceFactor: undefined, waterFactor: undefined, boundary: undefined };
    const air = costOn(choose([two], [], { ...best, machine: { source: 'air', ...unknown } }), 'two');
    expect(penceOf('air-source')).toBeCloseTo(air.whole.value, 6);
  });
});
