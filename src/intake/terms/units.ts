/** kWh in one of a unit; gas volume by the billing rule: volume × correction × calorific value ÷ 3.6. */
import type { Carrier } from '../../model/shapes/evidence.ts';
import type { EnergyUnit, IntakeContext } from './choices.ts';

/** 105.5056 MJ ÷ 3.6, the definition of the therm. */
const KWH_PER_THERM = 29.3071;
const MJ_PER_KWH = 3.6;

/** [kWh per unit]; degrees pass through as they are. */
export function kWhPerUnit(
  unit: EnergyUnit,
  carrier: Carrier,
  context: IntakeContext,
  calorificMJPerM3 = context.gasVolume.calorificMJPerM3,
): number {
  const kWhPerM3 = (context.gasVolume.correction * calorificMJPerM3) / MJ_PER_KWH;
  switch (unit) {
    case 'Wh':
      return 0.001;
    case 'kWh':
    case '°C':
      return 1;
    case 'MWh':
      return 1000;
    case 'GJ':
      return 1000 / MJ_PER_KWH;
    case 'm³':
      return kWhPerM3;
    case 'hundred ft³':
      return context.gasVolume.imperialM3PerHundredCubicFeet * kWhPerM3;
    case 'therm':
      return KWH_PER_THERM;
    case 'litre':
      return carrier === 'lpg' ? context.kWhPerLitre.lpg : context.kWhPerLitre.oil;
  }
}

export const isVolumeOfGas = (unit: EnergyUnit): boolean => unit === 'm³' || unit === 'hundred ft³';

/** A home uses 5 to 60 kWh of electricity and up to some 300 kWh of gas a day (common practice, no source). */
export const MOST_KWH_A_DAY = 600;
export const LEAST_KWH_A_DAY = 0.2;
