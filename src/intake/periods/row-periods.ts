/** First and last day of each row's period: from two dates, from the label of a month or quarter, or from one date a row. */
import { monthOf, toCivilDate, toDayNumber, yearOf } from '../../model/calendar/civil.ts';
import type { CivilDate } from '../../model/shapes/dates.ts';
import { COMMENCING, ENDING } from '../dates/read-stamp.ts';
import type { ColumnFacts } from '../layout/column-facts.ts';
import { sideByCounter } from '../layout/counter-beside.ts';
import { plainWords } from '../layout/headings.ts';
import { type Dates, readDatesAt } from '../layout/read-dates.ts';
import type { Sheet } from '../layout/sheet.ts';
import { columnName } from '../layout/value-cells.ts';
import { BOUGHT_AHEAD, SINCE_LAST } from '../layout/vocabulary.ts';
import { countAsNumber } from '../numbers/read-number.ts';
import type { IntakeChoices } from '../terms/choices.ts';
import type { RemarkBook } from '../terms/remark-book.ts';
import { cellText } from '../text/table.ts';

export interface RowPeriods {
  /** Days, `to` exclusive; NaN where the row has no period. */
  readonly fromDay: Float64Array;
  readonly toDay: Float64Array;
  readonly toInclusive?: boolean;
  readonly stamp?: 'start' | 'end';
}

const dayOf = (minutes: number): number => Math.floor(minutes / 1440);

export function rowPeriods(
  sheet: Sheet,
  dates: Dates,
  toColumn: number | undefined,
  amounts: readonly ColumnFacts[],
  choices: IntakeChoices,
  zone: string,
  book: RemarkBook,
): RowPeriods {
  if (toColumn !== undefined) return fromTwoDates(sheet, dates, toColumn, choices, zone, book);
  if (dates.kind === 'week') {
    book.add('weeks-by-number', 'note', { column: columnName(sheet, sheet.dateColumn) });
    const fromDay = Float64Array.from(dates.civilMinute.subarray(0, dates.count), dayOf);
    return { fromDay, toDay: fromDay.map((day) => day + 7) };
  }
  if (dates.kind === 'month' || dates.kind === 'quarter')
    return everyFewMonths(sheet, dates, choices, book) ?? fromLabels(dates, dates.kind === 'month' ? 1 : 3);
  return fromOneDate(sheet, dates, amounts, choices, book);
}

/** Takes the days off rows that go on after today, in place: what is written there is of a part of them only. */
export function leaveOutUnfinished(
  { toDay }: RowPeriods,
  sheet: Sheet,
  dates: Dates,
  today: CivilDate,
  book: RemarkBook,
): void {
  const last = toDayNumber(today);
  for (let i = 0; i < toDay.length; i++) {
    if (!(toDay[i]! - 1 > last)) continue;
    book.tally('not-over', 'note', {
      row: sheet.table.lineOfRow[dates.rows[i]!]!,
      from: today,
      to: toCivilDate(toDay[i]! - 1),
    });
    toDay[i] = Number.NaN;
  }
}

function fromTwoDates(
  sheet: Sheet,
  dates: Dates,
  toColumn: number,
  choices: IntakeChoices,
  zone: string,
  book: RemarkBook,
): RowPeriods {
  const { count } = dates;
  const fromDay = Float64Array.from(dates.civilMinute.subarray(0, count), dayOf);
  const toDay = readDatesAt(sheet, toColumn, dates.rows, count, dates.dayFirst, zone).map(dayOf);
  const toInclusive = choices.toInclusive ?? decideInclusive(fromDay, toDay, sheet, dates, toColumn, book);
  for (let i = 0; i < count; i++) {
    const line = sheet.table.lineOfRow[dates.rows[i]!]!;
    if (Number.isNaN(toDay[i]!)) {
      const found = cellText(sheet.table, dates.rows[i]!, toColumn);
      book.tally('date-unreadable', 'note', { row: line, column: columnName(sheet, toColumn), found });
      continue;
    }
    if (toInclusive) toDay[i]! += 1;
    if (toDay[i]! <= fromDay[i]!) {
      book.tally('period-backwards', 'note', {
        row: line,
        from: toCivilDate(fromDay[i]!),
        to: toCivilDate(toDay[i]! - (toInclusive ? 1 : 0)),
      });
      toDay[i] = Number.NaN;
    }
  }
  return { fromDay, toDay, toInclusive };
}

