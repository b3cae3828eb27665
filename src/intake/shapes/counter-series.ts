/** One counter of a file as a series: of intervals, days or periods, by how far its readings are apart. */

import { toCivilDate } from '../../model/calendar/civil.ts';
import type { Series } from '../../model/shapes/evidence.ts';
import { tell } from '../../model/shapes/told.ts';
import { toInstants } from '../clock/to-instants.ts';
import { zoneTable } from '../clock/zone-table.ts';
import { commonestStep, isIntervalLength } from '../dates/interval.ts';
import type { ShapeInput } from '../importer/shape.ts';
import type { ColumnFacts } from '../layout/column-facts.ts';
import { plainWords } from '../layout/headings.ts';
import { readQuality } from '../layout/quality-marks.ts';
import type { Dates } from '../layout/read-dates.ts';
import type { Quantity } from '../layout/settle-unit.ts';
import type { Sheet } from '../layout/sheet.ts';
import { steadyClockOf } from '../layout/titles.ts';
import { columnName, readAmounts } from '../layout/value-cells.ts';
import { type RegisterStep, registerSteps } from '../periods/register-steps.ts';
import { unreadDays } from '../periods/unread-days.ts';
import { buildIntervalSeries, placeClock, type RawReadings } from '../readings/build-interval-series.ts';
import { beginsEachYear } from '../readings/day-counter.ts';
import { refuseDoubled } from '../readings/screen-values.ts';
import type { IntakeChoices } from '../terms/choices.ts';
import type { IntervalDays } from '../terms/preview.ts';
import { stageOf } from '../terms/progress.ts';
import type { RemarkBook } from '../terms/remark-book.ts';
import { cellText } from '../text/table.ts';
import { overDays, readByDays } from './counter-days.ts';

export interface CounterInput {
  readonly facts: ColumnFacts;
  readonly id: string;
  readonly dates: Dates;
  /** Indices of the rows in order of time. */
  readonly inOrder: readonly number[];
  readonly decimal: '.' | ',';
  readonly quality: number | undefined;
}

export interface CounterSeries {
  readonly series: Series;
  readonly intervals?: IntervalDays;
  readonly firstDays: readonly { readonly at: string; readonly value: number | null }[];
  readonly quantity: Quantity;
  /** What it rose by over days of which it tells nothing by themselves. */
  readonly unread?: Series;
  readonly clock?: NonNullable<IntakeChoices['clock']>;
}

/** What people write beside a reading when a meter was changed. */
const NEW_METER =
  /(new|smart|other|different) (\w+ )?meter|meter (was )?(changed?|exchanged?|replaced|swapped|fitted|installed|removed)|old meter|replac|exchang|(neue[rn]?|alte[rn]?) zahler|zahlerwechsel|nouveau compteur/;

