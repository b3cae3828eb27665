/** Gas is metered by volume and billed by energy: the conversion printed on every gas bill. */
export type GasVolumeUnit = 'm³' | 'hundred ft³';

export interface GasVolumeFactors {
  /** Metering to billing conditions (15 °C, 1013.25 mbar), no unit. */
  readonly correction: number;
  /** Gross calorific value, MJ/m³, as printed on the bill. */
  readonly calorificMJPerM3: number;
  /** m³ in a hundred cubic feet; bills use 2.83, not the exact 2.8316847. */
  readonly imperialM3PerHundredCubicFeet: number;
}

export const MJ_PER_KWH = 3.6;

/**
 * Energy of a volume of gas [kWh] = units × (2.83 if hundred cubic feet) × correction × calorific value / 3.6.
 * Valid for calorific values of 30 to 50 MJ/m³. Source: the sum printed on British gas bills.
 */
export function gasVolumeToKWh(volume: number, unit: GasVolumeUnit, factors: GasVolumeFactors): number {
  return (gasVolumeToM3(volume, unit, factors) * factors.correction * factors.calorificMJPerM3) / MJ_PER_KWH;
}

/** Metered volume [m³], before correction. */
export function gasVolumeToM3(volume: number, unit: GasVolumeUnit, factors: GasVolumeFactors): number {
  return unit === 'm³' ? volume : volume * factors.imperialM3PerHundredCubicFeet;
}
