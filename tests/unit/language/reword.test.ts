import { beforeEach, expect, test } from 'vitest';
import { german } from '../../../src/words/german/german.ts';
import { reword } from '../../../src/words/reword.ts';
import { speak } from '../../../src/words/say.ts';

beforeEach(() => speak({ language: 'de-DE', currency: 'GBP' }, german));

test.each([
  ['typed by the installer, 3 October 2026', 'vom Fachbetrieb eingegeben, 3. Oktober 2026'],
  [
    'Published average price, October to December 2026',
    'Veröffentlichter Durchschnittspreis, Oktober bis Dezember 2026',
  ],
  ['public guide page, January 2026', 'öffentliche Ratgeberseite, Januar 2026'],
  ['Gas bill, 1 March 2026 to 31 May 2026', 'Gasrechnung, 1. März 2026 bis 31. Mai 2026'],
  ['Heating oil deliveries, typed', 'Lieferungen von Heizöl, eingegeben'],
  ['at most 12,345 kWh', 'höchstens 12.345 kWh'],
  ['12,345 kWh a day', '12.345 kWh am Tag'],
  ['1,234.5', '1.234,5'],
  ['2026', '2026'],
  ['Marble', 'Marble'],
])('%s', (kept, said) => expect(reword(kept)).toBe(said));
