/** Where the heat of a year comes from and where it goes. */

import { findSideBySide } from '../../model/comparison/beside.ts';
import type { Appraisal } from '../../model/shapes/appraisal.ts';
import type { Grade } from '../../model/shapes/working.ts';
import { inWords, type Said } from '../say-told.ts';
import type { ShownWorking } from '../working.ts';

/**
 * Heat that the source adds in a year [kWh] = heat for rooms and taps − electricity bought. Pumps and standby count as
 * bought, so that the three sum as the household's meter and rooms see them; below a factor of 1 it is nothing.
 */
export function sourceWorking(appraisal: Pick<Appraisal, 'systems' | 'versus' | 'demand' | 'machine'>): ShownWorking {
  const { demand, machine } = appraisal;
  const { pump } = findSideBySide(appraisal as Appraisal);
  const line = (name: Said, { value, grade }: { value: number; grade: Grade }, origin: Said) =>
    ({ name, value, unit: 'kWh', grade, origin }) as const;
  return {
    title: inWords(machine.source === 'ground' ? 'Heat from the ground' : 'Heat from the air'),
    formula: inWords('heat for rooms and taps − electricity bought, pumps and standby counted in it'),
    inputs: [
      line(inWords('Heat for rooms and taps'), demand.total, inWords('heat needed')),
      line(inWords('Of it for rooms'), demand.space, inWords('heat needed')),
      line(inWords('Of it for taps'), demand.water, inWords('heat needed')),
      line(inWords('Electricity bought'), pump.bought, inWords('energy bought in a year, below')),
      {
        name: inWords('What the energy costs'),
        value: pump.split.unitsPence,
        unit: 'p',
        grade: pump.cost.grade,
        origin: inWords('cost of a year'),
      },
    ],
    result: { value: Math.max(demand.total.value - pump.bought.value, 0), unit: 'kWh' },
    steps: [pump.bought.working, demand.total.working],
  };
}
