/**
 * Reads a price series: a row for each half-hour, with the time that it begins at and the price of a unit. Times with an
 * offset or a Z are instants; times without are those of the local clock, whose doubled hour in autumn stands twice.
 */

import { toCivilDate } from '../../model/calendar/civil.ts';
import { type PriceSeries, Tariff, type TariffVersion } from '../../model/shapes/tariff.ts';
import { tell, type Wording } from '../../model/shapes/told.ts';
import { sumOf } from '../../model/units/sums.ts';
import { toInstants } from '../clock/to-instants.ts';
import { zoneTable } from '../clock/zone-table.ts';
import { isDotted, weighDayFirst, writesMonthFirst } from '../dates/decide-day-first.ts';
import { commonestStep, orderOfRows } from '../dates/interval.ts';
import { readStamp } from '../dates/read-stamp.ts';
import { createStampReader, READ } from '../dates/stamp-reader.ts';
import { isMissing, readAwkwardNumber } from '../numbers/read-number.ts';
import { placeReadings } from '../readings/place-readings.ts';
import { type RemarkBook, tellNumber } from '../terms/remark-book.ts';
import { findSeparator } from '../text/separator.ts';
import { cellText, rowTexts, splitTable, type Table } from '../text/table.ts';
import { coinOf, type TariffContext, usualVatRate } from './home-terms.ts';
import { findPriceColumn, type PriceColumn, pencePerKWhOf } from './price-column.ts';
import { refuseIssues } from './refuse-issues.ts';

const TIME =
  /^(time|date|start|from|valid.?from|period|half.?hour|hour|interval|timestamp|datum|dato|uhrzeit|zeit|stunde|heure|fecha|hora|tijd|uur|tid)/i;
/** A time of day, or an hour from one to the next. */
const CLOCK = /^(\d{1,2})(?::(\d{2}))?(?::00)?(?: ?[-–] ?\d{1,2}(?::\d{2})?)?$/;
const END = /\b(to|end|ends|ending|until|bis|ende)\b|valid.?to/i;
const HALF_HOUR = 30;
const HOUR = 60;

export interface TimeColumns {
  readonly time: number;
  /** Column of the time of day, where it stands apart from its date. */
  readonly clock?: number;
}

/** The first two rows: headings, and what stands below them. */
function firstRows(text: string): readonly [heads: readonly string[], cells: readonly string[]] {
  const { separator, start } = findSeparator(text);
  const table = splitTable(text.slice(0, 4000), separator, start);
  const [heads = [], cells = []] = [0, 1].map((row) => (table && row < table.rowCount ? rowTexts(table, row) : []));
  return [heads, cells];
}

const HOURS_OF_DAY = 23;

/** Whether the hours of a day stand side by side in the first line. */
export const areHoursAcross = (text: string): boolean =>
  firstRows(text)[0].filter((head) => CLOCK.test(head)).length >= HOURS_OF_DAY;

/** The columns of times below a header that names a time and no band or hours; undefined where it is no such file. */
export function timeColumns(text: string): TimeColumns | undefined {
  const [names, below] = firstRows(text);
  if (below.length === 0) return undefined;
  const heads = names.map((cell) => cell.replaceAll('_', ' ').trim());
  if (heads.some((head) => /^(band|name|days?|months?)$/i.test(head))) return undefined;
  const reader = createStampReader();
  const cells = below.map(beginningOf);
  const isOf = (kind: string, cell = '') =>
    [true, false].some(
      (dayFirst) => readStamp(cell, 0, cell.length, dayFirst, reader) === READ && reader.kind === kind,
    );
  const times = heads.flatMap((head, i) => (TIME.test(head) || END.test(head) || isOf('time', cells[i]) ? [i] : []));
  const time = times.find((i) => !END.test(heads[i]!)) ?? times[0];
  if (time === undefined) return undefined;
  if (isOf('time', cells[time])) return { time };
  const clock = times.find((i) => i !== time && !END.test(heads[i]!) && CLOCK.test(cells[i] ?? ''));
  return clock !== undefined && isOf('day', cells[time]) ? { time, clock } : undefined;
}

/** Of "01.03.2026 00:00 - 01.03.2026 01:00" the beginning. */
const beginningOf = (cell: string): string => cell.split(/(?<=:\d\d) +[-–] +(?=\d)/)[0]!;

/** "01/03/2026" and "0:30" as one stamp. */
function stampOf(cells: readonly string[], { time, clock }: TimeColumns): string {
  const date = beginningOf(cells[time] ?? '');
  if (clock === undefined) return date;
  const [, hour, minute = '00'] = CLOCK.exec(cells[clock] ?? '') ?? [];
  return hour === undefined ? date : `${date} ${hour.padStart(2, '0')}:${minute}`;
}

