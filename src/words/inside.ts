/** What stands below the picture inside the machine: whose it is, what is assumed, of which moment it speaks. */
import { usualRefrigerant } from '../model/heat-pump/full/design-loop.ts';
import type { Household } from '../model/shapes/household.ts';
import { wholeDegrees } from './cycle.ts';
import { gradeName } from './grades.ts';
import { say } from './say.ts';

/** "Larch Rise · a very cold day, −3 °C outside · R407C, assumed": the round is never the same for long. */
export function insideFoot({ name, machine }: Pick<Household, 'name' | 'machine'>, designOutdoorC: number): string {
  const { refrigerant } = machine;
  const gas = refrigerant?.value ?? usualRefrigerant(machine.source);
  return say(
    '{name} · {source, select, air {a very cold day between two defrosts} other {a very cold day}}, {outdoor} outside · {gas}, {grade}',
    {
      name,
      source: machine.source,
      outdoor: wholeDegrees(designOutdoorC),
      gas,
      grade: gradeName(refrigerant?.grade ?? 'assumed'),
    },
  );
}
