import { describe, expect, test } from 'vitest';
import { appraise } from '../../../src/model/appraise.ts';
import { openPrices } from '../../../src/model/shapes/appraisal.ts';
import type { Household } from '../../../src/model/shapes/household.ts';
import { referenceOf } from '../../../src/reference/index.ts';
import {
  datesInShort,
  openPriceSentence,
  priceInShort,
  standsSentence,
  yearAtPrices,
} from '../../../src/words/prices.ts';
import { questionSentence } from '../../../src/words/questions.ts';
import { EVERY_WAY, makeHousehold, makeTariff, typed } from '../appraisal/make-household.ts';

const on = (household: Household, asOf = '2026-11-25') =>
  appraise({ household, series: [], reference: referenceOf(household), asOf, draws: 0 });
const oilHome = (prices: Household['prices'] = {}) => makeHousehold({ present: { system: 'oil' }, prices });

describe('day and kind of each price', () => {
  const { prices } = on(makeHousehold({ beside: EVERY_WAY }));
  test.each([
    ['the cap', prices.electricity, 'Oct–Dec 2026, not your tariff'],
    ['a guide page, long ago', prices.oil!, 'Jan 2026, guide page, old'],
    ['nobody’s', prices.lpg!, 'assumed price'],
    ['a day and night pair of nobody’s', prices['two-rate']!, 'assumed price'],
    ['typed', on(oilHome({ oilPencePerLitre: typed(62) })).prices.oil!, 'your own price'],
  ] as const)('%s', (_, basis, said) => expect(priceInShort(basis)).toBe(said));

  test('in short, a price without days of its own is named for what it is', () => {
    expect(datesInShort(on(oilHome({ oilPencePerLitre: typed(62) })).prices.oil!)).toBe('your own price');
    expect(datesInShort(prices.lpg!)).toBe('assumed price');
    expect(datesInShort(prices.oil!)).toBe('prices of January 2026');
  });

  test('a German average is of its year, and old when that is over', () => {
    const german = on(makeHousehold({ country: 'DE' })).prices;
    expect(priceInShort(german.electricity)).toBe('Jan–Dec 2026, not your tariff');
    expect(priceInShort(german.gas)).toBe('Jan–Dec 2025, not your tariff, old');
  });
});

describe('prices to settle before an estimate is written', () => {
  const open = (household: Household, asOf?: string) => openPrices(on(household, asOf)).map(({ price }) => price);
  const own = (from: string) =>
    makeHousehold({ prices: { electricityTariffId: 'own' }, tariffs: [makeTariff('own', 25, { from })] });
  test.each([
    ['none in a gas home within the quarter', makeHousehold(), undefined, []],
    ['both a quarter later', makeHousehold(), '2027-02-01', ['electricity', 'gas']],
    ['what an oil home is compared with', oilHome(), undefined, ['oil', 'pellets', 'lpg']],
    ['a typed one is settled', oilHome({ oilPencePerLitre: typed(62) }), undefined, ['pellets', 'lpg']],
    ['an own tariff a year and a day on', own('2025-11-23'), undefined, ['electricity']],
    ['an own tariff within its year', own('2025-11-26'), undefined, []],
    ['the assumed pair of storage heaters', makeHousehold({ present: { system: 'storage' } }), undefined, ['two-rate']],
  ] as const)('%s', (_, household, asOf, expected) => {
    expect(open(household, asOf).sort()).toEqual([...expected].sort());
  });

  test('somebody’s word settles one, and is printed', () => {
    const said = oilHome({ stand: [{ price: 'oil', on: '2026-11-20', said: 'no delivery this year' }] });
    expect(open(said)).not.toContain('oil');
    expect(standsSentence(on(said).prices.oil!)).toBe(
      'It is used as assumed, as confirmed on 20 November 2026. “no delivery this year”',
    );
    const asked = openPrices(on(oilHome())).find(({ price }) => price === 'oil')!;
    expect(openPriceSentence(asked)).toBe('Oil: the price is of January 2026 and ended 298 days ago.');
  });

  test('a word is about the price of its day, and is old after a quarter', () => {
    const stand = [{ price: 'oil' as const, on: '2026-03-01' }];
    expect(open(oilHome({ stand }), '2026-06-01')).not.toContain('oil');
    expect(open(oilHome({ stand }), '2026-06-02')).toContain('oil');
    const before = [{ price: 'electricity' as const, on: '2026-09-30' }];
    expect(open(makeHousehold({ prices: { stand: before } }), '2026-12-31')).toEqual([]);
    expect(open(makeHousehold({ prices: { stand: before } }), '2027-01-01')).toContain('electricity');
  });

  test('prices that begin after the day are asked about', () => {
    const asked = (from: string) =>
      on(own(from))
        .questions.filter(({ code }) => code === 'prices-not-yet')
        .map(questionSentence);
    expect(asked('2026-11-25')).toEqual([]);
    expect(asked('2026-11-26')).toEqual([
      'The electricity prices used here begin only on 26 November 2026. Type the prices of the day itself.',
    ]);
    expect(on(makeHousehold(), '2019-05-01').questions.map(({ code }) => code)).toContain('prices-not-yet');
  });

  test('no table stands at today’s prices where one of them has ended', () => {
    expect(yearAtPrices(on(makeHousehold()))).toBe('A year, at today’s prices');
    expect(yearAtPrices(on(oilHome()))).toBe('A year, at prices that are not all of today');
  });
});

