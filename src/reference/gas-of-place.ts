/** What a cubic metre of gas holds where the home stands. Only Britain's bills name a correction apart that is the same for all. */
import { MJ_PER_KWH } from '../model/units/gas-volume.ts';
import { gasVolume } from './fuels.ts';

/**
 * kWh in a cubic metre as metered, gross. Germany: Brennwert 11.3 × Zustandszahl 0.95, the method DVGW G 685; Austria the
 * same in one Umrechnungsfaktor; the Netherlands 35.17 MJ (Gronings gas); all from memory. They are asked for with every
 * file, and differ from place to place: poorer gas holds a tenth less, and so does gas metered high up.
 */
const PER_M3: Readonly<Record<string, number>> = {
  'Europe/Berlin': 10.7,
  'Europe/Busingen': 10.7,
  'Europe/Vienna': 10.7,
  'Europe/Zurich': 10.6,
  'Europe/Dublin': 11.2,
  'Europe/Amsterdam': 9.77,
  'Europe/Brussels': 10.7,
  'Europe/Luxembourg': 11.2,
  'Europe/Paris': 11.2,
  'Europe/Rome': 10.7,
  'Europe/Madrid': 11.7,
  'Europe/Copenhagen': 12.1,
};

export interface GasOfPlace {
  readonly correction: number;
  readonly calorificMJPerM3: number;
  readonly imperialM3PerHundredCubicFeet: number;
  /** Bills print kWh for a m³, in one number or in two that differ from home to home. */
  readonly isByKWh?: true;
}

/** For the clock of a home; Britain's where nothing else is known. */
export function gasVolumeOf(zone: string, british = gasVolume): GasOfPlace {
  const imperialM3PerHundredCubicFeet = british.imperialM3PerHundredCubicFeet.value;
  const kWh = PER_M3[zone];
  if (kWh !== undefined)
    return { correction: 1, calorificMJPerM3: kWh * MJ_PER_KWH, imperialM3PerHundredCubicFeet, isByKWh: true };
  const { correction, calorificMJPerM3 } = british;
  return { correction: correction.value, calorificMJPerM3: calorificMJPerM3.value, imperialM3PerHundredCubicFeet };
}
