/** Columns that say the same of a use in two ways: a counter beside what it rose by, gas by volume beside its energy. */

import { sumOf } from '../../model/units/sums.ts';
import { readAwkwardNumber } from '../numbers/read-number.ts';
import type { EnergyUnit } from '../terms/choices.ts';
import { isOfDegrees, ratioOf } from '../terms/units.ts';
import { cellText } from '../text/table.ts';
import { type ColumnFacts, isMoneyColumn, isNumberColumn, numberEitherWay } from './column-facts.ts';
import type { Sheet } from './sheet.ts';
import { stepOf } from './sheet-step.ts';

const LEAST_ROWS = 3;
const SAMPLE_ROWS = 2000;
/** Amounts of a home differ by more than this from their mean. A judgement. */
const VARIES = 0.05;
/** Of the sum, what rounding may leave between the two. */
const ROUNDED = 0.02;
/** Meters of gas and their bills may lie so far apart by the factors of single days. */
const BY_FACTORS = 0.12;
/** kWh in a m³ of gas, thin or rich. */
const KWH_IN_M3 = [8, 13] as const;

/** Numbers of a column in the order of time. */
function numbersOf(sheet: Sheet, { index }: ColumnFacts, numberOf = numberEitherWay): number[] {
  const { table, firstRow } = sheet;
  const rows = Array.from({ length: Math.min(SAMPLE_ROWS, table.rowCount - firstRow) }, (_, i) => firstRow + i);
  const numbers = rows.map((row) => numberOf(cellText(table, row, index)));
  return stepOf(sheet).isNewestFirst ? numbers.reverse() : numbers;
}

/** Whether rows of energy and rows of gas by volume, told apart by their unit, are one use in both. */
export function isOfVolumeRows(energy: Sheet, volume: Sheet): boolean {
  const amountOf = ({ columns }: Sheet) => columns.find((c) => isNumberColumn(c) && c.meaning.role === 'value');
  const [kWh, m3] = [amountOf(energy), amountOf(volume)];
  if (!kWh || !m3 || mayCount(kWh) || mayCount(m3)) return false;
  const { share, ratio, count } = distance(numbersOf(energy, kWh), numbersOf(volume, m3));
  return count >= LEAST_ROWS && share <= BY_FACTORS && ratio > KWH_IN_M3[0] && ratio < KWH_IN_M3[1];
}

/** How far one list is from so many times the other, as a share of it, and how many that is. */
function distance(of: readonly number[], from: readonly number[]): { share: number; ratio: number; count: number } {
  const pairs = of.flatMap((a, i) =>
    Number.isNaN(a) || Number.isNaN(from[i] ?? Number.NaN) ? [] : [[a, from[i]!] as const],
  );
  const whole = sumOf(pairs.map(([a]) => a));
  const ratio = whole / sumOf(pairs.map(([, b]) => b));
  const apart = sumOf(pairs.map(([a, b]) => Math.abs(a - ratio * b)));
  return { share: whole > 0 ? apart / whole : Number.NaN, ratio, count: pairs.length };
}

const isEven = (numbers: readonly number[]): boolean => distance(numbers, numbers.map(Math.sign)).share < VARIES;

/** Whether a counter rose by what another column gives, and on which side of each date that lies. */
function sideOfRise(sheet: Sheet, counter: ColumnFacts, amount: ColumnFacts): 'start' | 'end' | 'either' | undefined {
  const readings = numbersOf(sheet, counter);
  const amounts = numbersOf(sheet, amount);
  // Beside amounts that are all alike everything that goes up evenly would do.
  if (isEven(amounts)) return undefined;
  const rise = readings.map((reading, i) => reading - (readings[i - 1] ?? Number.NaN));
  // And so would what rises evenly beside amounts of which one stands out.
  if (isEven(rise)) return undefined;
  const [end, start] = [rise, rise.slice(1)].map((rises) => distance(amounts, rises));
  const fits = (one: typeof end) => one!.count >= LEAST_ROWS && one!.ratio > 0 && one!.share <= ROUNDED;
  if (fits(start) && !fits(end)) return 'start';
  // A running total holds its own row and may stand beside either; a reading to begin with has no amount.
  const begins = !Number.isNaN(readings[0]!) && Number.isNaN(amounts[0]!);
  return fits(end) ? (begins ? 'end' : 'either') : undefined;
}

