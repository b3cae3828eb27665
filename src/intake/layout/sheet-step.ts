/** Step between the dates of a sheet, from its first rows; what tells half-hours, days and bills apart. */
import { weighDayFirst } from '../dates/decide-day-first.ts';
import { commonestStep } from '../dates/interval.ts';
import { readStamp } from '../dates/read-stamp.ts';
import { createStampReader, READ, type StampKind } from '../dates/stamp-reader.ts';
import { countAsNumber } from '../numbers/read-number.ts';
import { cellText } from '../text/table.ts';
import { type ColumnFacts, isClockColumn, isDateColumn } from './column-facts.ts';
import { clockAt, dayPartsOf, holdsMidnights } from './day-parts.ts';
import { plainWords } from './headings.ts';
import { orderBeside, orderByEnds, orderOfHeading } from './read-dates.ts';
import type { Sheet } from './sheet.ts';

export interface SheetStep {
  /** Commonest step in minutes; undefined where there are too few dates. */
  readonly minutes: number | undefined;
  readonly kind: StampKind;
  readonly timeColumn: number | undefined;
  /** Whether that column numbers the hours of the day rather than naming clock times. */
  readonly isNumbered: boolean;
  readonly endTimeColumn: number | undefined;
  /** A second date column that ends the period. */
  readonly toColumn: number | undefined;
  /** Whether the first of the looked-at dates is later than the last. */
  readonly isNewestFirst: boolean;
  /** Commonest length from the first date to the second, where there are two. */
  readonly lengthMinutes: number | undefined;
}

const SAMPLE_ROWS = 500;
const MINUTES_A_DAY = 1440;

/** Order of day and month as far as the dates tell before anybody is asked, else that of the home. */
export function isDayFirst(sheet: Sheet): boolean {
  const { table, dateColumn, firstRow, dayFirst } = sheet;
  if (dayFirst !== undefined || dateColumn < 0) return dayFirst ?? true;
  const told = weighDayFirst(table, dateColumn, firstRow, Math.min(table.rowCount, firstRow + SAMPLE_ROWS));
  if (told.dayFirst + told.monthFirst > 0) return told.monthFirst <= told.dayFirst;
  const named = orderOfHeading(sheet, dateColumn);
  if (named !== undefined) return named;
  return orderBeside(sheet, dateColumn) ?? orderByEnds(sheet, dateColumn) ?? !sheet.isMonthFirstHere;
}

/** Whether the second date of most rows leads on to the first of the next row, so that both name one period. */
function namesRows({ table, dateColumn, firstRow, dateForm }: Sheet, dayFirst: boolean, other: number): boolean {
  const end = Math.min(table.rowCount, firstRow + SAMPLE_ROWS);
  const reader = createStampReader();
  const at = (row: number, column: number): number => {
    const cell = cellText(table, row, column);
    return readStamp(cell, 0, cell.length, dayFirst, reader) === READ ? reader.civilMinute : Number.NaN;
  };
  if (dateForm !== 'calendar' || end - firstRow < 2) return true;
  let good = 0;
  let timed = false;
  for (let row = firstRow; row + 1 < end; row++) {
    const [until, again] = [at(row, other), at(row + 1, other)];
    timed ||= reader.kind === 'time';
    const room = timed ? 0 : MINUTES_A_DAY;
    // Rows may be written from the newest to the oldest.
    if ([at(row + 1, dateColumn) - until, at(row, dateColumn) - again].some((gap) => Math.abs(gap) <= room)) good++;
  }
  return good >= (end - firstRow - 1) * 0.5;
}

/** When the most was used or made, or the sun rose, and how long something ran: no time of the row. */
const OF_EXTREME =
  /\b(peak|max\w*|min(imum)?|highest|lowest|sunrise|sunset|run(ning)? ?time|durations?|elapsed|laufzeit|dauer)\b/;

const cache = new WeakMap<Sheet, SheetStep>();

export function stepOf(sheet: Sheet): SheetStep {
  const known = cache.get(sheet);
  if (known) return known;
  const step = measure(sheet);
  cache.set(sheet, step);
  return step;
}

