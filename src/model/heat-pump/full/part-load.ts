/** What stopping and starting costs a machine that gives more than the house needs. */

/** Degradation coefficient of EN 14825 where none was tested. */
export const USUAL_DEGRADATION = 0.9;

/**
 * Share of the full-load COP [1] left at a load ratio [1]: CR / (C CR + 1 − C); 1 at full load and above.
 * Valid for load ratios from 0. Source: EN 14825, machines of fixed output for water, C = 0.9 by default.
 */
export function partLoadShare(loadRatio: number, degradation = USUAL_DEGRADATION): number {
  if (loadRatio >= 1) return 1;
  if (!(loadRatio > 0)) return 0;
  return loadRatio / (degradation * loadRatio + 1 - degradation);
}
