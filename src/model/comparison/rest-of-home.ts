/** What the home uses beside heating and hot water: it fills the first steps of a stepped price, and sets its own highest half-hour. */

import { COMMON_MONTH_DAYS, monthOf, toCivilDate, toDayNumber, weekdayIndex } from '../calendar/civil.ts';
import type { YearSlots } from '../calendar/zone.ts';
import { otherElectricityKWh } from '../demand/known-base.ts';
import { peopleOfFloorArea } from '../demand/occupancy.ts';
import { findRecord } from '../demand/record.ts';
import { besideHeatPump, EVER } from '../evidence/beside-heat-pump.ts';
import type { CivilDate } from '../shapes/dates.ts';
import type { Series } from '../shapes/evidence.ts';
import { carrierOf, isFuel } from '../shapes/heating.ts';
import type { Household } from '../shapes/household.ts';
import type { Reference } from '../shapes/reference.ts';
import { type Told, tell } from '../shapes/told.ts';
import { FLOOR_AREA_M2 } from '../shapes/usual-home.ts';
import type { Grade } from '../shapes/working.ts';
import { SHIFT_DAYS } from '../tariff/series-prices.ts';
import { sumOf } from '../units/sums.ts';
import { normalNumbers } from '../year/day-pattern.ts';

export interface RestOfHome {
  /** Electricity for all but heating and hot water, by month of a year. */
  readonly monthlyKWh: readonly number[];
  readonly grade: Grade;
  readonly origin: Told;
  readonly peaks: HomePeaks;
  /** Mean kWh in each of its 48 half-hours by month, of weekdays and of weekends (2 × 12 × 48), where its own record shows them; a month of zeros has none. */
  readonly hours?: readonly HoursByMonth[];
  /** Use of a Monday to a Sunday over that of a mean day, where its own record shows days. */
  readonly weekdays?: readonly number[];
  /** Use of each day of its own record by day number, kWh. */
  readonly days?: ReadonlyMap<number, number>;
  /** How far days stray in each of 48 half-hours: standard deviation over mean, where its own record shows it. */
  readonly stray?: readonly number[];
}

/** 48 half-hours of a day for each of twelve months. */
type HoursByMonth = readonly (readonly number[])[];

/** Most kWh met in each half-hour of the day, by month (12 × 48), without heating; or why nobody can know it. */
export type HomePeaks =
  | { readonly known: true; readonly kWh: readonly (readonly number[])[]; readonly months: number }
  | { readonly known: false; readonly why: 'no-half-hours' | 'heating-in-record' };

/** A record shorter than this says too little of a year. Common practice, no source. */
const ENOUGH_DAYS = 300;
const ENOUGH_DAYS_OF_MONTH = 10;
const ENOUGH_OF_A_WEEKDAY = 40;

/**
 * The household's electricity beside heating [kWh by month]: its own record where that holds no heating, else as usual for its
 * people and floor area. From `mayHeatFrom` on, and since the household took an estimate, what is bought may hold heating
 * that has no meter of its own.
 */
export function restOfHome(household: Household, series: readonly Series[], mayHeatFrom?: CivilDate): RestOfHome {
  const { system, hotWaterFrom, otherHeat } = household.present;
  const heatElsewhere = hotWaterFrom !== 'immersion' && otherHeat !== 'electric heaters';
  const isPump = system === 'heat-pump';
  if (!heatElsewhere || !(isPump || isFuel(carrierOf(system))))
    return { ...usual(household), peaks: { known: false, why: 'heating-in-record' } };
  const { imports, isCut } = besideHeatPump(series, isPump ? EVER : earlier(mayHeatFrom, household.taken?.on));
  const peaks = isCut ? ({ known: false, why: 'heating-in-record' } as const) : peaksOf(imports);
  return { ...(recorded(imports) ?? usual(household)), peaks };
}

const earlier = (...days: readonly (CivilDate | undefined)[]): CivilDate | undefined =>
  days.filter((day) => day !== undefined).sort()[0];

