/** One maker of worked-out years for tests: an invented home, and what a test changes of it. */

import { estimateDemand } from '../../../src/model/demand/estimate-demand.ts';
import type { SettleInput } from '../../../src/model/heat-pump/full/settle.ts';
import { reckonFullMachine } from '../../../src/model/heat-pump/full/spf-by-half-hour.ts';
import type { WhatIf } from '../../../src/model/shapes/appraisal.ts';
import type { FullMachine, Household } from '../../../src/model/shapes/household.ts';
import { typicalYear } from '../../../src/model/year/typical-year.ts';
import { reference } from '../../../src/reference/index.ts';
import { type HouseholdChange, makeHousehold } from '../appraisal/make-household.ts';

/** The usual test home with its machine worked out by the half-hour. */
export function fullHousehold(full: FullMachine = {}, change: HouseholdChange = {}): Household {
  return makeHousehold({ ...change, machine: { way: 'full', full, ...change.machine } });
}

export function settleInput(household: Household, whatIf?: WhatIf, regionId = 6): SettleInput {
  const year = typicalYear(reference.regions.find(({ id }) => id === regionId)!, 2026, household.zone);
  const with_ = whatIf ? { whatIf } : {};
  const { demand, heatBySlot } = estimateDemand({ household, series: [], reference, year, ...with_ });
  return { household, demand, reference, year, spaceShare: heatBySlot.spaceShare, ...with_ };
}

export const reckonFull = (full: FullMachine = {}, change: HouseholdChange = {}, whatIf?: WhatIf) =>
  reckonFullMachine(settleInput(fullHousehold(full, change), whatIf));
