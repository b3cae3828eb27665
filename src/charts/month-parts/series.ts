/** Twelve months in two parts, one on the other: heat of rooms and hot water, or what a system costs. */
import type { Appraisal, SystemResult } from '../../model/shapes/appraisal.ts';
import { say } from '../../words/say.ts';

export interface MonthPart {
  readonly name: string;
  /** Twelve values: kWh of heat, or pence. */
  readonly values: readonly number[];
}
export interface MonthParts {
  readonly what: 'heat' | 'cost';
  readonly lower: MonthPart;
  readonly upper: MonthPart;
}

export function heatParts({ demand }: Pick<Appraisal, 'demand'>): MonthParts {
  return {
    what: 'heat',
    lower: { name: say('rooms'), values: demand.monthlySpaceKWh },
    upper: { name: say('hot water'), values: demand.monthlyWaterKWh },
  };
}

export function costParts({ monthly }: Pick<SystemResult, 'monthly'>): MonthParts {
  return {
    what: 'cost',
    lower: { name: say('energy'), values: monthly.unitsPence },
    upper: {
      name: say('fixed'),
      values: monthly.standingPence.map((standing, month) => standing + (monthly.servicePence[month] ?? 0)),
    },
  };
}

/** Both parts of every month; not a number where one of them is not known. */
export function monthSums({ lower, upper }: MonthParts): number[] {
  return Array.from(
    { length: 12 },
    (_, month) => (lower.values[month] ?? Number.NaN) + (upper.values[month] ?? Number.NaN),
  );
}
