import { waterAtHome } from '../../../model/at-home.ts';
import { monthlyWarnings } from '../../../model/bill-gap/expected-range.ts';
import { findSideBySide } from '../../../model/comparison/beside.ts';
import { designFlow } from '../../../model/heat-pump/flow.ts';
import { penceOfMonth } from '../../../model/shapes/appraisal.ts';
import { reference } from '../../../reference/index.ts';
import { tankSentence } from '../../../words/at-home.ts';
import { paymentSentence } from '../../../words/cost.ts';
import { costByMonth, unitsByMonth } from '../../../words/explained/months.ts';
import { tankWorking } from '../../../words/explained/tank.ts';
import { degrees, monthNames } from '../../../words/numbers.ts';
import { say } from '../../../words/say.ts';
import { inWords } from '../../../words/say-told.ts';
import { cautionSentences, warningSentence, winterBillSentences } from '../../../words/watch.ts';
import type { NamedFact, WalkInput, WalkPage, WatchRow } from '../page.ts';

/** October to March, in the order they are lived through. */
const WINTER_MONTHS = [9, 10, 11, 0, 1, 2];

export function livingPage({ household, appraisal, settings }: WalkInput): WalkPage {
  const { pump } = findSideBySide(appraisal);
  const { bought, monthly } = pump;
  const warnings = monthlyWarnings(appraisal, pump, reference.spread);
  const rows: WatchRow[] = WINTER_MONTHS.map((month) => ({
    month: monthNames()[month]!,
    units: monthly.boughtKWh[month]!,
    callAbove: warnings[month]!,
    pence: penceOfMonth(pump, month),
  }));
  const water = waterAtHome(household);
  const emitters = household.machine.emitters === 'floor' ? 'floor' : 'radiators';
  const facts: NamedFact[] = [
    {
      what: say('Warm'),
      says: say(
        '{room} all day. {emitters, select, floor {The floor is mild} other {Radiators are warm, not hot}}: {flow} water on the coldest day.',
        { room: degrees(appraisal.demand.roomC), emitters, flow: degrees(designFlow(household.machine).flowC) },
      ),
    },
    {
      what: say('Quiet'),
      says:
        appraisal.machine.source === 'ground'
          ? say('The machine stands indoors. There is no fan outside.')
          : say('There is a fan outside. How loud it is at the neighbour’s window has to be worked out.'),
    },
    { what: say('Hot water'), says: tankSentence(water) },
    {
      what: say('When to call'),
      says: say('Call us if rooms stay cold, hot water runs out, or the backup heater runs day after day.'),
    },
  ];
  const contact = settings.installerContact.split('\n')[0];
  return {
    name: 'living',
    sentence: say('Living with it: steady warmth, and one look at the meter each month.'),
    say: [...winterBillSentences({ bought, monthly }).slice(0, 1), paymentSentence(pump)].join(' '),
    foot: [household.name, settings.installerName, contact].filter(Boolean).join(' · '),
    picture: { kind: 'living', facts, rows: bought.value > 0 ? rows : [] },
    knobs: [],
    workings: [
      unitsByMonth({ monthly, bought }, warnings),
      costByMonth(pump, inWords('Cost of each month')),
      tankWorking(water),
    ],
    notes: [say('Show where the meter is and how it is read.'), warningSentence(bought.high), ...cautionSentences()],
  };
}
