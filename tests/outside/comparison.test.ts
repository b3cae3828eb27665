/** Running costs against a published rule, worked examples at published prices, and the check values of the trade. */
import { describe, expect, test } from 'vitest';
import type { Household } from '../../src/model/shapes/household.ts';
import { sayTold } from '../../src/words/say-told.ts';
import { EVERY_WAY, makeHousehold, makeTariff, typed } from '../unit/appraisal/make-household.ts';
import { compareBy, makeDemand } from '../unit/comparison/make-demand.ts';

/** A factor that a home was metered at: a designer's would first take the step to what homes get. */
const metered = (factor: number) => typed(factor, 'measured');
/** 14,100 kWh for rooms: a typed efficiency is that of the rooms, and hot water lies below it. */
const demand = makeDemand(14_100, 0);

function costOf(household: Household, id: string, asOf = '2026-11-25') {
  const { systems, versus } = compareBy(household, demand, { asOf });
  const system = systems.find((one) => one.id === id)!;
  const main = system.rates.filter(({ name }) => !sayTold(name).includes('pump and fan'));
  return {
    system,
    versus: versus.find(({ against }) => against === id),
    mainKWh: main.reduce((sum, { kWh }) => sum + kWh, 0),
    mainPounds: main.reduce((sum, { kWh, pencePerKWh }) => sum + kWh * pencePerKWh, 0) / 100,
  };
}

describe('14,100 kWh of heat at the price cap of October to December 2026 (26.32 p and 7.97 p), units only', () => {
  const boiler = (system: 'gas-condensing' | 'oil' | 'lpg', efficiency: number, prices: Household['prices'] = {}) =>
    makeHousehold({ present: { system, efficiency: typed(efficiency) }, prices });
  // Input = heat / efficiency, cost = input × price; computed, one efficiency for rooms and hot water.
  test.each([
    ['gas at 84 %', boiler('gas-condensing', 0.84), 'present', 16_786, 1337.8],
    ['gas at 90 %', boiler('gas-condensing', 0.9), 'present', 15_667, 1248.6],
    ['oil at 62 p a litre, 84 %', boiler('oil', 0.84, { oilPencePerLitre: typed(62) }), 'present', 16_786, 1010.4],
    ['propane at 70 p a litre, 84 %', boiler('lpg', 0.84, { lpgPencePerLitre: typed(70) }), 'present', 16_786, 1629.7],
    ['direct electric', makeHousehold({ beside: EVERY_WAY }), 'direct-electric', 14_100, 3711.1],
    [
      'heat pump at 3.20',
      makeHousehold({ machine: { spaceFactor: metered(3.2), waterFactor: metered(3.2), boundary: 'H4' } }),
      'heat-pump',
      4406,
      1159.7,
    ],
  ] as const)('%s', (_, household, id, kWh, pounds) => {
    const { mainKWh, mainPounds } = costOf(household, id);
    expect(Math.round(mainKWh)).toBe(kWh);
    expect(mainPounds).toBeCloseTo(pounds, 1);
  });
});

describe('the factor at which a unit of heat costs the same as gas at 84 %', () => {
  // Break-even factor = electricity price / gas price × boiler efficiency at the price cap of the quarter.
  test.each([
    ['October to December 2026', '2026-11-25', 2.77], // 26.32 / 7.97 × 0.84
    ['April to June 2026', '2026-05-01', 3.61], // 24.67 / 5.74 × 0.84
  ])('%s: %s', (_, asOf, factor) => {
    const household = makeHousehold({ present: { efficiency: typed(0.84) } });
    expect(costOf(household, 'present', asOf).versus!.breakEvenFactor).toBeCloseTo(factor, 2);
  });
});

describe('check values of the trade (common practice, no source)', () => {
  const household = makeHousehold({
    present: { efficiency: typed(0.9) },
    machine: { spaceFactor: metered(4), waterFactor: metered(4), boundary: 'H4' },
    prices: { electricityTariffId: 'e', gasTariffId: 'g' },
    tariffs: [makeTariff('e', 28), makeTariff('g', 7, { fuel: 'gas' })],
  });
  test('a factor of 4.0 on electricity at 28 p: 7.0 p a unit of heat', () => {
    const { system } = costOf(household, 'heat-pump');
    expect(system.pencePerKWhHeat.value).toBeCloseTo(7, 9);
    expect(system.pencePerKWhSpaceHeat).toBeCloseTo(7, 9);
  });

  test('a boiler of 90 % on gas at 7 p: 7.78 p a unit of heat, its pump and fan left out', () => {
    const { system, mainPounds } = costOf(household, 'present');
    expect(system.pencePerKWhSpaceHeat).toBeCloseTo(7.78, 2);
    expect((mainPounds * 100) / 14_100).toBeCloseTo(7.78, 2);
  });

  test('the break-even factor of that pair is 3.6, its break-even price ratio 4.44', () => {
    const { versus } = costOf(household, 'present');
    expect(versus!.breakEvenFactor).toBeCloseTo(3.6, 9);
    expect(versus!.priceRatio).toBeCloseTo(4, 9);
    expect(versus!.breakEvenPriceRatio).toBeCloseTo(4 / 0.9, 9);
  });

  test('with standing charge, service and the boiler’s own electricity in, the yearly costs meet at their own factor', () => {
    const { versus } = costOf(household, 'present');
    const factor = versus!.breakEvenFactorAllCosts!;
    const there = compareBy(
      makeHousehold({
        ...household,
        machine: { ...household.machine, spaceFactor: metered(factor), waterFactor: metered(factor) },
      }),
      demand,
    );
    const [pump, present] = there.systems;
    expect(pump!.cost.value).toBeCloseTo(present!.cost.value, 6);
  });
});

test('the built-in day and night pair meets the single-rate cap of 26.32 p at the published split of 58/42 (Ofgem typical values, 2020)', () => {
  const { systems } = compareBy(makeHousehold({ beside: EVERY_WAY }), demand);
  const rates = systems.find(({ id }) => id === 'storage')!.rates;
  const price = (name: string) => rates.find((rate) => sayTold(rate.name).endsWith(name))!.pencePerKWh;
  expect(0.58 * price('day') + 0.42 * price('night')).toBeCloseTo(26.32, 1);
});
