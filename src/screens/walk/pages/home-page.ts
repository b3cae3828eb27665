import { costParts, heatParts } from '../../../charts/month-parts/series.ts';
import { addDays } from '../../../model/calendar/civil.ts';
import { findSideBySide } from '../../../model/comparison/beside.ts';
import type { Appraisal } from '../../../model/shapes/appraisal.ts';
import { costByMonth, heatByMonth } from '../../../words/explained/months.ts';
import { rangedWorking } from '../../../words/explained/ranged.ts';
import { longDate, poundsRange, spokenCount, spokenKWh, spokenPounds } from '../../../words/numbers.ts';
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

/** What the home needs, whatever makes it. */
function heatSentence({ appraisal }: WalkInput): string {
  const { total, water } = appraisal.demand;
  return say('Any heating must give it about {heat} of heat, {water} of it for hot water.', {
    heat: spokenKWh(total.value),
    water: spokenCount(water.value),
  });
}

const heatWorkings = ({ demand }: Appraisal) => [
  rangedWorking(demand.total),
  demand.space.working,
  demand.water.working,
  heatByMonth(demand),
];

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
      say: `${heatSentence(input)} ${say('Your own bills would make that more certain. Do you have a year of them?')}`,
      foot,
      picture: { kind: 'months', parts: heatParts(appraisal) },
      knobs: [],
      workings: heatWorkings(appraisal),
      notes: [say('Ask for a year of bills or meter readings before any figure goes into writing.')],
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
    say: [
      hasRecord
        ? record
          ? say('It comes from your own records of {from} to {to}.', {
              from: longDate(record.from),
              to: longDate(addDays(record.to, -1)),
            })
          : say('It comes from your own records.')
        : say('For 8 in 10 homes like it, it is {range}. Your own bills would make that more certain.', {
            range: poundsRange(present.cost.low, present.cost.high),
          }),
      hasRecord
        ? say('In a typical year that is {bought} through {now}.', { bought: spokenKWh(present.bought.value), now })
        : known
          ? say('That is worked out from the home itself.')
          : say('Nothing is known of this home yet, so a typical one is used instead.'),
      heatSentence(input),
      hasRecord ? say('Does that sound like your bills?') : say('What do your bills say?'),
    ].join(' '),
    foot,
    picture: { kind: 'months', parts: costParts(present) },
    knobs: [],
    workings: [
      costWorking(present),
      costByMonth(present, inWords('Cost of each month')),
      present.bought.working,
      ...heatWorkings(appraisal),
    ],
    notes: hasRecord
      ? [say('If it does not sound like their bills, stop here and look at them together.')]
      : [say('Ask for a year of bills or meter readings before any figure goes into writing.')],
  };
}
