import { monthlyWarnings } from '../../../model/bill-gap/expected-range.ts';
import { findSideBySide } from '../../../model/comparison/beside.ts';
import { reference } from '../../../reference/index.ts';
import { paymentSentence } from '../../../words/cost.ts';
import { costByMonth, unitsByMonth } from '../../../words/explained/months.ts';
import { monthNames } from '../../../words/numbers.ts';
import { say } from '../../../words/say.ts';
import { inWords } from '../../../words/say-told.ts';
import { callSentences, cautionSentences, warningSentence, winterBillSentences } from '../../../words/watch.ts';
import type { WalkInput, WalkPage, WatchRow } from '../page.ts';

/** October to March, in the order they are lived through. */
const WINTER_MONTHS = [9, 10, 11, 0, 1, 2];

export function watchPage({ household, appraisal, settings }: WalkInput): WalkPage {
  const { pump } = findSideBySide(appraisal);
  const { bought, monthly } = pump;
  const warnings = monthlyWarnings(appraisal, pump, reference.spread);
  const rows: WatchRow[] = WINTER_MONTHS.map((month) => ({
    month: monthNames()[month]!,
    units: monthly.boughtKWh[month]!,
    callAbove: warnings[month]!,
    pence: monthly.unitsPence[month]! + monthly.standingPence[month]! + monthly.servicePence[month]!,
  }));
  const contact = settings.installerContact.split('\n')[0];
  return {
    name: 'watch',
    sentence: say('Read the meter on the first of each month, and call us if it runs high.'),
    say: [
      ...winterBillSentences({ bought, monthly }).slice(0, 1),
      paymentSentence(pump),
      warningSentence(bought.high),
    ].join(' '),
    foot: [household.name, settings.installerName, contact].filter(Boolean).join(' · '),
    picture: bought.value > 0 ? { kind: 'watch', rows } : { kind: 'none' },
    knobs: [],
    workings: [unitsByMonth({ monthly, bought }, warnings), costByMonth(pump, inWords('Cost of each month'))],
    notes: [say('Show where the meter is and how it is read.'), ...callSentences().slice(1), ...cautionSentences()],
  };
}
