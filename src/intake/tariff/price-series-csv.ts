/**
 * Reads a price series: a row for each half-hour, with the time that it begins at and the price of a unit. Times with an
 * offset or a Z are instants; times without are those of the local clock, whose doubled hour in autumn stands twice.
 */

import { toCivilDate } from '../../model/calendar/civil.ts';
import { localDay, minutesInDay, startOfDay } from '../../model/calendar/zone.ts';
import { Tariff, type TariffVersion } from '../../model/shapes/tariff.ts';
import { tell, type Wording } from '../../model/shapes/told.ts';
import { sumOf } from '../../model/units/sums.ts';
import { isDotted, weighDayFirst, writesMonthFirst } from '../dates/decide-day-first.ts';
import { readStamp } from '../dates/read-stamp.ts';
import { createStampReader, READ } from '../dates/stamp-reader.ts';
import { isMissing, readAwkwardNumber } from '../numbers/read-number.ts';
import { type RemarkBook, tellNumber } from '../terms/remark-book.ts';
import { findSeparator } from '../text/separator.ts';
import { cellText, rowTexts, splitTable, type Table } from '../text/table.ts';
import { coinOf, type TariffContext, usualVatRate } from './home-terms.ts';
import { findPriceColumn, pencePerKWhOf } from './price-column.ts';
import { refuseIssues } from './refuse-issues.ts';

const TIME =
  /^(time|date|start|from|valid.?from|period|half.?hour|hour|interval|timestamp|datum|dato|uhrzeit|zeit|stunde|heure|fecha|hora|tijd|uur|tid)/i;
/** A time of day, or an hour from one to the next. */
const CLOCK = /^(\d{1,2})(?::(\d{2}))?(?::00)?(?: ?[-–] ?\d{1,2}(?::\d{2})?)?$/;
const END = /\b(to|end|ends|ending|until|bis|ende)\b|valid.?to/i;
const MS_PER_MINUTE = 60_000;
const HALF_HOUR = 30;

export interface TimeColumns {
  readonly time: number;
  /** Column of the time of day, where it stands apart from its date. */
  readonly clock?: number;
}

/** The columns of times below a header that names a time and no band or hours; undefined where it is no such file. */
export function timeColumns(text: string): TimeColumns | undefined {
  const { separator, start } = findSeparator(text);
  const table = splitTable(text.slice(0, 4000), separator, start);
  if (!table || table.rowCount < 2) return undefined;
  const heads = rowTexts(table, 0).map((cell) => cell.replaceAll('_', ' ').trim());
  if (heads.some((head) => /^(band|name|days?|months?)$/i.test(head))) return undefined;
  const times = heads.flatMap((head, i) => (TIME.test(head) || END.test(head) ? [i] : []));
  const time = times.find((i) => !END.test(heads[i]!)) ?? times[0];
  if (time === undefined) return undefined;
  const reader = createStampReader();
  const cells = rowTexts(table, 1);
  const isOf = (kind: string, cell = '') =>
    [true, false].some(
      (dayFirst) => readStamp(cell, 0, cell.length, dayFirst, reader) === READ && reader.kind === kind,
    );
  if (isOf('time', cells[time])) return { time };
  const clock = times.find((i) => i !== time && !END.test(heads[i]!) && CLOCK.test(cells[i] ?? ''));
  return clock !== undefined && isOf('day', cells[time]) ? { time, clock } : undefined;
}

