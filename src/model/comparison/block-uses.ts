/** Stepped blocks in a comparison: the units of each month, all uses together, sorted into the steps of their price. */

import type { YearSlots } from '../calendar/zone.ts';
import type { PricedVersion } from '../shapes/tariff.ts';
import { tell } from '../shapes/told.ts';
import { blocksOf, splitIntoBlocks } from '../tariff/blocks.ts';
import { inclVat, rateBuckets, sumByBucket } from '../tariff/slot-price.ts';
import { sumOf } from '../units/sums.ts';
import type { BandShares, RateBuckets } from '../year/share-out.ts';
import type { Rates, Use } from './uses.ts';

/** The days of the year in each of its months. */
function daysByMonth({ month, dayStart }: YearSlots): number[][] {
  const days: number[][] = Array.from({ length: 12 }, () => []);
  for (let day = 0; day + 1 < dayStart.length; day++) days[month[dayStart[day]!]!]!.push(day);
  return days;
}

/** Units of each day and band [kWh], `kWh[day × bands + band]`. */
function byDayAndBucket(
  { names, bucketOfSlot }: RateBuckets,
  { day, count, dayStart }: YearSlots,
  kWhBySlot: Float64Array,
) {
  const sums = new Float64Array((dayStart.length - 1) * names.length);
  for (let slot = 0; slot < count; slot++) sums[day[slot]! * names.length + bucketOfSlot[slot]!]! += kWhBySlot[slot]!;
  return sums;
}

/** For each day its part of its month in these amounts by day, alike where a month has none. */
export function dayShares(byDay: ArrayLike<number>, slots: YearSlots): Float64Array {
  const shares = new Float64Array(byDay.length);
  for (const days of daysByMonth(slots)) {
    const sum = days.reduce((total, day) => total + byDay[day]!, 0);
    for (const day of days) shares[day] = sum > 0 ? byDay[day]! / sum : 1 / days.length;
  }
  return shares;
}

/**
 * The uses with their units shared over the steps of a version's bands; the same uses where it has none.
 * A month's units in a band fill the steps from the first on [kWh], and every use has its part of each step, in
 * proportion. A threshold by the day is filled day by day, each use over the days of its month as it says. Other use of the home [kWh by half-hour] fills the steps first, so heating pays what comes on top. What a change of use does
 * beyond that is reckoned at the mean price of the month.
 */
export function splitByBlocks(
  uses: readonly Use[],
  rates: Rates,
  version: PricedVersion,
  slots: YearSlots,
  otherKWh?: Float64Array,
): readonly Use[] {
  if (version.series || !version.bands.some(({ blocks }) => blocks)) return uses;
  const daysOf = daysByMonth(slots);
  const steps = version.bands.map(blocksOf);
  const first = steps.map((_, band) => steps.slice(0, band).reduce((sum, { length }) => sum + length, 0));
  const width = steps.reduce((sum, { length }) => sum + length, 0);
  const own = uses.filter((use) => use.rates === rates);
  /** Share of a month's units of a band in each of its steps, `byStep[month × width + step]`. */
  const byStep = new Float64Array(12 * width);
  const times = rates.times ?? 1;
  const buckets = rateBuckets(version, slots);
  const other = otherKWh && sumByBucket(buckets, slots, otherKWh);
  const otherByDay =
    otherKWh && version.bands.some(({ blocks }) => blocks?.per === 'day') && byDayAndBucket(buckets, slots, otherKWh);
  const bands = version.bands.length;
  for (let month = 0; month < 12; month++) {
    version.bands.forEach(({ blocks }, band) => {
      const ofMonth = own.map(({ kWh, shares }) => kWh * shares.byMonthBand[month * shares.bands + band]!);
      const kWh = sumOf(ofMonth);
      const spans =
        blocks?.per === 'day'
          ? daysOf[month]!.map((day) => ({
              before: otherByDay ? otherByDay[day * bands + band]! : 0,
              kWh: own.reduce(
                (sum, { dayShare }, i) => sum + ofMonth[i]! * (dayShare ? dayShare[day]! : 1 / daysOf[month]!.length),
                0,
              ),
            }))
          : [{ before: other?.[month * bands + band] ?? 0, kWh }];
      const parts = steps[band]!.map(() => 0);
      for (const { before, kWh: more } of spans) {
        const filled = splitIntoBlocks(before, steps[band]!);
        splitIntoBlocks(before + more, steps[band]!).forEach((part, step) => {
          parts[step]! += part - filled[step]!;
        });
      }
      parts.forEach((part, step) => {
        byStep[month * width + first[band]! + step] = kWh > 0 ? part / kWh : step === 0 ? 1 : 0;
      });
    });
  }
  const stepped: Rates = {
    ...rates,
    names: steps.flatMap((list) => list.map(({ name }) => tell('rate-at', { what: rates.what, when: name }))),
    pencePerKWh: steps.flatMap((list) => list.map(({ pencePerKWh }) => inclVat(version, pencePerKWh) * times)),
  };
  const spread = (shares: BandShares): BandShares => {
    const byMonthBand = new Float64Array(12 * width);
    const byBand = new Float64Array(width);
    for (let month = 0; month < 12; month++) {
      for (let band = 0; band < steps.length; band++) {
        for (let step = 0; step < steps[band]!.length; step++) {
          const at = first[band]! + step;
          const share = shares.byMonthBand[month * shares.bands + band]! * byStep[month * width + at]!;
          byMonthBand[month * width + at] = share;
          byBand[at]! += share;
        }
      }
    }
    return { bands: width, byMonthBand, byMonth: shares.byMonth, byBand };
  };
  return uses.map((use) => (use.rates === rates ? { ...use, shares: spread(use.shares), rates: stepped } : use));
}
