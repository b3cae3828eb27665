/** A counter that begins at nought each midnight, month or year, under the name of an amount: "today's use", every hour. */
import { toCivilDate } from '../../model/calendar/civil.ts';
import { plainWords } from '../layout/headings.ts';
import { columnName } from '../layout/value-cells.ts';
import type { RemarkBook } from '../terms/remark-book.ts';
import { isOfDegrees } from '../terms/units.ts';
import type { RawReadings, ReadColumn } from './build-interval-series.ts';

/** Nine steps of ten alike, as in a made example: no home uses so. */
function isEven(values: Float64Array, fell: ReadonlySet<number>, count: number): boolean {
  const steps: number[] = [];
  for (let i = 1; i < count; i++)
    if (!fell.has(i) && values[i]! > values[i - 1]!) steps.push(values[i]! - values[i - 1]!);
  const middle = steps.toSorted((a, b) => a - b)[steps.length >> 1] ?? 0;
  return steps.filter((step) => Math.abs(step - middle) < middle * 1e-6).length >= steps.length * 0.9;
}

function risesOf(values: Float64Array, count: number): number {
  let rises = 0;
  for (let i = 1; i < count; i++) if (values[i]! > values[i - 1]!) rises++;
  return rises;
}

/** Fewer readings a day are no pattern; of fewer days more of them must rise, and one fall lies at midnight. A judgement. */
const FEW_DAYS = 5;
const LEAST_A_DAY = 12;
const LEAST_RISES_OF_FEW = 0.6;
const MIDNIGHT_MINUTES = 60;
/** Of the readings of a day so many rise: what is sent out between dawn and the end of a night rate rises a few times only. A judgement. */
const LEAST_RISES = 0.3;
/** What the first reading of a day or a year shows of the mean step. A judgement. */
const MOST_STEPS = 3;

/**
 * What was used in each reading, or undefined for other columns. Readings that fall at one time of day, once a day, and
 * never else, count the day. Where nought stands at the fall, each counts what came before it: the use of the last
 * reading of the day is then not known.
 * @param civil minutes of each reading, in the order of the file
 */
function usedSinceMidnight(
  values: Float64Array,
  civil: Float64Array,
  count: number,
  isOfToday: boolean,
): Float64Array | undefined {
  const days = count > 0 ? (civil[count - 1]! - civil[0]!) / 1440 : 0;
  const falls: number[] = [];
  for (let i = 1; i < count; i++) {
    if (civil[i]! <= civil[i - 1]!) continue;
    if (values[i]! < values[i - 1]!) falls.push(i);
    // An amount falls in every other reading: it need not be looked through to its end.
    if (falls.length > 2 * days + FEW_DAYS) return undefined;
  }
  const isDaily = falls.length > 0 && Math.abs(falls.length - days) <= 1 + days * 0.05;
  if (!isDaily || count < Math.max(1, days) * LEAST_A_DAY) return undefined;
  const isOfFew = falls.length < FEW_DAYS && !isOfToday;
  if (falls.length === 1 && civil[falls[0]!]! % 1440 > MIDNIGHT_MINUTES) return undefined;
  const times = Map.groupBy(falls, (i) => civil[i]! % 1440);
  const most = Math.max(...[...times.values()].map((at) => at.length));
  if (most < falls.length * 0.9) return undefined;
  const fell = new Set(falls);
  if (isEven(values, fell, count) || risesOf(values, count) < count * (isOfFew ? LEAST_RISES_OF_FEW : LEAST_RISES))
    return undefined;
  // A use that only rises in the day falls by less than to a single step.
  const fallenTo = falls.reduce((sum, i) => sum + values[i]!, 0) / falls.length;
  const risen = falls.reduce((sum, i) => sum + values[i - 1]! - values[i]!, 0) / falls.length;
  if (fallenTo > (MOST_STEPS * risen) / (count / days)) return undefined;
  const isFromNought = falls.every((i) => values[i] === 0);
  const at = isFromNought ? -1 : 0;
  const used = new Float64Array(values.length).fill(Number.NaN);
  if (!isFromNought && times.has(civil[0]! % 1440)) used[0] = values[0]!;
  for (let i = 1; i < count; i++) {
    if (fell.has(i)) {
      if (!isFromNought) used[i] = values[i]!;
    } else used[i + at] = values[i]! - values[i - 1]!;
  }
  return used;
}

