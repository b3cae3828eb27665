import type { Figure } from '../shapes/appraisal.ts';
import { tell } from '../shapes/told.ts';
import type { Working } from '../shapes/working.ts';

/** What the source adds to each unit of electricity bought [units of heat]: the factor less the unit itself. */
export function addedWorking({ value, grade, working }: Pick<Figure, 'value' | 'grade' | 'working'>): Working {
  return {
    title: tell('added-heat'),
    formula: tell('factor-less-one'),
    inputs: [{ name: tell('factor-at-meter'), value, unit: 'factor', grade, origin: working.title }],
    result: { value: value - 1, unit: 'factor' },
    steps: [working],
  };
}
