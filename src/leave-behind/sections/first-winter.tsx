import { say } from '../../words/say.ts';
import { callSentences, warningSentence, watchSentences, winterBillSentences } from '../../words/watch.ts';
import type { EstimateParts } from '../parts.ts';

/** What to expect, what to write down and when to call, with this household's own months. */
export function FirstWinterPart({ parts }: { readonly parts: EstimateParts }) {
  const { pump, settings } = parts;
  const { bought } = pump;
  const contact = [settings.installerName, ...settings.installerContact.split('\n')].filter(Boolean).join(', ');
  return (
    <section>
      <h2>{say('Your first winter')}</h2>
      <h3>{say('What to expect')}</h3>
      <ul className="steps">
        {winterBillSentences(pump).map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
        <li>{say('Your electricity bill also holds everything else you use at home.')}</li>
        <li>
          {say(
            'The warmth is steady. Radiators feel warm, not hot, and the machine runs for long hours. That is how it should be.',
          )}
        </li>
        <li>{say('A new house or a new floor dries out in its first winter and can need more heat than later.')}</li>
      </ul>
      <h3>{say('What to do')}</h3>
      <ul className="steps">
        {watchSentences().map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
        <li>
          {say(
            'After the winter we hold your bill against this paper, and show what the weather, the price and the rest did.',
          )}
        </li>
      </ul>
      <h3>{say('When to call')}</h3>
      <ul className="steps">
        {callSentences().map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
        <li>{warningSentence(bought.high)}</li>
      </ul>
      {contact ? <p className="plain">{contact}</p> : null}
    </section>
  );
}
