import { findSideBySide } from '../../../model/appraisal/beside.ts';
import { ABOUT_THE_SAME_PENCE } from '../../../words/cost.ts';
import { spokenPounds } from '../../../words/numbers.ts';
import { datesInShort } from '../../../words/prices.ts';
import { systemInSentence } from '../../../words/systems.ts';
import { costWorking } from '../name-working.ts';
import type { WalkInput, WalkPage } from '../page.ts';

export function costPage({ household, appraisal, changed }: WalkInput): WalkPage {
  const { pump, present, beside, hasRecord } = findSideBySide(appraisal);
  const { electricity } = appraisal.prices;
  const cost = spokenPounds(pump.cost.value);
  const first = `Your heating and hot water would cost about ${cost} a year.`;
  const more = beside ? pump.cost.value - beside.cost.value : 0;
  const apart = spokenPounds(Math.abs(more));
  const byMonth = beside
    ? `By the month: about ${spokenPounds(pump.cost.value / 12)} against ${spokenPounds(beside.cost.value / 12)}.`
    : `By the month: about ${spokenPounds(pump.cost.value / 12)}.`;
  return {
    name: 'cost',
    sentence: present
      ? changed || !hasRecord
        ? `${first} With what you have now it would be about ${spokenPounds(present.cost.value)}.`
        : `${first} Today they cost about ${spokenPounds(present.cost.value)}.`
      : beside
        ? `${first} With ${systemInSentence(beside.id, beside.kind)} it would be about ${spokenPounds(beside.cost.value)}.`
        : first,
    say: [
      beside
        ? Math.abs(more) < ABOUT_THE_SAME_PENCE
          ? 'That is about the same.'
          : `That is about ${apart} a year ${more > 0 ? 'more' : 'less'}.`
        : '',
      'We are not sure: 8 homes like yours in 10 lie inside the band, 2 outside.',
      byMonth,
    ]
      .filter(Boolean)
      .join(' '),
    foot: `${household.name} · ${datesInShort(electricity)} · the dot is the sum with the figures given`,
    picture: { kind: 'spread' },
    knobs: ['flow', 'room', 'water', 'electricity', 'winter'],
    workings: [pump, ...(beside ? [beside] : [])].map(costWorking),
    notes: [
      ...(more >= ABOUT_THE_SAME_PENCE
        ? ['It costs more to run here. Say it plainly; do not move on until they have heard it.']
        : []),
      ...(electricity.staleDays ? [`The electricity prices ended ${electricity.staleDays} days ago. Say so.`] : []),
      'Standing charges and yearly service are in these figures; the price of putting it in is not.',
    ],
  };
}
