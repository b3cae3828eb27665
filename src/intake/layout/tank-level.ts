/** How full a tank is: no amount that was used or delivered. */
import { isDelivered, isSaleUnit } from '../../model/shapes/heating.ts';
import type { ColumnFacts } from './column-facts.ts';
import { plainWords } from './headings.ts';
import type { Sheet } from './sheet.ts';
import { stepOf } from './sheet-step.ts';
import { IN_TANK } from './vocabulary.ts';

export const namedLevel = ({ columns }: Sheet): ColumnFacts | undefined =>
  columns.find(({ heading, numbers }) => numbers > 0 && IN_TANK.test(plainWords(heading)));

/** What is left falls from day to day and rises when the tank is filled; use does neither. Judgements. */
const LEAST_FALLS = 14;
const FALLS_A_RISE = 8;
const LONGEST_STEP = 7 * 1440;

/** The same under words that do not say so. */
export function fallingLevel(sheet: Sheet): ColumnFacts | undefined {
  const { kind, minutes = Number.POSITIVE_INFINITY } = stepOf(sheet);
  if ((kind !== 'time' && kind !== 'day') || minutes > LONGEST_STEP) return undefined;
  return sheet.columns.find(
    ({ meaning: { unit, carrier, role }, falls, rises }) =>
      (isSaleUnit(unit) || isDelivered(carrier)) &&
      role === 'value' &&
      falls >= LEAST_FALLS &&
      falls >= FALLS_A_RISE * rises,
  );
}
