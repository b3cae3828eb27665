import { type CycleStep, cycleWholeSentence } from '../../words/cycle.ts';
import { say } from '../../words/say.ts';
import type { CycleSeries } from './series.ts';

export const cycleName = () => say('How the heat pump works');

/** The sentence of the step that is lit, or of the whole round when none is. */
export function cycleSentence(series: CycleSeries, lit: CycleStep | null): string {
  return (
    series.places.find((place) => place.step === lit)?.sentence ??
    cycleWholeSentence(series.loop, series.from, series.air)
  );
}
