/** One series from the readings of several imports: each reading counts once, the newest import of it wins. */

import { summariseReadings } from '../../intake/readings/summarise.ts';
import { toCivilDate, toDayNumber } from '../../model/calendar/civil.ts';
import { startOfDay } from '../../model/calendar/zone.ts';
import { isTemperature } from '../../model/shapes/carrier.ts';
import type { Series } from '../../model/shapes/evidence.ts';
import { sumOf } from '../../model/units/sums.ts';
import { DAY_MINUTES, type Layer, type LayerDay, layersOf, type ReadIntervals } from './day-layers.ts';
import type { Group } from './group-series.ts';

export interface JoinedDay {
  readonly day: number;
  readonly minutes: number;
  readonly values: Float64Array;
}

export interface JoinedReadings {
  readonly series: Series;
  readonly days: readonly JoinedDay[];
}

/** Undefined where the imports hold no reading at all. */
export function joinReadings(group: Group, zone: string, read: ReadIntervals): JoinedReadings | undefined {
  const newest = group.at(-1)!.series;
  const layers = [...layersOf(group, read)]
    .filter(([, layer]) => layer.size > 0)
    .map(([minutes, layer]) => ({ minutes, layer, series: summariseLayer(newest, minutes, layer, zone) }));
  const first = layers[0];
  if (!first) return undefined;
  const estimatedCount = estimatedOf(group);
  if (layers.length === 1) {
    const { minutes, layer, series } = first;
    const days = inOrder(layer).map(([day, { values }]) => ({ day, minutes, values }));
    return { series: { ...series, estimatedCount: Math.min(estimatedCount, series.present) }, days };
  }
  return mixLayers(newest, layers, estimatedCount);
}

const inOrder = (layer: Layer): [number, LayerDay][] => [...layer].sort((a, b) => a[0] - b[0]);

/** Marks of estimated readings are counted by import, so each import counts with the share of its span that is its own. */
function estimatedOf(group: Group): number {
  const count = group.reduce((sum, { series }, i) => {
    if (series.estimatedCount === 0) return sum;
    const newer = group.slice(i + 1).map((member) => spanOf(member.series));
    const [from, to] = spanOf(series);
    let own = 0;
    for (let day = from; day < to; day++) if (!newer.some(([first, end]) => day >= first && day < end)) own++;
    return sum + (series.estimatedCount * own) / Math.max(1, to - from);
  }, 0);
  return Math.round(count);
}

const spanOf = ({ from, to }: Series): [number, number] => [toDayNumber(from), toDayNumber(to)];

interface Summed {
  readonly minutes: number;
  readonly layer: Layer;
  readonly series: Series;
}

function summariseLayer(newest: Series, minutes: number, layer: Layer, zone: string): Series {
  const days = inOrder(layer);
  const [firstDay, first] = days[0]!;
  const [lastDay, last] = days.at(-1)!;
  const isThere = (value: number) => !Number.isNaN(value);
  const from = startOfDay(zone, firstDay) / 60_000 + Math.max(0, first.values.findIndex(isThere)) * minutes;
  const lastSlot = last.values.findLastIndex(isThere);
  const to = startOfDay(zone, lastDay) / 60_000 + (lastSlot < 0 ? last.values.length : lastSlot + 1) * minutes;
  const present = days.reduce((sum, [, { values }]) => sum + values.reduce((n, v) => n + Number(isThere(v)), 0), 0);
  const { id, name, carrier, role, beside, evidenceId } = newest;
  const none = { count: 0, row: -1, at: 0, effect: 0 };
  const filled = days.flatMap(([day, { values, filled: marks }]) => filledRuns(day, marks, values));
  const { dayShape, weekShape, dayPeaks, dayStray, ...series } = summariseReadings(
    { id, name, carrier, role, estimatedCount: 0 },
    {
      intervalMinutes: minutes,
      days: days.map(([day, { values }]) => ({ day, values })),
      present,
      expected: minutes === DAY_MINUTES ? lastDay - firstDay + 1 : Math.round((to - from) / minutes),
      from,
      to,
      sameAgain: none,
      different: none,
      offGrid: none,
    },
  );
  const withFill = { ...series, ...(beside ? { beside } : {}), evidenceId, ...(filled.length > 0 ? { filled } : {}) };
  if (minutes < DAY_MINUTES)
    return {
      ...withFill,
      ...(dayShape ? { dayShape } : {}),
      ...(weekShape ? { weekShape } : {}),
      ...(dayPeaks ? { dayPeaks } : {}),
      ...(dayStray ? { dayStray } : {}),
    };
  const { intervalMinutes: _, ...daily } = withFill;
  return { ...daily, resolution: 'day' };
}