/** Whether the day comes first in the times; asked where no date tells. */
function dayFirstIn(table: Table, time: number, zone: string, book: RemarkBook): boolean {
  const { dayFirst, monthFirst, either, rowOfEither } = weighDayFirst(table, time, 1);
  if (dayFirst + monthFirst > 0 || either === 0) return dayFirst >= monthFirst;
  const column = cellText(table, 0, time);
  const found = cellText(table, rowOfEither, time);
  if (isDotted(found)) return true;
  const expected = writesMonthFirst(zone) ? 'month first' : 'day first';
  book.add('tariff-date-asked', 'question', { row: table.lineOfRow[rowOfEither]!, column, found, expected });
  return expected === 'day first';
}

/** A row that was read: its line, when it begins, and its price, NaN where none stands. */
interface Priced {
  readonly line: number;
  readonly stamp: string;
  readonly civilMinute: number;
  /** East of UTC; NaN where the row names none. */
  readonly offsetMinutes: number;
  readonly pence: number;
}

/** The series as a tariff of one price, its mean, with no standing charge; the rest is typed in the editor. */
export function readPriceSeries(
  fileName: string,
  text: string,
  columns: TimeColumns,
  context: TariffContext,
  book: RemarkBook,
): Tariff | null {
  const { zone } = context;
  const { time } = columns;
  const { separator, start } = findSeparator(text);
  const table = splitTable(text, separator, start);
  if (!table) return null;
  const price = findPriceColumn(rowTexts(table, 0), table.lineOfRow[0]!, context, book);
  const heading = cellText(table, 0, time);
  if (END.test(heading.replaceAll('_', ' '))) {
    const expectedTold = 'the time that each price begins at';
    book.add('tariff-row', 'refusal', { row: table.lineOfRow[0]!, column: heading, found: heading, expectedTold });
  }
  if (!price) book.add('tariff-columns', 'refusal', { expected: `${coinOf(context)}/kWh` });
  if (!price || price === 'refused' || book.refused()) return null;
  const dayFirst = dayFirstIn(table, time, zone, book);
  const decimal = separator === ';' && /\d,\d/.test(text) ? ',' : '.';
  const rows = readRows(table, columns, price, { dayFirst, decimal }, book);
  const days = book.refused() ? undefined : placeRows(rows, zone, book);
  if (!days || book.refused()) return null;
  const vat = { rate: usualVatRate(context), included: price.included ?? true };
  if (price.included === undefined) book.add('tariff-vat-guessed', 'question', tellNumber(100 * vat.rate));
  book.add('tariff-wrong', 'question', {
    column: 'standing',
    found: '',
    expectedTold: tell('standing-a-day', { unit: coinOf(context) }),
  });
  return build(fileName, days, zone, vat, book);
}

const refuseRow = (book: RemarkBook, line: number, column: string, found: string, expectedTold: Wording): void =>
  book.tally('tariff-row', 'refusal', { row: line, column, found: found.slice(0, 60), expectedTold });

function readRows(
  table: Table,
  columns: TimeColumns,
  price: PriceColumn,
  { dayFirst, decimal }: { readonly dayFirst: boolean; readonly decimal: '.' | ',' },
  book: RemarkBook,
): Priced[] {
  const reader = createStampReader();
  return Array.from({ length: table.rowCount - 1 }, (_, i) => i + 1).flatMap((row) => {
    const line = table.lineOfRow[row]!;
    const cells = rowTexts(table, row);
    const stamp = stampOf(cells, columns);
    const written = cells[price.column] ?? '';
    if (readStamp(stamp, 0, stamp.length, dayFirst, reader) !== READ || reader.kind !== 'time') {
      refuseRow(book, line, 'time', stamp, 'a date with its time');
      return [];
    }
    const pence = isMissing(written) ? Number.NaN : pencePerKWhOf(price, readAwkwardNumber(written, decimal));
    if (!isMissing(written) && Number.isNaN(pence)) {
      refuseRow(book, line, 'pence per kWh', written, tell('a-number'));
      return [];
    }
    return [{ line, stamp, civilMinute: reader.civilMinute, offsetMinutes: reader.offsetMinutes, pence }];
  });
}