/** The unit of a counter that rose by just what a column without a unit gives. */
export function unitOfCounter(sheet: Sheet, amount: ColumnFacts): EnergyUnit | undefined {
  const isBy = (counter: ColumnFacts) => {
    const readings = numbersOf(sheet, counter);
    const rise = readings.map((reading, i) => reading - (readings[i - 1] ?? Number.NaN));
    const amounts = numbersOf(sheet, amount);
    return !isEven(amounts) && [rise, rise.slice(1)].some((rises) => isSame(distance(amounts, rises)));
  };
  const isSame = ({ share, ratio, count }: ReturnType<typeof distance>) =>
    count >= LEAST_ROWS && share <= ROUNDED && Math.abs(ratio - 1) <= ROUNDED;
  return sheet.columns.find(
    (c) => c !== amount && c.meaning.unit !== undefined && isAmount(c) && mayCount(c) && isBy(c),
  )?.meaning.unit;
}

/** Amounts of a home rise and fall; a counter falls when it is changed. */
const mayCount = (c: ColumnFacts): boolean =>
  c.falls <= 1 && c.rises > 2 * c.falls && c.rises >= 2 && !isOfDegrees(c.meaning.unit);
const isAmount = (c: ColumnFacts): boolean =>
  isNumberColumn(c) && !isMoneyColumn(c) && c.largest > 0 && c.meaning.role !== 'beside';

/** Whether a column counts what another gives as amounts; one that is named, or any. */
export const countsOther = (sheet: Sheet, counter: ColumnFacts, other?: ColumnFacts): boolean =>
  mayCount(counter) &&
  (other ? [other] : sheet.columns).some(
    (c) => c !== counter && isAmount(c) && !mayCount(c) && sideOfRise(sheet, counter, c) !== undefined,
  );

/** Whether each row begins with the reading that the row before ended with, as lists of old and new readings do. */
function isChained(sheet: Sheet, counters: readonly ColumnFacts[]): boolean {
  const readings = counters.map((c) => numbersOf(sheet, c));
  const goesOn = (old: readonly number[], next: readonly number[]) =>
    next.length >= LEAST_ROWS && old.slice(1).every((reading, i) => reading === next[i]);
  return readings.some((old) => readings.some((next) => next !== old && goesOn(old, next)));
}

/** On which side of its date what was used lies, where a counter stands beside it. */
export function sideByCounter(sheet: Sheet): 'start' | 'end' | undefined {
  const counters = sheet.columns.filter((c) => isAmount(c) && mayCount(c));
  // The old reading is known from the row before: the date is that of the new one.
  if (isChained(sheet, counters)) return 'end';
  for (const counter of counters)
    for (const amount of sheet.columns) {
      const carriers = new Set([counter, amount].flatMap((c) => c.meaning.carrier ?? []));
      if (amount === counter || !isAmount(amount) || carriers.size > 1) continue;
      const side = sideOfRise(sheet, counter, amount);
      if (side === 'start' || side === 'end') return side;
    }
  return undefined;
}

/** Whether energy is that of a volume of gas beside it, both as amounts or both as counters. */
export function isOfVolume(sheet: Sheet, energy: ColumnFacts, volume: ColumnFacts): boolean {
  const kWh = energy.meaning.unit && ratioOf(energy.meaning.unit, 'kWh');
  // "2.373" beside "219,4" is told by the whole column only, and here by what fits.
  return [numberEitherWay, withComma].some((numberOf) => {
    const steps = (c: ColumnFacts) => {
      const numbers = numbersOf(sheet, c, numberOf);
      return mayCount(c) ? numbers.map((n, i) => n - (numbers[i - 1] ?? Number.NaN)) : numbers;
    };
    const { share, ratio, count } = distance(steps(energy), steps(volume));
    const kWhInM3 = volume.meaning.unit === 'm³' && kWh ? ratio * kWh : undefined;
    const isOfGas = kWhInM3 === undefined || (kWhInM3 > KWH_IN_M3[0] && kWhInM3 < KWH_IN_M3[1]);
    return (
      (numberOf === numberEitherWay && count < LEAST_ROWS) || (count >= LEAST_ROWS && share <= BY_FACTORS && isOfGas)
    );
  });
}

const withComma = (cell: string): number => readAwkwardNumber(cell, ',');
