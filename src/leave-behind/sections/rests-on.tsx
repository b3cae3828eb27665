import type { ReactNode } from 'react';
import { GradeMark } from '../../charts/grade-mark.tsx';
import { Said } from '../../charts/said.tsx';
import { addDays } from '../../model/calendar/civil.ts';
import { pickForPicture } from '../../model/comparison/beside.ts';
import { type Appraisal, type PriceBasis, priceOf, pricesUsed } from '../../model/shapes/appraisal.ts';
import type { PricedCarrier } from '../../model/shapes/heating.ts';
import type { Grade } from '../../model/shapes/working.ts';
import { customerFacts } from '../../reference/customer-facts.ts';
import { answerQuestions, factAge } from '../../words/asked.ts';
import { limitsSentences } from '../../words/estimate.ts';
import { wayName } from '../../words/heat.ts';
import { capitalised, exactPounds, factor, listed, longDate, pence, spokenCount } from '../../words/numbers.ts';
import { nameOfPrice, priceInShort, priceName, priceNotes, standsSentence } from '../../words/prices.ts';
import { say } from '../../words/say.ts';
import { carrierName } from '../../words/systems.ts';
import { Origin } from '../origin.tsx';
import { ROWS_IN_PICTURE } from '../paper.ts';
import type { EstimateParts } from '../parts.ts';

interface Ground {
  readonly grade: Grade;
  readonly what: string;
  readonly says: ReactNode;
}

/** The last page: where each figure comes from, in plain words and each source by its name. */
export function RestsOnPart({ parts }: { readonly parts: EstimateParts }) {
  return (
    <section>
      <h2>{say('What this rests on')}</h2>
      <table className="rests">
        <tbody>
          {[heat(parts), water(parts), machine(parts), ...prices(parts), service(parts), weather(parts)].map(
            ({ grade, what, says }) => (
              <tr key={what}>
                <th scope="row">
                  <GradeMark grade={grade} size={13} /> {what}
                </th>
                <td>{says}</td>
              </tr>
            ),
          )}
        </tbody>
      </table>
      <p className="plain">
        {[
          ...limitsSentences(),
          say('What it costs to put the heating in is not part of the yearly cost.'),
          say('Every sum stands in a second paper, the working. Ask us for it.'),
        ].join(' ')}{' '}
        {parts.estimate.note}
      </p>
      <AskedPart parts={parts} />
    </section>
  );
}

/** More would push the cautions off the page; the others are on the sheet of questions. */
const MOST_ANSWERS = 3;

/** What was asked at the table, answered in the figures of this estimate. */
function AskedPart({ parts: { estimate, appraisal, madeOn } }: { readonly parts: EstimateParts }) {
  const { household } = estimate;
  const asked = answerQuestions({ household, appraisal }, customerFacts).filter(({ id }) =>
    household.asked?.includes(id),
  );
  if (asked.length === 0) return null;
  const more = asked.length - MOST_ANSWERS;
  return (
    <>
      <h3>{say('What you asked')}</h3>
      {asked.slice(0, MOST_ANSWERS).map(({ id, question, answer, caution, fact }) => (
        <p key={id} className="plain small">
          <strong>{question}</strong> {answer} {caution} <span className="quiet">{factAge(fact, madeOn)}</span>
        </p>
      ))}
      {more > 0 ? (
        <p className="plain small quiet">
          {say('{more, plural, one {One more answer is} other {# more answers are}} on the sheet of questions.', {
            more,
          })}
        </p>
      ) : null}
    </>
  );
}

function heat({ appraisal, estimate, hasRecord }: EstimateParts): Ground {
  const { total, estimates, signature } = appraisal.demand;
  const record = estimate.evidence.find(({ id }) => id === signature?.seriesId);
  const others = estimates.filter(({ way }) => way !== 'record').map(({ way }) => wayName(way));
  const from = record
    ? say('Your own records of {from} to {to}, adjusted to a typical winter.', {
        from: longDate(record.from),
        to: longDate(addDays(record.to, -1)),
      })
    : hasRecord
      ? say('Your own records, adjusted to a typical winter.')
      : say('We had no bills of yours, so this is less sure.');
  return {
    grade: total.grade,
    what: say('Heat'),
    says: [
      say('{count} kWh a year, or {low} to {high}.', {
        count: spokenCount(total.value),
        low: spokenCount(total.low),
        high: spokenCount(total.high),
      }),
      from,
      others.length === 0
        ? ''
        : hasRecord
          ? say('Also used: {ways}.', { ways: listed(others) })
          : say('Used: {ways}.', { ways: listed(others) }),
    ].join(' '),
  };
}

function water({ appraisal, estimate }: EstimateParts): Ground {
  const { water } = appraisal.demand;
  const { home, hotWater } = estimate.household;
  return {
    grade: water.grade,
    what: say('Hot water'),
    says: [
      say('{count} kWh of that heat.', { count: spokenCount(water.value) }),
      hotWater.litresPerDay
        ? say('From the litres a day that you told us.')
        : home.people
          ? say(
              'For {people, plural, one {# person} other {# people}}, by a published method (SAP 10.2, Appendix J).',
              {
                people: home.people.value,
              },
            )
          : say('Nobody told us how many people live here, so it is our own assumption.'),
    ].join(' '),
  };
}

