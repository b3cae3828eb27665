import { carrierOf } from '../../model/shapes/heating.ts';
import { type Household, PRESENT_SYSTEMS } from '../../model/shapes/household.ts';
import { phrase, say } from '../../words/say.ts';
import { systemChoice } from '../../words/systems.ts';
import { useHousehold } from '../household-context.tsx';
import { type Choice, ChoiceField, sayChoices, TickField } from '../shared/choice-field.tsx';
import { GivenField } from '../shared/given-field.tsx';
import { patchSection } from '../shared/patch.ts';
import { fallbackFor } from './fallbacks.ts';
import { WATER_HOURS } from './water-hours.ts';

type Present = Household['present'];
const WATER_FROM: readonly Choice<NonNullable<Present['hotWaterFrom']>>[] = [
  { value: 'same', label: phrase('the same system') },
  { value: 'immersion', label: phrase('an immersion heater') },
  { value: 'electric-shower', label: phrase('electric showers') },
];
const OTHER_HEAT: readonly Choice<NonNullable<Present['otherHeat']>>[] = [
  { value: 'none', label: phrase('none') },
  { value: 'wood stove', label: phrase('a wood stove') },
  { value: 'open fire', label: phrase('an open fire') },
  { value: 'electric heaters', label: phrase('electric heaters') },
  { value: 'solar thermal', label: phrase('solar panels for hot water') },
];

const GAS: readonly Choice<'yes' | 'no'>[] = [
  { value: 'yes', label: phrase('yes, there is gas') },
  { value: 'no', label: phrase('no gas') },
];

/** What heats the home today. */
export function PresentFields() {
  const { household, appraisal, today, change } = useHousehold();
  const { present } = household;
  return (
    <section>
      <h3>{say('Heating today')}</h3>
      <div className="fields">
        <ChoiceField
          label={say('Heating today')}
          value={present.assumed ? undefined : present.system}
          {...(present.assumed
            ? { emptyLabel: say('not known: {name} assumed', { name: systemChoice(present.system) }) }
            : {})}
          choices={PRESENT_SYSTEMS.map((value) => ({ value, label: systemChoice(value) }))}
          onChange={(system) => {
            // Another system has another efficiency; a figure typed for the old one would be wrong.
            if (system) change(patchSection('present', { system, assumed: undefined, efficiency: undefined }));
          }}
        />
        {present.system === 'heat-pump' ? null : (
          <GivenField
            label={say('Seasonal efficiency')}
            given={present.efficiency}
            limits={{
              min: 20,
              max: 110,
              unit: '%',
              why: say('A boiler gives at most 110 %, and hardly any gives below 20 %.'),
            }}
            scale={100}
            today={today}
            fallback={fallbackFor('efficiency', household, appraisal)}
            onChange={(efficiency) => change(patchSection('present', { assumed: undefined, efficiency }))}
          />
        )}
        <ChoiceField
          label={say('Hot water comes from')}
          value={present.hotWaterFrom}
          emptyLabel={say('the same system, assumed')}
          choices={sayChoices(WATER_FROM)}
          onChange={(hotWaterFrom) => change(patchSection('present', { hotWaterFrom }))}
        />
        <ChoiceField
          label={say('Hot water is heated')}
          value={present.hotWaterHours}
          emptyLabel={say('as usual, assumed')}
          choices={sayChoices(WATER_HOURS)}
          note={say(
            'As usual means: electric heating in cheap night hours where there are any, a heat pump by schedule, others when water is used.',
          )}
          onChange={(hotWaterHours) => change(patchSection('present', { hotWaterHours }))}
        />
        <ChoiceField
          label={say('Other heat')}
          value={present.otherHeat}
          emptyLabel={say('not said')}
          choices={sayChoices(OTHER_HEAT)}
          note={say('Heat that no meter counts.')}
          onChange={(otherHeat) => change(patchSection('present', { otherHeat }))}
        />
        {carrierOf(present.system) === 'gas' ? (
          <TickField
            label={say('They cook on gas')}
            checked={present.cooksOnGas ?? false}
            note={say('Gas for cooking stays in the bill, and so does the standing charge.')}
            onChange={(cooksOnGas) => change(patchSection('present', { cooksOnGas }))}
          />
        ) : (
          <ChoiceField
            label={say('Gas in the house or the street')}
            value={household.home.gasGrid === undefined ? undefined : household.home.gasGrid ? 'yes' : 'no'}
            emptyLabel={say('not said')}
            choices={sayChoices(GAS)}
            note={say('A gas boiler is compared only where there is gas, delivered fuel only where there is none.')}
            onChange={(gas) => change(patchSection('home', { gasGrid: gas === undefined ? undefined : gas === 'yes' }))}
          />
        )}
      </div>
    </section>
  );
}
