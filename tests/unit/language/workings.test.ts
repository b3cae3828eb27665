/** Whatever a working says of the invented households has its German; where a figure comes from may stay a British title. */
import { readFileSync } from 'node:fs';
import { gunzipSync } from 'node:zlib';
import { describe, expect, test } from 'vitest';
import { reckonHousehold } from '../../../src/host/reckon-household.ts';
import type { Working } from '../../../src/model/shapes/working.ts';
import { german } from '../../../src/words/german/german.ts';
import { speak } from '../../../src/words/say.ts';
import { sayTold } from '../../../src/words/say-told.ts';
import { saidByPattern } from './by-pattern.ts';

/** The same in both languages. */
const SAME = new Set([
  '',
  'kWh',
  'W',
  'h',
  'W/K',
  '°C',
  'kW',
  'm²',
  'p',
  'p/kWh',
  '£',
  'GBP',
  'kg',
  'share',
  'factor',
  'pence',
  'pence a year',
  'H3',
  'H4',
  'K',
  'm',
  'bar',
  'kJ/kg',
  'kg/h',
  '%',
]);

function workingsIn(value: unknown): Working[] {
  if (Array.isArray(value)) return value.flatMap(workingsIn);
  if (typeof value !== 'object' || value === null) return [];
  const own = 'formula' in value && 'inputs' in value ? [value as Working] : [];
  return [...own, ...Object.values(value).flatMap(workingsIn)];
}

describe.each(['larch-rise', 'holm-farm', 'mill-lane', 'quay-flat', 'beacon-view'])('%s', (name) => {
  test('title, formula, inputs and units', async () => {
    const task = { withCheck: name === 'mill-lane', withDocument: false };
    const { estimate, check } = await reckonHousehold(`sample-bills/${name}/household.json`, '2026-11-25', task);
    speak({ language: 'de-DE', currency: 'GBP' }, german);
    const texts = workingsIn([estimate, check]).flatMap(({ title, formula, inputs, result }) => [
      title,
      formula,
      result.unit,
      ...inputs.flatMap((input) => [input.name, input.unit ?? '']),
    ]);
    speak({ language: 'de-DE', currency: 'GBP' }, german);
    const english = [...new Set(texts)].filter(
      (text) => typeof text === 'string' && !SAME.has(text) && sayTold(text) === text,
    );
    expect(english).toEqual([]);
    // What somebody wrote into the household's file may look like a text of ours.
    const own = readFileSync(`sample-bills/${name}/household.json`, 'utf8');
    expect(saidByPattern([estimate, check]).filter((text) => !own.includes(JSON.stringify(text)))).toEqual([]);
  });
});

test('what the model says of a household it tells by codes', async () => {
  const task = { withCheck: true, withDocument: false };
  const { estimate, check } = await reckonHousehold('sample-bills/mill-lane/household.json', '2026-11-25', task);
  const workings = workingsIn([estimate, check]);
  const texts = workings.flatMap(({ title, formula, inputs }) => [title, formula, ...inputs.map(({ name }) => name)]);
  const rates = estimate.appraisal.systems.flatMap((system) => system.rates.map(({ name }) => name));
  expect(texts.length).toBeGreaterThan(100);
  expect([...texts, ...rates].filter((text) => typeof text === 'string')).toEqual([]);
  // A unit is a sign or told; factors of carbon have theirs from their table.
  const units = workings.flatMap(({ inputs, result }) => [result.unit, ...inputs.map(({ unit = '' }) => unit)]);
  const phrases = units.filter((unit) => typeof unit === 'string' && !SAME.has(unit) && !unit.startsWith('kg CO2e'));
  expect([...new Set(phrases)]).toEqual([]);
});

describe('an estimate that was kept in English sentences', () => {
  const file = gunzipSync(readFileSync('tests/unit/desk/household-file-version-1.json.gz')).toString();
  const workings = workingsIn(JSON.parse(file));
  const texts = workings.flatMap(({ title, formula, inputs, result }) => [
    title,
    formula,
    result.unit,
    ...inputs.flatMap(({ name, unit = '' }) => [name, unit]),
  ]);
  test('has its German all the same', () => {
    speak({ language: 'de-DE', currency: 'GBP' }, german);
    expect(texts.length).toBeGreaterThan(1000);
    const plain = texts.filter((text): text is string => typeof text === 'string' && !SAME.has(text));
    expect([...new Set(plain)].filter((text) => sayTold(text) === text)).toEqual([]);
    expect(sayTold(workings[0]!.title)).toBe('Wärme für die Räume, aus den Messwerten');
  });
  test.each([
    ['sum below, ± 1174 kWh (one standard error)', 'Summe unten, ± 1174 kWh (ein Standardfehler)'],
    [
      'mean of ratios weighted by (value/error)²: 62 % from the record, 38 % from the heat loss',
      'Mittel der Verhältnisse, gewichtet mit (Wert/Fehler)²: 62 % aus den Messwerten, 38 % aus der Heizlast',
    ],
    ['electricity, night', 'Strom, Nacht'],
    ['Unit price, electricity, night', 'Arbeitspreis, Strom, Nacht'],
    ['typical year, Severn', 'normales Jahr, Severn'],
    [
      'as given × 1.32 ^ ((flow it holds for − flow now) / 20)',
      'wie angegeben × 1,32 ^ ((Vorlauf, für den sie gilt − Vorlauf jetzt) / 20)',
    ],
  ])('%s', (kept, said) => {
    speak({ language: 'de-DE', currency: 'GBP' }, german);
    expect(sayTold(kept)).toBe(said);
  });
});
