/** A heat demand by hand, and the pieces that a comparison needs beside it. */

import { yearSlots } from '../../../src/model/calendar/zone.ts';
import { compare } from '../../../src/model/comparison/compare.ts';
import { choosePrices } from '../../../src/model/comparison/prices-of.ts';
import { reckonMachine } from '../../../src/model/heat-pump/spf-from-factors.ts';
import type { Demand, Figure, WhatIf } from '../../../src/model/shapes/appraisal.ts';
import type { Series } from '../../../src/model/shapes/evidence.ts';
import type { Household } from '../../../src/model/shapes/household.ts';
import { reference } from '../../../src/reference/index.ts';

const WINTER = [17, 15, 12, 8, 4, 2, 1.5, 1.5, 3, 8, 12, 16];
const MONTH_DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

const heat = (value: number, spread: number): Figure => ({
  value,
  low: value * (1 - spread),
  high: value * (1 + spread),
  unit: 'kWh',
  grade: 'estimated',
  working: { title: 'Heat', formula: 'made for a test', inputs: [], result: { value, unit: 'kWh' } },
});

/** Heat for rooms and hot water [kWh a year] with the given relative spread; 250 W/K. */
export function makeDemand(spaceKWh: number, waterKWh: number, spread = 0.1): Demand {
  return {
    estimates: [],
    missing: [],
    chosen: 'together',
    space: heat(spaceKWh, spread),
    water: heat(waterKWh, spread),
    total: heat(spaceKWh + waterKWh, spread),
    monthlySpaceKWh: WINTER.map((share) => (spaceKWh * share) / 100),
    monthlyWaterKWh: MONTH_DAYS.map((days) => (waterKWh * days) / 365),
    baseC: 15.5,
    roomC: 20,
    heatLossWPerK: 250,
  };
}

export const SLOTS_2026 = yearSlots(2026, 'Europe/London');

/** Share of each day of 2026: the months of `WINTER`, their days alike. */
export const SPACE_SHARE = Float64Array.from({ length: 365 }, (_, day) => {
  const month = SLOTS_2026.month[SLOTS_2026.dayStart[day]!]!;
  return WINTER[month]! / 100 / MONTH_DAYS[month]!;
});

/** The comparison of a household with a demand made by hand. */
export function compareBy(
  household: Household,
  demand: Demand,
  more: { asOf?: string; draws?: number; whatIf?: WhatIf; series?: readonly Series[] } = {},
) {
  const { asOf = '2026-11-25', draws = 0, series = [] } = more;
  const whatIf = more.whatIf ? { whatIf: more.whatIf } : {};
  return compare({
    household,
    demand,
    machine: reckonMachine({ household, demand, reference, ...whatIf }),
    prices: choosePrices({ household, reference, asOf, ...whatIf }),
    reference,
    slots: SLOTS_2026,
    spaceShare: SPACE_SHARE,
    series,
    draws,
    ...whatIf,
  });
}
