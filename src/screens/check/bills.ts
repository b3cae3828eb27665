/** Bills and readings among the evidence that can be held against a written estimate. */

import type { EstimateSummary } from '../../desk/contract.ts';
import {
  addDays,
  compareDates,
  daysBetween,
  firstOfMonth,
  firstOfMonthBefore,
  firstOfNextMonth,
} from '../../model/calendar/civil.ts';
import type { CivilDate } from '../../model/shapes/dates.ts';
import type { EvidencePeriod, Series } from '../../model/shapes/evidence.ts';
import type { Household } from '../../model/shapes/household.ts';
import { say } from '../../words/say.ts';

/** The estimate that a bill is held against: the one that the household took, else the newest. There is at least one. */
export function estimateInForce(
  estimates: readonly EstimateSummary[],
  { taken }: Pick<Household, 'taken'>,
): EstimateSummary {
  return estimates.find(({ id }) => id === taken?.estimateId) ?? estimates.toSorted((a, b) => b.number - a.number)[0]!;
}

export interface KnownBill {
  readonly key: string;
  readonly series: Series;
  readonly period: EvidencePeriod;
  readonly meter: 'heat-pump' | 'whole-house';
}

const isBought = ({ carrier, role }: Series) =>
  carrier === 'electricity' && (role === 'import' || role === 'heat-pump');
const meterOf = ({ role }: Series): KnownBill['meter'] => (role === 'heat-pump' ? 'heat-pump' : 'whole-house');

/** Electricity bills of the evidence that begin on or after the day of the written estimate, the newest first. */
export function listBills(series: readonly Series[], estimatedOn: CivilDate): KnownBill[] {
  return series
    .filter((one) => isBought(one) && one.periods !== undefined)
    .flatMap((one) =>
      one.periods!.map((period) => ({
        key: `${one.id}|${period.from}|${period.to}`,
        series: one,
        period,
        meter: meterOf(one),
      })),
    )
    .filter(({ period }) => period.from >= estimatedOn)
    .toSorted((a, b) => compareDates(b.period.from, a.period.from));
}

/** Electricity series read by the day or finer, which can be summed for any days they cover. */
export const listMeters = (series: readonly Series[]): Series[] =>
  series.filter((one) => isBought(one) && one.days !== undefined);

export interface KnownSpan {
  readonly key: string;
  readonly name: string;
  readonly from: CivilDate;
  /** Exclusive. */
  readonly to: CivilDate;
}

/** Whole months since the estimate that a meter has been read through: the newest, the newest three, and all in a row. */
export function listSpans(series: readonly Series[], estimatedOn: CivilDate): KnownSpan[] {
  const meters = listMeters(series).toSorted((a, b) => Number(b.role === 'heat-pump') - Number(a.role === 'heat-pump'));
  for (const meter of meters) {
    const months: CivilDate[] = [];
    const first = meter.days!.first;
    for (
      let month = firstOfMonth(meter.to);
      month >= estimatedOn && firstOfNextMonth(month) > first;
      month = firstOfMonthBefore(month)
    ) {
      if (daysOf(meter, month, firstOfNextMonth(month)) !== null) months.push(month);
      else if (months.length > 0) break;
    }
    const newest = months[0];
    if (newest === undefined) continue;
    const to = firstOfNextMonth(newest);
    const span = (count: number, name: string): KnownSpan => ({
      key: `readings|${count}`,
      name,
      from: months[count - 1]!,
      to,
    });
    return [
      span(1, say('the newest month')),
      ...(months.length > 3 ? [span(3, say('the newest three months'))] : []),
      ...(months.length > 1 ? [span(months.length, say('all months since the estimate'))] : []),
    ];
  }
  return [];
}

/** Values of the days from `from` to `to` (exclusive), or null where a day is missing or outside the series. */
export function daysOf(series: Series, from: CivilDate, to: CivilDate): number[] | null {
  if (!series.days || daysBetween(from, to) <= 0) return null;
  const start = daysBetween(series.days.first, from);
  const count = daysBetween(from, to);
  if (start < 0 || start + count > series.days.values.length) return null;
  const values = series.days.values.slice(start, start + count);
  return values.every((value) => value !== null) ? (values as number[]) : null;
}

/** The bill's last day is written on it; the model counts to the first day after. */
export const dayAfter = (lastDay: CivilDate): CivilDate => addDays(lastDay, 1);
export const dayBefore = (to: CivilDate): CivilDate => addDays(to, -1);

/** Whether a series is there before and after these days but not on all of them. */
export function hasHole({ days }: Series, from: CivilDate, to: CivilDate): boolean {
  if (!days || daysBetween(from, to) <= 0) return false;
  const start = daysBetween(days.first, from);
  const end = start + daysBetween(from, to);
  return start >= 0 && end <= days.values.length && days.values.slice(start, end).includes(null);
}
