/**
 * Numbers as they are said and as they stand in tables. Rounded here, once, at display.
 * A value that is not a number is said to be unknown and never shown as 0.
 */
import type { Locale } from 'date-fns';
import { de } from 'date-fns/locale/de';
import { enGB } from 'date-fns/locale/en-GB';
import { monthOf, toDayNumber, yearOf } from '../model/calendar/civil.ts';
import type { CivilDate } from '../model/shapes/dates.ts';
import { digits, moneyDigits, signOf } from './digits.ts';
import { type Currency, currency, type Language, language, phrase, say } from './say.ts';

export const unknown = (): string => say('not known');
const unknownAmount = (): string => say('an unknown amount');

const LOCALES: Readonly<Record<Language, Locale>> = { 'en-GB': enGB, 'de-DE': de };
const MONTHS = [0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11] as const;
type Month = (typeof MONTHS)[number];

/** "January" to "December" in the language spoken. */
export function monthNames(): readonly string[] {
  return MONTHS.map((month: Month) => LOCALES[language()].localize.month(month));
}
/** "Jan" to "Dec": three letters and no full stop, in every language. */
export const shortMonthNames = (): readonly string[] => monthNames().map((name) => name.slice(0, 3));

const WEEK = [1, 2, 3, 4, 5, 6, 0] as const;
/** "Monday" to "Sunday" in the language spoken. */
export const weekdayNames = (): readonly string[] => WEEK.map((day) => LOCALES[language()].localize.day(day));
/** "Mon" to "Sun", "Mo" to "So". */
export const shortWeekdayNames = (): readonly string[] =>
  weekdayNames().map((name) => name.slice(0, language() === 'de-DE' ? 2 : 3));

/** With a true minus sign; never "−0". */
const signed = (value: number, size: string): string => (value < 0 && /[1-9]/.test(size) ? `−${size}` : size);

/** A number with its thousands set apart and a true minus sign. */
export function grouped(value: number, decimals = 0): string {
  return Number.isFinite(value) ? signed(value, digits(Math.abs(value), decimals, language())) : unknown();
}

/** A number below 1, to three digits that count: "0.0123". */
export function threeDigits(value: number): string {
  const three = { minimumSignificantDigits: 3, maximumSignificantDigits: 3 };
  return signed(value, Math.abs(value).toLocaleString(language(), three));
}

/** Rounds to a step: 1,234 to 1,230 for a step of 10. */
export function roundTo(value: number, step: number): number {
  return Math.round(value / step) * step;
}

const money = (pounds: number, decimals = 0): string =>
  signed(pounds, moneyDigits(Math.abs(pounds), decimals, language(), currency()));

/** Rounds from 100 on so that no more than 2.5 % goes: to 5 below 200, to 10 above; whole numbers below 100. */
const roundSpoken = (value: number): number => {
  const size = Math.abs(value);
  return roundTo(value, size >= 200 ? 10 : size >= 100 ? 5 : 1);
};

/** Money in speech: to the nearest £10 from £200 on, £5 from £100 on, below that to the nearest £1. */
export function spokenPounds(pence: number): string {
  return Number.isFinite(pence) ? money(roundSpoken(pence / 100)) : unknownAmount();
}

/** Money in a table of yearly costs, and of one month in speech, so that twelve of them make the year: to the pound. */
export function exactPounds(pence: number): string {
  return Number.isFinite(pence) ? money(pence / 100) : unknown();
}

/** Money where the penny matters, as on a bill: "£1,194.35". */
export function poundsAndPence(pence: number): string {
  return Number.isFinite(pence) ? money(pence / 100, 2) : unknown();
}

/** A change of money with its sign: "+£58", "−£13"; as in speech where a sentence beside it says the same. */
export function signedPounds(pence: number, written: (pence: number) => string = exactPounds): string {
  if (!Number.isFinite(pence)) return unknown();
  const text = written(pence);
  return text.startsWith('−') || !/[1-9]/.test(text) ? text : `+${text}`;
}