function recorded(imports: readonly Series[]): Omit<RestOfHome, 'peaks'> | null {
  const { dayShape, weekShape } = imports.find((one) => one.dayShape) ?? {};
  const { dayStray } = imports.find((one) => one.dayStray) ?? {};
  const hours = weekShape ?? (dayShape && [dayShape, dayShape]);
  const spans = findRecord('direct-electric', imports)?.spans ?? [];
  const end = Math.max(...spans.map(({ first, days }) => first + days));
  const kWh = new Float64Array(12);
  const days = new Float64Array(12);
  const ofWeekday = new Float64Array(7);
  const weekdays = new Float64Array(7);
  const byDay = new Map<number, number>();
  let estimated = false;
  for (const span of spans) {
    for (let day = Math.max(span.first, end - 365); day < span.first + span.days; day++) {
      const month = monthOf(toCivilDate(day)) - 1;
      kWh[month]! += span.kWh / span.days;
      days[month]! += 1;
      estimated ||= span.estimated;
      if (span.days > 1) continue;
      ofWeekday[weekdayIndex(day)]! += span.kWh;
      weekdays[weekdayIndex(day)]! += 1;
      byDay.set(day, span.kWh);
    }
  }
  const allDays = sumOf(days);
  if (allDays < ENOUGH_DAYS) return null;
  const perDay = sumOf(kWh) / allDays;
  return {
    monthlyKWh: COMMON_MONTH_DAYS.map((count, month) => {
      const known = days[month]! >= ENOUGH_DAYS_OF_MONTH;
      return count * (known ? kWh[month]! / days[month]! : perDay);
    }),
    grade: estimated ? 'estimated' : 'measured',
    origin: tell('record-without-heating'),
    ...(hours ? { hours } : {}),
    ...(dayStray ? { stray: dayStray } : {}),
    days: byDay,
    ...(weekdays.every((count) => count >= ENOUGH_OF_A_WEEKDAY)
      ? { weekdays: Array.from(ofWeekday, (sum, day) => (perDay > 0 ? sum / weekdays[day]! / perDay : 1)) }
      : {}),
  };
}

/** Lights and appliances of so many people, more of them in the dark months: 1 + 0.157 cos(2π (m − 1.78) / 12), SAP 10.2 Appendix L, from memory. */
function usual({ home }: Household): Omit<RestOfHome, 'peaks'> {
  const areaM2 = home.floorAreaM2?.value ?? FLOOR_AREA_M2;
  const people = home.people?.value ?? peopleOfFloorArea(areaM2);
  const yearKWh = otherElectricityKWh(people, areaM2);
  const weights = COMMON_MONTH_DAYS.map(
    (days, month) => days * (1 + 0.157 * Math.cos((2 * Math.PI * (month + 1 - 1.78)) / 12)),
  );
  const whole = sumOf(weights);
  return {
    monthlyKWh: weights.map((weight) => (yearKWh * weight) / whole),
    grade: 'assumed',
    origin: tell('usual-appliances'),
  };
}

/** A month without readings takes the highest of all months at each half-hour. */
function peaksOf(imports: readonly Series[]): HomePeaks {
  const found = imports.find(({ dayPeaks }) => dayPeaks)?.dayPeaks;
  const isKnown = (halves: readonly number[]) => halves.some((kWh) => kWh > 0);
  const months = found?.filter(isKnown) ?? [];
  if (months.length === 0) return { known: false, why: 'no-half-hours' };
  const highest = Array.from({ length: 48 }, (_, half) => Math.max(...months.map((halves) => halves[half]!)));
  return { known: true, kWh: found!.map((halves) => (isKnown(halves) ? halves : highest)), months: months.length };
}

/**
 * What the home uses beside heating in each half-hour of a year [kWh]: its months are kept, its days, weekdays and hours differ
 * as its record shows, or as the published ones of a home without one. A day takes that of the same weekday whole times
 * 52 weeks before, as dated prices do, so that both keep what they have in common.
 */
