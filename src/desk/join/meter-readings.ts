/** The half-hours or hours of the electricity meters, joined over the imports, as the detectors take them. */
import { toCivilDate } from '../../model/calendar/civil.ts';
import type { Evidence } from '../../model/evidence/evidence.ts';
import type { MeterReadings } from '../../model/findings/meter-days.ts';
import type { Store } from '../../store/store.ts';
import { findHousehold } from '../find.ts';
import type { WholeHousehold } from '../household-file.ts';
import type { ReadIntervals } from './day-layers.ts';
import { type Group, groupSeries } from './group-series.ts';
import { type JoinedDay, joinReadings } from './join-readings.ts';
import { readFrom } from './stored-series.ts';

/** Readings longer than an hour show no hours of the day. */
const LONGEST_MINUTES = 60;

/** One meter of the machine and one of the house; of several registers, the one with the most days. */
export function meterReadings(evidence: readonly Evidence[], zone: string, read: ReadIntervals): MeterReadings[] {
  const groups = groupSeries(evidence).filter((group) => group.at(-1)!.series.carrier === 'electricity');
  return (['heat-pump', 'import'] as const).flatMap((role) => {
    const found = groups
      .filter((group) => group.at(-1)!.series.role === role)
      .flatMap((group) => readingsOf(group, zone, read) ?? [])
      .toSorted((a, b) => b.days.length - a.days.length)[0];
    return found ? [{ ...found, meter: role === 'import' ? ('whole-house' as const) : role }] : [];
  });
}

type Fine = Omit<MeterReadings, 'meter'>;

function readingsOf(group: Group, zone: string, read: ReadIntervals): Fine | null {
  const joined = joinReadings(group, zone, read)?.days ?? [];
  const fine = Map.groupBy(
    joined.filter(({ minutes }) => minutes <= LONGEST_MINUTES),
    ({ minutes }: JoinedDay) => minutes,
  );
  const [most] = [...fine].toSorted((a, b) => b[1].length - a[1].length);
  if (!most) return null;
  const [intervalMinutes, days] = most;
  return { intervalMinutes, days: days.map(({ day, values }) => ({ date: toCivilDate(day), values })) };
}

export function storedReadings(store: Store, householdId: string): MeterReadings[] {
  const { household } = findHousehold(store, householdId);
  return meterReadings(store.listEvidence(householdId), household.zone, readFrom(store));
}

/** The same for a household that is still in memory. */
export function readingsInMemory({ household, evidence }: WholeHousehold): MeterReadings[] {
  const intervals = new Map(evidence.flatMap((one) => one.intervals.map((days) => [days.seriesId, days] as const)));
  return meterReadings(
    evidence.map(({ import: one }) => one),
    household.zone,
    (seriesId) => intervals.get(seriesId),
  );
}
