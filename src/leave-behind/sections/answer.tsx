import { Said } from '../../charts/said.tsx';
import { SpreadPicture } from '../../charts/spread/picture.tsx';
import { spreadSentence } from '../../charts/spread/sentence.ts';
import { spreadSeries } from '../../charts/spread/series.ts';
import { pickForPicture } from '../../model/comparison/beside.ts';
import { designSentence, paymentSentence, rangeSentence, standing } from '../../words/cost.ts';
import { earlierRuleSentence, guaranteeSentence } from '../../words/estimate.ts';
import { capitalised, monthSpan, pence, spokenPounds } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { systemInSentence, systemNumber } from '../../words/systems.ts';
import { GradeLegend } from '../grade-legend.tsx';
import { Letterhead } from '../letterhead.tsx';
import { PAPER_WIDTH, ROWS_IN_PICTURE } from '../paper.ts';
import type { EstimateParts } from '../parts.ts';
import { StandsOn } from './stands-on.tsx';

/** From here on the heading is set smaller, so that the first page stays one page. */
const LONG_NAME = 36;

/** The first page: what it costs, how sure that is, and what it stands on. */
export function AnswerPart({ parts }: { readonly parts: EstimateParts }) {
  const { estimate, pump, present, beside, appraisal } = parts;
  const { electricity } = appraisal.prices;
  const amount = <strong>{say('{amount} a year', { amount: spokenPounds(pump.cost.value) })}</strong>;
  const more = beside ? pump.cost.value - beside.cost.value : 0;
  const side = beside ? standing(appraisal, beside.id) : 'unknown';
  return (
    <section className="first">
      <Letterhead parts={parts} />
      <h1 className={estimate.household.name.length > LONG_NAME ? 'long' : undefined}>
        {say('What it would cost to heat {name} with a heat pump', { name: estimate.household.name })}
      </h1>
      <p className="say">
        {electricity.staleDays === undefined ? (
          <Said text="About {amount} for rooms and hot water, at today’s electricity price." with={{ amount }} />
        ) : (
          <Said
            text="About {amount} for rooms and hot water, at the electricity price of {months}."
            with={{ amount, months: monthSpan(electricity.from, electricity.to ?? electricity.from) }}
          />
        )}{' '}
        {rangeSentence(pump)}{' '}
        {present
          ? say('{other} {number, select, many {cost} other {costs}} about {amount}.', {
              other: capitalised(systemInSentence(present.id, present.kind)),
              number: systemNumber(present.id, present.kind),
              amount: spokenPounds(present.cost.value),
            })
          : beside
            ? say('With {other} it would be about {amount}.', {
                other: systemInSentence(beside.id, beside.kind),
                amount: spokenPounds(beside.cost.value),
              })
            : ''}{' '}
        {side === 'more'
          ? say('So the heat pump costs about {amount} a year more to run.', { amount: spokenPounds(more) })
          : side === 'about-same'
            ? say('So the two cost about the same to run.')
            : ''}{' '}
        {designSentence(pump)}
      </p>
      <p className="guarantee">
        {guaranteeSentence()} {earlierRuleSentence(appraisal)}
      </p>
      <SpreadFigure parts={parts} />
      <StandsOn parts={parts} />
      <p className="plain quiet">
        {say(
          'A kilowatt-hour (kWh) is the unit on your bill. The seasonal factor is the heat from each kWh of electricity.',
        )}
      </p>
      <p className="plain">{[paymentSentence(pump), ...whatIfSentences(parts)].filter(Boolean).join(' ')}</p>
      <GradeLegend />
    </section>
  );
}

function SpreadFigure({ parts }: { readonly parts: EstimateParts }) {
  const rows = spreadSeries({
    ...parts.appraisal,
    systems: pickForPicture(parts.appraisal, parts.estimate.household, ROWS_IN_PICTURE),
  });
  return (
    <figure>
      <div role="img" aria-label={spreadSentence(rows)}>
        <SpreadPicture rows={rows} size="paper" width={PAPER_WIDTH} height={44 + 48 * rows.length} />
      </div>
      <figcaption>
        {say(
          'Cost of a year. The dot is the sum with the figures below. 8 in 10 homes like yours lie inside the band.',
        )}
      </figcaption>
    </figure>
  );
}

/** A step in the price of a unit that people can picture, pence. */
const PRICE_STEP_PENCE = 5;

function whatIfSentences({ pump }: EstimateParts): string[] {
  const dearer = pump.bought.value * PRICE_STEP_PENCE;
  const colder = pump.coldYearPence - pump.cost.value;
  return [
    dearer > 0
      ? say('If electricity rises by {step} per kWh, add about {amount} a year.', {
          step: pence(PRICE_STEP_PENCE, 0),
          amount: spokenPounds(dearer),
        })
      : '',
    colder > 0
      ? say('A cold winter, met about 1 year in 10, adds about {amount}.', { amount: spokenPounds(colder) })
      : '',
  ];
}
