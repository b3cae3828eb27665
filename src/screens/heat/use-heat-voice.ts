import { rangedWorking } from '../../words/explained/ranged.ts';
import { basisSentence, heatSentence, waterSentence, weatherSentence } from '../../words/heat.ts';
import { spokenKWh } from '../../words/numbers.ts';
import { useHousehold } from '../household-context.tsx';
import type { SpokenFigure } from '../shared/spoken.tsx';

/** The sentence of the stage with the figures that open their workings. */
export function useHeatVoice(): {
  readonly sentence: string;
  readonly figures: readonly SpokenFigure[];
  readonly remainder: string;
  readonly remainderFigures: readonly SpokenFigure[];
} {
  const { demand, climate } = useHousehold().appraisal;
  return {
    sentence: heatSentence(demand),
    figures: [{ text: spokenKWh(demand.total.value), working: rangedWorking(demand.total) }],
    remainderFigures: [{ text: spokenKWh(demand.water.value), working: demand.water.working }],
    remainder: [waterSentence(demand), basisSentence(demand), weatherSentence(climate)].join(' '),
  };
}
