/** Every fact about the outside world that the model is told, one file a topic, each value with its source. */
import { type Country, countryOf } from '../model/shapes/country.ts';
import type { Reference } from '../model/shapes/reference.ts';
import { regions } from './climate.ts';
import { designTemperatures } from './design-temperatures.ts';
import { efficiency } from './efficiencies.ts';
import { designDeviation, fieldFactor } from './field-trials.ts';
import { carbonKgPerKWh, gasVolume, kWhPerUnit, service } from './fuels.ts';
import { inGermany } from './germany.ts';
import { ground } from './ground.ts';
import { homeHours } from './home-hours.ts';
import { hotWater } from './hot-water.ts';
import { battery, car } from './household-and-car.ts';
import { postcodes } from './postcodes.ts';
import { deliveredPrices, quarters, twoRate } from './prices.ts';
import { installedShare, ratedPoints } from './rated-points.ts';
import { spacePerM2 } from './space-heat.ts';
import { spread } from './spread.ts';
import { sun } from './sun.ts';

/** What travels with the program. */
export const builtIn: Reference = {
  country: 'GB',
  edition: '2026-11-29',
  regions,
  postcodes,
  quarters,
  deliveredPrices,
  twoRate,
  kWhPerUnit,
  gasVolume,
  carbonKgPerKWh,
  efficiency,
  fieldFactor,
  designDeviation,
  ratedPoints,
  installedShare,
  ground,
  service,
  hotWater,
  homeHours,
  sun,
  battery,
  car,
  spacePerM2,
  designTemperatures,
  spread,
};

/** What is reckoned with: the values of the program, or those of a newer file laid over them. */
export let reference: Reference = builtIn;

let laid: Partial<Reference> | null = null;
let german: Reference | null = null;

/** Whole topics of a signed file take the place of the program's own; null brings those back. German ones are in none yet. */
export function layOver(values: Partial<Reference> | null): void {
  // Every request of the desk comes by here.
  if (values === laid) return;
  laid = values;
  reference = { ...builtIn, ...values };
  german = null;
}

/** The same for the country that the household's home stands in. */
export function referenceOf(household: { readonly country?: Country | undefined }): Reference {
  if (countryOf(household) === 'GB') return reference;
  german ??= inGermany(reference);
  return german;
}
