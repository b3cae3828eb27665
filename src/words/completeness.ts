/** How much of its own span a series covers. */

import { compareDates } from '../model/calendar/civil.ts';
import type { Series } from '../model/shapes/evidence.ts';
import { say } from './say.ts';

const MS_PER_DAY = 86_400_000;

export interface Completeness {
  readonly daysHave: number;
  readonly daysSpan: number;
  /** Whole days in a hundred, rounded down unless all are there, so that a gap is never rounded away. */
  readonly inHundred: number;
}

export function completenessOf(series: Series): Completeness {
  const daysSpan = Math.max(1, Math.round((Date.parse(series.to) - Date.parse(series.from)) / MS_PER_DAY));
  // A day that was filled by rule is no day that we have.
  const filledDays = new Set(series.filled?.map(({ date }) => date)).size;
  const daysHave = series.days
    ? series.days.values.filter((value) => value !== null).length - filledDays
    : daysOfPeriods(series.periods ?? []);
  const share = Math.min(1, daysHave / daysSpan);
  return { daysHave: Math.round(daysHave), daysSpan, inHundred: share === 1 ? 100 : Math.floor(share * 100) };
}

/** A day that two bills claim is one day. */
function daysOfPeriods(periods: NonNullable<Series['periods']>): number {
  let days = 0;
  let end = Number.NEGATIVE_INFINITY;
  for (const { from, to } of periods.toSorted((a, b) => compareDates(a.from, b.from))) {
    const start = Math.max(end, Date.parse(from) / MS_PER_DAY);
    end = Math.max(end, Date.parse(to) / MS_PER_DAY);
    days += end - Math.min(start, end);
  }
  return days;
}

export function completenessWords(completeness: Completeness): string {
  if (completeness.inHundred === 100) return say('no day is missing');
  return say('we have {inHundred} days in 100', { inHundred: completeness.inHundred });
}
