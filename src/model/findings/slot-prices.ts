/** Price and band of every reading of a meter's days. */
import { toCivilDate } from '../calendar/civil.ts';
import type { TariffVersion } from '../shapes/tariff.ts';
import { bandAt, dayKindOn } from '../tariff/band-times.ts';
import { inclVat } from '../tariff/slot-price.ts';
import type { MeterDays } from './meter-days.ts';

/**
 * Band of each reading, by its beginning on the clock and the kind of its day, bank holidays as the version keeps them;
 * −1 where the tariff has no price.
 */
export function bandsOf(days: MeterDays, version: TariffVersion): Int8Array {
  const bands = new Int8Array(days.kWh.length);
  const known = new Map<number, Int8Array>();
  for (let day = 0; day < days.count; day++) {
    const number = days.dayNumber[day]!;
    const month = Number(toCivilDate(number).slice(5, 7));
    const kind = dayKindOn(version, number);
    const key = month * 8 + kind;
    let ofDay = known.get(key);
    if (!ofDay) {
      ofDay = Int8Array.from({ length: days.perDay }, (_, i) => bandAt(version, month, kind, i * days.hours * 60));
      known.set(key, ofDay);
    }
    bands.set(ofDay, day * days.perDay);
  }
  return bands;
}

/** Prices of the bands, VAT included, p/kWh. */
export const bandPrices = (version: TariffVersion): number[] =>
  version.bands.map(({ pencePerKWh }) => inclVat(version, pencePerKWh));
