/**
 * Interval data in rows of several types, as the electricity market operator of Australia describes them in its open
 * "Meter Data File Format" (NEM12): a row 200 opens a stream, each row 300 is a day of it, rows 400 mark parts of that day,
 * 500 and 900 say nothing of use; `accumulated.ts` reads its rows 250. Stamps are market time, ten hours east of UTC all year. Fields and letters from memory.
 */
import { type ZoneTable, zoneTable } from '../clock/zone-table.ts';
import { readStamp } from '../dates/read-stamp.ts';
import { createStampReader, READ } from '../dates/stamp-reader.ts';
import { type FormInput, type FormReading, firstLetters, type IntakeForm, nothingOfForm } from '../importer/form.ts';
import { readNumber } from '../numbers/read-number.ts';
import { remarkFrozen, remarkGaps } from '../readings/find-gaps.ts';
import { placeReadings } from '../readings/place-readings.ts';
import { remarkPlaced } from '../readings/remark-placed.ts';
import { screenEnergy } from '../readings/screen-values.ts';
import { firstDays, intervalDays, summariseReadings } from '../readings/summarise.ts';
import { ROWS_A_STEP } from '../terms/progress.ts';
import { listNames } from '../terms/remark-book.ts';
import { decodeText } from '../text/decode.ts';
import { ESTIMATED, KWH, readAccumulated } from './accumulated.ts';

const NAME = 'rows by type';
const MARKET_MINUTES_EAST = 600;
const PREVIEW_ROWS = 12;

export const recordRows: IntakeForm = {
  name: NAME,
  reason: 'begins with the row types of an open market format',
  matches: (bytes) => /^"?(100"?,"?NEM1[23]|200"?,"?[A-Z0-9]{10}"?,)/i.test(firstLetters(bytes, 60)),
  read: readRecordRows,
};

/** One register of one meter. */
interface Stream {
  readonly site: string;
  readonly name: string;
  /** E is drawn from the network, B sent into it. */
  readonly letter: string;
  readonly unit: string;
  readonly minutes: number;
  readonly byStart: Map<number, Value>;
}
interface Value {
  kWh: number;
  estimated: boolean;
  readonly line: number;
}

const KW: Readonly<Record<string, number>> = { W: 0.001, KW: 1, MW: 1000 };

function readRecordRows(input: FormInput): FormReading {
  const { bytes, choices, context, book } = input;
  const decoded = decodeText(bytes);
  if ('fault' in decoded) {
    book.add(decoded.fault === 'empty' ? 'file-empty' : 'file-binary', 'refusal');
    return nothingOfForm(choices);
  }
  const lines = decoded.text.split(/\r\n|\r|\n/);
  if (/^"?100"?,"?NEM13/i.test(lines[0]!)) {
    const read = readAccumulated(lines, input);
    if (!read) book.add('no-readable-rows', 'refusal');
    return { ...nothingOfForm(choices), ...read, choices: { shape: NAME, unit: 'kWh' }, ...previewOf(lines) };
  }
  const { streams, dataRows } = readStreams(lines, book, context.onProgress);
  const kept = streams.filter(({ name, letter, unit }) => {
    const isEnergy = (letter === 'E' || letter === 'B') && (unit in KWH || unit in KW);
    if (!isEnergy) book.tally('espi-left-out', 'note', { column: name, found: `${unit} (${letter})` });
    return isEnergy;
  });
  const records = (['E', 'B'] as const).flatMap((letter) => {
    const own = kept.filter((stream) => stream.letter === letter && stream.byStart.size > 0);
    // Two sites are two supplies, each a record of its own.
    return [...Map.groupBy(own, ({ site }) => site).values()].map((streams) => ({
      letter,
      name: streams.map(({ name }) => name).join(' + '),
      ...addStreams(streams),
    }));
  });
  if (records.length === 0) {
    book.add('no-readable-rows', 'refusal');
    return { ...nothingOfForm(choices), dataRows };
  }
  if (choices.clock === undefined && !context.zone.startsWith('Australia/'))
    book.add('zone-asked', 'question', { found: context.zone, expected: 'Australia/Sydney' });
  const built = records.map((record, i) => buildStream(`series-${i + 1}`, record, context, book));
  if (built.length > 1)
    book.add('several-series', 'note', {
      count: built.length,
      found: listNames(built.map((b) => b.series.name)),
    });
  return {
    choices: { shape: NAME, unit: 'kWh', clock: choices.clock ?? 'standard' },
    series: built.map((b) => b.series),
    intervals: built.map((b) => b.intervals),
    firstDays: built[0]!.firstDays,
    dataRows,
    ...previewOf(lines),
  };
}

