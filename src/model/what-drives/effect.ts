/** What a step does to the heat pump's year, in money: with its range and the sum behind it. */

import type { AppraisedYears } from '../appraise.ts';
import { tenAndNinety } from '../chance/quantiles.ts';
import { findSideBySide } from '../comparison/beside.ts';
import { withRange } from '../comparison/cost-figures.ts';
import type { Figure } from '../shapes/appraisal.ts';
import { type Told, tell } from '../shapes/told.ts';
import { type WorkingInput, weakestGrade } from '../shapes/working.ts';

/** One case of the sweep: what it is called in a sum, and what the model says of it. */
export interface Stood {
  readonly name: Told;
  readonly years: AppraisedYears;
}

/**
 * Pence a year more when the step is made: `times` × (cost there − cost here) [p], 10 and 90 % points of the same in each
 * possible year. Both cases meet the same years (prices, winter, habits, heat, how well the machine does), so what moves
 * both alike takes no part in the range. Source: common random numbers, any text on simulation.
 */
export function effectOf(title: Told, here: Stood, there: Stood, times: number, source?: Told): Figure {
  const [from, to] = [here, there].map(({ years }) => findSideBySide(years.appraisal).pump.cost) as [Figure, Figure];
  const value = times * (to.value - from.value);
  const [a, b] = [here.years.yearsPence?.get('heat-pump'), there.years.yearsPence?.get('heat-pump')];
  const points = a && b ? tenAndNinety(a.map((pence, i) => times * (b[i]! - pence))) : null;
  const grade = weakestGrade([from.grade, to.grade]);
  const line = ({ name }: Stood, cost: Figure): WorkingInput => ({
    name: tell('cost-of-case', { name }),
    value: cost.value,
    unit: 'p',
    grade: cost.grade,
    origin: tell('comparison-below'),
  });
  const share: WorkingInput = {
    name: tell('times'),
    value: Number(times.toFixed(4)),
    grade: 'assumed',
    origin: tell('step-by-step'),
  };
  const range = a ? tell('range-of-years', { count: a.length }) : tell('no-range');
  return withRange(value, points, {
    unit: 'p',
    grade,
    working: {
      title,
      formula: tell(times === 1 ? 'there-less-here' : 'times-there-less-here'),
      inputs: [line(there, to), line(here, from), ...(times === 1 ? [] : [share])],
      result: { value, unit: 'p' },
      source: source ? tell('both', { first: source, second: range }) : range,
      steps: [to.working, from.working],
    },
  });
}
