/** The machine's year for the screen: what was taken for it, what came out, and what it hangs on. */
import { heatOfHousehold } from '../../model/heat-of-household.ts';
import { runYear } from '../../model/heat-pump/full/run-year.ts';
import { type Settled, settleFull } from '../../model/heat-pump/full/settle.ts';
import { electricityWith, type SweepDriver } from '../../model/heat-pump/full/sweep.ts';
import { type Balance, type ElectricUse, type FullYear, USES } from '../../model/heat-pump/full/year.ts';
import type { CivilDate } from '../../model/shapes/dates.ts';
import type { Series } from '../../model/shapes/evidence.ts';
import type { Household } from '../../model/shapes/household.ts';
import { referenceOf } from '../../reference/index.ts';
import type { Drive } from '../../words/full-year.ts';

export interface WorkedYear {
  readonly settled: Settled;
  readonly full: FullYear;
  readonly drives: readonly Drive[];
}

/** Steps that the sentence of what drives the year speaks of. */
const LESS_K = 5;
const MORE_PIPE = 1.5;

export function workOutYear(input: {
  readonly household: Household;
  readonly series: readonly Series[];
  readonly today: CivilDate;
  /** What a unit costs in the middle, for saying what a change is worth. */
  readonly pencePerKWh: number;
}): WorkedYear {
  const { household, series, today, pencePerKWh } = input;
  const heat = heatOfHousehold({ household, series, reference: referenceOf(household), asOf: today });
  const settled = settleFull(heat);
  const full = runYear(settled.input);
  const { curve, waterFlowC, source } = settled.input;
  const hotC = household.hotWater.hotC?.value ?? waterFlowC - LESS_K;
  const change = (driver: SweepDriver & Drive['driver'], value: number): Drive => {
    const savedKWh = full.electricityKWh - electricityWith(heat, driver, value);
    return { driver, savedKWh, savedPence: savedKWh * pencePerKWh };
  };
  const size = household.machine.full?.ground?.size?.value ?? 1;
  return {
    settled,
    full,
    drives: [
      change('flow', curve.designFlowC - LESS_K),
      change('hot-water', hotC - LESS_K),
      ...(source.kind === 'ground' ? [change('array', size * MORE_PIPE)] : []),
    ],
  };
}

export interface UseRow {
  readonly use: ElectricUse;
  readonly kWh: number;
  /** Of all the electricity of the machine. */
  readonly share: number;
}

/** The electricity by use, those that take any, in their order; they sum to the whole. */
export function listUses({ electricityKWh }: Pick<Balance, 'electricityKWh'>): UseRow[] {
  const whole = USES.reduce((sum, use) => sum + electricityKWh[use], 0);
  return USES.flatMap((use) =>
    electricityKWh[use] > 0 ? [{ use, kWh: electricityKWh[use], share: electricityKWh[use] / whole }] : [],
  );
}

/** Mean brine (or air) coming in, month by month, °C. */
export function brineByMonth({ full, settled }: WorkedYear): number[] {
  const { dayStart, month } = settled.input.slots;
  const sums = Array.from({ length: 12 }, () => ({ total: 0, days: 0 }));
  full.sourceByDayC.forEach((c, day) => {
    const sum = sums[month[dayStart[day]!]!]!;
    sum.total += c;
    sum.days += 1;
  });
  return sums.map(({ total, days }) => total / days);
}
