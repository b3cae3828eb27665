import { useId } from 'react';
import type { Bill, MeterUnit } from '../../model/shapes/bill.ts';
import { reference } from '../../reference/index.ts';
import { phrase, say } from '../../words/say.ts';
import { PickField, sayChoices } from '../shared/choice-field.tsx';
import { DateEntry } from '../shared/date-entry.tsx';
import { Field, fieldIds } from '../shared/field.tsx';
import { NumberField } from '../shared/number-field.tsx';
import { formatPlain } from '../shared/number-text.ts';
import type { BillDraft } from './bill-lines-draft.ts';

const FUELS = [
  { value: 'electricity', label: phrase('electricity') },
  { value: 'gas', label: phrase('gas') },
] as const;
const GAS_UNITS: readonly { readonly value: MeterUnit; readonly label: string }[] = [
  { value: 'm³', label: 'm³' },
  { value: 'hundred ft³', label: '100 ft³' },
  { value: 'kWh', label: 'kWh' },
];

/** Fuel, days, and for gas how its volume becomes energy. */
export function BillHead(props: {
  readonly draft: BillDraft;
  readonly onChange: (part: Partial<BillDraft>) => void;
  readonly onFuel: (fuel: Bill['fuel']) => void;
}) {
  const { draft, onChange } = props;
  const { correction, calorificMJPerM3 } = reference.gasVolume;
  return (
    <div className="fields fields-tight">
      <PickField label={say('Bill for')} value={draft.fuel} choices={sayChoices(FUELS)} onChange={props.onFuel} />
      <Day label={say('First day')} value={draft.from} onChange={(from) => onChange({ from })} />
      <Day
        label={say('Last day, part of the bill')}
        value={draft.lastDay}
        onChange={(lastDay) => onChange({ lastDay })}
      />
      {draft.fuel === 'gas' ? (
        <PickField
          label={say('The meter counts')}
          value={draft.meterUnit}
          choices={GAS_UNITS}
          onChange={(meterUnit) => onChange({ meterUnit })}
        />
      ) : null}
      {draft.meterUnit === 'kWh' ? null : (
        <>
          <NumberField
            label={say('Calorific value')}
            value={draft.calorific}
            placeholder={formatPlain(calorificMJPerM3.value)}
            limits={{ min: 30, max: 50, unit: 'MJ/m³', why: say('British gas lies between 37.5 and 43.') }}
            onChange={(calorific) => onChange({ calorific })}
          />
          <NumberField
            label={say('Volume correction')}
            value={draft.correction}
            placeholder={formatPlain(correction.value)}
            limits={{ min: 0.85, max: 1.15, unit: '' }}
            onChange={(next) => onChange({ correction: next })}
          />
        </>
      )}
    </div>
  );
}

/** A day with its label. */
export function Day(props: {
  readonly label: string;
  readonly value: string;
  readonly onChange: (date: string) => void;
}) {
  const ids = fieldIds(useId());
  return (
    <Field ids={ids} label={props.label}>
      <DateEntry id={ids.entry} value={props.value} onChange={props.onChange} />
    </Field>
  );
}