export function readCounter(counter: CounterInput, input: ShapeInput): CounterSeries | undefined {
  const { sheet, choices, context, book } = input;
  const { facts, dates, inOrder, decimal } = counter;
  const readings = readAmounts(
    sheet,
    facts,
    dates.rows,
    dates.count,
    decimal,
    tell('counter-reading'),
    book,
    stageOf(context.onProgress, 0.5, 0.6),
  );
  const lineOf = (i: number) => sheet.table.lineOfRow[dates.rows[i]!]!;
  const dayOf = (i: number) => toCivilDate(Math.floor(dates.civilMinute[i]! / 1440));
  const timeOf = (i: number) => dates.civilMinute[i]!;
  const { quality } = counter;
  const isEstimated = (i: number) =>
    quality !== undefined && readQuality(sheet, quality, dates.rows[i]!) === 'estimated';
  const notes = sheet.columns.filter((c) => c.words > 0 && c.numbers === 0);
  const tellsOfExchange = (i: number) =>
    notes.some((c) => NEW_METER.test(plainWords(cellText(sheet.table, dates.rows[i]!, c.index))));
  const read = inOrder.filter((i) => !Number.isNaN(readings[i]!));
  // Two counters under one heading, the higher of them read first or last.
  const ofTwo = read.filter((i, at) => {
    const [before, next] = [read[at - 1] ?? i, read[at + 1]];
    const falls = readings[i]! < readings[before]! || next === undefined || readings[next]! < readings[i]!;
    return before !== i && timeOf(before) === timeOf(i) && readings[before]! !== readings[i]! && falls;
  });
  const name = columnName(sheet, facts.index);
  if (ofTwo[0] !== undefined) refuseDoubled(ofTwo.length, new Set(read.map(timeOf)).size, lineOf(ofTwo[0]), name, book);
  // What is read in the evening closes that day.
  const dayRead = (i: number) => Math.ceil(dates.civilMinute[i]! / 1440 - 0.5);
  const yearly = beginsEachYear(read, readings, dayRead, plainWords(facts.heading));
  if (yearly) book.add('counts-from-year', 'note', { column: name });
  const beginsAnew = (i: number) => yearly?.beganAt.has(i) === true;
  const places = {
    ...{ lineOf, dayOf, timeOf, isEstimated, tellsOfExchange, beginsAnew },
    onStep: () => context.onProgress?.(0.65),
  };
  const steps = registerSteps(inOrder, readings, places, book);
  context.onProgress?.(0.7);
  const stepMinutes = commonestStep(dates.civilMinute, dates.count);
  const uneven = dates.kind === 'time' ? stepsByTheHour(sheet, dates, steps, stepMinutes) : undefined;
  if (uneven) book.add('counter-uneven', 'note', { column: name });
  if (uneven || (dates.kind === 'time' && isIntervalLength(stepMinutes))) {
    const raw = uneven ?? stepsAsReadings(sheet, dates, steps, stepMinutes!, context.zone, name, book);
    const told =
      uneven && !dates.offsets && choices.clock === undefined ? clockOfStamps(dates, inOrder, context.zone) : undefined;
    if (told === 'unknown') book.add('clock-assumed', 'question', { expected: 'local' });
    const ofClock = told === undefined || told === 'steady' ? choices : { ...choices, clock: 'local' as const };
    const clock = placeClock(raw.raw, raw.values, ofClock, context, book);
    const read = { column: facts, values: raw.values, estimated: null, leastStep: leastStepOf(raw.values) };
    const rest = { ...context, onProgress: stageOf(context.onProgress, 0.8, 1) };
    rest.onProgress(0);
    const built = buildIntervalSeries(counter.id, raw.raw, read, clock, choices, rest, book);
    if (built) {
      const stamps = { ...raw.raw, civil: dates.civilMinute, values: readings, offsets: dates.offsets };
      const { start } = toInstants({ ...stamps, count: dates.count }, clock.settled, clock.zone);
      return withEnds({
        ...built,
        ...(clock.settled.clock === undefined ? {} : { clock: clock.settled.clock }),
        ...unread(
          built,
          (i) => start[i]!,
          (day) => clock.zone.dayStart(day),
          raw.raw.intervalMinutes,
        ),
      });
    }
  }
  const dayAt = (i: number) => dayRead(i) + (yearly?.closesDay && dates.kind === 'day' ? 1 : 0);
  const spans = overDays(steps, dayAt, [readings, yearly, read[0]]);
  const byDays = readByDays(counter, spans, stepMinutes, lineOf, input);
  return withEnds(byDays && { ...byDays, ...unread(byDays, dayAt, (day) => day, 0) });

  function unread(
    { series, quantity }: Pick<CounterSeries, 'series' | 'quantity'>,
    at: (index: number) => number,
    dayStart: (day: number) => number,
    tolerance: number,
  ): Pick<CounterSeries, 'unread'> {
    const times = { steps, at, dayStart, tolerance, lineOf };
    const own = unreadDays(series, quantity, times, name, book);
    return own ? { unread: own } : {};
  }

  function withEnds(made: CounterSeries | undefined): CounterSeries | undefined {
    const isRead = (i: number) => !Number.isNaN(readings[i]!);
    const [first, last] = [inOrder.find(isRead), inOrder.findLast(isRead)];
    if (!made || first === undefined || last === undefined) return made;
    const { unit } = made.quantity;
    return { ...made, series: { ...made.series, counter: { first: readings[first]!, last: readings[last]!, unit } } };
  }
}