describe('where the home lies', () => {
  const asked = (country: 'GB' | 'DE', home: Household['home']) =>
    on(makeHousehold({ country, home }))
      .questions.filter(({ field }) => field === 'home.regionId' || field === 'home.postcode')
      .map(questionSentence);
  test('a region of another country and a postcode that no table has are said', () => {
    expect(asked('GB', { regionId: 104, postcode: 'DE6' })).toEqual([
      'The climate region chosen is none of this country, so we use Midlands. Please choose it.',
    ]);
    expect(asked('DE', { regionId: 6 })[0]).toContain('none of this country, so we use Potsdam.');
    expect(asked('DE', {})[0]).toContain('The climate region of the home is not given');
    expect(asked('GB', { postcode: 'QQ99' })).toEqual([
      'No climate region is known for the postcode “QQ99”, so we use UK average. Check it, or choose the region.',
    ]);
    expect([asked('GB', { postcode: 'DE6' }), asked('GB', { postcode: ' ' }), asked('GB', { regionId: 0 })]).toEqual([
      [],
      [],
      [],
    ]);
  });
});

describe('a home in Germany', () => {
  const german = (change: Parameters<typeof makeHousehold>[0] = {}) => on(makeHousehold({ country: 'DE', ...change }));
  const codes = (household: ReturnType<typeof german>) => household.questions.map(({ code }) => code);

  test('gets no British price, climate, carbon or visit', () => {
    const { prices, climate, systems } = german();
    expect(prices.electricityPencePerKWh).toBeCloseTo(37.2, 6);
    expect(prices.oil).toBeUndefined();
    expect(climate.regionName).toBe('Potsdam');
    expect(systems[0]!.split.servicePence).toBe(0);
    expect(systems[0]!.carbonKg.value / systems[0]!.bought.value).toBeCloseTo(0.4464, 6);
  });

  test('is asked for what has no German source', () => {
    expect(codes(german())).toEqual(expect.arrayContaining(['region-asked', 'british-tables']));
    expect(codes(german({ home: { regionId: 103 } }))).not.toContain('region-asked');
    const untold = german({ heat: { heatLossKW: typed(6), designOutdoorC: undefined } });
    expect(codes(untold)).toContain('design-temperature-asked');
    expect(untold.demand.missing).toContainEqual({ way: 'heat-loss', reason: 'no-design-outdoor' });
  });

  test('an oil boiler without a typed price is asked about and not compared', () => {
    const { questions, systems, leftOut } = german({ present: { system: 'oil' } });
    expect(questions.map(({ code }) => code)).toContain('present-price-asked');
    expect(systems.map(({ id }) => id)).toEqual(['heat-pump', 'air-source']);
    expect(leftOut).toContainEqual({ system: 'pellets', why: 'no-price' });
    const typedOil = german({ present: { system: 'oil' }, prices: { oilPencePerLitre: typed(95) } });
    expect(typedOil.systems[1]).toMatchObject({ id: 'present', kind: 'oil' });
  });
});
