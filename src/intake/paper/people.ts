/** Who a bill is for: names are taken out, so that no value, question, note or paper repeats them. */

import { TITLES } from '../layout/without-people.ts';
import type { Page, Word } from '../terms/paper-reading.ts';
import { fuelsIn } from './lines.ts';
import { rowsOf } from './page.ts';
import {
  ACTUAL,
  ADDED,
  BY_CUSTOMER,
  ENERGY,
  ESTIMATED,
  LEVY,
  READING,
  REGISTERS,
  STANDING,
  SUPPORT,
  TAKEN_OFF,
  TOTAL,
  VAT,
} from './vocabulary.ts';

const TITLE = new RegExp(`^(?:${TITLES}|dear|geehrte[rs]?)\\.?$`, 'i');
const LONGEST_TITLE = 9;
const AND = /^(?:and|und|et|&)$/i;
/** A place with its code, British or of five digits. */
const PLACE = /(?<![\p{L}\d])(?:[A-Z]{1,2}\d[\dA-Z]? \d[A-Z]{2}|\d{5} \p{Lu}\p{Ll}+)/u;
/** Lines of an address above its place. */
const ABOVE = 3;
const MOST_NAMES = 4;
const OF_BILLS: readonly RegExp[] = [
  ...[ACTUAL, ADDED, BY_CUSTOMER, ENERGY, ESTIMATED, LEVY, READING, STANDING, SUPPORT, TAKEN_OFF, TOTAL, VAT],
  ...REGISTERS.map(([words]) => words),
];

/** Whole names only, as Martin and Janet begin like months. */
const MONTH =
  /^(?:jan(?:uary?|uar)?|feb(?:ruary?|ruar)?|mar(?:ch)?|märz|mrz|apr(?:il)?|ma[iy]|june?|juni|july?|juli|aug(?:ust)?|sept?(?:ember)?|o[ck]t(?:ober)?|nov(?:ember)?|de[cz](?:ember)?)$/i;

const bare = (text: string): string => text.replaceAll(/^[^\p{L}]+|[^\p{L}]+$/gu, '');
const isName = (text: string): boolean =>
  /^\p{Lu}[\p{L}’'-]{2,}$/u.test(text) &&
  fuelsIn(text).length === 0 &&
  !MONTH.test(text) &&
  !OF_BILLS.some((words) => words.test(text));

/** The pages with a dash instead of each name, everywhere it stands. */
export function withoutPeople(pages: readonly Page[]): Page[] {
  const names = new Set(pages.flatMap((page) => [...afterTitles(page.words), ...aboveItsPlace(page)]));
  if (names.size === 0) return [...pages];
  const some = [...names];
  const isOne = (text: string): boolean => some.some((name) => text.includes(name)) && names.has(bare(text));
  const masked = (word: Word): Word => (isOne(word.text) ? { ...word, text: '–' } : word);
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
      // The number of a house is one; a row of a table has more.
      if (line.filter((text) => /\d/.test(text)).length > 1) return [];
      return own.length > 1 && own.length < MOST_NAMES && own.every(isName) ? own : [];
    }),
  );
}
