/** Which band of a tariff version holds at a clock time. */
import { isBankHoliday } from '../calendar/bank-holidays.ts';
import { minuteOf, WEEKDAYS, weekdayIndex } from '../calendar/civil.ts';
import type { DayKind, PricedVersion, TariffBand, TariffWindow } from '../shapes/tariff.ts';

export const MINUTES_PER_DAY = 1440;
/** Kinds of day by index: the weekdays from Monday on, then the bank holiday. */
export const DAY_KINDS: readonly DayKind[] = [...WEEKDAYS, 'bank-holiday'];
export const BANK_HOLIDAY = 7;

/** How many kinds of day the version tells apart: seven, or eight where bank holidays are days of their own. */
export const dayKindsOf = (version: PricedVersion): number => (version.bankHolidays ? 8 : 7);

/** Kind of a day under a version: 0 is Monday, 7 a bank holiday where the version keeps them apart. */
export function dayKindOn(version: PricedVersion, dayNumber: number): number {
  const { bankHolidays } = version;
  return bankHolidays && isBankHoliday(dayNumber, bankHolidays) ? BANK_HOLIDAY : weekdayIndex(dayNumber);
}

/** Whether the window holds at a minute of a day. Month 1 to 12; kind of day 0 (Monday) to 7; both of the clock's own date. */
function windowHolds(window: TariffWindow, month: number, dayKind: number, minute: number): boolean {
  if (window.months && !window.months.includes(month)) return false;
  if (window.days && !window.days.includes(DAY_KINDS[dayKind]!)) return false;
  const from = minuteOf(window.from);
  const to = minuteOf(window.to);
  return from < to ? minute >= from && minute < to : minute >= from || minute < to;
}

/** Whether a band names this minute in one of its windows; a rest band names none. */
export function bandNames(band: Pick<TariffBand, 'times'>, month: number, dayKind: number, minute: number): boolean {
  return band.times !== 'rest' && band.times.some((window) => windowHolds(window, month, dayKind, minute));
}

/** Place in `bands` of the band that holds at a minute, the rest band where no other does; -1 where there is none. */
export function bandAt(version: PricedVersion, month: number, dayKind: number, minute: number): number {
  const named = version.bands.findIndex((band) => bandNames(band, month, dayKind, minute));
  return named >= 0 ? named : version.bands.findIndex((band) => band.times === 'rest');
}
