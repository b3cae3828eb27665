/** The half-hours or hours of the electricity meters, joined over the imports, as the detectors take them. */
import { toCivilDate } from '../../model/calendar/civil.ts';
import { seriesByMeter } from '../../model/evidence/register-hours.ts';
import { splitMeter } from '../../model/evidence/sum-registers.ts';
import type { MeterReadings } from '../../model/findings/meter-days.ts';
import type { Evidence, Series } from '../../model/shapes/evidence.ts';
import type { Store } from '../../store/store.ts';
import { findHousehold } from '../find.ts';
import type { WholeHousehold } from '../household-file.ts';
import type { ReadIntervals } from './day-layers.ts';
import { type Group, groupSeries } from './group-series.ts';
import { type JoinedDay, joinReadings } from './join-readings.ts';
import { loneParts } from './lone-parts.ts';
import { readFrom } from './stored-series.ts';

/** Readings longer than an hour show no hours of the day. */
const LONGEST_MINUTES = 60;

/** What is looked through of one meter, and the names of other registers beside it that are not. */
export interface LookedThrough extends MeterReadings {
  readonly name: string;
  readonly leftOut: readonly string[];
  /** Records that were looked through. */
  readonly seriesIds: readonly string[];
}

/**
 * One meter of the machine and one of the house; registers of one meter that count some hours each are added together,
 * and of several others the one with the most days is taken, of those the one with the most units, since nobody says
 * whether one of them holds another.
 */
export function lookThrough(evidence: readonly Evidence[], zone: string, read: ReadIntervals): LookedThrough[] {
  const all = groupSeries(evidence);
  const alone = loneParts(all);
  const groups = all.filter((group) => isCounted(group.at(-1)!.series) && !alone.includes(group));
  return (['heat-pump', 'import'] as const).flatMap((role) => {
    const fine = new Map<Series, Fine>();
    for (const group of groups) {
      const { series } = group.at(-1)!;
      const readings = series.role === role ? readingsOf(group, zone, read) : null;
      if (readings) fine.set(series, { ...readings, name: series.name, seriesIds: [series.id] });
    }
    for (const ofMeter of seriesByMeter([...fine.keys()])) {
      const { added, kept } = splitMeter(ofMeter);
      const sum = added.length > 0 ? addReadings(added.map((one) => fine.get(one)!)) : null;
      for (const one of ofMeter) if (!kept.includes(one)) fine.delete(one);
      if (sum) fine.set(added[0]!, sum);
    }
    const [most, ...others] = [...fine.values()].toSorted(
      (a, b) => b.days.length - a.days.length || unitsOf(b) - unitsOf(a),
    );
    if (!most) return [];
    const meter = role === 'import' ? ('whole-house' as const) : role;
    return [{ ...most, meter, leftOut: others.map(({ name }) => name) }];
  });
}

/** What is kept aside shows nothing of the home. */
const isCounted = ({ carrier, beside }: Series) => carrier === 'electricity' && beside !== 'aside';

type Readings = Omit<MeterReadings, 'meter'>;
const unitsOf = ({ days }: Readings): number =>
  days.reduce((sum, { values }) => Array.from(values).reduce((all, kWh) => (kWh > 0 ? all + kWh : all), sum), 0);
type Fine = Readings & { readonly name: string; readonly seriesIds: readonly string[] };

/** All registers of a meter, on the days that every one has; null where they are not read as often as each other. */
function addReadings(registers: readonly Fine[]): Fine | null {
  const [first, ...others] = registers.map(({ days }) => new Map(days.map(({ date, values }) => [date, values])));
  const { intervalMinutes } = registers[0]!;
  if (registers.some((one) => one.intervalMinutes !== intervalMinutes)) return null;
  const days = [...first!].flatMap(([date, values]) => {
    const beside = others.map((of) => of.get(date));
    if (beside.some((one) => one?.length !== values.length)) return [];
    return [{ date, values: Float64Array.from(values, (kWh, i) => beside.reduce((sum, one) => sum + one![i]!, kWh)) }];
  });
  const seriesIds = registers.flatMap((one) => one.seriesIds);
  return { intervalMinutes, days, name: registers.map(({ name }) => name).join(' + '), seriesIds };
}

function readingsOf(group: Group, zone: string, read: ReadIntervals): Readings | null {
  const joined = joinReadings(group, zone, read)?.days ?? [];
  const fine = Map.groupBy(
    joined.filter(({ minutes, values }) => minutes <= LONGEST_MINUTES && values.some(Number.isFinite)),
    ({ minutes }: JoinedDay) => minutes,
  );
  const [most] = [...fine].toSorted((a, b) => b[1].length - a[1].length);
  if (!most) return null;
  const [intervalMinutes, days] = most;
  return { intervalMinutes, days: days.map(({ day, values }) => ({ date: toCivilDate(day), values })) };
}

export function storedReadings(store: Store, householdId: string): LookedThrough[] {
  const { household } = findHousehold(store, householdId);
  return lookThrough(store.listEvidence(householdId), household.zone, readFrom(store));
}

/** The same for a household that is still in memory. */
export function readingsInMemory({ household, evidence }: WholeHousehold): LookedThrough[] {
  const intervals = new Map(evidence.flatMap((one) => one.intervals.map((days) => [days.seriesId, days] as const)));
  return lookThrough(
    evidence.map(({ import: one }) => one),
    household.zone,
    (seriesId) => intervals.get(seriesId),
  );
}
