import { type ReactNode, useId } from 'react';
import { sayTold } from '../../words/say-told.ts';
import { describedBy, Field, fieldIds } from './field.tsx';
import type { NumberLimits } from './number-text.ts';
import { useNumberText } from './use-number-text.ts';

/** A plain number without a grade, such as a price in the tariff editor. */
export function NumberField(props: {
  readonly label: string;
  readonly value: number | undefined;
  readonly limits: NumberLimits;
  readonly onChange: (value: number | undefined) => void;
  readonly placeholder?: string;
  readonly note?: ReactNode;
}) {
  const ids = fieldIds(useId());
  const entry = useNumberText(props.value, props.limits, props.onChange);
  return (
    <Field ids={ids} label={props.label} note={props.note} refusal={entry.refusal}>
      <span className="with-unit">
        <input
          id={ids.entry}
          type="text"
          inputMode="decimal"
          autoComplete="off"
          value={entry.text}
          placeholder={props.placeholder}
          aria-invalid={entry.refusal !== null || undefined}
          aria-describedby={describedBy(ids, props.note !== undefined, entry.refusal !== null)}
          onChange={(event) => entry.type(event.target.value)}
        />
        {props.limits.unit ? <span className="unit">{sayTold(props.limits.unit)}</span> : null}
      </span>
    </Field>
  );
}