function filledRuns(day: number, marks: Uint8Array, values: Float64Array): NonNullable<Series['filled']> {
  const runs: NonNullable<Series['filled']> = [];
  for (let slot = 0; slot < marks.length; slot++) {
    if (marks[slot] === 0) continue;
    const firstSlot = slot;
    let kWh = 0;
    while (slot < marks.length && marks[slot] === 1) kWh += values[slot++]!;
    runs.push({ date: toCivilDate(day), firstSlot, slots: slot - firstSlot, kWh });
  }
  return runs;
}

/** Hours here and half-hours or days there: each day comes whole from one layer, a complete one before a newer one. */
function mixLayers(newest: Series, layers: readonly Summed[], estimatedCount: number): JoinedReadings {
  const picked = new Map<number, Picked>();
  for (const { minutes, layer, series } of layers) {
    const first = toDayNumber(series.days!.first);
    for (const [day, { values, rank }] of layer) {
      const total = series.days!.values[day - first] ?? null;
      const next = { day, minutes, values, rank, total };
      if (isBetter(next, picked.get(day))) picked.set(day, next);
    }
  }
  const days = [...picked.values()].sort((a, b) => a.day - b.day);
  const [firstDay, lastDay] = [days[0]!.day, days.at(-1)!.day];
  const values = Array.from({ length: lastDay - firstDay + 1 }, (_, i) => picked.get(firstDay + i)?.total ?? null);
  const whole = values.filter((value) => value !== null);
  const inDegrees = isTemperature(newest.carrier);
  const sum = inDegrees ? sumOf(whole) : days.reduce((a, { values: v }) => a + sumOfKnown(v), 0);
  const finest = [...layers].sort((a, b) => b.layer.size - a.layer.size).find(({ series }) => series.dayShape);
  const { id, evidenceId, name, carrier, role, beside } = newest;
  return {
    days,
    series: {
      id,
      evidenceId,
      name,
      carrier,
      role,
      ...(beside ? { beside } : {}),
      resolution: 'day',
      from: toCivilDate(firstDay),
      to: toCivilDate(lastDay + 1),
      total: inDegrees ? sum / Math.max(1, whole.length) : sum,
      days: { first: toCivilDate(firstDay), values },
      ...(finest?.series.dayShape ? { dayShape: finest.series.dayShape } : {}),
      ...(finest?.series.weekShape ? { weekShape: finest.series.weekShape } : {}),
      ...(finest?.series.dayPeaks ? { dayPeaks: finest.series.dayPeaks } : {}),
      ...(finest?.series.dayStray ? { dayStray: finest.series.dayStray } : {}),
      present: whole.length,
      expected: values.length,
      estimatedCount: Math.min(estimatedCount, whole.length),
    },
  };
}

interface Picked extends JoinedDay {
  readonly rank: number;
  readonly total: number | null;
}

const isBetter = (next: Picked, known: Picked | undefined): boolean =>
  known === undefined ||
  Number(next.total !== null) > Number(known.total !== null) ||
  (Number(next.total !== null) === Number(known.total !== null) && next.rank > known.rank);

const sumOfKnown = (values: Float64Array): number => values.reduce((sum, v) => (Number.isNaN(v) ? sum : sum + v), 0);
