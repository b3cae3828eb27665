/** What a look at the years to come rests on: as typed, else the usual value, each with its grade and origin. */
import type { Given, Household } from '../shapes/household.ts';
import type { LifetimeInputs } from '../shapes/lifetime.ts';
import { type Told, tell, type Wording } from '../shapes/told.ts';
import type { Grade } from '../shapes/working.ts';

type Purchase = Household['purchase'];

const CUSTOM = tell('custom');

/** Taken where nothing is typed. Prices of purchase have no default: what was not given is not counted. */
export const USUAL = {
  years: { value: 20, origin: CUSTOM },
  /** Of the machine itself; pipes in the ground last longer. */
  groundLifeYears: { value: 20, origin: CUSTOM },
  airLifeYears: { value: 15, origin: CUSTOM },
  replacementLifeYears: { value: 15, origin: CUSTOM },
  presentYearsLeft: { value: 0, origin: tell('replaced-now') },
  discountPerYear: { value: 0.035, origin: tell('green-book') },
  growthPerYear: { value: 0, origin: tell('no-trend') },
  growthSpreadPerYear: { value: 0.02, origin: tell('growth-judgement') },
} as const;

function settle(
  name: Told,
  unit: Wording,
  given: Given<number> | undefined,
  usual: { value: number; origin: Wording },
) {
  const taken: { value: number; grade: Grade; origin: Wording } = given ?? { ...usual, grade: 'assumed' };
  return { value: taken.value, line: { name, unit, ...taken } };
}

/** Rates as fractions a year, lives and horizon in years. */
export function settleInputs(purchase: Purchase, source: 'ground' | 'air'): LifetimeInputs {
  const pumpLife = source === 'ground' ? USUAL.groundLifeYears : USUAL.airLifeYears;
  const growth = USUAL.growthPerYear;
  return {
    years: settle(tell('years-ahead'), tell('years'), purchase.years, USUAL.years),
    discount: settle(tell('discount-rate'), 'share', purchase.discountPerYear, USUAL.discountPerYear),
    electricityGrowth: settle(tell('electricity-growth'), 'share', purchase.electricityGrowthPerYear, growth),
    fuelGrowth: settle(tell('fuel-growth'), 'share', purchase.fuelGrowthPerYear, growth),
    growthSpread: settle(tell('growth-doubt'), 'share', purchase.growthSpreadPerYear, USUAL.growthSpreadPerYear),
    pumpLife: settle(tell('pump-life'), tell('years'), purchase.heatPumpLifeYears, pumpLife),
    replacementLife: settle(
      tell('replacement-life'),
      tell('years'),
      purchase.replacementLifeYears,
      USUAL.replacementLifeYears,
    ),
    presentYearsLeft: settle(
      tell('present-years-left'),
      tell('years'),
      purchase.presentYearsLeft,
      USUAL.presentYearsLeft,
    ),
  };
}
