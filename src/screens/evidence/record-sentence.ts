import type { Series } from '../../model/shapes/evidence.ts';
import { longDate, spokenCount, spokenKWh } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { lastDayOf } from './day-words.ts';
import { CARRIER_WORDS } from './series-words.ts';

/** "From 1 October 2025 to 30 September 2026 this home used 12 to 100 units of gas a day." */
export function recordSentence(series: Series, days: readonly { readonly value: number | null }[]): string {
  const known = days.flatMap(({ value }) => (value === null ? [] : [value]));
  if (known.length === 0) return say('No day of this record could be shown.');
  const low = known.reduce((a, b) => Math.min(a, b));
  const high = known.reduce((a, b) => Math.max(a, b));
  const range =
    spokenCount(low) === spokenCount(high)
      ? spokenKWh(high)
      : say('{low} to {high}', { low: spokenCount(low), high: spokenKWh(high) });
  return say(
    'From {from} to {to} {who, select, pump {the heat pump} other {this home}} used {range} of {carrier} a day.',
    {
      from: longDate(series.from),
      to: longDate(lastDayOf(series.to)),
      who: series.role === 'heat-pump' ? 'pump' : 'home',
      range,
      carrier: say(CARRIER_WORDS[series.carrier]),
    },
  );
}