export function restBySlot(
  { monthlyKWh, weekdays, days: own, hours, stray }: RestOfHome,
  slots: YearSlots,
  published: Pick<Reference['homeHours'], 'byMonth' | 'weekend' | 'stray'>,
): Float64Array {
  const usual = published.byMonth;
  const [workdays, saturdays, sundays] = hours
    ? [hours[0]!, hours[1]!, hours[1]!].map(withEveryMonth)
    : [usual, ...(published.weekend ?? [usual, usual])];
  const weightsOf = (first: number) => {
    const weekday = slots.weekday[first]!;
    return (weekday < SATURDAY ? workdays : weekday === SATURDAY ? saturdays : sundays)![slots.month[first]!]!;
  };
  const days = slots.dayStart.length - 1;
  const [usualOfMonth, ofMonth] = [new Float64Array(12), new Float64Array(12)];
  const dayKWh = new Float64Array(days);
  const newYear = toDayNumber(`${slots.year}-01-01`);
  for (let day = 0; day < days; day++) {
    const first = slots.dayStart[day]!;
    const month = slots.month[first]!;
    dayKWh[day] = weekdays ? weekdays[slots.weekday[first]!]! : hours ? 1 : sumOf(weightsOf(first));
    usualOfMonth[month]! += dayKWh[day]!;
  }
  for (let day = 0; day < days; day++) {
    const month = slots.month[slots.dayStart[day]!]!;
    const usualKWh = (monthlyKWh[month]! * dayKWh[day]!) / usualOfMonth[month]!;
    dayKWh[day] = (own && sameDayIn(own, newYear + day)) ?? usualKWh;
    ofMonth[month]! += dayKWh[day]!;
  }
  const kWh = new Float64Array(slots.count);
  for (let day = 0; day < days; day++) {
    const [start, end] = [slots.dayStart[day]!, slots.dayStart[day + 1]!];
    const month = slots.month[start]!;
    const weights = weightsOf(start);
    let sum = 0;
    for (let slot = start; slot < end; slot++) sum += weights[(slots.minute[slot]! / 30) | 0]!;
    const scale = ofMonth[month]! > 0 ? (monthlyKWh[month]! * dayKWh[day]!) / ofMonth[month]! / sum : 0;
    for (let slot = start; slot < end; slot++) kWh[slot] = scale * weights[(slots.minute[slot]! / 30) | 0]!;
  }
  return strayDays(kWh, slots, stray ?? new Array<number>(48).fill(published.stray.value));
}

const MOST_YEARS_BACK = 4;

function sameDayIn(days: ReadonlyMap<number, number>, day: number): number | undefined {
  for (let years = 0; years <= MOST_YEARS_BACK; years++) {
    const found = days.get(day - years * SHIFT_DAYS);
    if (found !== undefined) return found;
  }
  return undefined;
}

/**
 * Days that are not alike: each half-hour of a day is drawn about the mean of its month, weekdays and weekends apart, whose
 * sums it keeps. A mean day has no peaks, so that sun and battery would meet more of it than of any real one. Logarithms are
 * normal, common practice for one home's use; which day has which is made up, in one fixed order.
 */
function strayDays(kWh: Float64Array, slots: YearSlots, stray: readonly number[]): Float64Array {
  const normals = normalsOf(slots);
  const sigma = stray.map((share) => Math.sqrt(Math.log(1 + share ** 2)));
  const [wanted, found] = [new Float64Array(24 * 48), new Float64Array(24 * 48)];
  const placeOf = (slot: number) =>
    (slots.month[slot]! * 2 + Number(slots.weekday[slot]! >= SATURDAY)) * 48 + ((slots.minute[slot]! / 30) | 0);
  const drawn = new Float64Array(slots.count);
  for (let slot = 0; slot < slots.count; slot++) {
    drawn[slot] = kWh[slot]! * Math.exp(sigma[(slots.minute[slot]! / 30) | 0]! * normals[slot]!);
    wanted[placeOf(slot)]! += kWh[slot]!;
    found[placeOf(slot)]! += drawn[slot]!;
  }
  for (let slot = 0; slot < slots.count; slot++)
    if (drawn[slot]! > 0) drawn[slot]! *= wanted[placeOf(slot)]! / found[placeOf(slot)]!;
  return drawn;
}

const STRAY_SEED = 20_261_202;
const normalsKept = new WeakMap<YearSlots, Float64Array>();

function normalsOf(slots: YearSlots): Float64Array {
  const normals = normalsKept.get(slots) ?? new Float64Array(slots.count).map(normalNumbers(STRAY_SEED));
  normalsKept.set(slots, normals);
  return normals;
}

const SATURDAY = 5;

/** Weights of every month: one without readings takes the mean of the others, each of the same weight. */
function withEveryMonth(hours: HoursByMonth): HoursByMonth {
  const known = hours.filter((weights) => sumOf(weights) > 0);
  const usual = Array.from({ length: 48 }, (_, half) =>
    known.length > 0 ? known.reduce((sum, weights) => sum + weights[half]! / sumOf(weights), 0) : 1,
  );
  return hours.map((weights) => (sumOf(weights) > 0 ? weights : usual));
}
