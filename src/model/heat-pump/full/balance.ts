/** Heat, electricity and factors of a machine's year, gathered from its half-hours by month. */

import type { YearSlots } from '../../calendar/zone.ts';
import { FAN_W_PER_KW } from '../../cycle/air-side.ts';
import { sumOf } from '../../units/sums.ts';
import { factorsAtBoundaries } from '../boundaries.ts';
import type { Source } from './source.ts';
import { type Balance, type BySlot, type ElectricUse, USES } from './year.ts';

/** One value a month, kWh. */
export type Months = Float64Array;

function sumMonths(bySlot: Float64Array, slots: YearSlots): Months {
  const months = new Float64Array(12);
  const { dayStart, month } = slots;
  for (let day = 0; day + 1 < dayStart.length; day++) {
    const end = dayStart[day + 1]!;
    let sum = 0;
    for (let slot = dayStart[day]!; slot < end; slot++) sum += bySlot[slot]!;
    months[month[dayStart[day]!]!]! += sum;
  }
  return months;
}

/** Electricity of the fan of an air machine [kWh per kWh of heat], which its tested COP holds already (EN 14511). */
export const fanInCop = (source: Source['kind']): number => (source === 'air' ? FAN_W_PER_KW / 1000 : 0);

/** Balances of the year and of each month, all [kWh] and factors [1]; the months sum to the year. */
export function balanceYear(
  bySlot: BySlot,
  heat: { readonly space: Months; readonly water: Months },
  slots: YearSlots,
  fanPerHeat: number,
): { year: Balance; monthly: Balance[] } {
  const uses = Object.fromEntries(USES.map((use) => [use, sumMonths(bySlot[use], slots)])) as Record<
    ElectricUse,
    Months
  >;
  const balance = (of: (months: Months) => number) =>
    balanceOf(
      of(heat.space),
      of(heat.water),
      Object.fromEntries(USES.map((use) => [use, of(uses[use])])) as Record<ElectricUse, number>,
      fanPerHeat,
    );
  return {
    year: balance(sumOf),
    monthly: Array.from({ length: 12 }, (_, month) => balance((months) => months[month]!)),
  };
}

/**
 * One balance [kWh]; source heat is the machine's heat less its compressor's electricity. SEPEMO puts the fan of the
 * source outside H1 and inside H2, so that what the tested COP holds of it moves from the one line to the other.
 */
export function balanceOf(
  spaceHeatKWh: number,
  waterHeatKWh: number,
  electricityKWh: Readonly<Record<ElectricUse, number>>,
  fanPerHeat: number,
): Balance {
  const compressorKWh = electricityKWh.space + electricityKWh.water;
  const fanKWh = fanPerHeat * (spaceHeatKWh + waterHeatKWh);
  const resistanceHeatKWh = electricityKWh.backup + electricityKWh.pasteurisation;
  const heated = spaceHeatKWh + waterHeatKWh + resistanceHeatKWh > 0;
  return {
    spaceHeatKWh,
    waterHeatKWh,
    resistanceHeatKWh,
    sourceHeatKWh: spaceHeatKWh + waterHeatKWh - compressorKWh,
    electricityKWh,
    factors:
      heated && compressorKWh + electricityKWh.standby > 0
        ? factorsAtBoundaries({
            spaceKWh: spaceHeatKWh,
            waterKWh: waterHeatKWh,
            compressorKWh: compressorKWh - fanKWh + electricityKWh.standby,
            sourcePumpKWh: electricityKWh['source-pump'] + fanKWh,
            backupKWh: resistanceHeatKWh,
            sinkPumpKWh: electricityKWh.circulator,
          })
        : null,
  };
}
