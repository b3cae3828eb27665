/**
 * Sobol points: numbers that fill a box evenly instead of by chance, so that a few thousand stand for very many.
 * Fixed seed, so that the same household gives the same range every time.
 */

/** Degree and coefficients of a primitive polynomial with the first direction integers, dimensions 2 to 14 and 16 to 21; 15 lies badly beside 16. */
const DIRECTIONS: readonly { readonly a: number; readonly m: readonly number[] }[] = [
  { a: 0, m: [1] },
  { a: 1, m: [1, 3] },
  { a: 1, m: [1, 3, 1] },
  { a: 2, m: [1, 1, 1] },
  { a: 1, m: [1, 1, 3, 3] },
  { a: 4, m: [1, 3, 5, 13] },
  { a: 2, m: [1, 1, 5, 5, 17] },
  { a: 4, m: [1, 1, 5, 5, 5] },
  { a: 7, m: [1, 1, 7, 11, 19] },
  { a: 11, m: [1, 1, 5, 1, 1] },
  { a: 13, m: [1, 1, 1, 3, 11] },
  { a: 14, m: [1, 3, 5, 5, 31] },
  { a: 1, m: [1, 3, 3, 9, 7, 49] },
  { a: 16, m: [1, 3, 1, 13, 27, 49] },
  { a: 19, m: [1, 1, 1, 15, 7, 5] },
  { a: 22, m: [1, 3, 1, 15, 13, 25] },
  { a: 25, m: [1, 1, 5, 5, 19, 61] },
  { a: 1, m: [1, 3, 7, 11, 23, 15, 103] },
  { a: 4, m: [1, 3, 7, 13, 13, 15, 69] },
];
export const MOST_DIMENSIONS = DIRECTIONS.length + 1;
const BITS = 32;

function directionNumbers(dimension: number): Uint32Array {
  const v = new Uint32Array(BITS);
  if (dimension === 0) {
    for (let i = 0; i < BITS; i++) v[i] = 2 ** (BITS - 1 - i);
    return v;
  }
  const { a, m } = DIRECTIONS[dimension - 1]!;
  const s = m.length;
  for (let i = 0; i < BITS; i++) {
    if (i < s) {
      v[i] = m[i]! * 2 ** (BITS - 1 - i);
      continue;
    }
    let next = v[i - s]! ^ (v[i - s]! >>> s);
    for (let k = 1; k < s; k++) if ((a >>> (s - 1 - k)) & 1) next ^= v[i - k]!;
    v[i] = next;
  }
  return v;
}

/** A small generator of even 32-bit numbers (xorshift), for the digital shift only. */
function shiftOf(seed: number, dimension: number): number {
  let x = (seed ^ Math.imul(dimension + 1, 0x9e3779b9)) >>> 0 || 1;
  for (let round = 0; round < 4; round++) {
    x ^= x << 13;
    x ^= x >>> 17;
    x ^= x << 5;
  }
  return x >>> 0;
}

/**
 * `count` points in a box of `dimensions` sides, each coordinate strictly between 0 and 1 [1]; one array a dimension.
 * Gray-code order with a seeded digital shift, which keeps the evenness and takes the first point off the corner.
 * Valid for 1 to 20 dimensions. Source: I. M. Sobol 1967 with direction numbers after S. Joe and F. Kuo 2008
 * (from memory; they agree with those of the open library SciPy 1.17; a test shows that every 2^k points fall one into each of 2^k slices of every side).
 */
export function sobolPoints(count: number, dimensions: number, seed: number): Float64Array[] {
  if (dimensions < 1 || dimensions > MOST_DIMENSIONS) throw new RangeError(`1 to ${MOST_DIMENSIONS} dimensions`);
  return Array.from({ length: dimensions }, (_, dimension) => {
    const v = directionNumbers(dimension);
    const shift = shiftOf(seed, dimension);
    const points = new Float64Array(count);
    let x = 0;
    for (let i = 0; i < count; i++) {
      points[i] = (((x ^ shift) >>> 0) + 0.5) / 2 ** BITS;
      x ^= v[31 - Math.clz32(~i & (i + 1))]!;
    }
    return points;
  });
}
