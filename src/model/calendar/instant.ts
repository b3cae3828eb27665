/** The civil date on which an instant falls in a zone. */
import type { CivilDate } from '../shapes/dates.ts';
import { toCivilDate } from './civil.ts';
import { localDay } from './zone.ts';

/** "2026-06-30T23:30:00Z" is 1 July 2026 in London. */
export function civilDateOf(instant: string, zone: string): CivilDate {
  return toCivilDate(localDay(zone, Date.parse(instant)).dayNumber);
}
