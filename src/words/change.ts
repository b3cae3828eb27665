/** What could change the cost, each thing by itself. */
import { pence, spokenPounds } from './numbers.ts';
import { phrase, say } from './say.ts';

/** Things that may change, as sentences whose gap takes "the year costs about £200 more". */
const CHANGES: Readonly<Record<string, string>> = {
  'electricity-up': phrase('If a unit of electricity costs {price} more, {clause}.'),
  'electricity-down': phrase('If a unit of electricity costs {price} less, {clause}.'),
  'flow-up': phrase('If the water to the radiators has to be 5 degrees hotter, {clause}.'),
  'flow-down': phrase('If the water to the radiators can be 5 degrees cooler, {clause}.'),
  'room-up': phrase('If the rooms are one degree warmer, {clause}.'),
  'room-down': phrase('If the rooms are one degree cooler, {clause}.'),
  'water-up': phrase('If you use half as much hot water again, {clause}.'),
  'water-down': phrase('If you use half the hot water, {clause}.'),
  'winter-cold': phrase('In a cold winter {clause}.'),
  'winter-mild': phrase('In a mild winter {clause}.'),
};
/** By how much a unit of electricity changes here, in the price's hundredths. */
const PRICE_STEP_PENCE = 5;

/** "In a cold winter the year costs about £110 more." */
export function changeSentence(change: string, morePence: number): string {
  return say(CHANGES[change] ?? phrase('{clause}.'), {
    price: pence(PRICE_STEP_PENCE, 0),
    clause: yearClause(morePence),
  });
}

function yearClause(morePence: number): string {
  if (!Number.isFinite(morePence)) return say('we cannot say what the year costs');
  if (Math.abs(morePence) < 500) return say('the year costs about the same');
  const amount = spokenPounds(Math.abs(morePence));
  return say('the year costs about {amount} {way, select, less {less} other {more}}', {
    amount,
    way: morePence > 0 ? 'more' : 'less',
  });
}
