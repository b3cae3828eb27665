import { useState } from 'react';
import { Reworded } from '../../charts/reworded.tsx';
import type { CivilDate } from '../../model/shapes/dates.ts';
import type { FullMachine } from '../../model/shapes/household.ts';
import { monthNames, shortMonthNames } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { regrade, sentenceOf, typeGiven } from '../shared/given.ts';
import { GradePicker } from '../shared/grade-picker.tsx';
import { formatPlain } from '../shared/number-text.ts';
import { readMonths } from './typed-list.ts';

type Brine = FullMachine['brineMonthlyC'];

/** Brine entering the machine, month by month; what is worked out from the ground stands as placeholder. */
export function BrineMonths(props: {
  readonly given: Brine;
  readonly workedOutC: readonly number[];
  readonly today: CivilDate;
  readonly onChange: (given: Brine) => void;
}) {
  const { given, today } = props;
  const [texts, setTexts] = useState<readonly string[]>(() =>
    monthNames().map((_, m) => (given ? formatPlain(given.value[m]!) : '')),
  );
  const typed = readMonths(texts);
  const set = (month: number, text: string) => {
    const next = texts.map((before, at) => (at === month ? text : before));
    setTexts(next);
    const read = readMonths(next);
    if (read.kind === 'empty') props.onChange(undefined);
    else if (read.kind === 'whole') props.onChange(typeGiven(read.value, given, today));
  };
  return (
    <fieldset className="field">
      <legend className="field-label">{say('Brine entering, month by month, °C')}</legend>
      <div className="brine-months">
        {monthNames().map((name, month) => (
          <label key={name}>
            <span aria-hidden="true">{shortMonthNames()[month]}</span>
            <input
              type="text"
              inputMode="decimal"
              autoComplete="off"
              aria-label={say('Brine in {name}', { name })}
              placeholder={formatPlain(Number(props.workedOutC[month]?.toFixed(1) ?? 0))}
              value={texts[month]}
              onChange={(event) => set(month, event.target.value)}
            />
          </label>
        ))}
      </div>
      {given ? (
        <GradePicker
          about={say('Brine month by month')}
          value={given.grade}
          onChange={(grade) => props.onChange(regrade(given, grade))}
        />
      ) : null}
      {typed.kind === 'wanting' ? (
        <p className="field-refusal" role="alert">
          {typed.sentence}{' '}
          {given
            ? say('The months saved before are still used.')
            : say('Until then the ground temperature is calculated.')}
        </p>
      ) : null}
      <p className="field-note">
        {given ? (
          <>
            <Reworded text={given.origin} as={sentenceOf} />{' '}
            {say('It replaces what follows from the kind and depth of the array.')}
          </>
        ) : (
          say('Measured somewhere near? Then type all twelve. Until then they are worked out from the ground.')
        )}
      </p>
    </fieldset>
  );
}
