/** What is wrong or worth asking about standing charges, blocks and export. */

import type { TariffVersion } from '../shapes/tariff.ts';
import { inclVat } from './slot-price.ts';

export interface ChargeFault {
  readonly code:
    | 'standing-twice'
    | 'blocks-with-series'
    | 'blocks-order'
    | 'export-unusual'
    | 'two-modules'
    | 'own-meter-unusual';
  readonly weight: 'refusal' | 'question';
  readonly data: { readonly [name: string]: string | number };
}

export function findChargeFaults(version: TariffVersion): ChargeFault[] {
  const faults: ChargeFault[] = [];
  const { standingPencePerDay, standingPencePerMonth = 0, bands, exportPencePerKWh } = version;
  if (standingPencePerDay > 0 && standingPencePerMonth > 0) {
    const data = { pence: standingPencePerDay, monthPence: standingPencePerMonth };
    faults.push({ code: 'standing-twice', weight: 'refusal', data });
  }
  for (const { name, blocks } of bands) {
    if (!blocks) continue;
    const ends = blocks.steps.map(({ upToKWh }) => upToKWh);
    // Nothing stands before the first.
    const wrong = ends.findIndex((end, i) => end <= ends[i - 1]!);
    if (wrong > 0) {
      const data = { name, upTo: ends[wrong]!, before: ends[wrong - 1]! };
      faults.push({ code: 'blocks-order', weight: 'refusal', data });
    }
  }
  const stepped = bands.find(({ blocks }) => blocks);
  if (stepped && version.series) {
    faults.push({ code: 'blocks-with-series', weight: 'refusal', data: { name: stepped.name } });
  }
  const dearest = Math.max(...bands.map(({ pencePerKWh }) => inclVat(version, pencePerKWh)));
  if (exportPencePerKWh !== undefined && !version.series && exportPencePerKWh > dearest) {
    faults.push({ code: 'export-unusual', weight: 'question', data: { pence: exportPencePerKWh, dearest } });
  }
  const { ownMeter, reducedPencePerYear } = version;
  if (ownMeter && reducedPencePerYear) faults.push({ code: 'two-modules', weight: 'refusal', data: {} });
  if (ownMeter && bands.some(({ pencePerKWh }) => pencePerKWh > 0 && pencePerKWh <= ownMeter.lessPencePerKWh))
    faults.push({ code: 'own-meter-unusual', weight: 'question', data: { pence: ownMeter.lessPencePerKWh } });
  return faults;
}
