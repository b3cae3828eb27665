import { useId } from 'react';
import { DateEntry } from '../shared/date-entry.tsx';
import { Field, fieldIds } from '../shared/field.tsx';

export function DateField(props: {
  readonly label: string;
  readonly value: string;
  readonly onChange: (value: string) => void;
}) {
  const ids = fieldIds(useId());
  return (
    <Field ids={ids} label={props.label}>
      <DateEntry id={ids.entry} value={props.value} onChange={props.onChange} />
    </Field>
  );
}
