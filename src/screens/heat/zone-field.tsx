import { useHousehold } from '../household-context.tsx';
import { type Choice, ChoiceField } from '../shared/choice-field.tsx';

const ZONES: readonly Choice<string>[] = [
  { value: 'Europe/London', label: 'United Kingdom' },
  { value: 'Europe/Dublin', label: 'Ireland' },
  { value: 'Europe/Berlin', label: 'central Europe' },
  { value: 'America/New_York', label: 'US, Eastern' },
  { value: 'America/Chicago', label: 'US, Central' },
  { value: 'America/Denver', label: 'US, Mountain' },
  { value: 'America/Phoenix', label: 'US, Arizona' },
  { value: 'America/Los_Angeles', label: 'US, Pacific' },
];

/** By which clock the home lives; fixed once readings finer than a day are kept, whose days it has cut. */
export function ZoneField() {
  const { household, series, change } = useHousehold();
  const { zone } = household;
  const isFixed = series.some(({ resolution, dayShape }) => resolution === 'interval' || dayShape !== undefined);
  const named = ZONES.find(({ value }) => value === zone) ?? { value: zone, label: zone };
  const others = isFixed ? [] : ZONES.filter(({ value }) => value !== zone);
  return (
    <ChoiceField
      label="Clock of the home"
      value={zone}
      choices={[named, ...others]}
      note={
        isFixed
          ? 'The readings kept were cut into days by this clock. Take them back to change it.'
          : 'When its clocks change in spring and autumn.'
      }
      onChange={(next) => change((before) => ({ ...before, zone: next ?? before.zone }))}
    />
  );
}
