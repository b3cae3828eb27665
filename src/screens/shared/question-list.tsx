import type { Question } from '../../model/shapes/appraisal.ts';
import { questionWorkings } from '../../words/explained/question.ts';
import { questionSentence } from '../../words/questions.ts';
import { phrase, say } from '../../words/say.ts';
import { useHousehold } from '../household-context.tsx';
import { Glossed } from './glossary-page.tsx';
import { HowWeKnow } from './how-we-know.tsx';

const WEIGHT_ORDER: readonly Question['weight'][] = ['refusal', 'question', 'note'];
const HEADS: { readonly [weight in Question['weight']]: string } = {
  refusal: phrase('To correct'),
  question: phrase('To ask'),
  note: phrase('To know'),
};

/** What the numbers cannot settle at this stage, with likely reasons. */
export function QuestionList(props: { readonly stage: Question['stage'] }) {
  const { appraisal } = useHousehold();
  const here = appraisal.questions.filter((question) => question.stage === props.stage);
  if (here.length === 0) return null;
  const workings = here.flatMap(questionWorkings);
  return (
    <section className="questions">
      {WEIGHT_ORDER.map((weight) => {
        const some = here.filter((question) => question.weight === weight);
        if (some.length === 0) return null;
        return (
          <div key={weight} className={`question-group ${weight}`}>
            <h3>{say(HEADS[weight])}</h3>
            <ul>
              {some.map((question) => (
                <li key={question.code + (question.field ?? '') + JSON.stringify(question.data)}>
                  <Glossed text={questionSentence(question)} />
                </li>
              ))}
            </ul>
          </div>
        );
      })}
      {workings.length > 0 ? <HowWeKnow find={() => workings} about={say('these questions')} plain /> : null}
    </section>
  );
}
