import { type ReactNode, useId } from 'react';
import { say } from '../../words/say.ts';
import { describedBy, Field, fieldIds } from '../shared/field.tsx';

/** Typed unseen; never kept anywhere. */
export function PassphraseField(props: {
  readonly value: string;
  readonly onChange: (text: string) => void;
  readonly note?: ReactNode;
}) {
  const ids = fieldIds(useId());
  return (
    <Field ids={ids} label={say('Passphrase')} note={props.note} refusal={null}>
      <input
        id={ids.entry}
        type="password"
        autoComplete="off"
        maxLength={200}
        value={props.value}
        aria-describedby={describedBy(ids, props.note !== undefined, false)}
        onChange={(event) => props.onChange(event.target.value)}
      />
    </Field>
  );
}