/** A period that ends the day before the next begins includes its last day; one that ends on that day does not. */
function decideInclusive(
  fromDay: Float64Array,
  toDay: Float64Array,
  sheet: Sheet,
  dates: Dates,
  toColumn: number,
  book: RemarkBook,
): boolean {
  const starts = new Set(fromDay);
  let inclusive = 0;
  let exclusive = 0;
  for (const day of toDay) {
    if (starts.has(day + 1)) inclusive++;
    if (starts.has(day)) exclusive++;
  }
  if (inclusive !== exclusive) return inclusive > exclusive;
  const monthEnds = toDay.every((day) => Number.isNaN(day) || toCivilDate(day + 1).endsWith('-01'));
  const monthStarts = toDay.every((day) => Number.isNaN(day) || toCivilDate(day).endsWith('-01'));
  const fromStarts = fromDay.every((day) => toCivilDate(day).endsWith('-01'));
  if (fromStarts && monthEnds) return true;
  if (fromStarts && monthStarts) return false;
  askInclusive(sheet, dates, toColumn, book);
  return true;
}

function askInclusive(sheet: Sheet, dates: Dates, toColumn: number, book: RemarkBook): void {
  const row = dates.rows[0]!;
  book.add('to-inclusive-asked', 'question', {
    row: sheet.table.lineOfRow[row]!,
    column: columnName(sheet, toColumn),
    found: cellText(sheet.table, row, toColumn),
  });
}

/** Fewer bills may be those that were at hand. A judgement. */
const LEAST_EVEN = 4;

/** Every second or third month by name: each row is of all the months up to it or from it on; asked, for nothing tells which. */
function everyFewMonths(sheet: Sheet, dates: Dates, choices: IntakeChoices, book: RemarkBook): RowPeriods | undefined {
  if (dates.kind !== 'month') return undefined;
  const fromDay = Float64Array.from(dates.civilMinute.subarray(0, dates.count), dayOf);
  const months = Array.from(new Set(fromDay), monthNumber).toSorted((a, b) => a - b);
  const step = months[1]! - months[0]!;
  if (
    months.length < LEAST_EVEN ||
    step < 2 ||
    step > 6 ||
    months.some((month, i) => i > 0 && month - months[i - 1]! !== step)
  )
    return undefined;
  const stamp = choices.stamp ?? 'end';
  if (choices.stamp === undefined)
    book.add('period-side-asked', 'question', { column: columnName(sheet, sheet.dateColumn), expected: stamp });
  return {
    fromDay: fromDay.map((day) => (stamp === 'start' ? day : firstOfMonthAfter(day, 1 - step))),
    toDay: fromDay.map((day) => firstOfMonthAfter(day, stamp === 'start' ? step : 1)),
    stamp,
  };
}

/** Months since January 1970. */
function monthNumber(day: number): number {
  const date = toCivilDate(day);
  return (yearOf(date) - 1970) * 12 + monthOf(date) - 1;
}

/** First day of the month some months later. */
export const firstOfMonthAfter = (day: number, months: number): number =>
  Date.UTC(1970, monthNumber(day) + months) / 86_400_000;

function fromLabels(dates: Dates, months: number): RowPeriods {
  const fromDay = Float64Array.from(dates.civilMinute.subarray(0, dates.count), dayOf);
  const toDay = fromDay.map((day) => firstOfMonthAfter(day, months));
  return { fromDay, toDay };
}

