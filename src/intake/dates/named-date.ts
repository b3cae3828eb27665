/** Dates with month names and labels of periods: "3 Apr 2025 00:30", "Apr-25", "Q1 2025", "Thursday, 3rd April 2025". */
import { daysInMonth, fullYear } from '../../model/calendar/civil.ts';
import { monthOfName } from './month-names.ts';
import { QUARTER_WORDS, quarterNumber } from './quarter-names.ts';
import { readTail } from './read-clock.ts';
import {
  civilDay,
  EARLIEST_YEAR,
  IMPOSSIBLE,
  LATEST_YEAR,
  OLDEST_YEAR,
  READ,
  type StampReader,
  type StampStatus,
  UNREADABLE,
} from './stamp-reader.ts';

const QUARTER_WORD = `(?:q|[qtk](?=\\d)|${QUARTER_WORDS})`;
const QUARTER = new RegExp(
  `^(?:${QUARTER_WORD}[ .]*([1-4])[ \\-/,]*(\\d{4})|(\\d{4})[ \\-/,]*${QUARTER_WORD}[ .]*([1-4])|([1-4]|i{1,3}|iv)(?:st|nd|rd|th|er|e|[.ºªo°]{1,2})?[ -]*(?:${QUARTER_WORD}|[qt])[ .\\-/,]*(?:of |de |del |van |af )?(\\d{4}))$`,
  'i',
);
/** Day, month, year, then the rest: a clock time of its own may follow the year with a colon ("13FEB08:00:30:00"). */
const DAY_FIRST =
  /^(\d{1,2})(?:st|nd|rd|th|er|[.°º])?[ \-/.]*(?:of |de |d')?(\p{L}{3,12})\.?,?[ \-/.]*(?:del? )?(\d{4}|\d{2})(?!\d|:(?!\d\d:\d\d:\d\d))/iu;
const MONTH_FIRST = /^(\p{L}{3,12})\.?[ \-/.]*(\d{1,2})(?:st|nd|rd|th)?,?[ \-/.]+(\d{4}|\d{2})(?![\d:])/iu;
const MONTH_ONLY = /^(\p{L}{3,12})\.?[ ,\-/.']*(?:del? )?(\d{4}|\d{2})$/iu;
const YEAR_MONTH = /^(\d{4})[ \-/.]*(\p{L}{3,12})\.?(?:[ \-/.]+(\d{1,2}))?$/iu;

const WEEK_WORD =
  '(?:w|wk|kw|week|woche|kalenderwoche|uge|vecka|uke|tydzie[nń]|t[yý]den|semaine|semana|settimana|sem|sett)';
const WEEK = new RegExp(
  `^(?:(\\d{4})[ \\-/.,]*${WEEK_WORD}[ .\\-]*(\\d{1,2})|${WEEK_WORD}[ .\\-]*(\\d{1,2})[ \\-/.,]+(\\d{4}))$`,
);

/** "2025-W03", "KW 3/2025", in small letters: its Monday, by ISO 8601, where week 1 is that of the fourth of January. */
export function readWeek(text: string, out: StampReader): StampStatus {
  const match = WEEK.exec(text);
  if (!match) return UNREADABLE;
  const year = Number(match[1] ?? match[4]);
  const week = Number(match[2] ?? match[3]);
  if (year < EARLIEST_YEAR || year > LATEST_YEAR || week < 1) return IMPOSSIBLE;
  const day = firstMonday(year) + 7 * (week - 1);
  if (day >= firstMonday(year + 1)) return IMPOSSIBLE;
  out.civilMinute = day * 1440;
  out.kind = 'week';
  return READ;
}

/** Day 0, the first of 1970, was a Thursday. */
function firstMonday(year: number): number {
  const fourth = civilDay(year, 1, 4);
  return fourth - ((fourth + 3) % 7);
}

export function readNamedDate(text: string, out: StampReader): StampStatus {
  const quarter = QUARTER.exec(text);
  if (quarter) {
    const year = Number(quarter[2] ?? quarter[3] ?? quarter[6]);
    const month = (quarterNumber(quarter[1] ?? quarter[4] ?? quarter[5]!) - 1) * 3 + 1;
    return settle(year, month, 1, 'quarter', out);
  }
  const only = MONTH_ONLY.exec(text);
  if (only) {
    const month = monthOfName(only[1]!);
    if (month > 0) return settle(fullYear(only[2]!), month, 1, 'month', out);
  }
  const yearFirst = YEAR_MONTH.exec(text);
  if (yearFirst) {
    const month = monthOfName(yearFirst[2]!);
    if (month === 0) return UNREADABLE;
    const day = yearFirst[3];
    return settle(Number(yearFirst[1]), month, day ? Number(day) : 1, day ? 'day' : 'month', out);
  }
  const dayFirst = DAY_FIRST.exec(text);
  const match = dayFirst ?? MONTH_FIRST.exec(text);
  if (!match) return UNREADABLE;
  const month = monthOfName(dayFirst ? match[2]! : match[1]!);
  if (month === 0) return UNREADABLE;
  const day = Number(dayFirst ? match[1] : match[2]);
  const status = settle(fullYear(match[3]!), month, day, 'day', out);
  if (status !== READ || match[0].length === text.length) return status;
  return readTail(text, match[0].length, text.length, out);
}

function settle(year: number, month: number, day: number, kind: StampReader['kind'], out: StampReader): StampStatus {
  if (year < OLDEST_YEAR || year > LATEST_YEAR || day < 1 || day > daysInMonth(year, month)) return IMPOSSIBLE;
  out.civilMinute = civilDay(year, month, day) * 1440;
  out.kind = kind;
  return READ;
}
