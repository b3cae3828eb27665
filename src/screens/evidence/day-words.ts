import { longDate } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';

const MS_PER_DAY = 86_400_000;

/** Spans are stored with the first day after them; people name the last day. */
export const lastDayOf = (exclusive: string): string =>
  new Date(Date.parse(exclusive) - MS_PER_DAY).toISOString().slice(0, 10);

/** "1 October 2025 to 30 September 2026" of such a span. */
export const daysWords = (span: { readonly from: string; readonly to: string }): string =>
  say('{low} to {high}', { low: longDate(span.from), high: longDate(lastDayOf(span.to)) });
