import { inclVat } from '../../model/tariff/price.ts';
import type { TariffVersion } from '../../model/tariff/tariff.ts';
import { listed, pence } from '../../words/numbers.ts';

/** A version in one line, VAT in it: "day 29.1 p, night 14.0 p, standing 54.8 p a day". */
export function tariffInShort(version: TariffVersion): string {
  const bands = version.bands.map((band) => {
    const price = pence(inclVat(version, band.pencePerKWh));
    return version.bands.length === 1 ? `${price} a unit` : `${band.name} ${price}`;
  });
  return `${listed(bands)}, standing charge ${pence(inclVat(version, version.standingPencePerDay))} a day.`;
}