/** Makes amounts, in place, of a counter that counts the day. */
export function takeDayApart(
  { column, values }: ReadColumn,
  { sheet, civil, count }: RawReadings,
  book: RemarkBook,
): void {
  const used = isOfDegrees(column.meaning.unit)
    ? undefined
    : usedSinceMidnight(values, civil, count, TODAY.test(plainWords(column.heading)));
  if (!used) return;
  values.set(used);
  book.add('counts-from-midnight', 'note', { column: columnName(sheet, column.index) });
}

/** A name that says so needs fewer days to be believed. */
const TODAY =
  /\btoday|\be ?(day|today)\b|heute|\b(aujourd|hoy|oggi|vandaag|idag|i dag|dzis|dnes|tanaan|hoje)|(daily|day) (total|yield|counter)|tagesertrag|tageszahler/;

const MONTHS_TO_TELL = 2;
const LEAST_IN_MONTH = 15;

/**
 * What was used on each day, where a column by the day counts the month and begins anew with the next; undefined for
 * other columns. On the first of a month it is what stands there; after a missing day it is not known.
 * @param days day numbers of the rows
 */
export function usedSinceMonth(values: Float64Array, days: Float64Array): Float64Array | undefined {
  const order = Array.from(days.keys())
    .filter((i) => !Number.isNaN(values[i]!))
    .sort((a, b) => days[a]! - days[b]!);
  const monthAt = (i: number) => toCivilDate(days[i]!).slice(0, 7);
  let [starts, rises] = [0, 0];
  for (let at = 1; at < order.length; at++) {
    const [before, now] = [order[at - 1]!, order[at]!];
    const isAnew = monthAt(now) !== monthAt(before);
    if (values[now]! < values[before]! !== isAnew) return undefined;
    if (isAnew) starts++;
    else if (values[now]! > values[before]!) rises++;
  }
  if (starts < MONTHS_TO_TELL || rises < starts * LEAST_IN_MONTH) return undefined;
  const used = new Float64Array(values.length).fill(Number.NaN);
  for (const [at, now] of order.entries()) {
    const before = order[at - 1];
    if (toCivilDate(days[now]!).endsWith('-01')) used[now] = values[now]!;
    else if (before !== undefined && days[now]! - days[before]! === 1) used[now] = values[now]! - values[before]!;
  }
  return used;
}

/** So many rows rise between the falls, or it is only asked: winters begin in the same month. A judgement. */
const CERTAIN_RISES = 9;
const DOUBTFUL_RISES = 6;
/** Where its heading says so. */
const SAID_RISES = 2;

/**
 * What was used in each period, where the rows count the year and begin anew with the next, be it in January or in the
 * month of the contract; undefined for other columns. In the first period of a year it is what stands there; after a
 * period that is missing it is not known. Where a few rows rise only their number comes back.
 * @param fromDay first days of the periods
 * @param toDay days after the last
 * @param isSaid whether the heading says that it is all since a year began
 */
export function usedSinceYear(
  values: Float64Array,
  { fromDay, toDay }: { readonly fromDay: Float64Array; readonly toDay: Float64Array },
  isSaid: boolean,
): Float64Array | { readonly rises: number } | undefined {
  const order = Array.from(fromDay.keys())
    .filter((i) => !Number.isNaN(values[i]! + fromDay[i]! + toDay[i]!))
    .sort((a, b) => fromDay[a]! - fromDay[b]!);
  const fallen = order.filter((now, at) => at > 0 && values[now]! < values[order[at - 1]!]!);
  // Of a single year nothing falls, but its first row is as small as its steps.
  const falls = fallen.length === 0 && isSaid ? order.slice(0, 1) : fallen;
  const months = new Set(falls.map((i) => toCivilDate(fromDay[i]!).slice(5, 7)));
  const [month] = months;
  const years = falls.map((i) => Number(toCivilDate(fromDay[i]!).slice(0, 4)));
  const isYearly = months.size === 1 && years.every((year, i) => i === 0 || year === years[i - 1]! + 1);
  const steps = order
    .map((now, at) => (at > 0 ? values[now]! - values[order[at - 1]!]! : 0))
    .filter((step) => step > 0);
  const rises = steps.length;
  const fallenTo = falls.reduce((sum, i) => sum + values[i]!, 0) / falls.length;
  const isFromNought = fallenTo <= (MOST_STEPS * steps.reduce((sum, step) => sum + step, 0)) / rises;
  const isFirst = (i: number) => toCivilDate(fromDay[i]!).slice(5) === `${month}-01`;
  const begins = order.filter((i, at) => at > 0 && isFirst(i));
  if (
    !isYearly ||
    !isFromNought ||
    rises < (isSaid ? SAID_RISES : DOUBTFUL_RISES) ||
    begins.some((i) => !falls.includes(i))
  )
    return undefined;
  if (rises < CERTAIN_RISES && !isSaid) return { rises };
  const used = new Float64Array(values.length).fill(Number.NaN);
  for (const [at, now] of order.entries()) {
    const before = order[at - 1];
    if (isFirst(now)) used[now] = values[now]!;
    else if (before !== undefined && toDay[before] === fromDay[now] && !falls.includes(now))
      used[now] = values[now]! - values[before]!;
  }
  return used;
}

