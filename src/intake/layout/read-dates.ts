/** The date column of a sheet as typed arrays: which rows have a stamp, what it is in civil minutes, and its offset. */

import { offsetMinutes } from '../../model/calendar/zone.ts';
import { tell } from '../../model/shapes/told.ts';
import { isDotted, weighDayFirst, writesMonthFirst } from '../dates/decide-day-first.ts';
import { readPlainStamp, readStamp } from '../dates/read-stamp.ts';
import { createStampReader, IMPOSSIBLE, READ, type StampKind } from '../dates/stamp-reader.ts';
import { countAsNumber } from '../numbers/read-number.ts';
import type { IntakeChoices } from '../terms/choices.ts';
import type { RemarkBook } from '../terms/remark-book.ts';
import { cellAt, cellText, type Table } from '../text/table.ts';
import { isDateColumn } from './column-facts.ts';
import { addParts, clockAt, dayPartsOf, holdsMidnights } from './day-parts.ts';
import { findGrandTotal, findSums, takeOut } from './drop-sums.ts';
import type { Sheet } from './sheet.ts';
import { isInOtherLanguage, offsetSaid } from './titles.ts';

export interface Dates {
  /** Rows of the table with a date that could be read; `count` of each array is in use. */
  readonly count: number;
  readonly rows: Uint32Array;
  readonly civilMinute: Float64Array;
  /** Minutes east of UTC of each row; null where no row has any. NaN where one has none. */
  readonly offsets: Float64Array | null;
  /** Rows after the headings that gave no date. */
  readonly strays: readonly Stray[];
  readonly kind: StampKind;
  readonly dayFirst: boolean | undefined;
}

interface Stray {
  readonly row: number;
  readonly impossible: boolean;
  /** Older than any reading of a meter. */
  readonly isEarly?: boolean;
  /** What sums up other rows: a day among its times, a quarter among its months. */
  readonly isSum?: boolean;
}

/** Order of day and month for a column; asks when nothing tells. */
export function settleDayFirst(
  sheet: Sheet,
  column: number,
  choices: IntakeChoices,
  zone: string,
  book: RemarkBook,
): boolean | undefined {
  const { table } = sheet;
  if (sheet.dateForm !== 'calendar') return undefined;
  const evidence = weighDayFirst(table, column, sheet.firstRow);
  if (evidence.dayFirst + evidence.monthFirst + evidence.either === 0) return choices.dayFirst;
  if (choices.dayFirst !== undefined) return choices.dayFirst;
  const named = orderOfHeading(sheet, column);
  if (named !== undefined && (named ? evidence.monthFirst : evidence.dayFirst) === 0) return named;
  const show = (row: number) => ({
    row: table.lineOfRow[row]!,
    column: sheet.columns[column]?.heading || `column ${column + 1}`,
    found: cellText(table, row, column),
  });
  if (evidence.dayFirst > 0 && evidence.monthFirst > 0) {
    const dayFirst = evidence.dayFirst >= evidence.monthFirst;
    book.add('date-order-mixed', 'question', {
      ...show(dayFirst ? evidence.rowOfMonthFirst : evidence.rowOfDayFirst),
      expected: dayFirst ? 'day first' : 'month first',
      count: dayFirst ? evidence.monthFirst : evidence.dayFirst,
    });
    return dayFirst;
  }
  if (evidence.dayFirst > 0) return true;
  if (evidence.monthFirst > 0) return false;
  const beside = orderBeside(sheet, column);
  if (beside !== undefined) return beside;
  if (isDotted(cellText(table, evidence.rowOfEither, column))) return true;
  const byEnds = orderByEnds(sheet, column);
  if (byEnds !== undefined) return byEnds;
  const byMonths = orderByMonths(sheet, column) ?? orderByFullDays(sheet, column);
  if (byMonths !== undefined) return byMonths;
  if (isInOtherLanguage(sheet) && !writesMonthFirst(zone)) return true;
  const dayFirst = !writesMonthFirst(zone);
  book.add('date-order-asked', 'question', {
    ...show(evidence.rowOfEither),
    expected: dayFirst ? 'day first' : 'month first',
  });
  return dayFirst;
}

