/** What stands below the picture inside the machine: whose it is, what is assumed, of which moment it speaks. */
import { USUAL_REFRIGERANT } from '../model/heat-pump/full/design-loop.ts';
import type { Household } from '../model/household/household.ts';
import { wholeDegrees } from './cycle.ts';

/** "Larch Rise, with R407C, which is assumed, in the machine." */
export function insideFoot({ name, machine }: Pick<Household, 'name' | 'machine'>): string {
  const { refrigerant } = machine;
  const said = refrigerant ? refrigerant.value : `${USUAL_REFRIGERANT}, which is assumed,`;
  return `${name}, with ${said} in the machine.`;
}

/** The round is never the same for long, so the moment is named. */
export const momentSentence = (designOutdoorC: number): string =>
  `A very cold day, ${wholeDegrees(designOutdoorC)} outside. On milder days every figure is kinder.`;
