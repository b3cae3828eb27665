/** What could change the cost, each thing by itself. */
import { spokenPounds } from './numbers.ts';

/** Things that may change, as clauses that take "the year costs about £200 more". */
const CAUSES: Readonly<Record<string, string>> = {
  'electricity-up': 'If a unit of electricity costs 5 p more',
  'electricity-down': 'If a unit of electricity costs 5 p less',
  'flow-up': 'If the water to the radiators has to be 5 degrees hotter',
  'flow-down': 'If the water to the radiators can be 5 degrees cooler',
  'room-up': 'If the rooms are one degree warmer',
  'room-down': 'If the rooms are one degree cooler',
  'water-up': 'If you use half as much hot water again',
  'water-down': 'If you use half the hot water',
  'winter-cold': 'In a cold winter',
  'winter-mild': 'In a mild winter',
};

/** "In a cold winter the year costs about £110 more." */
export function changeSentence(change: string, pence: number): string {
  const cause = CAUSES[change] ?? change;
  const comma = cause.startsWith('If') ? ',' : '';
  if (!Number.isFinite(pence)) return `${cause}${comma} we cannot say what the year costs.`;
  if (Math.abs(pence) < 500) return `${cause}${comma} the year costs about the same.`;
  return `${cause}${comma} the year costs about ${spokenPounds(Math.abs(pence))} ${pence > 0 ? 'more' : 'less'}.`;
}
