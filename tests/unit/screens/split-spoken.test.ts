import { describe, expect, test } from 'vitest';
import { closingMarks, splitSpoken } from '../../../src/screens/shared/split-spoken.ts';
import { keepTogether } from '../../../src/words/keep-together.ts';

describe('marks that stay on the line of the figure before them', () => {
  test.each([
    ['. These are prices of October.', '.'],
    [' a year.', ''],
    [', give or take 5,640.', ','],
    ['”, and no more', '”,'],
    ['', ''],
    ['…', '…'],
  ])('%j begins with %j', (text, marks) => expect(closingMarks(text)).toBe(marks));
});

test('a figure that ends within a word takes the whole word', () => {
  const parts = splitSpoken('In 20 Jahren gleicht sich das aus.', ['20 Jahre']);
  expect(parts.map(({ text }) => text)).toEqual(['In ', '20 Jahren', ' gleicht sich das aus.']);
});

describe('what never stands on two lines', () => {
  test.each([
    ['from 1 October 2026 to 31 May 2027', 'from 1\u00a0October 2026 to 31\u00a0May 2027'],
    ['vom 1. Oktober 2026 an', 'vom 1.\u00a0Oktober 2026 an'],
    ['1,446 kWh at 30.40 p in 3 pages', '1,446\u00a0kWh at 30.40\u00a0p in 3 pages'],
  ])('%s', (text, kept) => expect(keepTogether(text)).toBe(kept));
});
