/** What the columns of a table say of the energy in its gas: calorific value, correction, or both in one number. */
import { MJ_PER_KWH } from '../../model/units/gas-volume.ts';
import { meanOf } from '../../model/units/sums.ts';
import { readAwkwardNumber } from '../numbers/read-number.ts';
import type { EnergyUnit, IntakeContext } from '../terms/choices.ts';
import { type RemarkBook, tellNumber } from '../terms/remark-book.ts';
import { KWH_PER_THERM, kWhPerUnit } from '../terms/units.ts';
import { cellText } from '../text/table.ts';
import { type ColumnFacts, isNumberColumn } from './column-facts.ts';
import { plainWords } from './headings.ts';
import type { Sheet } from './sheet.ts';
import { GAS_FACTOR, THERM_FACTOR } from './vocabulary.ts';

const SAMPLE_ROWS = 300;
/** A cubic metre at the conditions of the standard, as Italy and traders write it, needs no correction. */
const AT_STANDARD = /\b(smc|[ns]m[3³]|mc ?s)\b|(standard|normal) ?(cubic|m[3³]|kubik|metr)/;

/**
 * In America volume is billed without Britain's correction. 1,036 Btu in a cubic foot, 2025: U.S. Energy Information
 * Administration, Heat Content of Natural Gas Consumed (eia.gov/dnav/ng/ng_cons_heat_a_EPG0_VGTH_btucf_a.htm).
 */
const AMERICAN_GAS = { correction: 1, calorificMJPerM3: 38.6, imperialM3PerHundredCubicFeet: 2.831_684_659_2 };
const AMERICAN_UNIT = /(?<![a-z])mcf(?![a-z])/;
const FEET = /(?<![a-z])c?cf(?![a-z])|f(oo|ee)?t/;

/** What holds for the gas of a column whose unit is said in such words; dollars or therms a unit beside feet are America's. */
export function gasOf({ columns, table, firstRow }: Sheet, words: string, context: IntakeContext): IntakeContext {
  const isAmerican = () =>
    columns.some(
      ({ heading, money, index }) =>
        heading.includes('$') ||
        THERM_FACTOR.test(plainWords(heading)) ||
        (money > 0 && cellText(table, firstRow, index).includes('$')),
    );
  const ofPlace = gasOfPlace(context);
  if (ofPlace !== context) return ofPlace;
  if (AMERICAN_UNIT.test(words) || (FEET.test(words) && isAmerican())) return { ...context, gasVolume: AMERICAN_GAS };
  return AT_STANDARD.test(words) ? { ...context, gasVolume: { ...context.gasVolume, correction: 1 } } : context;
}

export const gasOfPlace = (context: IntakeContext): IntakeContext =>
  isOfAmerica(context) ? { ...context, gasVolume: AMERICAN_GAS } : context;

export const isOfAmerica = ({ zone }: IntakeContext): boolean => zone.startsWith('America/');

/**
 * Asks for the calorific value that was taken; bills in America print therms for a hundred cubic feet instead, and most
 * others kWh for a m³.
 */
export function askCalorific(
  { gasVolume }: IntakeContext,
  book: RemarkBook,
  mjPerM3 = gasVolume.calorificMJPerM3,
): void {
  const { isByKWh = false } = gasVolume;
  book.add('calorific-assumed', 'question', {
    ...tellNumber(isByKWh ? Number((mjPerM3 / MJ_PER_KWH).toFixed(3)) : mjPerM3),
    ...(isByKWh ? { found: 'kWh' } : gasVolume === AMERICAN_GAS ? { found: 'therms' } : {}),
  });
}

const tellsOfGas = (c: ColumnFacts): boolean =>
  isNumberColumn(c) && (c.meaning.role === 'calorific' || c.meaning.bill === 'correction');

/** Where each home has its own correction, a calorific value without it is half of what is needed. */
export const isHalfTold = ({ columns }: Sheet, { gasVolume }: IntakeContext): boolean =>
  gasVolume.isByKWh === true &&
  columns.some(tellsOfGas) &&
  !columns.some((c) => tellsOfGas(c) && (c.meaning.bill === 'correction' || GAS_FACTOR.test(plainWords(c.heading))));

/** What each number can be, by its size: MJ or kWh in a m³, and the correction of volume. Common practice, no source. */
const isMJ = (value: number): boolean => value >= 30 && value <= 50;
const isKWh = (value: number): boolean => value >= 8 && value <= 14;
const isTherms = (value: number): boolean => value >= 0.85 && value <= 1.2;
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
  const told = sheet.columns
    .filter(tellsOfGas)
    .map((c) => ({ ...c, inTherms: THERM_FACTOR.test(plainWords(c.heading)) }));
  const isEnough = told.some((c) => (chosenMJPerM3 === undefined) === (c.meaning.role === 'calorific'));
  if (!isEnough) return undefined;
  const m3PerUnit = kWhPerUnit(unit, 'gas', context) / kWhPerUnit('m³', 'gas', context);
  return (row) => {
    let calorific = (chosenMJPerM3 ?? Number.NaN) / MJ_PER_KWH;
    let { correction } = context.gasVolume;
    for (const { index, heading, inTherms } of told) {
      const value = numberWithin(cellText(sheet.table, row, index));
      if (inTherms) {
        // 1.036 therms in a hundred cubic feet are 1036 BTU in one.
        const therms = value > 100 ? value / 1000 : value;
        if (chosenMJPerM3 !== undefined || !isTherms(therms)) continue;
        calorific = (therms * KWH_PER_THERM) / AMERICAN_GAS.imperialM3PerHundredCubicFeet;
        correction = 1;
      } else if (isCorrection(value)) correction = value;
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