/** So often a counter goes on by its last digit. A judgement. */
const LEAST_STEPS = 3;

/** The step in which a counter goes on, as written; 0 where its least step stands there once or twice only. */
function leastStepOf(steps: Float64Array): number {
  let [least, often] = [Number.POSITIVE_INFINITY, 0];
  for (const step of steps) {
    if (!(step > 0)) continue;
    if (step < least * 0.999) [least, often] = [step, 1];
    else if (step < least * 1.001) often++;
  }
  return often >= LEAST_STEPS ? least : 0;
}

/** Readings of so few equal steps are uneven; a longer pause than so many minutes is none to be shared out. A judgement. */
const EVEN_SHARE = 0.6;
const LONGEST_PAUSE = 360;
const MOST_MINUTES = 90;

/** Stamps in the hours beside a change of the clocks that make an empty hour between them telling. A judgement. */
const TELLING_STAMPS = 2;

/**
 * Hours that were shared out are there in spring too, so the stamps themselves tell whether they follow the local clock:
 * whether they leave out the hour that spring skips, and step back where autumn doubles one. Undefined without a change.
 */
function clockOfStamps(
  { civilMinute }: Dates,
  inOrder: readonly number[],
  zoneName: string,
): 'local' | 'steady' | 'unknown' | undefined {
  const civil = inOrder.map((i) => civilMinute[i]!);
  const [first, last] = [civil[0]!, civil.at(-1)!];
  const zone = zoneTable(zoneName, Math.floor(first / 1440), Math.floor(last / 1440));
  const between = (low: number, high: number) => civil.filter((minute) => minute >= low && minute < high).length;
  const found = zone.changes.flatMap(({ at, before, after }) => {
    const [low, high] = [at + Math.min(before, after), at + Math.max(before, after)];
    if (low < first || high > last) return [];
    if (after < before)
      return civil.some((minute, n) => n > 0 && minute < civil[n - 1]! && minute >= low && minute < high)
        ? ['local']
        : ['steady'];
    if (between(low, high) > 0) return ['steady'];
    const isTelling = [between(low - 60, low), between(high, high + 60)].every((stamps) => stamps >= TELLING_STAMPS);
    return [isTelling ? 'local' : 'unknown'];
  });
  const told = new Set(found.filter((one) => one !== 'unknown'));
  if (found.length === 0) return undefined;
  return told.size === 1 ? ([...told][0] as 'local' | 'steady') : 'unknown';
}

/** What an unevenly read counter rose in each hour that it covers wholly; undefined for a counter that is read evenly or seldom. */
function stepsByTheHour(
  sheet: Sheet,
  dates: Dates,
  steps: readonly RegisterStep[],
  stepMinutes: number | undefined,
): { raw: RawReadings; values: Float64Array } | undefined {
  const at = (i: number) => dates.civilMinute[i]! - (dates.offsets?.[i] ?? 0);
  // A row that is written again is no reading of its own.
  const lengths = steps
    .map((s) => at(s.after) - at(s.before))
    .filter((minutes) => minutes !== 0)
    .sort((a, b) => a - b);
  const even = lengths.filter((minutes) => minutes === stepMinutes).length;
  if (lengths.length < 100 || even > lengths.length * EVEN_SHARE) return undefined;
  if (lengths[lengths.length >> 1]! > MOST_MINUTES) return undefined;
  let carried = 0;
  const hours = new Map<number, { used: number; minutes: number; row: number }>();
  for (const { before, after, used } of steps) {
    const [from, to] = [at(before), at(after)];
    // Readings of one minute count with the step after them.
    const all = used + carried;
    carried = to === from && !Number.isNaN(used) ? all : 0;
    if (Number.isNaN(all) || to <= from || to - from > LONGEST_PAUSE) continue;
    for (let hour = Math.floor(from / 60) * 60; hour < to; hour += 60) {
      const minutes = Math.min(to, hour + 60) - Math.max(from, hour);
      const known = hours.get(hour) ?? { used: 0, minutes: 0, row: dates.rows[before]! };
      known.used += (all * minutes) / (to - from);
      known.minutes += minutes;
      hours.set(hour, known);
    }
  }
  const whole = [...hours].filter(([, { minutes }]) => minutes > 59.9).sort((a, b) => a[0] - b[0]);
  const raw: RawReadings = {
    sheet,
    rows: Uint32Array.from(whole, ([, { row }]) => row),
    civil: Float64Array.from(whole, ([hour]) => hour),
    offsets: dates.offsets ? new Float64Array(whole.length) : null,
    count: whole.length,
    intervalMinutes: 60,
    stamp: 'start',
    newestFirst: false,
    fixedColumns: false,
    steadyClock: steadyClockOf(sheet, [sheet.dateColumn]),
  };
  return { raw, values: Float64Array.from(whole, ([, { used }]) => used) };
}

