/** What is paid for equipment over the years, on either side, and what is left of its life at the end. */
import type { Household } from '../shapes/household.ts';
import type { LifetimeInputs } from '../shapes/lifetime.ts';

export interface Outlays {
  /** Pence by year, from 0 to the last; what falls on the last day is left to whoever looks further. */
  readonly byYear: readonly number[];
  /** Worth of the life that the newest equipment still has at the end, pence. */
  readonly leftPence: number;
}

interface Buying {
  readonly year: number;
  readonly pence: number;
}

/** The heat pump less its grant, then the machine again at the end of each life; nothing where no price was given. */
export function pumpOutlays(purchase: Household['purchase'], inputs: LifetimeInputs): Outlays {
  const years = inputs.years.value;
  const price = purchase.heatPumpGBP?.value ?? 0;
  const first = 100 * (price - (purchase.grantGBP?.value ?? 0));
  const again = 100 * (purchase.renewalGBP?.value ?? price);
  return layOut([{ year: 0, pence: first }], again, inputs.pumpLife.value, years);
}

/** What would replace the present system when it is due, and again at the end of each life; nothing where no price was given. */
export function presentOutlays(purchase: Household['purchase'], inputs: LifetimeInputs): Outlays {
  const years = inputs.years.value;
  const pence = 100 * (purchase.replacementGBP?.value ?? 0);
  const due = inputs.presentYearsLeft.value;
  return layOut(due < years ? [{ year: due, pence }] : [], pence, inputs.replacementLife.value, years);
}

/**
 * Payments by year, and the rest of the last one's life by a straight line [pence]: price × (life − years in use) / life.
 * Common practice, no source. It lets equipment that outlasts the horizon be compared with some that does not.
 */
function layOut(first: readonly Buying[], againPence: number, lifeYears: number, years: number): Outlays {
  const buyings = [...first];
  for (let last = buyings.at(-1); last && last.year + lifeYears < years; last = buyings.at(-1)) {
    buyings.push({ year: last.year + lifeYears, pence: againPence });
  }
  const byYear = new Array<number>(years + 1).fill(0);
  for (const { year, pence } of buyings) byYear[year]! += pence;
  const newest = buyings.at(-1);
  const leftPence = newest ? newest.pence * (1 - (years - newest.year) / lifeYears) : 0;
  // A grant may be more than the price.
  return { byYear, leftPence: Math.max(0, leftPence) };
}
