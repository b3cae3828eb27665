import { say } from '../../words/say.ts';
import { useHousehold } from '../household-context.tsx';
import { TickField } from '../shared/choice-field.tsx';
import { GivenField } from '../shared/given-field.tsx';
import { patchSection } from '../shared/patch.ts';
import { fallbackFor } from './fallbacks.ts';

/** How hot the water is kept and in how large a cylinder; asked with the heat and with the full machine. */
export function CylinderFields(props: { readonly keptAtLabel: string }) {
  const { household, appraisal, today, change } = useHousehold();
  const { hotC, cylinderLitres } = household.hotWater;
  return (
    <>
      <GivenField
        label={props.keptAtLabel}
        given={hotC}
        limits={{ min: 35, max: 80, unit: '°C' }}
        today={today}
        fallback={fallbackFor('hotC', household, appraisal)}
        onChange={(hotC) => change(patchSection('hotWater', { hotC }))}
      />
      <GivenField
        label={say('Cylinder')}
        given={cylinderLitres}
        limits={{ min: 1, max: 2000, unit: 'litres' }}
        today={today}
        fallback={fallbackFor('cylinderLitres', household, appraisal)}
        onChange={(cylinderLitres) => change(patchSection('hotWater', { cylinderLitres }))}
      />
    </>
  );
}

/** The weekly hot cylinder against legionella; on unless somebody says otherwise. */
export function PasteuriseField() {
  const { household, change } = useHousehold();
  return (
    <TickField
      label={say('Heated to 60 °C once a week')}
      checked={household.hotWater.pasteuriseWeekly ?? true}
      note={say('By the immersion heater, against legionella.')}
      onChange={(pasteuriseWeekly) => change(patchSection('hotWater', { pasteuriseWeekly }))}
    />
  );
}
