/** A series as one value a day, for the picture: days as they are, bills spread evenly over theirs. */
import type { Series } from '../../model/shapes/evidence.ts';

export interface DayPoint {
  readonly at: string;
  readonly value: number | null;
}

const MS_PER_DAY = 86_400_000;
const dayOf = (ms: number): string => new Date(ms).toISOString().slice(0, 10);

export function recordPoints(series: Series): DayPoint[] {
  if (series.days) {
    const first = Date.parse(series.days.first);
    return series.days.values.map((value, index) => ({ at: dayOf(first + index * MS_PER_DAY), value }));
  }
  const points: DayPoint[] = [];
  let at = Date.parse(series.from);
  for (const period of series.periods ?? []) {
    const from = Date.parse(period.from);
    const to = Date.parse(period.to);
    for (; at < from; at += MS_PER_DAY) points.push({ at: dayOf(at), value: null });
    const perDay = period.kWh / Math.max(1, Math.round((to - from) / MS_PER_DAY));
    for (; at < to; at += MS_PER_DAY) points.push({ at: dayOf(at), value: perDay });
  }
  return points;
}
