/** The parts of a home's bill on one tariff, each by hand. */
import { describe, expect, test } from 'vitest';
import { compareTariffs } from '../../../src/model/choices/compare-tariffs.ts';
import type { WhatIf } from '../../../src/model/shapes/appraisal.ts';
import type { Series } from '../../../src/model/shapes/evidence.ts';
import type { Tariff, TariffVersion } from '../../../src/model/shapes/tariff.ts';
import { tell } from '../../../src/model/shapes/told.ts';
import { reference } from '../../../src/reference/index.ts';
import { type HouseholdChange, makeHousehold, makeTariff } from '../appraisal/make-household.ts';
import { priceSeries } from '../tariff/tariffs.ts';

const two = makeTariff('two', [
  { name: 'night', pencePerKWh: 10, times: [{ from: '00:30', to: '07:30' }] },
  { name: 'day', pencePerKWh: 30, times: 'rest' },
]);
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
    present: 17_520,
    expected: 17_520,
    estimatedCount: 0,
    ...more,
  };
}

describe('what the home uses beside heating', () => {
  // 182 days from October to March, 183 from April to September.
  const byMonth = 10 * (182 * 10 + 183 * 30);
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
