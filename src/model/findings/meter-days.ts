/** Readings of one meter as the detectors take them: whole days of half-hours or hours, one after the other. */

import { toDayNumber } from '../calendar/civil.ts';
import type { CivilDate } from '../shapes/dates.ts';
import type { TariffVersion } from '../shapes/tariff.ts';
import { meanOf } from '../units/sums.ts';

/** As the store hands them out: local days, values in order of time, NaN where missing. */
export interface MeterReadings {
  readonly meter: 'heat-pump' | 'whole-house';
  readonly intervalMinutes: number;
  readonly days: readonly { readonly date: CivilDate; readonly values: ArrayLike<number> }[];
}

/** Mean outdoor temperatures by day, °C. */
export interface OutdoorDays {
  readonly first: CivilDate;
  readonly values: ArrayLike<number | null>;
}

export interface MeterDays {
  readonly meter: 'heat-pump' | 'whole-house';
  /** Readings a day: 48 or 24. */
  readonly perDay: number;
  readonly hours: number;
  readonly count: number;
  readonly dayNumber: Int32Array;
  /** `count × perDay` readings, kWh. */
  readonly kWh: Float64Array;
  readonly dayKWh: Float64Array;
  /** Mean outdoor temperature of each day, NaN where unknown, °C. */
  readonly outdoorC: Float64Array;
}

export interface Prices {
  /** Mean price, p/kWh with VAT. */
  readonly pencePerKWh: number;
  /** Of the household's own tariff. */
  readonly versions?: readonly TariffVersion[];
  /** Of the home's clock, for a meter that stays on winter time. */
  readonly zone?: string;
}

/**
 * Whole days of half-hours (finer readings summed) or hours. Days with a hole and the two days a year of 23 or 25
 * hours are left out: the detectors compare days by the clock. Null for readings longer than an hour.
 */
export function meterDays(readings: MeterReadings, outdoor?: OutdoorDays): MeterDays | null {
  const { intervalMinutes, meter } = readings;
  const stepMinutes = intervalMinutes > 30 ? 60 : 30;
  if (stepMinutes % intervalMinutes !== 0) return null;
  const together = stepMinutes / intervalMinutes;
  const perDay = 1440 / stepMinutes;
  const whole = readings.days.filter(({ values }) => isWhole(values, perDay * together));
  const kWh = new Float64Array(whole.length * perDay);
  const dayKWh = new Float64Array(whole.length);
  const dayNumber = new Int32Array(whole.length);
  const outdoorC = new Float64Array(whole.length);
  whole.forEach(({ date, values }, day) => {
    dayNumber[day] = toDayNumber(date);
    for (let i = 0; i < values.length; i++) {
      kWh[day * perDay + Math.floor(i / together)]! += values[i]!;
      dayKWh[day]! += values[i]!;
    }
    outdoorC[day] = outdoor?.values[dayNumber[day]! - toDayNumber(outdoor.first)] ?? Number.NaN;
  });
  return { meter, perDay, hours: 24 / perDay, count: whole.length, dayNumber, kWh, dayKWh, outdoorC };
}

function isWhole(values: ArrayLike<number>, length: number): boolean {
  if (values.length !== length) return false;
  for (let i = 0; i < length; i++) if (!Number.isFinite(values[i])) return false;
  return true;
}

/** Outdoor temperature below which a home is heated, °C. */
const HEATING_BELOW_C = 15.5;
/** Degrees by which a day's mean [°C] lies below it, K. */
export const heatingDegrees = (outdoorC: number): number => Math.max(0, HEATING_BELOW_C - outdoorC);

/** Units [kWh] of a finding's days and of a year like them, with their cost [pence]; `dearness` is that of its hours. */
export const unitsAndCost = (kWh: number, kWhYear: number, { pencePerKWh }: Prices, dearness = 1) => ({
  kWh,
  pence: kWh * pencePerKWh * dearness,
  kWhYear,
  penceYear: kWhYear * pencePerKWh * dearness,
});

/** Days of which the outdoor temperature is known. */
export const knownWeather = ({ outdoorC }: MeterDays): number[] =>
  Array.from(outdoorC.keys()).filter((day) => Number.isFinite(outdoorC[day]));

export function median(values: readonly number[]): number {
  if (values.length === 0) return Number.NaN;
  const sorted = new Float64Array(values).sort();
  const middle = sorted.length >> 1;
  return sorted.length % 2 ? sorted[middle]! : (sorted[middle - 1]! + sorted[middle]!) / 2;
}

/** The `count` least of `length` values, ascending: a fifth of the time of sorting a day's readings. */
export function leastOf(count: number, length: number, at: (i: number) => number): Float64Array {
  const least = new Float64Array(Math.min(count, length)).fill(Number.POSITIVE_INFINITY);
  const last = least.length - 1;
  for (let i = 0; i < length; i++) {
    const value = at(i);
    if (!(value < least[last]!)) continue;
    let place = last;
    for (; place > 0 && value < least[place - 1]!; place--) least[place] = least[place - 1]!;
    least[place] = value;
  }
  return least;
}

/** How two rows hang together, −1 to 1 (Pearson). */
export function correlationOf(a: readonly number[], b: readonly number[]): number {
  const [meanA, meanB] = [meanOf(a), meanOf(b)];
  let [ab, aa, bb] = [0, 0, 0];
  a.forEach((value, i) => {
    ab += (value - meanA) * (b[i]! - meanB);
    aa += (value - meanA) ** 2;
    bb += (b[i]! - meanB) ** 2;
  });
  return aa > 0 && bb > 0 ? ab / Math.sqrt(aa * bb) : 0;
}

/** Some of the days, by their place. */
export function onlyDays(days: MeterDays, keep: (day: number) => boolean): MeterDays {
  const kept = Array.from({ length: days.count }, (_, day) => day).filter(keep);
  const { perDay } = days;
  const kWh = new Float64Array(kept.length * perDay);
  for (const [to, from] of kept.entries()) kWh.set(days.kWh.subarray(from * perDay, (from + 1) * perDay), to * perDay);
  return {
    ...days,
    count: kept.length,
    kWh,
    dayNumber: Int32Array.from(kept, (day) => days.dayNumber[day]!),
    dayKWh: Float64Array.from(kept, (day) => days.dayKWh[day]!),
    outdoorC: Float64Array.from(kept, (day) => days.outdoorC[day]!),
  };
}
