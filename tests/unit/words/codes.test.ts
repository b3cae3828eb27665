/** Every code that the model gives has a sentence; every sentence holds for whatever data comes. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { SEARCH_QUESTIONS } from '../../../src/model/shapes/guided-search.ts';
import { german } from '../../../src/words/german/german.ts';
import { customerWords, questionTask } from '../../../src/words/guided-search.ts';
import { questionSentence } from '../../../src/words/questions.ts';
import { billFaultSentence, TARIFF_FAULT_CODES, tariffFaultSentence } from '../../../src/words/refusals.ts';
import { speak } from '../../../src/words/say.ts';
import { BILL_FAULT_CODES, QUESTION_CODES } from './codes-of.ts';
import { sentencesOf, wordsOf } from './reading-ease.ts';

const model = join(import.meta.dirname, '../../../src/model');

function found(folders: readonly string[], pattern: RegExp): string[] {
  const codes = folders.flatMap((folder) =>
    readdirSync(join(model, folder), { encoding: 'utf8' })
      .filter((name) => name.endsWith('.ts'))
      .flatMap((name) => [...readFileSync(join(model, folder, name), 'utf8').matchAll(pattern)].map((m) => m[1]!)),
  );
  return [...new Set(codes)].sort();
}
const CODE = /(?:\bcode: |\bask\(\s*|\bquestion\(\s*)'([a-z0-9-]+)'/g;

// The compiler holds the lists of codes against the words; this finds a code written past its list.
describe('codes in the model have sentences', () => {
  const folders = ['demand', 'heat-pump', 'heat-pump/full', 'comparison', '', 'uncertainty', 'weather'];
  const questions = found(folders, CODE);
  test('questions', () => {
    expect(questions.length).toBeGreaterThan(20);
    expect(questions.filter((code) => !QUESTION_CODES.includes(code))).toEqual([]);
  });
});

const DATA = {
  a: 'record',
  b: 'heat-loss',
  aKWh: 13_900,
  bKWh: 9_800,
  likely: 'unheated-rooms,other-heat',
  way: 'certificate',
  kind: 'wood stove',
  baseKWh: 5200,
  homeKW: 4.2,
  withKW: 7.9,
  kW: 8,
  why: 'no-half-hours',
  grade: 'assumed',
  tariff: 'Invented prices',
  flowC: 60,
  waterKWh: 2300,
  share: 0.34,
  count: 3,
  on: '2026-03-01',
  shareLow: 0.25,
  shareHigh: 0.43,
  sure: 0.985,
  used: 'after',
  perhapsKWh: 1200,
  carrier: 'gas',
  r2: 0.31,
  cvRmse: 0.4,
  region: 'the Midlands',
  days: 365,
  leftoverKWh: 7,
  people: 3,
  heatLossKW: 0,
  heatLossWPerK: 20,
  floorAreaM2: 96,
  roomC: 12,
  designOutdoorC: 14,
  place: 'Birmingham',
  rule: '99 %',
  outdoorC: -3.4,
  coldestC: -1.2,
  reckoned: 4.4,
  efficiency: 1.05,
  found: 12,
  low: 1,
  high: 8,
  middle: 3.2,
  typed: 4.6,
  taken: 'H3',
  derived: 2.7,
  space: 3.4,
  water: 3.9,
  spaceKWh: 11_000,
  fuel: 'gas',
  name: 'Night',
  from: '2026-10-01',
  to: '2026-09-01',
  previous: '2026-12-01',
  until: '2026-01-01',
  first: 'Night',
  second: 'Evening peak',
  month: 1,
  day: 'mon',
  time: '00:30',
  pence: 91.2,
  rate: 0.17,
  most: 400,
  date: '2026-03-29',
  expected: 46,
  before: 300,
  without: 97,
  upTo: 100,
  monthPence: 1668,
  dearest: 26.3,
} as const;
const CLOCKS = { ...DATA, from: '00:30', to: '05:30' };

describe('sentences stand for any data', () => {
  const all = (): [string, string][] => [
    ...QUESTION_CODES.map((code): [string, string] => [code, questionSentence({ code, data: DATA })]),
    ...TARIFF_FAULT_CODES.map((code): [string, string] => [
      code,
      tariffFaultSentence({ code, data: code.startsWith('band-') ? CLOCKS : DATA }),
    ]),
    ...BILL_FAULT_CODES.map((code): [string, string] => [code, billFaultSentence({ code, data: DATA })]),
    ...SEARCH_QUESTIONS.flatMap((code): [string, string][] => [
      [code, questionTask(code)],
      [`${code}, to the customer`, customerWords(code)],
    ]),
  ];
  const stand = (text: string): void => {
    expect(text).not.toMatch(/NaN|undefined|not known|null|!|\[object/);
    expect(text).toMatch(/[.?]$/);
    for (const sentence of sentencesOf(text)) expect(wordsOf(sentence).length, sentence).toBeLessThanOrEqual(25);
  };
  test.each(all())('%s: %s', (_, text) => stand(text));
  test('in German too', () => {
    const english = new Map(all());
    speak({ language: 'de-DE', currency: 'GBP' }, german);
    for (const [code, text] of all()) {
      stand(text);
      expect(text, code).not.toBe(english.get(code));
    }
  });
  test.each(QUESTION_CODES)('%s without data says nothing false', (code) => {
    expect(questionSentence({ code, data: {} })).not.toMatch(/NaN|undefined/);
  });
  test('the hour of a gap is named', () => {
    expect(tariffFaultSentence({ code: 'band-gap', data: { ...CLOCKS, count: 1 } })).toBe(
      'There is no price on Mondays in January from 00:30 to 05:30. Give the hours a band, or let one hold at all other times (“rest” in a file).',
    );
  });
  test('a code nobody has written for is still said', () => {
    expect(questionSentence({ code: 'something-new', data: {} })).toBe(
      'Another version of Plainwarmth noted this, which is not known here: something-new.',
    );
  });
});
