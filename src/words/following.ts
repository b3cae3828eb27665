/** The months since the estimate, in words: what they took against what was to be expected, and what the next bill will do. */
import type { FollowedMonth } from '../model/shapes/bill-check.ts';
import { capitalised, monthSpan, spokenKWh, spokenPounds, unknown } from './numbers.ts';
import { phrase, say } from './say.ts';

const known = (months: readonly FollowedMonth[]) => months.filter(({ actualKWh }) => actualKWh !== null);
const plainMonth = ({ from }: FollowedMonth): string => monthSpan(from, from);

/** Less than this share of the expected units is not spoken of. Common practice, no source. */
const LITTLE_SHARE = 0.03;
/** From this share on the next bill is called high or low, though inside. Common practice, no source. */
const LARGE_SHARE = 0.15;
/** Months that the next bill is likely to hold. */
const BILL_MONTHS = 3;

/** How many months lay inside, and what has added up. */
export function followedSentence(months: readonly FollowedMonth[], pencePerKWh: number): string {
  const read = known(months);
  const last = read.at(-1);
  if (!last) return say('No month since the estimate has been read from end to end.');
  const inside = read.filter(({ verdict }) => verdict === 'inside').length;
  const count =
    read.length === 1
      ? say('{month} was {verdict, select, inside {inside} above {above} other {below}} what we estimated.', {
          month: plainMonth(last),
          verdict: last.verdict,
        })
      : say('In {inside} of {count} months the meter was inside what we estimated.', { inside, count: read.length });
  const expected = read.reduce((sum, { expectedKWh }) => sum + expectedKWh, 0);
  const gap = last.gapSoFarKWh;
  if (Math.abs(gap) < LITTLE_SHARE * expected)
    return `${count} ${say('Together they are as we thought, give or take little.')}`;
  const values = { units: spokenKWh(Math.abs(gap)), way: gap > 0 ? 'more' : 'less' };
  const together = Number.isFinite(pencePerKWh)
    ? say('Together they took {units} {way, select, more {more} other {less}} than the middle of it, about {amount}.', {
        ...values,
        amount: spokenPounds(Math.abs(gap) * pencePerKWh),
      })
    : say('Together they took {units} {way, select, more {more} other {less}} than the middle of it.', values);
  return `${count} ${together}`;
}

/** Whether the next bill will surprise, from the newest months. */
export function nextBillSentence(months: readonly FollowedMonth[]): string {
  const newest = known(months).slice(-BILL_MONTHS);
  const last = newest.at(-1);
  if (!last) return say('So we cannot say yet what the next bill will do.');
  const month = plainMonth(last);
  if (last.verdict === 'above')
    return say(
      'The newest month, {month}, was above it. Expect the next bill above the estimate too, unless something changes.',
      {
        month,
      },
    );
  if (last.verdict === 'below')
    return say('The newest month, {month}, was below it. Expect the next bill below the estimate.', { month });
  const expected = newest.reduce((sum, { expectedKWh }) => sum + expectedKWh, 0);
  const over = newest.reduce((sum, { actualKWh, expectedKWh }) => sum + actualKWh! - expectedKWh, 0);
  if (!(Math.abs(over) > LARGE_SHARE * expected))
    return say('If it goes on like this, the next bill should hold no surprise.');
  return say(
    over > 0
      ? '{months, plural, one {The last month} other {The last # months}} ran high. Expect the next bill at the high end of the estimate.'
      : '{months, plural, one {The last month} other {The last # months}} ran low. Expect the next bill at the low end of the estimate.',
    { months: newest.length },
  );
}

/** Nothing to follow: a meter on the machine is what it takes. */
export function notFollowedSentence(hasHouseMeter: boolean): string {
  return hasHouseMeter
    ? say(
        'The meter of the whole home does not say what the heating took. A meter on the heat pump would let us follow it by month.',
      )
    : say('Add the heat pump’s own readings since the estimate, and we follow them by month.');
}

const VERDICTS = { inside: phrase('inside'), above: phrase('above'), below: phrase('below') };
export const monthVerdict = (verdict: FollowedMonth['verdict']): string =>
  verdict === 'unknown' ? unknown() : capitalised(say(VERDICTS[verdict]));
