import { type ReactNode, useId } from 'react';
import { GradeMark } from '../../charts/grade-mark.tsx';
import { Reworded } from '../../charts/reworded.tsx';
import type { CivilDate } from '../../model/shapes/dates.ts';
import type { Given } from '../../model/shapes/household.ts';
import { say } from '../../words/say.ts';
import { sayTold } from '../../words/say-told.ts';
import { describedBy, Field, fieldIds } from './field.tsx';
import { type Fallback, regrade, sentenceOf, shortSource, typeGiven } from './given.ts';
import { GradePicker } from './grade-picker.tsx';
import type { NumberLimits } from './number-text.ts';
import { useNumberText } from './use-number-text.ts';

/**
 * A number with its grade. Empty means the fallback holds, shown as a placeholder with the open circle and its source.
 * `scale` is how many of the field's units make one of the model's: 100 for an efficiency typed in per cent.
 */
export function GivenField(props: {
  readonly label: string;
  readonly given: Given<number> | undefined;
  readonly limits: NumberLimits;
  readonly today: CivilDate;
  readonly fallback?: Fallback;
  readonly scale?: number;
  readonly help?: ReactNode;
  readonly onChange: (given: Given<number> | undefined) => void;
}) {
  const { given, fallback, scale = 1 } = props;
  const ids = fieldIds(useId());
  const shown = given === undefined ? undefined : Number((given.value * scale).toPrecision(12));
  const entry = useNumberText(shown, props.limits, (value) =>
    props.onChange(value === undefined ? undefined : typeGiven(value / scale, given, props.today)),
  );
  const note = (
    <>
      {props.help ? <span className="field-help">{props.help} </span> : null}
      <span>
        {given ? (
          <Reworded text={given.origin} as={sentenceOf} />
        ) : fallback ? (
          say('Assumed: {source}', { source: sayTold(shortSource(fallback.source)) })
        ) : props.help ? (
          ''
        ) : (
          say('Not given.')
        )}
      </span>
    </>
  );
  return (
    <Field ids={ids} label={props.label} note={note} refusal={entry.refusal}>
      <span className="with-unit">
        <input
          id={ids.entry}
          type="text"
          inputMode="decimal"
          autoComplete="off"
          value={entry.text}
          placeholder={fallback?.text ?? ''}
          aria-invalid={entry.refusal !== null || undefined}
          aria-describedby={describedBy(ids, true, entry.refusal !== null)}
          onChange={(event) => entry.type(event.target.value)}
        />
        {props.limits.unit ? <span className="unit">{sayTold(props.limits.unit)}</span> : null}
      </span>
      {given ? (
        <GradePicker
          about={props.label}
          value={given.grade}
          onChange={(grade) => props.onChange(regrade(given, grade))}
        />
      ) : (
        <span className="grade-default">
          <GradeMark grade={fallback ? 'assumed' : 'missing'} />
        </span>
      )}
    </Field>
  );
}
