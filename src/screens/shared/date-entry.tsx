import { type KeyboardEvent, useState } from 'react';
import { say } from '../../words/say.ts';
import { readDate, showDate } from './date-text.ts';

/**
 * A day typed as text. Leaving the entry rewrites it with the month's name, so that day and month cannot be mistaken;
 * the browser's own date entry follows the language of the computer, which may put the month first.
 */
export function DateEntry(props: {
  readonly id?: string;
  readonly label?: string;
  readonly value: string;
  readonly invalid?: boolean | undefined;
  readonly describedBy?: string | undefined;
  readonly onChange: (date: string) => void;
  readonly onKeyDown?: (event: KeyboardEvent) => void;
}) {
  const { value } = props;
  const [text, setText] = useState(showDate(value));
  const [seen, setSeen] = useState(value);
  const inText = dateOrText(text);
  if (seen !== value) {
    setSeen(value);
    if (value !== inText) setText(showDate(value));
  }
  return (
    <input
      id={props.id}
      type="text"
      className="date-entry"
      autoComplete="off"
      placeholder={say('day/month/year')}
      aria-label={props.label}
      aria-invalid={props.invalid || readDate(text).kind === 'no day' ? true : undefined}
      aria-describedby={props.describedBy}
      value={text}
      onChange={(event) => {
        setText(event.target.value);
        props.onChange(dateOrText(event.target.value));
      }}
      onBlur={() => setText(showDate(text))}
      onKeyDown={props.onKeyDown}
    />
  );
}

/** The day as the model writes it; what is no day is handed on as it stands, so that it can be refused in words. */
function dateOrText(text: string): string {
  const reading = readDate(text);
  return reading.kind === 'day' ? reading.date : reading.kind === 'empty' ? '' : reading.text;
}
