/** How full a tank is: no amount that was used or delivered. */
import { isDelivered, isSaleUnit } from '../../model/shapes/heating.ts';
import { cellText } from '../text/table.ts';
import { type ColumnFacts, numberEitherWay } from './column-facts.ts';
import { plainWords } from './headings.ts';
import type { Sheet } from './sheet.ts';
import { stepOf } from './sheet-step.ts';
import { IN_TANK, PUT_IN } from './vocabulary.ts';

export const namedLevel = ({ columns }: Sheet): ColumnFacts | undefined =>
  columns.find(({ heading, numbers }) => numbers > 0 && IN_TANK.test(plainWords(heading)));

/** What is left falls from day to day and rises when the tank is filled; use does neither. Judgements. */
const LEAST_FALLS = 14;
const FALLS_A_RISE = 8;
const LONGEST_STEP = 7 * 1440;

/** The same under words that do not say so. */
export const fallingLevel = (sheet: Sheet): ColumnFacts | undefined => longFall(sheet) ?? fallBesideFillings(sheet);

const LEAST_BESIDE = 3;

/** What rises where something was put in, and nowhere else. */
function fallBesideFillings(sheet: Sheet): ColumnFacts | undefined {
  const fillings = sheet.columns.find(({ heading }) => PUT_IN.test(plainWords(heading)));
  if (!fillings) return undefined;
  const { table, firstRow } = sheet;
  const rows = Array.from({ length: Math.min(table.rowCount - firstRow, LOOKED_AT) }, (_, i) => firstRow + i);
  const isFilled = rows.map((row) => /[1-9]/.test(cellText(table, row, fillings.index)));
  return sheet.columns.find(({ index, meaning: { unit, carrier }, falls, rises }) => {
    if (index === fillings.index || !(isSaleUnit(unit) || isDelivered(carrier))) return false;
    if (falls < LEAST_BESIDE || rises === 0) return false;
    const levels = rows.map((row) => numberEitherWay(cellText(table, row, index)));
    return levels.every((level, i) => i === 0 || Number.isNaN(level) || level > levels[i - 1]! === isFilled[i]);
  });
}
const LOOKED_AT = 400;

function longFall(sheet: Sheet): ColumnFacts | undefined {
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
