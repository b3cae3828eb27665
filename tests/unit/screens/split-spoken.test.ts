import { describe, expect, test } from 'vitest';
import { closingMarks } from '../../../src/screens/shared/split-spoken.ts';

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
