/** Thins a long series to the pixels it is drawn on without losing a peak. */

/**
 * Each slice keeps its first, lowest, highest and last item in their order, and one gap where values are missing.
 * At most five items a slice, so `most` is at least 5. Short series come back as they are.
 */
export function thin<T>(items: readonly T[], most: number, amount: (item: T) => number | null): readonly T[] {
  if (items.length <= Math.max(most, 5)) return items;
  const slices = Math.max(1, Math.floor(most / 5));
  return Array.from({ length: slices }, (_, slice) => {
    const from = Math.floor((slice * items.length) / slices);
    return thinSlice(items, from, Math.floor(((slice + 1) * items.length) / slices), amount);
  }).flat();
}

function thinSlice<T>(items: readonly T[], from: number, to: number, amount: (item: T) => number | null): T[] {
  let [lowest, highest, gap] = [from, from, -1];
  let [least, most] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (let i = from; i < to; i++) {
    const value = amount(items[i]!);
    if (value === null || !Number.isFinite(value)) {
      if (gap < 0) gap = i;
      continue;
    }
    if (value < least) [least, lowest] = [value, i];
    if (value > most) [most, highest] = [value, i];
  }
  const kept = new Set([from, lowest, highest, to - 1, ...(gap < 0 ? [] : [gap])]);
  return [...kept].sort((a, b) => a - b).map((i) => items[i]!);
}

type Points = readonly { readonly outdoorC: number; readonly kWhPerDay: number }[];

/** Days of a signature by temperature: the coldest and the warmest stay and, of each slice between, the lowest and the highest use. */
export const thinPoints = (points: Points, most: number): Points =>
  points.length <= most
    ? points
    : thin(
        points.toSorted((a, b) => a.outdoorC - b.outdoorC),
        most,
        ({ kWhPerDay }) => kWhPerDay,
      );