const previewOf = (lines: readonly string[]) => ({
  columns: ['row type', 'day or meter', 'values'],
  rows: lines.slice(0, PREVIEW_ROWS).map((line, i) => {
    const [kind = '', day = '', ...rest] = line.split(',');
    return { line: i + 1, cells: [kind, day, rest.slice(0, 6).join(' ').slice(0, 80)] };
  }),
});

function readStreams(
  lines: readonly string[],
  book: FormInput['book'],
  onProgress?: (share: number) => void,
): { streams: Stream[]; dataRows: number } {
  const streams: Stream[] = [];
  const reader = createStampReader();
  let stream: Stream | undefined;
  let midnight = Number.NaN;
  let dataRows = 0;
  for (const [i, text] of lines.entries()) {
    if (i % ROWS_A_STEP === 0) onProgress?.(i / lines.length);
    const cells = text.split(',').map((cell) => cell.replaceAll('"', '').trim());
    const line = i + 1;
    if (cells[0] === '200') stream = openStream(cells, streams);
    else if (cells[0] === '300' && stream) {
      dataRows++;
      const day = cells[1] ?? '';
      midnight =
        readStamp(day, 0, day.length, true, reader) === READ ? reader.civilMinute - MARKET_MINUTES_EAST : Number.NaN;
      const count = 1440 / stream.minutes;
      if (Number.isNaN(midnight) || cells.length < count + 2)
        book.tally('date-unreadable', 'note', { row: line, column: 'row 300', found: day.slice(0, 40) });
      else takeDay(stream, cells.slice(2, count + 2), cells[count + 2] ?? '', midnight, line);
    } else if (cells[0] === '400' && stream) markPart(stream, cells, midnight);
  }
  return { streams, dataRows };
}

/** The same register of the same site may be opened again further down. */
function openStream(cells: readonly string[], streams: Stream[]): Stream | undefined {
  const [, site = '', , , suffix = '', , serial = '', unit = '', length = ''] = cells;
  const minutes = Number(length);
  if (!(minutes >= 5 && 1440 % minutes === 0)) return undefined;
  const name = `${site} ${suffix}`.trim().slice(0, 80);
  const known = streams.find((one) => one.name === name && one.minutes === minutes && one.unit === unit.toUpperCase());
  if (known) return known;
  const opened = {
    site,
    name: name || serial,
    letter: suffix.charAt(0).toUpperCase(),
    unit: unit.toUpperCase(),
    minutes,
    byStart: new Map(),
  };
  streams.push(opened);
  return opened;
}

function takeDay(stream: Stream, values: readonly string[], quality: string, midnight: number, line: number): void {
  if (/^N/i.test(quality)) return;
  const factor = KWH[stream.unit] ?? (KW[stream.unit] ?? Number.NaN) * (stream.minutes / 60);
  for (const [i, cell] of values.entries()) {
    const kWh = readNumber(cell, 0, cell.length, '.') * factor;
    stream.byStart.set(midnight + i * stream.minutes, { kWh, estimated: ESTIMATED.test(quality), line });
  }
}

