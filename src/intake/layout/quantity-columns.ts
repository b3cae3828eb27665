/** Which columns may hold an amount at all. */
import { epochOf } from '../dates/stamp-reader.ts';
import type { EnergyUnit } from '../terms/choices.ts';
import { isOfDegrees } from '../terms/units.ts';
import { cellText } from '../text/table.ts';
import { type ColumnFacts, isMoneyColumn, isNumberColumn } from './column-facts.ts';
import { isADay, isSince, isTotal, namesRegister } from './column-words.ts';
import { plainWords } from './headings.ts';
import type { Sheet } from './sheet.ts';
import { stepOf } from './sheet-step.ts';
import {
  DEGREE_DAYS,
  IDENTIFIER,
  OF_UNITS,
  OUT_OF_DOORS,
  PIECES,
  RATE_REGISTER,
  withoutBrackets,
} from './vocabulary.ts';

/** Number columns that may hold quantities, best first. Costs, rates, counters, numbers of customers and hours are none. */
export function quantityColumns(sheet: Sheet, taken: readonly (number | undefined)[]): ColumnFacts[] {
  const others = sheet.columns.filter((c) => isNumberColumn(c) && !taken.includes(c.index));
  const most = Math.max(...others.map((c) => c.numbers));
  const numbers = others.filter(
    (c) =>
      // Numbers now and then under words that are not known are remarks.
      !(c.meaning.role === 'unknown' && c.numbers * 2 < most) &&
      !(c.counting && (c.meaning.role === 'index' || c.index === 0 || isRowNumber(c))) &&
      !isOfClock(c) &&
      !isMoneyColumn(c) &&
      !isOfNoAmount(c) &&
      !isYesOrNo(sheet, c, others) &&
      // "10 kWh" in every row of a column of units is no amount.
      !(c.smallest === c.largest && c.suffix !== '' && OF_UNITS.test(plainWords(c.heading))) &&
      !isSizeOfPieces(c, others) &&
      // Numbers of a station or a place stand in every row alike.
      !(c.meaning.role === 'unknown' && c.smallest === c.largest && c.largest !== 0 && c.numbers > 2),
  );
  // All since the year began, beside the amounts of its months, is the same again.
  const isOfSince = (c: ColumnFacts, other: ColumnFacts) =>
    isSince(c) &&
    !isSince(other) &&
    other.meaning.unit === c.meaning.unit &&
    [undefined, other.meaning.carrier].includes(c.meaning.carrier) &&
    c.meaning.seriesRole === other.meaning.seriesRole &&
    other.meaning.role === 'value';
  // "kWh a day" beside kWh is the same again; a number under "Day" is a register beside another register only.
  const amounts = numbers.filter(
    (c) =>
      (!isADay(c) ||
        isOfWarmth(c) ||
        !numbers.some((other) => !isADay(other) && other.meaning.unit === c.meaning.unit)) &&
      !numbers.some((other) => isOfSince(c, other)) &&
      (c.meaning.role !== 'stamp' || numbers.some((other) => other !== c && namesRegister(other))) &&
      !isOneExtreme(c, numbers) &&
      !isSumOfDays(sheet, c, numbers) &&
      !isEstimateBeside(c, numbers) &&
      !(c.meaning.unit === undefined && c.meaning.carrier === undefined && isOfDegreeDays(sheet)),
  );
  const score = (c: ColumnFacts) =>
    (c.meaning.unit ? 4 : 0) +
    (c.meaning.role === 'value' ? 2 : 0) +
    (c.meaning.carrier ? 1 : 0) +
    (saysOutdoors(c) ? 0.5 : 0) -
    (c.meaning.role === 'index' ? 3 : 0);
  return amounts.toSorted((a, b) => score(b) - score(a) || a.index - b.index);
}

/** "47 kg" in every row beside a number of bottles. */
const isSizeOfPieces = (c: ColumnFacts, others: readonly ColumnFacts[]): boolean =>
  c.suffix !== '' &&
  c.smallest === c.largest &&
  others.some((other) => other !== c && other.suffix === '' && PIECES.test(plainWords(other.heading)));

