import { describe, expect, test } from 'vitest';
import { choosePrices } from '../../../src/model/comparison/prices-of.ts';
import type { Household } from '../../../src/model/shapes/household.ts';
import { reference } from '../../../src/reference/index.ts';
import { questionSentence } from '../../../src/words/questions.ts';
import { makeHousehold, makeTariff, typed } from '../appraisal/make-household.ts';

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