/** "01/03/2026" and "0:30" as one stamp. */
function stampOf(cells: readonly string[], { time, clock }: TimeColumns): string {
  const date = cells[time] ?? '';
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
  const prices = new Map<number, (number | null)[]>();
  const reader = createStampReader();
  let lastCivil = Number.NaN;
  let lastHalf = -1;
  for (let row = 1; row < table.rowCount; row++) {
    const cells = rowTexts(table, row);
    const stamp = stampOf(cells, columns);
    const written = cells[price.column] ?? '';
    const wrong = (column: string, found: string, expectedTold: Wording) =>
      book.tally('tariff-row', 'refusal', {
        row: table.lineOfRow[row]!,
        column,
        found: found.slice(0, 60),
        expectedTold,
      });
    if (readStamp(stamp, 0, stamp.length, dayFirst, reader) !== READ || reader.kind !== 'time') {
      wrong('time', stamp, 'a date with its time');
      continue;
    }
    const amount = readAwkwardNumber(written, decimal);
    const pence = pencePerKWhOf(price, amount);
    if (!isMissing(written) && Number.isNaN(pence)) {
      wrong('pence per kWh', written, tell('a-number'));
      continue;
    }
    const { civilMinute } = reader;
    if (civilMinute % HALF_HOUR !== 0) {
      wrong('time', stamp, 'the beginning of a half-hour');
      continue;
    }
    const place = Number.isNaN(reader.offsetMinutes)
      ? placeOfCivil(civilMinute, zone, lastCivil, lastHalf)
      : placeOfInstant((civilMinute - reader.offsetMinutes) * MS_PER_MINUTE, zone);
    lastCivil = civilMinute;
    lastHalf = place.half;
    const day = prices.get(place.day) ?? new Array<number | null>(minutesInDay(zone, place.day) / HALF_HOUR).fill(null);
    prices.set(place.day, day);
    if (place.half >= day.length) {
      wrong('time', stamp, 'a half-hour that the clock has on this day');
      continue;
    }
    const before = day[place.half];
    if (before !== null && before !== undefined && before !== pence) {
      wrong('time', stamp, tell('one-price', { pence: before }));
      continue;
    }
    if (!isMissing(written)) day[place.half] = pence;
  }
  if (book.refused() || prices.size === 0) return null;
  if (isHourly(prices)) for (const day of prices.values()) for (let i = 1; i < day.length; i += 2) day[i] = day[i - 1]!;
  const vat = { rate: usualVatRate(context), included: price.included ?? true };
  if (price.included === undefined) book.add('tariff-vat-guessed', 'question', tellNumber(100 * vat.rate));
  book.add('tariff-wrong', 'question', {
    column: 'standing',
    found: '',
    expectedTold: tell('standing-a-day', { unit: coinOf(context) }),
  });
  return build(fileName, prices, zone, vat, book);
}

/** Prices at every full hour and at no half hour hold for the whole hour. */
function isHourly(prices: ReadonlyMap<number, readonly (number | null)[]>): boolean {
  let full = 0;
  for (const day of prices.values())
    for (let i = 0; i < day.length; i++) {
      if (day[i] === null) continue;
      if (i % 2 === 1) return false;
      full++;
    }
  return full >= 24;
}

function placeOfInstant(epochMs: number, zone: string): { day: number; half: number } {
  const { dayNumber, elapsedMinutes } = localDay(zone, epochMs);
  return { day: dayNumber, half: elapsedMinutes / HALF_HOUR };
}

/** Place of a reading of the local clock; one that goes back within a day is the second of a doubled hour. */
function placeOfCivil(civilMinute: number, zone: string, before: number, halfBefore: number) {
  const day = Math.floor(civilMinute / 1440);
  const minute = civilMinute - day * 1440;
  const length = minutesInDay(zone, day);
  if (length === 1440) return { day, half: minute / HALF_HOUR };
  if (Math.floor(before / 1440) === day && halfBefore >= 0) return { day, half: halfBefore + 1 };
  const instant = startOfDay(zone, day) + minute * MS_PER_MINUTE;
  return { day, half: placeOfInstant(instant, zone).half };
}

function build(
  fileName: string,
  prices: ReadonlyMap<number, (number | null)[]>,
  zone: string,
  vat: TariffVersion['vat'],
  book: RemarkBook,
): Tariff | null {
  const sorted = [...prices.keys()].sort((a, b) => a - b);
  const days = sorted.map((day) => ({ date: toCivilDate(day), pencePerKWh: prices.get(day)! }));
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
