import { civilDateOf } from '../../../model/calendar/instant.ts';
import { findSideBySide } from '../../../model/comparison/beside.ts';
import { writtenEstimateWorking } from '../../../words/explained/estimate-workings.ts';
import { longDate, spokenPounds } from '../../../words/numbers.ts';
import { inMoneyOf, say } from '../../../words/say.ts';
import { homesSentence } from '../../../words/sure.ts';
import { costWorking } from '../../shared/name-working.ts';
import type { WalkInput, WalkPage } from '../page.ts';

export function nextPage({ household, appraisal, estimates, settings, today }: WalkInput): WalkPage {
  const { pump, hasRecord } = findSideBySide(appraisal);
  const latest = estimates.toSorted((a, b) => b.number - a.number)[0];
  const questions = appraisal.questions.filter((question) => question.weight !== 'note').length;
  const steps = [
    ...(latest
      ? [
          say('The paper you keep has the number {number}. Put it where you will find it.', {
            number: String(latest.number),
          }),
        ]
      : [say('We write all this down with a number and a date, and you keep the paper.')]),
    ...(hasRecord ? [] : [say('You look for a year of bills or readings, and we work it out again.')]),
    ...(questions > 0
      ? [
          say('We settle {count, plural, one {one open question} other {# open questions}} first.', {
            count: questions,
          }),
        ]
      : []),
    say('When the first winter’s bills are in, we hold them against the paper together.'),
    say('If they differ, we show how much is weather, how much is price and what is left.'),
  ];
  return {
    name: 'next',
    sentence: latest
      ? say('We have put it in writing: about {amount} a year, promise {number} of {date}.', {
          amount: inMoneyOf(latest, () => spokenPounds(latest.heatPumpPence)),
          number: String(latest.number),
          date: longDate(civilDateOf(latest.madeOn, household.zone)),
        })
      : say('Nothing is promised yet. If you agree, we put these figures in writing.'),
    say: latest
      ? `${inMoneyOf(latest, () => homesSentence(latest.lowPence, latest.highPence))} ${say('The paper never changes afterwards.')}`
      : say('Today’s figure is about {amount} a year, with the range you saw.', {
          amount: spokenPounds(pump.cost.value),
        }),
    foot: [household.name, longDate(today), settings.installerName].filter(Boolean).join(' · '),
    picture: { kind: 'steps', steps },
    knobs: [],
    workings: [latest ? writtenEstimateWorking(latest) : costWorking(pump)],
    notes: [
      say('Ask what they will do first, and write it into the notes.'),
      say('Keep the promise before you leave.'),
    ],
  };
}
