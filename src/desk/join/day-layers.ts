/** Readings of several imports laid over each other, the one that counts on top, one layer for each length of reading. */
import type { IntervalDays } from '../../intake/intake.ts';
import { toDayNumber } from '../../model/calendar/civil.ts';
import type { Series } from '../../model/shapes/evidence.ts';
import type { Member } from './group-series.ts';

export type ReadIntervals = (seriesId: string) => IntervalDays | undefined;

export interface LayerDay {
  /** In order of time, NaN where missing. */
  readonly values: Float64Array;
  /** Readings filled by rule rather than read; they give way to any reading. */
  readonly filled: Uint8Array;
  rank: number;
}
/** By day number. */
export type Layer = Map<number, LayerDay>;

export const DAY_MINUTES = 1440;

/** Layers by minutes of one reading; a day that is one reading has 1440. */
export function layersOf(members: readonly Member[], read: ReadIntervals): Map<number, Layer> {
  const layers = new Map<number, Layer>();
  for (const [rank, { series }] of members.entries()) {
    const { minutes, days } = daysOf(series, read);
    const layer: Layer = layers.get(minutes) ?? new Map<number, LayerDay>();
    layers.set(minutes, layer);
    const filled = filledSlots(series);
    for (const { day, values } of days) layDay(layer, day, values, filled.get(day) ?? [], rank);
  }
  return layers;
}

interface PlainDay {
  readonly day: number;
  readonly values: ArrayLike<number>;
}

function daysOf(series: Series, read: ReadIntervals): { minutes: number; days: PlainDay[] } {
  const intervals = series.resolution === 'interval' ? read(series.id) : undefined;
  if (intervals) {
    const days = intervals.days.map(({ date, values }) => ({ day: toDayNumber(date), values }));
    return { minutes: intervals.intervalMinutes, days };
  }
  if (!series.days) return { minutes: DAY_MINUTES, days: [] };
  const first = toDayNumber(series.days.first);
  const days = series.days.values.flatMap((value, i) => (value === null ? [] : [{ day: first + i, values: [value] }]));
  return { minutes: DAY_MINUTES, days };
}

type Slots = readonly { readonly firstSlot: number; readonly slots: number }[];

function filledSlots({ filled }: Series): Map<number, Slots> {
  const byDay = new Map<number, { firstSlot: number; slots: number }[]>();
  for (const { date, firstSlot, slots } of filled ?? []) {
    const day = toDayNumber(date);
    byDay.set(day, [...(byDay.get(day) ?? []), { firstSlot, slots }]);
  }
  return byDay;
}

/** A day of another length (the household's zone was changed) replaces the older one whole. */
function layDay(layer: Layer, day: number, values: ArrayLike<number>, filledRuns: Slots, rank: number): void {
  const filled = new Uint8Array(values.length);
  for (const { firstSlot, slots } of filledRuns) filled.fill(1, firstSlot, firstSlot + slots);
  const below = layer.get(day);
  if (below?.values.length !== values.length) {
    layer.set(day, { values: Float64Array.from(values), filled, rank });
    return;
  }
  for (let slot = 0; slot < values.length; slot++) {
    const value = values[slot]!;
    const standsAlready = !Number.isNaN(below.values[slot]!) && below.filled[slot] === 0;
    if (Number.isNaN(value) || (filled[slot] === 1 && standsAlready)) continue;
    below.values[slot] = value;
    below.filled[slot] = filled[slot]!;
  }
  below.rank = rank;
}
