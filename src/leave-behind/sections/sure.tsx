import { spokenPounds } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { systemInSentence } from '../../words/systems.ts';
import type { EstimateParts } from '../parts.ts';

/** The twenty futures behind the dots, written out. */
export function FuturesPart({ parts }: { readonly parts: EstimateParts }) {
  const { versus, beside } = parts;
  if (!versus || !beside) return null;
  return (
    <section className="follows">
      <h2>{say('Twenty futures')}</h2>
      <p className="plain">
        {say('Compared with {other}.', { other: systemInSentence(beside.id, beside.kind) })}{' '}
        {say('Worst to best for the heat pump, a year: {list}.', {
          list: versus.twenty.map(sayDifference).join(', '),
        })}
      </p>
    </section>
  );
}

function sayDifference(pence: number): string {
  const amount = spokenPounds(Math.abs(pence));
  if (pence === 0) return say('the same');
  return pence < 0 ? say('{amount} more', { amount }) : say('{amount} less', { amount });
}
