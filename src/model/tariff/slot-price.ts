/** The price of every half-hour of a year, from one version of a tariff. */
import { isBankHoliday } from '../calendar/bank-holidays.ts';
import { clockTimeOf, compareDates, minuteOf, toDayNumber } from '../calendar/civil.ts';
import { offsetMinutes, startOfDay, winterOffsetMinutes, type YearSlots } from '../calendar/zone.ts';
import type { CivilDate } from '../shapes/dates.ts';
import type { PricedVersion } from '../shapes/tariff.ts';
import { withoutVat, withVat } from '../units/money.ts';
import type { RateBuckets } from '../year/share-out.ts';
import { BANK_HOLIDAY, bandAt, DAY_KINDS, dayKindsOf } from './band-times.ts';
import { sortIntoClasses } from './price-classes.ts';
import { seriesOverYear } from './series-prices.ts';

const SLOTS_PER_DAY = 48;
const known = new WeakMap<PricedVersion, WeakMap<YearSlots, RateBuckets>>();

/** Version that holds on a date: the newest that has begun; before the first one, the first stands in. */
export function versionOn<V extends Pick<PricedVersion, 'from'>>(
  tariff: { readonly versions: readonly V[] },
  date: CivilDate,
): V {
  const byDate = tariff.versions.toSorted((a, b) => compareDates(a.from, b.from));
  return byDate.findLast(({ from }) => from <= date) ?? byDate[0]!;
}

/** A price of the version with its VAT in it [pence]: p × (1 + rate) where the version's prices leave VAT out. */
export function inclVat(version: PricedVersion, pence: number): number {
  return version.vat.included ? pence : withVat(pence, version.vat.rate);
}

/** A price of the version without VAT [pence]: p / (1 + rate) where the version's prices have VAT in them. */
export function exclVat(version: PricedVersion, pence: number): number {
  return version.vat.included ? withoutVat(pence, version.vat.rate) : pence;
}

/** Standing charge of one day, VAT included [pence/day]; one by the month is shared over the days of a common year. */
export function standingPencePerDayInclVat(version: PricedVersion): number {
  const byMonth = version.standingPencePerMonth;
  return inclVat(version, version.standingPencePerDay + (byMonth === undefined ? 0 : (byMonth * 12) / 365));
}

/**
 * Sorts the half-hours of a year into the bands of a tariff version, prices with VAT [pence/kWh].
 * A slot has the price of the minute it begins at. Throws RangeError for a version that leaves a slot without price,
 * which `findTariffFaults` refuses beforehand. The answer is kept for the pair of version and slots.
 */
export function rateBuckets(version: PricedVersion, slots: YearSlots): RateBuckets {
  let ofVersion = known.get(version);
  if (!ofVersion) {
    ofVersion = new WeakMap();
    known.set(version, ofVersion);
  }
  const kept = ofVersion.get(slots);
  if (kept) return kept;
  const byBand: RateBuckets = {
    names: version.bands.map((band) => band.name),
    pencePerKWh: version.bands.map((band) => inclVat(version, band.pencePerKWh)),
    bucketOfSlot: sortSlots(version, slots),
  };
  const buckets = version.series ? priceBySeries(version, slots, byBand) : byBand;
  ofVersion.set(slots, buckets);
  return buckets;
}

const penceKept = new WeakMap<RateBuckets, Float64Array>();

/** The price of every half-hour [pence/kWh, VAT included]; kept with the buckets. */
export function penceBySlot(buckets: RateBuckets): Float64Array {
  const { penceOfSlot, bucketOfSlot, pencePerKWh } = buckets;
  const kept = penceOfSlot ?? penceKept.get(buckets);
  if (kept) return kept;
  const pence = new Float64Array(bucketOfSlot.length);
  for (let slot = 0; slot < pence.length; slot++) pence[slot] = pencePerKWh[bucketOfSlot[slot]!]!;
  penceKept.set(buckets, pence);
  return pence;
}

/** What a half-hour costs at least, at most and as their mean [pence/kWh, VAT included]. */
export function spanOfPence({ penceOfSlot, bucketOfSlot, pencePerKWh, names }: RateBuckets) {
  // Each half-hour that has a price of its own, else each band as often as it stands.
  const counts = new Uint32Array(names.length);
  if (!penceOfSlot) for (let slot = 0; slot < bucketOfSlot.length; slot++) counts[bucketOfSlot[slot]!]! += 1;
  const prices = penceOfSlot ?? pencePerKWh;
  let [least, most, sum, count] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, 0, 0];
  for (let i = 0; i < prices.length; i++) {
    const times = penceOfSlot ? 1 : counts[i]!;
    if (times === 0) continue;
    least = Math.min(least, prices[i]!);
    most = Math.max(most, prices[i]!);
    sum += times * prices[i]!;
    count += times;
  }
  return { least, most, mean: sum / count };
}

