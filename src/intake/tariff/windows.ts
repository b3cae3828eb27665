/** Times, days and months of a tariff row in words or numbers. */
import { clockTimeOf, WEEKDAYS } from '../../model/calendar/civil.ts';
import type { Weekday } from '../../model/shapes/dates.ts';
import { monthOfName } from '../dates/month-names.ts';
import { readClock } from '../dates/read-clock.ts';

/** "0:30" and "00:30:00" as "00:30"; undefined where it is no time. */
export function readTime(text: string): string | undefined {
  const minutes = readClock(text, 0, text.length);
  if (minutes < 0 || minutes > 1440) return undefined;
  return clockTimeOf(minutes);
}

/** "mon-fri", "sat sun", "weekdays", "weekend"; empty is every day; undefined where a word is no day. */
export function readDays(text: string): Weekday[] | undefined {
  const words = text.trim().toLowerCase();
  if (words === '' || /^(all|every ?day|daily)$/.test(words)) return [];
  if (/^week ?days?$/.test(words)) return WEEKDAYS.slice(0, 5);
  if (/^week ?ends?$/.test(words)) return WEEKDAYS.slice(5);
  return readSpans(words, (word) => WEEKDAYS.findIndex((day) => word.startsWith(day)), 7)?.map((i) => WEEKDAYS[i]!);
}

/** "10-3", "oct-mar", "4 5 6"; empty is every month; months 1 to 12. */
export function readMonths(text: string): number[] | undefined {
  const words = text.trim().toLowerCase();
  if (words === '' || words === 'all') return [];
  const indexOf = (word: string): number => (/^\d{1,2}$/.test(word) ? Number(word) : monthOfName(word)) - 1;
  return readSpans(words, indexOf, 12)?.map((i) => i + 1);
}

/** Members of a cycle from single names and spans; a span may run over the end of the cycle. */
function readSpans(words: string, indexOf: (word: string) => number, length: number): number[] | undefined {
  const found = new Set<number>();
  const joined = words.replaceAll(/\s*(?:-|–|\bto\b)\s*/g, '-');
  for (const part of joined.split(/[\s,;/&+]+|\band\b/).filter((p) => p !== '')) {
    const [first, last, more] = part.split('-');
    const from = indexOf(first ?? '');
    const to = last === undefined ? from : indexOf(last);
    if (more !== undefined || from < 0 || to < 0 || from >= length || to >= length) return undefined;
    for (let i = from; ; i = (i + 1) % length) {
      found.add(i);
      if (i === to) break;
    }
  }
  return found.size === 0 ? undefined : [...found].sort((a, b) => a - b);
}
