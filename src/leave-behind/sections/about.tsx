import { Said } from '../../charts/said.tsx';
import { carriersOf, type PriceBasis } from '../../model/shapes/appraisal.ts';
import { FUEL_IDS, type Fuel } from '../../model/shapes/heating.ts';
import { earlierRuleSentence, estimateMeaning, guaranteeSentence, limitsSentences } from '../../words/estimate.ts';
import { capitalised, degrees, grouped, longDate } from '../../words/numbers.ts';
import { nameOfPrice, priceNotes } from '../../words/prices.ts';
import { say } from '../../words/say.ts';
import { carrierName } from '../../words/systems.ts';
import { Origin } from '../origin.tsx';
import type { EstimateParts } from '../parts.ts';

/** What a unit costs, of when and from where; a source that is named in English is marked so. */
function PriceText({ basis }: { readonly basis: PriceBasis }) {
  const { from, to, kind } = basis;
  const named = {
    name: <Origin text={nameOfPrice(basis)} />,
    from: longDate(from),
    origin: <Origin text={basis.origin} />,
  };
  return (
    <>
      {kind === 'typed' ? (
        <Said text="{name}, without a date, used for {from}. {origin}." with={named} />
      ) : to ? (
        <Said text="{name}, prices of {from} to {to}. {origin}." with={{ ...named, to: longDate(to) }} />
      ) : (
        <Said text="{name}, prices from {from} on. {origin}." with={named} />
      )}
      {priceNotes(basis).map((note) => ` ${note}`)}
    </>
  );
}

/** Number, date, model and prices: what somebody needs who wants to do the sums again. */
export function AboutPart({ parts }: { readonly parts: EstimateParts }) {
  const { estimate, settings, appraisal, present } = parts;
  const carriers = carriersOf(appraisal);
  const twoRate = appraisal.prices['two-rate'];
  return (
    <>
      <dl className="facts">
        <dt>{say('Home')}</dt>
        <dd>{[estimate.household.name, estimate.household.jobNumber].filter(Boolean).join(', ')}</dd>
        {estimate.note ? (
          <>
            <dt>{say('Note')}</dt>
            <dd>{estimate.note}</dd>
          </>
        ) : null}
        <dt>{say('Electricity')}</dt>
        <dd>
          <PriceText basis={appraisal.prices.electricity} />
        </dd>
        {twoRate ? (
          <>
            <dt>{say('Electricity by day and night')}</dt>
            <dd>
              <PriceText basis={twoRate} />
            </dd>
          </>
        ) : null}
        {FUEL_IDS.filter((fuel) => carriers.has(fuel) || (!present && fuel === 'gas')).map((fuel) => (
          <FuelFact key={fuel} fuel={fuel} basis={appraisal.prices[fuel]} />
        ))}
        <dt>{say('Weather')}</dt>
        <dd>
          {say('typical year of {region}, {days} degree days to {base}', {
            region: appraisal.climate.regionName,
            days: grouped(appraisal.climate.degreeDays),
            base: degrees(appraisal.climate.baseC),
          })}
        </dd>
        <dt>{say('Worked out by')}</dt>
        <dd>
          {say('Plainwarmth, model {version}, as of {date}', {
            version: appraisal.modelVersion,
            date: longDate(appraisal.asOf),
          })}{' '}
          {earlierRuleSentence(appraisal)}
        </dd>
        {settings.installerName ? (
          <>
            <dt>{say('From')}</dt>
            <dd style={{ whiteSpace: 'pre-line' }}>
              {[settings.installerName, settings.installerContact].filter(Boolean).join('\n')}
            </dd>
          </>
        ) : null}
      </dl>
      <p className="plain">
        {[
          guaranteeSentence(),
          estimateMeaning(),
          ...limitsSentences(),
          say('What it costs to put the heating in is not part of these figures.'),
        ].join(' ')}
      </p>
    </>
  );
}

function FuelFact({ fuel, basis }: { readonly fuel: Fuel; readonly basis: PriceBasis | undefined }) {
  return basis ? (
    <>
      <dt>{capitalised(carrierName(fuel))}</dt>
      <dd>
        <PriceText basis={basis} />
      </dd>
    </>
  ) : null;
}
