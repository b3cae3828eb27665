import { useState } from 'react';
import { say } from '../../words/say.ts';
import { sayTold } from '../../words/say-told.ts';
import { formatPlain, type NumberLimits, readNumber, refuseNumber, sayNumber } from './number-text.ts';

export interface NumberText {
  readonly text: string;
  readonly refusal: string | null;
  readonly type: (text: string) => void;
}

/**
 * What is typed and what is kept, apart: a refused text stays in the field with its reason,
 * while the last good value stays where it was.
 */
export function useNumberText(
  value: number | undefined,
  limits: NumberLimits,
  onValue: (value: number | undefined) => void,
): NumberText {
  const [text, setText] = useState(value === undefined ? '' : formatPlain(value));
  const [seen, setSeen] = useState(value);
  const reading = readNumber(text);
  const inText = reading.kind === 'number' ? reading.value : undefined;
  if (seen !== value) {
    // The value was changed elsewhere (read again from the desk, or by another field).
    setSeen(value);
    if (value !== inText) setText(value === undefined ? '' : formatPlain(value));
  }
  const refused = refuseNumber(reading, limits);
  const keeps =
    value === undefined
      ? ''
      : ` ${say('{value} is still used.', { value: `${sayNumber(value)} ${sayTold(limits.unit)}`.trim() })}`;
  return {
    text,
    refusal: refused === null ? null : refused + keeps,
    type(next) {
      setText(next);
      const typed = readNumber(next);
      if (refuseNumber(typed, limits) !== null) return;
      onValue(typed.kind === 'number' ? typed.value : undefined);
    },
  };
}
