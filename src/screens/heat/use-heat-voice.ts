import { basisSentence, heatSentence, waterSentence, weatherSentence } from '../../words/heat.ts';
import { spokenKWh } from '../../words/numbers.ts';
import { useHousehold } from '../household-context.tsx';
import type { SpokenFigure } from '../shared/spoken.tsx';

/** The sentence of the stage with the figures that open their workings. */
export function useHeatVoice(): {
  readonly sentence: string;
  readonly figures: readonly SpokenFigure[];
  readonly remainder: string;
} {
  const { demand, climate } = useHousehold().appraisal;
  return {
    sentence: heatSentence(demand),
    figures: [{ text: spokenKWh(demand.total.value), working: demand.total.working }],
    remainder: [waterSentence(demand), basisSentence(demand), weatherSentence(climate)].join(' '),
  };
}
