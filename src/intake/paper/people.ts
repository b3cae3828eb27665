/** Who a bill or a record is for: names are taken out, so that no value, question, note or paper repeats them. */
import { carrierOfWords, plainWords } from '../layout/headings.ts';
import { RATE_REGISTER } from '../layout/vocabulary.ts';
import type { Page, Word } from '../terms/paper-reading.ts';
import { fuelsIn } from './lines.ts';
import { rowsOf } from './page.ts';
import { ADDED, ENERGY, LEVY, STANDING, SUPPORT, TAKEN_OFF, TOTAL, VAT } from './vocabulary.ts';

const TITLES = 'Mrs?|Ms|Miss|Mx|Dr|Prof|Herrn?|Frau|Familie|Eheleute|Madame|Monsieur|Mme';
const TITLE = new RegExp(`^(?:${TITLES}|dear|geehrte[rs]?)\\.?$`, 'i');
const LONGEST_TITLE = 9;
const AND = /^(?:and|und|et|&)$/i;
/** A place with its code, British or of five digits. */
const PLACE = /(?<![\p{L}\d])(?:[A-Z]{1,2}\d[\dA-Z]? \d[A-Z]{2}|\d{5} \p{Lu}\p{Ll}+)/u;
/** Lines of an address above its place. */
const ABOVE = 3;
const MOST_NAMES = 4;
const OF_BILLS: readonly RegExp[] = [ADDED, ENERGY, LEVY, STANDING, SUPPORT, TAKEN_OFF, TOTAL, VAT];

const bare = (text: string): string => text.replaceAll(/^[^\p{L}]+|[^\p{L}]+$/gu, '');
const isName = (text: string): boolean =>
  /^\p{Lu}[\p{L}’'-]{2,}$/u.test(text) && fuelsIn(text).length === 0 && !OF_BILLS.some((words) => words.test(text));

/** A title with the names and the address behind it. */
const PERSON = new RegExp(
  `(?<!\\p{L})(?:${TITLES}|MRS?|HERRN?|FRAU|FAMILIE)\\.?(?:[ ,_]+(?:&|and|und|\\p{Lu}[\\p{L}’'.-]*|\\d{1,4}[a-z]?)(?![\\p{L}\\d]))+`,
  'gu',
);
/** Letters and digits in one, or digits in groups, as numbers of meters and accounts are printed. */
const LONG_NUMBER = /[\p{L}\d]*\d[\p{L}\d]*(?: \d{2,})*/gu;
const [LEAST_DIGITS, LEAST_IN_GROUPS, SHOWN_DIGITS] = [7, 10, 4];
const DATE = /^(?:19|20)\d{6}(?:\d{4}|\d{6})?$/;

/** A heading as it may stand on a paper: names are a dash, of a long number the end is left, which tells meters apart. */
export const headingWithoutPeople = (heading: string): string =>
  heading.replace(PERSON, withoutPerson).replace(LONG_NUMBER, (number) => {
    const digits = number.replaceAll(/\D/g, '').length;
    if (digits < (number.includes(' ') ? LEAST_IN_GROUPS : LEAST_DIGITS) || DATE.test(number)) return number;
    return `…${number.replaceAll(' ', '').slice(-SHOWN_DIGITS)}`;
  });

/** What the record is of, or at which hours, is kept. */
function withoutPerson(found: string): string {
  const [, ...words] = found.split(/[ ,_]+/);
  const isOfRecord = (word: string) =>
    carrierOfWords(plainWords(word)) !== undefined || RATE_REGISTER.test(plainWords(word));
  const end = words.findIndex(isOfRecord);
  const [names, rest] = end < 0 ? [words, []] : [words.slice(0, end), words.slice(end)];
  return names.some((word) => /^\p{Lu}[\p{L}’'-]{2,}$/u.test(word)) ? ['–', ...rest].join(' ') : found;
}

/** The pages with a dash instead of each name, everywhere it stands. */
export function withoutPeople(pages: readonly Page[]): Page[] {
  const names = new Set(pages.flatMap((page) => [...afterTitles(page.words), ...aboveItsPlace(page)]));
  if (names.size === 0) return [...pages];
  const masked = (word: Word): Word => (names.has(bare(word.text)) ? { ...word, text: '–' } : word);
  return pages.map((page) => ({ ...page, words: page.words.map(masked) }));
}

function afterTitles(words: readonly Word[]): string[] {
  return words.flatMap(({ text, y, height }, at) => {
    if (text.length > LONGEST_TITLE || !TITLE.test(text)) return [];
    const behind = words.slice(at + 1, at + 1 + MOST_NAMES).filter((one) => Math.abs(one.y - y) < height / 2);
    const end = behind.findIndex((one) => !/^\p{Lu}/u.test(one.text) && !AND.test(one.text));
    return behind
      .slice(0, end < 0 ? undefined : end)
      .map((one) => bare(one.text))
      .filter(isName);
  });
}

/** A line of two or three names and nothing else, close above the place of an address. */
function aboveItsPlace(page: Page): string[] {
  const lines = rowsOf([page]).map(({ words }) => words.map(({ text }) => text));
  const places = lines.flatMap((line, at) => (PLACE.test(line.join(' ')) ? [at] : []));
  return places.flatMap((place) =>
    lines.slice(Math.max(0, place - ABOVE), place).flatMap((line) => {
      const own = line.map(bare).filter((text) => text.length > 1);
      return own.length > 1 && own.length < MOST_NAMES && own.every(isName) ? own : [];
    }),
  );
}
