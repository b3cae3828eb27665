/** Whatever the workings of a machine's round and of its worked-out year say has its German. */
import { expect, test } from 'vitest';
import { loopWorking } from '../../../src/model/cycle/loop-working.ts';
import { designLoop } from '../../../src/model/heat-pump/full/design-loop.ts';
import type { Wording } from '../../../src/model/shapes/told.ts';
import type { Working } from '../../../src/model/shapes/working.ts';
import { refrigerants } from '../../../src/reference/refrigerants.ts';
import { german } from '../../../src/words/german/german.ts';
import { speak } from '../../../src/words/say.ts';
import { sayTold } from '../../../src/words/say-told.ts';
import { fullHousehold, reckonFull, settleInput } from '../heat-pump-full/make-year.ts';

/** Units and figures that are the same in both languages. */
const SAME = /^(|°C|K|kWh?|W|m|bar|kJ\/kg|g\/s)$/;

function textsOf({ title, formula, inputs, result, steps = [] }: Working): Wording[] {
  return [
    title,
    formula,
    result.unit,
    ...inputs.flatMap((input) => [input.name, input.unit ?? '']),
    ...steps.flatMap(textsOf),
  ];
}

test.each([
  ['ground', 'full'],
  ['ground', 'quick'],
  ['air', 'full'],
  ['air', 'quick'],
] as const)('%s, %s', (source, way) => {
  const design = designLoop(settleInput(fullHousehold({}, { machine: { source, way } })), refrigerants);
  if (!design.result.ok) throw new Error(design.result.fault.code);
  const { loop } = design.result;
  const { whole } = reckonFull({}, { machine: { source } }).machine;
  const workings = [loopWorking(loop, design, refrigerants[loop.refrigerant].source), whole.working];
  speak({ language: 'de-DE', currency: 'GBP' }, german);
  const english = workings
    .flatMap(textsOf)
    .filter((text) => typeof text === 'string' && !SAME.test(text) && sayTold(text) === text);
  expect([...new Set(english)]).toEqual([]);
});
