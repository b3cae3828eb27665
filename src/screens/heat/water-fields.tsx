import { useHousehold } from '../household-context.tsx';
import { TickField } from '../shared/choice-field.tsx';
import { GivenField } from '../shared/given-field.tsx';
import { patchSection } from '../shared/patch.ts';
import { fallbackFor } from './fallbacks.ts';

/** Hot water, for those who know more of it than the number of people. */
export function WaterFields() {
  const { household, appraisal, today, change } = useHousehold();
  const water = household.hotWater;
  return (
    <section>
      <h3>Hot water</h3>
      <div className="fields">
        <GivenField
          label="Used a day"
          given={water.litresPerDay}
          limits={{ min: 1, max: 3000, unit: 'litres' }}
          today={today}
          fallback={fallbackFor('litresPerDay', household, appraisal)}
          onChange={(litresPerDay) => change(patchSection('hotWater', { litresPerDay }))}
        />
        <GivenField
          label="Kept at"
          given={water.hotC}
          limits={{ min: 35, max: 80, unit: '°C' }}
          today={today}
          fallback={fallbackFor('hotC', household, appraisal)}
          onChange={(hotC) => change(patchSection('hotWater', { hotC }))}
        />
        <GivenField
          label="Cylinder"
          given={water.cylinderLitres}
          limits={{ min: 1, max: 2000, unit: 'litres' }}
          today={today}
          fallback={fallbackFor('cylinderLitres', household, appraisal)}
          onChange={(cylinderLitres) => change(patchSection('hotWater', { cylinderLitres }))}
        />
        <GivenField
          label="Cylinder loses"
          given={water.cylinderLossKWhPerDay}
          limits={{ min: 0, max: 20, unit: 'kWh/day' }}
          today={today}
          fallback={fallbackFor('cylinderLossKWhPerDay', household, appraisal)}
          onChange={(cylinderLossKWhPerDay) => change(patchSection('hotWater', { cylinderLossKWhPerDay }))}
        />
        <TickField
          label="Heated to 60 °C once a week"
          checked={water.pasteuriseWeekly ?? true}
          note="By the immersion heater, against legionella."
          onChange={(pasteuriseWeekly) => change(patchSection('hotWater', { pasteuriseWeekly }))}
        />
      </div>
    </section>
  );
}
