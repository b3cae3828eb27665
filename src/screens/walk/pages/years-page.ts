import { yearsSeries } from '../../../charts/years/series.ts';
import { mayLead } from '../../../model/shapes/lifetime.ts';
import { yearsWorkings } from '../../../words/explained/years.ts';
import {
  chanceSentence,
  instalmentSentence,
  lifetimeCautions,
  lifetimeSentence,
  noteSentence,
  pathsSentence,
  paybackRangeSentence,
  savedRangeSentence,
  savedSentence,
  worthSentence,
} from '../../../words/lifetime.ts';
import { say } from '../../../words/say.ts';
import type { WalkInput, WalkPage } from '../page.ts';

/** What the next years may bring; left out until price and grant are known, and where there is nothing to hold the heat pump against. */
export function yearsPages({ household, lifetime }: WalkInput): WalkPage[] {
  if (!lifetime || !mayLead(lifetime)) return [];
  const [notAdvice, nobodyKnows] = lifetimeCautions();
  const sentence = lifetimeSentence(lifetime);
  const saysAmount = sentence.includes('£');
  return [
    {
      name: 'years',
      sentence,
      say: [
        saysAmount ? savedRangeSentence(lifetime) : savedSentence(lifetime),
        paybackRangeSentence(lifetime),
        instalmentSentence(lifetime),
        notAdvice,
        nobodyKnows,
      ]
        .filter(Boolean)
        .join(' '),
      foot: say(
        lifetime.kind === 'whole'
          ? '{name} · purchase and running costs, in the money of today · the bands hold 8 in 10 homes like yours'
          : '{name} · running costs only, in the money of today · the bands hold 8 cases in 10',
        { name: household.name },
      ),
      picture: { kind: 'years', lifetime, series: yearsSeries(lifetime) },
      knobs: ['electricity', 'flow', 'room'],
      workings: yearsWorkings(lifetime),
      notes: [
        chanceSentence(lifetime),
        worthSentence(lifetime),
        pathsSentence(lifetime),
        ...lifetime.notes.map(noteSentence),
        say('Do not sell this page. The prices of the years to come are anybody’s guess.'),
      ].filter(Boolean),
    },
  ];
}
