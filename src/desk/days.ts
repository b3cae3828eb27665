import { toDayNumber } from '../model/calendar/civil.ts';
import { DeskError } from './contract.ts';

/** Day number of a date that somebody typed; refuses one that the calendar does not have. */
export function dayOf(date: string, where: string): number {
  try {
    return toDayNumber(date);
  } catch {
    throw new DeskError({
      code: 'no-such-date',
      message: `${date} is not a date of the calendar.`,
      where,
      remedy: 'Correct the date.',
    });
  }
}
