import { findSideBySide } from '../../../model/appraisal/beside.ts';
import { civilDateOf } from '../../../model/calendar/instant.ts';
import { longDate, spokenPounds } from '../../../words/numbers.ts';
import type { WalkInput, WalkPage } from '../page.ts';

export function nextPage({ household, appraisal, promises, settings, today }: WalkInput): WalkPage {
  const { pump, hasRecord } = findSideBySide(appraisal);
  const latest = promises.toSorted((a, b) => b.number - a.number)[0];
  const questions = appraisal.questions.filter((question) => question.weight !== 'note').length;
  const steps = [
    ...(latest
      ? [`The paper you keep has the number ${latest.number}. Put it where you will find it.`]
      : ['We write all this down with a number and a date, and you keep the paper.']),
    ...(hasRecord ? [] : ['You look for a year of bills or readings, and we work it out again.']),
    ...(questions > 0
      ? [`We settle ${questions === 1 ? 'one open question' : `${questions} open questions`} first.`]
      : []),
    'When the first winter’s bills are in, we hold them against the paper together.',
    'If they differ, we show how much is weather, how much is price and what is left.',
  ];
  return {
    name: 'next',
    sentence: latest
      ? `We have put it in writing: about ${spokenPounds(latest.heatPumpPence)} a year, promise ${latest.number} of ${longDate(civilDateOf(latest.madeOn, household.zone))}.`
      : 'Nothing is promised yet. If you agree, we put these figures in writing.',
    say: latest
      ? `It says ${spokenPounds(latest.lowPence)} to ${spokenPounds(latest.highPence)} in 8 years out of 10. It never changes afterwards.`
      : `Today’s figure is about ${spokenPounds(pump.cost.value)} a year, with the range you saw.`,
    foot: [household.name, longDate(today), settings.installerName].filter(Boolean).join(' · '),
    picture: { kind: 'steps', steps },
    knobs: [],
    workings: [pump.cost.working],
    notes: ['Ask what they will do first, and write it into the notes.', 'Keep the promise before you leave.'],
  };
}
