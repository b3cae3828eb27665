/** The heat of one household by the day, as the machine and its loop are worked out from it. */
import { isLeapYear, yearOf } from './calendar/civil.ts';
import { type EstimatedDemand, estimateDemand } from './demand/estimate-demand.ts';
import type { SettleInput } from './heat-pump/full/settle.ts';
import type { WhatIf } from './shapes/appraisal.ts';
import type { CivilDate } from './shapes/dates.ts';
import type { Series } from './shapes/evidence.ts';
import type { Household } from './shapes/household.ts';
import type { Reference } from './shapes/reference.ts';
import { findRegion } from './weather/region.ts';
import { type TypicalYear, typicalYear } from './year/typical-year.ts';

interface HeatInput {
  readonly household: Household;
  readonly series: readonly Series[];
  readonly reference: Reference;
  readonly asOf: CivilDate;
  readonly whatIf?: WhatIf;
}

/** The demand as `appraise` estimates it, and the typical year that it is for. */
export function demandOfHousehold({ asOf, ...input }: HeatInput): EstimatedDemand & { readonly year: TypicalYear } {
  const { household, reference } = input;
  const year = typicalYear(findRegion(household.home, reference).region, commonYear(asOf), household.zone);
  return { ...estimateDemand({ ...input, year }), year };
}

/**
 * Heat demand [kWh] of a typical year and its share of each day [1], by the same steps as `appraise` takes them.
 * Valid for any household; what is not known is assumed there and asked about by `appraise`.
 */
export function heatOfHousehold(input: HeatInput): SettleInput {
  const { household, reference, whatIf } = input;
  const changed = whatIf ? { whatIf } : {};
  const { demand, heatBySlot, year } = demandOfHousehold(input);
  return { household, demand, reference, year, spaceShare: heatBySlot.spaceShare, ...changed };
}

/** A year of 365 days, so that a yearly standing charge is the one people reckon with. */
export function commonYear(asOf: CivilDate): number {
  const year = yearOf(asOf);
  return isLeapYear(year) ? year + 1 : year;
}
