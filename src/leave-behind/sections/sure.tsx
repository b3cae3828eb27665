import { TwentyPicture } from '../../charts/twenty/picture.tsx';
import { twentySentence } from '../../charts/twenty/sentence.ts';
import { poundsRange, spokenPounds } from '../../words/numbers.ts';
import { driversSentence } from '../../words/sure.ts';
import { systemInSentence } from '../../words/systems.ts';
import { PAPER_WIDTH } from '../paper.ts';
import type { PromiseParts } from '../parts.ts';

/** Twenty equally likely futures, counted both ways, and what moves them most. */
export function SurePart({ parts }: { readonly parts: PromiseParts }) {
  const { versus, beside, appraisal, pump, settings } = parts;
  return (
    <section className="follows">
      <h2>How sure we are</h2>
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
              Against {systemInSentence(beside.id, beside.kind)}. Each dot is one future, as likely as any other: a
              different winter, price, factor and way of living.
            </figcaption>
          </figure>
          <p className="plain">
            Worst to best for the heat pump, a year: {versus.twenty.map(sayDifference).join(', ')}.
          </p>
        </>
      ) : (
        <p className="say">We had nothing to hold the heat pump against.</p>
      )}
      <p className="plain">
        In 8 years out of 10 the cost should lie within {poundsRange(pump.cost.low, pump.cost.high)}; in 2 it will not.{' '}
        {driversSentence(appraisal.drivers)}
      </p>
    </section>
  );
}

const sayDifference = (pence: number): string =>
  pence === 0 ? 'the same' : `${spokenPounds(Math.abs(pence))} ${pence < 0 ? 'more' : 'less'}`;
