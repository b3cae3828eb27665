/** Private words stay out of every sentence, and English out of German. */
import { describe, expect, test } from 'vitest';
import type { Catalogue } from '../../../src/words/say.ts';
import { PRIVATE_ENGLISH, PRIVATE_GERMAN, SAME_IN_BOTH } from './private-words.ts';

const files = import.meta.glob<Record<string, Catalogue>>('../../../src/words/german/*.ts', { eager: true });
const catalogues = Object.entries(files)
  .map(([path, file]) => [path.replace(/.*\/|\.ts/g, ''), Object.values(file)[0]!] as const)
  // All of them together, and what older estimates hold.
  .filter(([name]) => name !== 'german' && name !== 'earlier');
/** Texts with numbered gaps are of older estimates and of files: they are read, and said no more. */
const saidNow = (catalogue: Catalogue) =>
  Object.entries(catalogue)
    .filter(([english]) => !/\{\d+\}/.test(english))
    .map((pair) => pair.map(withoutGapNames) as [string, string]);
/** The name of a gap is read by nobody. */
const withoutGapNames = (text: string) => text.replace(/\{\w+(?=[,}])/g, '{');

describe.each(catalogues)('%s', (_name, catalogue) => {
  test('no private word of English', () => {
    const english = saidNow(catalogue).map(([text]) => text);
    expect(english.filter((text) => PRIVATE_ENGLISH.some((word) => word.test(text)))).toEqual([]);
  });
  test('no private word of German', () => {
    const german = saidNow(catalogue).map(([, text]) => text);
    expect(german.filter((text) => PRIVATE_GERMAN.some((word) => word.test(text)))).toEqual([]);
  });
});

/** Words of a text alone: what is typed as it is written (“rest”, --read), gaps and names of cases are left out. */
const wordsIn = (text: string) =>
  text
    .replace(/[“„"][^”“"]*[”“"]|--\w+|\b\w+\.\w+\b/g, ' ')
    .replace(/\{\w*(, (plural|select|number)[^{}]*)?|[\w=]+ (?=\{)/g, ' ')
    .match(/\p{L}{3,}/gu) ?? [];

test('German texts hold no word of the English ones, but for those that both languages have and titles of sources', () => {
  const said = catalogues.filter(([name]) => name !== 'sources').flatMap(([, catalogue]) => saidNow(catalogue));
  const english = new Set(said.flatMap(([text]) => wordsIn(text)).map((word) => word.toLowerCase()));
  const shared = said.flatMap(([, text]) => wordsIn(text)).filter((word) => english.has(word.toLowerCase()));
  expect([...new Set(shared)].filter((word) => !SAME_IN_BOTH.has(word)).toSorted()).toEqual([]);
});
