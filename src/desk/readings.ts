/** Readings of one series for a picture, whatever they are kept as. */
import type { IntervalDays } from '../intake/intake.ts';
import { addDays, toCivilDate, toDayNumber } from '../model/calendar/civil.ts';
import { localStamp, startOfDay } from '../model/calendar/zone.ts';
import { isTemperature, type Series } from '../model/shapes/evidence.ts';
import type { JoinedDay } from './join/join-readings.ts';

/** A reading as a picture takes it: local stamp or day, and its value. */
export interface Point {
  readonly at: string;
  readonly value: number | null;
}

export function pointsOfIntervals({ intervalMinutes, days }: IntervalDays, zone: string): Point[] {
  return days.flatMap(({ date, values }) => {
    const start = startOfDay(zone, toDayNumber(date));
    return Array.from(values, (value, i) => ({
      at: localStamp(zone, start + i * intervalMinutes * 60_000),
      value: Number.isNaN(value) ? null : value,
    }));
  });
}

/** Days joined over several imports, each with its own length of reading. */
export function pointsOfJoined(days: readonly JoinedDay[], zone: string): Point[] {
  return days.flatMap(({ day, minutes, values }) =>
    pointsOfIntervals({ seriesId: '', intervalMinutes: minutes, days: [{ date: toCivilDate(day), values }] }, zone),
  );
}

/** Days of a series that has no finer readings; bills are spread evenly over their days. */
export function pointsOfDays(series: Series, from: string, to: string): Point[] {
  const points: Point[] = [];
  const { days, periods } = series;
  if (days) {
    days.values.forEach((value, i) => {
      points.push({ at: addDays(days.first, i), value });
    });
  } else {
    for (const period of periods ?? []) {
      const length = toDayNumber(period.to) - toDayNumber(period.from);
      const value = isTemperature(series.carrier) ? period.kWh : period.kWh / length;
      for (let i = 0; i < length; i++) points.push({ at: addDays(period.from, i), value });
    }
  }
  return points.filter(({ at }) => at >= from && at < to).map(({ at, value }) => ({ at: `${at}T00:00`, value }));
}
