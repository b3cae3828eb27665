/** The outdoor temperature a heat loss is stated for: typed, or the table's for the nearest city of the region. */
import type { Household } from '../shapes/household.ts';
import type { ClimateRegion, Reference } from '../shapes/reference.ts';
import { tell, type Wording } from '../shapes/told.ts';
import type { Grade } from '../shapes/working.ts';

export interface DesignOutdoor {
  readonly value: number;
  readonly grade: Grade;
  readonly origin: Wording;
  /** City and rule it was taken from; absent where it was typed. */
  /** No table knows the place, so that a heat loss says nothing without it. */
  readonly asked?: true;
  readonly taken?: { readonly place: string; readonly rule: '99 %' | '99.6 %' };
}

/** Cities of the design tables by climate region, nearest first. From memory of the map. */
const CITIES: Readonly<Record<number, readonly string[]>> = {
  1: ['London'],
  2: ['London'],
  3: ['Southampton area', 'London'],
  4: ['Plymouth'],
  5: ['Cardiff'],
  6: ['Birmingham'],
  7: ['Manchester'],
  8: ['Manchester'],
  9: ['Newcastle', 'Edinburgh'],
  10: ['Newcastle', 'Edinburgh'],
  11: ['Leeds', 'Nottingham', 'Manchester'],
  12: ['Norwich', 'London'],
  13: ['Cardiff'],
  14: ['Glasgow'],
  15: ['Edinburgh'],
  16: ['Edinburgh'],
  17: ['Glasgow'],
  18: ['Glasgow'],
  19: ['Glasgow'],
  20: ['Glasgow'],
  21: ['Belfast'],
};
const ELSEWHERE = ['Birmingham'];

/** How far below the mean of the coldest month a machine is laid out for, K, where no table names the place. Common practice, no source. */
const BELOW_COLDEST_MONTH_K = 14;

/**
 * Design outdoor temperature [°C] with its rule; the 99 % set where no rule is named. Where the country has no table,
 * one from the climate stands in and is marked as to be asked.
 */
export function designOutdoor(
  heat: Household['heat'],
  { id, monthlyMeanC }: ClimateRegion,
  reference: Reference,
): DesignOutdoor {
  if (heat.designOutdoorC) return heat.designOutdoorC;
  const rule = heat.designRule === '99.6 %' ? '99.6 %' : '99 %';
  const rows = reference.designTemperatures.filter((row) => row.rule === rule);
  for (const place of [...(CITIES[id] ?? ELSEWHERE), ...ELSEWHERE]) {
    const row = rows.find((r) => r.place === place);
    if (!row) continue;
    const origin = tell('design-place', { place, rule, source: row.source });
    return { value: row.outdoorC, grade: 'assumed', origin, taken: { place, rule } };
  }
  const value = Math.min(...monthlyMeanC) - BELOW_COLDEST_MONTH_K;
  return { value, grade: 'assumed', origin: tell('no-design-row'), asked: true };
}
