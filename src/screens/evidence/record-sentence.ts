import type { Series } from '../../model/evidence/evidence.ts';
import { longDate, spokenCount, spokenKWh } from '../../words/numbers.ts';
import { lastDayOf } from './day-words.ts';
import { CARRIER_WORDS } from './series-words.ts';

/** "From 1 October 2025 to 30 September 2026 this home used 12 to 100 units of gas a day." */
export function recordSentence(series: Series, days: readonly { readonly value: number | null }[]): string {
  const known = days.flatMap(({ value }) => (value === null ? [] : [value]));
  if (known.length === 0) return 'No day of this record could be shown.';
  const low = known.reduce((a, b) => Math.min(a, b));
  const high = known.reduce((a, b) => Math.max(a, b));
  const range = spokenCount(low) === spokenCount(high) ? spokenKWh(high) : `${spokenCount(low)} to ${spokenKWh(high)}`;
  const who = series.role === 'heat-pump' ? 'the heat pump' : 'this home';
  return `From ${longDate(series.from)} to ${longDate(lastDayOf(series.to))} ${who} used ${range} of ${CARRIER_WORDS[series.carrier]} a day.`;
}
