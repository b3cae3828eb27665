import { spokenCount, spokenKWh } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import type { UnitsInput } from './layout.ts';

export const unitsName = () => say('Where the heat comes from');

export function unitsSentence({ meterKWh, heatKWh, source }: UnitsInput): string {
  if (!Number.isFinite(meterKWh) || !Number.isFinite(heatKWh))
    return say('We do not know yet how much heat is needed.');
  if (heatKWh <= 0) return say('This home needs no heat, so nothing is bought.');
  const sourceKWh = heatKWh - meterKWh;
  if (sourceKWh <= 0) {
    return say(
      'In a year the meter counts {meter} for {heat} of heat. The {source, select, air {air} other {ground}} adds nothing.',
      { meter: spokenKWh(meterKWh), heat: spokenKWh(heatKWh), source },
    );
  }
  return say(
    'In a year: {meter} from the meter and {added} from the {source, select, air {air} other {ground}} make {heat} of heat.',
    { meter: spokenKWh(meterKWh), added: spokenCount(sourceKWh), source, heat: spokenKWh(heatKWh) },
  );
}
