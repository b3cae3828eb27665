import { say } from '../../words/say.ts';
import { brineFallSentence } from '../../words/site-readings.ts';
import type { BrineSeries } from './series.ts';

export const brineName = () => say('Brine from visit to visit');

export function brineSentence({ readings, fall }: BrineSeries): string {
  return fall ? brineFallSentence(fall) : say('Brine of {count} visits: it does not fall.', { count: readings.length });
}
