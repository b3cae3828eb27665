import { type ReactNode, useId } from 'react';
import { say } from '../../words/say.ts';
import { describedBy, Field, fieldIds } from './field.tsx';

export interface Choice<T extends string> {
  readonly value: T;
  readonly label: string;
}

/** Choices of a table of ours, their labels in the language spoken. */
export const sayChoices = <T extends string>(choices: readonly Choice<T>[]): Choice<T>[] =>
  choices.map(({ value, label }) => ({ value, label: say(label) }));

/** One of several, in a drop-down list. `emptyLabel` says what holds when nothing is chosen. */
export function ChoiceField<T extends string>(props: {
  readonly label: string;
  readonly value: T | undefined;
  readonly choices: readonly Choice<T>[];
  readonly onChange: (value: T | undefined) => void;
  readonly emptyLabel?: string;
  readonly note?: ReactNode;
}) {
  const ids = fieldIds(useId());
  const pick = (text: string) => props.onChange(props.choices.find((choice) => choice.value === text)?.value);
  return (
    <Field ids={ids} label={props.label} note={props.note}>
      <select
        id={ids.entry}
        value={props.value ?? ''}
        aria-describedby={describedBy(ids, props.note !== undefined, false)}
        onChange={(event) => pick(event.target.value)}
      >
        {props.emptyLabel === undefined ? null : <option value="">{props.emptyLabel}</option>}
        {props.choices.map((choice) => (
          <option key={choice.value} value={choice.value}>
            {choice.label}
          </option>
        ))}
      </select>
    </Field>
  );
}

/** One of a few, all in sight: buttons in a row that behave as radio buttons. */
export function PickField<T extends string>(props: {
  readonly label: string;
  readonly value: T;
  readonly choices: readonly Choice<T>[];
  readonly onChange: (value: T) => void;
  readonly note?: ReactNode;
}) {
  const id = useId();
  return (
    <fieldset className="field pick">
      <legend className="field-label">{props.label}</legend>
      <div className="pick-row">
        {props.choices.map((choice) => (
          <label key={choice.value} className="pick-one">
            <input
              type="radio"
              name={id}
              value={choice.value}
              checked={choice.value === props.value}
              onChange={() => props.onChange(choice.value)}
            />
            <span>{choice.label}</span>
          </label>
        ))}
      </div>
      {props.note ? <p className="field-note">{props.note}</p> : null}
    </fieldset>
  );
}

export function TickField(props: {
  readonly label: string;
  readonly checked: boolean;
  readonly onChange: (checked: boolean) => void;
  readonly note?: ReactNode;
}) {
  return (
    <div className="field">
      <label className="tick">
        <input type="checkbox" checked={props.checked} onChange={(event) => props.onChange(event.target.checked)} />
        <span>{props.label}</span>
      </label>
      {props.note ? <p className="field-note">{props.note}</p> : null}
    </div>
  );
}