/** Both ends as they are said, or what both are. */
export const rangeSaid = (low: string, high: string): string =>
  low === high ? low : say('{low} to {high}', { low, high });

/** A range of money in speech, both ends with their sign: "£1,040 to £1,400". */
export function poundsRange(lowPence: number, highPence: number): string {
  if (!Number.isFinite(lowPence) || !Number.isFinite(highPence)) return unknownAmount();
  return rangeSaid(spokenPounds(Math.min(lowPence, highPence)), spokenPounds(Math.max(lowPence, highPence)));
}

/** Three leading digits from 1,000 on; below as money in speech. */
export function roundedUnits(kWh: number): number {
  const size = Math.abs(kWh);
  if (size >= 1000) return roundTo(kWh, 10 ** (Math.floor(Math.log10(size)) - 2));
  return roundSpoken(kWh);
}

/** Energy without its word, rounded as it is said: "13,900". */
export function spokenCount(kWh: number): string {
  return grouped(roundedUnits(kWh));
}

/** Energy in speech, in the units that the bill counts: "13,900 units". */
export function spokenKWh(kWh: number): string {
  if (!Number.isFinite(kWh)) return say('an unknown number of kWh');
  const count = spokenCount(kWh);
  return count === '1' ? say('1 kWh') : say('{count} kWh', { count });
}

/** Energy in a table: "13,874 kWh". */
export function exactKWh(kWh: number): string {
  return Number.isFinite(kWh) ? `${grouped(kWh)} kWh` : unknown();
}

const HUNDREDTHS: Readonly<Record<Currency, string>> = { GBP: 'p', EUR: 'ct', USD: '¢' };
/** The sign of a hundredth of the money spoken in: "p". */
export const penceSign = (): string => HUNDREDTHS[currency()];

/** The sign of the money spoken in: "£". */
export const moneySign = (): string => signOf(currency());

/** A price or other small amount of pence: "26.3 p". */
export function pence(amount: number, decimals = 1): string {
  return Number.isFinite(amount) ? `${grouped(amount, decimals)} ${penceSign()}` : unknown();
}

/** A share as a percentage: 0.84 gives "84%". */
export function percent(share: number): string {
  return Number.isFinite(share) ? say('{count}%', { count: grouped(share * 100) }) : unknown();
}

/** A chance, which is never told as certain either way: 0.998 gives "over 99%". */
export function chance(share: number): string {
  if (share > 0.99) return say('over {chance}', { chance: percent(0.99) });
  return share < 0.01 ? say('under {chance}', { chance: percent(0.01) }) : percent(share);
}

/** A share to a tenth of a percent where it has one: 0.035 gives "3.5%". */
export function exactPercent(share: number): string {
  const tenths = Math.round(share * 1000) / 10;
  return Number.isFinite(tenths) && !Number.isInteger(tenths)
    ? say('{count}%', { count: grouped(tenths, 1) })
    : percent(share);
}

/** A seasonal factor: "3.4". */
export function factor(value: number): string {
  return grouped(value, 1);
}

export function degrees(celsius: number): string {
  if (!Number.isFinite(celsius)) return unknown();
  return `${grouped(celsius, Number.isInteger(Math.round(celsius * 10) / 10) ? 0 : 1)} °C`;
}

/** "no" to "eleven". */
const WHOLE = [
  phrase('no'),
  phrase('one'),
  phrase('two'),
  phrase('three'),
  phrase('four'),
  phrase('five'),
  phrase('six'),
  phrase('seven'),
  phrase('eight'),
  phrase('nine'),
  phrase('ten'),
  phrase('eleven'),
];
const AND_A_HALF = [
  phrase('half a'),
  phrase('one and a half'),
  phrase('two and a half'),
  phrase('three and a half'),
  phrase('four and a half'),
  phrase('five and a half'),
  phrase('six and a half'),
  phrase('seven and a half'),
  phrase('eight and a half'),
  phrase('nine and a half'),
];

/** A small count as a word, a large one in digits. */
export function numberWord(count: number): string {
  const word = WHOLE[count];
  return word === undefined ? grouped(count) : say(word);
}

