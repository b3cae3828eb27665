/** Puts an outdoor temperature to every day of a record: the household's own, or the typical year's where there is none. */
import { toDayNumber } from '../calendar/civil.ts';
import type { Series } from '../shapes/evidence.ts';
import type { TypicalYear } from '../year/typical-year.ts';
import type { HeatRecord, RecordSpan } from './record.ts';
import type { SignatureData } from './signature-data.ts';

export interface RecordWeather {
  readonly weather: 'own' | 'typical';
  readonly period: 'day' | 'month' | 'period';
  readonly data: SignatureData;
}

/** The own file stands if it covers this share of the record, or this many days of it. */
const SHARE_ENOUGH = 0.8;
const DAYS_ENOUGH = 270;
/** A period needs a temperature on nearly all of its days; the typical year fills the few that lack one. */
const PERIOD_ENOUGH = 0.9;
/** A month of days is kept when this share of it was read. */
const MONTH_ENOUGH = 0.8;
const MS_PER_DAY = 86_400_000;

/** The household's own daily means by day number, °C. */
export function ownTemperatures(series: readonly Series[]): Map<number, number> {
  const byDay = new Map<number, number>();
  for (const one of series) {
    if (one.carrier !== 'outdoor-temperature' || !one.days) continue;
    const first = toDayNumber(one.days.first);
    one.days.values.forEach((meanC, i) => {
      if (meanC !== null && !byDay.has(first + i)) byDay.set(first + i, meanC);
    });
  }
  return byDay;
}

/** Temperature of any day in the typical year, by its place in the year. */
export function typicalOn(year: TypicalYear, dayNumber: number): number {
  const date = new Date(dayNumber * MS_PER_DAY);
  const ofYear = dayNumber - Date.UTC(date.getUTCFullYear(), 0, 1) / MS_PER_DAY;
  return year.dailyMeanC[Math.min(ofYear, year.dailyMeanC.length - 1)]!;
}

/** The record with a temperature for every day in it, ready for the signature. */
export function putWeather(record: HeatRecord, own: ReadonlyMap<number, number>, year: TypicalYear): RecordWeather {
  const covered = record.spans.filter((span) => coverage(span, own) >= (span.days === 1 ? 1 : PERIOD_ENOUGH));
  const daysOf = (spans: readonly RecordSpan[]) => spans.reduce((sum, span) => sum + span.days, 0);
  const enough = daysOf(covered) >= SHARE_ENOUGH * daysOf(record.spans) || daysOf(covered) >= DAYS_ENOUGH;
  const daily = (spans: readonly RecordSpan[]) => spans.every((span) => span.days === 1);
  if (enough) {
    const data = gather(covered, (day) => own.get(day) ?? typicalOn(year, day));
    return { weather: 'own', period: daily(covered) ? 'day' : 'period', data };
  }
  // A typical day's temperature is not that day's, but a typical month's is near that month's: so days become months.
  const months = toMonths(record.spans);
  const data = gather(months, (day) => typicalOn(year, day));
  return { weather: 'typical', period: daily(record.spans) ? 'month' : 'period', data };
}

function coverage(span: RecordSpan, own: ReadonlyMap<number, number>): number {
  let there = 0;
  for (let day = span.first; day < span.first + span.days; day++) if (own.has(day)) there++;
  return there / span.days;
}

/** Single days summed into the calendar months that hold enough of them; longer periods stay as they are. */
function toMonths(spans: readonly RecordSpan[]): RecordSpan[] {
  const months = new Map<number, { days: number; kWh: number; estimated: boolean }>();
  const longer: RecordSpan[] = [];
  for (const span of spans) {
    if (span.days > 1) {
      longer.push(span);
      continue;
    }
    const date = new Date(span.first * MS_PER_DAY);
    const key = date.getUTCFullYear() * 12 + date.getUTCMonth();
    const month = months.get(key) ?? { days: 0, kWh: 0, estimated: false };
    months.set(key, { days: month.days + 1, kWh: month.kWh + span.kWh, estimated: month.estimated || span.estimated });
  }
  for (const [key, month] of months) {
    const start = Date.UTC(Math.floor(key / 12), key % 12) / MS_PER_DAY;
    const length = Date.UTC(Math.floor(key / 12), (key % 12) + 1) / MS_PER_DAY - start;
    if (month.days < MONTH_ENOUGH * length) continue;
    longer.push({ first: start, days: length, kWh: (month.kWh * length) / month.days, estimated: month.estimated });
  }
  return longer.sort((a, b) => a.first - b.first);
}

function gather(spans: readonly RecordSpan[], temperatureOn: (day: number) => number): SignatureData {
  const total = spans.reduce((sum, span) => sum + span.days, 0);
  const data = {
    first: new Int32Array(spans.length),
    days: new Float64Array(spans.length),
    perDayKWh: new Float64Array(spans.length),
    outdoorC: new Float64Array(total),
    start: new Uint32Array(spans.length + 1),
  };
  let k = 0;
  spans.forEach((span, i) => {
    data.first[i] = span.first;
    data.days[i] = span.days;
    data.perDayKWh[i] = span.kWh / span.days;
    data.start[i] = k;
    for (let day = span.first; day < span.first + span.days; day++) data.outdoorC[k++] = temperatureOn(day);
  });
  data.start[spans.length] = k;
  return data;
}
