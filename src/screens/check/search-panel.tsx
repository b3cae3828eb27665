/** The guided search: likely causes in twentieths, the next question with the customer's words, and what was answered. */

import { useState } from 'react';
import { guidedSearch } from '../../model/guided-search/guided-search.ts';
import type { BillCheck } from '../../model/shapes/bill-check.ts';
import type { GuidedSearch, NextQuestion, SearchAnswer, TypedAnswer } from '../../model/shapes/guided-search.ts';
import {
  answerSentence,
  customerWords,
  effortSentence,
  inTwenty,
  leadSentence,
  likelyCauseName,
  questionTask,
  searchSentence,
  twentiethsMeaning,
} from '../../words/guided-search.ts';
import { capitalised } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { call } from '../desk.ts';
import { useHousehold } from '../household-context.tsx';
import { Refused } from '../shared/refused.tsx';
import { TextField } from '../shared/text-field.tsx';
import { describeFailure } from '../state/describe-failure.ts';

export function SearchPanel({ check }: { readonly check: BillCheck }) {
  const { reload } = useHousehold();
  const [busy, setBusy] = useState(false);
  const [failure, setFailure] = useState<string | null>(null);
  const search = guidedSearch(check);
  const answers = check.input.answers ?? [];
  const keep = async (next: readonly SearchAnswer[]) => {
    setBusy(true);
    setFailure(null);
    try {
      await call('check.answer', { checkId: check.id, answers: next as TypedAnswer[] });
      await reload();
    } catch (reason) {
      setFailure(describeFailure(reason));
    } finally {
      setBusy(false);
    }
  };
  return (
    <section className="stack" aria-labelledby="search-head" aria-busy={busy}>
      <h3 id="search-head">{say('Guided search')}</h3>
      <p role="status">{searchSentence(search)}</p>
      <div className="search-two">
        {search.causes.length > 0 ? <Causes search={search} /> : null}
        <div className="stack">
          {search.next.map((next, index) => (
            <Question
              key={next.question}
              next={next}
              isFirst={index === 0}
              busy={busy}
              onAnswer={(answer) => keep([...answers, answer])}
            />
          ))}
        </div>
      </div>
      {answers.length > 0 ? <Answered answers={answers} busy={busy} onKeep={keep} /> : null}
      <Refused text={failure} />
    </section>
  );
}

function Causes({ search }: { readonly search: GuidedSearch }) {
  return (
    <div>
      <table className="search-causes">
        <caption>{say('Likely causes')}</caption>
        <tbody>
          {search.causes.map(({ cause, twentieths }) => (
            <tr key={cause}>
              <th scope="row">{capitalised(likelyCauseName(cause))}</th>
              <td className="number">{inTwenty(twentieths)}</td>
              <td aria-hidden="true">
                <span className="search-bar" style={{ width: `${twentieths * 5}%` }} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <p className="quiet small">{twentiethsMeaning()}</p>
    </div>
  );
}

function Question(props: {
  readonly next: NextQuestion;
  readonly isFirst: boolean;
  readonly busy: boolean;
  readonly onAnswer: (answer: SearchAnswer) => void;
}) {
  const { next, isFirst, busy, onAnswer } = props;
  const { question, who } = next;
  const [read, setRead] = useState('');
  return (
    <div className="search-question">
      <h4>{isFirst ? say('Next question') : say('Or this one')}</h4>
      <p>{questionTask(question, who)}</p>
      <p className="search-customer">
        {say('Say to the customer: “{words}”', { words: customerWords(question, who) })}
      </p>
      <p className="quiet small">{effortSentence(next)}</p>
      <TextField label={say('What was read or told, if you like')} maxLength={120} value={read} onChange={setRead} />
      <ul className="search-outcomes" aria-label={say('What came out of it?')}>
        {next.outcomes.map((one) => (
          <li key={one.outcome}>
            <button
              type="button"
              disabled={busy}
              onClick={() =>
                onAnswer({ question, outcome: one.outcome, ...(read.trim() === '' ? {} : { read: read.trim() }) })
              }
            >
              {leadSentence(question, one)}
            </button>
          </li>
        ))}
      </ul>
    </div>
  );
}

function Answered(props: {
  readonly answers: readonly SearchAnswer[];
  readonly busy: boolean;
  readonly onKeep: (answers: readonly SearchAnswer[]) => void;
}) {
  const { answers, busy, onKeep } = props;
  return (
    <div>
      <h4>{say('Answered so far')}</h4>
      <ul className="checks">
        {answers.map((answer) => (
          <li key={answer.question}>
            <span>{answerSentence(answer)}</span>
            <button
              type="button"
              className="plain"
              disabled={busy}
              onClick={() => onKeep(answers.filter((one) => one !== answer))}
            >
              {say('Remove this answer')}
              <span className="unseen">: {questionTask(answer.question)}</span>
            </button>
          </li>
        ))}
      </ul>
    </div>
  );
}
