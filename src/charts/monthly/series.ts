/** Cost by month of the heat pump beside what it is held against. */
import { type Appraisal, penceOfMonth, type SystemResult } from '../../model/shapes/appraisal.ts';
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

const monthPence = (system: SystemResult | undefined, month: number): number | null => {
  const pence = system ? penceOfMonth(system, month) : Number.NaN;
  return Number.isFinite(pence) ? pence : null;
};

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
