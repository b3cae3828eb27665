/** What a look at the years to come rests on: as typed, else the usual value, each with its grade and origin. */
import type { Given, Household } from '../shapes/household.ts';
import type { LifetimeInputs } from '../shapes/lifetime.ts';
import type { Wording } from '../shapes/told.ts';
import type { Grade } from '../shapes/working.ts';

type Purchase = Household['purchase'];

const CUSTOM = 'common practice, no source';

/** Taken where nothing is typed. Prices of purchase have no default: what was not given is not counted. */
export const USUAL = {
  years: { value: 20, origin: CUSTOM },
  /** Of the machine itself; pipes in the ground last longer. */
  groundLifeYears: { value: 20, origin: CUSTOM },
  airLifeYears: { value: 15, origin: CUSTOM },
  replacementLifeYears: { value: 15, origin: CUSTOM },
  presentYearsLeft: { value: 0, origin: 'replaced now instead; type the years if it has some left' },
  discountPerYear: { value: 0.035, origin: 'UK Treasury Green Book, real rate, from memory' },
  growthPerYear: { value: 0, origin: 'no trend assumed beyond general inflation; common practice, no source' },
  growthSpreadPerYear: { value: 0.02, origin: `one standard deviation; a judgement, ${CUSTOM}` },
} as const;

function settle(
  name: string,
  unit: string,
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
    years: settle('Years looked ahead', 'years', purchase.years, USUAL.years),
    discount: settle('Discount rate a year', 'share', purchase.discountPerYear, USUAL.discountPerYear),
    electricityGrowth: settle('Electricity price, growth a year', 'share', purchase.electricityGrowthPerYear, growth),
    fuelGrowth: settle('Fuel price, growth a year', 'share', purchase.fuelGrowthPerYear, growth),
    growthSpread: settle('Doubt of both growths', 'share', purchase.growthSpreadPerYear, USUAL.growthSpreadPerYear),
    pumpLife: settle('Life of the heat pump', 'years', purchase.heatPumpLifeYears, pumpLife),
    replacementLife: settle(
      'Life of what would replace the present system',
      'years',
      purchase.replacementLifeYears,
      USUAL.replacementLifeYears,
    ),
    presentYearsLeft: settle(
      'Years the present system would still last',
      'years',
      purchase.presentYearsLeft,
      USUAL.presentYearsLeft,
    ),
  };
}
