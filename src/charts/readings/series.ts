/** Readings of a file as a line over local time; what is missing stays a gap. */
import { toCivilDate } from '../../model/calendar/civil.ts';
import { type Carrier, isTemperature } from '../../model/shapes/evidence.ts';

export interface Reading {
  /** Minutes of the local clock. */
  readonly minute: number;
  readonly value: number | null;
}

export interface ReadingsSeries {
  readonly carrier: Carrier;
  readonly unit: 'kWh' | '°C';
  readonly readings: readonly Reading[];
  readonly missing: number;
  /** Local stamps of the first and last reading, "2025-01-01T00:00". */
  readonly first: string;
  readonly last: string;
}

/** Local clock time as minutes, read as if it were UTC: the axis shows clock time, not instants. */
function minuteOfStamp(at: string): number {
  return Date.parse(`${at.length === 10 ? `${at}T00:00` : at.slice(0, 16)}Z`) / 60_000;
}

export function readingsSeries(
  points: readonly { readonly at: string; readonly value: number | null }[],
  carrier: Carrier,
): ReadingsSeries {
  const readings = points.map(({ at, value }) => ({
    minute: minuteOfStamp(at),
    value: value !== null && Number.isFinite(value) ? value : null,
  }));
  return {
    carrier,
    unit: isTemperature(carrier) ? '°C' : 'kWh',
    readings,
    missing: readings.filter((reading) => reading.value === null).length,
    first: points[0]?.at ?? '',
    last: points.at(-1)?.at ?? '',
  };
}

const MINUTES_PER_DAY = 1440;

/** From about a season on people look for months. */
const DAYS_BY_MONTH = 90;

/** Midnights for the axis: every day or first of a month, or every so many of them that at most `most` are named. */
export function dayTicks(readings: readonly Reading[], most = 8): number[] {
  const first = readings[0]?.minute;
  const last = readings.at(-1)?.minute;
  if (first === undefined || last === undefined) return [];
  const from = Math.ceil(first / MINUTES_PER_DAY);
  const to = Math.floor(last / MINUTES_PER_DAY);
  const days = Array.from({ length: Math.max(0, to - from + 1) }, (_, i) => from + i);
  const named = days.length < DAYS_BY_MONTH ? days : days.filter((day) => toCivilDate(day).endsWith('-01'));
  const every = Math.max(1, Math.ceil(named.length / most));
  return named.filter((_, i) => i % every === 0).map((day) => day * MINUTES_PER_DAY);
}
