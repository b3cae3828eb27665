/** What stands below the picture inside the machine: whose it is, what is assumed, of which moment it speaks. */
import { USUAL_REFRIGERANT } from '../model/heat-pump/full/design-loop.ts';
import type { Household } from '../model/household/household.ts';
import { wholeDegrees } from './cycle.ts';

/** "Larch Rise · a very cold day, −3 °C outside · R407C, assumed": the round is never the same for long. */
export function insideFoot({ name, machine }: Pick<Household, 'name' | 'machine'>, designOutdoorC: number): string {
  const { refrigerant } = machine;
  const gas = `${refrigerant?.value ?? USUAL_REFRIGERANT}, ${refrigerant?.grade ?? 'assumed'}`;
  return `${name} · a very cold day, ${wholeDegrees(designOutdoorC)} outside · ${gas}`;
}
