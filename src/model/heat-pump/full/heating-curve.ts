/** Flow temperature that the rooms call for: weather-compensated by the emitters, or fixed. */

/** Emitter exponents: heat goes with (water − room)^n. EN 442 and EN 1264, from memory. */
const EMITTER_EXPONENT = { radiators: 1.3, floor: 1.1 } as const;
/** Flow less return at the design outdoor temperature, K. Common practice, no source. */
export const USUAL_SPREAD_K = 5;

export interface HeatingCurve {
  readonly control: 'weather-compensated' | 'fixed';
  readonly emitters: 'radiators' | 'floor';
  /** Flow at the design outdoor temperature, °C. */
  readonly designFlowC: number;
  /** Flow less return at the same, K. */
  readonly spreadK: number;
  readonly designOutdoorC: number;
  /** Room temperature that the emitters were sized for, and the one kept now, °C. */
  readonly designRoomC: number;
  readonly roomC: number;
  /** Set above what the emitters need, K. */
  readonly shiftK: number;
}

/** Share of the design heat [1] at an outdoor temperature [°C]: (room − outdoor) / (design room − design outdoor), never below 0. */
const heatShare = (curve: HeatingCurve, outdoorC: number): number =>
  Math.max(0, (curve.roomC - outdoorC) / (curve.designRoomC - curve.designOutdoorC));

/**
 * Mean water temperature [°C] of the emitters at an outdoor temperature [°C].
 * T = room + (mean at design − design room) φ^(1/n); n = 1.3 radiators, 1.1 floor; constant flow rate assumed.
 * Valid for a mean at design above the design room. Source: EN 442 and EN 1264 (exponents from memory).
 */
export function meanWaterTemperature(curve: HeatingCurve, outdoorC: number): number {
  const { designFlowC, spreadK, designRoomC, roomC, emitters } = curve;
  const overRoomK = Math.max(0, designFlowC - spreadK / 2 - designRoomC);
  return roomC + overRoomK * heatShare(curve, outdoorC) ** (1 / EMITTER_EXPONENT[emitters]);
}

/** Flow temperature [°C] at an outdoor temperature [°C]: mean + half the spread × φ + shift; the design flow where it is fixed. */
export function flowTemperature(curve: HeatingCurve, outdoorC: number): number {
  if (curve.control === 'fixed') return curve.designFlowC + curve.shiftK;
  return meanWaterTemperature(curve, outdoorC) + (curve.spreadK / 2) * heatShare(curve, outdoorC) + curve.shiftK;
}

/** Outdoor temperatures that the table below spans, °C, in quarters of a kelvin. */
const LEAST_C = -40;
const MOST_C = 45;
const PER_K = 4;

/** The curve as a table, so that a half-hour needs no power of its own. Read with `readFlow`. */
export function flowTable(curve: HeatingCurve): Float64Array {
  return Float64Array.from({ length: (MOST_C - LEAST_C) * PER_K + 1 }, (_, i) =>
    flowTemperature(curve, LEAST_C + i / PER_K),
  );
}

/** Flow temperature [°C] from a table; within 0.01 K of the curve, except at the kink where heating ends. */
export function readFlow(table: Float64Array, outdoorC: number): number {
  const at = (Math.min(MOST_C, Math.max(LEAST_C, outdoorC)) - LEAST_C) * PER_K;
  const below = Math.min(table.length - 2, at | 0);
  return table[below]! + (at - below) * (table[below + 1]! - table[below]!);
}
