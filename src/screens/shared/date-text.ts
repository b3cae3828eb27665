/** Days as people write them on paper. Day before month always, as in Britain and Germany; ISO dates are known too. */

import { civilDate, fullYear, isCivilDay } from '../../model/calendar/civil.ts';
import { monthNames, shortMonthNames } from '../../words/numbers.ts';
import { language } from '../../words/say.ts';

export type DateReading =
  | { readonly kind: 'empty' }
  | { readonly kind: 'day'; readonly date: string }
  | { readonly kind: 'no day'; readonly text: string };

/** Reads "1/10/2025", "1.10.25", "1 Oct 2025", "1 October 2025", "1. Oktober 2025" in German, and "2025-10-01". */
export function readDate(text: string): DateReading {
  const plain = text.trim();
  if (plain === '') return { kind: 'empty' };
  const iso = /^(\d{4})-(\d{1,2})-(\d{1,2})$/.exec(plain);
  const numeric = /^(\d{1,2})[/.\-\s](\d{1,2})[/.\-\s](\d{4}|\d{2})$/.exec(plain);
  const named = /^(\d{1,2})(?:\.|st|nd|rd|th)?[\s-]+(\p{L}{3,9})\.?[\s-]+(\d{4}|\d{2})$/iu.exec(plain);
  if (iso) return dayOf(plain, Number(iso[1]), Number(iso[2]), Number(iso[3]));
  if (numeric) return dayOf(plain, fullYear(numeric[3]!), Number(numeric[2]), Number(numeric[1]));
  if (named) return dayOf(plain, fullYear(named[3]!), monthNamed(named[2]!), Number(named[1]));
  return { kind: 'no day', text: plain };
}

function dayOf(text: string, year: number, month: number, day: number): DateReading {
  if (!isCivilDay(year, month, day)) return { kind: 'no day', text };
  return { kind: 'day', date: civilDate(year, month, day) };
}

function monthNamed(name: string): number {
  const lower = name.toLowerCase();
  return monthNames().findIndex((month) => month.toLowerCase().startsWith(lower) && lower.length >= 3) + 1;
}

/** "1 Oct 2025", "1. Okt 2025": short, and no month can be taken for a day. Anything that is no day stays as it was typed. */
export function showDate(text: string): string {
  const reading = readDate(text);
  if (reading.kind !== 'day') return text;
  const [year, month, day] = reading.date.split('-').map(Number);
  return `${day}${language() === 'de-DE' ? '.' : ''} ${shortMonthNames()[month! - 1]} ${year}`;
}
