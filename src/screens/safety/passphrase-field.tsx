import { type ReactNode, useId } from 'react';
import { PASSPHRASE_LETTERS } from '../../desk/limits.ts';
import { say } from '../../words/say.ts';
import { describedBy, Field, fieldIds } from '../shared/field.tsx';

/** Typed unseen; never kept anywhere. */
export function PassphraseField(props: {
  readonly value: string;
  readonly onChange: (text: string) => void;
  readonly label?: string;
  readonly note?: ReactNode;
  readonly refusal?: string | null;
}) {
  const { label = say('Passphrase'), note, refusal = null } = props;
  const ids = fieldIds(useId());
  return (
    <Field ids={ids} label={label} note={note} refusal={refusal}>
      <input
        id={ids.entry}
        type="password"
        autoComplete="off"
        maxLength={PASSPHRASE_LETTERS.most}
        value={props.value}
        aria-describedby={describedBy(ids, note !== undefined, refusal !== null)}
        onChange={(event) => props.onChange(event.target.value)}
      />
    </Field>
  );
}
