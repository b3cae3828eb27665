/** Heat that a hot-water cylinder loses while it stands. */

export interface Cylinder {
  readonly litres: number;
  /** Factory foam, mm. */
  readonly foamMm: number;
  /** Hot water is timed separately from the rooms. */
  readonly separatelyTimed: boolean;
}

const INDIRECT = 0.6;
const TIMED = 0.9;

/** Loss per litre [kWh/litre/day] behind factory foam of a thickness [mm]: 0.005 + 0.55/(t + 4). Source: SAP Table 2. */
export const lossPerLitreFoam = (foamMm: number): number => 0.005 + 0.55 / (foamMm + 4);

/** Volume factor (120/V)^(1/3) of a cylinder of V litres. Source: SAP Table 2a. */
export const volumeFactor = (litres: number): number => Math.cbrt(120 / litres);

/**
 * Loss of an indirect cylinder with a thermostat [kWh/day]: V × L × VF × 0.60, × 0.9 if separately timed.
 * Valid for about 80 to 500 litres. Source: SAP Tables 2, 2a, 2b (2009 edition; unchanged in 10.2, from memory).
 */
export function cylinderLossKWhPerDay(cylinder: Cylinder): number {
  const { litres, foamMm, separatelyTimed } = cylinder;
  return litres * lossPerLitreFoam(foamMm) * volumeFactor(litres) * INDIRECT * (separatelyTimed ? TIMED : 1);
}
