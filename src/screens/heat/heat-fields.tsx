import type { Household } from '../../model/shapes/household.ts';
import { referenceOf } from '../../reference/index.ts';
import { degrees } from '../../words/numbers.ts';
import { phrase, say } from '../../words/say.ts';
import { useHousehold } from '../household-context.tsx';
import { type Choice, ChoiceField, sayChoices } from '../shared/choice-field.tsx';
import { GivenField } from '../shared/given-field.tsx';
import { patchSection } from '../shared/patch.ts';
import { fallbackFor } from './fallbacks.ts';

type Rule = NonNullable<Household['heat']['designRule']>;
const RULES: readonly Choice<Rule>[] = [
  { value: '99 %', label: phrase('the 99 % set') },
  { value: '99.6 %', label: phrase('the 99.6 % set') },
  { value: 'typed', label: phrase('a figure of your own') },
];

/** Heat loss and the certificate: what was worked out or printed by somebody else. */
export function HeatFields() {
  const { household, appraisal, today, change } = useHousehold();
  const { heat } = household;
  const places = referenceOf(household).designTemperatures.filter((row) => row.rule === heat.designRule);
  return (
    <section>
      <h3>{say('Heat loss and certificate')}</h3>
      <div className="fields">
        <GivenField
          label={say('Heat loss at design temperature')}
          given={heat.heatLossKW}
          limits={{
            min: 0.2,
            max: 200,
            unit: 'kW',
            why: say('A home that loses nothing needs no heating, and 200 kW would heat a school.'),
          }}
          today={today}
          help={say('From your room-by-room calculation, or the survey.')}
          onChange={(heatLossKW) => change(patchSection('heat', { heatLossKW }))}
        />
        <ChoiceField
          label={say('Worked out for')}
          value={heat.designRule}
          emptyLabel={say('not said')}
          choices={sayChoices(RULES)}
          note={say('Two sets of design temperatures are in use. They differ by 1.2 to 2.3 degrees at the same place.')}
          onChange={(designRule) => change(patchSection('heat', { designRule }))}
        />
        <GivenField
          label={say('Design outdoor temperature')}
          given={heat.designOutdoorC}
          limits={{ min: -30, max: 15, unit: '°C' }}
          today={today}
          fallback={fallbackFor('designOutdoorC', household, appraisal)}
          help={
            places.length > 0
              ? `${heat.designRule}: ${places.map((row) => `${row.place} ${degrees(row.outdoorC)}`).join(', ')}.`
              : undefined
          }
          onChange={(designOutdoorC) => change(patchSection('heat', { designOutdoorC }))}
        />
        <GivenField
          label={say('Room temperature')}
          given={heat.roomC}
          limits={{ min: 10, max: 30, unit: '°C' }}
          today={today}
          fallback={fallbackFor('roomC', household, appraisal)}
          onChange={(roomC) => change(patchSection('heat', { roomC }))}
        />
        <GivenField
          label={say('No heating needed above')}
          given={heat.baseC}
          limits={{
            min: 5,
            max: 25,
            unit: '°C',
            why: say('This is the outdoor temperature at which the heating goes off.'),
          }}
          today={today}
          fallback={fallbackFor('baseC', household, appraisal)}
          onChange={(baseC) => change(patchSection('heat', { baseC }))}
        />
        <GivenField
          label={say('Certificate: heat for rooms')}
          given={heat.certificateSpaceKWh}
          limits={{ min: 0, max: 500_000, unit: 'kWh/yr' }}
          today={today}
          help={say('From the energy certificate of the home.')}
          onChange={(certificateSpaceKWh) => change(patchSection('heat', { certificateSpaceKWh }))}
        />
        <GivenField
          label={say('Certificate: hot water')}
          given={heat.certificateWaterKWh}
          limits={{ min: 0, max: 50_000, unit: 'kWh/yr' }}
          today={today}
          onChange={(certificateWaterKWh) => change(patchSection('heat', { certificateWaterKWh }))}
        />
      </div>
    </section>
  );
}
