/** Price and band of every reading of a meter's days. */
import { monthOf, toCivilDate } from '../calendar/civil.ts';
import { offsetMinutes, startOfDay, winterOffsetMinutes } from '../calendar/zone.ts';
import type { TariffVersion } from '../shapes/tariff.ts';
import { bandAt, dayKindOn, MINUTES_PER_DAY } from '../tariff/band-times.ts';
import { inclVat } from '../tariff/slot-price.ts';
import type { MeterDays } from './meter-days.ts';

/**
 * Band of each reading, by its beginning on the clock and the kind of its day, bank holidays as the version keeps them;
 * −1 where the tariff has no price. A version whose meter stays on winter time is read by that, if the zone is known.
 */
export function bandsOf(days: MeterDays, version: TariffVersion, zone?: string): Int8Array {
  const bands = new Int8Array(days.kWh.length);
  const known = new Map<string, Int8Array>();
  const dayOf = (number: number) => ({ month: monthOf(toCivilDate(number)), kind: dayKindOn(version, number) });
  for (let day = 0; day < days.count; day++) {
    const number = days.dayNumber[day]!;
    const ahead = zone !== undefined && version.staysOnWinterTime ? summerMinutes(zone, number) : 0;
    const own = dayOf(number);
    // In the first hour of a summer day the meter is still on the day before.
    const before = ahead > 0 ? dayOf(number - 1) : own;
    const key = `${own.month} ${own.kind} ${before.month} ${before.kind} ${ahead}`;
    let ofDay = known.get(key);
    if (!ofDay) {
      ofDay = Int8Array.from({ length: days.perDay }, (_, i) => {
        const minute = i * days.hours * 60 - ahead;
        const { month, kind } = minute >= 0 ? own : before;
        return bandAt(version, month, kind, minute >= 0 ? minute : MINUTES_PER_DAY + minute);
      });
      known.set(key, ofDay);
    }
    bands.set(ofDay, day * days.perDay);
  }
  return bands;
}

/** By how many minutes the clock on the wall is ahead of winter time at noon of a day. */
function summerMinutes(zone: string, dayNumber: number): number {
  const noon = startOfDay(zone, dayNumber) + 12 * 3_600_000;
  return offsetMinutes(zone, noon) - winterOffsetMinutes(zone, noon);
}

/** Prices of the bands, VAT included, p/kWh. */
export const bandPrices = (version: TariffVersion): number[] =>
  version.bands.map(({ pencePerKWh }) => inclVat(version, pencePerKWh));
