/** The customer's questions with their answers, as a sheet of its own or as a part of the household's paper. */
import type { CivilDate } from '../model/shapes/dates.ts';
import { type Answer, factAge } from '../words/asked.ts';
import { longDate } from '../words/numbers.ts';
import { say } from '../words/say.ts';
import { renderDocument, shorten } from './document.tsx';
import { Origin } from './origin.tsx';
import type { DocumentSettings } from './parts.ts';

function AnswerList({ answers, today }: { readonly answers: readonly Answer[]; readonly today: CivilDate }) {
  return answers.map(({ id, question, answer, caution, fact }) => (
    <div key={id} className="answer">
      <h3>{question}</h3>
      <p>
        {answer} {caution ? <strong>{caution}</strong> : null}
      </p>
      <p className="quiet small">
        {factAge(fact, today)} {fact.provenance === 'memory' ? null : <Origin text={fact.source} />}
      </p>
    </div>
  ));
}

export function renderQuestions(sheet: {
  readonly name: string;
  readonly answers: readonly Answer[];
  readonly today: CivilDate;
  readonly settings: DocumentSettings;
}): string {
  const { name, answers, today, settings } = sheet;
  const contact = [settings.installerName, ...settings.installerContact.split('\n')].filter(Boolean).join(', ');
  return renderDocument({
    title: say('{name}: questions and answers', { name }),
    foot: say('Questions and answers · {date} · {name}', { date: longDate(today), name: shorten(name, 34) }),
    settings,
    children: (
      <section className="first">
        <div className="letterhead">
          <span className="sender">{settings.installerName}</span>
          <span>{longDate(today)}</span>
        </div>
        <h1 className="long">{say('{name}: questions and answers', { name })}</h1>
        <AnswerList answers={answers} today={today} />
        <p className="call">
          <strong>{say('Call:')}</strong> {contact || <span className="blank" />}
        </p>
      </section>
    ),
  });
}
