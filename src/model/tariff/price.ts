/** The price of every half-hour of a year, from one version of a tariff. */
import type { YearSlots } from '../calendar/zone.ts';
import { withoutVat, withVat } from '../units/money.ts';
import { bandAt, clockTimeOf } from './band-times.ts';
import type { CivilDate, Tariff, TariffVersion } from './tariff.ts';

/** A year sorted into prices: `bucketOfSlot[slot]` points into `names` and `pencePerKWh` (VAT included). */
export interface RateBuckets {
  readonly names: readonly string[];
  readonly pencePerKWh: readonly number[];
  readonly bucketOfSlot: Uint8Array;
}

const SLOTS_PER_DAY = 48;
const known = new WeakMap<TariffVersion, WeakMap<YearSlots, RateBuckets>>();

/** Version that holds on a date: the newest that has begun; before the first one, the first stands in. */
export function versionOn(tariff: Tariff, date: CivilDate): TariffVersion {
  let found = tariff.versions[0]!;
  for (const version of tariff.versions) {
    const begun = version.from <= date;
    if (begun && (found.from > date || version.from >= found.from)) found = version;
    if (!begun && found.from > date && version.from < found.from) found = version;
  }
  return found;
}

/** A price of the version with its VAT in it [pence]: p × (1 + rate) where the version's prices leave VAT out. */
export function inclVat(version: TariffVersion, pence: number): number {
  return version.vat.included ? pence : withVat(pence, version.vat.rate);
}

/** A price of the version without VAT [pence]: p / (1 + rate) where the version's prices have VAT in them. */
export function exclVat(version: TariffVersion, pence: number): number {
  return version.vat.included ? withoutVat(pence, version.vat.rate) : pence;
}

/** Standing charge of one day, VAT included [pence/day]. */
export function standingPencePerDayInclVat(version: TariffVersion): number {
  return inclVat(version, version.standingPencePerDay);
}

/**
 * Sorts the half-hours of a year into the bands of a tariff version, prices with VAT [pence/kWh].
 * A slot has the price of the minute it begins at. Throws RangeError for a version that leaves a slot without price,
 * which `findTariffFaults` refuses beforehand. The answer is kept for the pair of version and slots.
 */
export function rateBuckets(version: TariffVersion, slots: YearSlots): RateBuckets {
  let ofVersion = known.get(version);
  if (!ofVersion) {
    ofVersion = new WeakMap();
    known.set(version, ofVersion);
  }
  const kept = ofVersion.get(slots);
  if (kept) return kept;
  const buckets: RateBuckets = {
    names: version.bands.map((band) => band.name),
    pencePerKWh: version.bands.map((band) => inclVat(version, band.pencePerKWh)),
    bucketOfSlot: sortSlots(version, slots),
  };
  ofVersion.set(slots, buckets);
  return buckets;
}

/** Twelve months by seven weekdays by 48 half-hours are all the clock times a tariff can tell apart. */
function sortSlots(version: TariffVersion, slots: YearSlots): Uint8Array {
  const bucketOfSlot = new Uint8Array(slots.count);
  const hasTimes = version.bands.some((band) => band.times !== 'rest');
  if (!hasTimes) return bucketOfSlot;
  const table = new Uint8Array(12 * 7 * SLOTS_PER_DAY);
  for (let i = 0; i < table.length; i++) {
    const half = i % SLOTS_PER_DAY;
    const weekday = Math.floor(i / SLOTS_PER_DAY) % 7;
    const month = Math.floor(i / SLOTS_PER_DAY / 7) + 1;
    const band = bandAt(version, month, weekday, half * 30);
    if (band < 0) throw new RangeError(`no price for weekday ${weekday}, month ${month}, ${clockTimeOf(half * 30)}`);
    table[i] = band;
  }
  const { month, weekday, minute } = slots;
  for (let slot = 0; slot < slots.count; slot++) {
    const half = Math.floor(minute[slot]! / 30);
    bucketOfSlot[slot] = table[(month[slot]! * 7 + weekday[slot]!) * SLOTS_PER_DAY + half]!;
  }
  return bucketOfSlot;
}

/** Energy of the year by month and price [kWh], `kWh[month × prices + price]` with months from 0. */
export function sumByBucket(buckets: RateBuckets, slots: YearSlots, kWhBySlot: ArrayLike<number>): Float64Array {
  const width = buckets.names.length;
  const sums = new Float64Array(12 * width);
  const { bucketOfSlot } = buckets;
  const { month } = slots;
  for (let slot = 0; slot < slots.count; slot++) {
    const at = month[slot]! * width + bucketOfSlot[slot]!;
    sums[at] = sums[at]! + kWhBySlot[slot]!;
  }
  return sums;
}
