/** Whether stamps name the start or the end of their interval: by the heading, by 24:00, by the first and last stamp. */

export type StampSide = 'start' | 'end';

/** From the first and last stamp of whole days; undefined where they do not tell. */
export function sideOfStamps(civil: Float64Array, count: number, intervalMinutes: number): StampSide | undefined {
  let first = Number.POSITIVE_INFINITY;
  let last = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < count; i++) {
    const minute = civil[i]!;
    if (minute < first) first = minute;
    if (minute > last) last = minute;
  }
  const firstOfDay = first % 1440;
  const lastOfDay = last % 1440;
  if (firstOfDay === 0 && lastOfDay === 1440 - intervalMinutes) return 'start';
  if (firstOfDay === intervalMinutes && lastOfDay === 0) return 'end';
  return undefined;
}
