/** The months since the promise, in words: what they took against what was to be expected, and what the next bill will do. */
import type { FollowedMonth } from '../model/appraisal/promise.ts';
import { capitalised, counted, monthSpan, spokenKWh, spokenPounds } from './numbers.ts';

const known = (months: readonly FollowedMonth[]) => months.filter(({ actualKWh }) => actualKWh !== null);
const plainMonth = ({ from }: FollowedMonth): string => monthSpan(from, from);

/** Less than this share of the expected units is not spoken of. Common practice, no source. */
const LITTLE_SHARE = 0.05;
/** From this share on the next bill is called high or low, though inside. Common practice, no source. */
const LARGE_SHARE = 0.15;
/** Months that the next bill is likely to hold. */
const BILL_MONTHS = 3;

/** How many months lay inside, and what has added up. */
export function followedSentence(months: readonly FollowedMonth[], pencePerKWh: number): string {
  const read = known(months);
  const last = read.at(-1);
  if (!last) return 'No month since the promise has been read from end to end.';
  const inside = read.filter(({ verdict }) => verdict === 'inside').length;
  const count =
    read.length === 1
      ? `${plainMonth(last)} was ${inside === 1 ? 'inside' : last.verdict} what we promised.`
      : `In ${inside} of ${read.length} months the meter was inside what we promised.`;
  const expected = read.reduce((sum, { expectedKWh }) => sum + expectedKWh, 0);
  const gap = last.gapSoFarKWh;
  if (Math.abs(gap) < LITTLE_SHARE * expected) return `${count} Together they are as we thought, give or take little.`;
  const cost = Number.isFinite(pencePerKWh) ? `, about ${spokenPounds(Math.abs(gap) * pencePerKWh)}` : '';
  return `${count} Together they took ${spokenKWh(Math.abs(gap))} ${gap > 0 ? 'more' : 'less'} than the middle of it${cost}.`;
}

/** Whether the next bill will surprise, from the newest months. */
export function nextBillSentence(months: readonly FollowedMonth[]): string {
  const newest = known(months).slice(-BILL_MONTHS);
  const last = newest.at(-1);
  if (!last) return 'So we cannot say yet what the next bill will do.';
  if (last.verdict === 'above') {
    return `${plainMonth(last)} lay above it. Expect the next bill above the promise too, unless something changes.`;
  }
  if (last.verdict === 'below') return `${plainMonth(last)} lay below it. Expect the next bill below the promise.`;
  const expected = newest.reduce((sum, { expectedKWh }) => sum + expectedKWh, 0);
  const over = newest.reduce((sum, { actualKWh, expectedKWh }) => sum + actualKWh! - expectedKWh, 0);
  if (!(Math.abs(over) > LARGE_SHARE * expected))
    return 'If it goes on like this, the next bill should hold no surprise.';
  const many = newest.length === 1 ? 'The last month' : `The last ${counted(newest.length, 'month')}`;
  return over > 0
    ? `${many} ran high. Expect the next bill on the high side of the promise.`
    : `${many} ran low. Expect the next bill on the low side of the promise.`;
}

/** Nothing to follow: a meter on the machine is what it takes. */
export function notFollowedSentence(hasHouseMeter: boolean): string {
  return hasHouseMeter
    ? 'The meter of the whole home does not say what the heating took. A meter on the heat pump would let us follow it by month.'
    : 'Bring in the heat pump’s own readings since the promise, and we follow them by month.';
}

export const monthVerdict = (verdict: FollowedMonth['verdict']): string =>
  verdict === 'unknown' ? 'not known' : capitalised(verdict);
