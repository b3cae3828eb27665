import type { EnergyUnit, IntakeChoices, IntakePreview } from '../../intake/intake.ts';
import { Carrier, isTemperature } from '../../model/evidence/evidence.ts';
import { type Choice, ChoiceField } from '../shared/choice-field.tsx';
import { NumberField } from '../shared/number-field.tsx';
import { sheetChoice } from './remark-answers.ts';
import { CARRIER_WORDS } from './series-words.ts';

const UNITS: readonly EnergyUnit[] = ['kWh', 'Wh', 'MWh', 'GJ', 'm³', 'hundred ft³', 'therm', 'litre', '°C'];
const CARRIERS = Carrier.options;
const STAMPS: readonly Choice<'start' | 'end'>[] = [
  { value: 'start', label: 'the start of its interval' },
  { value: 'end', label: 'the end of its interval' },
];
const CLOCKS: readonly Choice<'local' | 'utc' | 'standard'>[] = [
  { value: 'local', label: 'local time, summer and winter' },
  { value: 'utc', label: 'UTC all year' },
  { value: 'standard', label: 'winter time all year' },
];
const ROLES: readonly Choice<NonNullable<IntakeChoices['role']>>[] = [
  { value: 'import', label: 'what the home buys' },
  { value: 'heat-pump', label: 'what the heat pump uses' },
  { value: 'export', label: 'what the home sends out' },
  { value: 'heat-output', label: 'heat given out' },
  { value: 'weather', label: 'weather' },
  { value: 'machine', label: 'a temperature of the machine' },
];
const DAY_ORDERS: readonly Choice<'day' | 'month'>[] = [
  { value: 'day', label: 'day first: 3/4 is 3 April' },
  { value: 'month', label: 'month first: 3/4 is 4 March' },
];
const FILLS: readonly Choice<NonNullable<IntakeChoices['fill']>>[] = [
  { value: 'none', label: 'stay missing' },
  { value: 'same weekday mean', label: 'filled with the mean of the same weekday' },
];
const LAST_DAYS: readonly Choice<'in' | 'out'>[] = [
  { value: 'in', label: 'belongs to the bill' },
  { value: 'out', label: 'begins the next bill' },
];

/** What was decided from the file, each open to correction. */
export function ChoicesForm(props: {
  readonly preview: IntakePreview;
  readonly onChoose: (part: IntakeChoices) => void;
}) {
  const { preview, onChoose } = props;
  const { choices } = preview;
  const fits = preview.candidates.filter((one) => one.fit > 0 || one.shape === preview.shape);
  const reason = preview.candidates.find((one) => one.shape === preview.shape)?.reason;
  const isPeriods = preview.series.some((series) => series.resolution === 'period');
  return (
    <section>
      <h3>What we took it for</h3>
      <div className="fields fields-tight">
        <ChoiceField
          label="Shape of the file"
          value={preview.shape ?? undefined}
          emptyLabel={preview.shape === null ? 'none fits' : undefined}
          choices={(fits.length > 0 ? fits : preview.candidates).map(({ shape }) => ({ value: shape, label: shape }))}
          note={reason}
          onChange={(shape) => onChoose({ shape })}
        />
        {preview.sheets === undefined || preview.sheets.length < 2 ? null : (
          <ChoiceField
            label="Sheet of the workbook"
            value={choices.sheet}
            choices={preview.sheets.map((value) => ({ value, label: value }))}
            onChange={(sheet) => sheet !== undefined && onChoose(sheetChoice(sheet))}
          />
        )}
        <ChoiceField
          label="It is"
          value={choices.carrier}
          emptyLabel={choices.carrier === undefined ? 'not said' : undefined}
          choices={CARRIERS.map((value) => ({ value, label: CARRIER_WORDS[value] }))}
          onChange={(carrier) => onChoose({ carrier })}
        />
        <ChoiceField
          label="Measured for"
          value={choices.role}
          emptyLabel={choices.role === undefined ? 'not said' : undefined}
          choices={ROLES}
          onChange={(role) => onChoose({ role })}
        />
        <ChoiceField
          label="Unit"
          value={choices.unit}
          emptyLabel={choices.unit === undefined ? 'not said' : undefined}
          choices={UNITS.map((value) => ({ value, label: value }))}
          onChange={(unit) => onChoose({ unit })}
        />
        {choices.stamp === undefined ? null : (
          <ChoiceField
            label="A stamp names"
            value={choices.stamp}
            choices={STAMPS}
            onChange={(stamp) => onChoose({ stamp })}
          />
        )}
        {choices.clock === undefined ? null : (
          <ChoiceField label="Clock" value={choices.clock} choices={CLOCKS} onChange={(clock) => onChoose({ clock })} />
        )}
        {choices.dayFirst === undefined ? null : (
          <ChoiceField
            label="Dates are written"
            value={choices.dayFirst ? 'day' : 'month'}
            choices={DAY_ORDERS}
            onChange={(order) => onChoose({ dayFirst: order === 'day' })}
          />
        )}
        {choices.toInclusive === undefined && !isPeriods ? null : (
          <ChoiceField
            label="The last day on a bill"
            value={choices.toInclusive === false ? 'out' : 'in'}
            choices={LAST_DAYS}
            onChange={(last) => onChoose({ toInclusive: last === 'in' })}
          />
        )}
        {choices.fill !== undefined || canFill(preview) ? (
          <ChoiceField
            label="Missing readings"
            value={choices.fill ?? 'none'}
            choices={FILLS}
            note="What is filled is listed, and counts as estimated."
            onChange={(fill) => onChoose({ fill })}
          />
        ) : null}
        {isOfGasVolume(preview) ? (
          <NumberField
            label="Calorific value on the bill"
            value={choices.calorificMJPerM3}
            limits={{ min: 30, max: 50, unit: 'MJ/m³' }}
            onChange={(calorificMJPerM3) => onChoose({ calorificMJPerM3 })}
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
  if (choices.unit === 'm³' || choices.unit === 'hundred ft³') return true;
  return choices.calorificMJPerM3 !== undefined || remarks.some((remark) => remark.code === 'calorific-assumed');
}
