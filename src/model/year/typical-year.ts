/** The typical year of a region: a temperature for every day and every half-hour, monthly means exact. */
import { daysInMonth } from '../calendar/civil.ts';
import { type YearSlots, yearSlots } from '../calendar/zone.ts';
import type { ClimateRegion } from '../shapes/reference.ts';
import { dayDeviations, swingAt } from './day-pattern.ts';
import { smoothDailyMeans } from './mean-preserving.ts';

export interface TypicalYear {
  readonly region: ClimateRegion;
  readonly slots: YearSlots;
  /** Mean outdoor temperature, °C, one a day of the year. */
  readonly dailyMeanC: Float64Array;
  /** Outdoor temperature, °C, one a half-hour slot. */
  readonly outdoorC: Float64Array;
}

const cache = new WeakMap<ClimateRegion, Map<string, TypicalYear>>();

/**
 * Outdoor temperatures [°C] of a typical year in a region, by day and by half-hour of the zone's local time.
 * Smooth curve through the monthly means, plus fixed day-to-day deviations, plus a daily swing; the mean of each
 * month's days equals the region's monthly mean to 1e-9. Source of the means: the region's own row.
 */
export function typicalYear(region: ClimateRegion, year: number, zone: string): TypicalYear {
  let ofRegion = cache.get(region);
  if (!ofRegion) {
    ofRegion = new Map();
    cache.set(region, ofRegion);
  }
  const key = `${zone} ${year}`;
  const known = ofRegion.get(key);
  if (known) return known;
  const slots = yearSlots(year, zone);
  const dailyMeanC = dailyMeans(region, year);
  const built = { region, slots, dailyMeanC, outdoorC: halfHours(dailyMeanC, slots) };
  ofRegion.set(key, built);
  return built;
}

function dailyMeans(region: ClimateRegion, year: number): Float64Array {
  const monthDays = Array.from({ length: 12 }, (_, m) => daysInMonth(year, m + 1));
  const dailyMeanC = smoothDailyMeans(region.monthlyMeanC, monthDays);
  let day = 0;
  for (let month = 0; month < 12; month++) {
    for (const deviation of dayDeviations(month, monthDays[month]!)) dailyMeanC[day++]! += deviation;
  }
  return dailyMeanC;
}

function halfHours(dailyMeanC: Float64Array, slots: YearSlots): Float64Array {
  const outdoorC = new Float64Array(slots.count);
  for (let day = 0; day < dailyMeanC.length; day++) {
    const start = slots.dayStart[day]!;
    const end = slots.dayStart[day + 1]!;
    let swingSum = 0;
    for (let i = start; i < end; i++) {
      outdoorC[i] = swingAt(slots.month[i]!, slots.minute[i]!);
      swingSum += outdoorC[i]!;
    }
    // A day of 46 or 50 half-hours leaves a remainder of the swing; taken off, so that the day's mean stays exact.
    const shift = dailyMeanC[day]! - swingSum / (end - start);
    for (let i = start; i < end; i++) outdoorC[i]! += shift;
  }
  return outdoorC;
}
