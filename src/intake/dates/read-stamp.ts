/**
 * Dates and times read straight from the text, without a Date for each row. ISO order, day or month first, compact digits;
 * names of months go the longer way.
 */
import { daysInMonth } from '../../model/calendar/civil.ts';
import type { Codes } from '../text/table.ts';
import { readNamedDate, readWeek } from './named-date.ts';
import { readTail } from './read-clock.ts';
import {
  civilDay,
  createStampReader,
  EARLIEST_YEAR,
  IMPOSSIBLE,
  isDigit,
  LATEST_YEAR,
  OLDEST_YEAR,
  READ,
  type StampReader,
  type StampStatus,
  UNREADABLE,
} from './stamp-reader.ts';

const reader = createStampReader();
/** Whether a cell holds a date, in whichever order and possible or not; a shorter one is a number. */
export const isDated = (cell: string): boolean =>
  cell.length >= 5 && readStamp(cell, 0, cell.length, true, reader) !== UNREADABLE;

/** Civil minute of a date, the day first where it may be either; NaN where it is none. */
export function minuteEitherWay(cell: string): number {
  for (const dayFirst of [true, false])
    if (readStamp(cell, 0, cell.length, dayFirst, reader) === READ) return reader.civilMinute;
  return Number.NaN;
}

/** Reads one cell. `dayFirst` settles 03/04/2025; it does not touch dates that are clear by themselves. */
export function readStamp(text: string, from: number, to: number, dayFirst: boolean, out: StampReader): StampStatus {
  out.offsetMinutes = Number.NaN;
  out.first = 0;
  out.second = 0;
  let at = from;
  let a = 0;
  while (at < to && isDigit(text.charCodeAt(at))) a = a * 10 + text.charCodeAt(at++) - 48;
  const lengthA = at - from;
  if (lengthA === 8 || lengthA === 10 || lengthA === 12 || lengthA === 14) return readCompact(text, from, at, to, out);
  const sign = text.charCodeAt(at);
  // - . /
  if (lengthA === 0 || lengthA > 4 || lengthA === 3 || sign < 45 || sign > 47)
    return readNamed(text, from, to, dayFirst, out);
  const startB = ++at;
  let b = 0;
  while (at < to && isDigit(text.charCodeAt(at))) b = b * 10 + text.charCodeAt(at++) - 48;
  const lengthB = at - startB;
  if (lengthB === 0) return readNamed(text, from, to, dayFirst, out);
  if (at === to) return readMonthOnly(a, lengthA, b, lengthB, sign, out);
  if (lengthB > 2 || text.charCodeAt(at) !== sign) return UNREADABLE;
  if (text.charCodeAt(at + 1) === 32) return readNamed(text, from, to, dayFirst, out);
  const startC = ++at;
  let c = 0;
  while (at < to && at - startC < 4 && isDigit(text.charCodeAt(at))) c = c * 10 + text.charCodeAt(at++) - 48;
  const lengthC = at - startC;
  let year = a;
  let month = b;
  let day = c;
  if (lengthA === 4) {
    if (lengthC === 0 || lengthC > 2) return UNREADABLE;
    // "2025.01.31." as in Hungary.
    if (sign === 46 && text.charCodeAt(at) === 46) at++;
  } else {
    if (lengthC !== 4 && lengthC !== 2) return UNREADABLE;
    out.first = a;
    out.second = b;
    year = lengthC === 2 ? 2000 + c : c;
    month = dayFirst ? b : a;
    day = dayFirst ? a : b;
  }
  if (month < 1 || month > 12 || day < 1 || year < OLDEST_YEAR || year > LATEST_YEAR) return IMPOSSIBLE;
  if (day > 28 && day > daysInMonth(year, month)) return IMPOSSIBLE;
  out.civilMinute = civilDay(year, month, day) * 1440;
  out.kind = 'day';
  return at === to ? READ : readTail(text, at, to, out);
}

