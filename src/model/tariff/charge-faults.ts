/** What is wrong or worth asking about standing charges, blocks, demand and export. */
import { inclVat } from './price.ts';
import type { Tariff, TariffVersion } from './tariff.ts';

export interface ChargeFault {
  readonly code:
    | 'standing-twice'
    | 'blocks-with-series'
    | 'blocks-order'
    | 'blocks-heating-alone'
    | 'demand-left-out'
    | 'export-unusual';
  readonly weight: 'refusal' | 'question';
  readonly data: { readonly [name: string]: string | number };
}

export function findChargeFaults(fuel: Tariff['fuel'], version: TariffVersion): ChargeFault[] {
  const faults: ChargeFault[] = [];
  const { standingPencePerDay, standingPencePerMonth = 0, bands, demand, exportPencePerKWh } = version;
  if (standingPencePerDay > 0 && standingPencePerMonth > 0) {
    const data = { pence: standingPencePerDay, monthPence: standingPencePerMonth };
    faults.push({ code: 'standing-twice', weight: 'refusal', data });
  }
  for (const { name, blocks } of bands) {
    if (!blocks) continue;
    const wrong = blocks.steps.findIndex(({ upToKWh }, i) => i > 0 && upToKWh <= blocks.steps[i - 1]!.upToKWh);
    if (wrong >= 0) {
      const data = { name, upTo: blocks.steps[wrong]!.upToKWh, before: blocks.steps[wrong - 1]!.upToKWh };
      faults.push({ code: 'blocks-order', weight: 'refusal', data });
    }
  }
  const stepped = bands.find(({ blocks }) => blocks);
  // The appliances of the home take the first units too, and nobody has said how many they are.
  if (stepped && version.series) {
    faults.push({ code: 'blocks-with-series', weight: 'refusal', data: { name: stepped.name } });
  } else if (stepped && fuel === 'electricity') {
    faults.push({ code: 'blocks-heating-alone', weight: 'question', data: { name: stepped.name } });
  }
  if (demand) faults.push({ code: 'demand-left-out', weight: 'question', data: { pence: demand.pencePerKWPerMonth } });
  const dearest = Math.max(...bands.map(({ pencePerKWh }) => inclVat(version, pencePerKWh)));
  if (exportPencePerKWh !== undefined && !version.series && exportPencePerKWh > dearest) {
    faults.push({ code: 'export-unusual', weight: 'question', data: { pence: exportPencePerKWh, dearest } });
  }
  return faults;
}
