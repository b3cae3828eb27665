/** What to read from now on: the first of each month, with what the written estimate has for the month before it. */

import { heatPumpOf } from '../model/bill-gap/estimate-for-days.ts';
import { monthlyWarnings } from '../model/bill-gap/expected-range.ts';
import { monthOf, yearOf } from '../model/calendar/civil.ts';
import { civilDateOf } from '../model/calendar/instant.ts';
import type { BillCheck } from '../model/shapes/bill-check.ts';
import type { CivilDate } from '../model/shapes/dates.ts';
import type { WrittenEstimate } from '../model/shapes/written-estimate.ts';
import { reference } from '../reference/index.ts';

export interface ReadingDay {
  readonly on: CivilDate;
  /** Units since the reading before, kWh: the middle, and from where on to ring. Null for the first reading. */
  readonly expected: { readonly kWh: number; readonly warnKWh: number } | null;
}

const READINGS = 13;

/** The months of the written estimate with the same level from which on to ring as the estimate itself prints. */
export function readingDays(check: Pick<BillCheck, 'madeOn'>, estimate: WrittenEstimate): ReadingDay[] {
  const pump = heatPumpOf(estimate);
  const warnings = monthlyWarnings(estimate.appraisal, pump, reference.spread);
  let on = firstOfNext(civilDateOf(check.madeOn, estimate.household.zone));
  const days: ReadingDay[] = [{ on, expected: null }];
  while (days.length < READINGS) {
    const month = monthOf(on) - 1;
    on = firstOfNext(on);
    days.push({ on, expected: { kWh: pump.monthly.boughtKWh[month]!, warnKWh: warnings[month]! } });
  }
  return days;
}

function firstOfNext(date: CivilDate): CivilDate {
  const [year, month] = [yearOf(date), monthOf(date)];
  const next = month === 12 ? [year + 1, 1] : [year, month + 1];
  return `${next[0]}-${String(next[1]).padStart(2, '0')}-01`;
}
