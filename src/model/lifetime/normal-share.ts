/**
 * Share of a standard normal variable below `z` [1, 0 to 1].
 * Φ(z) = 1 − φ(z) (b1 t + … + b5 t⁵), t = 1 / (1 + 0.2316419 z) for z ≥ 0; error below 7.5e-8.
 * Source: Abramowitz and Stegun 26.2.17 (from memory, held by a test against published values).
 */
export function normalShare(z: number): number {
  const t = 1 / (1 + 0.2316419 * Math.abs(z));
  const polynomial = t * (0.31938153 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
  const above = (Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI)) * polynomial;
  return z < 0 ? above : 1 - above;
}
