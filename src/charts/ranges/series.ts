/** What is known of one quantity other than money, each with its range: seasonal factors, heat in kWh. */
import { rangeOf } from '../../model/demand/figure.ts';
import type { Demand, MachineResult } from '../../model/shapes/appraisal.ts';
import type { Grade } from '../../model/shapes/working.ts';
import { factor, spokenCount } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { WAY_WORDS } from '../../words/ways.ts';

export interface RangeRow {
  readonly name: string;
  /** `pump` is the heat pump, green; `sum` what a sum rests on, in ink; `beside` what either is held against, slate. */
  readonly kind: 'pump' | 'sum' | 'beside';
  readonly grade: Grade;
  readonly low: number;
  readonly middle: number;
  readonly high: number;
  /** The figures beside the mark. */
  readonly label: string;
  readonly range: string;
}

/** How the axis is written. */
export interface RangeScale {
  readonly tickLabel: (value: number) => string;
  readonly smallestStep: number;
}
export const FACTOR_SCALE: RangeScale = { tickLabel: (value) => factor(value), smallestStep: 0.5 };
export const HEAT_SCALE: RangeScale = { tickLabel: spokenCount, smallestStep: 500 };

/** This machine, and what was measured of its kind. */
export function factorRows(machine: MachineResult): RangeRow[] {
  const { whole, fieldSpread } = machine;
  const range = (low: number, high: number) => say('{low} to {high}', { low: factor(low), high: factor(high) });
  return [
    {
      name: say('This heat pump, everything counted'),
      kind: 'pump',
      grade: whole.grade,
      low: whole.low,
      middle: whole.value,
      high: whole.high,
      label: factor(whole.value),
      range: range(whole.low, whole.high),
    },
    {
      name: say('Measured in other homes'),
      kind: 'beside',
      grade: 'measured',
      low: fieldSpread.low,
      middle: fieldSpread.middle,
      high: fieldSpread.high,
      label: factor(fieldSpread.middle),
      range: range(fieldSpread.low, fieldSpread.high),
    },
  ];
}

/** Heat for rooms a year, one row for each way it can be worked out, and what the sums rest on. */
export function estimateRows(demand: Demand): RangeRow[] {
  const rows = demand.estimates.map((estimate): RangeRow => {
    const { low, high } = rangeOf(estimate.spaceKWh, estimate.spaceErrorKWh);
    return {
      name: say(WAY_WORDS[estimate.way].from),
      kind: 'beside',
      grade: estimate.grade,
      low,
      middle: estimate.spaceKWh,
      high,
      label: spokenCount(estimate.spaceKWh),
      range: say('{low} to {high}', { low: spokenCount(low), high: spokenCount(high) }),
    };
  });
  const { value, low, high, grade } = demand.space;
  return [
    ...rows,
    {
      name: say('What the sums are based on'),
      kind: 'sum',
      grade,
      low: Math.max(0, low),
      middle: value,
      high,
      label: spokenCount(value),
      range: say('{low} to {high}', { low: spokenCount(Math.max(0, low)), high: spokenCount(high) }),
    },
  ];
}
