/** The series of a stored household, joined over its imports. */
import { daysBetween } from '../../model/calendar/civil.ts';
import { type Evidence, type Series, withoutHours } from '../../model/shapes/evidence.ts';
import type { OnDamage } from '../../store/sealed.ts';
import type { Store } from '../../store/store.ts';
import { orDamage } from '../damage-notes.ts';
import { findHousehold } from '../find.ts';
import type { WholeHousehold } from '../household-file.ts';
import type { ReadIntervals } from './day-layers.ts';
import { joinEvidence } from './join-evidence.ts';

export const EVER = { from: '1900-01-01', to: '9999-12-31' } as const;

export const readFrom =
  (store: Store, { from, to }: { from: string; to: string } = EVER, onDamage?: OnDamage): ReadIntervals =>
  (seriesId) =>
    orDamage(() => store.readIntervals(seriesId, from, to), onDamage);

export function storedSeries(store: Store, householdId: string): Series[] {
  const { household } = findHousehold(store, householdId);
  return joinEvidence(store.listEvidence(householdId), household.zone, readFrom(store));
}

/** Imports of a household that is still in memory. `before` leaves out series that begin on that day or later. */
export const importsInMemory = ({ evidence }: WholeHousehold, before?: string): Evidence[] =>
  evidence.map(({ import: one }) => ({
    ...one,
    series: before === undefined ? one.series : one.series.filter(({ from }) => from < before),
  }));

/** The series of such imports, joined; of one that goes on past `before` only what was known on that day. */
export function seriesInMemory(whole: WholeHousehold, before?: string): Series[] {
  const joined = joinEvidence(importsInMemory(whole, before), whole.household.zone, (seriesId) =>
    whole.evidence.flatMap(({ intervals }) => intervals).find((one) => one.seriesId === seriesId),
  );
  return before === undefined ? joined : joined.map((one) => (one.to > before ? cutAt(one, before) : one));
}

function cutAt(one: Series, before: string): Series {
  const { days, periods, ...rest } = withoutHours(one);
  return {
    ...rest,
    to: before,
    ...(days ? { days: { ...days, values: days.values.slice(0, daysBetween(days.first, before)) } } : {}),
    ...(periods ? { periods: periods.filter(({ to }) => to <= before) } : {}),
  };
}
