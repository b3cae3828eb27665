import { describe, expect, test } from 'vitest';
import type { z } from 'zod';
import {
  Appraisal,
  basisOf,
  carriersOf,
  isEvenChance,
  isOpenPrice,
  openPrices,
  priceOf,
  verdictAgainst,
  verdictOf,
  WhatIf,
} from '../../../src/model/shapes/appraisal.ts';
import { Bill, BillAdjustment, BillCharge, BillMeter, BillStanding } from '../../../src/model/shapes/bill.ts';
import { BillCheckInput } from '../../../src/model/shapes/bill-check.ts';
import { COUNTRIES, Country, countryOf, currencyOf } from '../../../src/model/shapes/country.ts';
import { CivilDate, ClockTime, isCivilDate } from '../../../src/model/shapes/dates.ts';
import { FilePart, isCutByClock, isTemperature } from '../../../src/model/shapes/evidence.ts';
import { Finding, sureOf, yearOfDays } from '../../../src/model/shapes/finding.ts';
import {
  carrierOf,
  DELIVERED_FUELS,
  FUELS,
  HEATERS,
  isDelivered,
  isFuel,
  isSaleUnit,
  OFFERED,
  PRICED_CARRIERS,
  priceKey,
  SALE_UNITS,
  SYSTEMS,
  serviceKey,
  systemRow,
  unitsOf,
} from '../../../src/model/shapes/heating.ts';
import { mayLead } from '../../../src/model/shapes/lifetime.ts';
import { isCode, tell } from '../../../src/model/shapes/told.ts';
import { weakestGrade } from '../../../src/model/shapes/working.ts';

describe('what a field takes, and what lies just beyond', () => {
  test.each([
    // field of a what-if; least and most
    [WhatIf, 'flowC', 25, 75],
    [WhatIf, 'roomC', 10, 30],
    [WhatIf, 'waterShare', 0, 3],
    [WhatIf, 'electricityShare', 0.1, 5],
    [WhatIf, 'fuelShare', 0.1, 5],
    [Bill, 'correction', 0.85, 1.15],
    [Bill, 'calorificMJPerM3', 30, 50],
    [Bill.shape.vat, 'rate', 0, 0.3],
    [Finding, 'sure', 0, 1],
    [BillMeter, 'opening', 0, undefined],
    [BillMeter, 'closing', 0, undefined],
    [BillMeter, 'metered', 0, undefined],
    [BillMeter, 'ownKWh', 0, undefined],
    [BillStanding, 'days', 0, undefined],
    [BillStanding, 'pencePerDay', 0, undefined],
    [BillAdjustment, 'pence', 0, undefined],
    ...(
      [
        'boughtKWh',
        'otherKWh',
        'pencePerKWh',
        'degreeDays',
        'billedStandingPence',
        'estimatedStandingPencePerDay',
        'readKWh',
        'heatPumpKWh',
        'heatKWh',
        'waterHeatKWh',
        'spaceKWh',
        'immersionKWh',
      ] as const
    ).map((field) => [BillCheckInput, field, 0, undefined] as const),
  ] as [z.ZodObject, string, number, number | undefined][])('%#: %s', (shape, field, least, most) => {
    const takes = (value: number) => shape.shape[field]!.safeParse(value).success;
    expect([takes(least), takes(least - 0.005)]).toEqual([true, false]);
    if (most === undefined) expect([takes(0.5), takes(1e9)]).toEqual([true, true]);
    else expect([takes(most), takes(most + 0.005)]).toEqual([true, false]);
  });
  test.each([
    [BillMeter.shape.name, 1, 60],
    [BillCharge.shape.meter, 1, 60],
    [BillAdjustment.shape.name, 1, 80],
  ])('%#: words of so many letters', (shape, least, most) => {
    const takes = (letters: number) => shape.safeParse('x'.repeat(letters)).success;
    expect([takes(least - 1), takes(least), takes(most), takes(most + 1)]).toEqual([false, true, true, false]);
  });
  test.each([
    ['meters', { name: 'all' }, 1, 8],
    ['charges', { meter: 'all' }, 1, 40],
    ['standing', {}, 0, 20],
    ['adjustments', { kind: 'credit', name: 'paid', pence: 1, vat: 'after' }, 0, 20],
  ] as const)('a bill has %s from %#', (field, row, least, most) => {
    const takes = (count: number) => Bill.shape[field].safeParse(new Array(count).fill(row)).success;
    expect([takes(least), takes(most), takes(most + 1)]).toEqual([true, true, false]);
    if (least > 0) expect(takes(least - 1)).toBe(false);
  });
  test('units by price are no less than nothing, columns are counted from nothing', () => {
    const rates = (kWh: number) =>
      BillCheckInput.shape.ratesKWh.safeParse([{ name: 'day', kWh, pencePerKWh: -1 }]).success;
    expect([rates(0), rates(0.5), rates(-0.1)]).toEqual([true, true, false]);
    const columns = (column: number) => FilePart.safeParse({ columns: [column] }).success;
    expect([columns(0), columns(-1)]).toEqual([true, false]);
  });
  test.each([
    ['2024-02-29', true],
    ['2027-02-29', false],
    ['2027-2-28', false],
    ['2027-13-01', false],
    ['1899-12-31', false],
    ['1900-01-01', true],
    ['2199-12-31', true],
    ['2200-01-01', false],
  ])('day %s: %s', (date, there) =>
    expect([CivilDate.safeParse(date).success, isCivilDate(date)]).toEqual([there, there]),
  );
  test.each([
    ['00:00', true],
    ['23:59', true],
    ['24:00', true],
    ['24:01', false],
    ['7:30', false],
    ['12:60', false],
  ])('clock %s: %s', (time, there) => expect(ClockTime.safeParse(time).success).toBe(there));
});

