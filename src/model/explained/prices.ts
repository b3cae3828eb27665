/** The prices that the sums rest on: the mean over the heat pump's own hours, and each price of the tariff. */

import { findSideBySide } from '../comparison/beside.ts';
import { type Appraisal, type PriceBasis, priceOf } from '../shapes/appraisal.ts';
import { FUELS, type Fuel } from '../shapes/heating.ts';
import type { Tariff, TariffVersion } from '../shapes/tariff.ts';
import type { Working, WorkingInput } from '../shapes/working.ts';
import { inclVat } from '../tariff/slot-price.ts';

/** Price of a unit [p/kWh] as reckoned: what all units cost / the units, over the hours in which they are bought. */
export function electricityPriceWorking(appraisal: Appraisal): Working {
  const { prices } = appraisal;
  const { rates } = findSideBySide(appraisal).pump;
  const { grade, origin, name } = prices.electricity;
  return {
    title: 'Price of a unit of electricity',
    formula: 'units × price, band by band, over the heat pump’s own hours / all units',
    inputs: rates.flatMap((rate): WorkingInput[] => [
      { name: `Units, ${rate.name}`, value: rate.kWh, unit: 'kWh', grade, origin: 'energy bought, by the clock' },
      { name: `Price, ${rate.name}`, value: rate.pencePerKWh, unit: 'p/kWh', grade, origin },
    ]),
    result: { value: prices.electricityPencePerKWh, unit: 'p/kWh' },
    source: `${name}: ${origin}`,
  };
}

/** Price of a unit of a fuel [p/kWh], VAT in it. */
export function fuelPriceWorking({ prices }: Appraisal, fuel: Fuel): Working {
  const price = priceOf(prices, fuel);
  if (!price) throw new Error(`an appraisal without a price of ${fuel}`);
  const { basis, pencePerKWh: value } = price;
  const { grade, origin, name } = basis;
  const row = FUELS[fuel];
  return {
    title: `Price of a unit of ${row.written}`,
    formula:
      row.sold === 'by meter' ? 'as the tariff has it, VAT included' : `price of a ${row.unit} / kWh in a ${row.unit}`,
    inputs: [{ name: 'Unit price', value, unit: 'p/kWh', grade, origin }],
    result: { value, unit: 'p/kWh' },
    source: `${name}: ${origin}`,
  };
}

/** Every price of one version of a tariff with VAT [p/kWh, p a day], and how many kWh each step holds. */
export function tariffWorking(
  version: TariffVersion,
  tariff: Pick<Tariff, 'name' | 'grade' | 'origin'> | PriceBasis,
  met: readonly { readonly name: string; readonly pence: number; readonly share: number }[] = [],
): Working {
  const { grade, origin } = tariff;
  const line = (name: string, value: number, unit: string): WorkingInput => ({ name, value, unit, grade, origin });
  const vat = version.vat.included ? 'VAT is in it already' : `price × ${(1 + version.vat.rate).toFixed(2)} with VAT`;
  const bands = version.bands.flatMap((band) => [
    ...(band.blocks?.steps ?? []).map(({ upToKWh, pencePerKWh }) =>
      line(`${band.name}, first ${upToKWh} kWh`, inclVat(version, pencePerKWh), 'p/kWh'),
    ),
    line(band.name, inclVat(version, band.pencePerKWh), 'p/kWh'),
  ]);
  // Dated prices are met as means of the same half-hours.
  const means = version.series ? met.map(({ name, pence }) => line(`Mean, ${name}`, pence, 'p/kWh')) : [];
  const standing = version.standingPencePerMonth
    ? line('Standing charge a month', inclVat(version, version.standingPencePerMonth), 'p')
    : line('Standing charge a day', inclVat(version, version.standingPencePerDay), 'p');
  const shares = met.map(({ name, share }) => line(`Hours of the week, ${name}`, share, 'share'));
  const first = (means[0] ?? bands.at(-1)!).value;
  return {
    title: `Prices of ${tariff.name}`,
    formula: `each price as the tariff has it from ${version.from} on; ${vat}`,
    inputs: [
      ...means,
      ...bands,
      ...shares,
      standing,
      ...(version.exportPencePerKWh === undefined ? [] : [line('Sent out', version.exportPencePerKWh, 'p/kWh')]),
    ],
    result: { value: Number(first), unit: 'p/kWh' },
    source: `${tariff.name}: ${origin}`,
  };
}
