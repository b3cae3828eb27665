import { describe, expect, test } from 'vitest';
import { german } from '../../../src/words/german/german.ts';
import { findTerms, glossary } from '../../../src/words/glossary.ts';
import { speak } from '../../../src/words/say.ts';

const standing = (text: string) => findTerms(text).map(({ at, end, entry }) => [text.slice(at, end), entry.term]);

describe('terms are found where they stand', () => {
  test.each<[string, string[][]]>([
    ['For every kWh you buy, the ground adds two kWh.', [['kWh', 'kWh']]],
    ['Ground arrays', [['Ground arrays', 'ground array']]],
    ['A two-rate tariff', [['two-rate tariff', 'two-rate tariff']]],
    [
      'the unit rate and the standing charges',
      [
        ['unit rate', 'unit rate'],
        ['standing charges', 'standing charge'],
      ],
    ],
    ['a community of factories', []],
    ['The paper stays with you.', []],
    ['', []],
  ])('%s', (text, found) => expect(standing(text)).toEqual(found));

  test('every term of the glossary is found in itself, but for the one that names three grades', () => {
    const lost = glossary().filter(({ term }) => findTerms(term)[0]?.entry.term !== term);
    expect(lost.map(({ term }) => term)).toEqual(['measured, estimated, assumed']);
  });
});

describe('in German', () => {
  test('its own terms, its own plurals', () => {
    speak({ language: 'de-DE', currency: 'EUR' }, german);
    expect(standing('Die Vorlauftemperaturen und die JAZ')).toEqual([
      ['Vorlauftemperaturen', 'Vorlauftemperatur'],
      ['JAZ', 'Jahresarbeitszahl (JAZ)'],
    ]);
  });
});
