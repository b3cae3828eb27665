/** Heat, electricity and factors of a machine's year, gathered from its half-hours by month. */
import type { YearSlots } from '../../calendar/zone.ts';
import { factorsAtBoundaries } from '../boundaries.ts';
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

/** Balances of the year and of each month, all [kWh] and factors [1]; the months sum to the year. */
export function balanceYear(
  bySlot: BySlot,
  heat: { readonly space: Months; readonly water: Months },
  slots: YearSlots,
): { year: Balance; monthly: Balance[] } {
  const uses = Object.fromEntries(USES.map((use) => [use, sumMonths(bySlot[use], slots)])) as Record<
    ElectricUse,
    Months
  >;
  const total = (months: Months) => months.reduce((sum, kWh) => sum + kWh, 0);
  const balance = (of: (months: Months) => number) =>
    balanceOf(
      of(heat.space),
      of(heat.water),
      Object.fromEntries(USES.map((use) => [use, of(uses[use])])) as Record<ElectricUse, number>,
    );
  return {
    year: balance(total),
    monthly: Array.from({ length: 12 }, (_, month) => balance((months) => months[month]!)),
  };
}

/** One balance [kWh]; source heat is the machine's heat less its compressor's electricity. */
export function balanceOf(
  spaceHeatKWh: number,
  waterHeatKWh: number,
  electricityKWh: Readonly<Record<ElectricUse, number>>,
): Balance {
  const compressorKWh = electricityKWh.space + electricityKWh.water;
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
            compressorKWh: compressorKWh + electricityKWh.standby,
            sourcePumpKWh: electricityKWh['source-pump'],
            backupKWh: resistanceHeatKWh,
            sinkPumpKWh: electricityKWh.circulator,
          })
        : null,
  };
}
