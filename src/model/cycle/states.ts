/** Heat content of the refrigerant at the corners of the cycle, read from its table. */

import { type Refrigerant, type SaturationRow, SUPERHEATS_K } from '../shapes/refrigerant.ts';
import { cubicAt, findRising, through } from './interpolate.ts';
import { pressureAt, temperatureAt } from './saturation.ts';

const KELVIN = 273.15;
/** Superheat on a stretched scale, on which the tabulated ones stand evenly: a polynomial in it does not swing. */
const stretch = (superheatK: number) => Math.log1p(superheatK / 20);
const NODES = [0, ...SUPERHEATS_K].map(stretch);
export const MOST_SUPERHEAT_K = SUPERHEATS_K.at(-1)!;

const column = (refrigerant: Refrigerant, read: (row: SaturationRow) => number, temperatureC: number) =>
  cubicAt(
    refrigerant.rows.map((row) => row.temperatureC),
    refrigerant.rows.map(read),
    temperatureC,
  );

/** Vapour along one pressure: its enthalpy and entropy by superheat, and both ways back. */
export interface Isobar {
  readonly dewC: number;
  /** kJ/kg at a superheat [K] of 0 to 140. */
  enthalpy(superheatK: number): number;
  /** kJ/kgK. */
  entropy(superheatK: number): number;
  /** Superheat [K] at that enthalpy, null beyond the table. */
  superheatAtEnthalpy(kJPerKg: number): number | null;
  superheatAtEntropy(kJPerKgK: number): number | null;
}

/**
 * Vapour at a pressure [bar absolute]; null outside the saturation table.
 * Enthalpy: polynomial in ln(1 + superheat/20 K) through the tabulated gains at 0, 10, 25, 50, 90 and 140 K; entropy: s = s_dew + ∫ dh / T.
 */
export function vapourAt(refrigerant: Refrigerant, barAbsolute: number): Isobar | null {
  const dewC = temperatureAt(refrigerant, barAbsolute, 'dew');
  if (dewC === null) return null;
  const dewEnthalpy = column(refrigerant, (row) => row.vapourKJPerKg, dewC);
  const dewEntropy = column(refrigerant, (row) => row.vapourKJPerKgK, dewC);
  const gains = [0, ...SUPERHEATS_K.map((_, index) => column(refrigerant, (row) => row.gainKJPerKg[index]!, dewC))];
  const gain = (superheatK: number) => through(NODES, gains, stretch(superheatK));
  const enthalpy = (superheatK: number) => dewEnthalpy + gain(superheatK);
  // ∫ dh/T in parts: h/T at the end plus ∫ h/T² dT by Simpson's rule, in steps of 5 K or less.
  const entropy = (superheatK: number) => {
    const steps = Math.max(1, Math.ceil(superheatK / 5));
    const width = superheatK / steps;
    const part = (k: number) => gain(k) / (dewC + KELVIN + k) ** 2;
    let sum = 0;
    for (let step = 0; step < steps; step += 1) {
      const from = step * width;
      sum += (width / 6) * (part(from) + 4 * part(from + width / 2) + part(from + width));
    }
    return dewEntropy + gain(superheatK) / (dewC + KELVIN + superheatK) + sum;
  };
  return {
    dewC,
    enthalpy,
    entropy,
    superheatAtEnthalpy: (target) => findRising(enthalpy, target, 0, MOST_SUPERHEAT_K),
    superheatAtEntropy: (target) => findRising(entropy, target, 0, MOST_SUPERHEAT_K),
  };
}

/**
 * Enthalpy [kJ/kg] of liquid at a temperature [°C] and a pressure [bar absolute] above its bubble pressure; null
 * outside the table. h = h_f(T) + (p − p_bubble)(1 − βT)/ρ with β = −(dρ/dT)/ρ along the saturation line.
 */
export function liquidEnthalpy(refrigerant: Refrigerant, temperatureC: number, barAbsolute: number): number | null {
  const bubbleBar = pressureAt(refrigerant, temperatureC, 'bubble');
  if (bubbleBar === null) return null;
  const density = (at: number) => column(refrigerant, (row) => row.liquidKgPerM3, at);
  const kgPerM3 = density(temperatureC);
  const expansionPerK = (density(temperatureC - 1) - density(temperatureC + 1)) / 2 / kgPerM3;
  const saturated = column(refrigerant, (row) => row.liquidKJPerKg, temperatureC);
  const pressKJPerKg = ((barAbsolute - bubbleBar) * 100 * (1 - expansionPerK * (temperatureC + KELVIN))) / kgPerM3;
  return saturated + pressKJPerKg;
}

/** Enthalpies [kJ/kg] of boiling liquid and of dry vapour at an evaporating pressure [bar absolute]. */
export function boilingEnthalpies(
  refrigerant: Refrigerant,
  barAbsolute: number,
): { liquidKJPerKg: number; vapourKJPerKg: number } | null {
  const bubbleC = temperatureAt(refrigerant, barAbsolute, 'bubble');
  const dewC = temperatureAt(refrigerant, barAbsolute, 'dew');
  if (bubbleC === null || dewC === null) return null;
  return {
    liquidKJPerKg: column(refrigerant, (row) => row.liquidKJPerKg, bubbleC),
    vapourKJPerKg: column(refrigerant, (row) => row.vapourKJPerKg, dewC),
  };
}
