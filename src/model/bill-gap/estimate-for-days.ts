/** The written estimate cut to the calendar days of a bill. */

import { daysInMonth, monthOf, toCivilDate, toDayNumber, yearOf } from '../calendar/civil.ts';
import type { SystemResult } from '../shapes/appraisal.ts';
import type { CivilDate } from '../shapes/dates.ts';
import type { ClimateRegion } from '../shapes/reference.ts';
import type { WrittenEstimate } from '../shapes/written-estimate.ts';
import { sumOf } from '../units/sums.ts';
import { type TypicalYear, typicalYear } from '../year/typical-year.ts';

export interface EstimateForDays {
  readonly days: number;
  /** Units for heating the rooms, and for everything else the heat pump does, kWh. */
  readonly spaceKWh: number;
  readonly otherKWh: number;
  /** Units for hot water inside `otherKWh`; what remains of it are pumps, standby and heaters. */
  readonly waterKWh: number;
  /** Their cost at the written estimate's own prices, pence. */
  readonly pence: number;
  /** An equal share of the year for as many days, pence. */
  readonly equalSharePence: number;
  /** Degree days of these days in the typical year, one a day. */
  readonly degreeDays: Float64Array;
  /** Units for the rooms by degree day, over the year. */
  readonly kWhPerDegreeDay: number;
  readonly yearPence: number;
  /** Share of the year's units that heats rooms, 0 to 1. */
  readonly spaceShare: number;
}

/** The heat pump of a written estimate. */
export function heatPumpOf(estimate: WrittenEstimate): SystemResult {
  const found = estimate.appraisal.systems.find(({ id }) => id === 'heat-pump');
  if (!found) throw new RangeError('a written estimate without a heat pump');
  return found;
}

/**
 * Units [kWh] and their cost [pence] that a written estimate holds for the days from `from` to `to` (exclusive).
 * Each month's units for the rooms go to its days by their degree days in the estimate's own typical year, all other
 * units in equal shares; the cost follows at the month's mean price. Whole calendar years give the yearly figures back.
 */
export function estimateForDays(estimate: WrittenEstimate, from: CivilDate, to: CivilDate): EstimateForDays {
  const { appraisal } = estimate;
  const pump = heatPumpOf(estimate);
  const { boughtKWh, unitsPence } = pump.monthly;
  const spaceByMonth = appraisal.demand.monthlySpaceKWh.map((heat, m) =>
    Math.min(boughtKWh[m]!, heat / pump.spaceEfficiency),
  );
  const waterByMonth = appraisal.demand.monthlyWaterKWh.map((heat, m) =>
    Math.min(boughtKWh[m]! - spaceByMonth[m]!, heat / pump.waterEfficiency),
  );
  const yearKWh = sumOf(boughtKWh);
  const yearPence = sumOf(unitsPence);
  const first = toDayNumber(from);
  const count = toDayNumber(to) - first;
  const degreeDays = new Float64Array(count);
  const yearOfDays = typicalDegreeDays(estimate);
  let spaceKWh = 0;
  let otherKWh = 0;
  let waterKWh = 0;
  let pence = 0;
  let equalSharePence = 0;
  for (let i = 0; i < count; i++) {
    const date = toCivilDate(first + i);
    const year = yearOfDays(yearOf(date));
    const m = monthOf(date) - 1;
    const monthDays = daysInMonth(yearOf(date), m + 1);
    const own = year.byDay[first + i - toDayNumber(`${date.slice(0, 4)}-01-01`)]!;
    const space = spaceByMonth[m]! * (year.byMonth[m]! > 0 ? own / year.byMonth[m]! : 1 / monthDays);
    const other = (boughtKWh[m]! - spaceByMonth[m]!) / monthDays;
    degreeDays[i] = own;
    spaceKWh += space;
    otherKWh += other;
    waterKWh += waterByMonth[m]! / monthDays;
    pence += boughtKWh[m]! > 0 ? ((space + other) * unitsPence[m]!) / boughtKWh[m]! : unitsPence[m]! / monthDays;
    equalSharePence += yearPence / year.byDay.length;
  }
  const yearSpaceKWh = sumOf(spaceByMonth);
  const yearDegreeDays = sumOf(yearOfDays(yearOf(from)).byMonth);
  return {
    days: count,
    spaceKWh,
    otherKWh,
    waterKWh,
    pence,
    equalSharePence,
    degreeDays,
    kWhPerDegreeDay: yearDegreeDays > 0 ? yearSpaceKWh / yearDegreeDays : 0,
    yearPence,
    spaceShare: yearKWh > 0 ? yearSpaceKWh / yearKWh : 0,
  };
}

interface DegreeDays {
  readonly byDay: Float64Array;
  readonly byMonth: readonly number[];
}

/** Degree days of the typical year to the written estimate's base temperature, for the length of any calendar year. */
function typicalDegreeDays({ appraisal, household }: WrittenEstimate): (year: number) => DegreeDays {
  const { climate, demand } = appraisal;
  // The estimate carries its own monthly temperatures, so that a later edition of the tables does not change it.
  const region: ClimateRegion = {
    id: climate.regionId,
    name: climate.regionName,
    monthlyMeanC: climate.monthlyMeanC,
    latitudeN: 0,
    heightM: 0,
    // Only its temperatures are asked for.
    source: '',
    provenance: 'computed',
  };
  const known = new Map<number, DegreeDays>();
  return (year) => {
    const found = known.get(year) ?? degreeDaysOf(typicalYear(region, year, household.zone), demand.baseC);
    known.set(year, found);
    return found;
  };
}

function degreeDaysOf({ dailyMeanC, slots }: TypicalYear, baseC: number): DegreeDays {
  const byDay = dailyMeanC.map((mean) => Math.max(0, baseC - mean));
  const byMonth = new Array<number>(12).fill(0);
  byDay.forEach((value, day) => {
    byMonth[slots.month[slots.dayStart[day]!]!]! += value;
  });
  return { byDay, byMonth };
}
