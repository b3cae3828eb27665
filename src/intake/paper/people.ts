/** Who a bill is for: names are taken out, so that no value, question, note or paper repeats them. */

import { isKnownWord, namesIn } from '../layout/names.ts';
import { TITLES, withoutPeople } from '../layout/without-people.ts';
import type { Page, Word } from '../terms/paper-reading.ts';
import type { Row } from './page.ts';
import {
  ACTUAL,
  ADDED,
  BY_CUSTOMER,
  ELECTRICITY,
  ENERGY,
  ESTIMATED,
  GAS,
  HEAT,
  LEVY,
  READING,
  REGISTERS,
  STANDING,
  SUPPORT,
  TAKEN_OFF,
  TOTAL,
  VAT,
  WATER,
} from './vocabulary.ts';

const TITLE = new RegExp(`^(?:${TITLES}|dear|geehrte[rs]?)\\.?$`, 'i');
const [LONGEST_TITLE, BEGIN_TITLES] = [9, 'MDPHFEGmdphfeg'];
const AND = /^(?:and|und|et|&)$/i;
/** A place with its code, British, Dutch or of five digits. */
const PLACE =
  /(?<![\p{L}\d])(?:[A-Z]{1,2}\d[\dA-Z]? \d[A-Z]{2}|\d{5} \p{Lu}\p{Ll}+|[1-9]\d{3} [A-Z]{2} \p{Lu}\p{Ll}+)/u;
/** Lines of an address above its place. */
const ABOVE = 3;
const MOST_NAMES = 4;
const CAPITAL = /\p{Lu}/u;
/** Without two words that begin with capitals a row has no name. */
const TWO_CAPITALS = /(?<!\p{L})\p{Lu}.*?[^\p{L}]\p{Lu}/u;
/** The number of a house and a code of two parts; a row of a table has more. */
const MOST_NUMBERS = 2;
const OF_BILLS = new RegExp(
  [
    ...[ACTUAL, ADDED, BY_CUSTOMER, ENERGY, ESTIMATED, LEVY, READING, STANDING, SUPPORT, TAKEN_OFF, TOTAL, VAT],
    ...[ELECTRICITY, GAS, WATER, HEAT],
    ...REGISTERS.map(([words]) => words),
  ]
    .map(({ source }) => source)
    .join('|'),
  'iu',
);

/** Whole names only, as Martin and Janet begin like months. */
const MONTH =
  /^(?:jan(?:uary?|uar)?|feb(?:ruary?|ruar)?|mar(?:ch)?|märz|mrz|apr(?:il)?|ma[iy]|june?|juni|july?|juli|aug(?:ust)?|sept?(?:ember)?|o[ck]t(?:ober)?|nov(?:ember)?|de[cz](?:ember)?)$/i;

const bare = (text: string): string => text.replaceAll(/^[^\p{L}]+|[^\p{L}]+$/gu, '');
export const isName = (text: string): boolean =>
  /^\p{Lu}[\p{L}’'-]{2,}$/u.test(text) && !MONTH.test(text) && !OF_BILLS.test(text);

/** Words that name somebody or where they live, in small letters. */
export function namesOn(pages: readonly Page[], rows: readonly Row[]): ReadonlySet<string> {
  const names = [...pages.flatMap(({ words }) => afterTitles(words)), ...onRows(rows)];
  return new Set(names.map((name) => name.toLowerCase()));
}

/** The rows with a dash instead of each name, everywhere it stands. */
export function rowsWithout(names: ReadonlySet<string>, rows: readonly Row[]): readonly Row[] {
  if (names.size === 0) return rows;
  const isOfThem = ({ text }: Word) => CAPITAL.test(text) && names.has(bare(text).toLowerCase());
  return rows.map((row) => {
    if (!row.words.some(isOfThem)) return row;
    return { ...row, words: row.words.map((word) => (isOfThem(word) ? { ...word, text: '–' } : word)) };
  });
}

function afterTitles(words: readonly Word[]): string[] {
  const found: string[] = [];
  for (const [at, { text, y, height }] of words.entries()) {
    if (text.length > LONGEST_TITLE || !BEGIN_TITLES.includes(text[0]!) || !TITLE.test(text)) continue;
    const behind = words.slice(at + 1, at + 1 + MOST_NAMES).filter((one) => Math.abs(one.y - y) < height / 2);
    const end = behind.findIndex((one) => !/^\p{Lu}/u.test(one.text) && !AND.test(one.text));
    const names = behind.slice(0, end < 0 ? undefined : end).map((one) => bare(one.text));
    found.push(...names.filter(isName));
  }
  return found;
}

/** Names that an initial or a given name shows, and in the lines of an address whatever is no word of bills. */
function onRows(rows: readonly Row[]): string[] {
  const lines = rows.map(({ words }) => words.map(({ text }) => text).join(' '));
  const places = lines.flatMap((line, at) => (PLACE.test(line) ? [at] : []));
  const isOfAddress = (at: number) =>
    places.some((place) => at >= place - ABOVE && at <= place && rows[at]!.page === rows[place]!.page);
  return lines.flatMap((line, at) => {
    const left = isOfAddress(at) && hasFewNumbers(line) ? new Set(namesAmong(withoutPeople(line))) : undefined;
    const sure = TWO_CAPITALS.test(line)
      ? namesIn(line, true).flatMap(([from, to]) => namesAmong(line.slice(from, to)))
      : [];
    return left ? [...sure, ...namesAmong(line).filter((word) => !left.has(word))] : sure;
  });
}

const hasFewNumbers = (line: string): boolean =>
  line.split(' ').filter((word) => /\d/.test(word)).length <= MOST_NUMBERS;

const namesAmong = (text: string): string[] =>
  text
    .split(/[\s,;/]+/)
    .map(bare)
    .filter((word) => isName(word) && !isKnownWord(word));
