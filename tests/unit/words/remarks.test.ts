/** Every remark of intake has a sentence in every language, whatever of its facts are there. */
import { describe, expect, test } from 'vitest';
import { REMARK_CODES } from '../../../src/intake/terms/remark-codes.ts';
import type { Remark } from '../../../src/model/shapes/evidence.ts';
import { tell } from '../../../src/model/shapes/told.ts';
import { german } from '../../../src/words/german/german.ts';
import { remarkSentence } from '../../../src/words/remarks.ts';
import { speak } from '../../../src/words/say.ts';
import { sentencesOf, wordsOf } from './reading-ease.ts';

const inGerman = () => speak({ language: 'de-DE', currency: 'GBP' }, german);

const FULL: Omit<Remark, 'code'> = {
  weight: 'note',
  file: 'meter.csv',
  row: 1204,
  column: 'column 3',
  found: '01/02/2025',
  expected: 'day first',
  from: '2025-03-01',
  to: '2025-03-04',
  count: 1200,
  effectKWh: -12.34,
};
const BARE: Omit<Remark, 'code'> = { weight: 'note', file: 'meter.csv' };
/** A word that only English has, outside the names and values given here. */
const ENGLISH = /\b(the|is|and|of|it|we|has|with|choose|are|no)\b/i;

describe('every remark', () => {
  test.each(REMARK_CODES)('%s', (code) => {
    for (const facts of [FULL, BARE]) {
      const text = remarkSentence({ ...facts, code });
      expect(text).toMatch(/\.$/);
      expect(text).not.toMatch(/NaN|undefined|[{}]/);
    }
    inGerman();
    for (const facts of [FULL, BARE]) {
      const text = remarkSentence({ ...facts, code });
      expect(text).toMatch(/\.$/);
      expect(text).not.toMatch(/NaN|undefined|[{}]/);
      expect(text).not.toMatch(ENGLISH);
      for (const sentence of sentencesOf(text)) expect(wordsOf(sentence).length, sentence).toBeLessThanOrEqual(25);
    }
  });
});

test.each([
  [
    'date-order-asked',
    'Line 1204 of meter.csv: "01/02/2025" may be day first or month first, and no date in column 3 tells. We took it as day first. Choose the other if the dates look wrong.',
    'Zeile 1204 von meter.csv: „01/02/2025“ kann Tag zuerst oder Monat zuerst heißen, und kein Datum verrät es (Spalte 3). Wir lesen es so: Tag zuerst. Wählen Sie das andere, wenn die Daten falsch aussehen.',
  ],
  [
    'gap',
    'meter.csv has nothing from 1 March 2025 to 4 March 2025: 1,200 readings missing, about 12.3 kWh. They are not taken for nought.',
    'meter.csv hat nichts vom 1. März 2025 bis 4. März 2025: 1.200 Messwerte fehlen, etwa 12,3 kWh. Das zählt nicht als null.',
  ],
] as const)('%s in both languages', (code, english, other) => {
  expect(remarkSentence({ ...FULL, code })).toBe(english);
  inGerman();
  expect(remarkSentence({ ...FULL, code })).toBe(other);
});

test('a number of ours is written as the language writes it', () => {
  const weather = {
    ...FULL,
    code: 'records-weather-asked',
    found: 'b.csv',
    expectedTold: tell('figure', { figure: 7.8 }),
  } as const;
  expect(remarkSentence(weather)).toContain('by 7.8 °C');
  inGerman();
  expect(remarkSentence(weather)).toContain('um 7,8 °C');
});

test('a heading stands as the file has it, even where it is a word of ours', () => {
  inGerman();
  expect(remarkSentence({ ...FULL, code: 'columns-left-out', found: 'heat', expected: 'Electricity' })).toBe(
    'meter.csv: Gelesen wurde Electricity, weggelassen heat. Wählen Sie eine andere Spalte, wenn das falsch ist.',
  );
});
