/** Outdoor temperature above which a home needs no heating, out of how it is kept warm and what warms it besides. */
import type { Household } from '../shapes/household.ts';
import { tell, type Wording } from '../shapes/told.ts';
import { FLOOR_AREA_M2 } from '../shapes/usual-home.ts';
import type { Grade } from '../shapes/working.ts';
import { peopleOfFloorArea } from './occupancy.ts';

/** No home does without heating on colder days than this, whatever its gains: the foot of the signature's search, °C. */
const BASE_LEAST_C = 8;
/**
 * How far the whole home, day and night, lies below the temperature asked for: K for each W/K of heat loss per m² of
 * floor. SAP 10.2 Table 9 (two heated spells a day, other rooms cooler) gives about 1.1 for homes between 1 and 4 W/m²K;
 * living rooms and bedrooms measured in English homes lie closer together. The middle is taken. All from memory.
 */
const DROP_K_PER_W_M2K = 0.65;
const DROP_MOST_K = 4;
/** Sun that is of use in the heating months, W per m² of floor: SAP 10.2 Tables 6 and U3 for ordinary windows, from memory. */
const SUN_W_PER_M2 = 2.5;
/** Mean outdoor temperature of the heating months, October to April, UK average of the region table, °C. */
const HEATING_MONTHS_C = 7;
/** Heat that the fabric of an ordinary home takes up, kJ per m² of floor and K. SAP 10.2 Table 1f, from memory. */
const MASS_KJ_PER_M2K = 250;
/** One standard error: of the drop and of the gains as shares, and of the rest, K. Common practice, no source. */
const ERROR = { drop: 0.5, gains: 0.3, restK: 0.8 };

export interface BaseTemperature {
  readonly value: number;
  /** One standard error, K. */
  readonly errorK: number;
  readonly grade: Grade;
  readonly origin: Wording;
}

/** Base temperature [°C] Tb = Ti − gains/HLC from room temperature [°C], gains [W], heat loss coefficient [W/K]. */
export function baseFromGains(roomC: number, gainsW: number, heatLossWPerK: number): number {
  return roomC - gainsW / heatLossWPerK;
}

/**
 * Heat from people, cooking, lights and appliances [W] of N people on A m²: 60 N + (35 + 7 N) + 25 N − 40 N + 26.4 (A N)^0.4714:
 * bodies, cooking, hot water, what cold water and evaporation take, appliances and lights. Valid for 1 to about 10 people.
 * Source: SAP 10.2 Table 5 and Appendix L, from memory.
 */
export function internalGainsW(people: number, floorAreaM2: number): number {
  return 35 + 52 * people + 26.4 * (floorAreaM2 * people) ** 0.4714;
}

/** How far the mean of the home lies below the temperature asked for [K], by heat loss [W/K] and floor area [m²]. */
export function meanRoomDropK(heatLossWPerK: number, floorAreaM2: number): number {
  return Math.min(DROP_MOST_K, (DROP_K_PER_W_M2K * heatLossWPerK) / floorAreaM2);
}

/**
 * Share of the gains that is of use, η = (1 − γ^a)/(1 − γ^(a + 1)), γ gains over losses, a = 1 + τ/15,
 * τ = 250/(3.6 × W/m²K) hours. Source: SAP 10.2 Table 9a, from memory.
 */
export function usefulShare(gainsW: number, lossesW: number, lossWPerM2K: number): number {
  if (!(lossesW > 0)) return 0;
  const a = 1 + MASS_KJ_PER_M2K / (3.6 * lossWPerM2K) / 15;
  const ratio = gainsW / lossesW;
  if (Math.abs(ratio - 1) < 1e-6) return a / (a + 1);
  // Beyond 1 the powers of its inverse are taken, which do not run over.
  const inverse = 1 / ratio;
  if (ratio > 1) return (inverse - inverse ** (a + 1)) / (1 - inverse ** (a + 1));
  return (1 - ratio ** a) / (1 - ratio ** (a + 1));
}

/** Base temperature [°C] with its error: typed, or (room asked for − drop) − useful gains of people and sun/HLC. */
export function findBaseTemperature(household: Household, roomC: number, heatLossWPerK: number): BaseTemperature {
  const { heat, home } = household;
  if (heat.baseC) return { ...heat.baseC, errorK: ERROR.restK };
  const areaM2 = home.floorAreaM2?.value ?? FLOOR_AREA_M2;
  const people = home.people?.value ?? peopleOfFloorArea(areaM2);
  const dropK = meanRoomDropK(heatLossWPerK, areaM2);
  const allGainsW = internalGainsW(people, areaM2) + SUN_W_PER_M2 * areaM2;
  const lossesW = heatLossWPerK * (roomC - dropK - HEATING_MONTHS_C);
  const gainsW = allGainsW * usefulShare(allGainsW, lossesW, heatLossWPerK / areaM2);
  const gainsK = gainsW / heatLossWPerK;
  const value = Math.max(BASE_LEAST_C, baseFromGains(roomC - dropK, gainsW, heatLossWPerK));
  const origin = tell('base-by-gains', { roomC, dropK, gainsW, wPerK: heatLossWPerK });
  const errorK = Math.hypot(ERROR.restK, ERROR.drop * dropK, Math.min(3, ERROR.gains * gainsK));
  return { value, errorK, grade: 'assumed', origin };
}
