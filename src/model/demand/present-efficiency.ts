/** How much heat the present system makes of a kWh it is metered by, for the rooms and for hot water. */
import { factorsAtMeter } from '../heat-pump/field-step.ts';
import type { SettledFactor } from '../heat-pump/settle-factors.ts';
import type { Household } from '../shapes/household.ts';
import type { EfficiencyDefault, Reference } from '../shapes/reference.ts';
import { type Told, tell, type Wording } from '../shapes/told.ts';
import type { Grade, WorkingInput } from '../shapes/working.ts';
import { EFFICIENCY_ERROR, TEN_PERCENT } from './demand-assumptions.ts';
import type { RecordMeter } from './record.ts';

export interface Efficiency {
  readonly value: number;
  /** One relative standard error. */
  readonly error: number;
  readonly grade: Grade;
  readonly origin: Wording;
}

export interface PresentEfficiency {
  readonly space: Efficiency;
  readonly water: Efficiency;
}

const HEAT_METER: Efficiency = { value: 1, error: 0.02, grade: 'measured', origin: tell('heat-meter') };

const fromTable = (row: EfficiencyDefault): Efficiency => ({
  value: row.middle,
  error: (row.high - row.low) / (2 * TEN_PERCENT * row.middle),
  grade: 'assumed',
  origin: row.source,
});

/** Seasonal efficiency (fraction) of what heats the home today, typed or from the table, with its error. */
export function presentEfficiency(household: Household, meter: RecordMeter, reference: Reference): PresentEfficiency {
  const { present } = household;
  if (meter === 'heat') return { space: HEAT_METER, water: HEAT_METER };
  if (present.system === 'heat-pump') return ofHeatPump(household, reference);
  const table = reference.efficiency[present.system === 'other' ? 'gas-condensing' : present.system];
  if (!present.efficiency) return { space: fromTable(table.space), water: fromTable(table.water) };
  const { value, grade, origin } = present.efficiency;
  const error = EFFICIENCY_ERROR[grade];
  // A typed figure is that of the rooms; hot water lies below it as far as in the table, less surely.
  const ratio = table.water.middle / table.space.middle;
  return {
    space: { value, error, grade, origin },
    water: {
      value: Math.min(value * ratio, Math.max(value, table.water.high)),
      error: Math.hypot(error, fromTable(table.water).error),
      grade: ratio === 1 ? grade : 'assumed',
      origin: ratio === 1 ? origin : tell('water-by-table', { origin, ratio, source: table.water.source }),
    },
  };
}

/** The factors that the comparison reckons with, so that a heat pump's record comes back as what it was metered to use. */
function ofHeatPump(household: Household, reference: Reference): PresentEfficiency {
  const { space, water, field, step } = factorsAtMeter(household, reference);
  const ofFactor = ({ value, grade, origin, from }: SettledFactor): Efficiency => {
    if (from === 'field') return fromTable(field);
    // A designer's factor strays as homes do from their design, not as a reading does.
    const own = grade === 'measured' || step === null ? EFFICIENCY_ERROR[grade] : step.deviation;
    const error = from === 'derived' ? Math.hypot(own, 0.1) : own;
    return { value, error, grade, origin };
  };
  return { space: ofFactor(space), water: ofFactor(water) };
}

export const efficiencyInput = (name: Told, efficiency: Efficiency): WorkingInput => ({
  name,
  value: efficiency.value,
  unit: tell('kwh-of-heat-a-kwh'),
  grade: efficiency.grade,
  origin: efficiency.origin,
});
