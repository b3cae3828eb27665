/** What is wrong with a half-hourly price series: days out of order, holes, half-hours too many or too few. */
import { addDays, daysBetween, toDayNumber } from '../calendar/civil.ts';
import { minutesInDay } from '../calendar/zone.ts';
import type { PriceSeries } from '../shapes/tariff.ts';
import { DAYS_A_YEAR, daysReached, findSeriesGap } from './series-prices.ts';

export interface SeriesFault {
  readonly code: 'series-order' | 'series-hole' | 'series-day-length' | 'series-gap' | 'series-part-year';
  readonly weight: 'refusal' | 'question';
  readonly data: { readonly [name: string]: string | number };
}

/** Faults of a series; one that is not read on from, such as days out of order, hides those that would follow from it. */
export function findSeriesFaults(series: PriceSeries): SeriesFault[] {
  const { days, zone } = series;
  for (let i = 1; i < days.length; i++) {
    const step = daysBetween(days[i - 1]!.date, days[i]!.date);
    const data = { date: days[i]!.date, previous: days[i - 1]!.date };
    if (step < 1) return [{ code: 'series-order', weight: 'refusal', data }];
    if (step > 1) {
      const missing = { date: addDays(days[i - 1]!.date, 1), time: '00:00', days: step - 1 };
      return [{ code: 'series-hole', weight: 'refusal', data: missing }];
    }
  }
  const gap = findSeriesGap(series);
  if (gap) return [{ code: 'series-gap', weight: 'refusal', data: { ...gap } }];
  const long = days.find(({ date, pencePerKWh }) => pencePerKWh.length > minutesInDay(zone, toDayNumber(date)) / 30);
  if (long) {
    const expected = minutesInDay(zone, toDayNumber(long.date)) / 30;
    const data = { date: long.date, found: long.pencePerKWh.length, expected };
    return [{ code: 'series-day-length', weight: 'refusal', data }];
  }
  const reached = daysReached(series);
  if (reached >= DAYS_A_YEAR) return [];
  return [{ code: 'series-part-year', weight: 'question', data: { days: reached, without: DAYS_A_YEAR - reached } }];
}
