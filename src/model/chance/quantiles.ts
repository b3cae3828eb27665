/** Points of a sample: of a sorted one, or found without sorting it all. */

/** Value below which the share `p` (0 to 1) of a sorted sample lies, interpolated between middles of equal slices. */
export function quantileOfSorted(sorted: ArrayLike<number>, p: number): number {
  const place = p * sorted.length - 0.5;
  const below = Math.floor(place);
  if (below < 0) return sorted[0]!;
  if (below >= sorted.length - 1) return sorted[sorted.length - 1]!;
  const lower = sorted[below]!;
  return lower + (place - below) * (sorted[below + 1]! - lower);
}

/** The middles of twenty slices of 5 %. */
export const TWENTY: readonly number[] = Array.from({ length: 20 }, (_, k) => (k + 0.5) / 20);

/** Twenty equally likely values of a sorted sample, ascending. */
export function twentyOfSorted(sorted: ArrayLike<number>): number[] {
  return TWENTY.map((p) => quantileOfSorted(sorted, p));
}

/** What sums in another order leave is nothing. */
const NOTHING = 1e-6;

/** Share of a sample, in whichever order, that lies above zero; a value of zero counts half. */
export function shareAboveZero(values: Float64Array | readonly number[]): number {
  let above = 0;
  let zero = 0;
  for (const value of values) {
    if (value > NOTHING) above++;
    else if (value >= -NOTHING) zero++;
  }
  return (above + zero / 2) / values.length;
}

/**
 * Puts in order what `quantileOfSorted` looks at for these shares (0 to 1) and nothing else, in the sample itself:
 * a dozen points cost a third of sorting it all.
 */
export function sortAround(values: Float64Array, shares: readonly number[]): Float64Array {
  const inside = (place: number) => Math.min(values.length - 1, Math.max(0, place));
  const places = shares.flatMap((p) => {
    const below = Math.floor(p * values.length - 0.5);
    return [inside(below), inside(below + 1)];
  });
  settle(values, Uint32Array.from(new Set(places)).sort(), 0, values.length - 1);
  return values;
}

/** The middle of the places first, so that what lies left of it and right of it no longer mixes. */
function settle(values: Float64Array, places: Uint32Array, from: number, to: number): void {
  if (places.length === 0) return;
  const middle = places.length >> 1;
  const place = places[middle]!;
  valueAtPlace(values, place, from, to);
  settle(values, places.subarray(0, middle), from, place - 1);
  settle(values, places.subarray(middle + 1), place + 1, to);
}

/** `quantileOfSorted` for an unsorted sample, which is left in another order: a few points cost less than sorting it all. */
export function quantileOf(values: Float64Array, p: number): number {
  const place = Math.min(values.length - 1, Math.max(0, p * values.length - 0.5));
  const below = Math.floor(place);
  const lower = valueAtPlace(values, below);
  if (place === below) return lower;
  // After selecting, the next value in order is the least of those above the place.
  let upper = Number.POSITIVE_INFINITY;
  for (let i = below + 1; i < values.length; i++) if (values[i]! < upper) upper = values[i]!;
  return lower + (place - below) * (upper - lower);
}

/** The 10 and 90 % points of an unsorted sample, which is left in another order. */
export const tenAndNinety = (values: Float64Array): { low: number; high: number } => ({
  low: quantileOf(values, 0.1),
  high: quantileOf(values, 0.9),
});

/** Samples so large are narrowed by a sample of their own first. */
const NARROWED_FROM = 600;

/**
 * Puts the value that would stand at `place` in sorted order there, smaller ones before and larger ones after it. What
 * lies before `from` or after `to` must be in its right part already. Pivots are chosen near the place as Floyd and
 * Rivest do (Algorithm 489, Communications of the ACM 18 (3), 1975), so that little more than the values is looked at once.
 */
export function valueAtPlace(values: Float64Array, place: number, from = 0, to = values.length - 1): number {
  while (from < to) {
    const count = to - from + 1;
    if (count > NARROWED_FROM) {
      const before = place - from + 1;
      const log = Math.log(count);
      const size = 0.5 * Math.exp((2 * log) / 3);
      const apart = 0.5 * Math.sqrt((log * size * (count - size)) / count) * Math.sign(before - count / 2);
      const low = Math.max(from, Math.floor(place - (before * size) / count + apart));
      const high = Math.min(to, Math.floor(place + ((count - before) * size) / count + apart));
      valueAtPlace(values, place, low, high);
    }
    const pivot = values[place]!;
    let i = from;
    let j = to;
    while (i <= j) {
      while (values[i]! < pivot) i++;
      while (values[j]! > pivot) j--;
      if (i > j) break;
      const swap = values[i]!;
      values[i] = values[j]!;
      values[j] = swap;
      i++;
      j--;
    }
    if (j < place) from = i;
    if (i > place) to = j;
  }
  return values[place]!;
}