function machine({ appraisal, estimate }: EstimateParts): Ground {
  const { whole, asDesigned, fieldSpread } = appraisal.machine;
  const typed = estimate.household.machine.spaceFactor !== undefined || estimate.household.machine.way === 'full';
  return {
    grade: whole.grade,
    what: say('Heat pump'),
    says: (
      <>
        {say('One kWh of electricity gives {factor} kWh of heat, with hot water and pumps counted.', {
          factor: factor(whole.value),
        })}{' '}
        {asDesigned && factor(asDesigned.whole) !== factor(whole.value)
          ? say('By its design it would be {design}. We take the middle of what measured homes reach.', {
              design: factor(asDesigned.whole),
            })
          : typed
            ? say('That comes from the design of this machine.')
            : say('No figure of the machine is known, so this is what measured homes reach.')}{' '}
        <Said text="Measured homes: {source}." with={{ source: <Origin text={fieldSpread.source} short /> }} />
      </>
    ),
  };
}

/** Electricity, what is burnt now or beside it, and in short every other price behind the ways of heating that are shown. */
function prices({ appraisal, estimate, beside }: EstimateParts): Ground[] {
  const { electricity, electricityPencePerKWh } = appraisal.prices;
  const fuel = beside && beside.carrier !== 'electricity' ? priceOf(appraisal.prices, beside.carrier) : undefined;
  const systems = pickForPicture(appraisal, estimate.household, ROWS_IN_PICTURE);
  const others = [...pricesUsed({ ...appraisal, systems })].filter(
    ([used, basis]) => used !== 'electricity' && basis !== fuel?.basis,
  );
  return [
    price(say('Electricity'), electricity, electricityPencePerKWh),
    ...(fuel && beside ? [price(capitalised(carrierName(beside.carrier)), fuel.basis, fuel.pencePerKWh)] : []),
    ...others.map(([used, basis]) => priceShort(used, basis, appraisal)),
  ];
}

function priceShort(used: PricedCarrier | 'two-rate', basis: PriceBasis, appraisal: Appraisal): Ground {
  const paid =
    used === 'two-rate'
      ? appraisal.systems.find(({ kind }) => kind === 'storage')?.rates.map(({ pencePerKWh }) => pencePerKWh)
      : [priceOf(appraisal.prices, used)?.pencePerKWh ?? Number.NaN];
  const perKWh = say('{price} per kWh: {short}.', {
    price: listed([...new Set(paid?.toSorted((a, b) => a - b).map((one) => pence(one)))]),
    short: priceInShort(basis),
  });
  return {
    grade: basis.grade,
    what: capitalised(priceName(used)),
    says: [perKWh, standsSentence(basis)].filter(Boolean).join(' '),
  };
}

function price(what: string, basis: PriceBasis, pencePerKWh: number): Ground {
  const { from, to, kind } = basis;
  const isOwn = kind === undefined ? basis.grade !== 'assumed' : kind === 'own' || kind === 'typed';
  const named = { name: <Origin text={nameOfPrice(basis)} />, source: <Origin text={basis.origin} short /> };
  return {
    grade: basis.grade,
    what,
    says: (
      <>
        {say('{price} per kWh.', { price: pence(pencePerKWh) })}{' '}
        {isOwn ? (
          <Said text="Your own price: {name}, {source}." with={named} />
        ) : (
          <Said text="Not your tariff, but {source}." with={named} />
        )}{' '}
        {kind === 'typed'
          ? say('It was typed without a date and is used for {from}.', { from: longDate(from) })
          : to
            ? say('These prices hold from {from} to {to}.', { from: longDate(from), to: longDate(to) })
            : say('These prices hold from {from} on.', { from: longDate(from) })}
        {priceNotes(basis).map((note) => ` ${note}`)}
      </>
    ),
  };
}

function service({ pump, estimate }: EstimateParts): Ground {
  const given = estimate.household.prices.serviceHeatPumpGBP;
  const amount = exactPounds(pump.split.servicePence);
  return {
    grade: given?.grade ?? 'assumed',
    what: say('Yearly service'),
    says: given
      ? say('{amount} a year for the heat pump, as offered.', { amount })
      : pump.split.servicePence > 0
        ? say('{amount} a year for the heat pump. That is our own assumption.', { amount })
        : say('No price for the service was given, so none is counted.'),
  };
}

function weather({ appraisal }: EstimateParts): Ground {
  const { climate } = appraisal;
  return {
    grade: climate.grade,
    what: say('Weather'),
    says: (
      <Said
        text="A typical year ({region}). Source: {source}."
        with={{ region: climate.regionName, source: <Origin text={climate.source} short /> }}
      />
    ),
  };
}