/** Nothing but 0 and 1 without a unit, beside energy that has one: whether something is so. */
function isYesOrNo({ table, firstRow }: Sheet, c: ColumnFacts, others: readonly ColumnFacts[]): boolean {
  if (c.meaning.unit !== undefined || c.largest > 1 || c.smallest < 0) return false;
  if (!others.some((other) => isEnergyUnit(other.meaning.unit))) return false;
  for (let row = firstRow; row < Math.min(table.rowCount, firstRow + 200); row++)
    if (!['', '0', '1'].includes(cellText(table, row, c.index))) return false;
  return true;
}

/** By a title that does not explain one of several columns. */
const isOfDegreeDays = ({ preamble }: Sheet): boolean =>
  preamble.some(({ text }) => !/^\W*\w{1,6} *[:=]/.test(text) && DEGREE_DAYS.test(plainWords(text)));

/** The sum of a day in one of its rows, beside the readings of all. */
const isSumOfDays = (sheet: Sheet, c: ColumnFacts, numbers: readonly ColumnFacts[]): boolean =>
  isTotal(c) &&
  (stepOf(sheet).minutes ?? 1440) < 1440 &&
  numbers.some((other) => other.meaning.unit === c.meaning.unit && c.numbers * 10 < other.numbers);

/** What was estimated, beside what it came to. */
const isEstimateBeside = (c: ColumnFacts, numbers: readonly ColumnFacts[]): boolean =>
  /estimat|geschatz/.test(plainWords(c.heading)) &&
  numbers.some(
    (other) => other.meaning.unit === c.meaning.unit && /actual|gemessen|measured/.test(plainWords(other.heading)),
  );

export const isOfWarmth = ({ meaning: { unit, carrier } }: ColumnFacts): boolean =>
  isOfDegrees(unit) || carrier === 'outdoor-temperature';

/**
 * The highest temperature of a day without the lowest, or the other way about, tells no mean; beside energy neither of
 * them is read.
 */
const isOneExtreme = (c: ColumnFacts, numbers: readonly ColumnFacts[]): boolean =>
  isOfWarmth(c) &&
  (c.meaning.role === 'maximum' || c.meaning.role === 'minimum') &&
  (!numbers.some((other) => other.meaning.role === (c.meaning.role === 'maximum' ? 'minimum' : 'maximum')) ||
    numbers.some((other) => isEnergyUnit(other.meaning.unit)));

/** One more in each of many rows, under words that say no amount. */
const isRowNumber = ({ meaning: { role, unit, carrier }, numbers }: ColumnFacts): boolean =>
  role === 'unknown' && unit === undefined && carrier === undefined && numbers >= MANY_ROWS;
const MANY_ROWS = 10;

/** Seconds or milliseconds since 1970: the time again. */
const isOfClock = ({ meaning, smallest, largest, rises, falls }: ColumnFacts): boolean =>
  meaning.unit === undefined &&
  meaning.role !== 'reading' &&
  (rises === 0 || falls === 0) &&
  epochOf(smallest, largest) !== undefined;

const NO_AMOUNT = new Set(['rate', 'calorific', 'quality', 'beside', 'bill', 'time', 'from', 'to']);

/** By the words above it; "Tag" may be a day or the dear register. */
function isOfNoAmount({ heading, meaning, largest }: ColumnFacts): boolean {
  const words = plainWords(heading);
  // "Actual" is a mark where it says yes or no, and beside a target what was used.
  if (meaning.role === 'quality' && /^(actuals?|ist)$/.test(words) && largest > 1) return false;
  if (NO_AMOUNT.has(meaning.role)) return true;
  if (meaning.role === 'stamp') return !RATE_REGISTER.test(words);
  return meaning.role === 'index' && IDENTIFIER.test(withoutBrackets(words));
}

/** Units in which one use may stand side by side, the one that is taken first. */
export const BEST_UNITS: readonly (EnergyUnit | undefined)[] = [
  'kWh',
  'Wh',
  'MWh',
  'MJ',
  'GJ',
  'Gcal',
  'therm',
  'MMBTU',
  'BTU',
];

export const isEnergyUnit = (unit: EnergyUnit | undefined): boolean => unit !== undefined && BEST_UNITS.includes(unit);

export const saysOutdoors = (c: ColumnFacts): boolean => isOfWarmth(c) && OUT_OF_DOORS.test(plainWords(c.heading));
