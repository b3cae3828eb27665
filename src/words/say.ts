/**
 * Text in the language spoken. The English sentence stands where it is used and is its own key; ICU message syntax
 * fills the gaps: `say('{days, plural, one {# day} other {# days}} of {name}', { days, name })`.
 * German stands in `german/`, one file a folder of the source; a test reads the sources and fails where a text has none.
 * Nothing is said while a module loads, for then nobody knows the language yet: tables of text are functions.
 */
import { IntlMessageFormat } from 'intl-messageformat';

export const LANGUAGES = ['en-GB', 'de-DE'] as const;
export type Language = (typeof LANGUAGES)[number];
export const CURRENCIES = ['GBP', 'EUR', 'USD'] as const;
export type Currency = (typeof CURRENCIES)[number];

/** English text, with its gaps, to the text of another language. */
export type Catalogue = Readonly<Record<string, string>>;

export interface Speech {
  readonly language: Language;
  readonly currency: Currency;
}

const ENGLISH: Speech = { language: 'en-GB', currency: 'GBP' };
let speech = ENGLISH;
let catalogue: Catalogue | null = null;
let patterns: readonly Pattern[] = [];
const messages = new Map<string, IntlMessageFormat>();

/** Sets what all words are said in from here on; English needs no catalogue. */
export function speak(next: Speech, translated: Catalogue | null = null): void {
  if (next.language !== 'en-GB' && translated === null) throw new Error(`${next.language} needs its catalogue.`);
  if (translated !== catalogue) {
    messages.clear();
    patterns = translated ? patternsOf(translated) : [];
  }
  speech = next;
  catalogue = translated;
}

export const language = (): Language => speech.language;
export const currency = (): Currency => speech.currency;

/** Says what `work` says in the money of a kept written estimate, whatever money is spoken now. */
export function inMoneyOf<T>(estimate: { readonly currency?: Currency | undefined }, work: () => T): T {
  const before = speech;
  speech = { ...speech, currency: estimate.currency ?? 'GBP' };
  try {
    return work();
  } finally {
    speech = before;
  }
}

export type Value = string | number;

function messageOf(text: string): IntlMessageFormat {
  const known = messages.get(text);
  if (known) return known;
  const made = new IntlMessageFormat(catalogue?.[text] ?? text, speech.language);
  messages.set(text, made);
  return made;
}

/** The text in the language spoken, its gaps filled. A text the catalogue lacks is said in English. */
export function say(text: string, values?: Readonly<Record<string, Value>>): string {
  // Most texts have no gap, and a slider says hundreds at a step.
  if (values === undefined && !text.includes('{')) return catalogue?.[text] ?? text;
  return String(messageOf(text).format(values));
}

/** The same with pieces that are no text, such as a marked figure: the parts in the order of the language. */
export function sayParts<T>(text: string, values: Readonly<Record<string, Value | T>>): readonly (string | T)[] {
  const said = messageOf(text).format<T>(values as Record<string, Value | T>);
  return Array.isArray(said) ? said : [said];
}

/** Marks a text of a table as one to be said later: `say(NAMES[kind])`. */
export const phrase = <T extends string>(english: T): T => english;

interface Pattern {
  readonly match: RegExp;
  readonly text: string;
}

/** "25 November 2026", "November 2026" or "November". */
const KEPT_DATE =
  /^(\d{1,2} )?(January|February|March|April|May|June|July|August|September|October|November|December)( \d{4})?$/;
function sayKeptDate([, day, month, year]: RegExpExecArray): string {
  const date = new Date(`${day ?? 1} ${month} ${year ?? 2000} UTC`);
  const parts: Intl.DateTimeFormatOptions = { month: 'long', timeZone: 'UTC' };
  if (day) parts.day = 'numeric';
  if (year) parts.year = 'numeric';
  return new Intl.DateTimeFormat(speech.language, parts).format(date);
}
/** As the model writes numbers: "38.5", "−1,234.5 kWh". A bare whole number may be a year and stays. */
const KEPT_NUMBER = /^([-−]?)(\d{1,3}(?:,\d{3})+(?:\.\d+)?|\d+\.\d+)( ?[^\s\d.,]{1,5})?$/;
function sayKeptNumber([, sign, size = '', unit = '']: RegExpExecArray): string {
  const digits = size.split('.')[1]?.length ?? 0;
  const format = new Intl.NumberFormat(speech.language, {
    minimumFractionDigits: digits,
    maximumFractionDigits: digits,
    useGrouping: size.includes(','),
  });
  return `${sign}${format.format(Number(size.replaceAll(',', '')))}${unit}`;
}
const GAP = /\\\{(\d+)\\\}/g;

/** Texts of the model have numbered gaps, `line {0} of {1}`; the longest comes first, since it fits least by chance. */
function patternsOf(translated: Catalogue): readonly Pattern[] {
  return Object.entries(translated)
    .filter(([english]) => /\{\d+\}/.test(english))
    .toSorted(([a], [b]) => b.length - a.length)
    .map(([english, text]) => {
      const escaped = english.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
      return { match: new RegExp(`^${escaped.replace(GAP, '(.*)')}$`), text };
    });
}

/**
 * Text that the model wrote down in English (title, formula and origin of a working, kept with an estimate) in the
 * language spoken. What stands in its gaps is reworded too.
 */
export function reword(text: string): string {
  if (catalogue === null) return text;
  const whole = catalogue[text];
  if (whole !== undefined) return whole;
  const date = KEPT_DATE.exec(text);
  if (date) return sayKeptDate(date);
  const [from, to] = text.split(' to ');
  if (to !== undefined && KEPT_DATE.test(from!) && KEPT_DATE.test(to))
    return say('{low} to {high}', { low: reword(from!), high: reword(to) });
  const number = KEPT_NUMBER.exec(text);
  if (number) return sayKeptNumber(number);
  for (const { match, text: translated } of patterns) {
    const found = match.exec(text);
    if (found) return translated.replace(/\{(\d+)\}/g, (_, gap: string) => reword(found[Number(gap) + 1] ?? ''));
  }
  return text;
}
