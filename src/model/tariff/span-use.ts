/** Half-hourly readings of a span of days, sorted into what its tariff version charges for. */
import { addDays, daysBetween, monthOf, toDayNumber } from '../calendar/civil.ts';
import { localStamp, minutesInDay, startOfDay } from '../calendar/zone.ts';
import { bandAt, dayKindOn, minuteOf } from './band-times.ts';
import type { BillSpan, DayReadings } from './bill-use.ts';
import { seriesPriceOn } from './series-prices.ts';

export interface DayUse {
  readonly date: string;
  /** kWh in the order of the version's bands. */
  readonly kWh: readonly number[];
}

export interface SpanUse {
  /** kWh in the order of the version's bands, without what is priced by the dated half-hour. */
  readonly kWh: readonly number[];
  /** The same day by day, where it is known. */
  readonly days?: readonly DayUse[];
  /** What is priced by the dated half-hour: kWh, and pence as the tariff states its prices. */
  readonly dated?: { readonly kWh: number; readonly pence: number };
  /** Largest half-hour of each calendar month as power [kW], "2026-01". */
  readonly peakKW?: ReadonlyMap<string, number>;
  /** Half-hours without a reading. */
  readonly missingSlots: number;
}

/** Sorts half-hourly readings of a span into the bands of its version by local clock time, or by their dated prices. */
export function sumReadings(readings: DayReadings, span: BillSpan, zone: string): SpanUse {
  const { version } = span;
  const days: DayUse[] = [];
  const dated = { kWh: 0, pence: 0 };
  const peakKW = new Map<string, number>();
  let missingSlots = 0;
  for (let date = span.from; date < span.to; date = addDays(date, 1)) {
    const dayNumber = toDayNumber(date);
    const expected = minutesInDay(zone, dayNumber) / 30;
    const values = readings.days[daysBetween(readings.first, date)];
    if (values && values.length !== expected) {
      throw new RangeError(`${date} has ${expected} half-hours in ${zone}, not ${values.length}`);
    }
    const kind = dayKindOn(version, dayNumber);
    const kWh = version.bands.map(() => 0);
    for (let slot = 0; slot < expected; slot++) {
      const value = values?.[slot] ?? Number.NaN;
      if (Number.isNaN(value)) {
        missingSlots++;
        continue;
      }
      const month = date.slice(0, 7);
      peakKW.set(month, Math.max(peakKW.get(month) ?? 0, value * 2));
      const price = version.series ? seriesPriceOn(version.series, dayNumber, slot) : Number.NaN;
      if (!Number.isNaN(price)) {
        dated.kWh += value;
        dated.pence += value * price;
        continue;
      }
      const band = bandAt(version, monthOf(date), kind, clockMinute(zone, dayNumber, slot));
      if (band < 0) throw new RangeError(`no price for half-hour ${slot} of ${date}`);
      kWh[band] = kWh[band]! + value;
    }
    days.push({ date, kWh });
  }
  const kWh = version.bands.map((_, band) => days.reduce((sum, day) => sum + day.kWh[band]!, 0));
  return { kWh, days, ...(version.series ? { dated } : {}), peakKW, missingSlots };
}

function clockMinute(zone: string, dayNumber: number, slot: number): number {
  if (minutesInDay(zone, dayNumber) === 1440) return slot * 30;
  return minuteOf(localStamp(zone, startOfDay(zone, dayNumber) + slot * 1_800_000).slice(11));
}
