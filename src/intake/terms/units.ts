/** kWh in one of a unit; gas volume by the billing rule: volume × correction × calorific value ÷ 3.6. */
import { type Carrier, isTemperature } from '../../model/shapes/evidence.ts';
import { type DeliveredFuel, FUELS, isDelivered, isSaleUnit, SALE_UNITS, unitsOf } from '../../model/shapes/heating.ts';
import { MJ_PER_KWH } from '../../model/units/gas-volume.ts';
import type { EnergyUnit, IntakeContext } from './choices.ts';

/** 105.5056 MJ ÷ 3.6, the definition of the therm. */
export const KWH_PER_THERM = 29.3071;
/** The calorie of the international steam tables is 4.1868 J. */
const KWH_PER_GCAL = (4.1868 * 1000) / MJ_PER_KWH;
/** 1055.05585262 J, the international table definition of the BTU. */
const KWH_PER_BTU = 1055.055_852_62 / 3_600_000;
/** Commonest print on electricity meters; asked about wherever it is taken. Common practice, no source. */
const USUAL_PULSES_PER_KWH = 1000;

/** The foot is 0.3048 m, the gallon of the United States 3.785411784 litres, that of Britain 4.54609, by definition. */
const M3_OF_WATER: Readonly<Partial<Record<EnergyUnit, number>>> = {
  'm³': 1,
  litre: 0.001,
  'ft³': 0.028_316_846_592,
  'hundred ft³': 2.831_684_659_2,
  'US gallon': 0.003_785_411_784,
  'imperial gallon': 0.004_546_09,
};

interface UnitFactors {
  readonly calorificMJPerM3?: number | undefined;
  readonly pulsesPerKWh?: number | undefined;
}

/** Of one degree so many degrees Celsius, and what is written at the freezing of water. */
const DEGREES: Partial<Record<EnergyUnit, { readonly celsius: number; readonly freezing: number }>> = {
  '°C': { celsius: 1, freezing: 0 },
  K: { celsius: 1, freezing: 273.15 },
  'tenth of °C': { celsius: 0.1, freezing: 0 },
  '°F': { celsius: 1 / 1.8, freezing: 32 },
};

/** What stands in a unit at 0 °C; 0 in what measures no warmth. */
export const freezingIn = (unit: EnergyUnit): number => DEGREES[unit]?.freezing ?? 0;

/** A temperature in °C; without a unit it is taken to be. */
export const celsiusOf = (degrees: number, unit: EnergyUnit = '°C'): number =>
  (degrees - freezingIn(unit)) * (DEGREES[unit]?.celsius ?? 1);

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
  if (carrier === 'water') return M3_OF_WATER[unit] ?? 1;
  switch (unit) {
    case 'Wh':
    case 'W':
      return 0.001;
    case 'kWh':
    case 'kW':
      return 1;
    case '°C':
    case 'K':
    case 'tenth of °C':
    case '°F':
      return DEGREES[unit]!.celsius;
    case 'MWh':
      return 1000;
    case 'kJ':
      return 0.001 / MJ_PER_KWH;
    case 'MJ':
      return 1 / MJ_PER_KWH;
    case 'GJ':
      return 1000 / MJ_PER_KWH;
    case 'Gcal':
      return KWH_PER_GCAL;
    case 'BTU':
    case 'BTU/h':
      return KWH_PER_BTU;
    case 'MMBTU':
      return KWH_PER_BTU * 1_000_000;
    case 'pulse':
      return 1 / pulsesPerKWh;
    case 'm³':
      return kWhPerM3;
    case 'ft³':
      return (context.gasVolume.imperialM3PerHundredCubicFeet / 100) * kWhPerM3;
    case 'hundred ft³':
      return context.gasVolume.imperialM3PerHundredCubicFeet * kWhPerM3;
    case 'therm':
      return KWH_PER_THERM;
    case 'US gallon':
    case 'imperial gallon':
      if (!isLiquid(carrier)) throw new RangeError(`${carrier} is not sold by ${unit}`);
      return context.kWhPerUnit[carrier].value * M3_OF_WATER[unit]! * 1000;
    default:
      if (!isDelivered(carrier) || !isSaleUnit(unit) || !isUnitOf(carrier, unit))
        throw new RangeError(`${carrier} is not sold by ${unit}`);
      return context.kWhPerUnit[carrier].value * SALE_UNITS[unit].count;
  }
}

/** Units of one thing, in a common one. */
const ALIKE: readonly Readonly<Partial<Record<EnergyUnit, number>>>[] = [
  {
    Wh: 0.001,
    kWh: 1,
    MWh: 1000,
    kJ: 0.001 / MJ_PER_KWH,
    MJ: 1 / MJ_PER_KWH,
    GJ: 1000 / MJ_PER_KWH,
    Gcal: KWH_PER_GCAL,
  },
  { W: 0.001, kW: 1 },
  { 'm³': 1, litre: 0.001 },
  { 'ft³': 1, 'hundred ft³': 100 },
  { kg: 1, tonne: SALE_UNITS.tonne.count, 'bag of 15 kg': 15, 'bag of 10 kg': 10 },
];

/** How many of `into` one `unit` is; undefined where they measure different things. */
export function ratioOf(unit: EnergyUnit, into: EnergyUnit): number | undefined {
  const both = ALIKE.find((one) => unit in one && into in one);
  return both && both[unit]! / both[into]!;
}

/** A fuel that is kept by the litre, so that it may come by the gallon too. */
export const isLiquid = (carrier: Carrier | undefined): carrier is DeliveredFuel =>
  isDelivered(carrier) && FUELS[carrier].unit === 'litre';

/** Whether amounts of a carrier can be written in a unit. */
export function isUnitOf(carrier: Carrier, unit: EnergyUnit): boolean {
  if (isTemperature(carrier) || isOfDegrees(unit)) return isTemperature(carrier) && isOfDegrees(unit);
  if (carrier === 'water') return unit in M3_OF_WATER;
  if (isGallon(unit)) return isLiquid(carrier);
  if (isSaleUnit(unit)) return isDelivered(carrier) && unitsOf(carrier).includes(unit);
  return !isVolumeOfGas(unit) || carrier === 'gas';
}

export const isOfDegrees = (unit: EnergyUnit | undefined): boolean =>
  unit === '°C' || unit === 'tenth of °C' || unit === '°F' || unit === 'K';
export const isPower = (unit: EnergyUnit | undefined): boolean => unit === 'W' || unit === 'kW' || unit === 'BTU/h';

export const isGallon = (unit: EnergyUnit | undefined): boolean => unit === 'US gallon' || unit === 'imperial gallon';

export const isVolumeOfGas = (unit: EnergyUnit | undefined): boolean =>
  unit === 'm³' || unit === 'ft³' || unit === 'hundred ft³';

/** A home uses 5 to 60 kWh of electricity and up to some 300 kWh of gas a day (common practice, no source). */
export const MOST_KWH_A_DAY = 600;
export const LEAST_KWH_A_DAY = 0.2;
