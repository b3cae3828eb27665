import { expect, test } from 'vitest';
import { german } from '../../../src/words/german/german.ts';
import { speak } from '../../../src/words/say.ts';
import { valuePlace, valueShown } from '../../../src/words/values.ts';

test('what a file of newer values changes is said in the numbers, dates and fuels of the language', () => {
  const place = ['quarters', 'gas 2026-10-01', 'pencePerKWh'];
  const values = [1234.5, '2027-01-05', undefined, 'Ofgem'];
  expect(valuePlace(place)).toBe('Gas and electricity › gas 1 October 2026 › pence a kWh');
  expect(values.map(valueShown)).toEqual(['1,234.5', '5 January 2027', '–', 'Ofgem']);
  speak({ language: 'de-DE', currency: 'EUR' }, german);
  expect(valuePlace(place)).toBe('Gas und Strom › Gas 1. Oktober 2026 › Pence je kWh');
  expect(values.map(valueShown)).toEqual(['1.234,5', '5. Januar 2027', '–', 'Ofgem']);
});
