/** The ups and downs over the year of what is used in any weather: colder mains and darker days in winter. */

const MS_PER_DAY = 86_400_000;
const DAYS_OF_YEAR = 365.25;
/** Middle of the dark and cold: mid-January. SAP 10.2 Tables J1, J2 and Appendix L have their peaks between December and February. */
const PEAK_DAY = 15;

/** Wave of the year at a day number: 1 in mid-January, −1 in mid-July. */
export function yearWave(dayNumber: number): number {
  const ofYear = dayNumber - Date.UTC(new Date(dayNumber * MS_PER_DAY).getUTCFullYear(), 0, 1) / MS_PER_DAY;
  return Math.cos((2 * Math.PI * (ofYear - PEAK_DAY)) / DAYS_OF_YEAR);
}

/** Mean wave of a span of days. */
export function meanWave(first: number, days: number): number {
  let sum = 0;
  for (let day = first; day < first + days; day++) sum += yearWave(day);
  return sum / days;
}
