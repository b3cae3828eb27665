import type { Demand } from '../../model/shapes/appraisal.ts';
import { say } from '../../words/say.ts';

export const estimatesName = () => say('Heat for the rooms');
export const factorsName = () => say('Seasonal factor beside field trials');

export function estimatesSentence({ estimates }: Pick<Demand, 'estimates'>): string {
  return say(
    'Heat for the rooms, kWh a year, worked out {count, plural, one {one way} other {# ways}}. We are not sure: each band holds 8 in 10 homes like yours.',
    { count: estimates.length },
  );
}
