/** Solves small symmetric equations, as least squares makes them. */

export interface Solved {
  readonly solution: readonly number[];
  /** Inverse of the matrix. */
  readonly inverse: readonly (readonly number[])[];
  readonly logDeterminant: number;
}

/**
 * Solution and inverse of A x = b for a positive definite A of a few rows, by Gauss–Jordan elimination; null where a
 * pivot vanishes. Source: any text on linear algebra.
 */
export function solveSymmetric(a: readonly (readonly number[])[], b: readonly number[]): Solved | null {
  const n = b.length;
  const rows = a.map((row, i) => [...row, b[i]!, ...row.map((_, j) => (i === j ? 1 : 0))]);
  let logDeterminant = 0;
  for (let p = 0; p < n; p++) {
    const pivot = rows[p]![p]!;
    if (!(pivot > 0)) return null;
    logDeterminant += Math.log(pivot);
    rows[p] = rows[p]!.map((v) => v / pivot);
    for (let r = 0; r < n; r++) {
      if (r === p) continue;
      const factor = rows[r]![p]!;
      rows[r] = rows[r]!.map((v, k) => v - factor * rows[p]![k]!);
    }
  }
  return { solution: rows.map((row) => row[n]!), inverse: rows.map((row) => row.slice(n + 1)), logDeterminant };
}
