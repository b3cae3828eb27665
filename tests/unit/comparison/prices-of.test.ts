import { describe, expect, test } from 'vitest';
import { choosePrices } from '../../../src/model/comparison/prices-of.ts';
import type { Household } from '../../../src/model/shapes/household.ts';
import { reference } from '../../../src/reference/index.ts';
import { questionSentence } from '../../../src/words/questions.ts';
import { makeHousehold, makeTariff, typed } from '../appraisal/make-household.ts';
import { priceSeries } from '../tariff/tariffs.ts';

const choose = (household: Household, asOf = '2026-11-25') => choosePrices({ household, reference, asOf });
const price = (chosen: ReturnType<typeof choose>, fuel: 'electricity' | 'gas' | 'storage') =>
  chosen[fuel]!.version.bands.map(({ pencePerKWh }) => pencePerKWh);

describe('without a tariff of its own', () => {
  test.each([
    ['2026-11-25', 26.32, 7.97, undefined],
    ['2026-05-01', 24.67, 5.74, undefined],
    // After the last quarter the newest stands in, and says how old it is.
    ['2027-02-01', 26.32, 7.97, 32],
    ['2020-01-01', 34.04, 10.33, undefined],
  ])('on %s the quarter’s prices hold: %f p and %f p', (asOf, electricity, gas, staleDays) => {
    const chosen = choose(makeHousehold(), asOf);
    expect(price(chosen, 'electricity')).toEqual([electricity]);
    expect(price(chosen, 'gas')).toEqual([gas]);
    expect(chosen.electricity.basis.staleDays).toBe(staleDays);
    expect(chosen.electricity.basis.grade).toBe('assumed');
  });

  test('storage heaters go on the built-in day and night pair', () => {
    expect(price(choose(makeHousehold()), 'storage')).toEqual([19.2, 31.5]);
  });

  test('a litre of oil is turned into a unit by 10.30 kWh', () => {
    const oil = choose(makeHousehold({ prices: { oilPencePerLitre: typed(62, 'measured') } })).oil!;
    // Worked examples of the trade: 62 p a litre at 10.30 kWh is 6.019 p a unit (computed).
    expect(oil.pencePerKWh).toBeCloseTo(6.019, 3);
    expect(oil.basis.grade).toBe('measured');
  });

  test.each([
    ['oil in pounds', { oilPencePerLitre: typed(0.58) }, [['oil', 0.58, 20.6, 206]]],
    ['LPG at the price of its energy', { lpgPencePerLitre: typed(10) }, [['lpg', 10, 14.42, 144.2]]],
    ['pellets by the tonne', { pelletsPencePerKg: typed(400) }, [['pellets', 400, 9.6, 96]]],
    ['a dear year', { oilPencePerLitre: typed(111), lpgPencePerLitre: typed(90), pelletsPencePerKg: typed(60) }, []],
  ])('a price in another unit is asked about: %s', (_, prices, asked) => {
    const { questions } = choose(makeHousehold({ prices }));
    expect(questions.map(({ code }) => code)).toEqual(asked.map(() => 'fuel-price-unusual'));
    const told = questions.map(({ data }) => [data!.fuel, data!.pence, data!.low, data!.high]);
    expect(told).toEqual(
      asked.map((one) => one.map((each) => (typeof each === 'number' ? expect.closeTo(each, 6) : each))),
    );
  });
});

