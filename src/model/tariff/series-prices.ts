/** Half-hourly price series: the price of a dated half-hour, and of every half-hour of a year. */
import { minuteOf, toDayNumber } from '../calendar/civil.ts';
import { localStamp, minutesInDay, startOfDay, type YearSlots } from '../calendar/zone.ts';
import type { PriceSeries } from '../shapes/tariff.ts';

const MS_PER_HALF_HOUR = 1_800_000;
/** Fifty-two weeks: the shift that keeps the weekday and all but keeps the season. */
export const SHIFT_DAYS = 364;

/** Price [pence/kWh, as stated] of a half-hour of a local day, counted from its midnight; NaN where the series has none. */
export function seriesPriceOn(series: PriceSeries, dayNumber: number, half: number): number {
  const first = toDayNumber(series.days[0]!.date);
  return capped(series, series.days[dayNumber - first]?.pencePerKWh[half]);
}

const capped = (
  { mostPencePerKWh = Number.POSITIVE_INFINITY }: PriceSeries,
  pence: number | null | undefined,
): number => Math.min(pence ?? Number.NaN, mostPencePerKWh);

/**
 * Price of every half-hour of a year [pence/kWh, as stated]; NaN on days that the series does not reach.
 * A day outside the series takes the prices of the same weekday whole times 52 weeks away, the latest that there is.
 * Half-hours are matched by the clock; an hour that the other day's clock leaves out takes the price before it.
 */
export function seriesOverYear(series: PriceSeries, slots: YearSlots): Float64Array {
  const prices = new Float64Array(slots.count).fill(Number.NaN);
  const first = toDayNumber(series.days[0]!.date);
  const last = first + series.days.length - 1;
  const newYear = toDayNumber(`${slots.year}-01-01`);
  for (let day = 0; day + 1 < slots.dayStart.length; day++) {
    const wanted = newYear + day;
    const inside = wanted >= first && wanted <= last;
    const found = inside ? wanted : wanted + SHIFT_DAYS * Math.floor((last - wanted) / SHIFT_DAYS);
    if (found < first) continue;
    const ofDay = series.days[found - first]!.pencePerKWh;
    const start = slots.dayStart[day]!;
    const length = slots.dayStart[day + 1]! - start;
    const match = length === ofDay.length ? null : matchByClock(series.zone, found, ofDay.length);
    for (let half = 0; half < length; half++) {
      const at = match ? match[(slots.minute[start + half]! / 30) | 0]! : half;
      prices[start + half] = capped(series, ofDay[at]);
    }
  }
  return prices;
}

/** For each half-hour of the clock, which one of a day it is; the one before where the day has none. */
function matchByClock(zone: string, dayNumber: number, length: number): readonly number[] {
  const halves = Array.from({ length }, (_, half) => minuteOf(clockOf(zone, dayNumber, half)) / 30);
  return Array.from({ length: 48 }, (_, clock) =>
    Math.max(
      0,
      halves.findLastIndex((one) => one <= clock),
    ),
  );
}

/** Days of a common year. */
export const DAYS_A_YEAR = 365;

/** Days of a common year that a series reaches, 0 to 365. */
export const daysReached = (series: PriceSeries): number =>
  series.days.length >= SHIFT_DAYS ? DAYS_A_YEAR : series.days.length;

/** The first half-hour without a price, as date and clock time, and how many there are; null where none is missing. */
export function findSeriesGap(
  series: PriceSeries,
): { readonly date: string; readonly time: string; readonly count: number } | null {
  let count = 0;
  let found: { date: string; time: string } | null = null;
  series.days.forEach(({ date, pencePerKWh }) => {
    const dayNumber = toDayNumber(date);
    const expected = minutesInDay(series.zone, dayNumber) / 30;
    for (let half = 0; half < expected; half++) {
      if (typeof pencePerKWh[half] === 'number') continue;
      count += 1;
      found ??= { date, time: clockOf(series.zone, dayNumber, half) };
    }
  });
  return found === null ? null : { ...(found as { date: string; time: string }), count };
}

/** Clock reading of a half-hour counted from local midnight, "02:30". */
function clockOf(zone: string, dayNumber: number, half: number): string {
  return localStamp(zone, startOfDay(zone, dayNumber) + half * MS_PER_HALF_HOUR).slice(11);
}
