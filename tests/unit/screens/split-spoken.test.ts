import { describe, expect, test } from 'vitest';
import { closingMarks, keepTogether } from '../../../src/screens/shared/split-spoken.ts';

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

describe('what never stands on two lines', () => {
  test.each([
    ['from 1 October 2026 to 31 May 2027', 'from 1\u00a0October 2026 to 31\u00a0May 2027'],
    ['vom 1. Oktober 2026 an', 'vom 1.\u00a0Oktober 2026 an'],
    ['1,446 kWh at 30.40 p in 3 pages', '1,446\u00a0kWh at 30.40\u00a0p in 3 pages'],
  ])('%s', (text, kept) => expect(keepTogether(text)).toBe(kept));
});
