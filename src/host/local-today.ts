import { civilDate } from '../model/calendar/civil.ts';

/** Today by this machine's own clock and zone, as an ISO date. */
export function localToday(now: Date = new Date()): string {
  return civilDate(now.getFullYear(), now.getMonth() + 1, now.getDate());
}
