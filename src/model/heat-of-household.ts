/** The heat of one household by the day, as the machine and its loop are worked out from it. */
import { isLeapYear, yearOf } from './calendar/civil.ts';
import { estimateDemand } from './demand/estimate-demand.ts';
import type { SettleInput } from './heat-pump/full/settle.ts';
import type { WhatIf } from './shapes/appraisal.ts';
import type { CivilDate } from './shapes/dates.ts';
import type { Series } from './shapes/evidence.ts';
import type { Household } from './shapes/household.ts';
import type { Reference } from './shapes/reference.ts';
import { findRegion } from './weather/region.ts';
import { typicalYear } from './year/typical-year.ts';

/**
 * Heat demand [kWh] of a typical year and its share of each day [1], by the same steps as `appraise` takes them.
 * Valid for any household; what is not known is assumed there and asked about by `appraise`.
 */
export function heatOfHousehold(input: {
  readonly household: Household;
  readonly series: readonly Series[];
  readonly reference: Reference;
  readonly asOf: CivilDate;
  readonly whatIf?: WhatIf;
}): SettleInput {
  const { household, series, reference, asOf, whatIf } = input;
  const year = typicalYear(findRegion(household.home, reference).region, commonYear(asOf), household.zone);
  const changed = whatIf ? { whatIf } : {};
  const { demand, heatBySlot } = estimateDemand({ household, series, reference, year, ...changed });
  return { household, demand, reference, year, spaceShare: heatBySlot.spaceShare, ...changed };
}

/** A year of 365 days, so that a yearly standing charge is the one people reckon with. */
export function commonYear(asOf: CivilDate): number {
  const year = yearOf(asOf);
  return isLeapYear(year) ? year + 1 : year;
}
