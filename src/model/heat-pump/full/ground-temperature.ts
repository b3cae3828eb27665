/** Temperature of ground that no array has touched yet. */

/** The ground of a place over the year. */
export interface GroundYear {
  /** Mean of the surface over the year, °C. */
  readonly meanC: number;
  /** Half of the yearly swing of the surface, K. */
  readonly swingK: number;
  /** Day of the year on which the surface is coldest, 1 January is 1. */
  readonly coldestDay: number;
  /** Thermal diffusivity, m² a day. */
  readonly diffusivityM2PerDay: number;
}

/** Square metres a second as square metres a day. */
export const perDay = (diffusivityM2PerS: number): number => diffusivityM2PerS * 86_400;

/** Depth [m] at which the yearly swing is down to 1/e: √(365 a / π). */
export const dampingDepthM = (diffusivityM2PerDay: number): number => Math.sqrt((365 * diffusivityM2PerDay) / Math.PI);

/** Half swing [K] left at a depth [m]. */
export const swingAtDepth = (ground: GroundYear, depthM: number): number =>
  ground.swingK * Math.exp(-depthM / dampingDepthM(ground.diffusivityM2PerDay));

/** Days [d] by which the ground at a depth [m] runs behind the surface: z/2 √(365 / (π a)). */
export const lagDays = (ground: GroundYear, depthM: number): number =>
  (depthM / 2) * Math.sqrt(365 / (Math.PI * ground.diffusivityM2PerDay));

/**
 * Undisturbed ground temperature [°C] at a depth [m] on a day of the year [1 to 365].
 * T = T_mean − A e^(−z/d) cos(2π/365 (t − t0 − z/2 √(365/(π a)))), d = √(365 a / π).
 * Valid for even ground without flowing water, from the surface to about 15 m.
 * Source: Kusuda and Achenbach, ASHRAE Transactions 71(1), 1965.
 */
export function groundTemperature(ground: GroundYear, depthM: number, dayOfYear: number): number {
  const { meanC, coldestDay } = ground;
  const angle = ((2 * Math.PI) / 365) * (dayOfYear - coldestDay - lagDays(ground, depthM));
  return meanC - swingAtDepth(ground, depthM) * Math.cos(angle);
}

/** Mean temperature [°C] along a borehole [m] deep: yearly mean + gradient [K/m] × depth / 2; the seasons do not reach it. */
export const boreholeTemperature = (meanC: number, gradientKPerM: number, depthM: number): number =>
  meanC + (gradientKPerM * depthM) / 2;
