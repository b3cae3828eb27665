/** Cost by month of the heat pump beside what it is held against. */
import type { Appraisal, SystemResult } from '../../model/shapes/appraisal.ts';
import { pairOf } from '../../words/cost.ts';
import { monthNames } from '../../words/numbers.ts';
import { systemName } from '../../words/systems.ts';

export interface MonthlyRow {
  readonly month: string;
  /** Pence; null where not known. */
  readonly pump: number | null;
  readonly beside: number | null;
}
export interface MonthlySeries {
  readonly pumpName: string;
  /** Empty where there is nothing to hold it against. */
  readonly besideName: string;
  readonly rows: readonly MonthlyRow[];
}

/** Units, standing charge and service of one month, pence. */
export function monthPence(system: SystemResult | undefined, month: number): number | null {
  if (!system) return null;
  const { unitsPence, standingPence, servicePence } = system.monthly;
  const pence = (unitsPence[month] ?? Number.NaN) + (standingPence[month] ?? 0) + (servicePence[month] ?? 0);
  return Number.isFinite(pence) ? pence : null;
}

export function monthlySeries(appraisal: Pick<Appraisal, 'systems' | 'machine'>): MonthlySeries {
  const { pump, beside } = pairOf(appraisal);
  return {
    pumpName: systemName('heat-pump', 'heat-pump', appraisal.machine.source),
    besideName: beside ? systemName(beside.id, beside.kind) : '',
    rows: monthNames().map((month, index) => ({
      month,
      pump: monthPence(pump, index),
      beside: monthPence(beside, index),
    })),
  };
}
