/** Two sentences on what would change the cost, reckoned from the frozen figures alone. */
import { spokenPounds } from '../words/numbers.ts';
import type { PromiseParts } from './parts.ts';

/** A step in the price of a unit that people can picture, pence. */
const PRICE_STEP_PENCE = 5;

export function whatIfSentences({ pump }: PromiseParts): string[] {
  const dearer = pump.bought.value * PRICE_STEP_PENCE;
  const colder = pump.coldYearPence - pump.cost.value;
  return [
    dearer > 0 ? `If electricity rises by ${PRICE_STEP_PENCE} p a unit, add about ${spokenPounds(dearer)} a year.` : '',
    colder > 0 ? `A cold winter, met about 1 year in 10, adds about ${spokenPounds(colder)}.` : '',
  ].filter(Boolean);
}
