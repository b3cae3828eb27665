/** At which half-hours of the year a way of heating buys: shares by price band, and the heaviest day of each month. */

import type { YearSlots } from '../calendar/zone.ts';
import type { Demand } from '../shapes/appraisal.ts';
import type { WaterHours } from '../shapes/household.ts';
import { sumOf } from '../units/sums.ts';
import {
  ALL_DAY,
  CYLINDER_BOOST_SHARE,
  CYLINDER_WINDOWS,
  DRAWN_WATER,
  EVENING,
  NIGHT,
  STEADY_HEATING,
  STORAGE_BOOST_SHARE,
  WAKING_HOURS,
} from '../year/day-profiles.ts';
import {
  type BandShares,
  blend,
  cheapestHours,
  type DayUse,
  daysFromMonths,
  meanDays,
  overSlots,
  type RateBuckets,
  shareOut,
  sharesByMonth,
} from '../year/share-out.ts';
import type { Hours, Plan } from './plan.ts';
import { type HeaviestDays, heaviestOf, heaviestOfSlots } from './power-charge.ts';

/** The year over which is bought: half-hours, and the share of each day in heat for rooms and in hot water. */
export interface BuyingYear {
  readonly slots: YearSlots;
  readonly spaceShare: ArrayLike<number>;
  readonly demand: Demand;
}

export interface UseShares {
  readonly space: BandShares;
  readonly water: BandShares;
  readonly steady: BandShares;
}

export type LaidHours = ReturnType<typeof layHours>;

