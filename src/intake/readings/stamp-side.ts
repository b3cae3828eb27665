/** Whether stamps name the start or the end of their interval: by the heading, by 24:00, by the first and last stamp. */

export type StampSide = 'start' | 'end';

/** From the first and last stamp of whole days; undefined where they do not tell. */
export function sideOfStamps(
  civil: Float64Array,
  count: number,
  intervalMinutes: number,
  lengths?: { readonly shorter: number; readonly longer: number },
): StampSide | undefined {
  let first = Number.POSITIVE_INFINITY;
  let last = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < count; i++) {
    const minute = civil[i]!;
    if (minute < first) first = minute;
    if (minute > last) last = minute;
  }
  const firstOfDay = first % 1440;
  const lastOfDay = last % 1440;
  const all = lengths ? [lengths.shorter, lengths.longer] : [intervalMinutes];
  if (firstOfDay === 0 && all.includes(1440 - lastOfDay)) return 'start';
  if (all.includes(firstOfDay) && lastOfDay === 0) return 'end';
  return undefined;
}
