/** A whole period in one cell, "1 Jan 2025 - 31 Jan 2025" or the number of a year, becomes two columns of dates. */
import { clockTimeOf, daysInMonth, twoDigits } from '../../model/calendar/civil.ts';
import { monthOfName } from '../dates/month-names.ts';
import { spanOf } from '../dates/read-clock.ts';
import { readStamp } from '../dates/read-stamp.ts';
import { createStampReader, UNREADABLE } from '../dates/stamp-reader.ts';
import { rewriteCells } from '../text/rewrite-cells.ts';
import { cellCount, cellText, type Table } from '../text/table.ts';
import { plainWords } from './headings.ts';

const SPAN =
  /^(?:from|vom?|du|del?|dal|desde|van|fra)?\s*(\d.*?[\d\p{L}.])\s*(?:\s[-–—]\s|–|—|\b(?:to|until|bis(?: zum)?|au|al|a|hasta|t\/m|tot(?: en met)?|til)\b|(?<=\d{4}) ?- ?(?=\d)(?!\d\d-\d\d(?![\d-])))\s*(\d.*\d)$/iu;
/** "Jan 1, 2024 - Jan 31, 2024", and without the first year. */
const MONTH_FIRST =
  /^(\p{L}{3,9}\.? \d{1,2}(?:,? \d{4})?)\s*(?:[-–—]|\b(?:to|through)\b)\s*(\p{L}{3,9}\.? \d{1,2},? \d{4})$/iu;
const YEAR_HEADING =
  /^(calendar )?(year|jahr|annee|an|ano|anno|jaar|ar)$|^(period|periode|periodo|zeitraum|kalenderjahr|verbrauchsjahr)$/;
const YEAR = /^(19[9]\d|20\d\d)$/;
const SEARCHED_ROWS = 40;
const SEARCHED_COLUMNS = 12;
const SAMPLE_ROWS = 60;

type Cut = (cell: string) => readonly [from: string, to: string] | undefined;

const reader = createStampReader();
/** Read either way, so that "13/01" and "01/13" both count. */
const isDate = (text: string): boolean =>
  [true, false].some((dayFirst) => readStamp(text, 0, text.length, dayFirst, reader) !== UNREADABLE);

const cutSpan: Cut = (cell) => {
  if (cell.length > 60) return undefined;
  const [, from, to] = SPAN.exec(cell.trim()) ?? MONTH_FIRST.exec(cell.trim()) ?? [];
  if (from === undefined || to === undefined || !isDate(to)) return undefined;
  if (isDate(from)) return [from, to];
  // "1 Nov – 31 Jan 2025" begins in the year before.
  const year = /\d{4}$/.exec(to)?.[0];
  const name = /\p{L}{3,}/u;
  const [first, last] = [monthOfName(name.exec(from)?.[0] ?? ''), monthOfName(name.exec(to)?.[0] ?? '')];
  const beginning = `${from} ${Number(year) - Number(first > last)}`;
  return year !== undefined && first > 0 && last > 0 && isDate(beginning) ? [beginning, to] : undefined;
};

/** "2025-02-01 00:00 - 00:15", which is no offset from UTC. */
const cutClocks: Cut = (cell) => {
  const [, date, clocks] = /^(\S{8,10})[ ,T]+(\d.*|kl.*)$/.exec(cell) ?? [];
  const span = date === undefined || !isDate(date) ? undefined : spanOf(clocks!);
  return span && [`${date} ${clockTimeOf(span[0])}`, `${date} ${clockTimeOf(span[1])}`];
};
const MONTHS = /^(\p{L}{3,12})\.? ?[-–/] ?(\p{L}{3,12})\.? (\d{4})$/u;

/** "Nov - Jan 2026" begins in the year before. */
const cutMonths: Cut = (cell) => {
  const [, from, to, year] = MONTHS.exec(cell.trim()) ?? [];
  const [first, last] = [monthOfName(from ?? ''), monthOfName(to ?? '')];
  if (first === 0 || last === 0) return undefined;
  const beginning = `${Number(year) - Number(first > last)}-${twoDigits(first)}`;
  return [`${beginning}-01`, `${year}-${twoDigits(last)}-${daysInMonth(Number(year), last)}`];
};
const cutYear: Cut = (cell) => (YEAR.test(cell) ? [`${cell}-01-01`, `${cell}-12-31`] : undefined);

