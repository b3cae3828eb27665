import { describe, expect, test } from 'vitest';
import { appraise } from '../../../src/model/appraise.ts';
import { reference } from '../../../src/reference/index.ts';
import { gasStandingSentence } from '../../../src/words/cost.ts';
import { leavingGasWorking } from '../../../src/words/explained/balance.ts';
import { spokenPounds } from '../../../src/words/numbers.ts';
import { makeHousehold } from '../appraisal/make-household.ts';

/** 365 days at the cap of October to December 2026, 29.68 p a day, are £108.33. */
describe('the standing charge of gas', () => {
  const said = (present: Parameters<typeof makeHousehold>[0] & object = {}) => {
    const household = makeHousehold(present);
    const appraisal = appraise({ household, series: [], reference, asOf: '2026-11-25', draws: 0 });
    return { appraisal, pump: appraisal.systems[0]!, sentence: gasStandingSentence(appraisal, household) };
  };

  test('stays with a gas cooker, and what leaving gas would change is said with its sum', () => {
    const { appraisal, pump, sentence } = said({ present: { cooksOnGas: true } });
    expect(sentence).toContain('you go on paying the gas standing charge, £108 a year');
    expect(sentence).toContain(`costs about ${spokenPounds(pump.cost.value - 365 * 29.68)} a year`);
    const without = said().pump.cost.value;
    expect(leavingGasWorking(appraisal, pump)[0]!.result.value).toBeCloseTo(without, 6);
  });

  test('goes with the boiler where nothing else burns gas; nothing is said where there is none', () => {
    const { appraisal, pump, sentence } = said();
    expect(sentence).toBe(
      'The gas standing charge, £108 a year, ends with the boiler, since nothing else here uses gas.',
    );
    expect(leavingGasWorking(appraisal, pump)).toEqual([]);
    expect(said({ present: { system: 'oil' } }).sentence).toBe('');
  });
});
