import type { TariffVersion } from '../../model/shapes/tariff.ts';
import { inclVat } from '../../model/tariff/slot-price.ts';
import { counted, listed, pence, poundsAndPence } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { sayTold } from '../../words/say-told.ts';

/** A version in one line, VAT in it: "day 29.1 p, night 14.0 p, standing 54.8 p a day". */
export function tariffInShort(version: TariffVersion): string {
  const bands = version.bands.map((band) => {
    const price = pence(inclVat(version, band.pencePerKWh));
    return version.bands.length === 1 ? say('{price} per kWh', { price }) : `${sayTold(band.name)} ${price}`;
  });
  const byMonth = version.standingPencePerMonth;
  const paid = version.exportPencePerKWh;
  return say(
    '{dated, select, no {} other {Half-hourly prices for {days}; otherwise }}{bands}{steps, select, no {} other {, after the first kWh}}, standing charge {standing}{sent, select, no {} other {, export {paid}}}.',
    {
      dated: version.series ? 'yes' : 'no',
      days: counted(version.series?.days.length ?? 0, 'day'),
      bands: listed(bands),
      steps: version.bands.some(({ blocks }) => blocks) ? 'yes' : 'no',
      standing: byMonth
        ? say('{price} a month', { price: poundsAndPence(inclVat(version, byMonth)) })
        : say('{price} a day', { price: pence(inclVat(version, version.standingPencePerDay)) }),
      sent: paid === undefined ? 'no' : 'yes',
      paid: pence(paid ?? 0),
    },
  );
}
