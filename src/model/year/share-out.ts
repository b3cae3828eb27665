/** A year's energy shared out over half-hours, and gathered again by month and price band. */

import type { YearSlots } from '../calendar/zone.ts';
import type { Wording } from '../shapes/told.ts';
import { sumOf } from '../units/sums.ts';

/** A year sorted into prices: `bucketOfSlot[slot]` points into `names` and `pencePerKWh` (VAT included). */
export interface RateBuckets {
  readonly names: readonly Wording[];
  readonly pencePerKWh: readonly number[];
  readonly bucketOfSlot: Uint8Array;
  /** Price of each half-hour where it is dated [pence/kWh, VAT included]; the buckets are then classes of price. */
  readonly penceOfSlot?: Float64Array;
}

/** Shares of one year's use; every number is a share of the whole, and each list sums to 1. */
export interface BandShares {
  readonly bands: number;
  /** `byMonthBand[month × bands + band]`, months from 0. */
  readonly byMonthBand: Float64Array;
  readonly byMonth: Float64Array;
  readonly byBand: Float64Array;
  /** Share × price of its own half-hours [pence/kWh], laid out as the shares, where prices are dated. */
  readonly penceByMonthBand?: Float64Array;
}

/** One use of a year: energy [kWh], the share of each day, and 48 weights of the half-hours of a day. */
export interface DayUse {
  readonly kWh: number;
  readonly dayShare: ArrayLike<number>;
  readonly weights: readonly number[];
}

/** Months of the year from its days: `dayShare` sums to 1. */
export function sharesByMonth(dayShare: ArrayLike<number>, slots: YearSlots): Float64Array {
  const byMonth = new Float64Array(12);
  for (let day = 0; day < dayShare.length; day++) byMonth[slots.month[slots.dayStart[day]!]!]! += dayShare[day]!;
  return byMonth;
}

/** Shares of the days where every month's is known and its days are alike; uniform where the year is empty. */
export function daysFromMonths(monthly: readonly number[], slots: YearSlots): Float64Array {
  const days = slots.dayStart.length - 1;
  const daysOf = new Float64Array(12);
  for (let day = 0; day < days; day++) daysOf[slots.month[slots.dayStart[day]!]!]! += 1;
  const total = sumOf(monthly);
  return Float64Array.from({ length: days }, (_, day) => {
    const month = slots.month[slots.dayStart[day]!]!;
    return total > 0 ? monthly[month]! / total / daysOf[month]! : 1 / days;
  });
}

/**
 * Shares by month and price band of a use with the given share of each day and 48 weights of the half-hours of the clock,
 * the same all year. A day's share is laid over the half-hours that it has, 46, 48 or 50, so that nothing is lost at a
 * clock change.
 */
export function shareOut(
  dayShare: ArrayLike<number>,
  weights: readonly number[],
  slots: YearSlots,
  buckets: RateBuckets,
): BandShares {
  const bands = buckets.names.length;
  if (bands === 1 && !buckets.penceOfSlot) {
    const byMonth = sharesByMonth(dayShare, slots);
    return { bands, byMonthBand: byMonth, byMonth, byBand: Float64Array.of(sumOf(byMonth)) };
  }
  const byMonthBand = new Float64Array(12 * bands);
  const { bucketOfSlot, penceOfSlot } = buckets;
  const penceByMonthBand = penceOfSlot && new Float64Array(12 * bands);
  const sumOfDay = sumOf(weights);
  const byClock = ofMonths(dayShare, slots) ? clockOfBuckets(buckets, slots) : null;
  for (let month = 0; byClock && month < 12; month++) {
    const share = dayShare[byClock.firstDay[month]!]! / sumOfDay;
    if (share === 0) continue;
    for (let band = 0; band < bands; band++) {
      const at = month * bands + band;
      for (let half = 0; half < 48; half++) {
        const days = byClock.halves[at * 48 + half]!;
        if (days === 0) continue;
        byMonthBand[at]! += share * weights[half]! * days;
        if (penceByMonthBand) penceByMonthBand[at]! += share * weights[half]! * byClock.pence![at * 48 + half]!;
      }
    }
  }
  const days = byClock?.otherDays ?? Array.from(dayShare, (_, day) => day);
  for (const day of days) {
    const start = slots.dayStart[day]!;
    const end = slots.dayStart[day + 1]!;
    let sum = 0;
    for (let slot = start; slot < end; slot++) sum += weights[(slots.minute[slot]! / 30) | 0]!;
    const month = slots.month[start]! * bands;
    for (let slot = start; slot < end; slot++) {
      const share = (dayShare[day]! * weights[(slots.minute[slot]! / 30) | 0]!) / sum;
      const at = month + bucketOfSlot[slot]!;
      byMonthBand[at]! += share;
      if (penceByMonthBand) penceByMonthBand[at]! += share * penceOfSlot![slot]!;
    }
  }
  return gather(byMonthBand, bands, penceByMonthBand);
}

