/** Placed readings as the model's series: daily totals, the mean shape of a day by month, and how much of it is there. */
import { monthOfDay, toCivilDate, weekdayIndex } from '../../model/calendar/civil.ts';
import { type Carrier, isTemperature, type SeriesRole } from '../../model/shapes/carrier.ts';
import type { Series } from '../../model/shapes/evidence.ts';
import type { ZoneTable } from '../clock/zone-table.ts';
import type { IntervalDays } from '../terms/preview.ts';
import type { Placed } from './place-readings.ts';

/** Share of a day's temperatures from which its mean is taken; energies need them all. */
const ENOUGH_FOR_A_MEAN = 0.8;

export interface SeriesTitle {
  readonly id: string;
  readonly name: string;
  readonly carrier: Carrier;
  readonly role: SeriesRole;
  readonly estimatedCount: number;
}

export function summariseReadings(title: SeriesTitle, placed: Placed): Series {
  const inDegrees = isTemperature(title.carrier);
  const firstDay = placed.days[0]!.day;
  const lastDay = placed.days.at(-1)!.day;
  const values: (number | null)[] = new Array(lastDay - firstDay + 1).fill(null);
  let sum = 0;
  for (const { day, values: slots } of placed.days) {
    let total = 0;
    let there = 0;
    for (let s = 0; s < slots.length; s++) {
      const value = slots[s]!;
      if (Number.isNaN(value)) continue;
      total += value;
      there++;
    }
    sum += total;
    if (inDegrees) {
      if (there >= slots.length * ENOUGH_FOR_A_MEAN) values[day - firstDay] = total / there;
    } else if (there === slots.length) values[day - firstDay] = total;
  }
  return {
    id: title.id,
    evidenceId: '',
    name: title.name,
    carrier: title.carrier,
    role: title.role,
    resolution: 'interval',
    intervalMinutes: placed.intervalMinutes,
    from: toCivilDate(firstDay),
    to: toCivilDate(lastDay + 1),
    total: inDegrees ? sum / Math.max(1, placed.present) : sum,
    days: { first: toCivilDate(firstDay), values },
    ...(inDegrees ? {} : { ...meanDays(placed), ...peaksOf(placed), ...strayOf(placed) }),
    present: placed.present,
    expected: placed.expected,
    estimatedCount: title.estimatedCount,
  };
}

/**
 * Mean kWh of each of 48 half-hours by month: of all days, and of weekdays and weekends apart. Days of another length than
 * 24 hours are left out, since their slots stand at other clock times. A month without readings takes the mean of the
 * months that have some.
 */
function meanDays(placed: Placed): Required<Pick<Series, 'dayShape' | 'weekShape'>> {
  const slotsADay = 1440 / placed.intervalMinutes;
  const weekday = newMeans(slotsADay);
  const weekend = newMeans(slotsADay);
  for (const { day, values } of placed.days) {
    if (values.length !== slotsADay) continue;
    const base = (monthOfDay(day) - 1) * slotsADay;
    const { sums, counts } = weekdayIndex(day) < 5 ? weekday : weekend;
    for (let s = 0; s < slotsADay; s++) {
      const value = values[s]!;
      if (Number.isNaN(value)) continue;
      sums[base + s]! += value;
      counts[base + s]! += 1;
    }
  }
  const all = {
    sums: weekday.sums.map((sum, at) => sum + weekend.sums[at]!),
    counts: weekday.counts.map((count, at) => count + weekend.counts[at]!),
  };
  return { dayShape: byMonth(all), weekShape: [byMonth(weekday), byMonth(weekend)] };
}

interface Means {
  readonly sums: Float64Array;
  readonly counts: Float64Array;
}
const newMeans = (slotsADay: number): Means => ({
  sums: new Float64Array(12 * slotsADay),
  counts: new Float64Array(12 * slotsADay),
});

function byMonth({ sums, counts }: Means): number[][] {
  const slotsADay = sums.length / 12;
  const overall = Array.from({ length: slotsADay }, (_, s) => {
    let sum = 0;
    let count = 0;
    for (let m = 0; m < 12; m++) {
      sum += sums[m * slotsADay + s]!;
      count += counts[m * slotsADay + s]!;
    }
    return count > 0 ? sum / count : 0;
  });
  return Array.from({ length: 12 }, (_, m) => {
    const means = overall.map((mean, s) => {
      const at = m * slotsADay + s;
      return counts[at]! > 0 ? sums[at]! / counts[at]! : mean;
    });
    return toHalfHours(means);
  });
}