/** Undefined where no column holds periods. */
export function splitSpans(table: Table): Table | undefined {
  const first = Math.min(table.rowCount, SEARCHED_ROWS);
  for (let column = 0; column < SEARCHED_COLUMNS; column++)
    for (const cut of [cutSpan, cutMonths, cutClocks]) {
      const row = findRow(table, column, 0, first, cut);
      if (row >= 0) return cutColumn(table, column, row, cut);
    }
  return undefined;
}

/** The same for a column of the numbers of years, in a table without other dates. */
export function splitYears(table: Table): Table | undefined {
  for (let row = 0; row < Math.min(table.rowCount, SEARCHED_ROWS); row++)
    for (let column = 0; column < Math.min(SEARCHED_COLUMNS, cellCount(table, row)); column++)
      if (YEAR_HEADING.test(plainWords(cellText(table, row, column))))
        if (findRow(table, column, row + 1, row + 2, cutYear) >= 0) return cutColumn(table, column, row + 1, cutYear);
  return undefined;
}

const NUMBERED_MONTHS = [
  /^(?<year>20\d\d)[ -]?M(?<month>0?[1-9]|1[0-2])$/,
  /^(?<year>20\d\d)(?<month>0[1-9]|1[0-2])$/,
  // 01/05 may be a day without its year.
  /^(?<month>0?[1-9]|1[0-2])[/-](?<year>1[3-9]|[2-4]\d)$/,
];
const LEAST_MONTHS = 3;

/** "2025M01", "202501" and "01/25" become months where a whole column of them goes on or back month by month. */
export function splitNumberedMonths(table: Table): Table | undefined {
  for (let column = 0; column < 3; column++)
    for (const form of NUMBERED_MONTHS) {
      const numbers: number[] = [];
      let others = 0;
      for (let row = 0; row < Math.min(table.rowCount, SAMPLE_ROWS); row++) {
        const { year, month } = form.exec(cellText(table, row, column))?.groups ?? {};
        if (year === undefined) others++;
        else numbers.push((Number(year) % 100) * 12 + Number(month));
      }
      const step = numbers[1]! - numbers[0]!;
      const isInOrder = numbers.every((one, i) => i === 0 || (one - numbers[i - 1]!) * step > 0);
      const isByMonth = Math.abs(step) === 1 || Math.abs(numbers.at(-1)! - numbers.at(-2)!) === 1;
      if (numbers.length < LEAST_MONTHS || others > numbers.length || !isInOrder || !isByMonth) continue;
      return rewriteCells(table, (row, at) => {
        const { year, month } = (at === column && form.exec(cellText(table, row, column))?.groups) || {};
        return year === undefined ? undefined : [`${year.length === 2 ? '20' : ''}${year}-${month!.padStart(2, '0')}`];
      });
    }
  return undefined;
}

/** First row from which on nearly every cell of the column can be cut. */
function findRow(table: Table, column: number, from: number, before: number, cut: Cut): number {
  for (let row = from; row < before; row++) {
    if (row >= table.rowCount || !cut(cellText(table, row, column))) continue;
    const end = Math.min(table.rowCount, row + SAMPLE_ROWS);
    let good = 0;
    let filled = 0;
    for (let at = row; at < end; at++) {
      const cell = cellText(table, at, column);
      if (cell === '') continue;
      filled++;
      if (cut(cell)) good++;
    }
    return good >= 2 && good >= filled * 0.8 ? row : -1;
  }
  return -1;
}

function cutColumn(table: Table, column: number, firstRow: number, cut: Cut): Table {
  return rewriteCells(table, (row, at) => {
    if (at !== column || row < firstRow - 1) return undefined;
    const cell = cellText(table, row, column);
    if (row === firstRow - 1) return [`from (${cell})`, `to (${cell})`];
    return cut(cell) ?? [cell, ''];
  });
}
