/** Columns that number the hours, half-hours or quarters of a day: 1 to 24, with 23 and 25 on the days the clocks change. */
import { minutesInDay, offsetMinutes, startOfDay } from '../../model/calendar/zone.ts';
import { readClock, startOfSpan } from '../dates/read-clock.ts';
import { readStamp } from '../dates/read-stamp.ts';
import { createStampReader, READ } from '../dates/stamp-reader.ts';
import { cellAt, cellText, type Table } from '../text/table.ts';
import type { ColumnFacts } from './column-facts.ts';
import { plainWords } from './headings.ts';
import type { Sheet } from './sheet.ts';
import { HOUR_NUMBER, withoutBrackets } from './vocabulary.ts';

export interface DayParts {
  /** What the first part of a day is called. */
  readonly first: 0 | 1;
  readonly minutes: number;
}

/** Parts that a day may have, with room for the long autumn day. */
const LENGTHS = [
  { most: 25, minutes: 60 },
  { most: 50, minutes: 30 },
  { most: 100, minutes: 15 },
] as const;
/** Fewer than this of a day's hours are no numbering of it. */
const LEAST_PARTS = 20;

/** Undefined for a column of clock times, or of numbers that number no day. "01:00" to "24:00" are numbers too. */
export function dayPartsOf(table: Table, firstRow: number, column: ColumnFacts): DayParts | undefined {
  if (column.clocks > 0) return hoursAsClocks(table, firstRow, column);
  if (!HOUR_NUMBER.test(withoutBrackets(plainWords(column.heading))) && !countsThroughDays(table, firstRow, column))
    return undefined;
  const seen = new Set<number>();
  let most = 0;
  for (let row = firstRow; row < table.rowCount; row++) {
    const number = partAt(table, row, column.index);
    if (number < 0) continue;
    if (number > 100) return undefined;
    seen.add(number);
    if (number > most) most = number;
  }
  const length = LENGTHS.find((one) => most <= one.most);
  return length && seen.size >= LEAST_PARTS ? { first: seen.has(0) ? 0 : 1, minutes: length.minutes } : undefined;
}

/**
 * "01:00" to "24:00" where they count the hours of each day: then the long day ends with "25:00" and the short one with
 * "23:00", where the clock would leave an hour out in the night.
 */
function hoursAsClocks(table: Table, firstRow: number, { heading, index }: ColumnFacts): DayParts | undefined {
  if (!HOUR_NUMBER.test(withoutBrackets(plainWords(heading)))) return undefined;
  let [most, last, endsEarly, leavesOut] = [0, 0, false, false];
  for (let row = firstRow; row < table.rowCount; row++) {
    const number = partAt(table, row, index);
    if (number < 1 || number > 25) return undefined;
    const [low, high] = number < last ? [number, last] : [last, number];
    if (low === 1 && high === 23) endsEarly = true;
    if (low === 1 && high === 3) leavesOut = true;
    if (number > most) most = number;
    last = number;
  }
  return most === 25 || (most === 24 && endsEarly && !leavesOut) ? { first: 1, minutes: 60 } : undefined;
}

/** Whether bare numbers count up by one and begin anew after as many as a day has parts, whatever stands above them. */
function countsThroughDays(table: Table, firstRow: number, { index, smallest }: ColumnFacts): boolean {
  if (smallest !== 0 && smallest !== 1) return false;
  const end = Math.min(table.rowCount, firstRow + SAMPLE_ROWS);
  let last = Number.NaN;
  let days = 0;
  for (let row = firstRow; row < end; row++) {
    const number = partAt(table, row, index);
    if (number < 0) return false;
    const isAnew = number === smallest && LENGTHS.some(({ most }) => isDayOf(last - smallest + 1, most));
    if (!Number.isNaN(last) && number !== last + 1 && !isAnew) return false;
    if (isAnew) days++;
    last = number;
  }
  return days >= 2;
}

const SAMPLE_ROWS = 500;
/** 23 to 25 hours, and as many halves and quarters. */
const isDayOf = (parts: number, most: number): boolean => parts <= most && parts >= (most * 23) / 25;

/** The number in a cell such as "7", "07", "07:00", "H7", "7h" or "7. hodina"; -1 where there is none. */
function partAt(table: Table, row: number, column: number): number {
  const cell = cellAt(table, row, column);
  if (cell < 0) return -1;
  const digits = /^\D{0,2}(\d{1,3})\D{0,2}$|^(\d{1,2}):00$|^godz\. ?(\d{1,2})$|^(\d{1,2})\. ?(?:hodina|stunde)$/i
    .exec(table.text.slice(table.cellFrom[cell]!, table.cellTo[cell]!))
    ?.find((part, i) => i > 0 && part);
  return digits === undefined ? -1 : Number(digits);
}

/** Minutes after midnight of a cell, or -1; a numbered part starts there. */
export function clockAt(table: Table, row: number, column: number, parts: DayParts | undefined): number {
  if (parts) {
    const number = partAt(table, row, column);
    return number < parts.first ? -1 : (number - parts.first) * parts.minutes;
  }
  const cell = cellAt(table, row, column);
  if (cell < 0) return -1;
  const [from, to] = [table.cellFrom[cell]!, table.cellTo[cell]!];
  const clock = readClock(table.text, from, to);
  return clock < 0 ? startOfSpan(table.text.slice(from, to)) : clock;
}

/**
 * Adds the parts to the days they stand in, in place. On a short or long day they may be counted on (1 to 23, 1 to 25):
 * then they name the time gone by since midnight and are turned into what the clock showed.
 * @param days civil minutes of each row's midnight @param elapsed minutes that its part begins after it
 */
export function addParts(
  days: Float64Array,
  elapsed: Float64Array,
  count: number,
  { minutes }: DayParts,
  zone: string,
): void {
  const last = new Map<number, number>();
  for (let i = 0; i < count; i++) last.set(days[i]!, Math.max(last.get(days[i]!) ?? 0, elapsed[i]!));
  const counted = new Map<number, number>();
  for (const [midnight, most] of last) {
    const length = minutesInDay(zone, midnight / 1440);
    if (length !== 1440 && most + minutes === length) counted.set(midnight, startOfDay(zone, midnight / 1440));
  }
  for (let i = 0; i < count; i++) {
    const start = counted.get(days[i]!);
    const shift =
      start === undefined ? 0 : offsetMinutes(zone, start + elapsed[i]! * 60_000) - offsetMinutes(zone, start);
    days[i]! += elapsed[i]! + shift;
  }
}

/** Whether each date of a sheet is written with a time that is midnight, as programs write a bare day. */
export function holdsMidnights(sheet: Sheet): boolean {
  const known = midnights.get(sheet);
  if (known !== undefined) return known;
  const found = findMidnights(sheet);
  midnights.set(sheet, found);
  return found;
}
const midnights = new WeakMap<Sheet, boolean>();

function findMidnights({ table, dateColumn, firstRow, dateForm, columns }: Sheet): boolean {
  if (dateForm !== 'calendar' || columns[dateColumn]?.dateKind !== 'time') return false;
  const reader = createStampReader();
  for (let row = firstRow; row < Math.min(table.rowCount, firstRow + SAMPLE_ROWS); row++) {
    const cell = cellText(table, row, dateColumn);
    if (readStamp(cell, 0, cell.length, true, reader) !== READ) continue;
    if (reader.civilMinute % 1440 !== 0 || !Number.isNaN(reader.offsetMinutes)) return false;
  }
  return true;
}