/** Whether the day comes first as a heading like "Date (MM/DD/YYYY)" writes it; undefined where it does not. */
export function orderOfHeading({ columns }: Sheet, column: number): boolean | undefined {
  const form = /\b(?:(d{1,2})[./ -]m{1,3}|m{1,2}[./ -]d{1,2})[./ -]y/i.exec(columns[column]?.heading ?? '');
  return form ? form[1] !== undefined : undefined;
}

/** Whether the day comes first in another date column of the file, as the end of each bill; undefined where none tells. */
export function orderBeside({ table, columns, firstRow }: Sheet, column: number): boolean | undefined {
  for (const other of columns.filter((c) => c.index !== column && isDateColumn(c))) {
    const { dayFirst, monthFirst } = weighDayFirst(table, other.index, firstRow);
    if (dayFirst > 0 !== monthFirst > 0) return dayFirst > 0;
  }
  return undefined;
}

/** The order in which no period ends before it begins, where the other one makes some that do. */
export function orderByEnds(sheet: Sheet, column: number): boolean | undefined {
  const { table, columns, firstRow } = sheet;
  const ends = columns.find((c) => c.index !== column && c.meaning.role === 'to' && isDateColumn(c));
  if (!ends || columns[column]?.meaning.role !== 'from') return undefined;
  const rows = Uint32Array.from({ length: table.rowCount - firstRow }, (_, i) => firstRow + i);
  const areBackwards = [true, false].map((dayFirst) => {
    const [from, to] = [column, ends.index].map((at) => readDatesAt(sheet, at, rows, rows.length, dayFirst, 'UTC'));
    return from!.some((start, i) => to![i]! < start);
  });
  return areBackwards[0] === areBackwards[1] ? undefined : areBackwards[1];
}

/** The order in which each date is a month after the one before, where the other one makes days of a single month. */
function orderByMonths(sheet: Sheet, column: number): boolean | undefined {
  const count = Math.min(sheet.table.rowCount - sheet.firstRow, MOST_MONTHS);
  const rows = Uint32Array.from({ length: count }, (_, i) => sheet.firstRow + i);
  const [areMonths, areOther] = [0, 1].map((kind) =>
    [true, false].map((dayFirst) => {
      const days = [...new Set(readDatesAt(sheet, column, rows, count, dayFirst, 'UTC'))].map((at) => at / 1440);
      const steps = days.flatMap((day, i) => (i === 0 ? [] : [Math.abs(day - days[i - 1]!)]));
      if (steps.length < LEAST_MONTHS || steps.some(Number.isNaN)) return false;
      return kind === 0
        ? steps.every((step) => step >= 28 && step <= 31)
        : steps.filter((step) => step === 1).length * 2 > steps.length && steps.some((step) => step > 31);
    }),
  );
  for (const at of [0, 1]) if (areMonths![at] && areOther![1 - at]) return at === 0;
  return undefined;
}

/** Of days with many readings each, the order in which they follow one another, where the other one lays a month between them. */
function orderByFullDays(sheet: Sheet, column: number): boolean | undefined {
  const count = sheet.table.rowCount - sheet.firstRow;
  const every = Math.ceil(count / MOST_READ);
  const rows = Uint32Array.from({ length: Math.ceil(count / every) }, (_, i) => sheet.firstRow + i * every);
  const [dayFirst, monthFirst] = [true, false].map((order) => {
    const minutes = readDatesAt(sheet, column, rows, rows.length, order, 'UTC');
    const days = [...new Set(minutes.map((at) => Math.floor(at / 1440)))].filter((day) => !Number.isNaN(day));
    if (days.length < 2 || count < days.length * FULL_DAY) return undefined;
    const steps = days.slice(1).map((day, i) => Math.abs(day - days[i]!));
    return { together: steps.every((step) => step === 1), apart: steps.every((step) => step >= 28) };
  });
  if (!dayFirst || !monthFirst) return undefined;
  if (dayFirst.together && monthFirst.apart) return true;
  return monthFirst.together && dayFirst.apart ? false : undefined;
}
/** So many rows of one day are its hours. */
const FULL_DAY = 20;
const MOST_READ = 5000;

const LEAST_MONTHS = 4;
const MOST_MONTHS = 240;

