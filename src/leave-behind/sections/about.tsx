import type { Appraisal } from '../../model/appraisal/appraisal.ts';
import { longDate } from '../../words/numbers.ts';
import { limitsSentences, promiseMeaning } from '../../words/promise.ts';
import type { PromiseParts } from '../parts.ts';

function priceText(basis: Appraisal['prices']['electricity']): string {
  const span = basis.to ? `${longDate(basis.from)} to ${longDate(basis.to)}` : `from ${longDate(basis.from)} on`;
  const stale = basis.staleDays ? ` They had ended ${basis.staleDays} days before this paper was made.` : '';
  return `${basis.name}, prices of ${span}. ${basis.origin}.${stale}`.replaceAll('..', '.');
}

/** Number, date, model and prices: what somebody needs who wants to do the sums again. */
export function AboutPart({ parts }: { readonly parts: PromiseParts }) {
  const { promise, settings, appraisal, madeOn, present, pump, beside } = parts;
  const carriers = new Set([pump, ...(beside ? [beside] : [])].map((system) => system.carrier));
  return (
    <section className="follows whole">
      <h2>About this paper</h2>
      <dl className="facts">
        <dt>Promise</dt>
        <dd>
          number {promise.number}, {longDate(madeOn)}, {promise.id}
        </dd>
        <dt>Home</dt>
        <dd>{[promise.household.name, promise.household.jobNumber].filter(Boolean).join(', ')}</dd>
        {promise.note ? (
          <>
            <dt>Note</dt>
            <dd>{promise.note}</dd>
          </>
        ) : null}
        <dt>Electricity</dt>
        <dd>{priceText(appraisal.prices.electricity)}</dd>
        {(['gas', 'oil', 'lpg'] as const)
          .filter((fuel) => carriers.has(fuel) || (!present && fuel === 'gas'))
          .map((fuel) => (
            <FuelFact key={fuel} fuel={fuel} text={priceText(appraisal.prices[fuel])} />
          ))}
        <dt>Weather</dt>
        <dd>
          typical year of {appraisal.climate.regionName},{' '}
          {Math.round(appraisal.climate.degreeDays).toLocaleString('en-GB')} degree days to {appraisal.climate.baseC} °C
        </dd>
        <dt>Reckoned by</dt>
        <dd>
          Plainwarmth, model {appraisal.modelVersion}, as of {longDate(appraisal.asOf)}
        </dd>
        {settings.installerName ? (
          <>
            <dt>From</dt>
            <dd style={{ whiteSpace: 'pre-line' }}>
              {[settings.installerName, settings.installerContact].filter(Boolean).join('\n')}
            </dd>
          </>
        ) : null}
      </dl>
      <p className="plain">
        {[
          promiseMeaning(),
          ...limitsSentences(),
          'What it costs to put the heating in is not part of these figures.',
        ].join(' ')}
      </p>
    </section>
  );
}

const FUELS = { gas: 'Gas', oil: 'Oil', lpg: 'LPG' } as const;

function FuelFact({ fuel, text }: { readonly fuel: keyof typeof FUELS; readonly text: string }) {
  return (
    <>
      <dt>{FUELS[fuel]}</dt>
      <dd>{text}</dd>
    </>
  );
}
