import { yearsSeries } from '../../../charts/years/series.ts';
import { civilDateOf } from '../../../model/calendar/instant.ts';
import { findSideBySide } from '../../../model/comparison/beside.ts';
import { mayLead } from '../../../model/shapes/lifetime.ts';
import { guaranteeSentence } from '../../../words/estimate.ts';
import { writtenEstimateWorking } from '../../../words/explained/estimate-workings.ts';
import { yearsWorkings } from '../../../words/explained/years.ts';
import {
  chanceSentence,
  lifetimeCautions,
  lifetimeSentence,
  noteSentence,
  pathsSentence,
  paybackRangeSentence,
  savedRangeSentence,
  worthSentence,
} from '../../../words/lifetime.ts';
import { exactPounds, longDate, spokenPounds } from '../../../words/numbers.ts';
import { inMoneyOf, say } from '../../../words/say.ts';
import { homesSentence } from '../../../words/sure.ts';
import { costWorking } from '../../shared/name-working.ts';
import type { WalkInput, WalkPage } from '../page.ts';

export function nextPage(input: WalkInput): WalkPage {
  const { household, appraisal, estimates, settings, today } = input;
  const { pump } = findSideBySide(appraisal);
  const latest = estimates.toSorted((a, b) => b.number - a.number)[0];
  // The years are shown once price and grant are typed; before that nobody can say anything of payback.
  const lifetime = input.lifetime && mayLead(input.lifetime) ? input.lifetime : null;
  const range = latest
    ? inMoneyOf(latest, () => homesSentence(latest.lowPence, latest.highPence))
    : homesSentence(pump.cost.low, pump.cost.high);
  return {
    name: 'next',
    sentence: latest
      ? say('It is in writing: about {amount} a year, estimate no. {number} of {date}.', {
          amount: inMoneyOf(latest, () => spokenPounds(latest.heatPumpPence)),
          number: String(latest.number),
          date: longDate(civilDateOf(latest.madeOn, household.zone)),
        })
      : say('If you agree, we put this in writing: about {amount} a year.', { amount: spokenPounds(pump.cost.value) }),
    say: `${guaranteeSentence()} ${range}`,
    foot: [household.name, longDate(today), settings.installerName].filter(Boolean).join(' · '),
    picture: {
      kind: 'next',
      steps: nextSteps(input, latest?.number),
      years: lifetime ? { lifetime, series: yearsSeries(lifetime) } : null,
    },
    knobs: [],
    workings: [
      latest ? writtenEstimateWorking(latest) : costWorking(pump),
      ...(lifetime ? yearsWorkings(lifetime) : []),
    ],
    notes: [
      say('Ask what they will do first, and write it into the notes.'),
      say('Save the written estimate before you leave.'),
      ...(lifetime
        ? [
            savedRangeSentence(lifetime),
            paybackRangeSentence(lifetime),
            chanceSentence(lifetime),
            worthSentence(lifetime),
            pathsSentence(lifetime),
            ...lifetime.notes.map(noteSentence),
          ].filter(Boolean)
        : []),
    ],
  };
}

/** What happens next, in its order: the price, what is still to do, the paper, the first winter, and whom to ask. */
function nextSteps({ household, appraisal, settings, lifetime }: WalkInput, number: number | undefined): string[] {
  const { hasRecord } = findSideBySide(appraisal);
  const { heatPumpGBP: price, grantGBP: grant } = household.purchase;
  const questions = appraisal.questions.filter(({ weight }) => weight !== 'note').length;
  const contact = [settings.installerName, settings.installerContact.split('\n')[0]].filter(Boolean).join(', ');
  const pounds = (amount: number) => exactPounds(amount * 100);
  return [
    ...(price && grant
      ? [
          say('Installation price {price}, less the grant of {grant}: you pay {rest}. The grant is not certain.', {
            price: pounds(price.value),
            grant: pounds(grant.value),
            rest: pounds(Math.max(0, price.value - grant.value)),
          }),
        ]
      : price
        ? [say('Installation price {price}. We tell you which grant you may ask for.', { price: pounds(price.value) })]
        : [say('We send you a quotation with the installation price, and say which grant you may ask for.')]),
    ...(lifetime && mayLead(lifetime) ? [`${lifetimeSentence(lifetime)} ${lifetimeCautions()[1]}`] : []),
    ...(hasRecord ? [] : [say('You look for a year of bills or readings, and we work it out again.')]),
    ...(questions > 0
      ? [
          say('First we settle {count, plural, one {one open question} other {# open questions}}.', {
            count: questions,
          }),
        ]
      : []),
    number === undefined
      ? say('You get the written estimate, with a number and a date.')
      : say('Put estimate no. {number} where you will find it. It never changes.', { number: String(number) }),
    say('After the first winter we compare your bills with it. We show what was weather, price and the rest.'),
    contact ? say('Questions? Ask {contact}.', { contact }) : say('Questions? Ask us. Our number stands on the paper.'),
  ];
}
