/** Brine and heating water: density, specific heat, freezing point. */
import type { Sourced } from '../shapes/reference.ts';
import type { GlycolKind } from '../shapes/site-readings.ts';

export interface BrineRow {
  /** By mass. */
  readonly percent: number;
  readonly freezingC: number;
  /** At −5, 5 and 15 °C; null where it would be frozen. */
  readonly kgPerM3: readonly (number | null)[];
  readonly jPerKgK: readonly (number | null)[];
}
export interface FluidTables extends Sourced {
  readonly brineTemperaturesC: readonly [number, number, number];
  readonly brine: Readonly<Record<GlycolKind, readonly BrineRow[]>>;
  /** Density of the pure glycol at 20 °C, to turn a share by volume into one by mass. */
  readonly pureKgPerM3: Readonly<Record<GlycolKind, number>>;
  readonly water: readonly { readonly temperatureC: number; readonly kgPerM3: number; readonly jPerKgK: number }[];
}
export interface FluidProperties {
  readonly kgPerM3: number;
  readonly jPerKgK: number;
}

const WATER_AT_20_KG_PER_M3 = 998.2;

/** Straight line between the two points about `x`; the end value beyond the ends. */
function between(points: readonly { readonly x: number; readonly y: number }[], x: number): number {
  const first = points[0]!;
  if (x <= first.x) return first.y;
  for (let index = 1; index < points.length; index += 1) {
    const [low, high] = [points[index - 1]!, points[index]!];
    if (x <= high.x) return low.y + ((x - low.x) / (high.x - low.x)) * (high.y - low.y);
  }
  return points.at(-1)!.y;
}

/** Share by mass [%] of a share by volume at 20 °C [%]: m = vρ_g / (vρ_g + (1 − v)ρ_w). */
export function massPercent(tables: FluidTables, kind: GlycolKind, volumePercent: number): number {
  const glycol = volumePercent * tables.pureKgPerM3[kind];
  return (100 * glycol) / (glycol + (100 - volumePercent) * WATER_AT_20_KG_PER_M3);
}

/** Freezing point [°C] of a brine by its share [% by mass]; null beyond the table, 0 to 40 %. */
export function freezingPoint(tables: FluidTables, kind: GlycolKind, percent: number): number | null {
  const rows = tables.brine[kind];
  if (!(percent >= rows[0]!.percent && percent <= rows.at(-1)!.percent)) return null;
  return between(
    rows.map((row) => ({ x: row.percent, y: row.freezingC })),
    percent,
  );
}

/** Density [kg/m³] and specific heat [J/kgK] of brine at its mean temperature [°C]; null beyond 0 to 40 % by mass. */
export function brineProperties(
  tables: FluidTables,
  kind: GlycolKind,
  percent: number,
  meanC: number,
): FluidProperties | null {
  const rows = tables.brine[kind];
  if (!(percent >= rows[0]!.percent && percent <= rows.at(-1)!.percent)) return null;
  const read = (of: (row: BrineRow) => readonly (number | null)[]) =>
    between(
      rows.map((row) => {
        const known = of(row).flatMap((value, index) =>
          value === null ? [] : [{ x: tables.brineTemperaturesC[index]!, y: value }],
        );
        return { x: row.percent, y: between(known, meanC) };
      }),
      percent,
    );
  return { kgPerM3: read((row) => row.kgPerM3), jPerKgK: read((row) => row.jPerKgK) };
}

/** Density [kg/m³] and specific heat [J/kgK] of heating water at 2 bar; null beyond 5 to 75 °C. */
export function waterProperties(tables: FluidTables, meanC: number): FluidProperties | null {
  const rows = tables.water;
  if (!(meanC >= rows[0]!.temperatureC && meanC <= rows.at(-1)!.temperatureC)) return null;
  const read = (of: (row: (typeof rows)[number]) => number) =>
    between(
      rows.map((row) => ({ x: row.temperatureC, y: of(row) })),
      meanC,
    );
  return { kgPerM3: read((row) => row.kgPerM3), jPerKgK: read((row) => row.jPerKgK) };
}

/** Heat [kW] carried by a flow [l/min] over a temperature difference [K]: Q = V ρ c ΔT. */
export function heatOfFlowKW(litresPerMinute: number, fluid: FluidProperties, differenceK: number): number {
  return (litresPerMinute / 60_000) * fluid.kgPerM3 * (fluid.jPerKgK / 1000) * differenceK;
}
