import { isCutByClock } from '../../model/shapes/evidence.ts';
import { phrase, say } from '../../words/say.ts';
import { useHousehold } from '../household-context.tsx';
import { type Choice, ChoiceField, sayChoices } from '../shared/choice-field.tsx';

const ZONES: readonly Choice<string>[] = [
  { value: 'Europe/London', label: phrase('United Kingdom') },
  { value: 'Europe/Dublin', label: phrase('Ireland') },
  { value: 'Europe/Berlin', label: phrase('central Europe') },
  { value: 'America/New_York', label: phrase('US, Eastern') },
  { value: 'America/Chicago', label: phrase('US, Central') },
  { value: 'America/Denver', label: phrase('US, Mountain') },
  { value: 'America/Phoenix', label: phrase('US, Arizona') },
  { value: 'America/Los_Angeles', label: phrase('US, Pacific') },
];

/** By which clock the home lives; fixed once readings finer than a day are kept, whose days it has cut. */
export function ZoneField() {
  const { household, series, change } = useHousehold();
  const { zone } = household;
  const isFixed = series.some(isCutByClock);
  const named = ZONES.find(({ value }) => value === zone) ?? { value: zone, label: zone };
  const others = isFixed ? [] : ZONES.filter(({ value }) => value !== zone);
  return (
    <ChoiceField
      label={say('Clock of the home')}
      value={zone}
      choices={sayChoices([named, ...others])}
      note={
        isFixed
          ? say('The saved readings were split into days by this clock. Remove them to change it.')
          : say('When its clocks change in spring and autumn.')
      }
      onChange={(next) => change((before) => ({ ...before, zone: next ?? before.zone }))}
    />
  );
}
