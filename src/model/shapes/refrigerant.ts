/** A refrigerant as the cycle needs it: a saturation table and, beside each row, vapour heated beyond it. */
import { z } from 'zod';
import type { Sourced } from './reference.ts';

export const REFRIGERANTS = ['R410A', 'R407C', 'R134a', 'R32', 'R290', 'R454B'] as const;
export const RefrigerantName = z.enum(REFRIGERANTS);
export type RefrigerantName = z.infer<typeof RefrigerantName>;

/** Superheats [K] at which the enthalpy of the vapour is tabulated; at 0 the gain is nought. */
export const SUPERHEATS_K = [10, 25, 50, 90, 140] as const;

/** One temperature of the table. Pressures are absolute; h = 200 kJ/kg and s = 1 kJ/kgK in liquid at 0 °C. */
export interface SaturationRow {
  readonly temperatureC: number;
  /** Where the liquid starts to boil. */
  readonly bubbleBar: number;
  /** Where the vapour starts to condense; in a blend below the bubble pressure. */
  readonly dewBar: number;
  /** At the bubble pressure, kJ/kg. */
  readonly latentKJPerKg: number;
  readonly liquidKgPerM3: number;
  readonly vapourKgPerM3: number;
  readonly liquidKJPerKg: number;
  readonly vapourKJPerKg: number;
  readonly vapourKJPerKgK: number;
  /** Enthalpy gained [kJ/kg] at the dew pressure by each of SUPERHEATS_K above the dew temperature. */
  readonly gainKJPerKg: readonly number[];
}

export interface Refrigerant extends Sourced {
  readonly name: RefrigerantName;
  readonly criticalC: number;
  /** At 1.01325 bar; of a blend the bubble point. */
  readonly boilingC: number;
  /** ISO 817: A1 does not burn, A2L burns slowly, A3 burns readily. From memory. */
  readonly safetyClass: 'A1' | 'A2L' | 'A3';
  /** Global warming potential over 100 years, fourth assessment report. From memory. */
  readonly warmingAr4: number;
  readonly rows: readonly SaturationRow[];
}

export type Refrigerants = Readonly<Record<RefrigerantName, Refrigerant>>;
