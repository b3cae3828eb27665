/** The household's heat demand in a typical year, every way its evidence allows, with range, months and questions. */

import { daysInMonth } from '../calendar/civil.ts';
import type { Climate, Demand, Question, WhatIf } from '../shapes/appraisal.ts';
import type { Series } from '../shapes/evidence.ts';
import type { Household } from '../shapes/household.ts';
import type { Reference } from '../shapes/reference.ts';
import { tell } from '../shapes/told.ts';
import { weakestGrade } from '../shapes/working.ts';
import { degreeDaysFromMeans } from '../weather/degree-days.ts';
import { findRegion } from '../weather/region.ts';
import { byMonth, spaceShareByDay, sumTo } from '../year/spread-over-year.ts';
import type { TypicalYear } from '../year/typical-year.ts';
import { type Changed, changeDemand } from './change-what-if.ts';
import { chooseDemand, restsOnRecord } from './choose.ts';
import { WATER_FOLLOWS } from './demand-assumptions.ts';
import { heatFigure } from './figure.ts';
import { type Gathered, gatherEstimates } from './gather-estimates.ts';
import { reckonHotWater } from './hot-water.ts';

export interface DemandInput {
  readonly household: Household;
  readonly series: readonly Series[];
  readonly reference: Reference;
  readonly year: TypicalYear;
  readonly whatIf?: WhatIf;
}

export interface EstimatedDemand {
  readonly demand: Demand;
  readonly climate: Climate;
  readonly questions: Question[];
  /** Share of yearly space heat of each day of the year; sums to 1. */
  readonly heatBySlot: { readonly spaceShare: Float64Array };
}

/**
 * Heat for rooms and hot water [kWh a year] with 10, 50 and 90 % points, by month, with the estimates it rests on.
 * The heat loss coefficient handed back [W/K] is the one that makes the space heat out of the degree days to its base
 * temperature: kWh × 1000/(24 × degree days). Always answers: with no evidence at all a typical British home stands in.
 */
export function estimateDemand(input: DemandInput): EstimatedDemand {
  const { household, reference, year, whatIf } = input;
  const monthDays = Array.from({ length: 12 }, (_, m) => daysInMonth(year.slots.year, m + 1));
  const method = reckonHotWater(household, monthDays, reference);
  const gathered = gatherEstimates({ ...input, water: method });
  const chosen = chooseDemand(household, gathered, method);
  const changed = changeDemand({ ...chosen, roomC: gathered.room.value }, whatIf, year, reference);
  const degreeDaysAsIs = degreeDaysFromMeans(year.dailyMeanC, chosen.baseC);
  const spaceShare = spaceShareByDay(year, changed.baseC);
  const demand: Demand = {
    estimates: [...gathered.estimates],
    missing: [...gathered.missing],
    chosen: chosen.chosen,
    ...figures(changed, restsOnRecord({ estimates: gathered.estimates, chosen: chosen.chosen }) ? 0 : WATER_FOLLOWS),
    monthlySpaceKWh: byMonth(changed.space.value, spaceShare, monthDays),
    monthlyWaterKWh: sumTo(changed.water.value, method.monthlyKWh),
    baseC: changed.baseC,
    roomC: changed.roomC,
    heatLossWPerK: degreeDaysAsIs > 0 ? (chosen.space.value * 1000) / (24 * degreeDaysAsIs) : 0,
    ...ofRecord(gathered),
  };
  return {
    demand,
    climate: describeClimate(household, reference, year, changed.baseC, gathered),
    questions: [...gathered.questions, ...chosen.questions],
    heatBySlot: { spaceShare },
  };
}

/** What the record shows besides the estimate. */
function ofRecord(gathered: Gathered): Partial<Demand> {
  const { signature, change, recordHeatLoss, typedHeatLossWPerK, yearsAhead } = gathered;
  return {
    ...(signature ? { signature } : {}),
    ...(change ? { change } : {}),
    ...(recordHeatLoss ? { recordHeatLoss } : {}),
    ...(typedHeatLossWPerK === undefined ? {} : { typedHeatLossWPerK }),
    ...(yearsAhead ? { yearsAhead } : {}),
  };
}

function figures({ space, water }: Changed, follows: number): Pick<Demand, 'space' | 'water' | 'total'> {
  const grade = weakestGrade([space.grade, water.grade]);
  const value = space.value + water.value;
  const error = Math.sqrt(space.error ** 2 + water.error ** 2 + 2 * follows * space.error * water.error);
  const total = heatFigure(value, error, grade, {
    title: tell('heat-needed'),
    formula: tell('rooms-and-water-formula'),
    inputs: [
      { name: tell('for-rooms'), value: space.value, unit: 'kWh', grade: space.grade, origin: tell('sum-below') },
      { name: tell('for-water'), value: water.value, unit: 'kWh', grade: water.grade, origin: tell('sum-below') },
    ],
    result: { value, unit: tell('kwh-a-year') },
    ...(follows > 0 ? { source: tell('water-follows', { share: follows }) } : {}),
    steps: [space.working, water.working],
  });
  return {
    space: heatFigure(space.value, space.error, space.grade, space.working, space.lean),
    water: heatFigure(water.value, water.error, water.grade, water.working, water.lean),
    total,
  };
}

function describeClimate(
  household: Household,
  reference: Reference,
  year: TypicalYear,
  baseC: number,
  gathered: Gathered,
): Climate {
  const { region } = year;
  const found = findRegion(household.home, reference);
  return {
    regionId: region.id,
    regionName: region.name,
    monthlyMeanC: [...region.monthlyMeanC],
    baseC,
    degreeDays: degreeDaysFromMeans(year.dailyMeanC, baseC),
    recordWeather: gathered.recordWeather,
    grade: found.region.id === region.id ? found.grade : 'assumed',
    source: tell('both', { first: region.source, second: found.origin }),
  };
}
