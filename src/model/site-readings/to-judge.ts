import type { SiteReadings } from '../shapes/site-readings.ts';

/**
 * What the readings are judged with. The coldest brine of the year stands for one not read, so that frost is judged by
 * the winter and not by the day of the visit.
 */
export function toJudge(readings: SiteReadings, coldestBrineOutC: number | null): SiteReadings {
  if (readings.coldestBrineC !== undefined || coldestBrineOutC === null || !readings.glycol) return readings;
  return { ...readings, coldestBrineC: Math.min(coldestBrineOutC, readings.brineOutC ?? Number.POSITIVE_INFINITY) };
}
