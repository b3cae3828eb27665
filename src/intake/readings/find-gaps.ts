/** Missing runs and runs of one value, with dates and what they may amount to. */
import { localStamp } from '../../model/calendar/zone.ts';
import type { ZoneTable } from '../clock/zone-table.ts';
import type { RemarkBook } from '../terms/remark-book.ts';
import { remarkGapsIn } from '../terms/remark-gaps.ts';
import type { Placed } from './place-readings.ts';
import { tellAmount } from './screen-values.ts';

/** A meter that shows one value for longer than this has stood still. */
const FROZEN_MINUTES = 24 * 60;

interface Run {
  readonly from: number;
  readonly to: number;
  readonly slots: number;
}

const stampAt = (zone: string, utcMinute: number): string => localStamp(zone, utcMinute * 60_000).replace('T', ' ');

/** @param likelyKWh what a missing slot would have used, judged by the rest of the file; NaN for temperatures */
export function remarkGaps(placed: Placed, table: ZoneTable, zone: string, likelyKWh: number, book: RemarkBook): void {
  const gaps = missingRuns(placed, table).map(({ from, to, slots }) => ({
    from: stampAt(zone, from),
    to: stampAt(zone, to),
    count: slots,
  }));
  remarkGapsIn(gaps, likelyKWh, book);
}

function missingRuns(placed: Placed, table: ZoneTable): Run[] {
  const { intervalMinutes, days, from, to } = placed;
  const runs: Run[] = [];
  let open: number | undefined;
  const close = (end: number) => {
    if (open !== undefined && end > open) runs.push({ from: open, to: end, slots: (end - open) / intervalMinutes });
    open = undefined;
  };
  let expected = from;
  for (const { day, values } of days) {
    const dayStart = table.dayStart(day);
    if (dayStart > expected) open ??= expected;
    for (let s = 0; s < values.length; s++) {
      const at = dayStart + s * intervalMinutes;
      if (at < from || at >= to) continue;
      if (!Number.isNaN(values[s]!)) close(at);
      else open ??= at;
    }
    expected = dayStart + values.length * intervalMinutes;
  }
  close(to);
  return runs;
}

/** @param zeroMatters whether nought for a whole day is odd: for electricity it is, for gas in summer it is not
 *  @param likelyKWh what a reading usually is; NaN for temperatures */
export function remarkFrozen(
  placed: Placed,
  table: ZoneTable,
  zone: string,
  zeroMatters: boolean,
  book: RemarkBook,
  likelyKWh = Number.NaN,
): void {
  const { intervalMinutes, days } = placed;
  /** Handed what it needs: variables that it shared with the loop would cost memory at every reading. */
  const close = (value: number, since: number, until: number) => {
    if (until - since < FROZEN_MINUTES) return;
    const code = value === 0 ? 'zero-run' : 'frozen';
    if (value === 0 && !zeroMatters) return;
    const count = (until - since) / intervalMinutes;
    book.tally(code, 'note', {
      from: stampAt(zone, since),
      to: stampAt(zone, until),
      foundTold: tellAmount(value, Number.isNaN(likelyKWh) ? '°C' : 'kWh'),
      count,
      // What the run itself came to; for a run of noughts what was likely used and not counted.
      ...(Number.isNaN(likelyKWh) ? {} : { effectKWh: round(count * (value === 0 ? likelyKWh : value)) }),
    });
  };
  let value = Number.NaN;
  let since = 0;
  let until = 0;
  for (const { day, values } of days) {
    const dayStart = table.dayStart(day);
    for (let s = 0; s < values.length; s++) {
      const next = values[s]!;
      const at = dayStart + s * intervalMinutes;
      if (next !== value || at !== until) {
        close(value, since, until);
        value = next;
        since = at;
      }
      until = at + intervalMinutes;
    }
  }
  close(value, since, until);
}

const round = (kWh: number): number => Math.round(kWh * 10) / 10;
