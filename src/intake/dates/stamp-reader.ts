/** What reading one date gives: civil minutes since 1970-01-01 00:00 as written, and the offset written beside it, if any. */
export const READ = 0;
/** Looks like a date but names a day or time that does not exist. */
export const IMPOSSIBLE = 1;
export const UNREADABLE = 2;
export type StampStatus = typeof READ | typeof IMPOSSIBLE | typeof UNREADABLE;

export type StampKind = 'day' | 'time' | 'week' | 'month' | 'quarter' | 'year';

/** Filled by `readStamp`, so that a row costs no object. */
export interface StampReader {
  civilMinute: number;
  /** Minutes east of UTC as written; NaN where no offset stands there. */
  offsetMinutes: number;
  kind: StampKind;
  /** The two numbers of a date like 03/04/2025 in the order written; 0 where order is not in doubt. */
  first: number;
  second: number;
}

export const createStampReader = (): StampReader => ({
  civilMinute: Number.NaN,
  offsetMinutes: Number.NaN,
  kind: 'day',
  first: 0,
  second: 0,
});

/** Weather stations have been read since; what is older than a meter reading is left out as a row. */
export const OLDEST_YEAR = 1700;
/** Years outside these are slips of the pen, not meter readings. */
export const EARLIEST_YEAR = 1990;
export const LATEST_YEAR = 2100;

/** How numbers count the time since 1970, where all of them are of the years 2000 to 2050. */
export function epochOf(smallest: number, largest: number): 'seconds' | 'milliseconds' | undefined {
  const isOf = (perSecond: number) => smallest >= 946_684_800 * perSecond && largest < 2_556_144_000 * perSecond;
  return isOf(1) ? 'seconds' : isOf(1000) ? 'milliseconds' : undefined;
}

/** Days since 1970-01-01 of a civil date; exact integer arithmetic on the 400-year cycle. */
export function civilDay(year: number, month: number, day: number): number {
  const y = month <= 2 ? year - 1 : year;
  const era = Math.floor(y / 400);
  const yearOfEra = y - era * 400;
  const dayOfYear = ((153 * (month + (month > 2 ? -3 : 9)) + 2) / 5) | 0;
  const dayOfEra = yearOfEra * 365 + ((yearOfEra / 4) | 0) - ((yearOfEra / 100) | 0) + dayOfYear + day - 1;
  return era * 146_097 + dayOfEra - 719_468;
}

export const isDigit = (code: number): boolean => code >= 48 && code <= 57;
