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
  const claimed: Claimed = new Map();
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

/** Energy of the days that are claimed, kWh by day number. */
type Claimed = Map<number, number>;

/** So few days left of a bill are worth less than the rounding of the rest. A judgement. */
const REST_LEAST_DAYS = 7;

function takeDays(days: NonNullable<Series['days']>, claimed: Claimed, spans: RecordSpan[]): void {
  const first = toDayNumber(days.first);
  days.values.forEach((kWh, i) => {
    if (kWh === null || !(kWh >= 0) || claimed.has(first + i)) return;
    claimed.set(first + i, kWh);
    spans.push({ first: first + i, days: 1, kWh, estimated: false });
  });
}

/** Of a bill some days of which are known the rest has what those leave of it, where it is one stretch. */
function takePeriods(periods: NonNullable<Series['periods']>, claimed: Claimed, spans: RecordSpan[]): number {
  let leftOut = 0;
  for (const period of periods) {
    const end = toDayNumber(period.to);
    if (!(period.kWh >= 0) || end <= toDayNumber(period.from)) {
      leftOut++;
      continue;
    }
    const free: number[] = [];
    let kWh = period.kWh;
    for (let day = toDayNumber(period.from); day < end; day++) {
      if (claimed.has(day)) kWh -= claimed.get(day)!;
      else free.push(day);
    }
    const [first, last] = [free[0], free.at(-1)];
    if (first === undefined || last === undefined) continue;
    const days = last - first + 1;
    const isWhole = days === end - toDayNumber(period.from);
    if (days !== free.length || (!isWhole && (days < REST_LEAST_DAYS || kWh < 0))) continue;
    for (const day of free) claimed.set(day, kWh / days);
    spans.push({ first, days, kWh, estimated: period.quality === 'estimated' });
  }
  return leftOut;
}

/** Deliveries written as the single day they came on are turned into what was used since the one before. */
function betweenDeliveries(spans: readonly RecordSpan[]): RecordSpan[] {
  if (spans.some((span) => span.days > 2)) return [...spans];
  return spans.slice(1).map((span, i) => ({ ...span, first: spans[i]!.first, days: span.first - spans[i]!.first }));
}