function fromOneDate(
  sheet: Sheet,
  dates: Dates,
  amounts: readonly ColumnFacts[],
  choices: IntakeChoices,
  book: RemarkBook,
): RowPeriods {
  const { count } = dates;
  const days = Float64Array.from(dates.civilMinute.subarray(0, count), dayOf);
  const sorted = Array.from(new Set(days)).sort((a, b) => a - b);
  const namesLastDay =
    LAST_DAY.test(plainWords(sheet.columns[sheet.dateColumn]?.heading ?? '')) || sayAll(sheet, dates, ENDING);
  const counted = byLengths(sheet, dates, days, sorted, amounts, choices.stamp);
  if (counted) return namesLastDay || areMonthEnds(sorted) ? withLastDay(counted, choices) : counted;
  const calendar = monthRule(sorted);
  const column = columnName(sheet, sheet.dateColumn);
  const said = sideOfCells(sheet, dates) ?? sideOfHeading(sheet) ?? sideByCounter(sheet);
  const isOtherSide =
    said !== undefined && calendar !== undefined && said !== (calendar === 'starts' ? 'start' : 'end');
  if (calendar !== undefined && !isOtherSide && choices.stamp !== (calendar === 'starts' ? 'end' : 'start')) {
    book.add('months-by-first-day', 'note', { column, expected: calendar });
    const fromDay = calendar === 'starts' ? days : days.map((day) => firstOfMonthAfter(day, 0));
    const toDay = calendar === 'starts' ? days.map((day) => firstOfMonthAfter(day, 1)) : days.map((day) => day + 1);
    return { fromDay, toDay, stamp: calendar === 'starts' ? 'start' : 'end' };
  }
  const months = monthsBetweenEnds(sorted);
  const isReading = OF_A_READING.test(plainWords(sheet.columns[sheet.dateColumn]?.heading ?? ''));
  if (months !== undefined && !isReading && said !== 'start' && choices.stamp !== 'start')
    return {
      fromDay: days.map((day) => firstOfMonthAfter(day, 1 - months)),
      toDay: days.map((day) => day + 1),
      stamp: 'end',
    };
  const even =
    sorted.length > 2 && sorted.every((day, i) => i === 0 || day - sorted[i - 1]! === sorted[1]! - sorted[0]!);
  const isBought = !even && sheet.columns.some((c) => BOUGHT_AHEAD.test(plainWords(c.heading)));
  const stamp = choices.stamp ?? said ?? (even || isBought ? 'start' : 'end');
  if (choices.stamp === undefined && (said === undefined || isBought))
    book.add(isBought ? 'period-bought-asked' : 'period-side-asked', 'question', { column, expected: stamp });
  const place = new Map(sorted.map((day, i) => [day, i]));
  const at = (i: number): number => sorted[i] ?? Number.NaN;
  const step = at(1) - at(0);
  // The first or the last has no neighbour that ends it, but may say how long it is.
  const daysColumn = sheet.columns.find(({ meaning }) => meaning.bill === 'days');
  const lengths = daysColumn && lengthsIn(sheet, dates, daysColumn.index);
  const length = (i: number) => (even ? step : (lengths?.[i] ?? Number.NaN));
  const fromDay = days.map((day, i) => (stamp === 'start' ? day : (sorted[place.get(day)! - 1] ?? day - length(i))));
  const toDay = days.map((day, i) => (stamp === 'end' ? day : (sorted[place.get(day)! + 1] ?? day + length(i))));
  const edge = days.findIndex((_, i) => Number.isNaN(fromDay[i]!) || Number.isNaN(toDay[i]!));
  if (edge >= 0)
    book.add('period-by-end-date', 'note', {
      row: sheet.table.lineOfRow[dates.rows[edge]!]!,
      found: cellText(sheet.table, dates.rows[edge]!, sheet.dateColumn),
      expected: stamp,
    });
  const periods: RowPeriods = { fromDay, toDay, stamp };
  if (stamp !== 'end' || at(1) - at(0) === 1) return periods;
  if (namesLastDay) return withLastDay(periods, choices);
  if (!even || closesReading(sheet)) return periods;
  if (choices.toInclusive === undefined) askInclusive(sheet, dates, sheet.dateColumn, book);
  return withLastDay(periods, choices);
}

