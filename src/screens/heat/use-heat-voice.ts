import { spokenCount, spokenKWh } from '../../words/numbers.ts';
import { useHousehold } from '../household-context.tsx';
import type { SpokenFigure } from '../shared/spoken.tsx';

/** The sentence of the stage with the figures that open their workings. */
export function useHeatVoice(): {
  readonly sentence: string;
  readonly figures: readonly SpokenFigure[];
  readonly remainder: string;
} {
  const { appraisal } = useHousehold();
  const { total, water, space } = appraisal.demand;
  const half = (total.high - total.low) / 2;
  return {
    sentence: `This home needs about ${spokenKWh(total.value)} of heat a year, give or take ${spokenCount(half)}.`,
    figures: [{ text: spokenKWh(total.value), working: total.working }],
    remainder: `${spokenCount(space.value)} for the rooms, ${spokenCount(water.value)} for hot water. Weather of ${appraisal.climate.regionName}, rooms at ${appraisal.demand.roomC} °C.`,
  };
}