export function readDates(
  sheet: Sheet,
  column: number,
  timeColumn: number | undefined,
  dayFirst: boolean | undefined,
  zone: string,
  onProgress?: (share: number) => void,
): Dates {
  const { table, firstRow } = sheet;
  const parts = timeColumn === undefined ? undefined : dayPartsOf(table, firstRow, sheet.columns[timeColumn]!);
  const elapsed = parts && new Float64Array(Math.max(0, table.rowCount - firstRow));
  const size = Math.max(0, table.rowCount - firstRow);
  const rows = new Uint32Array(size);
  const civilMinute = new Float64Array(size);
  let offsets: Float64Array | null = null;
  const strays: Stray[] = [];
  // Nearly all columns are of one kind; the rows of others are kept by themselves.
  let usual: StampKind | undefined;
  const unusual = new Map<number, StampKind>();
  const reader = createStampReader();
  let count = 0;
  const areDays = timeColumn !== undefined && column === sheet.dateColumn && holdsMidnights(sheet);
  for (let row = firstRow; row < table.rowCount; row++) {
    if ((row & 0x3fff) === 0) onProgress?.(row / table.rowCount);
    const cell = cellAt(table, row, column);
    let status = cell < 0 ? -1 : readOne(table, cell, sheet.dateForm, dayFirst ?? true, reader);
    if (status === READ && timeColumn !== undefined && (reader.kind === 'day' || areDays)) {
      const clock = clockAt(table, row, timeColumn, parts);
      if (clock < 0) status = -1;
      else if (elapsed) {
        elapsed[count] = clock;
        reader.kind = 'time';
      } else if (clock > 1440) status = IMPOSSIBLE;
      else {
        reader.civilMinute += clock;
        reader.kind = 'time';
      }
    }
    const isEarly = status === READ && reader.civilMinute < EARLIEST;
    if (status !== READ || isEarly) {
      strays.push({ row, impossible: status === IMPOSSIBLE || isEarly, isEarly });
      continue;
    }
    rows[count] = row;
    civilMinute[count] = reader.civilMinute;
    usual ??= reader.kind;
    if (reader.kind !== usual) unusual.set(count, reader.kind);
    if (!Number.isNaN(reader.offsetMinutes)) {
      if (!offsets) offsets = new Float64Array(size).fill(Number.NaN);
      offsets[count] = reader.offsetMinutes;
    }
    count++;
  }
  const said = usual === 'time' && !offsets ? offsetSaid(sheet, [column, timeColumn]) : undefined;
  if (said !== undefined) offsets = new Float64Array(size).fill(said);
  const kinds: Partial<Record<StampKind, number>> = usual ? { [usual]: count - unusual.size } : {};
  for (const kind of unusual.values()) kinds[kind] = (kinds[kind] ?? 0) + 1;
  if (unusual.size > 0) {
    const read = { rows, civilMinute, offsets, count };
    const { sums, others } = findSums(read, (i) => unusual.get(i) ?? usual!);
    for (const i of [...sums, ...others]) strays.push({ row: rows[i]!, impossible: false, isSum: sums.has(i) });
    count = takeOut(read, new Set([...sums, ...others]));
  }
  const total = findGrandTotal(table, { rows, civilMinute, offsets, count });
  if (total !== undefined) {
    strays.push({ row: rows[total]!, impossible: false, isSum: true });
    count = takeOut({ rows, civilMinute, offsets, count }, new Set([total]));
  }
  if (!offsets && kinds.time === count) moveLateMidnights(civilMinute, count);
  if (parts && elapsed) addParts(civilMinute, elapsed, count, parts, zone);
  const kind = (Object.entries(kinds).sort((a, b) => b[1] - a[1])[0]?.[0] ?? 'day') as StampKind;
  return { count, rows, civilMinute, offsets, strays, kind: kinds.time ? 'time' : kind, dayFirst };
}

/** Later than this in its day, a midnight of the same date beside it is the end of that day. */
const NOON = 720;

/**
 * "00:00" that stands after 23:30 of its own date is the end of that day, as files write it that name the ends of their
 * intervals and keep the date of the beginning. In place; only where every midnight but that of an edge stands so.
 */
function moveLateMidnights(civilMinute: Float64Array, count: number): void {
  const late: number[] = [];
  let others = 0;
  for (let i = 0; i < count; i++) {
    const at = civilMinute[i]!;
    if (at % 1440 !== 0) continue;
    const isLate = [neighbour(i, -1), neighbour(i, 1)].some((other) => other - at >= NOON && other - at < 1440);
    if (isLate) late.push(i);
    else if (i > 0 && i < count - 1) others++;
  }
  if (late.length > 0 && others === 0) for (const i of late) civilMinute[i]! += 1440;

  /** Of several registers the rows of one moment stand one below the other. */
  function neighbour(i: number, step: 1 | -1): number {
    let other = i + step;
    while (other >= 0 && other < count && civilMinute[other] === civilMinute[i]) other += step;
    return other >= 0 && other < count ? civilMinute[other]! : Number.NaN;
  }
}

