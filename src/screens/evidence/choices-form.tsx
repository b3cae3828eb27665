import { ENERGY_UNITS, type IntakeChoices, type IntakePreview } from '../../intake/intake.ts';
import { CARRIERS, isTemperature } from '../../model/shapes/evidence.ts';
import { MJ_PER_KWH } from '../../model/units/gas-volume.ts';
import { gasVolumeOf } from '../../reference/gas-of-place.ts';
import { sheetChoice } from '../../words/remark-answers.ts';
import { phrase, say } from '../../words/say.ts';
import { sayTold } from '../../words/say-told.ts';
import { useHousehold } from '../household-context.tsx';
import { type Choice, ChoiceField, sayChoices } from '../shared/choice-field.tsx';
import { NumberField } from '../shared/number-field.tsx';
import { CARRIER_WORDS } from './series-words.ts';

const STAMPS: readonly Choice<'start' | 'end'>[] = [
  { value: 'start', label: phrase('the start of its interval') },
  { value: 'end', label: phrase('the end of its interval') },
];
const CLOCKS: readonly Choice<'local' | 'utc' | 'standard'>[] = [
  { value: 'local', label: phrase('local time, summer and winter') },
  { value: 'utc', label: phrase('UTC all year') },
  { value: 'standard', label: phrase('winter time all year') },
];
const ROLES: readonly Choice<NonNullable<IntakeChoices['role']>>[] = [
  { value: 'import', label: phrase('what the home buys') },
  { value: 'heat-pump', label: phrase('what the heat pump uses') },
  { value: 'export', label: phrase('what the home sends out') },
  { value: 'generation', label: phrase('what the home makes itself') },
  { value: 'heat-output', label: phrase('heat given out') },
  { value: 'weather', label: phrase('weather') },
  { value: 'machine', label: phrase('a temperature of the heat pump') },
];
const DAY_ORDERS: readonly Choice<'day' | 'month'>[] = [
  { value: 'day', label: phrase('day first: 3/4 is 3 April') },
  { value: 'month', label: phrase('month first: 3/4 is 4 March') },
];
const FILLS: readonly Choice<NonNullable<IntakeChoices['fill']>>[] = [
  { value: 'none', label: phrase('stay missing') },
  { value: 'same weekday mean', label: phrase('filled with the mean of the same weekday') },
];
const LAST_DAYS: readonly Choice<'in' | 'out'>[] = [
  { value: 'in', label: phrase('belongs to the bill') },
  { value: 'out', label: phrase('begins the next bill') },
];

