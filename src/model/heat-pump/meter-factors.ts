/** Factors as the heat pump's own electricity meter sees them, for turning its record into heat. */
import type { Household } from '../shapes/household.ts';
import type { Reference } from '../shapes/reference.ts';
import { tell } from '../shapes/told.ts';
import { settleAtMiddle, usualElectricity } from './field-step.ts';
import type { SettledFactor } from './settle-factors.ts';

/**
 * Factors [1] for rooms and hot water over all electricity that the machine's meter counts: those that homes get at the
 * typed boundary × E / (E + lines outside it), E and the lines being those of a usual home.
 * Valid within about 2 % for homes of 6,000 to 25,000 kWh; at H4 with both factors metered they are the typed ones.
 */
export function factorsAtMeter(household: Household, reference: Reference) {
  const { design, space, water, step } = settleAtMiddle(household, reference);
  const { countedKWh, allKWh } = usualElectricity(household, { space, water, boundary: design.boundary });
  const share = countedKWh / allKWh;
  const atMeter = (factor: SettledFactor): SettledFactor =>
    share === 1
      ? factor
      : {
          ...factor,
          value: factor.value * share,
          origin: tell('with-pumps', { origin: factor.origin, share }),
        };
  return { space: atMeter(space), water: atMeter(water), field: design.field, step };
}
