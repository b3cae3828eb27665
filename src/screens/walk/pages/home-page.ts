import { costParts } from '../../../charts/month-parts/series.ts';
import { findSideBySide } from '../../../model/appraisal/beside.ts';
import { addDays } from '../../../model/calendar/civil.ts';
import { longDate, poundsRange, spokenKWh, spokenPounds } from '../../../words/numbers.ts';
import { systemInSentence } from '../../../words/systems.ts';
import { costWorking } from '../name-working.ts';
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
      sentence: `${household.name}: we have no bills of yours yet, so we start from the home itself.`,
      say: 'Its size, age and place tell us roughly how much heat it needs. Your own bills would make the answer surer.',
      foot,
      picture: { kind: 'none' },
      knobs: [],
      workings: [appraisal.demand.total.working],
      notes: ['Ask for a year of bills or meter readings before any figure is promised.'],
    };
  }
  const cost = spokenPounds(present.cost.value);
  const now = systemInSentence(present.id, present.kind);
  const known = household.home.floorAreaM2 ?? household.heat.heatLossKW ?? household.heat.certificateSpaceKWh;
  return {
    name: 'home',
    sentence: hasRecord
      ? `${household.name}: heating and hot water cost about ${cost} a year today.`
      : `${household.name}: we have no bills of yours yet. A home like it pays about ${cost} a year.`,
    say: hasRecord
      ? [
          `That is for ${spokenKWh(present.bought.value)} a year through ${now}, in a typical winter.`,
          record
            ? `It comes from your own records of ${longDate(record.from)} to ${longDate(addDays(record.to, -1))}.`
            : 'It comes from your own records.',
        ].join(' ')
      : [
          known
            ? 'That is worked out from the home itself.'
            : 'Nothing is known of this home yet, so a typical one stands in.',
          `It could be ${poundsRange(present.cost.low, present.cost.high)}. Your own bills would make it surer.`,
        ].join(' '),
    foot,
    picture: { kind: 'months', parts: costParts(present) },
    knobs: [],
    workings: [costWorking(present), present.bought.working],
    notes: hasRecord
      ? ['Ask: does that sound like your bills? If not, stop here and look at them together.']
      : ['No record was given. Ask for a year of bills or readings before any figure is promised.'],
  };
}
