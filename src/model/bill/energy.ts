/** Energy of a bill's meters: from its readings by the sum on every gas bill, and as the bill prints it. */

import type { Bill, BillMeter } from '../shapes/bill.ts';
import { gasVolumeToKWh } from '../units/gas-volume.ts';

export interface GasConstants {
  readonly correction: number;
  readonly imperialM3PerHundredCubicFeet: number;
  /** What is usual where the bill prints none. */
  readonly calorificMJPerM3: number;
}

/** Metered units between the readings, in the meter's own unit, or as printed; undefined where neither is known. A counter that passed its end goes on from 0. */
export function meteredUnits({ opening, closing, metered }: BillMeter): number | undefined {
  if (opening === undefined || closing === undefined) return metered;
  if (closing >= opening) return closing - opening;
  const end = 10 ** Math.max(4, String(Math.floor(opening)).length);
  return opening > end * ROLLED_OVER ? closing + end - opening : closing - opening;
}
/** A counter that jumps back has passed its end only if it stood near it. */
const ROLLED_OVER = 0.9;

/** Energy of metered units [kWh] = units × (2.83 if hundred cubic feet) × correction × calorific value / 3.6. Source: Gas (Calculation of Thermal Energy) Regulations 1996. */
export function energyOfUnits(bill: Bill, units: number, gas: GasConstants, change: Partial<Bill> = {}): number {
  const { meterUnit, correction, calorificMJPerM3 } = { ...bill, ...change };
  if (meterUnit === 'kWh') return units;
  return gasVolumeToKWh(units, meterUnit, {
    correction: correction ?? gas.correction,
    calorificMJPerM3: calorificMJPerM3 ?? gas.calorificMJPerM3,
    imperialM3PerHundredCubicFeet: gas.imperialM3PerHundredCubicFeet,
  });
}

/** Energy from the bill's own readings, kWh. */
export function readingsKWh(
  bill: Bill,
  meter: BillMeter,
  gas: GasConstants,
  change?: Partial<Bill>,
): number | undefined {
  const units = meteredUnits(meter);
  return units === undefined ? undefined : energyOfUnits(bill, units, gas, change);
}

/** Energy that the bill says or charges for a meter, kWh: printed, or the sum of its lines, or money over price. */
export function printedKWh(bill: Bill, meter: BillMeter): number | undefined {
  if (meter.kWh !== undefined) return meter.kWh;
  let sum = 0;
  for (const charge of bill.charges) {
    if (charge.meter !== meter.name) continue;
    if (charge.kWh !== undefined) sum += charge.kWh;
    else if (charge.pence !== undefined && charge.pencePerKWh) sum += charge.pence / charge.pencePerKWh;
    else return undefined;
  }
  return sum;
}

const decimalsOf = (value: number): number => Math.min(6, (/\.(\d+)$/.exec(String(value))?.[1] ?? '').length);

/** Whether a printed figure is the reckoned one to its own last digit, or within `least`, which covers steps rounded on the way. */
export function agrees(printed: number, reckoned: number, least: number): boolean {
  return Math.abs(printed - reckoned) <= Math.max(least, 0.5 * 10 ** -decimalsOf(printed) + 1e-9);
}
