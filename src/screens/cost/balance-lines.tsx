import { findSideBySide } from '../../model/comparison/beside.ts';
import type { Appraisal } from '../../model/shapes/appraisal.ts';
import {
  breakEvenSentence,
  differenceSentence,
  gasStandingSentence,
  heatPriceSentence,
  roomHeatPriceSentence,
  winterSentence,
} from '../../words/cost.ts';
import {
  breakEvenWorkings,
  leavingGasWorking,
  roomHeatWorking,
  winterWorkings,
} from '../../words/explained/balance.ts';
import { rangedWorking } from '../../words/explained/ranged.ts';
import { factor, pence } from '../../words/numbers.ts';
import { ratioSentence } from '../../words/prices.ts';
import { say } from '../../words/say.ts';
import { inWords, sayTold } from '../../words/say-told.ts';
import { useHousehold } from '../household-context.tsx';
import { HowWeKnow } from '../shared/how-we-know.tsx';
import { costWorking } from '../shared/name-working.ts';
import { Spoken } from '../shared/spoken.tsx';

/** Where the balance would tip, and what another winter would do. */
export function BalanceLines({ appraisal }: { readonly appraisal: Appraisal }) {
  const { household, openWorking } = useHousehold();
  const standing = gasStandingSentence(appraisal, household);
  const { pump, beside, versus } = findSideBySide(appraisal);
  const { whole } = appraisal.machine;
  const find = () => [
    ...(versus ? [rangedWorking(versus.saving)] : []),
    ...(versus && beside ? breakEvenWorkings(appraisal, pump, beside, versus) : []),
    ...[pump, ...(beside ? [beside] : [])].flatMap((system) =>
      roomHeatWorking(system, inWords('Heat for the rooms. {title}', { title: sayTold(costWorking(system).title) })),
    ),
    ...winterWorkings(pump),
    ...leavingGasWorking(appraisal, pump),
    ...(standing && beside ? [costWorking(beside)] : []),
  ];
  return (
    <section aria-labelledby="balance">
      <h3 id="balance">{say('Break-even')}</h3>
      {versus && beside ? (
        <>
          <p className="explain">{differenceSentence(appraisal)}</p>
          <p className="explain">
            <Spoken
              sentence={`${breakEvenSentence(versus, beside.kind)} ${say('Here it is {factor}.', { factor: factor(whole.value) })}`}
              figures={[{ text: say('is {factor}', { factor: factor(whole.value) }), working: whole.working }]}
              onOpen={openWorking}
            />{' '}
            {beside.carrier === 'electricity'
              ? ''
              : ratioSentence(versus.priceRatio, versus.breakEvenPriceRatio, beside.carrier)}
          </p>
        </>
      ) : null}
      <p className="explain">
        <Spoken
          sentence={heatPriceSentence(appraisal)}
          figures={[
            { text: pence(pump.pencePerKWhHeat.value), working: pump.pencePerKWhHeat.working },
            ...(beside ? [{ text: pence(beside.pencePerKWhHeat.value), working: beside.pencePerKWhHeat.working }] : []),
          ]}
          onOpen={openWorking}
        />{' '}
        {roomHeatPriceSentence(appraisal)}
      </p>
      {standing ? <p className="explain">{standing}</p> : null}
      <p className="explain">
        {winterSentence(pump)} <HowWeKnow find={find} about={say('Break-even')} plain />
      </p>
    </section>
  );
}
