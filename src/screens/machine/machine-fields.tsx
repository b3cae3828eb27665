import { Reworded } from '../../charts/reworded.tsx';
import { usualRefrigerant } from '../../model/heat-pump/full/design-loop.ts';
import type { Household } from '../../model/shapes/household.ts';
import { REFRIGERANTS } from '../../model/shapes/refrigerant.ts';
import { loggedFlowSentence } from '../../words/logged-flow.ts';
import { phrase, say } from '../../words/say.ts';
import { fallbackFor } from '../heat/fallbacks.ts';
import { useHousehold } from '../household-context.tsx';
import { type Choice, ChoiceField, PickField, sayChoices } from '../shared/choice-field.tsx';
import { sentenceOf, typeGiven } from '../shared/given.ts';
import { GivenField } from '../shared/given-field.tsx';
import { patchSection } from '../shared/patch.ts';

type Emitters = NonNullable<Household['machine']['emitters']>;
const SOURCES: readonly Choice<'ground' | 'air'>[] = [
  { value: 'ground', label: phrase('the ground') },
  { value: 'air', label: phrase('the air') },
];
const EMITTERS: readonly Choice<Emitters>[] = [
  { value: 'radiators', label: phrase('radiators') },
  { value: 'floor', label: phrase('underfloor') },
];

const WHY_FLOW = phrase('Below 25 it warms no room; above 75 no heat pump runs.');

/** What holds for the machine whichever way its year is worked out. */
export function MachineFields() {
  const { household, appraisal, evidence, today, change } = useHousehold();
  const { machine } = household;
  return (
    <section>
      <h3>{say('Heat pump')}</h3>
      <div className="fields">
        <PickField
          label={say('Heat source')}
          value={machine.source}
          choices={sayChoices(SOURCES)}
          onChange={(source) => change(patchSection('machine', { source }))}
        />
        <PickField
          label={say('Heat goes to')}
          value={machine.emitters ?? 'radiators'}
          choices={sayChoices(EMITTERS)}
          note={machine.emitters === undefined ? say('Assumed: radiators.') : undefined}
          onChange={(emitters) => change(patchSection('machine', { emitters }))}
        />
        <GivenField
          label={say('Flow temperature, coldest day')}
          given={machine.flowC}
          limits={{ min: 25, max: 75, unit: '°C', why: say(WHY_FLOW) }}
          today={today}
          fallback={fallbackFor('flowC', household, appraisal)}
          help={loggedFlowSentence(evidence) ?? undefined}
          onChange={(flowC) => change(patchSection('machine', { flowC }))}
        />
        <ChoiceField
          label={say('Refrigerant')}
          value={machine.refrigerant?.value}
          emptyLabel={say('not known: {name} assumed', { name: usualRefrigerant(machine.source) })}
          choices={REFRIGERANTS.map((value) => ({ value, label: value }))}
          note={
            machine.refrigerant ? (
              <Reworded text={machine.refrigerant.origin} as={sentenceOf} />
            ) : (
              say('It is on the rating plate. Only the picture inside the heat pump and the site readings need it.')
            )
          }
          onChange={(refrigerant) =>
            change(
              patchSection('machine', {
                refrigerant: refrigerant && typeGiven(refrigerant, machine.refrigerant, today),
              }),
            )
          }
        />
      </div>
    </section>
  );
}
