import { type ReactNode, useId } from 'react';
import { describedBy, Field, fieldIds } from './field.tsx';

export function TextField(props: {
  readonly label: string;
  readonly value: string;
  readonly onChange: (text: string) => void;
  readonly maxLength: number;
  readonly placeholder?: string;
  readonly note?: ReactNode;
  readonly refusal?: string | null;
  readonly lines?: number;
}) {
  const ids = fieldIds(useId());
  const shared = {
    id: ids.entry,
    value: props.value,
    maxLength: props.maxLength,
    placeholder: props.placeholder,
    'aria-invalid': props.refusal ? true : undefined,
    'aria-describedby': describedBy(ids, props.note !== undefined, Boolean(props.refusal)),
  };
  return (
    <Field ids={ids} label={props.label} note={props.note} refusal={props.refusal}>
      {props.lines === undefined ? (
        <input type="text" {...shared} onChange={(event) => props.onChange(event.target.value)} />
      ) : (
        <textarea rows={props.lines} {...shared} onChange={(event) => props.onChange(event.target.value)} />
      )}
    </Field>
  );
}
