/** The prices of a bill as a tariff of the household's own. */

import { toCivilDate, toDayNumber } from '../../model/calendar/civil.ts';
import type { Bill } from '../../model/shapes/bill.ts';
import type { Tariff, TariffBand, TariffVersion } from '../../model/shapes/tariff.ts';
import { tell } from '../../model/shapes/told.ts';

/** A bill names its night rate and not its hours; common practice, no source. The person is told to put them right. */
const NIGHT = [{ from: '00:00', to: '07:00' }];

/** One version for each day on which some price of the bill begins; undefined where a price or the VAT is not known. */
export function tariffOfBill(bill: Bill, vatRate: number): Tariff | undefined {
  const { charges, meters, standing, fuel, vat, adjustments } = bill;
  const names = meters.map(({ name }) => name);
  const cheap = names.filter((name) => /night|off peak/.test(name));
  const isTwo = names.length === 2 && cheap.length === 1 && fuel === 'electricity';
  if (!isTwo && names.length !== 1) return undefined;
  // A levy on each unit belongs to its price; the bill gives it as a sum.
  if (adjustments.some(({ kind, vat: when }) => kind === 'charge' && when === 'before')) return undefined;
  const begins = [...new Set([bill.from, ...[...charges, ...standing].flatMap(({ from }) => from ?? [])])].toSorted();
  const holds = (from: string, line: { from?: string | undefined; to?: string | undefined }) =>
    (line.from ?? bill.from) <= from && (line.to ?? bill.to) > from;
  const versions = begins.map((from): TariffVersion | undefined => {
    const day = standing.filter((line) => holds(from, line)).at(-1);
    const bands = names.map((name): TariffBand | undefined => {
      const prices = new Set(
        charges.filter((line) => line.meter === name && holds(from, line)).map((line) => line.pencePerKWh),
      );
      // Steps by amount, or months whose days nothing says, are no price of one band.
      const price = prices.size === 1 ? [...prices][0] : undefined;
      const times = isTwo && cheap.includes(name) ? NIGHT : ('rest' as const);
      return price === undefined ? undefined : { name, pencePerKWh: price, times };
    });
    const pencePerDay = standing.length === 0 ? 0 : day?.pencePerDay;
    if (pencePerDay === undefined || !bands.every((band) => band !== undefined)) return undefined;
    return { from, standingPencePerDay: pencePerDay, vat: { rate: vatRate, included: vat.included }, bands };
  });
  if (!versions.every((version) => version !== undefined)) return undefined;
  // People call the file by their name; the tariff has the days of the bill instead.
  const name = `${bill.from} – ${toCivilDate(toDayNumber(bill.to) - 1)}`;
  return {
    id: `tariff-${fuel}`,
    name,
    fuel,
    origin: tell('from-bill', { file: name }),
    grade: isTwo ? 'assumed' : 'measured',
    versions,
  };
}
