/** How much of what a roof makes within a half-hour the home uses in the same moments. */

/**
 * kWh used at once of kWh made and needed in one half-hour: made × min(1, 0.6748 r^−0.703, 1/r) with r = made/needed, since
 * sun and need come and go within it. Source: communitiesuk/epb-home-energy-model, energy_supply.rs.
 */
export function usedAtOnceKWh(madeKWh: number, neededKWh: number): number {
  if (!(madeKWh > 0 && neededKWh > 0)) return 0;
  const r = madeKWh / neededKWh;
  if (r <= ALL_USED_BELOW) return madeKWh;
  if (r >= ALL_MET_ABOVE) return neededKWh;
  return madeKWh * 0.6748 * r ** -0.703;
}
/** Where the middle branch meets the others: 0.6748 r^−0.703 = 1 and = 1/r. */
const ALL_USED_BELOW = 0.6748 ** (1 / 0.703);
const ALL_MET_ABOVE = 0.6748 ** (-1 / 0.297);