/** Minutes since 1970 of the first day of `EARLIEST_YEAR`. */
const EARLIEST = 10_519_200;

function readOne(
  table: Table,
  cell: number,
  form: Sheet['dateForm'],
  dayFirst: boolean,
  reader: ReturnType<typeof createStampReader>,
) {
  const from = table.cellFrom[cell]!;
  const to = table.cellTo[cell]!;
  if (form === 'calendar')
    return readPlainStamp(table.codes, from, to, reader) ? READ : readStamp(table.text, from, to, dayFirst, reader);
  const value = countAsNumber(table.text.slice(from, to));
  if (Number.isNaN(value)) return -1;
  reader.kind = 'time';
  if (form === 'serial') {
    if (value < 32_874 || value > 73_415) return IMPOSSIBLE;
    reader.offsetMinutes = Number.NaN;
    // Day 25,569 of the spreadsheet's count is 1970-01-01.
    reader.civilMinute = Math.round((value - 25_569) * 1440);
    if (Number.isInteger(value)) reader.kind = 'day';
    return READ;
  }
  const minutes = value / (form === 'seconds' ? 60 : 60_000);
  if (minutes < EARLIEST || minutes > 68_900_000) return IMPOSSIBLE;
  reader.civilMinute = Math.round(minutes);
  reader.offsetMinutes = 0;
  return READ;
}

/** The same column of other dates, row by row (the end of a bill); NaN where none can be read. */
export function readDatesAt(
  sheet: Sheet,
  column: number,
  rows: ArrayLike<number>,
  count: number,
  dayFirst: boolean | undefined,
  zone: string,
): Float64Array {
  const reader = createStampReader();
  const minutes = new Float64Array(count);
  const said = offsetSaid(sheet, [column]) ?? Number.NaN;
  for (let i = 0; i < count; i++) {
    const cell = cellAt(sheet.table, rows[i]!, column);
    const status = cell < 0 ? -1 : readOne(sheet.table, cell, sheet.dateForm, dayFirst ?? true, reader);
    minutes[i] =
      status === READ
        ? localMinute(
            reader.civilMinute,
            Number.isNaN(reader.offsetMinutes) && reader.kind === 'time' ? said : reader.offsetMinutes,
            zone,
          )
        : Number.NaN;
  }
  return minutes;
}

/** Zones of whose midnights a file may begin its days, one of each offset that is common. */
const OTHER_ZONES = [
  ...['Europe/London', 'Europe/Berlin', 'Europe/Athens', 'America/New_York', 'America/Chicago', 'America/Denver'],
  ...['America/Los_Angeles', 'Australia/Sydney', 'Australia/Adelaide', 'Pacific/Auckland'],
];

/**
 * Stamps with an offset name instants; the days that they begin are those of the home's clock, in place. Days that were
 * cut by another clock are kept as they were cut; where that is no clock of the file's own, the home's is asked for.
 */
export function countByLocalDays(dates: Dates, choices: IntakeChoices, zone: string, book: RemarkBook): void {
  const { count, civilMinute, offsets, kind } = dates;
  if (kind !== 'time' || !offsets || count === 0) return;
  const written = civilMinute.subarray(0, count);
  const inZone = (name: string) => written.map((civil, i) => localMinute(civil, offsets[i]!, name));
  const areMidnights = (minutes: Float64Array) => minutes.every((minute) => minute % 1440 === 0);
  const local = inZone(zone);
  if (!areMidnights(local)) {
    if (areMidnights(written)) {
      book.add('espi-other-clock', 'note', { foundTold: tell('its-own-clock'), expected: zone });
      return;
    }
    const other = OTHER_ZONES.find((name) => areMidnights(inZone(name)));
    if (other !== undefined && choices.clock === undefined)
      book.add('zone-asked', 'question', { found: zone, expected: other });
  }
  written.set(local);
}

function localMinute(civil: number, offset: number, zone: string): number {
  if (Number.isNaN(offset)) return civil;
  return civil - offset + offsetMinutes(zone, (civil - offset) * 60_000);
}
