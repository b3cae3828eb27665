/** What a counter rose by over days on which it was not read: known in all, though not day by day. */
import { toCivilDate, toDayNumber } from '../../model/calendar/civil.ts';
import { isEnergy, type Series } from '../../model/shapes/evidence.ts';
import { sumOf } from '../../model/units/sums.ts';
import { registerOfSomeHours } from '../layout/column-words.ts';
import type { Quantity } from '../layout/settle-unit.ts';
import { openRemarkBook, type RemarkBook } from '../terms/remark-book.ts';
import { periodSeries } from './period-series.ts';
import type { RawPeriod } from './raw-period.ts';
import type { RegisterStep } from './register-steps.ts';

/** The readings of a counter in time. */
export interface CounterTimes {
  readonly steps: readonly RegisterStep[];
  /** Minutes of a reading, and at which a day begins. */
  readonly at: (index: number) => number;
  readonly dayStart: (day: number) => number;
  /** How far from the beginning of a day a reading may be taken, to be the one of that moment. */
  readonly tolerance: number;
  readonly lineOf: (index: number) => number;
}

/** Days without a value as periods of a record beside it; of a register of some hours they are only named. */
export function unreadDays(
  series: Series,
  quantity: Quantity,
  times: CounterTimes,
  column: string,
  book: RemarkBook,
): Series | undefined {
  const periods = periodsOf(series, quantity, times);
  const [first] = periods;
  if (!first || !isEnergy(quantity.carrier)) return undefined;
  const name = `${series.name} (…)`;
  // Registers of one meter are added row by row, which these are none of.
  const isPart = registerOfSomeHours(series.name) !== undefined;
  const own = isPart ? undefined : periodSeries(`${series.id}-unread`, name, quantity, periods, openRemarkBook(''));
  book.add('counter-unread', 'note', {
    column,
    from: toCivilDate(first.fromDay),
    to: toCivilDate(first.toDay - 1),
    count: periods.length,
    effectKWh: sumOf(periods.map(({ kWh }) => kWh)),
    ...(own ? { found: name } : {}),
  });
  return own && { ...own, expected: own.present };
}

function periodsOf({ days }: Series, quantity: Quantity, times: CounterTimes): RawPeriod[] {
  if (!days) return [];
  const first = toDayNumber(days.first);
  const begin = days.values.findIndex((value) => value !== null);
  const riseBetween = risesOf(times);
  const periods: RawPeriod[] = [];
  let open: number | undefined;
  for (const [i, value] of days.values.entries()) {
    // A day on which the readings begin is no gap.
    if (i < begin) continue;
    if (value === null) open ??= first + i;
    else if (open !== undefined) {
      const rise = riseBetween(times.dayStart(open), times.dayStart(first + i));
      if (rise)
        periods.push({
          ...{ fromDay: open, toDay: first + i, quantity: rise.used, kWh: rise.used * quantity.kWhPerUnit },
          ...{ quality: 'unknown', line: times.lineOf(rise.after) },
        });
      open = undefined;
    }
  }
  return periods;
}

/** By how much the counter rose between two moments at which it was read; undefined where it was exchanged meanwhile. */
function risesOf({ steps, at, tolerance }: CounterTimes) {
  const readings = steps.flatMap(({ before }, i) =>
    i === 0 ? [{ at: at(before), index: before, sum: 0, meter: 0 }] : [],
  );
  for (const { after, used } of steps) {
    const { sum, meter } = readings.at(-1)!;
    const isOther = Number.isNaN(used);
    readings.push({ at: at(after), index: after, sum: sum + (isOther ? 0 : used), meter: meter + (isOther ? 1 : 0) });
  }
  const known = readings.filter((one) => !Number.isNaN(one.at)).toSorted((a, b) => a.at - b.at);
  const nearest = (moment: number) => {
    let [low, high] = [0, known.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      if (known[middle]!.at < moment) low = middle + 1;
      else high = middle;
    }
    const [before, after] = [known[low - 1], known[low]];
    const best = !before || (after && after.at - moment <= moment - before.at) ? after : before;
    return best && Math.abs(best.at - moment) <= tolerance ? best : undefined;
  };
  return (from: number, to: number): { used: number; after: number } | undefined => {
    const [begin, end] = [nearest(from), nearest(to)];
    if (!begin || !end || begin.meter !== end.meter || begin === end) return undefined;
    return { used: end.sum - begin.sum, after: end.index };
  };
}
