import type { MachineResult } from '../../model/appraisal/appraisal.ts';
import { factor, spokenRatio } from '../../words/numbers.ts';
import type { SpokenFigure } from '../shared/spoken.tsx';

/** What is bought and what is added; the factor itself stands in the second line, since people read it as a straight line. */
export function machineVoice(machine: MachineResult): {
  readonly sentence: string;
  readonly figures: readonly SpokenFigure[];
  readonly remainder: string;
} {
  const { whole, source, fieldSpread } = machine;
  const from = source === 'ground' ? 'the ground' : 'the air';
  const added = Math.max(0, whole.value - 1);
  const ratio = spokenRatio(added);
  const sentence =
    added < 0.25
      ? `For every unit you buy, ${from} adds almost nothing.`
      : `For every unit you buy, ${from} adds about ${ratio}.`;
  return {
    sentence,
    figures: [{ text: ratio, working: whole.working }],
    remainder: `Factor ${factor(whole.value)} for rooms and hot water together, all pumps counted. Measured elsewhere: ${factor(fieldSpread.low)} to ${factor(fieldSpread.high)} in 8 homes out of 10.`,
  };
}
