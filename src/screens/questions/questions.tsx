/** The customer's questions over whatever page is open: Q shows them, the letter beside one its answer. */
import { useEffect, useState } from 'react';
import { Reworded } from '../../charts/reworded.tsx';
import { QUESTION_IDS, type QuestionId } from '../../model/shapes/customer-question.ts';
import { customerFacts } from '../../reference/customer-facts.ts';
import { type Answer, answerQuestions, factAge, isOldFact } from '../../words/asked.ts';
import { say } from '../../words/say.ts';
import { call, saveFile } from '../desk.ts';
import { useHousehold } from '../household-context.tsx';
import { TickField } from '../shared/choice-field.tsx';
import { Dialog } from '../shared/dialog.tsx';
import { describeFailure } from '../state/describe-failure.ts';
import './questions.css';
import { Refused } from '../shared/refused.tsx';

const FIRST_LETTER = 'a'.charCodeAt(0);
const letterOf = (index: number) => String.fromCharCode(FIRST_LETTER + index);
const isEntry = (target: EventTarget | null) =>
  target instanceof HTMLElement && target.matches('input, select, textarea, [contenteditable]');

export function Questions() {
  const [open, setOpen] = useState(false);
  useEffect(() => {
    const onKeyDown = (event: KeyboardEvent) => {
      if (event.key.toLowerCase() !== 'q' || event.ctrlKey || event.metaKey || event.altKey) return;
      if (isEntry(event.target) || document.querySelector('dialog[open]')) return;
      event.preventDefault();
      setOpen(true);
    };
    window.addEventListener('keydown', onKeyDown);
    return () => window.removeEventListener('keydown', onKeyDown);
  }, []);
  return (
    <>
      <button type="button" className="plain questions-open screen-only" onClick={() => setOpen(true)}>
        {say('Questions (Q)')}
      </button>
      {open ? <QuestionsDialog onClose={() => setOpen(false)} /> : null}
    </>
  );
}

function QuestionsDialog({ onClose }: { readonly onClose: () => void }) {
  const { household, appraisal, today, change } = useHousehold();
  const [shown, setShown] = useState<QuestionId | null>(null);
  const answers = answerQuestions({ household, appraisal }, customerFacts);
  const one = answers.find(({ id }) => id === shown);
  const asked = household.asked ?? [];
  // On the window, since the focus may stand on the dialog's own button.
  useEffect(() => {
    const onKeyDown = (event: KeyboardEvent) => {
      if (event.ctrlKey || event.metaKey || event.altKey) return;
      const found = QUESTION_IDS[event.key.length === 1 ? event.key.toLowerCase().charCodeAt(0) - FIRST_LETTER : -1];
      if (event.key === 'Backspace') setShown(null);
      else if (found) setShown(found);
      else return;
      event.preventDefault();
    };
    window.addEventListener('keydown', onKeyDown);
    return () => window.removeEventListener('keydown', onKeyDown);
  }, []);
  const note = (id: QuestionId, isAsked: boolean) =>
    change((before) => {
      const others = (before.asked ?? []).filter((other) => other !== id);
      return { ...before, asked: isAsked ? [...others, id] : others };
    });
  return (
    <Dialog title={one ? one.question : say('What customers ask')} onClose={onClose}>
      <div className="customer-questions">
        {one ? (
          <>
            <AnswerView answer={one} today={today} />
            <TickField
              label={say('Asked at the table: print it in the household’s paper')}
              checked={asked.includes(one.id)}
              onChange={(isAsked) => note(one.id, isAsked)}
            />
            <p className="actions">
              <button type="button" onClick={() => setShown(null)}>
                {say('All questions')}
              </button>
            </p>
          </>
        ) : (
          <>
            <ul className="questions-list">
              {answers.map(({ id, question, fact }, index) => (
                <li key={id}>
                  <button type="button" className="plain" onClick={() => setShown(id)}>
                    <kbd>{letterOf(index)}</kbd> {question}
                    {asked.includes(id) ? ` ${say('(asked)')}` : ''}
                    {isOldFact(fact, today) ? ` ${say('(old: look it up)')}` : ''}
                  </button>
                </li>
              ))}
            </ul>
            <PrintButtons all={answers.map(({ id }) => id)} asked={asked} />
          </>
        )}
      </div>
    </Dialog>
  );
}

function AnswerView({ answer, today }: { readonly answer: Answer; readonly today: string }) {
  const { adds, never, caution, fact } = answer;
  return (
    <>
      <p className="voice questions-answer">{answer.answer}</p>
      {caution ? <p className="questions-caution">{caution}</p> : null}
      <dl className="facts">
        <dt>{say('The installer adds')}</dt>
        <dd>{adds}</dd>
        {never ? (
          <>
            <dt>{say('Nobody can say for certain')}</dt>
            <dd>{never}</dd>
          </>
        ) : null}
      </dl>
      <p className={isOldFact(fact, today) ? 'questions-caution' : 'quiet small'}>{factAge(fact, today)}</p>
      {fact.source ? (
        <details className="small">
          <summary>{say('How we know')}</summary>
          <Reworded text={fact.source} />
        </details>
      ) : null}
    </>
  );
}

function PrintButtons({ all, asked }: { readonly all: readonly QuestionId[]; readonly asked: readonly string[] }) {
  const { household, tell } = useHousehold();
  const [failure, setFailure] = useState('');
  const print = async (ids: readonly string[]) => {
    setFailure('');
    try {
      const file = await call('questions.print', { householdId: household.id, ids: [...ids], format: 'pdf' });
      if (await saveFile(file)) tell(say('{fileName} is saved.', { fileName: file.fileName }));
    } catch (reason) {
      setFailure(describeFailure(reason));
    }
  };
  return (
    <>
      <p className="actions">
        {asked.length > 0 ? (
          <button type="button" className="main" onClick={() => print(asked)}>
            {say('Print what was asked')}
          </button>
        ) : null}
        <button type="button" onClick={() => print(all)}>
          {say('Print all answers')}
        </button>
      </p>
      <Refused text={failure} />
    </>
  );
}
