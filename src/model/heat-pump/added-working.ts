import type { Figure } from '../shapes/appraisal.ts';
import type { Working } from '../shapes/working.ts';

/** What the source adds to each unit of electricity bought [units of heat]: the factor less the unit itself. */
export function addedWorking({ value, grade, working }: Pick<Figure, 'value' | 'grade' | 'working'>): Working {
  return {
    title: 'Heat from the source for each unit bought',
    formula: 'factor as the meter sees it − 1, the unit that was bought',
    inputs: [{ name: 'Factor as the meter sees it', value, unit: 'factor', grade, origin: working.title }],
    result: { value: value - 1, unit: 'factor' },
    steps: [working],
  };
}
