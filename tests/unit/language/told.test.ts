/** Every code that the model tells has its sentence in both languages, its gaps filled. */
import { afterEach, expect, test } from 'vitest';
import { SALE_UNITS } from '../../../src/model/shapes/heating.ts';
import type { Told, ToldCode } from '../../../src/model/shapes/told.ts';
import { german } from '../../../src/words/german/german.ts';
import { speak } from '../../../src/words/say.ts';
import { sayTold } from '../../../src/words/say-told.ts';
import { TOLD } from '../../../src/words/told/all.ts';

afterEach(() => speak({ language: 'en-GB', currency: 'GBP' }));

/** A code with something of its kind in every gap, and what has to come out again. */
function filled(code: string, sentence: string) {
  const gaps = [...sentence.matchAll(/\{(\w+)(, number)?/g)].map(([, name, number], at) => [
    name!,
    number ? at + 2 : `Marble ${at}`,
  ]);
  return { told: { code, data: Object.fromEntries(gaps) } as Told, gaps: gaps.map(([, value]) => String(value)) };
}

test.each(Object.entries(TOLD))('%s', (code, sentence) => {
  const { told, gaps } = filled(code, sentence);
  const english = sayTold(told);
  speak({ language: 'de-DE', currency: 'GBP' }, german);
  const other = sayTold(told);
  for (const text of [english, other]) {
    for (const gap of gaps) expect(text).toContain(gap);
    expect(text).not.toMatch(/[{}]/);
  }
});

test('a code of another version is said in one plain sentence', () => {
  expect(sayTold({ code: 'heat-of-the-moon' as ToldCode })).toBe(
    'Another version of Plainwarmth noted this, which is not known here: heat-of-the-moon.',
  );
});

test('every unit in which a fuel is sold has its German', () => {
  const names = Object.entries(SALE_UNITS).flatMap(([one, { many }]) => [one, many]);
  expect(names.filter((name) => name !== 'kg' && german[name] === undefined)).toEqual([]);
});
