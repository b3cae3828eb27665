import { type ChangeEvent, useId } from 'react';
import type { WhatIf } from '../../model/shapes/appraisal.ts';
import { say } from '../../words/say.ts';
import { useNumberText } from '../shared/use-number-text.ts';
import { type Knob, WINTERS } from './knobs.ts';

interface SliderProps {
  readonly knob: Knob;
  readonly whatIf: WhatIf;
  readonly onTurn: (knob: Knob, value: number) => void;
}

/** One slider with its typed field beside it; the winter has words for a field. */
export function WhatIfSlider({ knob, whatIf, onTurn }: SliderProps) {
  const id = useId();
  const value = knob.read(whatIf);
  const slide = (event: ChangeEvent<HTMLInputElement>) => onTurn(knob, Number(event.target.value));
  const changed = value !== knob.today;
  return (
    <div className={changed ? 'knob knob-changed' : 'knob'}>
      <label htmlFor={id}>{knob.label}</label>
      {knob.name === 'winter' ? (
        <WinterField knob={knob} value={value} onTurn={onTurn} />
      ) : (
        <NumberEntry knob={knob} value={value} onTurn={onTurn} />
      )}
      <input
        id={id}
        type="range"
        min={knob.min}
        max={knob.max}
        step={knob.step}
        value={value}
        aria-valuetext={knob.say(value)}
        onChange={slide}
      />
    </div>
  );
}

interface EntryProps {
  readonly knob: Knob;
  readonly value: number;
  readonly onTurn: (knob: Knob, value: number) => void;
}

function NumberEntry({ knob, value, onTurn }: EntryProps) {
  const limits = { min: knob.min, max: knob.max, unit: knob.unit };
  const entry = useNumberText(value, limits, (typed) => onTurn(knob, typed ?? knob.today));
  const id = useId();
  return (
    <>
      <span className="knob-entry">
        <input
          type="text"
          inputMode="decimal"
          autoComplete="off"
          aria-label={`${knob.label}, ${knob.unit}`}
          aria-invalid={entry.refusal !== null || undefined}
          aria-describedby={entry.refusal === null ? undefined : id}
          value={entry.text}
          onChange={(event) => entry.type(event.target.value)}
        />
        <span aria-hidden="true">{knob.unit}</span>
      </span>
      {entry.refusal === null ? null : (
        <p className="field-refusal knob-refusal" id={id} role="alert">
          {entry.refusal}
        </p>
      )}
    </>
  );
}

function WinterField({ knob, value, onTurn }: EntryProps) {
  return (
    <span className="knob-entry">
      <select aria-label={knob.label} value={value} onChange={(event) => onTurn(knob, Number(event.target.value))}>
        {WINTERS.map((winter, index) => (
          <option key={winter} value={index}>
            {say(winter)}
          </option>
        ))}
      </select>
    </span>
  );
}
