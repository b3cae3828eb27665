/** What a file of newer prices and reference values changes, in words. */
import { isFuel } from '../model/shapes/heating.ts';
import { longDate } from './numbers.ts';
import { language, phrase, say } from './say.ts';
import { carrierName } from './systems.ts';

/** The names that prices have; what else may change keeps the name that it has in the file. */
const PART_NAMES: Readonly<Record<string, string>> = {
  edition: phrase('Valid from'),
  quarters: phrase('Gas and electricity'),
  deliveredPrices: phrase('Fuels by delivery'),
  twoRate: phrase('Day and night'),
  pencePerKWh: phrase('pence a kWh'),
  standingPencePerDay: phrase('pence a day'),
  pencePerUnit: phrase('pence a sales unit'),
  fuel: phrase('fuel'),
  from: phrase('first day'),
  to: phrase('last day'),
};
const IS_DAY = /^\d{4}-\d{2}-\d{2}$/;
/** A row is named by its fuel and its first day, as in "gas 2026-10-01". */
function wordOfRow(word: string): string {
  if (IS_DAY.test(word)) return longDate(word);
  return isFuel(word) || word === 'electricity' ? carrierName(word) : word;
}
const partName = (part: string): string =>
  PART_NAMES[part] === undefined ? part.split(' ').map(wordOfRow).join(' ') : say(PART_NAMES[part]);

/** Where a value stands, as in "Gas and electricity › gas 1 October 2026 › pence a kWh". */
export const valuePlace = (path: readonly string[]): string => path.map(partName).join(' › ');

export function valueShown(value: string | number | undefined): string {
  if (value === undefined) return '–';
  if (typeof value === 'number') return value.toLocaleString(language(), { maximumSignificantDigits: 12 });
  return IS_DAY.test(value) ? longDate(value) : value;
}
