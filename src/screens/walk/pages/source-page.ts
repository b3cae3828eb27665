import { unitsSentence } from '../../../charts/units/sentence.ts';
import { unitsSeries } from '../../../charts/units/series.ts';
import { findSideBySide } from '../../../model/comparison/beside.ts';
import { addedWorking } from '../../../model/heat-pump/added-working.ts';
import { sourceWorking } from '../../../words/explained/flow.ts';
import { addsSentence, designedSentence, fieldSentence, shareSentence } from '../../../words/machine.ts';
import { factor } from '../../../words/numbers.ts';
import { say } from '../../../words/say.ts';
import { costWorking } from '../../shared/name-working.ts';
import type { WalkInput, WalkPage } from '../page.ts';

export function sourcePage({ household, appraisal }: WalkInput): WalkPage {
  const { machine } = appraisal;
  const { pump } = findSideBySide(appraisal);
  const { space, whole } = machine;
  const counted =
    space.value - whole.value < 0.05
      ? say('Hot water, pumps and standby are included.')
      : say('Hot water, pumps and standby are counted; for the rooms alone the factor is {factor}.', {
          factor: factor(space.value),
        });
  return {
    name: 'source',
    sentence: addsSentence(machine),
    say: `${unitsSentence(unitsSeries(appraisal))} ${counted}`,
    foot: say('{name} · seasonal factor {factor} for heat and hot water, pumps included', {
      name: household.name,
      factor: factor(whole.value),
    }),
    picture: { kind: 'units' },
    knobs: ['flow', 'water'],
    inside: true,
    workings: [
      whole.working,
      space.working,
      machine.water.working,
      addedWorking(whole),
      costWorking(pump),
      sourceWorking(appraisal),
    ],
    notes: [
      `${fieldSentence(machine)} ${designedSentence(machine)}`.trim(),
      shareSentence(machine),
      say('The factor for the rooms alone is not the one behind the bill. Say so now.'),
    ],
  };
}
