import { findSideBySide } from '../../../model/comparison/beside.ts';
import { offersOf } from '../../../model/offers.ts';
import { priceOf, type SystemResult } from '../../../model/shapes/appraisal.ts';
import { isFuel } from '../../../model/shapes/heating.ts';
import {
  designSentence,
  gasStandingSentence,
  rangeSentence,
  standing,
  yearToYearSentence,
} from '../../../words/cost.ts';
import { leavingGasWorking } from '../../../words/explained/balance.ts';
import { costByMonth } from '../../../words/explained/months.ts';
import { rangedWorking } from '../../../words/explained/ranged.ts';
import { exactPounds, spokenPounds } from '../../../words/numbers.ts';
import { allDatesInShort } from '../../../words/prices.ts';
import { say } from '../../../words/say.ts';
import { inWords, sayTold } from '../../../words/say-told.ts';
import { dotsSentence, driversSentence, futuresSentence } from '../../../words/sure.ts';
import { carrierName, leftOutSentence, systemInSentence } from '../../../words/systems.ts';
import { costWorking } from '../../shared/name-working.ts';
import type { WalkInput, WalkPage } from '../page.ts';

/** As many as stand beside the bars in a small window. */
const MOST_OFFERS = 3;

export function costPage({ household, appraisal, changed }: WalkInput): WalkPage {
  const { pump, beside, versus, hasRecord } = findSideBySide(appraisal);
  const { electricity } = appraisal.prices;
  const fuel = isFuel(beside?.carrier) ? beside.carrier : null;
  const fuelBasis = fuel ? priceOf(appraisal.prices, fuel)?.basis : undefined;
  // What a slider does belongs to the offer in hand alone; of more offers there is the table beside the estimates.
  const offers = offersOf(household).length;
  const severalOffers = !changed && offers > 1 && offers <= MOST_OFFERS;
  const cost = spokenPounds(pump.cost.value);
  const first = say('Your heating and hot water would cost about {cost} a year.', { cost });
  const second = beside ? [besideSentence(beside, changed || !hasRecord)] : [];
  const more = beside ? pump.cost.value - beside.cost.value : 0;
  const side = beside ? standing(appraisal, beside.id) : 'unknown';
  const apart = spokenPounds(Math.abs(more));
  const byMonth = beside
    ? say('By the month: about {amount}, compared with {otherAmount}.', {
        amount: exactPounds(pump.cost.value / 12),
        otherAmount: exactPounds(beside.cost.value / 12),
      })
    : say('By the month: about {amount}.', { amount: exactPounds(pump.cost.value / 12) });
  return {
    name: 'cost',
    sentence: [first, ...second].join(' '),
    say: [
      beside
        ? side === 'about-same'
          ? say('That is about the same.')
          : say('That is about {apart} a year {way, select, less {less} other {more}}.', {
              apart,
              way: side === 'more' ? 'more' : 'less',
            })
        : '',
      rangeSentence(pump),
      byMonth,
      versus ? futuresSentence(versus.twenty) : '',
    ]
      .filter(Boolean)
      .join(' '),
    foot: say('{name} · {prices} · kWh is the unit on your bill', {
      name: household.name,
      prices: allDatesInShort(appraisal.prices, fuel),
    }),
    picture: { kind: 'cost', beside: severalOffers ? 'offers' : (versus ?? null) },
    knobs: ['flow', 'room', 'water', 'electricity', 'winter'],
    workings: [
      ...[pump, ...(beside ? [beside] : []), ...appraisal.systems.filter((one) => one !== pump && one !== beside)].map(
        costWorking,
      ),
      ...(versus ? [rangedWorking(versus.saving)] : []),
      ...leavingGasWorking(appraisal, pump),
      ...[pump, ...(beside ? [beside] : [])].map((system) =>
        costByMonth(system, inWords('By the month. {title}', { title: sayTold(costWorking(system).title) })),
      ),
    ],
    notes: [
      ...(side === 'more'
        ? [say('It costs more to run here. Say it plainly, and do not move on until they have heard it.')]
        : []),
      ...[
        { carrier: 'electricity', basis: electricity },
        ...(fuel ? [{ carrier: fuel, basis: fuelBasis }] : []),
      ].flatMap(({ carrier, basis }) =>
        basis?.staleDays
          ? [
              say('Prices for {fuel} ended {days, plural, one {# day} other {# days}} ago. Say so.', {
                fuel: carrierName(carrier),
                days: basis.staleDays,
              }),
            ]
          : [],
      ),
      ...[
        designSentence(pump),
        yearToYearSentence(pump),
        ...(versus ? [severalOffers ? '' : dotsSentence(), driversSentence(appraisal.drivers)] : []),
        gasStandingSentence(appraisal, household),
        leftOutSentence(appraisal),
      ].filter(Boolean),
      say('Standing charges and yearly service are in these figures. The installation price is not.'),
      say('Ask: how would you put that to somebody who was not here? It shows whether the page was clear.'),
    ],
  };
}

/** What is held against the heat pump: what the household pays today, or would pay. */
function besideSentence({ id, kind, cost }: SystemResult, supposed: boolean): string {
  const amount = spokenPounds(cost.value);
  if (id !== 'present' || kind === 'gas-assumed')
    return say('With {other} it would be about {amount}.', { other: systemInSentence(id, kind), amount });
  if (supposed) return say('With what you have now it would be about {amount}.', { amount });
  return say('Today they cost about {amount}.', { amount });
}
