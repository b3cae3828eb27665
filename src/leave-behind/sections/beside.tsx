import { TwentyPicture } from '../../charts/twenty/picture.tsx';
import { twentySentence } from '../../charts/twenty/sentence.ts';
import { pickForPicture } from '../../model/comparison/beside.ts';
import { mayLead } from '../../model/shapes/lifetime.ts';
import { breakEvenSentence, gasStandingSentence, winterSentence, yearToYearSentence } from '../../words/cost.ts';
import { purchaseSentences } from '../../words/lifetime.ts';
import { factor, poundsRange, spokenCount } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { dotsSentence, driversSentence } from '../../words/sure.ts';
import { systemInSentence } from '../../words/systems.ts';
import { PAPER_WIDTH, ROWS_IN_PICTURE } from '../paper.ts';
import type { EstimateParts } from '../parts.ts';
import { CostTable } from './cost-table.tsx';
import { OffersPart } from './offers.tsx';

/** The second page: the heat pump beside what else this home could have, how often it comes out ahead, and what it costs to put in. */
export function BesidePart({ parts }: { readonly parts: EstimateParts }) {
  const { appraisal, beside, pump, versus, estimate } = parts;
  const fuel = beside && beside.carrier !== 'electricity' ? beside : null;
  return (
    <section>
      <h2>{say('Beside the other ways of heating')}</h2>
      <p className="plain">
        {say('All of them give the same heat in a typical year, {count} kWh.', {
          count: spokenCount(appraisal.demand.total.value),
        })}{' '}
        {fuel
          ? say('The heat pump causes about {pump} kg of CO₂ a year, {other} {otherKg} kg.', {
              pump: spokenCount(pump.carbonKg.value),
              other: systemInSentence(fuel.id, fuel.kind),
              otherKg: spokenCount(fuel.carbonKg.value),
            })
          : ''}
      </p>
      <CostTable
        parts={parts}
        systems={pickForPicture(appraisal, estimate.household, ROWS_IN_PICTURE)}
        last={say('8 in 10 homes inside')}
        lastOf={({ cost }) => poundsRange(cost.low, cost.high)}
      />
      <p className="plain quiet">{gasStandingSentence(appraisal, estimate.household)}</p>
      <OffersPart parts={parts} />
      {versus && beside ? (
        <>
          <h3>{say('How often it costs less')}</h3>
          <p className="plain">
            {twentySentence(versus.twenty)} {dotsSentence()}
          </p>
          <figure>
            <div role="img" aria-label={twentySentence(versus.twenty)}>
              <TwentyPicture savingsPence={versus.twenty} size="paper" width={PAPER_WIDTH} height={100} />
            </div>
            <figcaption>
              {say('Compared with {other}.', { other: systemInSentence(beside.id, beside.kind) })}{' '}
              {driversSentence(appraisal.drivers)}
            </figcaption>
          </figure>
        </>
      ) : null}
      <h3>{say('In another winter, and where both cost the same')}</h3>
      <ul className="steps">
        {[
          winterSentence(pump),
          yearToYearSentence(pump),
          versus && beside
            ? `${breakEvenSentence(versus, beside.kind)} ${say('Here it is {factor}.', { factor: factor(appraisal.machine.whole.value) })}`
            : '',
        ]
          .filter(Boolean)
          .map((sentences) => (
            <li key={sentences}>{sentences}</li>
          ))}
      </ul>
      <PurchasePart parts={parts} />
    </section>
  );
}

/** Price, grant and payback, where they are known; the years one by one stand in the working. */
function PurchasePart({ parts }: { readonly parts: EstimateParts }) {
  const { lifetime, offers } = parts.estimate;
  // Each of several offers has its own price, and they stand in their own table.
  if (!lifetime || !mayLead(lifetime) || offers) return null;
  return (
    <>
      <h3>{say('Putting it in, and the years to come')}</h3>
      <p className="plain">{purchaseSentences(lifetime).join(' ')}</p>
    </>
  );
}