/** What was decided from the file, each open to correction. */
export function ChoicesForm(props: {
  readonly preview: IntakePreview;
  readonly onChoose: (part: IntakeChoices) => void;
}) {
  const { preview, onChoose } = props;
  const { choices } = preview;
  const { household } = useHousehold();
  const { isByKWh } = gasVolumeOf(household.zone);
  const perUnit = isByKWh ? MJ_PER_KWH : 1;
  const fits = preview.candidates.filter((one) => one.fit > 0 || one.shape === preview.shape);
  const reason = preview.candidates.find((one) => one.shape === preview.shape)?.reason;
  // Several records may each have their own, which the facts above name.
  const open = preview.series.length > 1 ? say('each record its own') : say('not said');
  return (
    <section>
      <h3>{say('What we took it for')}</h3>
      <div className="fields fields-tight">
        <ChoiceField
          label={say('Type of file')}
          value={preview.shape ?? undefined}
          emptyLabel={preview.shape === null ? say('none fits') : undefined}
          choices={(fits.length > 0 ? fits : preview.candidates).map(({ shape }) => ({
            value: shape,
            label: sayTold(shape),
          }))}
          note={reason && sayTold(reason)}
          onChange={(shape) => onChoose({ shape })}
        />
        {preview.sheets === undefined || preview.sheets.length < 2 ? null : (
          <ChoiceField
            label={say('Sheet or table')}
            value={choices.sheet}
            choices={preview.sheets.map((value) => ({ value, label: value }))}
            onChange={(sheet) => sheet !== undefined && onChoose(sheetChoice(sheet))}
          />
        )}
        <ChoiceField
          label={say('It is')}
          value={choices.carrier}
          emptyLabel={choices.carrier === undefined ? open : undefined}
          choices={CARRIERS.map((value) => ({ value, label: say(CARRIER_WORDS[value]) }))}
          onChange={(carrier) => onChoose({ carrier })}
        />
        <ChoiceField
          label={say('Measured for')}
          value={choices.role}
          emptyLabel={choices.role === undefined ? open : undefined}
          choices={sayChoices(ROLES)}
          onChange={(role) => onChoose({ role })}
        />
        <ChoiceField
          label={say('Unit')}
          value={choices.unit}
          emptyLabel={choices.unit === undefined ? open : undefined}
          choices={ENERGY_UNITS.map((value) => ({ value, label: sayTold(value) }))}
          onChange={(unit) => onChoose({ unit })}
        />
        {choices.stamp === undefined ? null : (
          <ChoiceField
            label={say('Times mean')}
            value={choices.stamp}
            choices={sayChoices(STAMPS)}
            onChange={(stamp) => onChoose({ stamp })}
          />
        )}
        {choices.clock === undefined ? null : (
          <ChoiceField
            label={say('Clock')}
            value={choices.clock}
            choices={sayChoices(CLOCKS)}
            onChange={(clock) => onChoose({ clock })}
          />
        )}
        {choices.dayFirst === undefined ? null : (
          <ChoiceField
            label={say('Dates are written')}
            value={choices.dayFirst ? 'day' : 'month'}
            choices={sayChoices(DAY_ORDERS)}
            onChange={(order) => onChoose({ dayFirst: order === 'day' })}
          />
        )}
        {choices.toInclusive === undefined ? null : (
          <ChoiceField
            label={say('The last day on a bill')}
            value={choices.toInclusive ? 'in' : 'out'}
            choices={sayChoices(LAST_DAYS)}
            onChange={(last) => onChoose({ toInclusive: last === 'in' })}
          />
        )}
        {choices.fill !== undefined || canFill(preview) ? (
          <ChoiceField
            label={say('Missing readings')}
            value={choices.fill ?? 'none'}
            choices={sayChoices(FILLS)}
            note={say('What is filled is listed, and counts as estimated.')}
            onChange={(fill) => onChoose({ fill })}
          />
        ) : null}
        {isOfGasVolume(preview) ? (
          <NumberField
            label={say('Calorific value on the bill')}
            value={choices.calorificMJPerM3 === undefined ? undefined : choices.calorificMJPerM3 / perUnit}
            limits={isByKWh ? { min: 8.4, max: 13.8, unit: 'kWh/m³' } : { min: 30, max: 50, unit: 'MJ/m³' }}
            onChange={(value) => onChoose({ calorificMJPerM3: value === undefined ? undefined : value * perUnit })}
          />
        ) : null}
        {choices.unit === 'pulse' ? (
          <NumberField
            label={say('Pulses for one kWh')}
            value={choices.pulsesPerKWh}
            limits={{ min: 0.001, max: 1_000_000, unit: '1/kWh' }}
            onChange={(pulsesPerKWh) => onChoose({ pulsesPerKWh })}
          />
        ) : null}
      </div>
    </section>
  );
}

/** Whether readings or days of use are missing; weather is not made up. */
const canFill = ({ series }: IntakePreview): boolean =>
  series.some((one) => one.days && !isTemperature(one.carrier) && one.present < one.expected);

/** Whether any record is gas by volume, whose calorific value can be given. */
function isOfGasVolume({ choices, remarks }: IntakePreview): boolean {
  if (choices.unit === 'm³' || choices.unit === 'ft³' || choices.unit === 'hundred ft³') return true;
  return choices.calorificMJPerM3 !== undefined || remarks.some((remark) => remark.code === 'calorific-assumed');
}
