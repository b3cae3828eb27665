/** Whatever a working says of the invented households has its German; where a figure comes from may stay a British title. */
import { describe, expect, test } from 'vitest';
import { reckonHousehold } from '../../../src/host/reckon-household.ts';
import type { Working } from '../../../src/model/shapes/working.ts';
import { german } from '../../../src/words/german/german.ts';
import { speak } from '../../../src/words/say.ts';
import { sayTold } from '../../../src/words/say-told.ts';

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
  test('title, formula, inputs and units', () => {
    const task = { withCheck: name === 'mill-lane', withDocument: false };
    const { estimate, check } = reckonHousehold(`sample-bills/${name}/household.json`, '2026-11-25', task);
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
  });
});
