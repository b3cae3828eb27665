import { TwentyPicture } from '../../charts/twenty/picture.tsx';
import { twentySentence } from '../../charts/twenty/sentence.ts';
import { paymentSentence, rangeSentence, yearToYearSentence } from '../../words/cost.ts';
import { spokenPounds } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { driversSentence } from '../../words/sure.ts';
import { systemInSentence } from '../../words/systems.ts';
import { PAPER_WIDTH } from '../paper.ts';
import type { EstimateParts } from '../parts.ts';

/** Twenty equally likely futures, counted both ways, and what moves them most. */
export function SurePart({ parts }: { readonly parts: EstimateParts }) {
  const { versus, beside, appraisal, pump, settings } = parts;
  return (
    <section className="follows">
      <h2>{say('How sure we are')}</h2>
      {versus && beside ? (
        <>
          <p className="say">{twentySentence(versus.twenty)}</p>
          <figure>
            <div role="img" aria-label={twentySentence(versus.twenty)}>
              <TwentyPicture
                savingsPence={versus.twenty}
                size="paper"
                width={PAPER_WIDTH}
                height={settings.paper === 'Letter' ? 150 : 190}
              />
            </div>
            <figcaption>
              {say('Against {other}.', { other: systemInSentence(beside.id, beside.kind) })}{' '}
              {say(
                'Each dot is one future, as likely as any other: a different winter, price, factor and way of living.',
              )}
            </figcaption>
          </figure>
          <p className="plain">
            {say('Worst to best for the heat pump, a year: {list}.', {
              list: versus.twenty.map(sayDifference).join(', '),
            })}
          </p>
        </>
      ) : (
        <p className="say">{say('We had nothing to hold the heat pump against.')}</p>
      )}
      <p className="plain">
        {rangeSentence(pump)} {driversSentence(appraisal.drivers)}
      </p>
      <p className="plain">
        {yearToYearSentence(pump)} {paymentSentence(pump)}
      </p>
    </section>
  );
}

function sayDifference(pence: number): string {
  const amount = spokenPounds(Math.abs(pence));
  if (pence === 0) return say('the same');
  return pence < 0 ? say('{amount} more', { amount }) : say('{amount} less', { amount });
}
