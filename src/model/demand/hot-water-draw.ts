/** Hot water drawn off in each month: SAP 10.2 Appendix J, and by litres a day where they are known. */
import type { Reference } from '../shapes/reference.ts';
import { HOT_C } from '../shapes/usual-home.ts';

export interface HotWaterUse {
  readonly people: number;
  /** Mixed water at the shower head, litre/min; 7 for a vented mixer, 11 unvented, 12 pumped. */
  readonly showerLitresPerMinute: number;
  /** False where the showers heat their own water. */
  readonly showersDraw: boolean;
}

export interface MonthlyDraw {
  /** Hot water at 52 °C, litres a day, by month. */
  readonly showers: readonly number[];
  readonly baths: readonly number[];
  readonly other: readonly number[];
  readonly litresPerDay: readonly number[];
  readonly kWh: readonly number[];
}

const SHOWER_MINUTES = 6;
const SHOWER_C = 41;
const BATH_LITRES = 73;
const BATH_C = 42;
/** kJ to warm a litre by 1 K, and kJ in a kWh. */
const KJ_PER_LITRE_K = 4.18;
const KJ_PER_KWH = 3600;

/** Energy [kWh] to warm water drawn at `litresPerDay` over `days` from `coldC` to `hotC`. */
export function warmingKWh(litresPerDay: number, days: number, coldC: number, hotC: number): number {
  return (KJ_PER_LITRE_K * litresPerDay * days * Math.max(0, hotC - coldC)) / KJ_PER_KWH;
}

/**
 * Hot water of a home with a bath and a mixer shower [litre/day and kWh, by month]:
 * showers (0.45 N + 0.65) × flow × 6 min × f5 × (41 − Tc)/(52 − Tc); baths (0.13 N + 0.19) × 73 × f5 × (42 − Tc)/(52 − Tc);
 * other (9.8 N + 14) × f2; energy 4.18 × litres × days × (52 − Tc)/3600. Valid for 1 to about 10 people.
 * Source: SAP 10.2 Appendix J, equations J1 to J11 (shower count and energy line from memory, confirmed by two worksheets).
 */
export function drawOfPeople(
  use: HotWaterUse,
  monthDays: readonly number[],
  tables: Reference['hotWater'],
): MonthlyDraw {
  const showersPerDay = use.showersDraw ? 0.45 * use.people + 0.65 : 0;
  const bathsPerDay = 0.13 * use.people + 0.19;
  const otherLitres = 9.8 * use.people + 14;
  const hotShare = (mixedC: number, m: number) => (mixedC - tables.coldMainsC[m]!) / (HOT_C - tables.coldMainsC[m]!);
  const showers = monthDays.map(
    (_, m) =>
      showersPerDay * use.showerLitresPerMinute * SHOWER_MINUTES * tables.behaviourFactor[m]! * hotShare(SHOWER_C, m),
  );
  const baths = monthDays.map((_, m) => bathsPerDay * BATH_LITRES * tables.behaviourFactor[m]! * hotShare(BATH_C, m));
  const other = monthDays.map((_, m) => otherLitres * tables.otherUseFactor[m]!);
  const litresPerDay = showers.map((value, m) => value + baths[m]! + other[m]!);
  const kWh = litresPerDay.map((litres, m) => warmingKWh(litres, monthDays[m]!, tables.coldMainsC[m]!, HOT_C));
  return { showers, baths, other, litresPerDay, kWh };
}

/**
 * Hot water by litres a day [kWh, by month]: 4.18 × litres × f5 × days × (hot − Tc)/3600.
 * Source: the energy line and Tables J1 and J5 of SAP 10.2 Appendix J.
 */
export function drawOfLitres(
  litresPerDay: number,
  hotC: number,
  monthDays: readonly number[],
  tables: Reference['hotWater'],
): readonly number[] {
  return monthDays.map((days, m) =>
    warmingKWh(litresPerDay * tables.behaviourFactor[m]!, days, tables.coldMainsC[m]!, hotC),
  );
}
