/**
 * Numbers as they are said and as they stand in tables. Rounded here, once, at display.
 * A value that is not a number is said to be unknown and never shown as 0.
 */
import { TZDate } from '@date-fns/tz';
import { format, isSameYear } from 'date-fns';
import { enGB } from 'date-fns/locale/en-GB';
import type { CivilDate } from '../model/tariff/tariff.ts';

export const UNKNOWN = 'not known';
const UNKNOWN_AMOUNT = 'an unknown amount';

export const MONTH_NAMES = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
] as const;
export const SHORT_MONTH_NAMES = MONTH_NAMES.map((name) => name.slice(0, 3));

/** A format takes far longer to make than to use, and a screen writes hundreds of numbers. */
const FORMATS = new Map<number, Intl.NumberFormat>();
function formatOf(decimals: number): Intl.NumberFormat {
  const known = FORMATS.get(decimals);
  if (known) return known;
  const digits = { minimumFractionDigits: decimals, maximumFractionDigits: decimals };
  const made = new Intl.NumberFormat('en-GB', { ...digits, useGrouping: true });
  FORMATS.set(decimals, made);
  return made;
}

/** A whole number with commas and a true minus sign; never "−0". */
export function grouped(value: number, decimals = 0): string {
  if (!Number.isFinite(value)) return UNKNOWN;
  const size = formatOf(decimals).format(Math.abs(value));
  return value < 0 && /[1-9]/.test(size) ? `−${size}` : size;
}

/** Rounds to a step: 1,234 to 1,230 for a step of 10. */
export function roundTo(value: number, step: number): number {
  return Math.round(value / step) * step;
}

function withPound(pounds: number, decimals = 0): string {
  const text = grouped(pounds, decimals);
  return text.startsWith('−') ? `−£${text.slice(1)}` : `£${text}`;
}

/** Money in speech: to the nearest £10 from £100 on, below that to the nearest £1. */
export function spokenPounds(pence: number): string {
  if (!Number.isFinite(pence)) return UNKNOWN_AMOUNT;
  const pounds = pence / 100;
  return withPound(roundTo(pounds, Math.abs(pounds) >= 100 ? 10 : 1));
}

/** Money in a table of yearly costs: to the pound. */
export function exactPounds(pence: number): string {
  return Number.isFinite(pence) ? withPound(pence / 100) : UNKNOWN;
}

/** Money where the penny matters, as on a bill: "£1,194.35". */
export function poundsAndPence(pence: number): string {
  return Number.isFinite(pence) ? withPound(pence / 100, 2) : UNKNOWN;
}

/** A change of money with its sign: "+£58", "−£13". */
export function signedPounds(pence: number): string {
  if (!Number.isFinite(pence)) return UNKNOWN;
  const text = withPound(pence / 100);
  return text.startsWith('−') || text === '£0' ? text : `+${text}`;
}

/** A range of money in speech, both ends with their sign: "£1,040 to £1,400". */
export function poundsRange(lowPence: number, highPence: number): string {
  if (!Number.isFinite(lowPence) || !Number.isFinite(highPence)) return UNKNOWN_AMOUNT;
  const [low, high] = [spokenPounds(Math.min(lowPence, highPence)), spokenPounds(Math.max(lowPence, highPence))];
  return low === high ? low : `${low} to ${high}`;
}

/** Three leading digits from 1,000 on, tens from 100 on, whole numbers below. */
export function roundedUnits(kWh: number): number {
  const size = Math.abs(kWh);
  if (size >= 1000) return roundTo(kWh, 10 ** (Math.floor(Math.log10(size)) - 2));
  return roundTo(kWh, size >= 100 ? 10 : 1);
}

/** Energy without its word, rounded as it is said: "13,900". */
export function spokenCount(kWh: number): string {
  return grouped(roundedUnits(kWh));
}

/** Energy in speech, in the units that the bill counts: "13,900 units". */
export function spokenKWh(kWh: number): string {
  if (!Number.isFinite(kWh)) return 'an unknown number of units';
  const count = spokenCount(kWh);
  return count === '1' ? '1 unit' : `${count} units`;
}

/** Energy in a table: "13,874 kWh". */
export function exactKWh(kWh: number): string {
  return Number.isFinite(kWh) ? `${grouped(kWh)} kWh` : UNKNOWN;
}

/** A price or other small amount of pence: "26.3 p". */
export function pence(amount: number): string {
  return Number.isFinite(amount) ? `${grouped(amount, 1)} p` : UNKNOWN;
}

/** A share as a percentage: 0.84 gives "84%". */
export function percent(share: number): string {
  return Number.isFinite(share) ? `${grouped(share * 100)}%` : UNKNOWN;
}

/** A seasonal factor: "3.4". */
export function factor(value: number): string {
  return grouped(value, 1);
}

export function degrees(celsius: number): string {
  if (!Number.isFinite(celsius)) return UNKNOWN;
  return `${grouped(celsius, Number.isInteger(Math.round(celsius * 10) / 10) ? 0 : 1)} °C`;
}

/** "one and a half", "two", "two and a half": small ratios to the nearest half, as they are said. */
export function spokenRatio(value: number): string {
  if (!Number.isFinite(value) || value < 0) return UNKNOWN;
  const halves = Math.round(value * 2);
  const words = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine'];
  const whole = Math.floor(halves / 2);
  if (halves === 0) return 'almost nothing';
  if (halves === 1) return 'half a unit';
  const name = words[whole] ?? grouped(whole);
  return halves % 2 === 1 ? `${name} and a half` : name;
}

/** The day in UTC, so that no zone of the machine shifts it; date-fns knows the months' names. */
const dayOf = (date: CivilDate) => new TZDate(`${date.slice(0, 10)}T00:00:00Z`, 'UTC');
const said = (date: CivilDate, pattern: string): string => format(dayOf(date), pattern, { locale: enGB });

/** "25 November 2026". */
export const longDate = (date: CivilDate): string => said(date, 'd MMMM yyyy');

/** First and last day, both belonging to it, as months: "October to December 2026". */
export function monthSpan(from: CivilDate, to?: CivilDate): string {
  const last = to === undefined ? undefined : said(to, 'MMMM yyyy');
  const first = said(from, 'MMMM yyyy');
  if (last === undefined) return `${first} on`;
  if (first === last) return first;
  return isSameYear(dayOf(from), dayOf(to!)) ? `${said(from, 'MMMM')} to ${last}` : `${first} to ${last}`;
}

/** "a", "a and b", "a, b and c". */
export function listed(items: readonly string[]): string {
  if (items.length < 2) return items[0] ?? '';
  return `${items.slice(0, -1).join(', ')} and ${items.at(-1)}`;
}

/** "1 day", "123 days". */
export function counted(count: number, one: string, many = `${one}s`): string {
  return `${grouped(count)} ${count === 1 ? one : many}`;
}

export function capitalised(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** A label inside a sentence: its first letter small, unless it is an abbreviation such as LPG. */
export function uncapitalised(text: string): string {
  return /^[A-Z][a-z ]/.test(text) ? text.charAt(0).toLowerCase() + text.slice(1) : text;
}
