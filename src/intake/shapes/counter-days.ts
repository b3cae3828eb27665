/** A counter that is read day by day, or seldom: days that share what it rose by, or periods. */
import { isEnergy, type Series } from '../../model/shapes/evidence.ts';
import { sumOf } from '../../model/units/sums.ts';
import type { ShapeInput } from '../importer/shape.ts';
import type { ColumnFacts } from '../layout/column-facts.ts';
import { readQuality } from '../layout/quality-marks.ts';
import type { Dates } from '../layout/read-dates.ts';
import { type Quantity, settleUnit } from '../layout/settle-unit.ts';
import { columnName } from '../layout/value-cells.ts';
import { dayPicture, daySeries } from '../periods/day-series.ts';
import { periodPicture, periodSeries } from '../periods/period-series.ts';
import type { RegisterStep } from '../periods/register-steps.ts';
import type { YearlyCounter } from '../readings/day-counter.ts';
import { LONGEST_FILL_DAYS } from '../readings/fill-gaps.ts';

/** What was used from one day to another. */
export interface CounterSpan {
  readonly fromDay: number;
  readonly toDay: number;
  readonly used: number;
  /** Index of the reading that closes it. */
  readonly after: number;
}

interface DatedCounter {
  readonly facts: ColumnFacts;
  readonly id: string;
  readonly dates: Dates;
  readonly quality: number | undefined;
}

interface ReadByDays {
  readonly series: Series;
  readonly firstDays: readonly { readonly at: string; readonly value: number | null }[];
  readonly quantity: Quantity;
}

export function readByDays(
  { facts, id, dates, quality }: DatedCounter,
  used: readonly CounterSpan[],
  stepMinutes: number | undefined,
  lineOf: (index: number) => number,
  { sheet, choices, context, book }: ShapeInput,
): ReadByDays | undefined {
  const days = used.reduce((sum, s) => sum + s.toDay - s.fromDay, 0);
  const perDay = used.reduce((sum, s) => sum + s.used, 0) / Math.max(1, days);
  const quantity = settleUnit(sheet, facts, days > 0 ? perDay : Number.NaN, undefined, choices, context, book);
  const name = facts.heading || quantity.carrier;
  if (stepMinutes === 1440 && used.length > 2) {
    const short = used.filter((s) => s.toDay - s.fromDay <= LONGEST_FILL_DAYS);
    const values = short.flatMap((s) => {
      const days = s.toDay - s.fromDay;
      const value = (s.used * quantity.kWhPerUnit) / days;
      return Array.from({ length: days }, (_, i) => ({ day: s.fromDay + i, value, line: lineOf(s.after) }));
    });
    const shared = short.filter((s) => s.toDay - s.fromDay > 1);
    if (shared.length > 0)
      book.add('counter-shared', 'note', {
        column: columnName(sheet, facts.index),
        count: sumOf(shared.map((s) => s.toDay - s.fromDay - 1)),
        ...(isEnergy(quantity.carrier) ? { effectKWh: sumOf(shared.map((s) => s.used)) * quantity.kWhPerUnit } : {}),
      });
    const series = daySeries(id, name, quantity, values, 0, book);
    return series && { series, firstDays: dayPicture(series), quantity };
  }
  const periods = used.map((s) => ({
    fromDay: s.fromDay,
    toDay: s.toDay,
    quantity: s.used,
    kWh: s.used * quantity.kWhPerUnit,
    quality: quality === undefined ? ('unknown' as const) : readQuality(sheet, quality, dates.rows[s.after]!),
    line: lineOf(s.after),
  }));
  const series = periodSeries(id, name, quantity, periods, book);
  return series && { series, firstDays: periodPicture(series), quantity };
}

/**
 * Steps within one day go together with the one that leaves it. The first reading after a counter began anew is what was
 * used since, and so is the first of all, where it is no longer ago than other readings are apart.
 */
export function overDays(
  steps: readonly RegisterStep[],
  dayAt: (index: number) => number,
  [readings, yearly, first]: readonly [Float64Array, YearlyCounter | undefined, number | undefined],
): CounterSpan[] {
  const over: CounterSpan[] = [];
  let open: CounterSpan | undefined;
  const put = (fromDay: number, after: number, used: number) => {
    open = { fromDay, toDay: dayAt(after), used, after };
    if (open.toDay <= open.fromDay) return;
    over.push(open);
    open = undefined;
  };
  const sinceBegun = (index: number) => put(yearly!.beganAt.get(index)!, index, readings[index]!);
  const longest = Math.max(...steps.map((s) => dayAt(s.after) - dayAt(s.before)));
  const began = first === undefined ? undefined : yearly?.beganAt.get(first);
  if (began !== undefined && dayAt(first!) - began <= longest) sinceBegun(first!);
  for (const { before, after, used } of steps) {
    if (!Number.isNaN(used)) put(open?.fromDay ?? dayAt(before), after, (open?.used ?? 0) + used);
    else if (yearly?.beganAt.has(after)) sinceBegun(after);
    else open = undefined;
  }
  return over;
}