describe('shares and delivered fuels', () => {
  test('what is asked multiplies, else all is as it is', () => {
    const shares = ({ electricityShare, fuelShare }: ReturnType<typeof choose>) => [electricityShare, fuelShare];
    expect(shares(choose(makeHousehold()))).toEqual([1, 1]);
    const asked = {
      household: makeHousehold(),
      reference,
      asOf: '2026-11-25',
      whatIf: { electricityShare: 1.3, fuelShare: 0.7 },
    };
    expect(shares(choosePrices(asked))).toEqual([1.3, 0.7]);
  });
  test('a published price of oil, old by then; a typed one is of the day', () => {
    const oil = choose(makeHousehold()).oil!;
    expect([oil.pencePerUnit, oil.basis.grade, oil.basis.staleDays]).toEqual([58, 'assumed', 298]);
    expect(oil.pencePerKWh).toBeCloseTo(58 / reference.kWhPerUnit.oil.value, 12);
    const own = choose(makeHousehold({ prices: { oilPencePerLitre: typed(62) } })).oil!;
    expect(own.basis).toMatchObject({ from: '2026-11-25', grade: 'estimated', origin: 'typed in a test' });
    expect(own.basis).not.toHaveProperty('staleDays');
    expect([own.pencePerUnit, own.spread]).toEqual([62, oil.spread]);
  });
  test.each([
    // Said of a price that began on 1 October 2026, looked at on 25 November: for a quarter, and of this price only.
    ['of it', '2026-10-01', '2026-11-25', true],
    ['of the one before it', '2026-09-30', '2026-11-25', false],
    ['a quarter ago', '2026-10-02', '2027-01-02', true],
    ['a day more', '2026-10-02', '2027-01-03', false],
    ['only tomorrow', '2026-11-26', '2026-11-25', false],
  ])('the word that a price stands, %s', (_, on, asOf, stands) => {
    const earlier = { price: 'gas' as const, on: '2026-10-01' };
    const household = makeHousehold({ prices: { stand: [earlier, { price: 'electricity', on, said: 'asked' }] } });
    const { electricity, storage } = choose(household, asOf);
    expect(electricity.basis.stands).toEqual(stands ? { on, said: 'asked' } : undefined);
    expect(storage!.basis.stands).toBeUndefined();
  });
  test('of several words the last one, and of oil its own', () => {
    const word = (price: 'oil' | 'gas', on: string) => ({ price, on });
    const stand = [word('gas', '2026-10-05'), word('gas', '2026-11-01'), word('oil', '2026-11-02')];
    const chosen = choose(makeHousehold({ prices: { stand } }));
    expect([chosen.gas.basis.stands, chosen.oil!.basis.stands]).toEqual([{ on: '2026-11-01' }, { on: '2026-11-02' }]);
  });
  test('what nobody publishes here has no price, until it is typed', () => {
    const bare = { ...reference, deliveredPrices: reference.deliveredPrices.filter(({ fuel }) => fuel !== 'oil') };
    const of = (household: Household) => choosePrices({ household, reference: bare, asOf: '2026-11-25' }).oil;
    expect(of(makeHousehold())).toBeNull();
    expect(of(makeHousehold({ prices: { oilPencePerLitre: typed(62) } }))).toMatchObject({
      pencePerUnit: 62,
      spread: 0.3,
    });
  });
  test('built-in tariffs are the same object again, so that nothing is sorted twice', () => {
    const [one, two] = [choose(makeHousehold()), choose(makeHousehold())];
    for (const fuel of ['electricity', 'gas', 'storage'] as const) expect(one[fuel]!.tariff).toBe(two[fuel]!.tariff);
  });
});

