/** Names what was filled, run by run, and what could not be. */

import { addDays } from '../../model/calendar/civil.ts';
import { tell } from '../../model/shapes/told.ts';
import type { RemarkBook } from '../terms/remark-book.ts';
import { type FilledSlots, LONGEST_FILL_DAYS } from './fill-gaps.ts';

const LISTED_RUNS = 12;

export function remarkFilled(filled: FilledSlots, left: number, book: RemarkBook): void {
  const runs = daysTogether(filled);
  const listed = runs.slice(0, LISTED_RUNS);
  const rest = runs.slice(LISTED_RUNS);
  for (const run of rest.length > 0 ? [...listed, rest.reduce(joined)] : listed) {
    const effectKWh = Math.round(run.kWh * 10) / 10;
    book.add('filled', 'note', { from: run.from, to: run.to, count: run.count, effectKWh });
  }
  if (left > 0)
    book.add('fill-left-open', 'note', {
      count: left,
      expectedTold: tell('gap-too-long', { days: LONGEST_FILL_DAYS }),
    });
}

interface Run {
  readonly from: string;
  /** Last day. */
  readonly to: string;
  readonly count: number;
  readonly kWh: number;
}

const joined = (a: Run, b: Run): Run => ({ from: a.from, to: b.to, count: a.count + b.count, kWh: a.kWh + b.kWh });

/** Runs on one day or on days one after the other. */
function daysTogether(filled: FilledSlots): Run[] {
  const runs: Run[] = [];
  for (const { date, slots, kWh } of filled) {
    const next = { from: date, to: date, count: slots, kWh };
    const before = runs.at(-1);
    if (before && date <= addDays(before.to, 1)) runs[runs.length - 1] = joined(before, next);
    else runs.push(next);
  }
  return runs;
}
