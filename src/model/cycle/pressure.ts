/** Pressures as gauges show them and as tables list them. Inside the model: bar absolute. */
import type { PressureBasis, PressureUnit } from '../shapes/site-readings.ts';

export interface Pressure {
  readonly value: number;
  readonly unit: PressureUnit;
  readonly basis: PressureBasis;
}

/** Standard atmosphere [bar]: ISO 2533. */
const ATMOSPHERE_BAR = 1.01325;
/** 1 lbf/in² is 6.894757 kPa: NIST SP 811. */
const BAR_PER: Readonly<Record<PressureUnit, number>> = { bar: 1, psi: 0.06894757, kPa: 0.01 };

/** Absolute pressure [bar] of a reading: p = value × unit, plus 1.01325 bar if read on a gauge. */
export function toBarAbsolute({ value, unit, basis }: Pressure): number {
  return value * BAR_PER[unit] + (basis === 'gauge' ? ATMOSPHERE_BAR : 0);
}

/** Reading of an absolute pressure [bar] in the unit and on the basis wanted. */
export function fromBarAbsolute(barAbsolute: number, unit: PressureUnit, basis: PressureBasis): number {
  return (barAbsolute - (basis === 'gauge' ? ATMOSPHERE_BAR : 0)) / BAR_PER[unit];
}