/** Most kWh met in each of 48 half-hours by month, days of another length left out as above; none where a reading is longer. */
function peaksOf({ days, intervalMinutes }: Placed): Pick<Series, 'dayPeaks'> {
  if (30 % intervalMinutes !== 0) return {};
  const finer = 30 / intervalMinutes;
  const dayPeaks = Array.from({ length: 12 }, () => new Array<number>(48).fill(0));
  for (const { day, values } of days) {
    if (values.length !== 48 * finer) continue;
    const ofMonth = dayPeaks[monthOfDay(day) - 1]!;
    for (let half = 0; half < 48; half++) {
      let kWh = 0;
      for (let part = 0; part < finer; part++) kWh += values[half * finer + part]!;
      if (kWh > ofMonth[half]!) ofMonth[half] = kWh;
    }
  }
  return { dayPeaks };
}

/** How far days stray in each of 48 half-hours from the mean weekday or weekend day of their month, all together; days of another length left out. None where a reading is longer than a half-hour: its mean strays less. */
function strayOf({ days, intervalMinutes }: Placed): Pick<Series, 'dayStray'> {
  if (30 % intervalMinutes !== 0) return {};
  const slotsADay = 1440 / intervalMinutes;
  const kinds = new Map<number, ArrayLike<number>[]>();
  for (const { day, values } of days) {
    if (values.length !== slotsADay || lacksAny(values)) continue;
    const kind = 2 * monthOfDay(day) + (weekdayIndex(day) < 5 ? 0 : 1);
    const halves = intervalMinutes === 30 ? values : toHalfHours(values);
    const alike = kinds.get(kind);
    if (alike) alike.push(halves);
    else kinds.set(kind, [halves]);
  }
  const [squares, steady] = [new Float64Array(48), new Float64Array(48)];
  const [means, strays] = [new Float64Array(48), new Float64Array(48)];
  for (const ofKind of kinds.values()) {
    // Of a single day nobody knows how far others stray.
    if (ofKind.length < 2) continue;
    means.fill(0);
    strays.fill(0);
    for (const halves of ofKind) for (let half = 0; half < 48; half++) means[half]! += halves[half]!;
    for (let half = 0; half < 48; half++) means[half]! /= ofKind.length;
    for (const halves of ofKind)
      for (let half = 0; half < 48; half++) strays[half]! += (halves[half]! - means[half]!) ** 2;
    for (let half = 0; half < 48; half++) {
      squares[half]! += strays[half]!;
      steady[half]! += (ofKind.length - 1) * means[half]! ** 2;
    }
  }
  if (!steady.some((sum) => sum > 0)) return {};
  return { dayStray: Array.from(squares, (sum, half) => (steady[half]! > 0 ? Math.sqrt(sum / steady[half]!) : 0)) };
}

function lacksAny(values: Float64Array): boolean {
  for (let s = 0; s < values.length; s++) if (Number.isNaN(values[s]!)) return true;
  return false;
}

/** Finer readings are summed into half-hours, coarser ones shared out evenly. */
function toHalfHours(means: ArrayLike<number>): number[] {
  const shape = new Array<number>(48).fill(0);
  const pieces = means.length;
  if (pieces % 48 === 0) {
    const ofEach = pieces / 48;
    for (let p = 0, h = 0; h < 48; h++) for (let i = 0; i < ofEach; i++) shape[h]! += means[p++]!;
    return shape;
  }
  for (let h = 0; h < 48; h++) {
    const from = (h * pieces) / 48;
    const to = ((h + 1) * pieces) / 48;
    for (let p = Math.floor(from); p < to; p++) shape[h]! += means[p]! * (Math.min(to, p + 1) - Math.max(from, p));
  }
  return shape;
}

export function intervalDays(seriesId: string, placed: Placed): IntervalDays {
  return {
    seriesId,
    intervalMinutes: placed.intervalMinutes,
    days: placed.days.map(({ day, values }) => ({ date: toCivilDate(day), values })),
  };
}

/** Readings of the first seven days, for the picture in the preview. */
export function firstDays(placed: Placed, zone: ZoneTable): { at: string; value: number | null }[] {
  return placed.days.slice(0, 7).flatMap(({ day, values }) => {
    const start = zone.dayStart(day);
    return Array.from(values, (value, s) => ({
      at: zone.stampAt(start + s * placed.intervalMinutes),
      value: Number.isNaN(value) ? null : value,
    }));
  });
}
