import type { SiteReadings } from '../shapes/site-readings.ts';

/** The colder brine [°C] of the two that were read, even where they seem exchanged: one of them leaves the machine. */
export const colderBrine = ({ brineInC, brineOutC }: SiteReadings): number | undefined =>
  brineOutC === undefined ? undefined : Math.min(brineOutC, brineInC ?? brineOutC);

/**
 * What the readings are judged with. The coldest brine of the year stands for one not read, so that frost is judged by
 * the winter and not by the day of the visit.
 */
export function toJudge(readings: SiteReadings, coldestBrineOutC: number | null): SiteReadings {
  if (readings.coldestBrineC !== undefined || coldestBrineOutC === null || !readings.glycol) return readings;
  return { ...readings, coldestBrineC: Math.min(coldestBrineOutC, colderBrine(readings) ?? Number.POSITIVE_INFINITY) };
}