/** A ratio as it is said leaves off at most this share of it. */
const LEFT_OFF_MOST = 0.03;
/** Of a gain below this nobody speaks. */
const LEAST_RATIO = 0.05;

/** "two", "half a", "2.29": a gain in kWh as it is said, never more than it is and at most 3 % less; a word only where it is as near. */
export function spokenRatio(value: number): string {
  if (!Number.isFinite(value) || value < 0) return unknown();
  if (value < LEAST_RATIO) return say('almost nothing');
  const cut = (steps: number) => Math.floor(value * steps + 1e-9) / steps;
  const isNear = (said: number) => said >= (1 - LEFT_OFF_MOST) * value;
  const half = cut(2);
  const named = (Number.isInteger(half) ? WHOLE : AND_A_HALF)[Math.floor(half)];
  if (named !== undefined && isNear(half)) return say(named);
  const decimals = [0, 1, 2, 3].find((count) => isNear(cut(10 ** count))) ?? 3;
  return grouped(cut(10 ** decimals), decimals);
}

/** The day in UTC, so that no zone of the machine shifts it; date-fns knows the months' names. */
/** As on the calendar, whatever zone the computer stands in. Throws RangeError for a day that does not exist. */
function partsOf(date: CivilDate): { day: number; month: string; year: number } {
  toDayNumber(date);
  return { day: Number(date.slice(8, 10)), month: monthNames()[monthOf(date) - 1]!, year: yearOf(date) };
}

/** "25 November 2026", "25. November 2026". */
export function longDate(date: CivilDate): string {
  const { day, month, year } = partsOf(date);
  return `${day}${language() === 'de-DE' ? '.' : ''} ${month} ${year}`;
}

/** Under an axis: "25/11/26", "25.11.26". */
export const shortDate = (date: CivilDate): string =>
  [partsOf(date).day, monthOf(date), date.slice(2, 4)].join(language() === 'de-DE' ? '.' : '/');

/** First and last day, both belonging to it: "1 October 2025 to 30 September 2026". */
export const daySpan = (from: CivilDate, to: CivilDate): string =>
  say('{low} to {high}', { low: longDate(from), high: longDate(to) });

/** First and last day, both belonging to it, as months: "October to December 2026". */
export function monthSpan(from: CivilDate, to?: CivilDate): string {
  const { month, year } = partsOf(from);
  const first = `${month} ${year}`;
  if (to === undefined) return say('{month} on', { month: first });
  const last = partsOf(to);
  const end = `${last.month} ${last.year}`;
  if (first === end) return first;
  return say('{low} to {high}', { low: year === last.year ? month : first, high: end });
}

/** "a", "a and b", "a, b and c". */
export function listed(items: readonly string[]): string {
  if (items.length < 2) return items[0] ?? '';
  const gaps = { items: items.slice(0, -1).join(', '), last: items.at(-1)! };
  // "the heat loss, and floor area and age": an item that has an "and" of its own is set off.
  return items.some((item) => / (and|und) /.test(item))
    ? say('{items}, and {last}', gaps)
    : say('{items} and {last}', gaps);
}

/** "A, B or C". */
export const listedOr = (items: readonly string[]): string =>
  items.length < 2
    ? (items[0] ?? '')
    : say('{items} or {last}', { items: items.slice(0, -1).join(', '), last: items.at(-1)! });

/** "1 day", "123 days". */
export function counted(count: number, one: string, many = `${one}s`): string {
  return `${grouped(count)} ${say(count === 1 ? one : many)}`;
}

export function capitalised(text: string): string {
  return /^kWh\b/.test(text) ? text : text.charAt(0).toUpperCase() + text.slice(1);
}

/** A label inside a sentence: its first letter small, unless it is an abbreviation such as LPG or German, whose nouns are tall. */
export function uncapitalised(text: string): string {
  if (language() === 'de-DE') return text;
  return /^[A-Z][a-z ]/.test(text) ? text.charAt(0).toLowerCase() + text.slice(1) : text;
}
