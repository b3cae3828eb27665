/** Every finding that the model can name has its words, and whatever its data they are whole sentences. */
import { describe, expect, test } from 'vitest';
import { DETECTOR_RATES, HEATER_FOUND, TRUE_FINDINGS } from '../../../src/model/findings/measured.ts';
import {
  AskCode,
  CautionCode,
  type Finding,
  FindingCheckCode,
  FindingCode,
  sureOf,
} from '../../../src/model/shapes/finding.ts';
import {
  askSentence,
  costOfFinding,
  findingCaution,
  findingCheckSentence,
  findingName,
  homeSentence,
  seenSentence,
  sureShort,
  whenSentence,
} from '../../../src/words/findings.ts';
import { made } from './made-findings.ts';

const SENTENCE = /^[A-Z“].*[.?]$/s;

describe.each(FindingCode.options)('%s', (code) => {
  const finding = made(code);
  test('is named, seen and said at home', () => {
    expect(findingName(finding)).toMatch(/^[A-Z]/);
    for (const text of [seenSentence(finding), homeSentence(finding)]) {
      expect(text).toMatch(SENTENCE);
      expect(text).not.toMatch(/NaN|undefined|not known/);
    }
    expect(homeSentence(finding), 'no power on the household’s page').not.toMatch(/\bk?W\b/);
  });
});

test.each([
  ...AskCode.options.map((code) => [code, askSentence(code)]),
  ...FindingCheckCode.options.map((code) => [code, findingCheckSentence(code)]),
  ...CautionCode.options.map((code) => [code, findingCaution(code)]),
])('%s has its sentence', (_, text) => expect(text).toMatch(SENTENCE));

const WINTER = { code: 'behaviour-changed', from: '2026-01-08', to: '2026-02-19', part: 'rest' } as const;
test.each<[Parameters<typeof costOfFinding>[0], string]>([
  [
    { ...WINTER, pence: 7000, penceYear: 9000, kWh: 252 },
    'In the days of the bill that is 250 kWh more, about £70 more. It was seen for a part of the year only; the same days of another year would be about £90 more.',
  ],
  [
    { ...WINTER, from: '2025-02-19', pence: 2000, penceYear: 8000, kWh: 0 },
    'In the days of the bill that is about £20 more. Over a whole year that is about £80 more.',
  ],
  [
    { ...WINTER, from: '2025-02-19', pence: -2000, penceYear: -8000, kWh: -80 },
    'In the days of the bill that is 80 kWh less, about £20 less. Over a whole year that is about £80 less.',
  ],
  [
    { ...WINTER, pence: 5000, penceYear: 0, kWh: 180 },
    'In the days of the bill that is 180 kWh more, about £50 more. Over a year it evens out.',
  ],
  [
    { code: 'water-often', from: '2026-01-08', to: '2026-02-19', pence: 5000, penceYear: 5000, kWh: 180 },
    'In the days of the bill that was 180 kWh, about £50. It is not counted as a part of the difference.',
  ],
  [
    { ...WINTER, code: 'heater-running', pence: 7000, penceYear: 0, kWh: 252 },
    'In the days of the bill that is 250 kWh more, about £70 more. Over a year it evens out. Without the heater the heat pump has to make part of this heat, so less than that would be saved.',
  ],
  [{ ...WINTER, pence: 20, penceYear: 0, kWh: 0 }, 'It makes no lasting cost.'],
  [{ ...WINTER, code: 'own-generation', pence: 0, penceYear: 0, kWh: 0 }, 'How much it comes to is not known.'],
])('cost of %o', (cost, said) => {
  expect(costOfFinding(cost)).toBe(said);
});

test('what may be a heater is not said to look like no heating', () => {
  const load = { ...made('large-load'), meter: 'whole-house' as const };
  for (const text of [seenSentence(load), homeSentence(load)]) expect(text).toContain('not look like heating.');
  const either = { ...load, may: ['large-load', 'heater'] satisfies Finding['may'] };
  expect(seenSentence(either)).toContain('These look alike on this meter');
  for (const text of [seenSentence(either), homeSentence(either)]) expect(text).not.toContain('not look like heating');
});

test('weeks of less are said as what the meter counted', () => {
  const weeks = { ...made('home-empty'), kWh: -250, seen: { days: 42, share: 0.38 } };
  expect(seenSentence(weeks)).toBe('For 42 days the meter counted 38% of what days as cold took before and after.');
  expect(homeSentence(weeks)).toBe(
    'From 8 January 2026 to 18 February 2026 the meter counted much less than before and after, in the same weather.',
  );
  expect(homeSentence(made('home-empty'))).toContain('hardly any ups and downs');
});

test.each([
  [0.97, 'about 19 in 20 sure'],
  [0.5, 'about 10 in 20 sure'],
  [1, 'about 19 in 20 sure'],
])('%d is never certain', (sure, said) => expect(sureShort({ sure })).toBe(said));

test('the last day belongs to it', () => {
  expect(whenSentence({ from: '2026-01-08', to: '2026-02-19' })).toBe('8 January 2026 to 18 February 2026');
});

test('the limits that are said are those that are held to: none is rounded to a better one', () => {
  const isWhole = (share: number, of: number) => Math.abs(share * of - Math.round(share * of)) < 1e-9;
  for (const { mostFalse, leastFound } of Object.values(DETECTOR_RATES)) {
    expect(isWhole(mostFalse, 200) && mostFalse >= 0.01 && mostFalse <= 0.05).toBe(true);
    expect(isWhole(leastFound, 100) && leastFound <= 1).toBe(true);
  }
  for (const { sure, leastTrue } of TRUE_FINDINGS) {
    expect(isWhole(sure, 20) && isWhole(leastTrue, 100)).toBe(true);
    expect(leastTrue >= sure && leastTrue < 1, 'true at least as often as it says').toBe(true);
  }
  expect(sureOf(0), 'nothing is less sure than the lowest class').toBe(TRUE_FINDINGS[0].sure);
  expect(Object.values(HEATER_FOUND).every((share) => isWhole(share, 100))).toBe(true);
});
