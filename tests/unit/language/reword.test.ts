import { readdirSync, readFileSync } from 'node:fs';
import { beforeEach, describe, expect, test } from 'vitest';
import { readFile } from '../../../src/intake/read-file.ts';
import { COUNTRIES, type Country } from '../../../src/model/shapes/country.ts';
import { emptyHousehold } from '../../../src/model/shapes/household.ts';
import { kWhPerUnit } from '../../../src/reference/fuels.ts';
import { referenceOf } from '../../../src/reference/index.ts';
import { EARLIER } from '../../../src/words/german/earlier.ts';
import { german } from '../../../src/words/german/german.ts';
import { reword } from '../../../src/words/reword.ts';
import { speak } from '../../../src/words/say.ts';
import { saidByPattern } from './by-pattern.ts';

beforeEach(() => speak({ language: 'de-DE', currency: 'GBP' }, german));

test.each([
  ['typed by the installer, 3 October 2026', 'vom Fachbetrieb eingegeben, 3. Oktober 2026'],
  [
    'Published average price, October to December 2026',
    'Veröffentlichter Durchschnittspreis, Oktober bis Dezember 2026',
  ],
  ['public guide page, March 2026', 'öffentliche Ratgeberseite, März 2026'],
  ['Gas bill, 1 March 2026 to 31 May 2026', 'Gasrechnung, 1. März 2026 bis 31. Mai 2026'],
  ['Heating oil deliveries, typed', 'Lieferungen von Heizöl, eingegeben'],
  ['at most 12,345 kWh', 'höchstens 12.345 kWh'],
  ['12,345 kWh a day', '12.345 kWh am Tag'],
  ['1,234.5', '1.234,5'],
  ['2026', '2026'],
  ['Marble', 'Marble'],
  ['“electricity”, “gas”', '„electricity“, „gas“'],
  ['bill of September 2026', 'bill of September 2026'],
])('%s', (kept, said) => expect(reword(kept)).toBe(said));

describe('patterns are for what was kept before', () => {
  test('so that only its texts have numbered gaps', () => {
    const numbered = Object.keys(german).filter((english) => /\{\d+\}/.test(english));
    expect(numbered.length).toBeGreaterThan(50);
    expect(numbered.filter((english) => EARLIER[english] === undefined)).toEqual([]);
  });
  test('and no source of a built-in value needs one', () => {
    const tables = (Object.keys(COUNTRIES) as Country[]).map((country) =>
      referenceOf(emptyHousehold('h', 'A home', country)),
    );
    expect(tables.length).toBeGreaterThan(1);
    expect(saidByPattern(tables)).toEqual([]);
  });
  test('nor what is remarked of any file of the corpus', () => {
    const context = {
      zone: 'Europe/London',
      today: '2026-11-25',
      kWhPerUnit,
      gasVolume: { correction: 1.02264, calorificMJPerM3: 39.5, imperialM3PerHundredCubicFeet: 2.83 },
    };
    const told = readdirSync('tests/corpus').flatMap((file) => {
      const { preview } = readFile(file, new Uint8Array(readFileSync(`tests/corpus/${file}`)), {}, context);
      const words = preview.remarks.flatMap(({ foundTold, expectedTold, expected }) => [
        foundTold,
        expectedTold,
        expected,
      ]);
      return [...words, ...preview.candidates.map(({ reason }) => reason)].map((one) => ({ file, one }));
    });
    expect(told.length).toBeGreaterThan(1000);
    expect(saidByPattern(told.map(({ one }) => one))).toEqual([]);
  });
});
