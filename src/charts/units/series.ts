import type { Appraisal } from '../../model/shapes/appraisal.ts';
import type { UnitsInput } from './layout.ts';

/** What the heat pump buys and makes in a typical year. */
export function unitsSeries(appraisal: Pick<Appraisal, 'systems' | 'machine' | 'demand'>): UnitsInput {
  const pump = appraisal.systems.find((system) => system.id === 'heat-pump');
  return {
    meterKWh: pump?.bought.value ?? Number.NaN,
    heatKWh: appraisal.demand.total.value,
    meterPence: pump?.split.unitsPence ?? Number.NaN,
    source: appraisal.machine.source,
  };
}
