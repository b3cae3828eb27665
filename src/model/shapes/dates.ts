/** Days, clock times, zones and the days on which a country rests. */
import { tzOffset } from '@date-fns/tz';
import { z } from 'zod';

/** A slip of the pen such as 0206 or 20266 lies outside; within, every day has one before it and one after it. */
const isOfCalendar = (date: string): boolean => {
  const [month, day] = [Number(date.slice(5, 7)), Number(date.slice(8))];
  const found = new Date(Date.UTC(Number(date.slice(0, 4)), month - 1, day));
  return found.getUTCMonth() + 1 === month && found.getUTCDate() === day && date >= '1900-01-01' && date < '2200-01-01';
};

const AS_CIVIL_DATE = /^\d{4}-\d{2}-\d{2}$/;

/** A day that exists, in the years 1900 to 2199: 2027-02-29 does not. */
export const CivilDate = z
  .string()
  .regex(AS_CIVIL_DATE, { error: 'a date written as year-month-day', abort: true })
  .refine(isOfCalendar, 'a day of the calendar from 1900 to 2199');
export type CivilDate = z.infer<typeof CivilDate>;
export const isCivilDate = (text: string): text is CivilDate => AS_CIVIL_DATE.test(text) && isOfCalendar(text);
/** Local clock time, "00:30"; "24:00" is allowed as the end of a window. */
export const ClockTime = z.string().regex(/^([01]\d|2[0-3]):[0-5]\d$|^24:00$/, 'a time written as 07:30');
export const Weekday = z.enum(['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun']);
export type Weekday = z.infer<typeof Weekday>;

const isKnown = (zone: string): boolean => zone !== '' && !Number.isNaN(tzOffset(zone, new Date(0)));

/** The name of a time zone, known to the platform's tables: a name that is not would leave every hour without a place. */
export const TimeZone = z.string().refine(isKnown, 'the name of a time zone, such as Europe/London');

/** The three parts of the United Kingdom that keep bank holidays of their own. */
export const BANK_HOLIDAY_DIVISIONS = ['england-and-wales', 'scotland', 'northern-ireland'] as const;
export type BankHolidayDivision = (typeof BANK_HOLIDAY_DIVISIONS)[number];
