/** What could change the cost, each thing by itself. */
import { pence, spokenPounds } from './numbers.ts';
import { phrase, say } from './say.ts';

/** Things that may change: by name, and as sentences whose gap takes "the year costs about £200 more". */
const CHANGES = {
  'electricity-up': {
    name: phrase('Electricity {price} more per kWh'),
    sentence: phrase('If electricity costs {price} more per kWh, {clause}.'),
  },
  'flow-up': {
    name: phrase('Flow temperature 5 degrees higher'),
    sentence: phrase('If the water to the radiators has to be 5 degrees hotter, {clause}.'),
  },
  'room-up': {
    name: phrase('Rooms one degree warmer'),
    sentence: phrase('If the rooms are one degree warmer, {clause}.'),
  },
  'water-up': {
    name: phrase('50% more hot water'),
    sentence: phrase('If you use 50% more hot water, {clause}.'),
  },
  'winter-cold': { name: phrase('A cold winter'), sentence: phrase('In a cold winter {clause}.') },
};
export type ChangeCode = keyof typeof CHANGES;

/** By how much a unit of electricity changes here, in the price's hundredths. */
const PRICE_STEP_PENCE = 5;

export const changeName = (change: ChangeCode): string =>
  say(CHANGES[change].name, { price: pence(PRICE_STEP_PENCE, 0) });

/** "In a cold winter the year costs about £110 more." */
export function changeSentence(change: ChangeCode, morePence: number): string {
  return say(CHANGES[change].sentence, { price: pence(PRICE_STEP_PENCE, 0), clause: yearClause(morePence) });
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
