import type { CivilDate } from '../../model/shapes/dates.ts';
import type { Household } from '../../model/shapes/household.ts';
import type { Reference } from '../../model/shapes/reference.ts';
import type { Tariff } from '../../model/shapes/tariff.ts';
import { quarterOn, tariffFromQuarter } from '../../model/tariff/built-in.ts';

/** The electricity tariff that the heat pump is reckoned on: the household's own, else the published quarter. */
export function electricityInUse(household: Household, reference: Reference, today: CivilDate): Tariff {
  const own = household.tariffs.find((tariff) => tariff.id === household.prices.electricityTariffId);
  return own ?? tariffFromQuarter(quarterOn(reference.quarters, 'electricity', today));
}