/** Each half-hour at its dated price; at that of its band on days that the series does not reach. */
function priceBySeries(version: PricedVersion, slots: YearSlots, byBand: RateBuckets): RateBuckets {
  const penceOfSlot = seriesOverYear(version.series!, slots);
  for (let slot = 0; slot < slots.count; slot++) {
    const dated = penceOfSlot[slot]!;
    penceOfSlot[slot] = Number.isNaN(dated) ? byBand.pencePerKWh[byBand.bucketOfSlot[slot]!]! : inclVat(version, dated);
  }
  return { ...sortIntoClasses(penceOfSlot), penceOfSlot };
}

/** Twelve months by seven or eight kinds of day by 48 half-hours are all the clock times a tariff can tell apart. */
function sortSlots(version: PricedVersion, slots: YearSlots): Uint8Array {
  const bucketOfSlot = new Uint8Array(slots.count);
  const hasTimes = version.bands.some((band) => band.times !== 'rest');
  if (!hasTimes) return bucketOfSlot;
  const kinds = dayKindsOf(version);
  const table = new Uint8Array(12 * kinds * SLOTS_PER_DAY);
  const ends = halvesThatBegin(version);
  for (let i = 0; i < table.length; i++) {
    const half = i % SLOTS_PER_DAY;
    // Between two times that the version names a band goes on.
    if (!ends[half]) {
      table[i] = table[i - 1]!;
      continue;
    }
    const kind = Math.floor(i / SLOTS_PER_DAY) % kinds;
    const month = Math.floor(i / SLOTS_PER_DAY / kinds) + 1;
    const band = bandAt(version, month, kind, half * 30);
    if (band < 0) throw new RangeError(`no price on ${DAY_KINDS[kind]}, month ${month}, ${clockTimeOf(half * 30)}`);
    table[i] = band;
  }
  const kindOfDay = kindsOfDays(version, slots);
  const rowOf = (month: number, day: number) => (month * kinds + kindOfDay[day]!) * SLOTS_PER_DAY;
  const { month, day, minute } = version.staysOnWinterTime ? onWinterTime(slots) : slots;
  for (let slot = 0; slot < slots.count; ) {
    const row = rowOf(month[slot]!, day[slot]!);
    // A whole day has the half-hours of its row one after the other; those of a clock change are looked up one by one.
    const last = slot + SLOTS_PER_DAY - 1;
    const isWhole = minute[slot] === 0 && day[last] === day[slot] && day[last + 1] !== day[slot];
    if (isWhole) bucketOfSlot.set(table.subarray(row, row + SLOTS_PER_DAY), slot);
    else bucketOfSlot[slot] = table[row + ((minute[slot]! / 30) | 0)]!;
    slot += isWhole ? SLOTS_PER_DAY : 1;
  }
  return bucketOfSlot;
}

/** The half-hours of a day at or before whose beginning a window of the version begins or ends; midnight is always one. */
function halvesThatBegin({ bands }: PricedVersion): Uint8Array {
  const begins = new Uint8Array(SLOTS_PER_DAY);
  begins[0] = 1;
  for (const { times } of bands) {
    if (times === 'rest') continue;
    for (const { from, to } of times)
      for (const time of [from, to]) begins[Math.ceil(minuteOf(time) / 30) % SLOTS_PER_DAY] = 1;
  }
  return begins;
}

/** The half-hours as a clock reads them that is never put forward; after the last midnight it reads the last day again. */
function onWinterTime(slots: YearSlots): Pick<YearSlots, 'month' | 'day' | 'minute'> {
  const first = startOfDay(slots.zone, toDayNumber(`${slots.year}-01-01`));
  const behind = (offsetMinutes(slots.zone, first) - winterOffsetMinutes(slots.zone, first)) / 30;
  const days = slots.dayStart.length - 1;
  const at = (slot: number) => Math.max(0, slot - behind);
  const day = Uint16Array.from({ length: slots.count }, (_, slot) => Math.min(days - 1, Math.floor(at(slot) / 48)));
  return {
    day,
    month: Uint8Array.from(day, (one) => slots.month[slots.dayStart[one]!]!),
    minute: Uint16Array.from(day, (_, slot) => (at(slot) % 48) * 30),
  };
}

function kindsOfDays({ bankHolidays }: PricedVersion, { year, dayStart, weekday }: YearSlots): Uint8Array {
  const newYear = toDayNumber(`${year}-01-01`);
  return Uint8Array.from({ length: dayStart.length - 1 }, (_, day) =>
    bankHolidays && isBankHoliday(newYear + day, bankHolidays) ? BANK_HOLIDAY : weekday[dayStart[day]!]!,
  );
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
