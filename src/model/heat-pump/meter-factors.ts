/** Factors as the heat pump's own electricity meter sees them, for turning its record into heat. */
import type { Household } from '../shapes/household.ts';
import type { Reference } from '../shapes/reference.ts';
import { reckonExtras } from './extras.ts';
import { findPasteurisation } from './pasteurisation.ts';
import { type SettledFactor, settleFactors } from './settle-factors.ts';

/** A usual home, for the share of pumps and standby alone: it hardly changes with the heat. kWh a year and kW. */
const USUAL = { spaceKWh: 12_000, waterKWh: 2500, capacityKW: 7 } as const;

/**
 * Factors [1] for rooms and hot water over all electricity that the machine's meter counts: those at the typed
 * boundary × E / (E + lines outside it), E and the lines being those of a usual home.
 * Valid within about 2 % for homes of 6,000 to 25,000 kWh; at H4 with both factors typed they are the typed ones.
 */
export function factorsAtMeter(household: Household, reference: Reference) {
  const { machine, heat } = household;
  const settled = settleFactors(machine, reference);
  const spaceFactor = settled.space.value;
  const waterFactor = settled.water.value;
  const lines = reckonExtras({
    ...USUAL,
    capacityKW: heat.heatLossKW && heat.heatLossKW.value > 0 ? heat.heatLossKW.value : USUAL.capacityKW,
    spaceFactor,
    waterFactor,
    boundary: settled.boundary,
    metered: settled.space.grade === 'measured',
    backupShare: machine.backupShare ?? null,
    pasteurisation: findPasteurisation(household, settled),
  });
  const counted = USUAL.spaceKWh / spaceFactor + USUAL.waterKWh / waterFactor;
  const share = counted / lines.reduce((sum, { kWh }) => sum + kWh, counted);
  const atMeter = (factor: SettledFactor): SettledFactor =>
    share === 1
      ? factor
      : {
          ...factor,
          value: factor.value * share,
          origin: `${factor.origin}; × ${share.toFixed(3)} for pumps and standby`,
        };
  return { space: atMeter(settled.space), water: atMeter(settled.water), field: settled.field };
}
