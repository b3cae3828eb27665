import { costParts } from '../../../charts/month-parts/series.ts';
import { addDays } from '../../../model/calendar/civil.ts';
import { findSideBySide } from '../../../model/comparison/beside.ts';
import { costByMonth } from '../../../words/explained/months.ts';
import { longDate, poundsRange, spokenKWh, spokenPounds } from '../../../words/numbers.ts';
import { say } from '../../../words/say.ts';
import { inWords } from '../../../words/say-told.ts';
import { systemInSentence } from '../../../words/systems.ts';
import { costWorking } from '../../shared/name-working.ts';
import type { WalkInput, WalkPage } from '../page.ts';

/** The record that speaks for the home: the longest series that somebody pays for. */
function findRecord({ series, appraisal }: WalkInput) {
  const behind = appraisal.demand.signature?.seriesId;
  return series.find((one) => one.id === behind) ?? null;
}

export function homePage(input: WalkInput): WalkPage {
  const { household, appraisal } = input;
  const { present, hasRecord } = findSideBySide(appraisal);
  const record = findRecord(input);
  const foot = household.name;
  if (!present) {
    return {
      name: 'home',
      sentence: say('{name}: we have no bills of yours yet, so we start from the home itself.', {
        name: household.name,
      }),
      say: say(
        'Its size, age and place tell us roughly how much heat it needs. Your own bills would make the answer surer.',
      ),
      foot,
      picture: { kind: 'none' },
      knobs: [],
      workings: [appraisal.demand.total.working],
      notes: [say('Ask for a year of bills or meter readings before any figure is promised.')],
    };
  }
  const cost = spokenPounds(present.cost.value);
  const now = systemInSentence(present.id, present.kind);
  const known = household.home.floorAreaM2 ?? household.heat.heatLossKW ?? household.heat.certificateSpaceKWh;
  return {
    name: 'home',
    sentence: hasRecord
      ? say('{name}: heating and hot water cost about {cost} a year today.', { name: household.name, cost })
      : say('{name}: we have no bills of yours yet. A home like it pays about {cost} a year.', {
          name: household.name,
          cost,
        }),
    say: hasRecord
      ? [
          say('That is for {bought} a year through {now}, in a typical winter.', {
            bought: spokenKWh(present.bought.value),
            now,
          }),
          record
            ? say('It comes from your own records of {from} to {to}.', {
                from: longDate(record.from),
                to: longDate(addDays(record.to, -1)),
              })
            : say('It comes from your own records.'),
        ].join(' ')
      : [
          known
            ? say('That is worked out from the home itself.')
            : say('Nothing is known of this home yet, so a typical one stands in.'),
          say('It could be {range}. Your own bills would make it surer.', {
            range: poundsRange(present.cost.low, present.cost.high),
          }),
        ].join(' '),
    foot,
    picture: { kind: 'months', parts: costParts(present) },
    knobs: [],
    workings: [costWorking(present), costByMonth(present, inWords('Cost of each month')), present.bought.working],
    notes: hasRecord
      ? [say('Ask: does that sound like your bills? If not, stop here and look at them together.')]
      : [say('No record was given. Ask for a year of bills or readings before any figure is promised.')],
  };
}
