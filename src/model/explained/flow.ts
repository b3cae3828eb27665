/** Where the heat of a year comes from and where it goes. */

import { findSideBySide } from '../comparison/beside.ts';
import type { Appraisal } from '../shapes/appraisal.ts';
import type { Working, WorkingInput } from '../shapes/working.ts';

/**
 * Heat that the source adds in a year [kWh] = heat for rooms and taps − electricity bought. Pumps and standby count as
 * bought, so that the three sum as the household's meter and rooms see them; below a factor of 1 it is nothing.
 */
export function sourceWorking(appraisal: Pick<Appraisal, 'systems' | 'versus' | 'demand' | 'machine'>): Working {
  const { demand, machine } = appraisal;
  const { pump } = findSideBySide(appraisal as Appraisal);
  const line = (name: string, { value, grade }: { value: number; grade: WorkingInput['grade'] }, origin: string) =>
    ({ name, value, unit: 'kWh', grade, origin }) as const;
  return {
    title: machine.source === 'ground' ? 'Heat from the ground' : 'Heat from the air',
    formula: 'heat for rooms and taps − electricity bought, pumps and standby counted in it',
    inputs: [
      line('Heat for rooms and taps', demand.total, 'heat needed'),
      line('Of it for rooms', demand.space, 'heat needed'),
      line('Of it for taps', demand.water, 'heat needed'),
      line('Electricity bought', pump.bought, 'energy bought in a year, below'),
      {
        name: 'What the units cost',
        value: pump.split.unitsPence,
        unit: 'p',
        grade: pump.cost.grade,
        origin: 'cost of a year',
      },
    ],
    result: { value: Math.max(demand.total.value - pump.bought.value, 0), unit: 'kWh' },
    steps: [pump.bought.working, demand.total.working],
  };
}
