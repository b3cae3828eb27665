/** How many people live in a home, where nobody has counted them. */

/**
 * People N = 1 + 1.76 × (1 − exp(−0.000349 × (A − 13.9)²)) + 0.0013 × (A − 13.9) for a floor area A [m²] above 13.9, else 1.
 * Source: SAP Table 1b.
 */
export function peopleOfFloorArea(floorAreaM2: number): number {
  const above = floorAreaM2 - 13.9;
  return above > 0 ? 1 + 1.76 * (1 - Math.exp(-0.000349 * above ** 2)) + 0.0013 * above : 1;
}
