/**
 * An estimated period followed by an actual reading: what the estimate had too much or too little, the next period has
 * too little or too much. Only their sum was measured, so the two become one period from actual to actual.
 */
import { toCivilDate } from '../../model/calendar/civil.ts';
import type { RemarkBook } from '../terms/remark-book.ts';
import type { RawPeriod } from './raw-period.ts';

/** @param sorted in order of time */
export function mergeEstimated(sorted: readonly RawPeriod[], book: RemarkBook): RawPeriod[] {
  const merged: RawPeriod[] = [];
  let open: RawPeriod[] = [];
  for (const period of sorted) {
    const before = open.at(-1);
    if (before && before.toDay !== period.fromDay) {
      merged.push(...open);
      open = [];
    }
    if (period.quality === 'estimated') open.push(period);
    else if (open.length > 0 && (period.quality === 'actual' || period.quality === 'customer')) {
      const whole = together([...open, period]);
      book.tally('estimated-merged', 'note', {
        row: open[0]!.line,
        from: toCivilDate(whole.fromDay),
        to: toCivilDate(whole.toDay - 1),
        effectKWh: whole.kWh,
      });
      merged.push(whole);
      open = [];
    } else {
      merged.push(...open, period);
      open = [];
    }
  }
  return [...merged, ...open];
}

function together(periods: readonly RawPeriod[]): RawPeriod {
  const last = periods.at(-1)!;
  const costs = periods.map((p) => p.costPence);
  const sum = (of: (p: RawPeriod) => number) => periods.reduce((total, p) => total + of(p), 0);
  const { costPence: _, ...rest } = last;
  return {
    ...rest,
    fromDay: periods[0]!.fromDay,
    quantity: sum((p) => p.quantity),
    kWh: sum((p) => p.kWh),
    // A sum with a part missing would be no cost of the whole.
    ...(costs.every((c) => c !== undefined) ? { costPence: sum((p) => p.costPence!) } : {}),
    line: periods[0]!.line,
  };
}
