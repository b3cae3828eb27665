/** Which of a household's series is its heating record, and the spans of use in it. */

import { toDayNumber } from '../calendar/civil.ts';
import { sumRegisters } from '../evidence/sum-registers.ts';
import type { Series } from '../shapes/evidence.ts';
import { carrierOf, FUEL_IDS, type Fuel, isDelivered } from '../shapes/heating.ts';
import type { Household } from '../shapes/household.ts';

/** Use over whole days. */
export interface RecordSpan {
  readonly first: number;
  readonly days: number;
  readonly kWh: number;
  readonly estimated: boolean;
}

/** What the meter sees: fuel of the boiler, the heat pump alone, heat itself, or everything electric in the house. */
export type RecordMeter = 'fuel' | 'heat-pump' | 'heat' | 'whole-house';

export interface HeatRecord {
  readonly meter: RecordMeter;
  readonly carrier: Series['carrier'];
  /** All series the record was put together from, longest first. */
  readonly series: readonly Series[];
  readonly spans: readonly RecordSpan[];
  /** Tank fills: each says only what was used since the one before. */
  readonly deliveries: boolean;
  readonly leftOut: number;
  /** Days of the record that each of its series tells, by identifier. */
  readonly daysOf?: ReadonlyMap<string, number>;
}

interface Wanted {
  readonly meter: RecordMeter;
  readonly carrier: Series['carrier'];
  readonly role: Series['role'];
}

const wantedFuel = (carrier: Fuel): Wanted => ({ meter: 'fuel', carrier, role: 'import' });
const ELECTRIC: readonly Wanted[] = [
  { meter: 'heat', carrier: 'heat', role: 'heat-output' },
  { meter: 'heat-pump', carrier: 'electricity', role: 'heat-pump' },
  { meter: 'whole-house', carrier: 'electricity', role: 'import' },
];
/** In order of preference; where nobody knows what heats the home, any fuel. */
function wantedFor(system: Household['present']['system']): readonly Wanted[] {
  const carrier = carrierOf(system);
  if (carrier === 'electricity') return ELECTRIC;
  return (carrier ? [carrier] : FUEL_IDS).map(wantedFuel);
}

/** The heating record among the series, or null where there is none. */
export function findRecord(system: Household['present']['system'], series: readonly Series[]): HeatRecord | null {
  for (const wanted of wantedFor(system)) {
    const fitting = series.filter((s) => s.carrier === wanted.carrier && s.role === wanted.role);
    if (fitting.length === 0) continue;
    const record = putTogether(wanted, sumRegisters(fitting));
    if (record.spans.length > 0) return record;
  }
  return null;
}

/** Days before periods, longer before shorter; what comes later only fills days that nothing has claimed. */
function putTogether(wanted: Wanted, fitting: readonly Series[]): HeatRecord {
  const length = (s: Series) => toDayNumber(s.to) - toDayNumber(s.from);
  const ordered = [...fitting].sort((a, b) => Number(!a.days) - Number(!b.days) || length(b) - length(a));
  const claimed = new Set<number>();
  const spans: RecordSpan[] = [];
  let leftOut = 0;
  const daysOf = new Map<string, number>();
  for (const one of ordered) {
    const before = claimed.size;
    if (one.days) takeDays(one.days, claimed, spans);
    else leftOut += takePeriods(one.periods ?? [], claimed, spans);
    daysOf.set(one.id, claimed.size - before);
  }
  spans.sort((a, b) => a.first - b.first);
  const deliveries = isDelivered(wanted.carrier) && ordered.every((s) => !s.days);
  return {
    meter: wanted.meter,
    carrier: wanted.carrier,
    series: ordered,
    spans: deliveries ? betweenDeliveries(spans) : spans,
    deliveries,
    leftOut,
    daysOf,
  };
}

function takeDays(days: NonNullable<Series['days']>, claimed: Set<number>, spans: RecordSpan[]): void {
  const first = toDayNumber(days.first);
  days.values.forEach((kWh, i) => {
    if (kWh === null || !(kWh >= 0) || claimed.has(first + i)) return;
    claimed.add(first + i);
    spans.push({ first: first + i, days: 1, kWh, estimated: false });
  });
}

function takePeriods(periods: NonNullable<Series['periods']>, claimed: Set<number>, spans: RecordSpan[]): number {
  let leftOut = 0;
  for (const period of periods) {
    const first = toDayNumber(period.from);
    const end = toDayNumber(period.to);
    if (!(period.kWh >= 0) || end <= first) {
      leftOut++;
      continue;
    }
    let overlaps = false;
    for (let day = first; day < end && !overlaps; day++) overlaps = claimed.has(day);
    if (overlaps) continue;
    for (let day = first; day < end; day++) claimed.add(day);
    spans.push({ first, days: end - first, kWh: period.kWh, estimated: period.quality === 'estimated' });
  }
  return leftOut;
}

/** Deliveries written as the single day they came on are turned into what was used since the one before. */
function betweenDeliveries(spans: readonly RecordSpan[]): RecordSpan[] {
  if (spans.some((span) => span.days > 2)) return [...spans];
  return spans.slice(1).map((span, i) => ({ ...span, first: spans[i]!.first, days: span.first - spans[i]!.first }));
}
