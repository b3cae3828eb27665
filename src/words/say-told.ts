/** Says what the model tells. */
import type { Told, ToldValue, Wording } from '../model/shapes/told.ts';
import { longDate, monthSpan } from './numbers.ts';
import { reword } from './reword.ts';
import { say, sayParts, type Value } from './say.ts';
import { carrierName, isCarrier } from './systems.ts';
import { TOLD } from './told/all.ts';
import { unknownSentence } from './unknown.ts';

/** A text of our own that has been said already, in a sum that words put together. */
export interface Said {
  readonly said: string;
}
export type Shown = Wording | Said;
export const inWords = (text: string, values?: Readonly<Record<string, Value>>): Said => ({ said: say(text, values) });

const fill = (value: ToldValue): Value => {
  if (typeof value === 'number') return value;
  if (typeof value === 'object' && 'from' in value) return monthSpan(value.from, value.to);
  if (typeof value === 'object' && 'on' in value) return longDate(value.on);
  return Array.isArray(value) ? value.map(sayTold).join(', ') : sayTold(value as Wording);
};

/**
 * What was told, in the language spoken. A text without a code is somebody's own or older than the codes: `reword` says it.
 * A record without a heading bears the code of what it is of.
 */
export function sayTold(told: Shown): string {
  if (typeof told === 'string') return isCarrier(told) ? carrierName(told) : reword(told);
  if ('said' in told) return told.said;
  const sentence = sentenceOf(told);
  if (sentence === undefined) return unknownSentence(told.code);
  if (told.data === undefined) return say(sentence);
  const said = say(sentence, Object.fromEntries(Object.entries(told.data).map(([gap, value]) => [gap, fill(value)])));
  return said.replace(/(^|\s)-(?=\d)/g, '$1−');
}

/** The same in parts, with `mark` about each title inside it that stays English. */
export function sayToldParts<T>(
  told: Told,
  mark: (english: string) => T,
  shape: (said: string) => string = (said) => said,
): readonly (string | T)[] {
  const sentence = sentenceOf(told);
  if (sentence === undefined || told.data === undefined) return [sayTold(told)];
  const filled = Object.entries(told.data).map(([gap, value]): [string, Value | T] => {
    const said = fill(value);
    return [
      gap,
      typeof value === 'string' && said === value && /\p{L}{3}/u.test(value)
        ? mark(value)
        : typeof said === 'string'
          ? shape(said)
          : said,
    ];
  });
  return sayParts<T>(sentence, Object.fromEntries(filled));
}

/** Titles of British publications that stand inside German sentences as they are. */
const ENGLISH_TITLES =
  /(In-situ heat pump performance: analysis of Ofgem data 2017-2022|Electrification of Heat(?: demonstration, final performance analysis)?)/;

/** A German text cut at such titles: every second part is one. */
export const cutAtTitles = (said: string): readonly string[] => said.split(ENGLISH_TITLES);

const sentenceOf = ({ code }: Told): string | undefined => (Object.hasOwn(TOLD, code) ? TOLD[code] : undefined);

/** A code that has its sentence, and nothing else. */
export const isTold = (value: unknown): value is Told =>
  typeof value === 'object' &&
  value !== null &&
  Object.keys(value).every((key) => key === 'code' || key === 'data') &&
  sentenceOf(value as Told) !== undefined;

/** One wording as a key: the same text is the same key. */
export const keyOf = (told: Shown): string => (typeof told === 'string' ? told : JSON.stringify(told));
