/** What is known of a record's daily base before looking at it: about how much, and how far it swings with the seasons. */
import type { Household } from '../shapes/household.ts';
import { FLOOR_AREA_M2 } from '../shapes/usual-home.ts';
import { COOKING_ERROR, cookingGasKWh } from './demand-assumptions.ts';
import { together } from './figure.ts';
import type { HotWaterDemand } from './hot-water.ts';
import type { PresentEfficiency } from './present-efficiency.ts';
import type { RecordMeter } from './record.ts';

export interface KnownBase {
  /** Use as metered, kWh a day, with one standard error. */
  readonly perDayKWh: number;
  readonly errorPerDayKWh: number;
  /** One standard error of the methods themselves, for where the record has no say in it. */
  readonly methodErrorPerDayKWh: number;
  /** Half the swing from winter to summer as a share of it, with one standard error. */
  readonly swing: number;
  readonly swingError: number;
}

const DAYS_OF_YEAR = 365.25;
/**
 * Swing of hot water: 7.1 kWh a day in January, 4.5 in July; of lights and appliances together about as much.
 * Source: SAP 10.2 Appendix J as worked for 100 m², Appendix L from memory. Its error: common practice, no source.
 */
const SWING = 0.2;
const SWING_ERROR = 0.06;
/** A home may be far from the method; the record is to speak. Common practice, no source. */
const ERROR_SHARE = 0.45;

/** One standard error of lights and appliances of so many people, as a share. Common practice, no source. */
const OTHER_ERROR = 0.35;

/**
 * What a base usually holds that nobody counts, kWh of heat a year, about as much its standard error: pipes between boiler
 * and cylinder lose 360 or 610 kWh. Source: SAP 2009 Table 3, the middle of its two flat values.
 */
export const UNCOUNTED_KWH = 485;

/** Lights and appliances [kWh a year] of N people on A m²: 231 (A N)^0.4714. Source: SAP 10.2 Appendix L, from memory. */
export const otherElectricityKWh = (people: number, floorAreaM2: number): number =>
  231 * (floorAreaM2 * people) ** 0.4714;

/** Use of every day beside hot water [kWh a year as metered]: cooking on gas, or lights and appliances, with one standard error. */
export function besideWater(meter: RecordMeter, { home, present }: Household, people: number) {
  if (meter === 'whole-house') {
    const kWh = otherElectricityKWh(people, home.floorAreaM2?.value ?? FLOOR_AREA_M2);
    return { kWh, errorKWh: kWh * OTHER_ERROR };
  }
  const kWh = meter === 'fuel' && present.cooksOnGas ? cookingGasKWh(people) : 0;
  return { kWh, errorKWh: kWh * COOKING_ERROR };
}

/** Base of a record [kWh a day as metered] by the hot-water method, cooking and, on a whole-house meter, everything else electric. */
export function knownBase(
  household: Household,
  meter: RecordMeter,
  efficiency: PresentEfficiency,
  water: HotWaterDemand,
): KnownBase {
  const { hotWaterFrom } = household.present;
  const elsewhere = hotWaterFrom === 'immersion' && meter !== 'whole-house';
  const waterKWh = elsewhere ? 0 : water.kWh / efficiency.water.value;
  const beside = besideWater(meter, household, water.people);
  // What nobody counts is in the base all the same; left out, it would pass for heat of the rooms.
  const uncountedKWh = elsewhere || meter === 'whole-house' ? 0 : UNCOUNTED_KWH / efficiency.water.value;
  const perDayKWh = (waterKWh + uncountedKWh + beside.kWh) / DAYS_OF_YEAR;
  const methodErrorKWh = together(
    elsewhere ? 0 : water.errorKWh / efficiency.water.value,
    waterKWh * efficiency.water.error,
    uncountedKWh,
    beside.errorKWh,
  );
  return {
    perDayKWh,
    errorPerDayKWh: ERROR_SHARE * perDayKWh,
    methodErrorPerDayKWh: methodErrorKWh / DAYS_OF_YEAR,
    swing: SWING,
    swingError: SWING_ERROR,
  };
}
