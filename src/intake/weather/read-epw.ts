/**
 * Hourly weather in the open EPW form: eight title lines, then one row an hour with the air temperature in the seventh
 * column (°C, 99.9 where missing). Hours are 1 to 24 and name the end of each; the clock is winter time all year at the
 * offset of the first title line. Field order from the published description of the form in the EnergyPlus documentation,
 * "Auxiliary Programs", from memory.
 */

import { daysInMonth } from '../../model/calendar/civil.ts';
import { zoneTable } from '../clock/zone-table.ts';
import { civilDay } from '../dates/stamp-reader.ts';
import { type FormInput, type FormReading, firstLetters, type IntakeForm, nothingOfForm } from '../importer/form.ts';
import { remarkGaps } from '../readings/find-gaps.ts';
import { placeReadings } from '../readings/place-readings.ts';
import { remarkPlaced } from '../readings/remark-placed.ts';
import { screenTemperature } from '../readings/screen-values.ts';
import { firstDays, intervalDays, summariseReadings } from '../readings/summarise.ts';
import { decodeText } from '../text/decode.ts';

const NAME = 'weather file';
const MISSING_C = 99.9;
const TITLE_LINES = 8;
const PREVIEW_ROWS = 12;
/** A century of hours. */
const MOST_LINES = 900_000;

export const weatherFile: IntakeForm = {
  name: NAME,
  reason: 'begins with LOCATION, as EPW weather files do',
  matches: (bytes) => /^LOCATION,/.test(firstLetters(bytes, 40)),
  read: readEpw,
};

interface Hours {
  /** UTC minute at which each hour starts. */
  readonly start: number[];
  readonly values: number[];
  readonly lines: number[];
  readonly years: Set<number>;
  readonly rows: { line: number; cells: string[] }[];
}

/** "UTC+1", "UTC−3:30". */
function clockOf(hoursEast: number): string {
  const minutes = Math.round(Math.abs(hoursEast) * 60);
  const rest = minutes % 60 === 0 ? '' : `:${String(minutes % 60).padStart(2, '0')}`;
  return `UTC${hoursEast < 0 ? '−' : '+'}${Math.floor(minutes / 60)}${rest}`;
}

function readEpw({ bytes, choices, context, book }: FormInput): FormReading | undefined {
  const decoded = decodeText(bytes);
  if ('fault' in decoded) {
    book.add(decoded.fault === 'empty' ? 'file-empty' : 'file-binary', 'refusal');
    return nothingOfForm(choices);
  }
  const lines = decoded.text.split(/\r\n|\r|\n/, MOST_LINES);
  const title = lines[0]!.split(',').map((cell) => cell.trim());
  if (title.some((cell) => /^lat(itude)?$/i.test(cell))) return undefined;
  const hoursEast = Number(title[8]);
  const place = [title[1], title[3]].filter(Boolean).join(', ').slice(0, 80) || 'weather';
  if (!title[8] || !Number.isFinite(hoursEast) || Math.abs(hoursEast) > 15) {
    book.add('epw-title', 'refusal', { row: 1, found: title[8] ?? '', expected: 'hours east of Greenwich' });
    return nothingOfForm(choices);
  }
  const hours = readHours(lines, hoursEast * 60, book);
  if (hours.start.length === 0) {
    book.add('no-readable-rows', 'refusal');
    return nothingOfForm(choices);
  }
  const years = [...hours.years].sort((a, b) => a - b);
  if (isMixed(years, hours)) {
    const found = years.length > 4 ? `${years.slice(0, 4).join(', ')} …` : years.join(', ');
    book.add('epw-years-mixed', 'refusal', { found, count: years.length });
    return { ...nothingOfForm(choices), dataRows: hours.start.length };
  }
  const values = Float64Array.from(hours.values);
  const lineOf = (i: number) => hours.lines[i]!;
  const dryBulb = { values, count: values.length, hours: 1, lineOf, column: 'dry bulb' };
  screenTemperature(dryBulb, 'outdoor-temperature', book);
  let first = Number.POSITIVE_INFINITY;
  let last = Number.NEGATIVE_INFINITY;
  for (const minute of hours.start) {
    first = Math.min(first, minute);
    last = Math.max(last, minute);
  }
  const zone = zoneTable(context.zone, Math.floor(first / 1440), Math.floor(last / 1440));
  const placed = placeReadings(Float64Array.from(hours.start), values, values.length, 60, zone, hours.lines);
  if (!placed || placed.present === 0) {
    book.add('no-readable-rows', 'refusal');
    return nothingOfForm(choices);
  }
  remarkPlaced(placed, context.zone, false, book);
  remarkGaps(placed, zone, context.zone, Number.NaN, book);
  const series = summariseReadings(
    { id: 'series-1', name: place, carrier: 'outdoor-temperature', role: 'weather', estimatedCount: 0 },
    placed,
  );
  book.add('epw-place', 'note', { found: place, expected: clockOf(hoursEast) });
  return {
    choices: { shape: NAME, unit: '°C', carrier: 'outdoor-temperature', role: 'weather' },
    series: [series],
    intervals: [intervalDays('series-1', placed)],
    firstDays: firstDays(placed, zone),
    dataRows: hours.start.length,
    columns: ['year', 'month', 'day', 'hour', 'dry bulb °C'],
    rows: hours.rows,
    titles: lines.filter((text, i) => i === 0 || (i < TITLE_LINES && /^comments/i.test(text))).join(' ; '),
  };
}

function readHours(lines: readonly string[], minutesEast: number, book: FormInput['book']): Hours {
  const hours: Hours = { start: [], values: [], lines: [], years: new Set(), rows: [] };
  for (let i = 1; i < lines.length; i++) {
    const text = lines[i]!;
    if (!/^\s*\d/.test(text)) continue;
    const cells = text.split(',', 8).map((cell) => cell.trim());
    const [year, month, day, hour] = cells.slice(0, 4).map(Number) as [number, number, number, number];
    const line = i + 1;
    const isDate =
      year >= 1900 && year <= 2100 && month >= 1 && month <= 12 && day >= 1 && day <= daysInMonth(year, month);
    if (!isDate || !Number.isInteger(year * month * day) || !(hour >= 1 && hour <= 24) || !Number.isInteger(hour)) {
      book.tally('date-impossible', 'note', {
        row: line,
        column: 'date',
        found: cells.slice(0, 4).join(' ').slice(0, 40),
      });
      continue;
    }
    const written = cells[6] ?? '';
    const value = /^[-+]?\d{1,3}(\.\d+)?$/.test(written) ? Number(written) : Number.NaN;
    if (Number.isNaN(value))
      book.tally('number-unreadable', 'note', {
        row: line,
        column: 'dry bulb',
        found: written.slice(0, 40),
        expected: 'degrees',
      });
    hours.start.push((civilDay(year, month, day) * 24 + hour - 1) * 60 - minutesEast);
    hours.values.push(value === MISSING_C ? Number.NaN : value);
    hours.lines.push(line);
    hours.years.add(year);
    if (hours.rows.length < PREVIEW_ROWS)
      hours.rows.push({ line, cells: [...cells.slice(0, 4), written].map((c) => c.slice(0, 80)) });
  }
  return hours;
}

/** One year, or years that follow each other row by row, is a record; months picked from several years are not. */
function isMixed(years: readonly number[], hours: Hours): boolean {
  if (years.length < 2) return false;
  let jumps = 0;
  for (let i = 1; i < hours.start.length; i++) {
    const step = hours.start[i]! - hours.start[i - 1]!;
    if (step < 0 || step > 31 * 1440) jumps++;
  }
  return jumps > 0;
}