describe('which side may be named', () => {
  test.each([
    [0.56, 100, 'less'],
    [0.55, 100, 'about-same'],
    [0.56, 0, 'about-same'],
    [0.56, -1, 'about-same'],
    [0.44, -100, 'more'],
    [0.45, -100, 'about-same'],
    [0.44, 0, 'about-same'],
    [0.44, 1, 'about-same'],
    [0.5, 5, 'about-same'],
  ] as const)('a chance of %d and %d p: %s', (chanceLess, value, verdict) => {
    expect(verdictOf({ chanceLess, saving: { value } })).toBe(verdict);
    expect(isEvenChance(chanceLess)).toBe(chanceLess >= 0.45 && chanceLess <= 0.55);
  });
  test('as it was kept, else as it would be; of another system nothing', () => {
    const versus = [
      { against: 'oil', verdict: 'about-same', chanceLess: 0.9, saving: { value: 100 } },
      { against: 'lpg', chanceLess: 0.9, saving: { value: 100 } },
    ] as unknown as Appraisal['versus'];
    expect(['oil', 'lpg', 'gas'].map((id) => verdictAgainst(versus, id))).toEqual(['about-same', 'less', undefined]);
  });
});

test('a price is there with what it rests on, a price of nothing too', () => {
  const basis = { name: 'made' };
  const prices = {
    electricity: basis,
    electricityPencePerKWh: 0,
    oil: basis,
    lpgPencePerKWh: 7,
  } as unknown as Appraisal['prices'];
  expect(priceOf(prices, 'electricity')).toEqual({ basis, pencePerKWh: 0 });
  expect(['oil', 'lpg', 'pellets'].map((fuel) => priceOf(prices, fuel as 'oil'))).toEqual([
    undefined,
    undefined,
    undefined,
  ]);
  expect(Object.keys(Appraisal.shape.prices.shape)).toEqual(
    expect.arrayContaining(['oil', 'oilPencePerKWh', 'pelletsPencePerKWh']),
  );
});

test('the years to come may lead once price and grant are typed', () => {
  const leads = (kind: 'whole' | 'running', ...notes: Parameters<typeof mayLead>[0]['notes']) =>
    mayLead({ kind, notes });
  expect([leads('whole'), leads('whole', 'no-replacement'), leads('whole', 'no-grant'), leads('running')]).toEqual([
    true,
    true,
    false,
    false,
  ]);
});

