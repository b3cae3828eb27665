/** The range beside a figure, as one more step below its sum. */
import type { Figure, SystemResult } from '../../model/shapes/appraisal.ts';
import { phrase } from '../say.ts';
import { inWords, type Said } from '../say-told.ts';
import type { ShownWorking } from '../working.ts';

const DRAWN = phrase('10 and 90 % points over the possible years, every doubtful input drawn from its own spread');
const DRAWN_MONEY = phrase(
  '10 and 90 % points over the possible years, every doubtful input drawn from its own spread; standing charge, VAT and a service price that was typed are agreed and stay',
);

/**
 * The sum behind a figure with the step that its range came from [unit of the figure].
 * Low and high are the points that 1 case in 10 lies below and 1 in 10 above; 8 cases in 10 lie between.
 */
export function rangedWorking(figure: Omit<Figure, 'grade'>): ShownWorking {
  const { low, high, unit, working } = figure;
  if (!(high > low)) return working;
  const origin = inWords(unit === 'p' ? DRAWN_MONEY : DRAWN);
  const end = (name: Said, value: number) => ({ name, value, unit, grade: 'estimated', origin }) as const;
  const range: ShownWorking = {
    title: inWords('How wide it may lie'),
    formula: inWords('high − low: 8 in 10 homes like yours lie between the two, 1 in 10 below and 1 in 10 above'),
    inputs: [
      end(inWords('Low'), low),
      end(inWords('High'), high),
      {
        name: inWords('Give or take'),
        value: (high - low) / 2,
        unit,
        grade: 'estimated',
        origin: inWords('half of what lies between'),
      },
    ],
    result: { value: high - low, unit },
  };
  return { ...working, steps: [...(working.steps ?? []), range] };
}

/** Winter and prices of the years move, the home stays as it is at its middle [pence]. */
function yearsWorking({ lowPence, highPence }: NonNullable<SystemResult['yearToYear']>): ShownWorking {
  const end = (name: Said, value: number) =>
    ({
      name,
      value,
      unit: 'p',
      grade: 'estimated',
      origin: inWords('the possible years of one and the same home'),
    }) as const;
  return {
    title: inWords('How far one home’s bill moves'),
    formula: inWords(
      'high − low: 8 in 10 years of one home lie between the two; only winter, habits and prices are drawn',
    ),
    inputs: [end(inWords('Low'), lowPence), end(inWords('High'), highPence)],
    result: { value: highPence - lowPence, unit: 'p' },
  };
}

/** The cost of a way of heating with its range, how far the years of one home move, and what it comes to if the machine works as designed [pence]. */
export function rangedCostWorking({
  cost,
  asDesigned,
  yearToYear,
}: Pick<SystemResult, 'cost' | 'asDesigned' | 'yearToYear'>): ShownWorking {
  const whole = rangedWorking(cost);
  const ranged = yearToYear ? { ...whole, steps: [...(whole.steps ?? []), yearsWorking(yearToYear)] } : whole;
  if (!asDesigned) return ranged;
  const design: ShownWorking = {
    title: inWords('If it works as designed'),
    formula: inWords('the same sum with the factors as the design gives them'),
    inputs: [
      {
        name: inWords('Homes that get there'),
        value: asDesigned.reachedShare,
        unit: 'share',
        grade: 'estimated',
        origin: inWords('the possible factors of a home like this one, drawn from the spread of metered homes'),
      },
    ],
    result: { value: asDesigned.costPence, unit: 'p' },
  };
  return { ...ranged, steps: [...(ranged.steps ?? []), design] };
}
