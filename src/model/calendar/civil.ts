/** Civil dates as day numbers, so that a span of days is a subtraction. Proleptic Gregorian calendar, no time zone. */
import type { CivilDate, Weekday } from '../shapes/dates.ts';

const MS_PER_DAY = 86_400_000;

/** A part of a date or clock as it is written: "07". */
export const twoDigits = (part: number): string => String(part).padStart(2, '0');
/** Two digits are a year of this century: no bill here is older. */
export const fullYear = (digits: string): number => (digits.length === 2 ? 2000 + Number(digits) : Number(digits));
const TWO_DIGITS = Array.from({ length: 32 }, (_, number) => twoDigits(number));

/** In the order of the ISO week, Monday first. */
export const WEEKDAYS: readonly Weekday[] = ['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun'];

/** Days since 1970-01-01. Throws RangeError for a date that does not exist, such as 2025-02-30. */
export function toDayNumber(date: CivilDate): number {
  const year = Number(date.slice(0, 4));
  const month = Number(date.slice(5, 7));
  const day = Number(date.slice(8, 10));
  if (!isCivilDay(year, month, day)) throw new RangeError(`${date} is not a date of the calendar`);
  return Date.UTC(year, month - 1, day) / MS_PER_DAY;
}

/** Whether year, month (1 to 12) and day name a day that exists. */
export function isCivilDay(year: number, month: number, day: number): boolean {
  return month >= 1 && month <= 12 && day >= 1 && day <= daysInMonth(year, month);
}

/** Month from 1 to 12; whether the day exists is not asked. */
export const civilDate = (year: number, month: number, day: number): CivilDate =>
  `${year}-${twoDigits(month)}-${twoDigits(day)}`;

/** Throws RangeError for what is no day number. */
export function toCivilDate(dayNumber: number): CivilDate {
  const date = new Date(dayNumber * MS_PER_DAY);
  const year = date.getUTCFullYear();
  // Four times as quick as an ISO string cut off, and an import asks for some ten thousand.
  if (year >= 1000 && year <= 9999)
    return `${year}-${TWO_DIGITS[date.getUTCMonth() + 1]}-${TWO_DIGITS[date.getUTCDate()]}`;
  return date.toISOString().slice(0, 10);
}

export const addDays = (date: CivilDate, days: number): CivilDate => toCivilDate(toDayNumber(date) + days);

/** Days from `from` to `to`, `to` exclusive. */
export const daysBetween = (from: CivilDate, to: CivilDate): number => toDayNumber(to) - toDayNumber(from);

/** 0 is Monday. 1970-01-01 was a Thursday. */
export const weekdayIndex = (dayNumber: number): number => (((dayNumber + 3) % 7) + 7) % 7;

/** Month 1 to 12. */
export const monthOf = (date: CivilDate): number => Number(date.slice(5, 7));

/** The same of a day number, without its text. */
export const monthOfDay = (dayNumber: number): number => new Date(dayNumber * MS_PER_DAY).getUTCMonth() + 1;

/** First day of the month of a date, of the month after it, and of the one before. */
export const firstOfMonth = (date: CivilDate): CivilDate => `${date.slice(0, 7)}-01`;
export const firstOfNextMonth = (date: CivilDate): CivilDate => firstOfMonth(addDays(firstOfMonth(date), 31));
export const firstOfMonthBefore = (date: CivilDate): CivilDate => firstOfMonth(addDays(firstOfMonth(date), -1));

export const yearOf = (date: CivilDate): number => Number(date.slice(0, 4));

export const isLeapYear = (year: number): boolean => (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;

export function daysInMonth(year: number, month: number): number {
  if (month === 2) return isLeapYear(year) ? 29 : 28;
  return month === 4 || month === 6 || month === 9 || month === 11 ? 30 : 31;
}

/** Days of the twelve months of a common year; sums to 365. */
export const COMMON_MONTH_DAYS: readonly number[] = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/** Minutes after midnight of a clock time such as "07:30"; 1,440 for "24:00". */
export function minuteOf(time: string): number {
  return Number(time.slice(0, 2)) * 60 + Number(time.slice(3));
}

/** Clock time of a minute after midnight; "24:00" for 1,440. */
export function clockTimeOf(minute: number): string {
  return `${twoDigits(Math.floor(minute / 60))}:${twoDigits(minute % 60)}`;
}

/** For sorting, the earliest first. By its letters alone: the rules of a language take long to come by the first time. */
export const compareDates = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
