import { findSideBySide } from '../../../model/appraisal/beside.ts';
import { MONTH_NAMES, spokenKWh } from '../../../words/numbers.ts';
import type { WalkInput, WalkPage, WatchRow } from '../page.ts';

/** October to March, in the order they are lived through. */
const WINTER_MONTHS = [9, 10, 11, 0, 1, 2];

export function watchPage({ household, appraisal, settings }: WalkInput): WalkPage {
  const { pump } = findSideBySide(appraisal);
  const { bought, monthly } = pump;
  const highShare = bought.value > 0 ? bought.high / bought.value : 1;
  const rows: WatchRow[] = WINTER_MONTHS.map((month) => ({
    month: MONTH_NAMES[month]!,
    units: monthly.boughtKWh[month]!,
    unitsHigh: monthly.boughtKWh[month]! * highShare,
    pence: monthly.unitsPence[month]!,
  }));
  const winterUnits = rows.reduce((sum, row) => sum + row.units, 0);
  return {
    name: 'watch',
    sentence: 'Read the meter on the first of each month. Call us if two months together run high.',
    say: [
      `From October to March we expect ${spokenKWh(winterUnits)} of the year’s ${spokenKWh(bought.value)}.`,
      'Most of your cost comes in winter, so the bill is high then and low in summer.',
      'About 1 home in 10 goes above the last column with nothing wrong.',
    ].join(' '),
    foot: settings.installerContact
      ? `${household.name} · ${settings.installerContact.split('\n')[0]}`
      : `${household.name} · a cold month by itself is no fault`,
    picture: bought.value > 0 ? { kind: 'watch', rows } : { kind: 'none' },
    knobs: [],
    workings: [bought.working],
    notes: [
      'Show where the meter is and how it is read. Say whether the heat pump has a meter of its own.',
      'Noise, a warning on the display, cold taps or a leak: call the same day, do not open the unit.',
    ],
  };
}
