/** Everyday figures of one home that customers ask for: warmth of a radiator, hot water, ground. Rough guides, no design. */
import type { Appraisal } from './shapes/appraisal.ts';
import type { Household } from './shapes/household.ts';
import { CYLINDER_LITRES, HOT_C } from './shapes/usual-home.ts';

const COLD_C = 10;
const SHOWER_C = 40;
/** kWh to warm a litre by 1 K. */
const KWH_PER_LITRE_K = 4.18 / 3600;

export interface WaterAtHome {
  readonly tankLitres: number;
  readonly storeC: number;
  /** Whether tank and temperature are the home's own. */
  readonly isOwn: boolean;
  /** Litres at 40 °C that a full tank gives at most, mixed with mains water of 10 °C. */
  readonly mixedLitres: number;
  /** What the machine gives: typed, else as much as the heat loss; null where neither is known. */
  readonly kW: number | null;
  /** From cold to the store temperature, minutes without losses; null where the machine's output is not known. */
  readonly reheatMinutes: number | null;
}

/** Hot water of a full tank, and how long the machine takes to heat it from 10 °C. Its output is the typed one, else the heat loss. */
export function waterAtHome({
  hotWater,
  machine,
  heat,
}: Pick<Household, 'hotWater' | 'machine' | 'heat'>): WaterAtHome {
  const tankLitres = hotWater.cylinderLitres?.value ?? CYLINDER_LITRES;
  const storeC = hotWater.hotC?.value ?? HOT_C;
  const kW = machine.full?.capacityKW?.value ?? heat.heatLossKW?.value;
  return {
    tankLitres,
    storeC,
    isOwn: hotWater.cylinderLitres !== undefined,
    mixedLitres: (tankLitres * (storeC - COLD_C)) / (SHOWER_C - COLD_C),
    kW: kW ?? null,
    reheatMinutes: kW === undefined ? null : (tankLitres * (storeC - COLD_C) * KWH_PER_LITRE_K * 60) / kW,
  };
}

/** Radiator exponent and rating: EN 442 gives the watts at 50 K above the room; the exponent is not checked in the print. */
const EXPONENT = 1.3;
const RATED_K = 50;
const DROP_K = 5;

/** Share of a radiator's rated watts (50 K) that it gives at this flow [°C], the water leaving 5 K cooler. */
export const radiatorShare = (flowC: number, roomC: number): number =>
  (Math.max(0, flowC - DROP_K / 2 - roomC) / RATED_K) ** EXPONENT;

export interface GroundAtHome {
  /** Heat on the coldest day, and the part of it from the ground [kW]. */
  readonly heatKW: number;
  readonly groundKW: number;
  /** Rough length of boreholes [m] and area of trenches [m²], least and most. */
  readonly boreM: readonly [number, number];
  readonly trenchM2: readonly [number, number];
}

/** What the ground can give: watts by the metre of borehole and by the square metre of trench, least and most. */
export interface GroundYield {
  readonly boreWPerM: readonly [number, number];
  readonly trenchWPerM2: readonly [number, number];
}

/** Null where nobody knows the heat loss. The part from the ground is heat × (1 − 1/factor for the rooms). */
export function groundAtHome(household: Household, appraisal: Appraisal, yields: GroundYield): GroundAtHome | null {
  const heatKW = household.heat.heatLossKW?.value;
  if (heatKW === undefined) return null;
  const groundKW = heatKW * (1 - 1 / appraisal.machine.space.value);
  const span = ([least, most]: readonly [number, number]) =>
    [(groundKW * 1000) / most, (groundKW * 1000) / least] as const;
  return { heatKW, groundKW, boreM: span(yields.boreWPerM), trenchM2: span(yields.trenchWPerM2) };
}
