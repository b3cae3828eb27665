import { describe, expect, test } from 'vitest';
import type { PricedTariff, Tariff } from '../../../src/model/shapes/tariff.ts';
import { deliveredPriceOn, quarterOn, tariffFromQuarter, twoRateTariff } from '../../../src/model/tariff/built-in.ts';
import { findTariffFaults } from '../../../src/model/tariff/check-tariff.ts';
import { deliveredPriceBasis, priceBasis } from '../../../src/model/tariff/price-basis.ts';
import { inclVat, standingPencePerDayInclVat } from '../../../src/model/tariff/slot-price.ts';
import { deliveredPrices, quarters, twoRate } from '../../../src/reference/prices.ts';
import { monthSpan } from '../../../src/words/numbers.ts';
import { sayTold } from '../../../src/words/say-told.ts';
import { allHours, tariff, version } from './tariffs.ts';

const spoken = (of: PricedTariff): Tariff => ({
  ...of,
  name: sayTold(of.name),
  versions: of.versions.map((one) => ({
    ...one,
    bands: one.bands.map((band) => ({ ...band, name: sayTold(band.name) })),
  })),
});

describe('the quarter of a date', () => {
  test.each([
    ['electricity', '2026-10-01', '2026-10-01', 26.32],
    ['electricity', '2026-09-30', '2026-07-01', 26.11],
    ['gas', '2024-02-29', '2024-01-01', 7.42],
    ['gas', '2031-05-05', '2026-10-01', 7.97],
    ['gas', '2019-05-05', '2022-10-01', 10.33],
  ] as const)('%s on %s is that of %s', (fuel, date, from, pence) => {
    for (const list of [quarters, quarters.toReversed()])
      expect(quarterOn(list, fuel, date)).toMatchObject({ fuel, from, pencePerKWh: pence });
  });
  test('of prices that began together the one of the shorter span holds, in whichever order they stand', () => {
    const oil = deliveredPrices.find(({ fuel }) => fuel === 'oil')!;
    const spans = [
      ['2025-01-01', '2025-12-31', 60],
      ['2026-01-01', '2026-12-31', 62],
      ['2026-01-01', '2026-03-31', 58],
      ['2026-05-01', '2026-05-31', 70],
    ] as const;
    const list = spans.map(([from, to, pencePerUnit]) => ({ ...oil, from, to, pencePerUnit }));
    for (const rows of [list, list.toReversed()]) {
      const on = (date: string) => deliveredPriceOn(rows, 'oil', date)!.pencePerUnit;
      expect(['2024-06-01', '2025-12-31', '2026-01-01', '2026-04-30', '2026-05-01'].map(on)).toEqual([
        60, 60, 58, 58, 70,
      ]);
    }
  });
  test('a fuel by meter without a row is refused, one by amount has no price', () => {
    expect(() => quarterOn([], 'gas', '2026-01-01')).toThrow(/no built-in price for gas/);
    const onlyOil = deliveredPrices.filter(({ fuel }) => fuel === 'oil');
    expect(deliveredPriceOn(onlyOil, 'lpg', '2026-01-01')).toBeUndefined();
  });
  test('oil takes the row that began last, LPG the assumed one', () => {
    expect(deliveredPriceOn(deliveredPrices, 'oil', '2026-11-25')!.pencePerUnit).toBe(58);
    expect(deliveredPriceOn(deliveredPrices, 'oil', '2022-06-15')!.pencePerUnit).toBe(111);
    expect(deliveredPriceOn(deliveredPrices, 'lpg', '2026-11-25')!.pencePerUnit).toBe(70);
  });
});

test('every built-in price makes a tariff without a fault', () => {
  const tariffs = [...quarters.map(tariffFromQuarter), twoRateTariff(twoRate)];
  expect(tariffs.flatMap((one) => findTariffFaults(spoken(one)))).toEqual([]);
  expect(sayTold(tariffFromQuarter(quarterOn(quarters, 'gas', '2026-11-25')).name)).toBe(
    'Published average price, October to December 2026',
  );
});

test('built-in prices stand as published: VAT is in them', () => {
  for (const quarter of quarters) {
    const [version] = tariffFromQuarter(quarter).versions;
    expect(inclVat(version!, version!.bands[0]!.pencePerKWh)).toBe(quarter.pencePerKWh);
    expect(standingPencePerDayInclVat(version!)).toBe(quarter.standingPencePerDay);
  }
  const [pair] = twoRateTariff(twoRate).versions;
  expect(pair!.bands.map((band) => inclVat(pair!, band.pencePerKWh))).toEqual([twoRate.nightPence, twoRate.dayPence]);
  expect(standingPencePerDayInclVat(pair!)).toBe(twoRate.standingPencePerDay);
});

test.each([
  ['2026-01-01', '2026-01-31', 'January 2026'],
  ['2026-10-01', '2026-12-31', 'October to December 2026'],
  ['2026-12-01', '2027-02-28', 'December 2026 to February 2027'],
  ['2026-12-01', '2027-12-31', 'December 2026 to December 2027'],
])('%s to %s is %s', (from, to, name) => expect(monthSpan(from, to)).toBe(name));

test('the illustrative pair comes to the single-rate cap at 58 % day and 42 % night', () => {
  const mean = 0.58 * twoRate.dayPence + 0.42 * twoRate.nightPence;
  expect(mean).toBeCloseTo(quarterOn(quarters, 'electricity', twoRate.from).pencePerKWh, 0);
  expect(twoRate.nightPence / twoRate.dayPence).toBeCloseTo(0.61, 2);
});

describe('how old prices are', () => {
  const builtIn = tariffFromQuarter(quarterOn(quarters, 'electricity', '2026-11-25'));
  const typed = tariff([version([allHours(25)]), version([allHours(27)], { from: '2026-07-01' })]);
  const three = tariff(
    ['2026-10-01', '2026-07-01', '2026-01-01', '2026-04-01'].map((from) => version([allHours(25)], { from })),
  );
  test.each([
    ['a quarter on its last day', builtIn, '2026-12-31', undefined, '2026-12-31'],
    ['a quarter on the day after', builtIn, '2027-01-01', 1, '2026-12-31'],
    ['a quarter a year later', builtIn, '2027-12-31', 365, '2026-12-31'],
    ['an older version, ended by the next', typed, '2026-06-30', undefined, '2026-06-30'],
    ['the middle one of three, typed in any order', three, '2026-05-01', undefined, '2026-06-30'],
    ['typed without an end, within its year', typed, '2027-07-01', undefined, undefined],
    ['typed without an end, a year and ten days on', typed, '2027-07-11', 10, undefined],
  ])('%s', (_, prices, asOf, staleDays, to) => {
    const basis = priceBasis(prices, asOf, 'own');
    expect([basis.staleDays, basis.to]).toEqual([staleDays, to]);
  });
  test('a month’s oil price is old after a quarter', () => {
    const january = deliveredPriceOn(deliveredPrices, 'oil', '2026-11-25')!;
    expect(deliveredPriceBasis(january, '2026-05-03').staleDays).toBeUndefined();
    expect(deliveredPriceBasis(january, '2026-05-04').staleDays).toBe(93);
    const { name, grade } = deliveredPriceBasis(january, '2026-05-04');
    expect([sayTold(name), grade]).toEqual(['Published average oil price, January 2026', 'assumed']);
    const lpg = deliveredPriceOn(deliveredPrices, 'lpg', '2026-11-25')!;
    expect(sayTold(deliveredPriceBasis(lpg, '2026-11-25').name)).toMatch(/^Assumed LPG price, /);
  });
});
