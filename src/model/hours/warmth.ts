/** How much warmth a home holds, and how fast it loses it: one thermal mass. */
import type { Comfort } from '../shapes/choices.ts';
import type { FittedWarmth } from './fit-warmth.ts';

/** Heat that a home holds for each kelvin and each square metre of floor, kJ/(m² K). Source: ISO 13790, 12.3.1.2. */
const KJ_PER_M2_K = { 'very light': 80, light: 110, medium: 165, heavy: 260, 'very heavy': 370 } as const;
/**
 * Time constant where nobody has said how the home is built, hours: the low end of what 10,000 thermostats in North
 * America mostly showed in winter, 15 to 55 (John et al.), so that shifting never looks better than is known.
 */
const CAUTIOUS_HOURS = 15;
/** Shorter than in any home of masonry or timber; from memory. */
const LEAST_HOURS = 5;

/** Share of the warmth above outdoors that is gone after some hours: 1 − e^(−t / τ), both in hours. Source: ISO 13790. */
export const shareCooled = (hours: number, timeConstantHours: number): number =>
  1 - Math.exp(-hours / timeConstantHours);

export interface HomeWarmth {
  readonly kWhPerK: number;
  readonly timeConstantHours: number;
  readonly known: 'typed' | 'fitted' | 'built' | 'assumed';
  readonly fitted?: FittedWarmth;
}

/**
 * Warmth held [kWh/K] and time constant [hours] of a home that loses `heatLossWPerK`: by a typed time constant, else by the one that
 * its own half-hours show, else by how heavily it is built and its floor [m²], else assumed. τ = capacity / loss.
 */
export function homeWarmth(
  comfort: Comfort,
  heatLossWPerK: number,
  floorAreaM2: number | undefined,
  fitted: FittedWarmth | null = null,
): HomeWarmth {
  const kWPerK = heatLossWPerK / 1000;
  const { mass, timeConstantHours } = comfort;
  if (!timeConstantHours && fitted) {
    // The low end, so that shifting never looks better than is known.
    const hours = Math.max(fitted.low, LEAST_HOURS);
    return { kWhPerK: hours * kWPerK, timeConstantHours: hours, known: 'fitted', fitted };
  }
  if (!timeConstantHours && mass && floorAreaM2) {
    const kWhPerK = (KJ_PER_M2_K[mass] * floorAreaM2) / 3600;
    return { kWhPerK, timeConstantHours: kWhPerK / kWPerK, known: 'built' };
  }
  const hours = timeConstantHours ?? CAUTIOUS_HOURS;
  return { kWhPerK: hours * kWPerK, timeConstantHours: hours, known: timeConstantHours ? 'typed' : 'assumed' };
}