describe('with tariffs of its own', () => {
  const night = makeTariff('night', [
    { name: 'night', pencePerKWh: 12, times: [{ from: '00:30', to: '07:30' }] },
    { name: 'day', pencePerKWh: 33, times: 'rest' },
  ]);
  const household = (prices: Household['prices'], tariffs: Household['tariffs']) => makeHousehold({ prices, tariffs });

  test('the version of the day is taken', () => {
    const tariff = makeTariff('own', 20, { from: '2025-01-01' });
    const dearer = makeTariff('own', 30, { from: '2026-06-01' }).versions;
    const both = { ...tariff, versions: [...tariff.versions, ...dearer] };
    const own = household({ electricityTariffId: 'own' }, [both]);
    expect(price(choose(own, '2026-05-31'), 'electricity')).toEqual([20]);
    expect(price(choose(own, '2026-06-01'), 'electricity')).toEqual([30]);
  });

  test('storage heaters go on the household’s two prices', () => {
    const chosen = choose(household({ electricityTariffId: 'night' }, [night]));
    expect(price(chosen, 'storage')).toEqual([12, 33]);
  });

  const dated = makeTariff('dated', 25);
  const series = priceSeries('2026-01-01', 365, () => 20);
  const withSeries = { ...dated, versions: [{ ...dated.versions[0]!, series }] };
  const other = makeTariff('other', [
    { name: 'night', pencePerKWh: 9, times: [{ from: '00:00', to: '05:00' }] },
    { name: 'day', pencePerKWh: 40, times: 'rest' },
  ]);
  test.each<[string, Household['prices'], number[]]>([
    ['the one named for them', { electricityTariffId: 'night', storageTariffId: 'other' }, [9, 40]],
    ['one of many prices by the half-hour', { electricityTariffId: 'dated' }, [25]],
    ['the built-in pair beside a single price', { electricityTariffId: 'flat' }, [19.2, 31.5]],
    ['the built-in pair where the one named is not there', { storageTariffId: 'nowhere' }, [19.2, 31.5]],
  ])('storage heaters go on %s', (_, prices, pence) =>
    expect(price(choose(household(prices, [night, other, withSeries, makeTariff('flat', 24)])), 'storage')).toEqual(
      pence,
    ),
  );
  test('a tariff named for them that has ended is said to be old, and may be let stand by its own name', () => {
    const ended = {
      ...other,
      until: '2026-01-31',
      versions: other.versions.map((one) => ({ ...one, from: '2025-01-01' })),
    };
    const prices = { storageTariffId: 'other', stand: [{ price: 'two-rate' as const, on: '2026-11-20' }] };
    const { basis } = choose(household(prices, [ended])).storage!;
    expect([basis.kind, basis.staleDays! > 0, basis.stands?.on]).toEqual(['own', true, '2026-11-20']);
  });
  test('each is asked about where it stands', () => {
    const ids = { electricityTariffId: 'a', gasTariffId: 'b', storageTariffId: 'c' };
    expect(choose(household(ids, [])).questions.map(({ field, data }) => [field, data])).toEqual([
      ['prices.electricityTariffId', { id: 'a', fuel: 'electricity' }],
      ['prices.gasTariffId', { id: 'b', fuel: 'gas' }],
      ['prices.storageTariffId', { id: 'c', fuel: 'electricity' }],
    ]);
  });
  test('a question of a tariff leaves it in use and counts its version from 1', () => {
    const dear = makeTariff('own', 20, { from: '2025-01-01' });
    const both = { ...dear, versions: [...dear.versions, ...makeTariff('own', 95, { from: '2026-06-01' }).versions] };
    const chosen = choose(household({ electricityTariffId: 'own' }, [both]));
    expect(price(chosen, 'electricity')).toEqual([95]);
    expect(chosen.questions).toMatchObject([
      { code: 'tariff-price-unusual', weight: 'question', data: { tariff: 'Tariff own', version: 2, pence: 95 } },
    ]);
  });
  test('gas of its own', () =>
    expect(price(choose(household({ gasTariffId: 'gas' }, [makeTariff('gas', 6, { fuel: 'gas' })])), 'gas')).toEqual([
      6,
    ]));

  test.each([
    ['missing', { electricityTariffId: 'nowhere' }, 'tariff-missing'],
    ['of the other fuel', { electricityTariffId: 'gas' }, 'tariff-other-fuel'],
    ['with a gap', { electricityTariffId: 'gap' }, 'tariff-band-gap'],
  ])('a tariff %s is refused, and the built-in price stands in', (_, prices, code) => {
    const gas = makeTariff('gas', 8, { fuel: 'gas' });
    const gap = makeTariff('gap', [{ name: 'half', pencePerKWh: 20, times: [{ from: '00:00', to: '12:00' }] }]);
    const chosen = choose(household(prices, [gas, gap]));
    expect(chosen.questions).toEqual([expect.objectContaining({ code, weight: 'refusal', stage: 'prices' })]);
    expect(price(chosen, 'electricity')).toEqual([26.32]);
  });

  test('a gap is said with the tariff, the day and the hour', () => {
    const gap = makeTariff('gap', [{ name: 'half', pencePerKWh: 20, times: [{ from: '00:00', to: '12:00' }] }]);
    const [question] = choose(household({ electricityTariffId: 'gap' }, [gap])).questions;
    expect(question!.data).toMatchObject({ tariff: 'Tariff gap', from: '12:00', to: '24:00' });
    expect(questionSentence(question!)).toMatch(/^“Tariff gap”: There is no price on Mondays in January from 12:00/);
  });
});