test('a likelihood stays between a coin’s toss and 97 in 100; days become a year', () => {
  expect([0.2, 0.5, 0.7, 0.97, 1].map(sureOf)).toEqual([0.5, 0.5, 0.7, 0.97, 0.97]);
  expect([yearOfDays(20, 73), yearOfDays(20, 0), yearOfDays(20, -1)]).toEqual([100, 0, 0]);
});

test('series of degrees, and days cut out of finer readings', () => {
  expect((['outdoor-temperature', 'flow-temperature', 'heat', 'gas'] as const).map(isTemperature)).toEqual([
    true,
    true,
    false,
    false,
  ]);
  const of = (series: object) => isCutByClock(series as Parameters<typeof isCutByClock>[0]);
  expect([of({ resolution: 'interval' }), of({ resolution: 'day', dayShape: [] }), of({ resolution: 'day' })]).toEqual([
    true,
    true,
    false,
  ]);
});

test.each([
  [['measured', 'assumed', 'estimated'], 'assumed'],
  [['estimated', 'measured'], 'estimated'],
  [['measured'], 'measured'],
  [[], 'measured'],
] as const)('the weakest of %j is %s', (grades, weakest) => expect(weakestGrade(grades)).toBe(weakest));

test('what is told is known by its code', () => {
  expect(tell('room-heat')).toEqual({ code: 'room-heat' });
  expect(tell('degree-days-to', { baseC: 15 })).toEqual({ code: 'degree-days-to', data: { baseC: 15 } });
  expect([
    isCode(tell('room-heat'), 'room-heat'),
    isCode(tell('water-heat'), 'room-heat'),
    isCode('room-heat', 'room-heat'),
  ]).toEqual([true, false, false]);
});

describe('prices that a comparison rests on', () => {
  const basis = (more: object = {}) => ({ name: 'made', ...more });
  const system = (carrier: string, kind = carrier) => ({ carrier, kind });
  const of = (prices: object, ...systems: object[]) =>
    ({ prices, systems }) as unknown as Pick<Appraisal, 'prices' | 'systems'>;
  test('a price is open that ended, or that nobody publishes', () => {
    expect(
      [{ staleDays: 5 }, { staleDays: 0 }, { kind: 'assumed' }, { kind: 'cap' }, {}].map((one) =>
        isOpenPrice(one as { kind: 'cap' }),
      ),
    ).toEqual([true, true, true, false, false]);
  });
  test('storage heaters have two rates where there are any', () => {
    const [both, one] = [{ electricity: basis(), 'two-rate': basis({ name: 'night' }) }, { electricity: basis() }].map(
      (prices) => of(prices).prices,
    );
    const found = (prices: Appraisal['prices'], carrier: string, kind: string) =>
      basisOf(prices, system(carrier, kind) as { carrier: 'oil'; kind: string });
    expect(found(both!, 'electricity', 'storage')).toEqual({ price: 'two-rate', basis: { name: 'night' } });
    expect(found(both!, 'electricity', 'direct-electric')).toEqual({ price: 'electricity', basis: { name: 'made' } });
    expect(found(one!, 'electricity', 'storage')?.price).toBe('electricity');
    expect(found(one!, 'oil', 'oil')).toBeUndefined();
  });
  test('open ones are each named once, if nothing lets them stand and something is bought at them', () => {
    const open = { kind: 'assumed' };
    const prices = {
      electricity: basis(open),
      gas: basis(),
      oil: basis({ ...open, stands: { on: '2026-11-25' } }),
      lpg: basis({ staleDays: 9 }),
      pellets: basis(open),
    };
    const compared = of(
      prices,
      system('electricity', 'heat-pump'),
      system('electricity', 'direct-electric'),
      system('gas'),
      system('oil'),
      system('lpg'),
    );
    expect(openPrices(compared).map(({ price }) => price)).toEqual(['electricity', 'lpg']);
    expect([...carriersOf(compared)]).toEqual(['electricity', 'gas', 'oil', 'lpg']);
    expect([...carriersOf(of({}))]).toEqual(['electricity']);
  });
});

