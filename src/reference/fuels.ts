/** Energy in a litre of oil or LPG, and what turns a gas meter's volume into energy. */
import type { Reference, Value } from '../model/shapes/reference.ts';

const FACTORS_2025 = 'UK Government GHG conversion factors for company reporting (DESNZ) 2025';

const read = (value: number, unit: string, source: string): Value => ({ value, unit, source, provenance: 'read' });

/** Gross calorific value. */
export const kWhPerLitre: Reference['kWhPerLitre'] = {
  oil: read(10.3, 'kWh/litre', `Heating oil (kerosene), ${FACTORS_2025}: 0.53078 / 0.05153; the trade prints 10.35`),
  lpg: read(7.21, 'kWh/litre', `LPG propane, ${FACTORS_2025}: 1.54358 / 0.2141`),
};

export const gasVolume: Reference['gasVolume'] = {
  correction: read(1.02264, '1', 'Volume correction printed on gas bills; metering to 15 °C and 1013.25 mbar'),
  calorificMJPerM3: read(39.5, 'MJ/m³', 'Typical gross calorific value on bills, which runs from 37.5 to 43'),
  imperialM3PerHundredCubicFeet: read(
    2.83,
    'm³ per hundred ft³',
    'Constant used on gas bills; the exact one is 2.8316847',
  ),
};
