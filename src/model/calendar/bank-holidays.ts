/** Bank holidays of the United Kingdom by rule, with the days that a proclamation moved or added. */
import type { BankHolidayDivision } from '../shapes/dates.ts';
import { civilDate, toCivilDate, toDayNumber, weekdayIndex, yearOf } from './civil.ts';

/**
 * Easter Sunday as a day number. Gregorian rule: the Sunday after the full moon of the nineteen-year cycle on or after
 * 21 March. Valid for every Gregorian year. Source: J. Meeus, Astronomical Algorithms, chapter 8.
 */
export function easterSunday(year: number): number {
  const golden = year % 19;
  const century = Math.floor(year / 100);
  const ofCentury = year % 100;
  // Leap days left out by the century years, and the slow drift of the moon against the cycle.
  const drift = Math.floor((century - Math.floor((century + 8) / 25) + 1) / 3);
  const moon = (19 * golden + century - Math.floor(century / 4) - drift + 15) % 30;
  const toSunday = (32 + 2 * (century % 4) + 2 * Math.floor(ofCentury / 4) - moon - (ofCentury % 4)) % 7;
  const late = Math.floor((golden + 11 * moon + 22 * toSunday) / 451);
  return day(year, 3, 22) + moon + toSunday - 7 * late;
}

/** Proclaimed days, by division where not all keep them. From 2011 on; what comes later is proclaimed a year or two ahead. */
const PROCLAIMED: readonly { readonly date: string; readonly only?: BankHolidayDivision }[] = [
  { date: '2011-04-29' },
  { date: '2012-06-05' },
  { date: '2022-06-03' },
  { date: '2022-09-19' },
  { date: '2023-05-08' },
  { date: '2026-06-15', only: 'scotland' },
];
/** Holidays of the rule that were kept on another day. */
const MOVED: Readonly<Record<string, string>> = {
  '2012-05-28': '2012-06-04',
  '2020-05-04': '2020-05-08',
  '2022-05-30': '2022-06-02',
};

const kept = new Map<string, ReadonlySet<number>>();

/**
 * Bank holidays of a year as day numbers. A holiday of fixed date that falls on a Saturday or Sunday is kept on the next
 * weekday that is not one already. Source: Banking and Financial Dealings Act 1971, Schedule 1, with the yearly
 * proclamations; 2 January and 30 November in Scotland, 17 March and 12 July in Northern Ireland. Valid from 2011.
 */
export function bankHolidays(year: number, division: BankHolidayDivision): ReadonlySet<number> {
  const key = `${division} ${year}`;
  const known = kept.get(key);
  if (known) return known;
  const easter = easterSunday(year);
  const days = new Set<number>();
  const byRule = [
    easter - 2,
    ...(division === 'scotland' ? [] : [easter + 1]),
    firstMonday(year, 5),
    lastMonday(year, 5),
    division === 'scotland' ? firstMonday(year, 8) : lastMonday(year, 8),
  ];
  for (const one of byRule) {
    const moved = MOVED[toCivilDate(one)];
    days.add(moved === undefined ? one : toDayNumber(moved));
  }
  const fixed = fixedDates(year, division);
  for (const one of fixed) if (isWorkday(one)) days.add(one);
  for (const one of fixed) {
    if (isWorkday(one)) continue;
    let instead = one + 1;
    while (!isWorkday(instead) || days.has(instead)) instead += 1;
    days.add(instead);
  }
  for (const { date, only } of PROCLAIMED) {
    if (yearOf(date) === year && (only === undefined || only === division)) days.add(toDayNumber(date));
  }
  kept.set(key, days);
  return days;
}

export function isBankHoliday(dayNumber: number, division: BankHolidayDivision): boolean {
  return bankHolidays(yearOf(toCivilDate(dayNumber)), division).has(dayNumber);
}

function fixedDates(year: number, division: BankHolidayDivision): readonly number[] {
  const own: readonly (readonly [number, number])[] =
    division === 'scotland'
      ? [
          [1, 2],
          [11, 30],
        ]
      : division === 'northern-ireland'
        ? [
            [3, 17],
            [7, 12],
          ]
        : [];
  const all = [[1, 1], ...own, [12, 25], [12, 26]] as const;
  return all.map(([month, ofMonth]) => day(year, month, ofMonth));
}

const isWorkday = (dayNumber: number) => weekdayIndex(dayNumber) < 5;
const day = (year: number, month: number, ofMonth: number) => toDayNumber(civilDate(year, month, ofMonth));
const mondayFrom = (dayNumber: number) => dayNumber + ((7 - weekdayIndex(dayNumber)) % 7);
const firstMonday = (year: number, month: number) => mondayFrom(day(year, month, 1));
const lastMonday = (year: number, month: number) => mondayFrom(day(year, month, 25));
