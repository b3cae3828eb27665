import { type Household, PresentSystem } from '../../model/household/household.ts';
import { useHousehold } from '../household-context.tsx';
import { type Choice, ChoiceField, TickField } from '../shared/choice-field.tsx';
import { GivenField } from '../shared/given-field.tsx';
import { patchSection } from '../shared/patch.ts';
import { fallbackFor } from './fallbacks.ts';

const SYSTEM_WORDS: { readonly [system in PresentSystem]: string } = {
  'gas-condensing': 'gas boiler, condensing',
  'gas-old': 'gas boiler, older',
  oil: 'oil boiler',
  lpg: 'LPG boiler',
  'direct-electric': 'electric heaters',
  storage: 'storage heaters',
  'heat-pump': 'heat pump',
  other: 'something else',
};
type Present = Household['present'];
const WATER_FROM: readonly Choice<NonNullable<Present['hotWaterFrom']>>[] = [
  { value: 'same', label: 'the same system' },
  { value: 'immersion', label: 'an immersion heater' },
  { value: 'electric-shower', label: 'electric showers' },
];
const OTHER_HEAT: readonly Choice<NonNullable<Present['otherHeat']>>[] = [
  { value: 'none', label: 'none' },
  { value: 'wood stove', label: 'a wood stove' },
  { value: 'open fire', label: 'an open fire' },
  { value: 'electric heaters', label: 'electric heaters' },
  { value: 'solar thermal', label: 'solar panels for hot water' },
];
const BURNS_GAS: readonly PresentSystem[] = ['gas-condensing', 'gas-old'];

/** What heats the home today. */
export function PresentFields() {
  const { household, appraisal, today, change } = useHousehold();
  const { present } = household;
  return (
    <section>
      <h3>What heats it now</h3>
      <div className="fields">
        <ChoiceField
          label="Heating today"
          value={present.system}
          choices={PresentSystem.options.map((value) => ({ value, label: SYSTEM_WORDS[value] }))}
          onChange={(system) => {
            // Another system has another efficiency; a figure typed for the old one would be wrong.
            if (system) change(patchSection('present', { system, efficiency: undefined }));
          }}
        />
        {present.system === 'heat-pump' ? null : (
          <GivenField
            label="Seasonal efficiency"
            given={present.efficiency}
            limits={{
              min: 20,
              max: 110,
              unit: '%',
              why: 'No boiler gives more than 110 %, and below 20 % nobody would keep it.',
            }}
            scale={100}
            today={today}
            fallback={fallbackFor('efficiency', household, appraisal)}
            onChange={(efficiency) => change(patchSection('present', { efficiency }))}
          />
        )}
        <ChoiceField
          label="Hot water comes from"
          value={present.hotWaterFrom}
          emptyLabel="the same system, assumed"
          choices={WATER_FROM}
          onChange={(hotWaterFrom) => change(patchSection('present', { hotWaterFrom }))}
        />
        <ChoiceField
          label="Other heat"
          value={present.otherHeat}
          emptyLabel="not said"
          choices={OTHER_HEAT}
          note="Heat that none of the meters sees."
          onChange={(otherHeat) => change(patchSection('present', { otherHeat }))}
        />
        {BURNS_GAS.includes(present.system) ? (
          <TickField
            label="They cook on gas"
            checked={present.cooksOnGas ?? false}
            note="Gas for cooking stays in the bill, and so does the standing charge."
            onChange={(cooksOnGas) => change(patchSection('present', { cooksOnGas }))}
          />
        ) : null}
      </div>
    </section>
  );
}
