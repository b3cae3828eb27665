/**
 * Share of a standard normal spread that lies below `z` [1]: Φ(z) = ½ + φ(z) (z + z³/3 + z⁵/(3·5) + …).
 * Valid for any z; beyond ±8 the ends are given. Source: G. Marsaglia's series (from memory, held by a test against
 * published quantiles).
 */
export function normalShare(z: number): number {
  if (z < -8) return 0;
  if (z > 8) return 1;
  let sum = 0;
  let term = z;
  for (let i = 3; sum + term !== sum; i += 2) {
    sum += term;
    term *= (z * z) / i;
  }
  return 0.5 + (sum * Math.exp((-z * z) / 2)) / Math.sqrt(2 * Math.PI);
}
