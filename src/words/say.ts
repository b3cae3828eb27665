/**
 * Text in the language spoken. The English sentence stands where it is used and is its own key; ICU message syntax
 * fills the gaps: `say('{days, plural, one {# day} other {# days}} of {name}', { days, name })`.
 * German stands in `german/`, one file a folder of the source; a test reads the sources and fails where a text has none.
 * Nothing is said while a module loads, for then nobody knows the language yet: tables of text are functions.
 */
import { type Formatters, IntlMessageFormat } from 'intl-messageformat';
import { digits } from './digits.ts';

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
const messages = new Map<string, IntlMessageFormat>();

/** Sets what all words are said in from here on; English needs no catalogue. */
export function speak(next: Speech, translated: Catalogue | null = null): void {
  if (next.language !== 'en-GB' && translated === null) throw new Error(`${next.language} needs its catalogue.`);
  if (translated !== catalogue) messages.clear();
  speech = next;
  catalogue = translated;
}

export const language = (): Language => speech.language;
export const currency = (): Currency => speech.currency;
/** Null where English is spoken. */
export const spokenCatalogue = (): Catalogue | null => catalogue;

/** Money follows the household that is open. */
export function speakMoney(money: Currency): void {
  speech = { ...speech, currency: money };
}

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

/** Says what `work` says in English, such as a file that programs read. */
export function inEnglish<T>(work: () => T): T {
  const before = [speech, catalogue] as const;
  speak({ ...speech, language: 'en-GB' });
  try {
    return work();
  } finally {
    speak(...before);
  }
}

export type Value = string | number;

/** Ours are known everywhere, so that nobody need look them up. */
IntlMessageFormat.resolveLocale = keepEach((locales) => new Intl.Locale(String(locales)));

const numberFormat = keepEach(
  (...given: ConstructorParameters<typeof Intl.NumberFormat>) => new Intl.NumberFormat(...given),
);
/** Counts, which nearly all numbers in messages are. */
const countFormat = keepEach((locales?: string | string[]) => {
  const format = (value: number) =>
    Number.isInteger(value) && value >= 0 ? digits(value, 0, String(locales)) : numberFormat(locales).format(value);
  return { format } as Intl.NumberFormat;
});

/** Of all messages, for one left alone makes its own. */
const formatters: Formatters = {
  getNumberFormat: (locales, style) => (style === undefined ? countFormat(locales) : numberFormat(locales, style)),
  getDateTimeFormat: keepEach((...given) => new Intl.DateTimeFormat(...given)),
  getPluralRules: keepEach((...given) => new Intl.PluralRules(...given)),
};

function keepEach<G extends unknown[], T>(make: (...given: G) => T): (...given: G) => T {
  const kept = new Map<string, T>();
  return (...given) => {
    const key = JSON.stringify(given);
    if (!kept.has(key)) kept.set(key, make(...given));
    return kept.get(key)!;
  };
}

function messageOf(text: string): IntlMessageFormat {
  const known = messages.get(text);
  if (known) return known;
  const made = new IntlMessageFormat(catalogue?.[text] ?? text, speech.language, undefined, { formatters });
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