/** Whether all days of each month are alike. */
function ofMonths(dayShare: ArrayLike<number>, { month, dayStart }: YearSlots): boolean {
  for (let day = 1; day < dayShare.length; day++)
    if (dayShare[day] !== dayShare[day - 1] && month[dayStart[day]!] === month[dayStart[day - 1]!]) return false;
  return true;
}

/** How often, over the days of 48 half-hours, each of them lies in each bucket: `[(month × buckets + bucket) × 48 + half]`. */
interface ClockOfBuckets {
  readonly slots: YearSlots;
  readonly halves: Float64Array;
  /** Sum of the prices where they are dated. */
  readonly pence: Float64Array | undefined;
  readonly firstDay: Uint16Array;
  /** Days on which the clock changes. */
  readonly otherDays: readonly number[];
}
const clocksKept = new WeakMap<RateBuckets, ClockOfBuckets>();

function clockOfBuckets(buckets: RateBuckets, slots: YearSlots): ClockOfBuckets {
  const kept = clocksKept.get(buckets);
  if (kept?.slots === slots) return kept;
  const { bucketOfSlot, penceOfSlot, names } = buckets;
  const halves = new Float64Array(12 * names.length * 48);
  const pence = penceOfSlot && new Float64Array(halves.length);
  const firstDay = new Uint16Array(12);
  const otherDays: number[] = [];
  for (let day = slots.dayStart.length - 2; day >= 0; day--) {
    const start = slots.dayStart[day]!;
    const month = slots.month[start]!;
    firstDay[month] = day;
    if (slots.dayStart[day + 1]! - start !== 48) {
      otherDays.push(day);
      continue;
    }
    for (let half = 0; half < 48; half++) {
      const at = (month * names.length + bucketOfSlot[start + half]!) * 48 + half;
      halves[at]! += 1;
      if (pence) pence[at]! += penceOfSlot![start + half]!;
    }
  }
  const found = { slots, halves, pence, firstDay, otherDays };
  clocksKept.set(buckets, found);
  return found;
}

/** The same use with all days of a month alike: each half-hour of the clock has its month's mean [kWh]. */
export function meanDays(kWhBySlot: Float64Array, slots: YearSlots): Float64Array {
  const sums = new Float64Array(12 * 48);
  const counts = new Float64Array(12 * 48);
  const clockOf = (slot: number) => slots.month[slot]! * 48 + ((slots.minute[slot]! / 30) | 0);
  for (let slot = 0; slot < slots.count; slot++) {
    sums[clockOf(slot)]! += kWhBySlot[slot]!;
    counts[clockOf(slot)]! += 1;
  }
  return kWhBySlot.map((_, slot) => sums[clockOf(slot)]! / counts[clockOf(slot)]!);
}

