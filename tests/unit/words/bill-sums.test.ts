import { describe, expect, test } from 'vitest';
import type { BillRow } from '../../../src/model/bill/compare-rows.ts';
import type { SuspicionCode } from '../../../src/model/bill/suspicions.ts';
import {
  billCauseSentence,
  billSumsSentence,
  NO_EXPLANATION,
  reachSentence,
  rowSum,
  rowValue,
} from '../../../src/words/bill-sums.ts';
import { BILL_CAUSE_CODES } from './codes-of.ts';
import { sentencesOf, wordsOf } from './reading-ease.ts';

const DATA = {
  meter: 'day',
  billedKWh: 1140,
  ownKWh: 900.4,
  readKWh: 900,
  versionFrom: '2025-10-01',
  part: 'all',
  used: 41.2,
  printed: 39.3,
  correction: 1.02264,
  first: 'day',
  second: 'night',
  rate: 0.2,
  expected: 0.05,
  days: 92,
  name: 'direct debit',
  pence: 1500,
};

describe('what would explain a bill', () => {
  test('there are many', () => expect(BILL_CAUSE_CODES.length).toBeGreaterThan(12));
  test.each(BILL_CAUSE_CODES)('%s', (code) => {
    const text = billCauseSentence({ code: code as SuspicionCode, data: DATA });
    expect(text).not.toMatch(/NaN|undefined|not known|!/);
    expect(text).toMatch(/\.$/);
    for (const sentence of sentencesOf(text)) expect(wordsOf(sentence).length, sentence).toBeLessThanOrEqual(25);
  });
  test.each([
    ['vat-rate', { rate: 0.2, expected: 0.05 }, 'VAT was charged at 20%. It should be 5%.'],
    ['vat-rate', { rate: 0, expected: 0.05 }, 'No VAT was charged. It should be 5%.'],
    [
      'standing-days',
      { days: 92, expected: 91 },
      'The standing charge is for 92 days. From the first day to the last there are 91.',
    ],
    ['discount-missing', DATA, '“direct debit”, £15.00, was not taken off the total.'],
  ] as const)('%s %j', (code, data, text) => expect(billCauseSentence({ code, data })).toBe(text));
  test('how far it reaches is said', () => {
    const causes = [{ code: 'vat-twice' as const, data: {} }];
    expect(reachSentence({ causes, reach: 'whole', leftPence: 0 })).toBe('This would explain it to the penny:');
    expect(reachSentence({ causes, reach: 'most', leftPence: 210 })).toBe(
      'This would explain most of it, all but £2.10:',
    );
    for (const sentence of sentencesOf(NO_EXPLANATION)) expect(wordsOf(sentence).length).toBeLessThanOrEqual(25);
  });
});

describe('the answer', () => {
  const base = { rows: [], reckonedPence: 10_000, agrees: false, explanations: [] };
  const off: BillRow = { kind: 'units', name: 'day', unit: 'p', printed: 500, reckoned: 400, difference: 100 };
  test.each([
    ['too much', { ...base, differencePence: 1234 }, 'This bill asks £12.34 too much, by these figures.'],
    ['too little', { ...base, differencePence: -5 }, 'This bill asks £0.05 too little, by these figures.'],
    ['right', { ...base, agrees: true, differencePence: 0 }, 'The sums on this bill are right to the penny.'],
    ['no total', { ...base, agrees: true }, 'By these figures the bill comes to £100.00.'],
    [
      'lines that cancel',
      { ...base, rows: [off], differencePence: 0 },
      'The total is right, but 1 line differs from what it should be.',
    ],
  ])('%s', (_, checked, text) => expect(billSumsSentence(checked)).toBe(text));
});

test('a line shows its sum, with both prices where they change', () => {
  const row: BillRow = {
    kind: 'units',
    name: 'all hours',
    unit: 'p',
    reckoned: 15_306,
    quantity: 600,
    pieces: [
      { quantity: 30, price: 26.35 },
      { quantity: 30, price: 24.67 },
    ],
  };
  expect(rowSum(row)).toBe('300 kWh at 26.35 p, 300 kWh at 24.67 p');
  expect(rowValue(row, 15_306)).toBe('£153.06');
});
