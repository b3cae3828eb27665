import { type ReactNode, useId, useLayoutEffect, useRef, useState } from 'react';
import type { IntakeChoices, IntakePreview } from '../../intake/intake.ts';
import type { Remark } from '../../model/shapes/evidence.ts';
import { type Answer, answersTo } from '../../words/remark-answers.ts';
import { remarkSentence } from '../../words/remarks.ts';
import { phrase, say } from '../../words/say.ts';
import { mayBeAnswered } from './preview-voice.ts';

const SHOWN_NOTES = 6;

/** Fields of the choices below, for values that no button can hold. */
const TYPED_BELOW: Readonly<Record<string, string>> = {
  'calorific-assumed': phrase('Calorific value on the bill'),
  'pulses-asked': phrase('Pulses for one kWh'),
};

type OnChoose = (part: IntakeChoices) => void;

/** Refusals and questions, each question with its answers beside it; `oneByOne` where something else has to stay in sight. */
export function PreviewQuestions(props: {
  readonly preview: IntakePreview;
  readonly oneByOne?: boolean;
  readonly onChoose: OnChoose;
}) {
  const { remarks } = props.preview;
  const [turn, setTurn] = useState(0);
  const isTurned = useRef(false);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another question is heard whole, as the first was.
  useLayoutEffect(() => {
    if (isTurned.current) document.querySelector<HTMLElement>('.ask[tabindex]')?.focus();
  }, [turn]);
  const turnOn = (count: number) => {
    isTurned.current = true;
    setTurn((turn + 1) % count);
  };
  const asked = ofWeight(remarks, 'question');
  // A number that is put right may settle the other questions.
  const questions = [...asked.filter(isContradiction), ...asked.filter((remark) => !isContradiction(remark))];
  const count = questions.length;
  // An answered question is gone, so that the next one has its number.
  const shown = props.oneByOne ? questions.slice(turn % Math.max(1, count)).slice(0, 1) : questions;
  return (
    <>
      {(mayBeAnswered(props.preview) ? [] : ofWeight(remarks, 'refusal')).map((remark) => (
        <p className="refusal" key={keyOf(remark)} role="alert" tabIndex={-1}>
          {remarkSentence(remark)}
        </p>
      ))}
      {remarks.filter(isRemembered).map((remark) => (
        <Asked remark={remark} key={keyOf(remark)}>
          <div className="actions">
            <button type="button" onClick={() => props.onChoose({ anew: true })}>
              {say('Decide again from this file')}
            </button>
          </div>
        </Asked>
      ))}
      {shown.map((remark) => (
        <Asked remark={remark} key={keyOf(remark)}>
          <Answers answers={answersTo(remark, props.preview)} onChoose={props.onChoose} />
          {TYPED_BELOW[remark.code] === undefined ? null : (
            <p className="quiet small">
              {say('Another value goes into “{field}” below.', { field: say(TYPED_BELOW[remark.code]!) })}
            </p>
          )}
          {props.oneByOne && count > 1 ? (
            <p className="quiet small">
              {say('Question {number} of {count}', { number: (turn % count) + 1, count })}{' '}
              <button type="button" className="plain" onClick={() => turnOn(count)}>
                {say('Another question first')}
              </button>
            </p>
          ) : null}
        </Asked>
      ))}
    </>
  );
}

/** What is taken until somebody answers is a guess, and is marked as one: it counts once it is pressed. */
function Answers({ answers, onChoose }: { readonly answers: readonly Answer[]; readonly onChoose: OnChoose }) {
  const id = useId();
  const guess = answers.find(({ holds }) => holds);
  return (
    <>
      <div className="actions">
        {answers.map((answer) => (
          <button
            key={answer.label}
            type="button"
            className={answer.holds ? 'guessed' : ''}
            aria-describedby={answer.holds ? id : undefined}
            onClick={() => onChoose(answer.choice)}
          >
            {answer.label}
          </button>
        ))}
      </div>
      {guess ? (
        <p className="quiet small" id={id}>
          {say(
            '“{answer}” is only our guess. {others, plural, =0 {Press it if it is right.} other {Press it if it is right, or press another.}}',
            { answer: guess.label, others: answers.length - 1 },
          )}
        </p>
      ) : null}
    </>
  );
}

/** Heard whole where the focus comes to it, so that no answer is given to a question that was not heard. */
function Asked(props: { readonly remark: Remark; readonly children: ReactNode }) {
  const id = useId();
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset cannot be laid out as this is.
    <div className="ask" role="group" aria-labelledby={id} tabIndex={-1}>
      <p id={id}>{remarkSentence(props.remark)}</p>
      {props.children}
    </div>
  );
}

/** That it is here already, or may be of another home, comes before all else. */
export const PreviewFirst = ({ preview }: { readonly preview: IntakePreview }) =>
  preview.remarks.filter(isFirst).map((remark) => <p key={keyOf(remark)}>{remarkSentence(remark)}</p>);

export function PreviewNotes(props: { readonly preview: IntakePreview }) {
  const notes = ofWeight(props.preview.remarks, 'note').filter((remark) => !isRemembered(remark) && !isFirst(remark));
  if (notes.length === 0) return null;
  const more = notes.slice(SHOWN_NOTES);
  return (
    <details className="notes" open>
      <summary>
        {say('{count, plural, one {One thing to know} other {# things to know}}', { count: notes.length })}
      </summary>
      <NoteList notes={notes.slice(0, SHOWN_NOTES)} />
      {more.length === 0 ? null : (
        <details>
          <summary>{say('{count} more', { count: more.length })}</summary>
          <NoteList notes={more} />
        </details>
      )}
    </details>
  );
}

const NoteList = (props: { readonly notes: readonly Remark[] }) => (
  <ul>
    {props.notes.map((remark) => (
      <li key={keyOf(remark)}>{remarkSentence(remark)}</li>
    ))}
  </ul>
);

const ofWeight = (remarks: readonly Remark[], weight: Remark['weight']) =>
  remarks.filter((remark) => remark.weight === weight);
const isContradiction = ({ code }: Remark) => code === 'paper-contradicted-asked';
const isRemembered = (remark: Remark) => remark.code.startsWith('layout-remembered');
const FIRST: ReadonlySet<string> = new Set(['kept-already', 'added-part', 'records-part-asked']);
const isFirst = ({ code }: Remark) => FIRST.has(code);
const keyOf = (remark: Remark) => `${remark.code} ${remark.row ?? ''} ${remark.column ?? ''} ${remark.found ?? ''}`;
