/** What a bill charges for: units in total, units by band, or half-hourly readings, cut to the versions of a tariff. */
import { addDays, daysBetween, monthOf, toDayNumber, weekdayIndex } from '../calendar/civil.ts';
import { localStamp, minutesInDay, startOfDay } from '../calendar/zone.ts';
import { bandAt, minuteOf } from './band-times.ts';
import { versionOn } from './price.ts';
import type { CivilDate, Tariff, TariffVersion } from './tariff.ts';

/** Half-hours of consecutive local days from `first` on [kWh]: 48 a day, 46 and 50 where the clock changes; NaN where missing. */
export interface DayReadings {
  readonly first: CivilDate;
  readonly days: readonly Float64Array[];
}

export type BillUse =
  | { readonly kind: 'total'; readonly kWh: number }
  | { readonly kind: 'by-band'; readonly kWhByBand: { readonly [name: string]: number } }
  | { readonly kind: 'half-hours'; readonly readings: DayReadings };

/** The days of a bill that one version prices; `to` exclusive. */
export interface BillSpan {
  readonly version: TariffVersion;
  readonly from: CivilDate;
  readonly to: CivilDate;
  readonly days: number;
}

/** Cuts the days from `from` to `to` (exclusive) where a new version of the tariff begins. */
export function cutByVersion(tariff: Tariff, from: CivilDate, to: CivilDate): BillSpan[] {
  const begins = tariff.versions.map((version) => version.from).filter((date) => date > from && date < to);
  const cuts = [from, ...[...new Set(begins)].sort(), to];
  return cuts.slice(1).map((end, i) => {
    const start = cuts[i]!;
    return { version: versionOn(tariff, start), from: start, to: end, days: daysBetween(start, end) };
  });
}

export interface SpanUse {
  /** kWh in the order of the version's bands. */
  readonly kWh: readonly number[];
  /** Half-hours without a reading. */
  readonly missingSlots: number;
}

/** Sorts half-hourly readings of a span into the bands of its version by local clock time. */
export function sumReadings(readings: DayReadings, span: BillSpan, zone: string): SpanUse {
  const kWh = span.version.bands.map(() => 0);
  let missingSlots = 0;
  for (let date = span.from; date < span.to; date = addDays(date, 1)) {
    const dayNumber = toDayNumber(date);
    const expected = minutesInDay(zone, dayNumber) / 30;
    const values = readings.days[daysBetween(readings.first, date)];
    if (values && values.length !== expected) {
      throw new RangeError(`${date} has ${expected} half-hours in ${zone}, not ${values.length}`);
    }
    for (let slot = 0; slot < expected; slot++) {
      const value = values?.[slot] ?? Number.NaN;
      if (Number.isNaN(value)) {
        missingSlots++;
        continue;
      }
      const band = bandAt(span.version, monthOf(date), weekdayIndex(dayNumber), clockMinute(zone, dayNumber, slot));
      if (band < 0) throw new RangeError(`no price for half-hour ${slot} of ${date}`);
      kWh[band] = kWh[band]! + value;
    }
  }
  return { kWh, missingSlots };
}

function clockMinute(zone: string, dayNumber: number, slot: number): number {
  if (minutesInDay(zone, dayNumber) === 1440) return slot * 30;
  return minuteOf(localStamp(zone, startOfDay(zone, dayNumber) + slot * 1_800_000).slice(11));
}
