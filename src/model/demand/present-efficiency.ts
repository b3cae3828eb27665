/** How much heat the present system makes of a kWh it is metered by, for the rooms and for hot water. */
import type { Household } from '../household/household.ts';
import type { EfficiencyDefault, Reference } from '../reference.ts';
import type { Grade, WorkingInput } from '../working.ts';
import { EFFICIENCY_ERROR, TEN_PERCENT, WATER_FACTOR_SHARE } from './assumptions.ts';
import type { RecordMeter } from './record.ts';

export interface Efficiency {
  readonly value: number;
  /** One relative standard error. */
  readonly error: number;
  readonly grade: Grade;
  readonly origin: string;
}

export interface PresentEfficiency {
  readonly space: Efficiency;
  readonly water: Efficiency;
}

const HEAT_METER: Efficiency = { value: 1, error: 0.02, grade: 'measured', origin: 'the meter counts heat itself' };

const fromTable = (row: EfficiencyDefault): Efficiency => ({
  value: row.middle,
  error: (row.high - row.low) / (2 * TEN_PERCENT * row.middle),
  grade: 'assumed',
  origin: row.source,
});

/** Seasonal efficiency (fraction) of what heats the home today, typed or from the table, with its error. */
export function presentEfficiency(household: Household, meter: RecordMeter, reference: Reference): PresentEfficiency {
  const { present, machine } = household;
  if (meter === 'heat') return { space: HEAT_METER, water: HEAT_METER };
  if (present.system === 'heat-pump') return ofHeatPump(machine, reference);
  const table = reference.efficiency[present.system === 'other' ? 'gas-condensing' : present.system];
  if (!present.efficiency) return { space: fromTable(table.space), water: fromTable(table.water) };
  const { value, grade, origin } = present.efficiency;
  const error = EFFICIENCY_ERROR[grade];
  const waterShare = table.water.middle / table.space.middle;
  return {
    space: { value, error, grade, origin },
    water: {
      value: value * waterShare,
      error: Math.hypot(error, fromTable(table.water).error),
      grade: 'assumed',
      origin: `${Math.round(waterShare * 100)} % of that for the rooms, as in ${table.water.source}`,
    },
  };
}

function ofHeatPump(machine: Household['machine'], reference: Reference): PresentEfficiency {
  const typed = (given: NonNullable<Household['machine']['spaceFactor']>): Efficiency => ({
    ...given,
    error: EFFICIENCY_ERROR[given.grade],
  });
  const space = machine.spaceFactor ? typed(machine.spaceFactor) : fromTable(reference.fieldFactor[machine.source]);
  if (machine.waterFactor) return { space, water: typed(machine.waterFactor) };
  const value = space.value * WATER_FACTOR_SHARE;
  const origin = `${WATER_FACTOR_SHARE * 100} % of that for the rooms; common practice, no source`;
  return { space, water: { value, error: Math.hypot(space.error, 0.1), grade: 'assumed', origin } };
}

export const efficiencyInput = (name: string, efficiency: Efficiency): WorkingInput => ({
  name,
  value: efficiency.value,
  unit: 'kWh of heat per kWh',
  grade: efficiency.grade,
  origin: efficiency.origin,
});
