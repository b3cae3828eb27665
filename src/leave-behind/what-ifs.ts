/** Two sentences on what would change the cost, reckoned from the frozen figures alone. */
import { pence, spokenPounds } from '../words/numbers.ts';
import { say } from '../words/say.ts';
import type { EstimateParts } from './parts.ts';

/** A step in the price of a unit that people can picture, pence. */
const PRICE_STEP_PENCE = 5;

export function whatIfSentences({ pump }: EstimateParts): string[] {
  const dearer = pump.bought.value * PRICE_STEP_PENCE;
  const colder = pump.coldYearPence - pump.cost.value;
  return [
    dearer > 0
      ? say('If electricity rises by {step} a unit, add about {amount} a year.', {
          step: pence(PRICE_STEP_PENCE, 0),
          amount: spokenPounds(dearer),
        })
      : '',
    colder > 0
      ? say('A cold winter, met about 1 year in 10, adds about {amount}.', { amount: spokenPounds(colder) })
      : '',
  ].filter(Boolean);
}
