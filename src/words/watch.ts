/** What to watch in the first winter, and when to call. */
import { WARNED } from '../model/bill-gap/expected-range.ts';
import type { SystemResult } from '../model/shapes/appraisal.ts';
import { dearestMonth } from './cost.ts';
import { exactPounds, monthNames, spokenKWh } from './numbers.ts';
import { say } from './say.ts';

/** October to March, as months from 0. */
const WINTER_MONTHS: readonly number[] = [9, 10, 11, 0, 1, 2];

/** What the first winter brings, from the heat pump's own months. */
export function winterBillSentences(pump: Pick<SystemResult, 'monthly' | 'bought'>): string[] {
  const { boughtKWh } = pump.monthly;
  const winter = WINTER_MONTHS.reduce((sum, month) => sum + (boughtKWh[month] ?? Number.NaN), 0);
  if (!Number.isFinite(winter) || !(pump.bought.value > 0)) return [];
  const dearest = dearestMonth(pump.monthly);
  return [
    say('Expect about {winter} of the year’s {year} from October to March.', {
      winter: spokenKWh(winter),
      year: spokenKWh(pump.bought.value),
    }),
    say('{month} is likely to be the most expensive month, at about {amount}.', {
      month: monthNames()[dearest.month]!,
      amount: exactPounds(dearest.pence),
    }),
  ];
}

/** What a household can do with a pencil. */
export function watchSentences(): string[] {
  return [
    say('Read the meter on the first day of each month and write it down.'),
    say('Keep this estimate with your bills.'),
    say('Change one setting at a time, and wait two days before the next.'),
  ];
}

/** How often the level from which on to call is passed with nothing wrong, by the month and, where its units are given, by the year [kWh]. */
export function warningSentence(yearKWh?: number): string {
  const [months, years] = [Math.round(1 / WARNED.month), Math.round(1 / WARNED.year)];
  if (yearKWh === undefined) return say('1 normal month in {months} is above it with nothing wrong.', { months });
  return say('With nothing wrong, 1 normal month in {months} is above it, and 1 year in {years} above {units}.', {
    months,
    years,
    units: spokenKWh(yearKWh),
  });
}

/** When to call the installer. */
export function callSentences(): string[] {
  return [
    say('Call us if a month uses more than the figure under “Call us above”.'),
    say('Call us if the rooms stay cold or the hot water runs out.'),
    say('Call us if the backup heater comes on day after day.'),
  ];
}

/** The usual cautions, for the household. */
export function cautionSentences(): string[] {
  return [
    say('Do not open the heat pump. It holds pressure, very hot water and live wires.'),
    say('If you smell burning, or a breaker trips again, turn the heat pump off and call.'),
    say('Only certified people may work on the wiring and the refrigerant circuit.'),
  ];
}
