import { expect, test } from 'vitest';
import { appraise } from '../../../src/model/appraise.ts';
import { partWorking } from '../../../src/model/comparison/part-working.ts';
import { reference } from '../../../src/reference/index.ts';
import { sayTold } from '../../../src/words/say-told.ts';
import { makeHousehold } from '../appraisal/make-household.ts';

const { systems } = appraise({ household: makeHousehold(), series: [], reference, asOf: '2026-11-25', draws: 0 });

test.each(systems.map((system) => [system.id, system] as const))('%s: every part has its own inputs', (_, system) => {
  const { cost, split } = system;
  const units = partWorking(cost.working, 'units', split.unitsPence);
  const standing = partWorking(cost.working, 'standing', split.standingPence);
  const service = partWorking(cost.working, 'service', split.servicePence);
  expect(units.inputs.length).toBeGreaterThanOrEqual(2);
  expect(standing.inputs.map(({ value }) => value)).toEqual([expect.closeTo(split.standingPence, 9)]);
  expect(Number(service.inputs[0]?.value) * 100).toBeCloseTo(split.servicePence, 6);
  // Nothing of the whole is lost and nothing counted twice.
  expect([...units.inputs, ...standing.inputs, ...service.inputs]).toHaveLength(cost.working.inputs.length);
  const sum = units.inputs.reduce((total, input, at) => {
    const price = units.inputs[at + 1];
    return sayTold(input.name).startsWith('kWh, ') ? total + Number(input.value) * Number(price?.value) : total;
  }, 0);
  expect(sum).toBeCloseTo(split.unitsPence, 4);
});