/** A counter that begins at nought each year. */
export interface YearlyCounter {
  /** Day on which it began, for the first reading after it and for the first of all. */
  readonly beganAt: ReadonlyMap<number, number>;
  /** Whether a reading tells of the day that it names too: it is not nought on the first of the year, or the last is of its last day. */
  readonly closesDay: boolean;
}

/** A counter that fell but once may have been exchanged on that day. */
const FALLS_TO_TELL = 2;
const THIS_YEAR =
  /\b(this|current) year\b|\byear to date\b|\bytd\b|\b(dieses|aktuelles|laufendes) jahr|jahres(wert|summe|zahler|verbrauch)|\bcette annee\b|\bdit jaar\b|\bi ar\b/;

/**
 * Whether readings fall at the first of one month, each year and never else; undefined for other counters.
 * @param order indices in order of time, those that could not be read left out @param heading in plain words
 */
export function beginsEachYear(
  order: readonly number[],
  readings: Float64Array,
  dayAt: (index: number) => number,
  heading: string,
): YearlyCounter | undefined {
  const falls = order.flatMap((now, at) => (at > 0 && readings[now]! < readings[order[at - 1]!]! ? [at] : []));
  if (falls.length < (THIS_YEAR.test(heading) ? 1 : FALLS_TO_TELL)) return undefined;
  const starts = falls.map((at) => firstsBetween(dayAt(order[at - 1]!), dayAt(order[at]!)));
  const months = [...starts[0]!.keys()].filter((month) => starts.every((one) => one.has(month)));
  const month = months.includes('01') ? '01' : months.length === 1 ? months[0] : undefined;
  if (month === undefined) return undefined;
  const days = starts.map((one) => one.get(month)!);
  const [first, last] = [order[0]!, order.at(-1)!];
  const all = [...firstsOfMonth(month, dayAt(first), dayAt(last))];
  const risen = order.reduce((sum, now, at) => sum + Math.max(0, readings[now]! - readings[order[at - 1] ?? now]!), 0);
  const perDay = risen / (dayAt(last) - dayAt(first));
  const isLikely = (index: number, start: number) =>
    readings[index]! <= MOST_STEPS * perDay * (dayAt(index) - start + 1);
  // One on the last day of all may show the whole year still.
  if (all.some((day) => !days.includes(day) && day !== dayAt(first) && day !== dayAt(last))) return undefined;
  if (falls.some((at, i) => !isLikely(order[at]!, days[i]!))) return undefined;
  const beganAt = new Map(falls.map((at, i) => [order[at]!, days[i]!]));
  const began = [...firstsOfMonth(month, dayAt(first) - LONGEST_YEAR, dayAt(first))].at(-1);
  if (began !== undefined && isLikely(first, began)) beganAt.set(first, began);
  const isOfItsDay = [...beganAt].some(([index, day]) => dayAt(index) === day && readings[index]! > 0);
  const isOfLastDays = falls.every((at, i) => dayAt(order[at - 1]!) === days[i]! - 1 && dayAt(order[at]!) > days[i]!);
  return { beganAt, closesDay: isOfItsDay || isOfLastDays };
}

const LONGEST_YEAR = 366;

function* firstsOfMonth(month: string, from: number, to: number): Generator<number> {
  for (let day = from; day <= to; day++) if (toCivilDate(day).slice(5) === `${month}-01`) yield day;
}

/** First days of months from one day to another, by their month. */
function firstsBetween(from: number, to: number): Map<string, number> {
  const firsts = new Map<string, number>();
  for (let day = from; day <= Math.min(to, from + LONGEST_YEAR); day++)
    if (toCivilDate(day).endsWith('-01')) firsts.set(toCivilDate(day).slice(5, 7), day);
  return firsts;
}