/** Each period ends with the day that it names, and begins after the one that the period before it names. */
function withLastDay(periods: RowPeriods, { toInclusive = true }: IntakeChoices): RowPeriods {
  if (periods.stamp !== 'end' || !toInclusive) return { ...periods, toInclusive };
  const { fromDay, toDay } = periods;
  return { ...periods, fromDay: fromDay.map((day) => day + 1), toDay: toDay.map((day) => day + 1), toInclusive };
}

/** Fewer lengths may be alike by chance. A judgement. */
const TELLING_LENGTHS = 3;

/** Whether amounts are the days of their periods one by one: nothing but words tells them from a count of days. */
export function areLengths(values: Float64Array, { fromDay, toDay, toInclusive }: RowPeriods): boolean {
  const both = [...values.keys()].filter((i) => !Number.isNaN(values[i]! + toDay[i]! - fromDay[i]!));
  const isShort = (less: number) => both.every((i) => values[i] === toDay[i]! - fromDay[i]! - less);
  return both.length >= TELLING_LENGTHS && (isShort(0) || (toInclusive === true && isShort(1)));
}

const OF_DAYS = /\b(days|tagen?|jours|dias|giorni|dagen|dage|dagar|dager|dni)\b/;

/**
 * A column of days says how long each period is, and by the distances of the dates on which side of its date it lies.
 * Whatever it is called, whole numbers that are the distances of the dates are such days, unless they are the amounts, or
 * are as well the distances to the other side.
 */
function byLengths(
  sheet: Sheet,
  dates: Dates,
  days: Float64Array,
  sorted: readonly number[],
  amounts: readonly ColumnFacts[],
  chosen: 'start' | 'end' | undefined,
): RowPeriods | undefined {
  const place = new Map(sorted.map((day, i) => [day, i]));
  const apart = (i: number, step: 1 | -1) => Math.abs((sorted[place.get(days[i]!)! + step] ?? Number.NaN) - days[i]!);
  for (const { index, heading, meaning } of sheet.columns) {
    const isNamed = meaning.bill === 'days';
    if (index === sheet.dateColumn || meaning.unit !== undefined || meaning.carrier !== undefined) continue;
    const length = lengthsIn(sheet, dates, index);
    const fits = (step: 1 | -1) => days.filter((_, i) => length[i] === apart(i, step)).length;
    const [ends, starts] = [fits(-1), fits(1)];
    if (Math.max(ends, starts) < (dates.count - 1) * 0.6 || (ends === starts && chosen === undefined)) continue;
    const mayBeAmounts =
      (['value', 'reading', 'cost'].includes(meaning.role) && !OF_DAYS.test(plainWords(heading))) ||
      amounts.some((c) => c.index === index) ||
      Math.max(ends, starts) < TELLING_LENGTHS ||
      Math.min(ends, starts) * 2 > Math.max(ends, starts) ||
      length.some((one) => !Number.isInteger(one));
    if (!isNamed && mayBeAmounts) continue;
    const stamp = chosen ?? (ends > starts ? 'end' : 'start');
    const over = (sign: 1 | -1) => days.map((day, i) => day + sign * length[i]!);
    return stamp === 'end' ? { fromDay: over(-1), toDay: days, stamp } : { fromDay: days, toDay: over(1), stamp };
  }
  return undefined;
}

/** Days that a column says of each row, "30" or "30 days"; NaN where it says none. */
const lengthsIn = ({ table }: Sheet, { rows, count }: Dates, column: number): Float64Array =>
  Float64Array.from(rows.subarray(0, count), (row) =>
    countAsNumber(cellText(table, row, column).replace(/^(\d+) ?\p{L}+\.?$/u, '$1')),
  );

/** A bill is written after what it is for. */
const OF_BILL = /\b(bill|invoice|statement)\b|rechnungs?datum|facture|factura|fattura|factuur|faktura/;

/** A reading closes what was used before it. */
const OF_A_READING =
  /\bread(ing)? date\b|\bdate (of )?(meter )?read|ables(e|ung)|releve|lectura|lettura|odczyt|odect|aflaesning|avlasning|avlesning|leitura/;

