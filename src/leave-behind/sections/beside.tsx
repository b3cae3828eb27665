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

/** Where the choice of tariff stands on the same page: the heat pump, what there is now and one more. */
const ROWS_BESIDE_CHOICE = 3;

/**
 * The second page: the heat pump beside what else this home could have, how often it comes out ahead, and what it costs to put in.
 * Where it also holds the choice of tariff, roof, battery and car, dots, winters and, if need be, the table stand in the working alone.
 */
export function BesidePart({ parts }: { readonly parts: EstimateParts }) {
  const { appraisal, beside, pump, versus, estimate } = parts;
  const fuel = beside && beside.carrier !== 'electricity' ? beside : null;
  const { tariffs } = estimate;
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
      {tariffs && isCrowded(parts) ? null : (
        <CostTable
          parts={parts}
          systems={pickForPicture(appraisal, estimate.household, tariffs ? ROWS_BESIDE_CHOICE : ROWS_IN_PICTURE)}
          last={say('8 in 10 homes inside')}
          lastOf={({ cost }) => poundsRange(cost.low, cost.high)}
        />
      )}
      <p className="plain quiet">{gasStandingSentence(appraisal, estimate.household)}</p>
      <OffersPart parts={parts} />
      {versus && beside && tariffs ? <p className="plain">{twentySentence(versus.twenty)}</p> : null}
      {versus && beside && !tariffs ? (
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
      {tariffs ? null : <OtherWinter parts={parts} />}
      <PurchasePart parts={parts} />
    </section>
  );
}

function OtherWinter({ parts: { pump, versus, beside, appraisal } }: { readonly parts: EstimateParts }) {
  const sentences = [
    winterSentence(pump),
    yearToYearSentence(pump),
    versus && beside
      ? `${breakEvenSentence(versus, beside.kind)} ${say('Here it is {factor}.', { factor: factor(appraisal.machine.whole.value) })}`
      : '',
  ].filter(Boolean);
  return (
    <>
      <h3>{say('In another winter, and where both cost the same')}</h3>
      <ul className="steps">
        {sentences.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
    </>
  );
}

/** Of several offers each has its own price, and they stand in their own table. */
const purchaseOf = ({ estimate: { lifetime, offers } }: EstimateParts) =>
  lifetime && mayLead(lifetime) && !offers ? lifetime : null;

/** Whether offers or a purchase stand on the page of the comparison too. */
export const isCrowded = (parts: EstimateParts): boolean =>
  parts.estimate.offers !== undefined || purchaseOf(parts) !== null;

/** Price, grant and payback, where they are known; the years one by one stand in the working. */
function PurchasePart({ parts }: { readonly parts: EstimateParts }) {
  const lifetime = purchaseOf(parts);
  if (!lifetime) return null;
  return (
    <>
      <h3>{say('Putting it in, and the years to come')}</h3>
      <p className="plain">{purchaseSentences(lifetime).join(' ')}</p>
    </>
  );
}