/** Lays uses over one year; what ways of heating or tariffs have in common is sorted into bands once. */
export function layHours({ slots, spaceShare, demand }: BuyingYear) {
  const waterShare = daysFromMonths(demand.monthlyWaterKWh, slots);
  // Days of a month are alike to a price: which of its days is cold is made up, and must not favour a weekday.
  const spaceByMonth = daysFromMonths([...sharesByMonth(spaceShare, slots)], slots);
  const evenShare = new Float64Array(slots.dayStart.length - 1).fill(1 / (slots.dayStart.length - 1));
  const kept = new WeakMap<RateBuckets, Map<string, UseShares>>();

  /** Shares of rooms, hot water and standby at some prices, by the hours of the system. */
  function sharesOf(hours: Hours, waterHours: WaterHours, buckets: RateBuckets): UseShares {
    const ofBuckets = kept.get(buckets) ?? new Map<string, UseShares>();
    kept.set(buckets, ofBuckets);
    const key = `${hours} ${waterHours}`;
    const known = ofBuckets.get(key);
    if (known) return known;
    const lay = (days: ArrayLike<number>, weights: readonly number[]) => shareOut(days, weights, slots, buckets);
    const steady = lay(evenShare, ALL_DAY);
    const blended = (days: ArrayLike<number>, [first, second, share]: TwoProfiles) =>
      share > 0 ? blend(lay(days, first), lay(days, second), share) : lay(days, first);
    const { space, water } = hoursOf(hours, waterHours, buckets, slots);
    const shares = { space: blended(spaceByMonth, space), water: blended(waterShare, water), steady };
    ofBuckets.set(key, shares);
    return shares;
  }

  const keptLines = new WeakMap<Float64Array, Float64Array>();

  /**
   * A use that was worked out by the half-hour. Which day of a month is cold is made up, so each half-hour of the clock has
   * the mean of its month; only the weekly heating of the cylinder has a weekday of its own.
   */
  function lineOf(bySlot: NonNullable<Plan['bySlot']>, name: keyof typeof bySlot): Float64Array {
    if (name === 'pasteurisation') return bySlot[name];
    const line = keptLines.get(bySlot[name]) ?? meanDays(bySlot[name], slots);
    keptLines.set(bySlot[name], line);
    return line;
  }

  /** What a plan buys of electricity, laid over days and the half-hours of the clock. */
  function electricityOf(plan: Plan, buckets: RateBuckets, spaceDays: ArrayLike<number>): DayUse[] {
    const hours = hoursOf(plan.hours, waterHoursOf(plan, buckets), buckets, slots);
    const space = { dayShare: spaceDays, weights: mixed(hours.space) };
    const water = { dayShare: waterShare, weights: mixed(hours.water) };
    if (plan.carrier !== 'electricity')
      return [
        { kWh: plan.pumpKWh, ...space },
        { kWh: plan.electricWaterKWh, ...water },
      ];
    const even = { dayShare: evenShare, weights: ALL_DAY };
    const usual = { standby: even, pasteurisation: water, 'source-pump': space, backup: space, circulator: space };
    const extras = plan.extras.map(({ name, kWh }) => ({ kWh, ...usual[name] }));
    return [{ kWh: plan.spaceKWh, ...space }, { kWh: plan.waterKWh, ...water }, ...extras];
  }

  /** Electricity on the heaviest day of each month. */
  const heaviest = (plan: Plan, buckets: RateBuckets): HeaviestDays =>
    plan.bySlot
      ? heaviestOfSlots(Object.values(plan.bySlot), slots)
      : heaviestOf(electricityOf(plan, buckets, spaceShare), slots);

  /** Electricity of every half-hour of the year [kWh] at its usual hours, or at those worked out; the days of a month are alike, as for its price. */
  function bySlot(plan: Plan, buckets: RateBuckets): Float64Array {
    const { bySlot: worked } = plan;
    if (!worked) return overSlots(electricityOf(plan, buckets, spaceByMonth), slots);
    const { water, ...lines } = worked;
    const atNight = plan.waterHours === 'night';
    const byLine = [...Object.values(lines), ...(atNight ? [] : [water])];
    const sum = meanDays(
      water.map((_, slot) => byLine.reduce((kWh, line) => kWh + line[slot]!, 0)),
      slots,
    );
    // The cheap hours of a night are the tariff's to say.
    const { water: hours } = hoursOf(plan.hours, 'night', buckets, slots);
    const night = atNight
      ? overSlots([{ kWh: plan.waterKWh, dayShare: waterShare, weights: mixed(hours) }], slots)
      : null;
    return night ? sum.map((kWh, slot) => kWh + night[slot]!) : sum;
  }

  /** When hot water is made: as somebody has said, else a heat pump's by schedule, that of electricity in its cheap night, any other as drawn. */
  function waterHoursOf(plan: Plan, buckets: RateBuckets): WaterHours {
    if (plan.waterHours) return plan.waterHours;
    if (plan.hours === 'heat-pump') return 'schedule';
    if (plan.hours === 'storage') return 'night';
    const electric = plan.carrier === 'electricity' || plan.electricWaterKWh > 0;
    return electric && cheapestHours(slots, buckets) ? 'night' : 'drawn';
  }

  return { sharesOf, lineOf, waterHoursOf, heaviest, bySlot };
}

/** At which half-hours of the day rooms and hot water are bought, as weights. */
function hoursOf(hours: Hours, waterHours: WaterHours, buckets: RateBuckets, slots: YearSlots) {
  const night = cheapestHours(slots, buckets) ?? NIGHT;
  const space: { readonly [hours in Hours]: TwoProfiles } = {
    'heat-pump': [STEADY_HEATING, ALL_DAY, 0],
    panels: [WAKING_HOURS, ALL_DAY, 0],
    boiler: [WAKING_HOURS, ALL_DAY, 0],
    storage: [night, EVENING, STORAGE_BOOST_SHARE],
  };
  const water: { readonly [hours in WaterHours]: TwoProfiles } = {
    schedule: [CYLINDER_WINDOWS, ALL_DAY, 0],
    night: [night, DRAWN_WATER, CYLINDER_BOOST_SHARE],
    drawn: [DRAWN_WATER, ALL_DAY, 0],
  };
  return { space: space[hours], water: water[waterHours] };
}

/** Weights of the half-hours of a day, and others that the share of the third place goes by. */
type TwoProfiles = readonly [first: readonly number[], second: readonly number[], secondShare: number];

/** The two as one set of weights that sums to 1. */
function mixed([first, second, secondShare]: TwoProfiles): number[] {
  return first.map(
    (weight, i) => (weight * (1 - secondShare)) / sumOf(first) + (second[i]! * secondShare) / sumOf(second),
  );
}
