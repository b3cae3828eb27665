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
import { findRatePairs } from './rate-pairs.ts';
import { readFrom } from './stored-series.ts';

/** Readings longer than an hour show no hours of the day. */
const LONGEST_MINUTES = 60;

/**
 * One meter of the machine and one of the house; day and night registers of one meter are added together, and of
 * several other registers the one with the most days is taken.
 */
export function meterReadings(evidence: readonly Evidence[], zone: string, read: ReadIntervals): MeterReadings[] {
  const groups = groupSeries(evidence).filter((group) => group.at(-1)!.series.carrier === 'electricity');
  return (['heat-pump', 'import'] as const).flatMap((role) => {
    const fine = new Map<string, Fine>();
    const ofRole = groups.filter((group) => group.at(-1)!.series.role === role);
    for (const group of ofRole) {
      const readings = readingsOf(group, zone, read);
      if (readings) fine.set(group.at(-1)!.series.id, readings);
    }
    for (const { dear, cheap } of findRatePairs(ofRole.map((group) => group.at(-1)!.series))) {
      const [a, b] = [fine.get(dear.id), fine.get(cheap.id)];
      if (!a || !b || a.intervalMinutes !== b.intervalMinutes) continue;
      fine.set(dear.id, addReadings(a, b));
      fine.delete(cheap.id);
    }
    const found = [...fine.values()].toSorted((a, b) => b.days.length - a.days.length)[0];
    return found ? [{ ...found, meter: role === 'import' ? ('whole-house' as const) : role }] : [];
  });
}

type Fine = Omit<MeterReadings, 'meter'>;

/** Both registers of a meter, on the days that both have. */
function addReadings(a: Fine, b: Fine): Fine {
  const ofDay = new Map(b.days.map(({ date, values }) => [date, values]));
  const days = a.days.flatMap(({ date, values }) => {
    const other = ofDay.get(date);
    if (other?.length !== values.length) return [];
    return [{ date, values: Float64Array.from(values, (value, i) => value + other[i]!) }];
  });
  return { intervalMinutes: a.intervalMinutes, days };
}

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
