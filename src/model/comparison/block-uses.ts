/** Stepped blocks in a comparison: the units of each month, all uses together, sorted into the steps of their price. */
import type { YearSlots } from '../calendar/zone.ts';
import type { PricedVersion } from '../shapes/tariff.ts';
import { tell } from '../shapes/told.ts';
import { blocksOf, splitIntoBlocks } from '../tariff/blocks.ts';
import { inclVat, rateBuckets, sumByBucket } from '../tariff/slot-price.ts';
import type { BandShares } from '../year/share-out.ts';
import type { Rates, Use } from './uses.ts';

/**
 * The uses with their units shared over the steps of a version's bands; the same uses where it has none.
 * A month's units in a band fill the steps from the first on [kWh], and every use has its part of each step, in
 * proportion. A threshold by the day counts as often as the month has days. Other use of the home [kWh by half-hour] fills
 * the steps first, so heating pays what comes on top. What a change of use does
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
  const daysOf = new Float64Array(12);
  for (let day = 0; day + 1 < slots.dayStart.length; day++) daysOf[slots.month[slots.dayStart[day]!]!]! += 1;
  const steps = version.bands.map(blocksOf);
  const first = steps.map((_, band) => steps.slice(0, band).reduce((sum, { length }) => sum + length, 0));
  const width = steps.reduce((sum, { length }) => sum + length, 0);
  const own = uses.filter((use) => use.rates === rates);
  /** Share of a month's units of a band in each of its steps, `byStep[month × width + step]`. */
  const byStep = new Float64Array(12 * width);
  const times = rates.times ?? 1;
  const other = otherKWh && sumByBucket(rateBuckets(version, slots), slots, otherKWh);
  for (let month = 0; month < 12; month++) {
    version.bands.forEach(({ blocks }, band) => {
      const kWh = own.reduce((sum, { kWh, shares }) => sum + kWh * shares.byMonthBand[month * shares.bands + band]!, 0);
      const count = blocks?.per === 'day' ? daysOf[month]! : 1;
      const before = other?.[month * version.bands.length + band] ?? 0;
      const filled = splitIntoBlocks(before, steps[band]!, count);
      const parts = splitIntoBlocks(before + kWh, steps[band]!, count).map((part, step) => part - filled[step]!);
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
