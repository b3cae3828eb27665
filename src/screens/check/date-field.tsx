import { useId } from 'react';
import { Field, fieldIds } from '../shared/field.tsx';

export function DateField(props: {
  readonly label: string;
  readonly value: string;
  readonly onChange: (value: string) => void;
}) {
  const ids = fieldIds(useId());
  return (
    <Field ids={ids} label={props.label}>
      <input id={ids.entry} type="date" value={props.value} onChange={(event) => props.onChange(event.target.value)} />
    </Field>
  );
}
