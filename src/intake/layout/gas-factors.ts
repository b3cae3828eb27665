/** What the columns of a table say of the energy in its gas: calorific value, correction, or both in one number. */
import { MJ_PER_KWH } from '../../model/units/gas-volume.ts';
import { meanOf } from '../../model/units/sums.ts';
import { readAwkwardNumber } from '../numbers/read-number.ts';
import type { EnergyUnit, IntakeContext } from '../terms/choices.ts';
import { kWhPerUnit } from '../terms/units.ts';
import { cellText } from '../text/table.ts';
import { isNumberColumn } from './column-facts.ts';
import { plainWords } from './headings.ts';
import type { Sheet } from './sheet.ts';
import { GAS_FACTOR } from './vocabulary.ts';

const SAMPLE_ROWS = 300;
/** A cubic metre at the conditions of the standard, as Italy and traders write it, needs no correction. */
const AT_STANDARD = /\b(smc|[ns]m[3³]|mc ?s)\b|(standard|normal) ?(cubic|m[3³]|kubik|metr)/;

/** What holds for the gas of a column whose unit is said in such words. */
export const gasOf = (words: string, context: IntakeContext): IntakeContext =>
  AT_STANDARD.test(words) ? { ...context, gasVolume: { ...context.gasVolume, correction: 1 } } : context;

/** What each number can be, by its size: MJ or kWh in a m³, and the correction of volume. Common practice, no source. */
const isMJ = (value: number): boolean => value >= 30 && value <= 50;
const isKWh = (value: number): boolean => value >= 8 && value <= 14;
const isCorrection = (value: number): boolean => value >= 0.85 && value <= 1.15;

/**
 * kWh in one of the unit by the numbers of a row, with the calorific value that was chosen where one was; NaN where the row does not say. Undefined where no column does.
 * Heading words only say whether a number is the calorific value or already holds the correction.
 */
export function gasFactorsOf(
  sheet: Sheet,
  unit: EnergyUnit,
  context: IntakeContext,
  chosenMJPerM3?: number,
): ((row: number) => number) | undefined {
  const told = sheet.columns.filter(
    (c) => isNumberColumn(c) && (c.meaning.role === 'calorific' || c.meaning.bill === 'correction'),
  );
  const isEnough = told.some((c) => (chosenMJPerM3 === undefined) === (c.meaning.role === 'calorific'));
  if (!isEnough) return undefined;
  const m3PerUnit = kWhPerUnit(unit, 'gas', context) / kWhPerUnit('m³', 'gas', context);
  return (row) => {
    let calorific = (chosenMJPerM3 ?? Number.NaN) / MJ_PER_KWH;
    let { correction } = context.gasVolume;
    for (const { index, heading } of told) {
      const value = numberWithin(cellText(sheet.table, row, index));
      if (isCorrection(value)) correction = value;
      else if (chosenMJPerM3 !== undefined) continue;
      else if (isMJ(value)) calorific = value / MJ_PER_KWH;
      else if (isKWh(value)) {
        calorific = value;
        if (GAS_FACTOR.test(plainWords(heading))) correction = 1;
      }
    }
    return calorific * correction * m3PerUnit;
  };
}

/** "11,412" is 11.412: of both ways to read it the one that can be such a number. */
function numberWithin(cell: string): number {
  const point = readAwkwardNumber(cell, '.');
  return isCorrection(point) || isMJ(point) || isKWh(point) ? point : readAwkwardNumber(cell, ',');
}

/** Mean of what the first rows say; undefined where none says anything. */
export function meanGasFactor(
  sheet: Sheet,
  unit: EnergyUnit,
  context: IntakeContext,
  chosenMJPerM3?: number,
): number | undefined {
  const factorAt = gasFactorsOf(sheet, unit, context, chosenMJPerM3);
  if (!factorAt) return undefined;
  const end = Math.min(sheet.table.rowCount, sheet.firstRow + SAMPLE_ROWS);
  const said: number[] = [];
  for (let row = sheet.firstRow; row < end; row++) {
    const factor = factorAt(row);
    if (!Number.isNaN(factor)) said.push(factor);
  }
  return said.length === 0 ? undefined : meanOf(said);
}
