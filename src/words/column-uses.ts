/** What became of a column of a file, for the preview and the command line. */
import type { ColumnUse } from '../model/shapes/evidence.ts';
import { phrase, say } from './say.ts';

const USES: Readonly<Record<ColumnUse, string>> = {
  stamp: phrase('used as the time of each reading'),
  time: phrase('used as the time of day'),
  from: phrase('used as the first day'),
  to: phrase('used as the end'),
  value: phrase('used as the amount'),
  cost: phrase('used as the cost'),
  quality: phrase('used as the mark of estimates'),
  detail: phrase('used as a detail of the bill'),
  kind: phrase('used to tell the registers apart'),
  empty: phrase('left out: it is empty'),
  money: phrase('left out: it is money'),
  price: phrase('left out: it is a price'),
  calorific: phrase('a calorific value: used for gas by volume, else left out'),
  'own-use': phrase('left out: it is what the home used of its own making, and was not bought'),
  weather: phrase('left out: it is another measure of the weather or the place'),
  'not-energy': phrase('left out: it is no energy, but stands beside it'),
  'other-time': phrase('left out: another date or time was used'),
  identifier: phrase('left out: it names or numbers something'),
  marks: phrase('left out: marks of the readings, of which another column was used or none was understood'),
  words: phrase('left out: it holds words'),
  'other-amount': phrase('left out: another column was used for the amount'),
  'other-fuel': phrase('left out: it is a fuel that is not compared here'),
  'to-compare': phrase('left out: it is of another year, another home or a guess'),
  sum: phrase('left out: other columns hold it already'),
  unknown: phrase('left out: we do not know what it means'),
};

export const columnUse = (use: ColumnUse): string => say(USES[use]);