/** Over so many minutes at most the rise of a counter is shared out to intervals: longer ones would tell nothing of the hours. A judgement. */
const LONGEST_SHARED = 1440;

/** Use between two readings one interval apart belongs to the interval that the earlier one starts. */
function stepsAsReadings(
  sheet: Sheet,
  dates: Dates,
  steps: readonly RegisterStep[],
  intervalMinutes: number,
  zoneName: string,
  column: string,
  book: RemarkBook,
): { raw: RawReadings; values: Float64Array } {
  const civil = dates.civilMinute;
  const days = civil.slice(0, dates.count).sort();
  const zone = zoneTable(zoneName, Math.floor(days[0]! / 1440), Math.floor(days.at(-1)! / 1440));
  const offset = (minute: number): number => zone.offsetAt(minute - zone.offsetAt(minute));
  const apart = (s: RegisterStep): boolean => {
    const step = civil[s.after]! - civil[s.before]!;
    // Over a clock change the clock steps by an hour more or less than the time that went by.
    const change = offset(civil[s.after]!) - offset(civil[s.before]!);
    return (
      step === intervalMinutes || step === intervalMinutes - 60 || (change > 0 && step === intervalMinutes + change)
    );
  };
  // A counter that was not read for some hours still tells what was used in them.
  const missed = (s: RegisterStep): number => {
    const step = civil[s.after]! - civil[s.before]!;
    const isShort =
      step > intervalMinutes && step <= LONGEST_SHARED && offset(civil[s.after]!) === offset(civil[s.before]!);
    return isShort && step % intervalMinutes === 0 && !Number.isNaN(s.used) ? step / intervalMinutes : 1;
  };
  let shared = 0;
  const used: { readonly before: number; readonly used: number; readonly at: number }[] = [];
  for (const s of steps) {
    const at = civil[s.before]!;
    if (apart(s)) used.push({ before: s.before, used: s.used, at });
    else {
      const parts = missed(s);
      if (parts === 1) continue;
      shared += parts - 1;
      for (let i = 0; i < parts; i++)
        used.push({ before: s.before, used: s.used / parts, at: at + i * intervalMinutes });
    }
  }
  if (shared > 0) book.add('counter-shared', 'note', { column, count: shared });
  const raw: RawReadings = {
    sheet,
    rows: Uint32Array.from(used, (s) => dates.rows[s.before]!),
    civil: Float64Array.from(used, (s) => s.at),
    offsets: dates.offsets ? Float64Array.from(used, (s) => dates.offsets![s.before]!) : null,
    count: used.length,
    intervalMinutes,
    stamp: 'start',
    newestFirst: false,
    fixedColumns: false,
    steadyClock: steadyClockOf(sheet, [sheet.dateColumn]),
  };
  return { raw, values: Float64Array.from(used, (s) => s.used) };
}
