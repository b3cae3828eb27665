/** Local civil time of an IANA zone, with both clock changes. Offsets come from the platform's own zone tables. */
import { tzOffset } from '@date-fns/tz';
import type { CivilDate } from '../shapes/dates.ts';
import { monthOf, toCivilDate, toDayNumber, weekdayIndex } from './civil.ts';

const MS_PER_MINUTE = 60_000;
const NS_PER_MINUTE = 60e9;
const MS_PER_DAY = 86_400_000;

/** Minutes east of UTC at an instant: 60 for British Summer Time. */
export function offsetMinutes(zone: string, epochMs: number): number {
  // The same tables. Intl reads them only once it has looked through every locale it knows, which takes longer than a sum.
  if (typeof Temporal !== 'undefined') {
    const there = Temporal.Instant.fromEpochMilliseconds(Math.trunc(epochMs)).toZonedDateTimeISO(zone);
    return there.offsetNanoseconds / NS_PER_MINUTE;
  }
  return tzOffset(zone, new Date(epochMs));
}

/** Minutes east of UTC of the zone's winter time in the year after an instant: the least of its offsets by the quarter. */
export const winterOffsetMinutes = (zone: string, epochMs: number): number =>
  Math.min(...[0, 91, 182, 273].map((days) => offsetMinutes(zone, epochMs + days * MS_PER_DAY)));

const startCache = new Map<string, Map<number, number>>();

/** Instant (ms since 1970 UTC) at which the local day begins. */
export function startOfDay(zone: string, dayNumber: number): number {
  let ofZone = startCache.get(zone);
  if (!ofZone) {
    ofZone = new Map();
    startCache.set(zone, ofZone);
  }
  const known = ofZone.get(dayNumber);
  if (known !== undefined) return known;
  const asUtc = dayNumber * MS_PER_DAY;
  const first = asUtc - offsetMinutes(zone, asUtc) * MS_PER_MINUTE;
  const offset = offsetMinutes(zone, first);
  // The offset may differ between UTC midnight and local midnight; a second look settles it.
  const second = asUtc - offset * MS_PER_MINUTE;
  // Where midnight itself is left out, as in Cairo, the two never agree: the day begins with the change, at the later.
  const start = offsetMinutes(zone, second) === offset ? second : Math.max(first, second);
  ofZone.set(dayNumber, start);
  return start;
}

/** Days between two looks at the clock: no zone changes it and back again within them. */
const LOOK_DAYS = 7;

/** Notes the starts of all days between two day numbers, asking the slow zone tables only about weeks in which the clock changes. */
function lookUpStarts(zone: string, first: number, last: number): void {
  for (let day = first; day < last; day += LOOK_DAYS) {
    const end = Math.min(day + LOOK_DAYS, last);
    const [from, to] = [startOfDay(zone, day), startOfDay(zone, end)];
    if (to - from !== (end - day) * MS_PER_DAY) continue;
    for (let k = day + 1; k < end; k++) startCache.get(zone)!.set(k, from + (k - day) * MS_PER_DAY);
  }
}

/** Length of the local day: 1,440 minutes, or 1,380 and 1,500 where the clock changes by an hour. */
export function minutesInDay(zone: string, dayNumber: number): number {
  return (startOfDay(zone, dayNumber + 1) - startOfDay(zone, dayNumber)) / MS_PER_MINUTE;
}

/** Local day number of an instant, and the minutes elapsed since that day began (not the clock reading). */
export function localDay(zone: string, epochMs: number): { dayNumber: number; elapsedMinutes: number } {
  const dayNumber = Math.floor((epochMs + offsetMinutes(zone, epochMs) * MS_PER_MINUTE) / MS_PER_DAY);
  return { dayNumber, elapsedMinutes: (epochMs - startOfDay(zone, dayNumber)) / MS_PER_MINUTE };
}

/** Clock reading of an instant as "2025-03-30T02:00", without offset. */
export function localStamp(zone: string, epochMs: number): string {
  return new Date(epochMs + offsetMinutes(zone, epochMs) * MS_PER_MINUTE).toISOString().slice(0, 16);
}

/** Every half-hour of a civil year, in order of time. */
export interface YearSlots {
  readonly year: number;
  readonly zone: string;
  /** 17,520, in a leap year 17,568, where both clock changes cancel. */
  readonly count: number;
  /** Day of the year, from 0. */
  readonly day: Uint16Array;
  /** Month, from 0. */
  readonly month: Uint8Array;
  /** Weekday, 0 is Monday. */
  readonly weekday: Uint8Array;
  /** Clock reading at the start of the slot, minutes after midnight. */
  readonly minute: Uint16Array;
  /** First slot of each day, with one entry past the end. */
  readonly dayStart: Uint32Array;
}

const yearCache = new Map<string, YearSlots>();

/** The half-hour slots of a year in the zone's local civil time: 46 on the spring day, 50 on the autumn day. */
export function yearSlots(year: number, zone: string): YearSlots {
  const key = `${zone} ${year}`;
  const known = yearCache.get(key);
  if (known) return known;
  const first = toDayNumber(`${year}-01-01` as CivilDate);
  const last = toDayNumber(`${year + 1}-01-01` as CivilDate);
  const count = (startOfDay(zone, last) - startOfDay(zone, first)) / (30 * MS_PER_MINUTE);
  const slots: YearSlots = {
    year,
    zone,
    count,
    day: new Uint16Array(count),
    month: new Uint8Array(count),
    weekday: new Uint8Array(count),
    minute: new Uint16Array(count),
    dayStart: new Uint32Array(last - first + 1),
  };
  lookUpStarts(zone, first, last);
  let i = 0;
  for (let day = first; day < last; day++) {
    const start = startOfDay(zone, day);
    const length = minutesInDay(zone, day) / 30;
    const month = monthOf(toCivilDate(day)) - 1;
    const weekday = weekdayIndex(day);
    slots.dayStart[day - first] = i;
    const changes = length !== 48;
    for (let s = 0; s < length; s++, i++) {
      slots.day[i] = day - first;
      slots.month[i] = month;
      slots.weekday[i] = weekday;
      slots.minute[i] = changes ? clockMinute(zone, start + s * 30 * MS_PER_MINUTE) : s * 30;
    }
  }
  slots.dayStart[last - first] = i;
  yearCache.set(key, slots);
  return slots;
}

function clockMinute(zone: string, epochMs: number): number {
  const local = epochMs + offsetMinutes(zone, epochMs) * MS_PER_MINUTE;
  return (local % MS_PER_DAY) / MS_PER_MINUTE;
}