function measure(sheet: Sheet): SheetStep {
  const { table, dateColumn, firstRow } = sheet;
  const dayFirst = isDayFirst(sheet);
  // Seconds and milliseconds since 1970 have their time of day.
  const isInstant = sheet.dateForm !== 'calendar' && sheet.dateForm !== 'serial';
  const clocks = isInstant
    ? []
    : sheet.columns.filter((c) => isClockColumn(c) && !isDateColumn(c) && !OF_EXTREME.test(plainWords(c.heading)));
  const clockColumn = clocks.find((c) => c.meaning.role !== 'to') ?? clocks[0];
  const mayNumber = clockColumn ? [clockColumn] : sheet.columns.filter(({ index }) => index !== dateColumn);
  const areMidnights = holdsMidnights(sheet);
  // The number of a half-hour beside stamps that have their time adds nothing to them, and says no side.
  const hasTime = sheet.columns[dateColumn]?.dateKind === 'time' && !areMidnights;
  const numbered =
    sheet.dateForm === 'calendar' && !hasTime ? mayNumber.find((c) => dayPartsOf(table, firstRow, c)) : undefined;
  const parts = numbered && dayPartsOf(table, firstRow, numbered);
  const timeColumn = (clockColumn ?? numbered)?.index;
  const endTimeColumn = clocks.find((c) => c.index !== timeColumn)?.index;
  const dates = sheet.columns.filter((c) => isDateColumn(c) && c.index !== dateColumn);
  const named = dates.find((c) => c.meaning.role === 'to');
  // The day that a moment is of ends nothing.
  const isDayOf = (c: ColumnFacts) => c.dateKind === 'day' && sheet.columns[dateColumn]?.dateKind === 'time';
  const toColumn = (named ?? dates.find((c) => !isDayOf(c) && namesRows(sheet, dayFirst, c.index)))?.index;
  const end = Math.min(table.rowCount, firstRow + SAMPLE_ROWS);
  const minutes: number[] = [];
  const lengths: number[] = [];
  const reader = createStampReader();
  let isTimed = false;
  const kinds = new Map<StampKind, number>();
  const count = (one: StampKind) => kinds.set(one, (kinds.get(one) ?? 0) + 1);
  if (dateColumn >= 0) {
    for (let row = firstRow; row < end; row++) {
      const cell = cellText(table, row, dateColumn);
      if (sheet.dateForm !== 'calendar') {
        const value = countAsNumber(cell);
        const scale = sheet.dateForm === 'serial' ? 1440 : sheet.dateForm === 'seconds' ? 1 / 60 : 1 / 60_000;
        if (!Number.isNaN(value)) minutes.push(Math.round(value * scale));
        if (!Number.isNaN(value)) isTimed ||= !Number.isInteger(value) || sheet.dateForm !== 'serial';
        continue;
      }
      if (readStamp(cell, 0, cell.length, dayFirst, reader) !== READ) continue;
      let at = reader.civilMinute;
      if ((reader.kind === 'day' || areMidnights) && timeColumn !== undefined) {
        const clock = clockAt(table, row, timeColumn, parts);
        if (clock >= 0 && clock <= 1500) at += clock;
      }
      if (!Number.isNaN(reader.offsetMinutes)) at -= reader.offsetMinutes;
      minutes.push(at);
      count(timeColumn !== undefined ? 'time' : reader.kind);
      if (toColumn !== undefined) {
        const start = reader.civilMinute;
        const ending = cellText(table, row, toColumn);
        if (readStamp(ending, 0, ending.length, dayFirst, reader) === READ) lengths.push(reader.civilMinute - start);
      }
    }
  }
  // Sums may have labels of their own, and a midnight may be written as a bare day.
  const kind = isTimed ? 'time' : ([...kinds].toSorted((a, b) => b[1] - a[1])[0]?.[0] ?? 'day');
  return {
    minutes: commonestStep(Float64Array.from(minutes), minutes.length),
    kind,
    timeColumn,
    isNumbered: parts !== undefined,
    endTimeColumn,
    toColumn,
    isNewestFirst: minutes.length > 1 && minutes[0]! > minutes.at(-1)!,
    lengthMinutes: lengths.sort((a, b) => a - b)[lengths.length >> 1],
  };
}
