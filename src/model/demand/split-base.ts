/** Splits what a record uses every day of the year into cooking, hot water and what neither explains. */
import type { Household } from '../household/household.ts';
import { COOKING_ERROR, cookingGasKWh } from './assumptions.ts';
import { together } from './figure.ts';
import type { HotWaterDemand } from './hot-water.ts';
import type { Efficiency } from './present-efficiency.ts';
import type { RecordMeter } from './record.ts';

export interface BaseSplit {
  /** Heat for hot water, kWh a year; absent where another meter sees it. */
  readonly waterKWh?: number;
  readonly waterErrorKWh?: number;
  /** Fuel for cooking, kWh a year. */
  readonly cookingKWh: number;
  /** Heat the base could make at most, cooking taken off. */
  readonly baseHeatKWh: number;
  /** Heat of the base that hot water does not take. */
  readonly leftoverKWh: number;
}

/**
 * Heat for hot water [kWh a year] out of a record's base: what the hot-water method predicts and what the base leaves
 * after cooking, joined by inverse variance and never more than the base gives. A whole-house electricity meter's base
 * holds lights and appliances too, so there the prediction stands, limited by the base.
 */
export function splitBase(
  base: { readonly kWh: number; readonly errorKWh: number },
  meter: RecordMeter,
  household: Household,
  efficiency: Efficiency,
  predicted: HotWaterDemand,
): BaseSplit {
  const { cooksOnGas, hotWaterFrom } = household.present;
  const cookingKWh = meter === 'fuel' && cooksOnGas ? Math.min(base.kWh, cookingGasKWh(predicted.people)) : 0;
  const baseHeatKWh = (base.kWh - cookingKWh) * efficiency.value;
  if (meter === 'whole-house') {
    const waterKWh = Math.min(predicted.kWh, baseHeatKWh);
    const leftoverKWh = baseHeatKWh - waterKWh;
    return { waterKWh, waterErrorKWh: predicted.errorKWh, cookingKWh, baseHeatKWh, leftoverKWh };
  }
  if (hotWaterFrom === 'immersion') return { cookingKWh, baseHeatKWh, leftoverKWh: baseHeatKWh };
  const errorKWh = together(
    base.errorKWh * efficiency.value,
    baseHeatKWh * efficiency.error,
    cookingKWh * COOKING_ERROR * efficiency.value,
  );
  const ofBase = 1 / Math.max(1, errorKWh) ** 2;
  const ofMethod = 1 / Math.max(1, predicted.errorKWh) ** 2;
  const joined = (baseHeatKWh * ofBase + predicted.kWh * ofMethod) / (ofBase + ofMethod);
  const waterKWh = Math.min(joined, baseHeatKWh);
  const waterErrorKWh = Math.sqrt(1 / (ofBase + ofMethod));
  return { waterKWh, waterErrorKWh, cookingKWh, baseHeatKWh, leftoverKWh: baseHeatKWh - waterKWh };
}
