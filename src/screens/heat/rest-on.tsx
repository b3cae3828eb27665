import type { DemandChoice } from '../../model/shapes/household.ts';
import { say } from '../../words/say.ts';
import { WAY_WORDS } from '../../words/ways.ts';
import { useHousehold } from '../household-context.tsx';
import { PickField } from '../shared/choice-field.tsx';
import { patchSection } from '../shared/patch.ts';

/** Which estimate the comparison rests on; only ways that could be gone are offered. */
export function RestOn() {
  const { household, appraisal, change } = useHousehold();
  const { demand } = appraisal;
  const ways = demand.estimates.map((estimate) => estimate.way);
  const options: DemandChoice[] = ways.length > 1 ? ['together', ...ways] : ways;
  if (options.length < 2) return null;
  return (
    <PickField
      label={say('The sums are based on')}
      value={demand.chosen}
      choices={options.map((value) => ({
        value,
        label: value === 'together' ? say('all together') : say(WAY_WORDS[value].name),
      }))}
      note={demand.chosen === 'together' ? say('The surer one counts more.') : say('One alone, chosen by you.')}
      onChange={(use) =>
        change(patchSection('heat', { use: use === 'together' && !household.heat.use ? undefined : use }))
      }
    />
  );
}
