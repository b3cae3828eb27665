/** What to read from now on: the first of each month, with what the written estimate has for the month before it. */

import { usualOther } from '../model/bill-gap/bill-doubts.ts';
import { heatPumpOf } from '../model/bill-gap/estimate-for-days.ts';
import { monthlyWarnings } from '../model/bill-gap/expected-range.ts';
import { daysBetween, firstOfNextMonth, monthOf } from '../model/calendar/civil.ts';
import { civilDateOf } from '../model/calendar/instant.ts';
import type { BillCheck } from '../model/shapes/bill-check.ts';
import type { CivilDate } from '../model/shapes/dates.ts';
import type { WrittenEstimate } from '../model/shapes/written-estimate.ts';
import { reference } from '../reference/index.ts';

export interface ReadingDay {
  readonly on: CivilDate;
  /**
   * Units since the reading before, kWh: the middle, and from where on to ring, both with `otherKWh` of other things that the
   * same meter counts. Null for the first reading.
   */
  readonly expected: { readonly kWh: number; readonly warnKWh: number; readonly otherKWh: number } | null;
}

const READINGS = 13;

type Checked = Pick<BillCheck, 'input' | 'doubts'>;

/** Whether the home has no meter on the heat pump alone, so that what is read holds other things too. */
export const isHomeMeter = ({ input }: Pick<BillCheck, 'input'>): boolean =>
  input.meter === 'whole-house' && input.heatPumpKWh === undefined;

/** Other things on the meter that is read [kWh]: at the rate told for the bill or known from before, else as usual in homes like this. */
function otherThings(check: Checked, { household }: WrittenEstimate, from: CivilDate, to: CivilDate) {
  const { input } = check;
  if (!isHomeMeter(check)) return 0;
  const usual = (days: { readonly from: CivilDate; readonly to: CivilDate }) =>
    usualOther(household, days, reference, [], days.from).kWh;
  if (input.otherKWh === undefined) {
    const own = check.doubts?.find(({ fromRecord }) => fromRecord);
    return usual({ from, to }) * (own ? own.readKWh / usual(input) : 1);
  }
  return (input.otherKWh * daysBetween(from, to)) / daysBetween(input.from, input.to);
}

/** The months of the written estimate with the same level from which on to ring as the estimate itself prints. */
export function readingDays(check: Checked & Pick<BillCheck, 'madeOn'>, estimate: WrittenEstimate): ReadingDay[] {
  const pump = heatPumpOf(estimate);
  const warnings = monthlyWarnings(estimate.appraisal, pump, reference.spread);
  let on = firstOfNextMonth(civilDateOf(check.madeOn, estimate.household.zone));
  const days: ReadingDay[] = [{ on, expected: null }];
  while (days.length < READINGS) {
    const month = monthOf(on) - 1;
    const next = firstOfNextMonth(on);
    const otherKWh = otherThings(check, estimate, on, next);
    on = next;
    const kWh = pump.monthly.boughtKWh[month]! + otherKWh;
    days.push({ on, expected: { kWh, warnKWh: warnings[month]! + otherKWh, otherKWh } });
  }
  return days;
}
