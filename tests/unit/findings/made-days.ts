/** Plain days for detectors: every half-hour given by a function, so that a test says exactly what is in them. */
import { toCivilDate, toDayNumber } from '../../../src/model/calendar/civil.ts';
import { findInReadings } from '../../../src/model/findings/find-in-readings.ts';
import {
  type MeterDays,
  type MeterReadings,
  meterDays,
  type OutdoorDays,
  type Prices,
} from '../../../src/model/findings/meter-days.ts';
import type { Finding, FindingCode } from '../../../src/model/shapes/finding.ts';

export const FIRST = '2025-10-01';

/** A number between −1 and 1 that hangs on its place alone. */
export const noise = (place: number): number => {
  const x = Math.sin(place * 12.9898 + 78.233) * 43_758.5453;
  return 2 * (x - Math.floor(x)) - 1;
};

/** From October on: 10 °C falling to 4 °C in the middle of January and up to 17 °C in July, each day up to 3 K off. */
export const outdoorOn = (day: number): number =>
  10.5 - 6.5 * Math.cos(((day - 106) / 365) * 2 * Math.PI) + 3 * noise(day + 0.5);

export const outdoor = (count: number): OutdoorDays => ({
  first: FIRST,
  values: Array.from({ length: count }, (_, day) => outdoorOn(day)),
});

/** Readings of `kW(day, hour)`. */
export function readingsOf(
  count: number,
  kW: (day: number, hour: number) => number,
  options: { meter?: MeterReadings['meter']; minutes?: number } = {},
): MeterReadings {
  const minutes = options.minutes ?? 30;
  const first = toDayNumber(FIRST);
  return {
    meter: options.meter ?? 'heat-pump',
    intervalMinutes: minutes,
    days: Array.from({ length: count }, (_, day) => ({
      date: toCivilDate(first + day),
      values: Float64Array.from({ length: 1440 / minutes }, (_, i) => (kW(day, (i * minutes) / 60) * minutes) / 60),
    })),
  };
}

/** The same as the detectors take them, at a temperature for each day. */
export const daysOf = (
  count: number,
  kW: (day: number, hour: number) => number,
  options: Parameters<typeof readingsOf>[2] & { outdoorC?: (day: number) => number } = {},
): MeterDays => {
  const { outdoorC } = options;
  const weather = outdoorC && { first: FIRST, values: Array.from({ length: count }, (_, day) => outdoorC(day)) };
  return meterDays(readingsOf(count, kW, options), weather)!;
};

/** Heating that follows the cold, a little unsteady, and 60 W of standby. */
export const heating = (day: number, hour: number): number =>
  0.06 + Math.max(0, 16 - outdoorOn(day)) * 0.06 * (1 + 0.1 * noise(day * 48 + hour * 2) + 0.05 * noise(day));

export function found(
  code: FindingCode,
  readings: readonly MeterReadings[],
  days: number,
  prices: Prices = { pencePerKWh: 25 },
): Finding[] {
  return findInReadings({ readings, outdoor: outdoor(days), prices }).filter((finding) => finding.code === code);
}

/** Ordinary least squares as any textbook has it: the line, its squared error and the variance of a point on it. */
export function textbook(x: readonly number[], y: readonly number[]) {
  const n = x.length;
  const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / n;
  const [mx, my] = [mean(x), mean(y)];
  const sxx = x.reduce((sum, value) => sum + (value - mx) ** 2, 0);
  const slope = sxx > 0 ? x.reduce((sum, value, i) => sum + (value - mx) * (y[i]! - my), 0) / sxx : 0;
  const at = (value: number) => my + slope * (value - mx);
  const residuals = y.map((value, i) => value - at(x[i]!));
  const sse = residuals.reduce((sum, value) => sum + value ** 2, 0);
  const varianceAt = (value: number) => (sse / (n - 2)) * (1 / n + (sxx > 0 ? (value - mx) ** 2 / sxx : 0));
  return { at, residuals, sse, varianceAt };
}
