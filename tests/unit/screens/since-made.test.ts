import { expect, test } from 'vitest';
import { appraise } from '../../../src/model/appraise.ts';
import type { Household } from '../../../src/model/shapes/household.ts';
import type { WrittenEstimate } from '../../../src/model/shapes/written-estimate.ts';
import { referenceOf } from '../../../src/reference/index.ts';
import { sayChanges } from '../../../src/screens/estimate/since-made.ts';
import { makeHousehold, typed } from '../appraisal/make-household.ts';

const on = (household: Household, asOf: string) =>
  appraise({ household, series: [], reference: referenceOf(household), asOf, draws: 0 });
const oilHome = (pence: number) =>
  makeHousehold({ present: { system: 'oil' }, prices: { oilPencePerLitre: typed(pence) } });
const changes = (was: Household, is: Household) =>
  sayChanges({ appraisal: on(was, '2026-08-20'), evidence: [], currency: 'GBP' } as unknown as WrittenEstimate, {
    appraisal: on(is, '2026-11-20'),
    series: [],
  });

test('what changed since an estimate names the prices that its ways of heating are bought at, and no other', () => {
  const said = changes(oilHome(62), oilHome(80));
  expect(said).toMatch(/oil 6\.0 p then, 7\.8 p now/);
  expect(said).not.toContain('gas');
  expect(changes(makeHousehold(), makeHousehold())).toMatch(/gas \d\.\d p then, \d\.\d p now/);
});
