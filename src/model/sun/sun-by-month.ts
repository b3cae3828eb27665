/** What panels make in each month of a usual year, by the standard's radiation on a slope, and how much of it a home uses by its monthly rule. */
import { COMMON_MONTH_DAYS } from '../calendar/civil.ts';
import type { ClimateRegion, Facing, Shading, SunFacts } from '../shapes/reference.ts';

/** Panels that lie on one slope. */
export interface Panels {
  readonly kWp: number;
  readonly facing: Facing;
  /** 0 flat, 90 on a wall. */
  readonly pitchDegrees: number;
  readonly shading: Shading;
  /** Share of the radiation that shade leaves, where somebody knows it better. */
  readonly shadingFactor?: number | undefined;
}

const RADIANS = Math.PI / 180;
const KWH_PER_M2_AND_DAY = 0.024;

/** Mean radiation on the flat in a region [W/m², twelve months]; the country's first region stands in for one without its own. */
export const horizontalWPerM2 = (region: ClimateRegion, sun: SunFacts): readonly number[] =>
  sun.horizontalWPerM2[region.id] ?? Object.values(sun.horizontalWPerM2)[0]!;

/**
 * Mean radiation on a slope in a month, 0 to 11 [W/m²]: S = H (A cos² + B cos + C) of latitude less declination, with A, B
 * and C cubic in the sine of half the slope. Source: SAP 10.2 Appendix U, section U3.2.
 */
export function slopeWPerM2(
  { facing, pitchDegrees }: Pick<Panels, 'facing' | 'pitchDegrees'>,
  region: ClimateRegion,
  month: number,
  sun: SunFacts,
): number {
  const flat = horizontalWPerM2(region, sun)[month]!;
  if (pitchDegrees === 0) return flat;
  const [k1, k2, k3, k4, k5, k6, k7, k8, k9] = sun.slope[facing] as [number, ...number[]] & { length: 9 };
  const s = Math.sin((pitchDegrees * RADIANS) / 2);
  const cubic = (three: number, two: number, one: number) => ((three * s + two) * s + one) * s;
  const cos = Math.cos((region.latitudeN - sun.declinationDegrees[month]!) * RADIANS);
  return Math.max(0, flat * ((cubic(k1, k2!, k3!) * cos + cubic(k4!, k5!, k6!)) * cos + cubic(k7!, k8!, k9!) + 1));
}

/** Electricity of one slope's panels by month [kWh]: 0.8 × kWp × radiation [kWh/m²] × shading. Source: SAP 10.2 Appendix M1. */
export function panelsByMonth(panels: Panels, region: ClimateRegion, sun: SunFacts): readonly number[] {
  const shade = panels.shadingFactor ?? sun.shading[panels.shading].value;
  return COMMON_MONTH_DAYS.map(
    (days, month) =>
      sun.performance.value * panels.kWp * KWH_PER_M2_AND_DAY * days * slopeWPerM2(panels, region, month, sun) * shade,
  );
}

/** Electricity of all slopes by month of a usual year [kWh]. */
export function sunByMonth(slopes: readonly Panels[], region: ClimateRegion, sun: SunFacts): readonly number[] {
  const each = slopes.map((panels) => panelsByMonth(panels, region, sun));
  return COMMON_MONTH_DAYS.map((_, month) => each.reduce((sum, months) => sum + months[month]!, 0));
}

/** A larger battery counts as this in the standard's rule of own use. */
const MOST_BATTERY_KWH = 15;

/**
 * Solar electricity used in the home [kWh], of monthly amounts made and needed: beta = min(exp(−C1 (C2 R)^C3), 1/R), where R
 * is made over needed and the constants hang on the battery's usable kWh, at most 15. Source: SAP 10.2 Appendix M1 section 3.
 */
export function ownUseByStandard(sunKWh: readonly number[], neededKWh: readonly number[], batteryKWh: number): number {
  const kWh = Math.min(batteryKWh, MOST_BATTERY_KWH);
  const [c1, c2, c3] = [1.61 - 0.0973 * kWh, 0.415 - 0.00776 * kWh, 0.511 + 0.0866 * kWh];
  return sunKWh.reduce((sum, made, month) => {
    const needed = neededKWh[month]!;
    if (!(made > 0 && needed > 0)) return sum;
    const r = made / needed;
    return sum + made * Math.min(Math.exp(-c1 * (r * c2) ** c3), 1 / r);
  }, 0);
}
