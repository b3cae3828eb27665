import { inclVat } from '../../model/tariff/price.ts';
import type { TariffVersion } from '../../model/tariff/tariff.ts';
import { counted, listed, pence, poundsAndPence } from '../../words/numbers.ts';

/** A version in one line, VAT in it: "day 29.1 p, night 14.0 p, standing 54.8 p a day". */
export function tariffInShort(version: TariffVersion): string {
  const bands = version.bands.map((band) => {
    const price = pence(inclVat(version, band.pencePerKWh));
    return version.bands.length === 1 ? `${price} a unit` : `${band.name} ${price}`;
  });
  const byMonth = version.standingPencePerMonth;
  const standing = byMonth
    ? `${poundsAndPence(inclVat(version, byMonth))} a month`
    : `${pence(inclVat(version, version.standingPencePerDay))} a day`;
  const dated = version.series
    ? `Half-hourly prices for ${counted(version.series.days.length, 'day')}; beside them `
    : '';
  const steps = version.bands.some(({ blocks }) => blocks) ? ', after the first units' : '';
  const paid = version.exportPencePerKWh;
  const sent = paid === undefined ? '' : `, export ${pence(paid)}`;
  return `${dated}${listed(bands)}${steps}, standing charge ${standing}${sent}.`;
}