/** A week or period is called by the day with which it ends: that day belongs to it. */
const LAST_DAY =
  /\bw ?\/ ?e\b|\b(week|fortnight|period|cycle|days?) ?(ending|ended|ends)\b|\bweek ?end\b|\b(last|letzter|dernier|ultimo|laatste|sidste) (day|tag|jour|dia|giorno|dag)\b|\bwoche ?(bis|endet|endend)|\bwochenende\b|\b(semaine|periode) (au|jusqu|se terminant|finissant|terminee?)|\bfin de (la )?sem(aine|ana)\b|\b(semana|periodo) (hasta|que (termina|acaba|finaliza)|terminad[ao]|finalizad[ao])|\b(settimana|periodo) ((fino )?al\b|che (termina|finisce)|terminat[ao]|conclus[ao])|\bfine settimana\b|\b(week|periode) (eindigend|t ?\/ ?m|tot en met)|\beinde (van de )?week\b|\bugen?s? ?(der )?(slut|til og med)|\b(inclusive|incl|einschliesslich|inklusive|t ?\/ ?m|tot en met|til og med|inclus[eo]?|compris)\b/;

const isSinceLast = ({ heading }: { readonly heading: string }): boolean => SINCE_LAST.test(plainWords(heading));

/** The day of a reading closes what was used before it, and so may that of a bill. */
const closesReading = ({ columns, dateColumn }: Sheet): boolean => {
  const words = plainWords(columns[dateColumn]?.heading ?? '');
  return (
    OF_BILL.test(words) ||
    OF_A_READING.test(words) ||
    columns.some((c) => c.meaning.role === 'reading' || isSinceLast(c))
  );
};

/** Whether such words stand before each date. */
const sayAll = ({ table, dateColumn }: Sheet, { rows, count }: Dates, words: RegExp): boolean =>
  rows.subarray(0, count).every((row) => words.test(cellText(table, row, dateColumn)));

/** "w/c" or "w/e" before each date. */
const sideOfCells = (sheet: Sheet, dates: Dates): 'start' | 'end' | undefined =>
  sayAll(sheet, dates, COMMENCING) ? 'start' : sayAll(sheet, dates, ENDING) ? 'end' : undefined;

/** What the words above the dates say of them. */
function sideOfHeading({ columns, dateColumn }: Sheet): 'start' | 'end' | undefined {
  const column = columns[dateColumn];
  const role = column?.meaning.role;
  if (role === 'from' || role === 'to') return role === 'from' ? 'start' : 'end';
  const words = plainWords(column?.heading ?? '');
  const isEnd = OF_BILL.test(words) || OF_A_READING.test(words) || LAST_DAY.test(words) || columns.some(isSinceLast);
  return isEnd ? 'end' : undefined;
}

/** Dates that all fall on the first, or all on the last day of successive months, name calendar months. */
function monthRule(sorted: readonly number[]): 'starts' | 'ends' | undefined {
  if (sorted.length < 2) return undefined;
  const monthly = sorted.every((day, i) => i === 0 || day - sorted[i - 1]! >= 28) && sorted[1]! - sorted[0]! <= 31;
  if (!monthly) return undefined;
  if (sorted.every((day) => toCivilDate(day).endsWith('-01'))) return 'starts';
  return areMonthEnds(sorted) ? 'ends' : undefined;
}

/** Last days of every second, third, sixth or twelfth month: each closes those since the one before. */
function monthsBetweenEnds(sorted: readonly number[]): number | undefined {
  if (sorted.length < TELLING_LENGTHS || !areMonthEnds(sorted)) return undefined;
  const step = monthNumber(sorted[1]!) - monthNumber(sorted[0]!);
  const isEven = sorted.every((day, i) => i === 0 || monthNumber(day) - monthNumber(sorted[i - 1]!) === step);
  return isEven && [2, 3, 6, 12].includes(step) ? step : undefined;
}

const areMonthEnds = (days: readonly number[]): boolean => days.every((day) => toCivilDate(day + 1).endsWith('-01'));