/** The day of the stamp before, as a number of eight digits, and when it began: most rows are of the day of the one above. */
let lastDate = 0;
let lastMidnight = 0;

/**
 * 2025-04-03T00:30, with or without seconds and Z, as nearly all meters send it: a fraction of the time of `readStamp`,
 * and the same answer. False where it is written otherwise or anything is odd about it.
 */
export function readPlainStamp(codes: Codes, from: number, to: number, out: StampReader): boolean {
  if (to - from < 16 || codes[from + 4] !== 45 || codes[from + 7] !== 45) return false;
  const between = codes[from + 10];
  if ((between !== 84 && between !== 32) || codes[from + 13] !== 58) return false;
  const year = twoDigits(codes, from) * 100 + twoDigits(codes, from + 2);
  const month = twoDigits(codes, from + 5);
  const day = twoDigits(codes, from + 8);
  const hour = twoDigits(codes, from + 11);
  const minute = twoDigits(codes, from + 14);
  let at = from + 16;
  let seconds = 0;
  if (at + 3 <= to && codes[at] === 58) {
    seconds = twoDigits(codes, at + 1);
    at += 3;
  }
  const isUtc = at === to - 1 && codes[at] === 90;
  if (at !== to && !isUtc) return false;
  const date = year * 10_000 + month * 100 + day;
  if (date !== lastDate) {
    if (year < OLDEST_YEAR || year > LATEST_YEAR || month < 1 || month > 12 || day < 1) return false;
    if (day > 28 && day > daysInMonth(year, month)) return false;
    lastDate = date;
    lastMidnight = civilDay(year, month, day) * 1440;
  }
  if (hour < 0 || hour > 23 || minute < 0 || minute > 59 || seconds < 0 || seconds > 59) return false;
  // The last second of an interval stands for its end.
  out.civilMinute = lastMidnight + hour * 60 + minute + (seconds >= 30 ? 1 : 0);
  out.kind = 'time';
  out.offsetMinutes = isUtc ? 0 : Number.NaN;
  return true;
}

/** Two digits as a number; far below nought where they are none. */
function twoDigits(codes: Codes, at: number): number {
  const tens = codes[at]! - 48;
  const ones = codes[at + 1]! - 48;
  return tens >= 0 && tens <= 9 && ones >= 0 && ones <= 9 ? tens * 10 + ones : -10_000;
}

/** A weekday in English, German, French, Spanish, Italian, Dutch or Danish, whole or shortened, before a date. */
const WEEKDAY =
  /^(?:mon|tue|wed|thu|fri|sat|sun|mo|di|mi|do|fr|sa|so|lun|mar|mer|jeu|ven|sam|dim|mie|jue|vie|sab|dom|gio|ma|wo|vr|za|zo|man|tir|ons|tor|fre|lor|son|lu|je|ve|ju|vi|gi|ti|on|to|lo|me|su|tu|we|th)[a-z]{0,8}[.,]{0,2} *(?=\S)/;
/** "w/c 06/01/2025": the week that begins then. */
export const COMMENCING =
  /^(?:w\/?c|(?:week|wk)\.? ?(?:commencing|beginning|starting|of)|woche (?:vom|ab)|semaine du|week van)[.:]? *(?=\d)/i;
/** "w/e 12/01/2025": the week that ends with that day. */
export const ENDING = /^(?:w\/e|(?:week|wk)\.? ?(?:ending|ended)|woche bis)[.:]? *(?=\d)/i;
/** The sign of a footnote. */
const NOTE_BEHIND = /\s*[*†‡¹²³⁴⁵]{1,3}\)?$/;
/** "1. 4. 2025", as dates are written in Czech, Slovene and Croatian. */
const SPACED = /^(\d{1,2})\. ?(\d{1,2})\. ?(?=\d{4})/;
const SUM = /^(?:total|totaal|sum|som|gesamt)/;
const ACCENTS: Readonly<Record<string, string>> = { é: 'e', á: 'a', í: 'i', ì: 'i', ø: 'o' };

