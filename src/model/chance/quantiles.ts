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

/** Twenty equally likely values: the middles of twenty slices of 5 % of a sorted sample, ascending. */
export function twentyOfSorted(sorted: ArrayLike<number>): number[] {
  return Array.from({ length: 20 }, (_, k) => quantileOfSorted(sorted, (k + 0.5) / 20));
}

/** Share of a sorted sample that lies above zero; a value of exactly zero counts half. */
export function shareAboveZero(sorted: ArrayLike<number>): number {
  let negative = 0;
  while (negative < sorted.length && sorted[negative]! < 0) negative++;
  let upTo = negative;
  while (upTo < sorted.length && sorted[upTo] === 0) upTo++;
  return (sorted.length - upTo + (upTo - negative) / 2) / sorted.length;
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
export function tenAndNinety(values: Float64Array): { low: number; high: number } {
  return { low: quantileOf(values, 0.1), high: quantileOf(values, 0.9) };
}

/** Puts the value that would stand at `place` in sorted order there, smaller ones before and larger ones after it (Hoare). */
export function valueAtPlace(values: Float64Array, place: number): number {
  let from = 0;
  let to = values.length - 1;
  while (from < to) {
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