/** Parts of the day before, by the numbers of their first and last interval. */
function markPart(stream: Stream, [, from, to, quality = '']: readonly string[], midnight: number): void {
  for (let i = Number(from); i <= Number(to); i++) {
    const value = stream.byStart.get(midnight + (i - 1) * stream.minutes);
    if (!value) continue;
    if (/^N/i.test(quality)) value.kWh = Number.NaN;
    value.estimated = ESTIMATED.test(quality);
  }
}

interface Added {
  readonly minutes: number;
  readonly starts: readonly number[];
  readonly values: readonly Value[];
}

/** Registers of one direction are one use: added where each that reaches so far has a reading. */
function addStreams(streams: readonly Stream[]): Added {
  const minutes = Math.max(...streams.map((one) => one.minutes));
  const even = streams.map((one) => coarsened(one, minutes));
  const spans = even.map((byStart) => [Math.min(...bounds(byStart)), Math.max(...bounds(byStart))] as const);
  const starts = [...new Set(even.flatMap((byStart) => [...byStart.keys()]))].sort((a, b) => a - b);
  const values = starts.map((start): Value => {
    const reaching = even.filter((_, i) => start >= spans[i]![0] && start <= spans[i]![1]);
    const own = reaching.map((byStart) => byStart.get(start));
    const first = own.find((one) => one !== undefined);
    return {
      kWh: own.reduce((sum, one) => sum + (one?.kWh ?? Number.NaN), 0),
      estimated: own.some((one) => one?.estimated === true),
      line: first?.line ?? 1,
    };
  });
  return { minutes, starts, values };
}

function bounds(byStart: ReadonlyMap<number, Value>): [number, number] {
  let [first, last] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const start of byStart.keys()) {
    first = Math.min(first, start);
    last = Math.max(last, start);
  }
  return [first, last];
}

/** Five-minute readings beside half-hours are summed to those. */
function coarsened({ byStart, minutes }: Stream, to: number): Map<number, Value> {
  if (minutes === to) return byStart;
  const sums = new Map<number, Value>();
  for (const [start, value] of byStart) {
    const slot = Math.floor(start / to) * to;
    const known = sums.get(slot);
    if (known) {
      known.kWh += value.kWh;
      known.estimated ||= value.estimated;
    } else sums.set(slot, { ...value });
  }
  return sums;
}

function buildStream(
  id: string,
  { letter, name, minutes, starts, values }: Added & { readonly letter: 'E' | 'B'; readonly name: string },
  context: FormInput['context'],
  book: FormInput['book'],
) {
  const kWh = Float64Array.from(values, (one) => one.kWh);
  const lineOf = (i: number) => values[i]!.line;
  screenEnergy({ values: kWh, count: kWh.length, hours: minutes / 60, lineOf, column: name }, 'electricity', book);
  const zone: ZoneTable = zoneTable(context.zone, Math.floor(starts[0]! / 1440), Math.floor(starts.at(-1)! / 1440));
  const lines = values.map((one) => one.line);
  const placed = placeReadings(Float64Array.from(starts), kWh, kWh.length, minutes, zone, lines)!;
  remarkPlaced(placed, context.zone, true, book);
  const estimated = values.filter((one, i) => one.estimated && !Number.isNaN(kWh[i]!));
  const estimatedCount = Math.min(placed.present, estimated.length);
  if (estimatedCount > 0)
    book.add('estimated', 'note', {
      count: estimatedCount,
      effectKWh: estimated.reduce((sum, one) => sum + one.kWh, 0),
    });
  const role = letter === 'E' ? ('import' as const) : ('export' as const);
  const series = summariseReadings({ id, name, carrier: 'electricity', role, estimatedCount }, placed);
  const likelyKWh = series.total / Math.max(1, placed.present);
  remarkGaps(placed, zone, context.zone, likelyKWh, book);
  remarkFrozen(placed, zone, context.zone, role === 'import', book, likelyKWh);
  return { series, intervals: intervalDays(id, placed), firstDays: firstDays(placed, zone) };
}
