/** Points of a sample, found without sorting it all. */

/** The middles of twenty slices of 5 %. */
export const TWENTY: readonly number[] = Array.from({ length: 20 }, (_, k) => (k + 0.5) / 20);

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

/** Samples up to this size are sorted at once. */
const SORTED_UP_TO = 64;
/** Values that fall into one piece of the range, were they spread evenly. */
const A_PIECE = 4;

/**
 * The values that would stand at `places` (0 for the least) if the sample were sorted; it is left as it is. The range is
 * cut into even pieces and only the pieces that hold a place are sorted, so that a dozen points cost hardly more than one.
 */
export function valuesAt(values: Float64Array, places: readonly number[]): number[] {
  const count = values.length;
  let least = Number.POSITIVE_INFINITY;
  let most = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < count; i++) {
    const value = values[i]!;
    if (value < least) least = value;
    if (value > most) most = value;
  }
  const pieces = Math.ceil(count / A_PIECE);
  const perUnit = pieces / (most - least);
  if (count <= SORTED_UP_TO || !(perUnit > 0 && perUnit < Number.POSITIVE_INFINITY)) {
    const sorted = values.toSorted();
    return places.map((place) => sorted[place]!);
  }
  // The largest value falls into a piece of its own.
  const end = new Uint32Array(pieces + 1);
  for (let i = 0; i < count; i++) end[((values[i]! - least) * perUnit) | 0]!++;
  for (let piece = 1; piece <= pieces; piece++) end[piece]! += end[piece - 1]!;
  const wanted = new Map(places.map((place) => [pieceOf(end, place), [] as number[]]));
  const isWanted = new Uint8Array(pieces + 1);
  for (const piece of wanted.keys()) isWanted[piece] = 1;
  for (let i = 0; i < count; i++) {
    const piece = ((values[i]! - least) * perUnit) | 0;
    if (isWanted[piece]) wanted.get(piece)!.push(values[i]!);
  }
  for (const piece of wanted.values()) piece.sort((a, b) => a - b);
  return places.map((place) => {
    const piece = pieceOf(end, place);
    return wanted.get(piece)![place - (end[piece - 1] ?? 0)]!;
  });
}

/** The first piece that ends after `place`. */
function pieceOf(end: Uint32Array, place: number): number {
  let [from, to] = [0, end.length - 1];
  while (from < to) {
    const middle = (from + to) >> 1;
    if (end[middle]! > place) to = middle;
    else from = middle + 1;
  }
  return from;
}

/** Values below which these shares (0 to 1) of a sample lie, interpolated between middles of equal slices. */
export function quantilesOf(values: Float64Array, shares: readonly number[]): number[] {
  const last = values.length - 1;
  const places = shares.map((p) => Math.min(last, Math.max(0, p * values.length - 0.5)));
  const found = valuesAt(
    values,
    places.flatMap((place) => [Math.floor(place), Math.ceil(place)]),
  );
  return places.map((place, i) => {
    const lower = found[2 * i]!;
    const upper = found[2 * i + 1]!;
    return lower === upper ? lower : lower + (place - Math.floor(place)) * (upper - lower);
  });
}

export const quantileOf = (values: Float64Array, p: number): number => quantilesOf(values, [p])[0]!;

/** The 10 and 90 % points of an unsorted sample. */
export function tenAndNinety(values: Float64Array): { low: number; high: number } {
  const [low, high] = quantilesOf(values, [0.1, 0.9]);
  return { low: low!, high: high! };
}