/** Rows as half-hours of local days; those of an hour hold for both of its halves, and of shorter ones the mean is taken. */
function placeRows(rows: readonly Priced[], zone: string, book: RemarkBook): PriceSeries['days'] | undefined {
  const count = rows.length;
  const civil = Float64Array.from(rows, ({ civilMinute }) => civilMinute);
  const values = Float64Array.from(rows, ({ pence }) => pence);
  const step = commonestStep(civil, count);
  const [first, last] = [civil.reduce((a, b) => Math.min(a, b)), civil.reduce((a, b) => Math.max(a, b))];
  const clock = zoneTable(zone, Math.floor(first / 1440), Math.floor(last / 1440));
  const intervalMinutes = step === HOUR || (step !== undefined && HALF_HOUR % step === 0) ? step : HALF_HOUR;
  const stamps = { civil, values, offsets: null, count, intervalMinutes, stamp: 'start' as const };
  const newestFirst = orderOfRows(civil, count).order === 'newest first';
  const { start } = toInstants({ ...stamps, newestFirst }, { clock: 'local', useOffsets: false }, clock);
  for (const [i, { civilMinute, offsetMinutes }] of rows.entries())
    if (!Number.isNaN(offsetMinutes)) start[i] = civilMinute - offsetMinutes;
  const refuse = (at: number, expected: Wording) => refuseRow(book, rows[at]!.line, 'time', rows[at]!.stamp, expected);
  const skipped = start.findIndex(Number.isNaN);
  if (skipped >= 0) refuse(skipped, 'a half-hour that the clock has on this day');
  const places = Uint32Array.from(rows, (_, i) => i);
  const placed = placeReadings(start, values, count, intervalMinutes, clock, places);
  if (!placed) return undefined;
  const { offGrid, different, days } = placed;
  if (offGrid.count > 0) refuse(offGrid.row, 'the beginning of a half-hour');
  else if (different.count > 0)
    refuse(different.row, tell('one-price', { pence: priceBefore(rows, start, different.row) }));
  if (intervalMinutes < HALF_HOUR) book.add('tariff-prices-averaged', 'note', tellNumber(intervalMinutes));
  return days.map(({ day, values: slots }) => ({
    date: toCivilDate(day),
    pencePerKWh: toHalves(slots, intervalMinutes),
  }));
}

/** What another row before it says of the same moment. */
const priceBefore = (rows: readonly Priced[], start: Float64Array, at: number): number =>
  rows[start.findLastIndex((minute, i) => i < at && minute === start[at])]!.pence;

/** Prices by the half-hour, to a ten-thousandth where they are means; null where one is missing. */
function toHalves(slots: Float64Array, intervalMinutes: number): (number | null)[] {
  const known = (pence: number) => (Number.isNaN(pence) ? null : pence);
  if (intervalMinutes === HOUR) return Array.from(slots).flatMap((pence) => [known(pence), known(pence)]);
  const parts = HALF_HOUR / intervalMinutes;
  return Array.from({ length: slots.length / parts }, (_, half) => {
    const pence = slots.subarray(half * parts, (half + 1) * parts).reduce((sum, part) => sum + part, 0) / parts;
    return known(parts === 1 ? pence : Math.round(pence * 10_000) / 10_000);
  });
}

function build(
  fileName: string,
  placed: PriceSeries['days'],
  zone: string,
  vat: TariffVersion['vat'],
  book: RemarkBook,
): Tariff | null {
  const days = [...placed];
  // A file in universal time begins and ends within a local day: its edges are left out, gaps inside are not.
  const isWhole = ({ pencePerKWh }: (typeof days)[number]) => pencePerKWh.every((pence) => pence !== null);
  if (days.length > 2 && !isWhole(days[0]!)) days.shift();
  if (days.length > 2 && !isWhole(days.at(-1)!)) days.pop();
  const all = days.flatMap(({ pencePerKWh }) => pencePerKWh.filter((pence) => pence !== null));
  const mean = sumOf(all) / Math.max(1, all.length);
  const whole = {
    id: 'tariff-1',
    name: fileName.replace(/\.[a-z]{2,5}$/i, '').slice(0, 120) || 'Half-hourly prices',
    fuel: 'electricity',
    origin: tell('from-file', { file: fileName }),
    grade: 'measured',
    versions: [
      {
        from: days[0]!.date,
        standingPencePerDay: 0,
        vat,
        bands: [{ name: 'all hours', pencePerKWh: Math.round(mean * 100) / 100, times: 'rest' }],
        series: { zone, days },
      },
    ],
  };
  const parsed = Tariff.safeParse(whole);
  if (parsed.success) return parsed.data;
  refuseIssues(parsed.error.issues, whole, book);
  return null;
}
