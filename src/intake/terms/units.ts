/** kWh in one of a unit; gas volume by the billing rule: volume × correction × calorific value ÷ 3.6. */
import { type Carrier, isTemperature } from '../../model/shapes/evidence.ts';
import { isDelivered, isSaleUnit, SALE_UNITS, unitsOf } from '../../model/shapes/heating.ts';
import type { EnergyUnit, IntakeContext } from './choices.ts';

/** 105.5056 MJ ÷ 3.6, the definition of the therm. */
export const KWH_PER_THERM = 29.3071;
const MJ_PER_KWH = 3.6;
/** 1055.05585262 J, the international table definition of the BTU. */
const KWH_PER_BTU = 1055.055_852_62 / 3_600_000;
/** Commonest print on electricity meters; asked about wherever it is taken. Common practice, no source. */
const USUAL_PULSES_PER_KWH = 1000;

interface UnitFactors {
  readonly calorificMJPerM3?: number | undefined;
  readonly pulsesPerKWh?: number | undefined;
}

/**
 * [kWh per unit; for power kWh in a reading of one hour]; degrees per degree Celsius, water as it is in m³.
 * Throws for a unit that the carrier is not sold in.
 */
export function kWhPerUnit(
  unit: EnergyUnit,
  carrier: Carrier,
  context: IntakeContext,
  { calorificMJPerM3 = context.gasVolume.calorificMJPerM3, pulsesPerKWh = USUAL_PULSES_PER_KWH }: UnitFactors = {},
): number {
  const kWhPerM3 = (context.gasVolume.correction * calorificMJPerM3) / MJ_PER_KWH;
  if (carrier === 'water') return unit === 'litre' ? 0.001 : 1;
  switch (unit) {
    case 'Wh':
    case 'W':
      return 0.001;
    case 'kWh':
    case 'kW':
    case '°C':
      return 1;
    case '°F':
      return 1 / 1.8;
    case 'MWh':
      return 1000;
    case 'MJ':
      return 1 / MJ_PER_KWH;
    case 'GJ':
      return 1000 / MJ_PER_KWH;
    case 'BTU':
      return KWH_PER_BTU;
    case 'pulse':
      return 1 / pulsesPerKWh;
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
  if (isTemperature(carrier) || isOfDegrees(unit)) return isTemperature(carrier) && isOfDegrees(unit);
  if (carrier === 'water') return unit === 'm³' || unit === 'litre';
  if (isSaleUnit(unit)) return isDelivered(carrier) && unitsOf(carrier).includes(unit);
  return !isVolumeOfGas(unit) || carrier === 'gas' || carrier === 'lpg';
}

export const isOfDegrees = (unit: EnergyUnit | undefined): boolean => unit === '°C' || unit === '°F';
export const isPower = (unit: EnergyUnit | undefined): boolean => unit === 'W' || unit === 'kW';

export const isVolumeOfGas = (unit: EnergyUnit): boolean => unit === 'm³' || unit === 'hundred ft³';

/** A home uses 5 to 60 kWh of electricity and up to some 300 kWh of gas a day (common practice, no source). */
export const MOST_KWH_A_DAY = 600;
export const LEAST_KWH_A_DAY = 0.2;
