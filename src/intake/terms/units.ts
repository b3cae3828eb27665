/** kWh in one of a unit; gas volume by the billing rule: volume × correction × calorific value ÷ 3.6. */
import { type Carrier, isTemperature } from '../../model/shapes/evidence.ts';
import { isDelivered, isSaleUnit, SALE_UNITS, unitsOf } from '../../model/shapes/heating.ts';
import type { EnergyUnit, IntakeContext } from './choices.ts';

/** 105.5056 MJ ÷ 3.6, the definition of the therm. */
const KWH_PER_THERM = 29.3071;
const MJ_PER_KWH = 3.6;

/** [kWh per unit]; degrees pass through as they are. Throws for a unit that the carrier is not sold in. */
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
    default:
      if (!isDelivered(carrier) || !isUnitOf(carrier, unit)) throw new RangeError(`${carrier} is not sold by ${unit}`);
      return context.kWhPerUnit[carrier].value * SALE_UNITS[unit].count;
  }
}

/** Whether amounts of a carrier can be written in a unit. */
export function isUnitOf(carrier: Carrier, unit: EnergyUnit): boolean {
  if (isTemperature(carrier) || unit === '°C') return isTemperature(carrier) && unit === '°C';
  if (isSaleUnit(unit)) return isDelivered(carrier) && unitsOf(carrier).includes(unit);
  return !isVolumeOfGas(unit) || carrier === 'gas' || carrier === 'lpg';
}

export const isVolumeOfGas = (unit: EnergyUnit): boolean => unit === 'm³' || unit === 'hundred ft³';

/** A home uses 5 to 60 kWh of electricity and up to some 300 kWh of gas a day (common practice, no source). */
export const MOST_KWH_A_DAY = 600;
export const LEAST_KWH_A_DAY = 0.2;
