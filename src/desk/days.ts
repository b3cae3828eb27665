import { toDayNumber } from '../model/calendar/civil.ts';
import { say } from '../words/say.ts';
import { DeskError } from './desk-error.ts';

/** Day number of a date that somebody typed; refuses one that the calendar does not have. */
export function dayOf(date: string, where: string): number {
  try {
    return toDayNumber(date);
  } catch {
    throw new DeskError({
      code: 'no-such-date',
      message: say('{date} is not a date of the calendar.', { date }),
      where,
      remedy: say('Correct the date.'),
    });
  }
}
