/** Visits to the plant as they are typed: begun, changed, kept with the household, dropped. Pure. */

import { compareDates } from '../../model/calendar/civil.ts';
import type { CivilDate } from '../../model/shapes/dates.ts';
import type { Household } from '../../model/shapes/household.ts';
import type { SiteReadings, SiteVisit } from '../../model/shapes/site-readings.ts';
import { CAUTIONS, type Caution } from '../../model/site-readings/cautions.ts';

/** A visit with nothing read yet; the refrigerant is that of the machine, where the plate was read. */
export function beginVisit(id: string, date: CivilDate, { machine }: Pick<Household, 'machine'>): SiteVisit {
  return { id, date, readings: machine.refrigerant ? { refrigerant: machine.refrigerant.value } : {} };
}

/** Readings with some changed; one set to undefined is taken out, since absent is not zero. */
export function patchReadings(readings: SiteReadings, part: Partial<SiteReadings>): SiteReadings {
  return Object.fromEntries(
    Object.entries({ ...readings, ...part }).filter(([, value]) => value !== undefined),
  ) as SiteReadings;
}

/** Whether anything was read; the refrigerant alone is no reading. */
export const isEmptyVisit = ({ readings, note }: SiteVisit): boolean =>
  (note ?? '') === '' && Object.keys(readings).every((field) => field === 'refrigerant');

/** The household with the visit in it: in its place if it is there, else added; without it once it is empty. */
export function keepVisit(household: Household, visit: SiteVisit): Household {
  if (isEmptyVisit(visit)) return dropVisit(household, visit.id);
  const visits = household.siteReadings ?? [];
  const siteReadings = visits.some(({ id }) => id === visit.id)
    ? visits.map((one) => (one.id === visit.id ? visit : one))
    : [...visits, visit];
  return { ...household, siteReadings };
}

/** The household without the visit; the list goes with its last one. */
export function dropVisit(household: Household, id: string): Household {
  const { siteReadings: visits = [], ...rest } = household;
  const left = visits.filter((one) => one.id !== id);
  return left.length === 0 ? rest : { ...rest, siteReadings: left };
}

/** Newest first; of one day, the one typed last. */
export const newestFirst = (visits: readonly SiteVisit[]): SiteVisit[] =>
  visits.toReversed().toSorted((a, b) => compareDates(b.date, a.date));

/** Cautions that hold at any plant; those that the readings call for come with them. */
const ALWAYS: readonly Caution[] = ['refrigerant', 'electric', 'scald', 'glycol', 'local-codes'];
export const cautionsShown = (called: readonly Caution[]): Caution[] =>
  CAUTIONS.filter((caution) => ALWAYS.includes(caution) || called.includes(caution));