test('a home is British unless it is said to be German; taxes by VAT Notice 701/19 and § 12 UStG', () => {
  expect([countryOf({}), countryOf({ country: 'DE' }), currencyOf({}), currencyOf({ country: 'DE' })]).toEqual([
    'GB',
    'DE',
    'GBP',
    'EUR',
  ]);
  expect([COUNTRIES.GB.vatRates, COUNTRIES.DE.vatRates]).toEqual([
    [0.05, 0.2, 0],
    [0.19, 0.07, 0],
  ]);
  expect(['GB', 'DE', 'FR'].map((one) => Country.safeParse(one).success)).toEqual([true, true, false]);
});

describe('fuels and systems', () => {
  test('a tonne is 1,000 kg, a bag what it says', () => {
    expect(Object.values(SALE_UNITS).map(({ count }) => count)).toEqual([1, 1000, 15, 10, 1]);
  });
  test('what households ask about most comes first, no two alike; what is held against a heat pump', () => {
    const asked = Object.entries(SYSTEMS).sort(([, a], [, b]) => a.asked - b.asked);
    expect(asked.map(([, row]) => row.asked)).toEqual(asked.map((_, place) => place));
    expect(OFFERED).toHaveLength(8);
    expect(Object.keys(SYSTEMS).filter((name) => !(OFFERED as readonly string[]).includes(name))).toEqual([
      'gas-old',
      'heat-pump',
    ]);
    expect(
      Object.entries(SYSTEMS).flatMap(([name, row]) => ('offeredAnew' in row && row.offeredAnew ? [name] : [])),
    ).toEqual(['gas-condensing']);
    const suited = (want: object) =>
      Object.entries(SYSTEMS).flatMap(([name, { suits }]) =>
        JSON.stringify(suits) === JSON.stringify(want) ? [name] : [],
      );
    expect(suited({ gasGrid: true })).toEqual(['gas-condensing', 'gas-old']);
    expect(suited({ gasGrid: false, house: true })).toEqual(['oil', 'lpg', 'pellets']);
    expect(suited({ electricNow: true })).toEqual(['direct-electric', 'storage']);
    expect(suited({ ground: true })).toEqual(['ground-source']);
    expect(suited({})).toEqual(['heat-pump', 'air-source']);
  });
  test('oil, LPG and pellets are delivered, gas comes by meter, electricity is no fuel', () => {
    expect(DELIVERED_FUELS).toEqual(['oil', 'lpg', 'pellets']);
    expect(PRICED_CARRIERS).toEqual(['electricity', 'gas', 'oil', 'lpg', 'pellets']);
    expect(['gas', 'oil', 'electricity', undefined].map(isFuel)).toEqual([true, true, false, false]);
    expect(['gas', 'oil', 'electricity', undefined].map(isDelivered)).toEqual([false, true, false, false]);
    expect(['kg', 'ounce', undefined].map(isSaleUnit)).toEqual([true, false, false]);
    expect([priceKey('oil'), priceKey('pellets'), serviceKey('gas')]).toEqual([
      'oilPencePerLitre',
      'pelletsPencePerKg',
      'serviceGasGBP',
    ]);
    expect(unitsOf('pellets')).toEqual(['tonne', 'bag of 15 kg', 'bag of 10 kg', 'kg']);
    expect(FUELS.oil.said.test('heizöl')).toBe(true);
  });
  test('a heat pump is no heater; a way of heating nobody knows has no row', () => {
    expect(HEATERS).toEqual(['gas-condensing', 'gas-old', 'oil', 'lpg', 'pellets', 'direct-electric', 'storage']);
    expect([carrierOf('storage'), carrierOf('lpg'), carrierOf('other')]).toEqual(['electricity', 'lpg', undefined]);
    expect([systemRow('oil')?.service, systemRow('other')]).toEqual(['oil', undefined]);
  });
});
