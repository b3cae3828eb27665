import { spokenCount, spokenKWh } from '../../words/numbers.ts';
import type { UnitsInput } from './layout.ts';

export const UNITS_NAME = 'Where the heat comes from';

export function unitsSentence({ meterKWh, heatKWh, source }: UnitsInput): string {
  if (!Number.isFinite(meterKWh) || !Number.isFinite(heatKWh)) return 'We do not know yet how much heat is needed.';
  if (heatKWh <= 0) return 'This home needs no heat, so nothing is bought.';
  const sourceKWh = heatKWh - meterKWh;
  if (sourceKWh <= 0) {
    return `In a year the meter counts ${spokenKWh(meterKWh)} for ${spokenKWh(heatKWh)} of heat. The ${source} adds nothing.`;
  }
  return `In a year: ${spokenKWh(meterKWh)} from the meter and ${spokenCount(sourceKWh)} from the ${source} make ${spokenKWh(heatKWh)} of heat.`;
}
