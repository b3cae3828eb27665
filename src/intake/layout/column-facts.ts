/** What the cells of each column look like, from a sample of the rows. */
import { isClock } from '../dates/read-clock.ts';
import { readStamp } from '../dates/read-stamp.ts';
import { createStampReader, type StampKind, UNREADABLE } from '../dates/stamp-reader.ts';
import { isMissing, markBeside, readAwkwardNumber } from '../numbers/read-number.ts';
import { cellText, type Table } from '../text/table.ts';
import { type HeadingMeaning, meaningOf, unitOfSign } from './headings.ts';

export interface ColumnFacts {
  readonly index: number;
  readonly heading: string;
  readonly meaning: HeadingMeaning;
  readonly sampled: number;
  readonly dates: number;
  /** Commonest kind among the dates. */
  readonly dateKind: StampKind;
  readonly clocks: number;
  readonly numbers: number;
  readonly missing: number;
  readonly words: number;
  /** Numbers that go up by one from row to row. */
  readonly counting: boolean;
  /** No number is smaller than the one in the row before. */
  readonly rising: boolean;
  /** None is larger: a counter written from the newest reading to the oldest. */
  readonly falling: boolean;
  /** How often a number is smaller, and larger, than the one before. */
  readonly falls: number;
  readonly rises: number;
  readonly smallest: number;
  readonly largest: number;
  /** Marks of how a reading came about: E, A, C and the words for them. */
  readonly marks: number;
  /** Such marks beside the number, in one cell with it. */
  readonly marksBeside: number;
  /** Numbers with a sign of money. */
  readonly money: number;
  /** Columns of the other phases of the supply, to be added. */
  readonly phases?: readonly number[];
  /** Columns to be taken off: what the home used of its own making, in a use that holds it. */
  readonly less?: readonly number[];
  /** Whether another column says by a word that we do not know which way it went. */
  readonly isOfUnknownWay?: boolean;
  /** Whether it is read because a person said so: the energies beside it tell nothing of it. */
  readonly isAnswered?: boolean;
  /** Whether its amounts are in another money than the home's. */
  readonly isOtherMoney?: boolean;
  /** Unit written behind the numbers, as in "3.4 kWh". */
  readonly suffix: string;
}

/** Readings that a counter of as many digits can show. */
export const rangeOf = (reading: number): number => 10 ** Math.ceil(Math.log10(Math.floor(reading) + 1));

/** No counter comes so near its end at once. */
export const leaps = (before: number, reading: number): boolean => reading - before > rangeOf(reading) / 2;

/** A counter goes from just below a power of ten, to which it rose bit by bit, to just above nought. */
export function turnsOver(low: number, high: number, before: number | undefined): boolean {
  const range = rangeOf(low);
  return range >= 1000 && low >= 0.9 * range && high < 0.1 * range && !(before !== undefined && leaps(before, low));
}

const MARK = /^(e|a|c|est\.?|estimated?|actual|act\.?|customer( read(ing)?)?|smart|remote|own read(ing)?)$/i;

export function columnFacts(table: Table, column: number, rows: readonly number[], heading: string): ColumnFacts {
  const byHeading = meaningOf(heading);
  const reader = createStampReader();
  const kinds = new Map<StampKind, number>();
  const facts = {
    sampled: 0,
    dates: 0,
    clocks: 0,
    numbers: 0,
    missing: 0,
    words: 0,
    marks: 0,
    marksBeside: 0,
    money: 0,
  };
  let previous = Number.NaN;
  let before: number | undefined;
  let steps = 0;
  let ones = 0;
  let falls = 0;
  let rises = 0;
  let smallest = Number.POSITIVE_INFINITY;
  let largest = Number.NEGATIVE_INFINITY;
  let suffix = '';
  for (const row of rows) {
    const cell = cellText(table, row, column);
    facts.sampled++;
    if (isMissing(cell)) {
      facts.missing++;
      continue;
    }
    if (readStamp(cell, 0, cell.length, true, reader) !== UNREADABLE) {
      facts.dates++;
      kinds.set(reader.kind, (kinds.get(reader.kind) ?? 0) + 1);
    } else if (isClock(cell, ['time', 'from', 'to'].includes(byHeading.role))) facts.clocks++;
    if (MARK.test(cell)) facts.marks++;
    if (markBeside(cell) !== undefined) facts.marksBeside++;
    if (/^[-(]?[£€$]|([£€$]|\d(p| ?ct))$/.test(cell)) facts.money++;
    const number = numberEitherWay(cell);
    if (Number.isNaN(number)) {
      if (facts.dates + facts.clocks === 0) facts.words++;
      continue;
    }
    facts.numbers++;
    smallest = Math.min(smallest, number);
    largest = Math.max(largest, number);
    if (suffix === '') suffix = /[a-zµ³°]+\d?$/i.exec(cell)?.[0] ?? '';
    if (!Number.isNaN(previous)) {
      steps++;
      if (number === previous + 1) ones++;
      if (number < previous && !turnsOver(previous, number, before)) falls++;
      if (number > previous) rises++;
      before = previous;
    }
    previous = number;
  }
  const dateKind = [...kinds].sort((a, b) => b[1] - a[1])[0]?.[0] ?? 'day';
  return {
    index: column,
    heading,
    meaning: withSuffix(heading, byHeading, suffix),
    ...facts,
    dateKind,
    counting: steps > 2 && ones === steps,
    rising: steps > 0 && falls === 0 && largest > smallest,
    falling: steps > 0 && rises === 0 && largest > smallest,
    falls,
    rises,
    smallest,
    largest,
    suffix,
  };
}

/** A unit behind the numbers is one above them. */
function withSuffix(heading: string, byHeading: HeadingMeaning, suffix: string): HeadingMeaning {
  if (byHeading.unit !== undefined || unitOfSign(suffix) === undefined) return byHeading;
  return meaningOf(`${heading} (${suffix})`);
}

export function numberEitherWay(cell: string): number {
  const point = readAwkwardNumber(cell, '.');
  return Number.isNaN(point) ? readAwkwardNumber(cell, ',') : point;
}

const mostOf = (facts: ColumnFacts, count: number): boolean =>
  count > 0 && count >= (facts.sampled - facts.missing) * 0.6;

/** Whether a row from `firstRow` on holds more than nought, of the first `most` of them. */
export function isUsed({ table, firstRow }: Rows, { index }: ColumnFacts, most = Number.POSITIVE_INFINITY): boolean {
  const end = Math.min(table.rowCount, firstRow + most);
  for (let row = firstRow; row < end; row++) if (/[1-9]/.test(cellText(table, row, index))) return true;
  return false;
}
interface Rows {
  readonly table: Table;
  readonly firstRow: number;
}

/** Money by its signs or by its heading. */
export const isMoneyColumn = (facts: ColumnFacts): boolean =>
  facts.meaning.role === 'cost' || mostOf(facts, facts.money);
export const isMarkColumn = (facts: ColumnFacts): boolean => mostOf(facts, facts.marks);
export const isDateColumn = (facts: ColumnFacts): boolean => mostOf(facts, facts.dates);
/** Numbers of which some would do as a clock time are none: "3.20" among "2.95". */
export const isClockColumn = (facts: ColumnFacts): boolean =>
  mostOf(facts, facts.clocks) && facts.numbers <= facts.clocks;
export const isNumberColumn = (facts: ColumnFacts): boolean =>
  mostOf(facts, facts.numbers) && !isDateColumn(facts) && !isClockColumn(facts);
/** Columns of a few short words, as marks of estimated readings are. */
export const isWordColumn = (facts: ColumnFacts): boolean => mostOf(facts, facts.words);
