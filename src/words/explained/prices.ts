/** The prices that the sums rest on: the mean over the heat pump's own hours, and each price of the tariff. */

import { findSideBySide } from '../../model/comparison/beside.ts';
import { type Appraisal, type PriceBasis, priceOf } from '../../model/shapes/appraisal.ts';
import { FUELS, type Fuel } from '../../model/shapes/heating.ts';
import type { PricedTariff, PricedVersion } from '../../model/shapes/tariff.ts';
import { inclVat } from '../../model/tariff/slot-price.ts';
import { nameOfTariff } from '../prices.ts';
import { say } from '../say.ts';
import { inWords, type Said, type Shown, sayTold } from '../say-told.ts';
import { carrierName } from '../systems.ts';
import type { ShownInput, ShownWorking } from '../working.ts';

const sourceOf = (name: Shown, origin: Shown): Said => ({ said: `${sayTold(name)}: ${sayTold(origin)}` });

/** Price of a unit [p/kWh] as reckoned: what all units cost / the units, over the hours in which they are bought. */
export function electricityPriceWorking(appraisal: Appraisal): ShownWorking {
  const { prices } = appraisal;
  const { rates } = findSideBySide(appraisal).pump;
  const { grade, origin, name } = prices.electricity;
  return {
    title: inWords('Price per kWh of electricity'),
    formula: inWords('kWh × price, band by band, over the heat pump’s own hours / all kWh'),
    inputs: rates.flatMap((rate): ShownInput[] => [
      {
        name: inWords('kWh, {name}', { name: sayTold(rate.name) }),
        value: rate.kWh,
        unit: 'kWh',
        grade,
        origin: inWords('energy bought, by the clock'),
      },
      {
        name: inWords('Price, {name}', { name: sayTold(rate.name) }),
        value: rate.pencePerKWh,
        unit: 'p/kWh',
        grade,
        origin,
      },
    ]),
    result: { value: prices.electricityPencePerKWh, unit: 'p/kWh' },
    source: sourceOf(name, origin),
  };
}

/** Price of a unit of a fuel [p/kWh], VAT in it. */
export function fuelPriceWorking({ prices }: Appraisal, fuel: Fuel): ShownWorking {
  const price = priceOf(prices, fuel);
  if (!price) throw new Error(`an appraisal without a price of ${fuel}`);
  const { basis, pencePerKWh: value } = price;
  const { grade, origin, name } = basis;
  const row = FUELS[fuel];
  return {
    title: inWords('Price per kWh of {fuel}', { fuel: carrierName(fuel) }),
    formula:
      row.sold === 'by meter'
        ? inWords('as the tariff has it, VAT included')
        : inWords('price of a {unit} / kWh in a {unit}', { unit: say(row.unit) }),
    inputs: [{ name: inWords('Unit price'), value, unit: 'p/kWh', grade, origin }],
    result: { value, unit: 'p/kWh' },
    source: sourceOf(name, origin),
  };
}

/** Every price of one version of a tariff with VAT [p/kWh, p a day], and how many kWh each step holds. */
export function tariffWorking(
  version: PricedVersion,
  tariff: Pick<PricedTariff, 'name' | 'grade' | 'origin'> | PriceBasis,
  met: readonly { readonly name: Shown; readonly pence: number; readonly share: number }[] = [],
): ShownWorking {
  const { grade, origin } = tariff;
  const line = (name: Shown, value: number, unit: string): ShownInput => ({ name, value, unit, grade, origin });
  const bands = version.bands.flatMap((band) => [
    ...(band.blocks?.steps ?? []).map(({ upToKWh, pencePerKWh }) =>
      line(
        inWords('{name}, first {kWh, number} kWh', { name: sayTold(band.name), kWh: upToKWh }),
        inclVat(version, pencePerKWh),
        'p/kWh',
      ),
    ),
    line(band.name, inclVat(version, band.pencePerKWh), 'p/kWh'),
  ]);
  // Dated prices are met as means of the same half-hours.
  const means = version.series
    ? met.map(({ name, pence }) => line(inWords('Mean, {name}', { name: sayTold(name) }), pence, 'p/kWh'))
    : [];
  const standing = version.standingPencePerMonth
    ? line(inWords('Standing charge a month'), inclVat(version, version.standingPencePerMonth), 'p')
    : line(inWords('Standing charge a day'), inclVat(version, version.standingPencePerDay), 'p');
  const shares = met.map(({ name, share }) =>
    line(inWords('Hours of the week, {name}', { name: sayTold(name) }), share, 'share'),
  );
  const first = (means[0] ?? bands.at(-1)!).value;
  return {
    title: inWords('Prices of {name}', { name: sayTold(nameOfTariff(tariff.name)) }),
    formula: version.vat.included
      ? inWords('each price as the tariff has it from {from} on; VAT is in it already', { from: version.from })
      : inWords('each price as the tariff has it from {from} on; price × {share, number, ::.00} with VAT', {
          from: version.from,
          share: 1 + version.vat.rate,
        }),
    inputs: [
      ...means,
      ...bands,
      ...shares,
      standing,
      ...(version.exportPencePerKWh === undefined
        ? []
        : [line(inWords('Sent out'), version.exportPencePerKWh, 'p/kWh')]),
      ...(version.ownMeter
        ? [
            line(
              inWords('Taken off each kWh of the heat pump'),
              inclVat(version, version.ownMeter.lessPencePerKWh),
              'p/kWh',
            ),
            line(inWords('Its own meter, by the year'), inclVat(version, version.ownMeter.pencePerYear ?? 0), 'p'),
          ]
        : []),
      ...(version.reducedPencePerYear === undefined
        ? []
        : [line(inWords('Taken off by the year for a heat pump'), inclVat(version, version.reducedPencePerYear), 'p')]),
    ],
    result: { value: Number(first), unit: 'p/kWh' },
    source: sourceOf(tariff.name, origin),
  };
}