function readNamed(text: string, from: number, to: number, dayFirst: boolean, out: StampReader): StampStatus {
  if (to - from > 60 || to - from < 4) return UNREADABLE;
  const cell = text.slice(from, to);
  const joined = cell.replace(NOTE_BEHIND, '').replace(COMMENCING, '').replace(ENDING, '').replace(SPACED, '$1.$2.');
  if (joined !== cell) return readStamp(joined, 0, joined.length, dayFirst, out);
  const plain = cell.toLowerCase().replaceAll(/[éáíìø]/g, (letter) => ACCENTS[letter]!);
  // "Woche 3/2025" begins like a Wednesday, "Total 03/2025" like a Tuesday.
  if (SUM.test(plain)) return UNREADABLE;
  const week = readWeek(plain, out);
  if (week !== UNREADABLE) return week;
  const weekday = WEEKDAY.exec(plain)?.[0] ?? '';
  // "mar" is Tuesday or March: what follows tells.
  if (weekday !== '' && !/^\p{L}/u.test(cell.slice(weekday.length))) {
    const status = readStamp(cell, weekday.length, cell.length, dayFirst, out);
    if (status !== UNREADABLE) return status;
  }
  const status = readNamedDate(cell, out);
  return status === UNREADABLE && weekday !== '' ? readNamedDate(cell.slice(weekday.length), out) : status;
}

/** 2025-01, 01/2025, 01.2025. Any other point would make it a number. */
function readMonthOnly(a: number, lengthA: number, b: number, lengthB: number, sign: number, out: StampReader) {
  const isNumber =
    sign === 46 && (lengthA !== 2 || lengthB !== 4 || a < 1 || a > 12 || b < EARLIEST_YEAR || b > LATEST_YEAR);
  if (isNumber) return UNREADABLE;
  // The day of the year, by ISO 8601: 2025-032.
  if (lengthA === 4 && lengthB === 3 && sign === 45) {
    if (a < EARLIEST_YEAR || a > LATEST_YEAR || b < 1 || b > civilDay(a + 1, 1, 1) - civilDay(a, 1, 1))
      return IMPOSSIBLE;
    out.civilMinute = (civilDay(a, 1, 1) + b - 1) * 1440;
    out.kind = 'day';
    return READ;
  }
  let year = a;
  let month = b;
  if (lengthA !== 4) {
    if (lengthB !== 4) return UNREADABLE;
    year = b;
    month = a;
  } else if (lengthB > 2) return UNREADABLE;
  if (month < 1 || month > 12 || year < OLDEST_YEAR || year > LATEST_YEAR) return IMPOSSIBLE;
  out.civilMinute = civilDay(year, month, 1) * 1440;
  out.kind = 'month';
  return READ;
}

/** 20250403, 2025040300, 202504030030, 20250403T0030Z. A number of eight digits that is no date stays a number. */
function readCompact(text: string, from: number, at: number, to: number, out: StampReader): StampStatus {
  const digits = text.slice(from, at);
  const year = Number(digits.slice(0, 4));
  const month = Number(digits.slice(4, 6));
  const day = Number(digits.slice(6, 8));
  // Seconds since 1970 would do as days and hours of the eighteenth century.
  const oldest = digits.length > 8 ? EARLIEST_YEAR : OLDEST_YEAR;
  if (year < oldest || year > LATEST_YEAR || month < 1 || month > 12) return UNREADABLE;
  if (day < 1 || day > daysInMonth(year, month)) return UNREADABLE;
  out.civilMinute = civilDay(year, month, day) * 1440;
  out.kind = 'day';
  if (digits.length > 8) {
    const hour = Number(digits.slice(8, 10));
    const minute = Number(digits.slice(10, 12));
    if (hour > 24 || minute > 59) return UNREADABLE;
    out.civilMinute += hour * 60 + minute;
    out.kind = 'time';
  }
  return at === to ? READ : readTail(text, at, to, out);
}