/** Shares by month and price band of a use known by the half-hour [kWh]; null where nothing is used. */
export function sharesOfSlots(kWh: Float64Array, slots: YearSlots, buckets: RateBuckets): BandShares | null {
  const bands = buckets.names.length;
  const { penceOfSlot, bucketOfSlot } = buckets;
  const { month, count } = slots;
  const byMonthBand = new Float64Array(12 * bands);
  for (let slot = 0; slot < count; slot++) byMonthBand[month[slot]! * bands + bucketOfSlot[slot]!]! += kWh[slot]!;
  const penceByMonthBand = penceOfSlot && new Float64Array(12 * bands);
  if (penceByMonthBand)
    for (let slot = 0; slot < count; slot++)
      penceByMonthBand[month[slot]! * bands + bucketOfSlot[slot]!]! += kWh[slot]! * penceOfSlot[slot]!;
  const total = sumOf(byMonthBand);
  if (!(total > 0)) return null;
  const shared = (sums: Float64Array) => sums.map((sum) => sum / total);
  return gather(shared(byMonthBand), bands, penceByMonthBand && shared(penceByMonthBand));
}

/** Uses laid over the half-hours that their days have [kWh], so that nothing is lost at a clock change. */
export function overSlots(uses: readonly DayUse[], slots: YearSlots): Float64Array {
  const kWh = new Float64Array(slots.count);
  for (const { kWh: ofYear, dayShare, weights } of uses) {
    for (let day = 0; day < dayShare.length; day++) {
      const [start, end] = [slots.dayStart[day]!, slots.dayStart[day + 1]!];
      let sum = 0;
      for (let slot = start; slot < end; slot++) sum += weights[(slots.minute[slot]! / 30) | 0]!;
      const scale = sum > 0 ? (ofYear * dayShare[day]!) / sum : 0;
      for (let slot = start; slot < end; slot++) kWh[slot]! += scale * weights[(slots.minute[slot]! / 30) | 0]!;
    }
  }
  return kWh;
}

/** Two uses as one, with the share of the second. */
export function blend(first: BandShares, second: BandShares, secondShare: number): BandShares {
  const mix = (a: Float64Array, b: Float64Array) =>
    a.map((share, i) => share * (1 - secondShare) + b[i]! * secondShare);
  const pence =
    first.penceByMonthBand && second.penceByMonthBand && mix(first.penceByMonthBand, second.penceByMonthBand);
  return gather(mix(first.byMonthBand, second.byMonthBand), first.bands, pence);
}

function gather(byMonthBand: Float64Array, bands: number, penceByMonthBand?: Float64Array): BandShares {
  const byMonth = new Float64Array(12);
  const byBand = new Float64Array(bands);
  for (let month = 0; month < 12; month++) {
    for (let band = 0; band < bands; band++) {
      const share = byMonthBand[month * bands + band]!;
      byMonth[month]! += share;
      byBand[band]! += share;
    }
  }
  return { bands, byMonthBand, byMonth, byBand, ...(penceByMonthBand ? { penceByMonthBand } : {}) };
}

/** Weights that are 1 in the half-hours of a tariff's cheapest band and 0 elsewhere; null where there is no such night. */
export function cheapestHours(slots: YearSlots, buckets: RateBuckets): readonly number[] | null {
  if (buckets.names.length < 2) return null;
  const prices = buckets.pencePerKWh;
  const cheapest = prices.indexOf(Math.min(...prices));
  const days = slots.dayStart.length - 1;
  const { halves, otherDays } = clockOfBuckets(buckets, slots);
  const counts = new Array<number>(48).fill(0);
  for (let month = 0; month < 12; month++)
    for (let half = 0; half < 48; half++) counts[half]! += halves[(month * prices.length + cheapest) * 48 + half]!;
  for (const day of otherDays)
    for (let slot = slots.dayStart[day]!; slot < slots.dayStart[day + 1]!; slot++)
      if (buckets.bucketOfSlot[slot] === cheapest) counts[(slots.minute[slot]! / 30) | 0]! += 1;
  const weights = counts.map((count) => (count > days / 2 ? 1 : 0));
  const halfHours = weights.reduce<number>((sum, weight) => sum + weight, 0);
  return halfHours >= LEAST_NIGHT && halfHours <= MOST_NIGHT ? weights : null;
}
/** A charge of storage heaters needs 4 hours at least; more than 12 is no night. Half-hours. */
const LEAST_NIGHT = 8;
const MOST_NIGHT = 24;
