import { say } from '../../words/say.ts';
import { useHousehold } from '../household-context.tsx';
import { ChoiceField, sayChoices } from '../shared/choice-field.tsx';
import { GivenField } from '../shared/given-field.tsx';
import { patchSection } from '../shared/patch.ts';
import { CylinderFields, PasteuriseField } from './cylinder-fields.tsx';
import { fallbackFor } from './fallbacks.ts';
import { WATER_HOURS } from './water-hours.ts';

/** Hot water, for those who know more of it than the number of people. */
export function WaterFields() {
  const { household, appraisal, today, change } = useHousehold();
  const water = household.hotWater;
  return (
    <section>
      <h3>{say('Hot water')}</h3>
      <div className="fields">
        <GivenField
          label={say('Used a day')}
          given={water.litresPerDay}
          limits={{ min: 1, max: 3000, unit: 'litres' }}
          today={today}
          fallback={fallbackFor('litresPerDay', household, appraisal)}
          onChange={(litresPerDay) => change(patchSection('hotWater', { litresPerDay }))}
        />
        <CylinderFields keptAtLabel={say('Temperature')} />
        <GivenField
          label={say('Cylinder heat loss')}
          given={water.cylinderLossKWhPerDay}
          limits={{ min: 0, max: 20, unit: 'kWh/day' }}
          today={today}
          fallback={fallbackFor('cylinderLossKWhPerDay', household, appraisal)}
          onChange={(cylinderLossKWhPerDay) => change(patchSection('hotWater', { cylinderLossKWhPerDay }))}
        />
        <ChoiceField
          label={say('The heat pump heats it')}
          value={water.hours}
          emptyLabel={say('by schedule, assumed')}
          choices={sayChoices(WATER_HOURS)}
          onChange={(hours) => change(patchSection('hotWater', { hours }))}
        />
        <PasteuriseField />
      </div>
    </section>
  );
}
