/** COP and output of a machine as tables over source and flow, read a hundred thousand times a second. */
import type { RatedPoint } from '../../shapes/household.ts';
import { copThrough } from './cop-shape.ts';
import { LEAST_LIFT_K, throughPoints } from './rated-points.ts';

/** Source and flow that the tables span, °C, one node a kelvin; what lies beyond is taken at the edge. */
export const SOURCE_FROM_C = -30;
export const SOURCE_TO_C = 40;
export const FLOW_FROM_C = 15;
export const FLOW_TO_C = 80;
/** Nodes of one source temperature, flow by flow. */
const WIDTH = FLOW_TO_C - FLOW_FROM_C + 1;
const HEIGHT = SOURCE_TO_C - SOURCE_FROM_C + 1;

/** `values[(source − SOURCE_FROM_C) × WIDTH + flow − FLOW_FROM_C]`. */
export type Surface = Float64Array;

const fill = (value: (sourceC: number, flowC: number) => number): Surface =>
  Float64Array.from({ length: WIDTH * HEIGHT }, (_, i) =>
    value(SOURCE_FROM_C + Math.floor(i / WIDTH), FLOW_FROM_C + (i % WIDTH)),
  );

/** Value of a surface [its unit] at source and flow [°C], straight between the nodes. */
export function readSurface(surface: Surface, sourceC: number, flowC: number): number {
  const s = Math.min(SOURCE_TO_C, Math.max(SOURCE_FROM_C, sourceC)) - SOURCE_FROM_C;
  const f = Math.min(FLOW_TO_C, Math.max(FLOW_FROM_C, flowC)) - FLOW_FROM_C;
  const row = Math.min(HEIGHT - 2, s | 0);
  const column = Math.min(WIDTH - 2, f | 0);
  const at = row * WIDTH + column;
  const along = f - column;
  const low = surface[at]! + along * (surface[at + 1]! - surface[at]!);
  const high = surface[at + WIDTH]! + along * (surface[at + WIDTH + 1]! - surface[at + WIDTH]!);
  return low + (s - row) * (high - low);
}

export interface PerHeat {
  /** Electricity for one unit of heat, 1 / COP [1]. */
  readonly surface: Surface;
  /** Whether the rated points had to be bent, since a greater lift gave a better COP in them. */
  readonly bent: boolean;
}

/** Whether a node lies where heat is really made: lifts well above the least, sources and flows that homes have. */
function isInUse(at: number): boolean {
  const sourceC = SOURCE_FROM_C + Math.floor(at / WIDTH);
  const flowC = FLOW_FROM_C + (at % WIDTH);
  return flowC - sourceC >= LEAST_LIFT_K + 10 && sourceC >= -10 && sourceC <= 15 && flowC <= 60;
}

/** By how much a node may move before the points count as bent; a defrosting dip below it is left alone. */
const BENT = 0.02;

/**
 * Electricity a unit of heat [1] over source and flow: 1 / COP by `copThrough`, the COP brought down to the share [1]
 * that an installed machine reaches.
 * 1/COP lies all but straight between nodes of a kelvin (error below 0.01 %). A warmer flow or a colder source
 * never takes less: where points say so, the table is bent to the least that does not; and never more than 1, a
 * resistance heater.
 */
export function perHeatSurface(points: readonly RatedPoint[], installedShare = 1): PerHeat {
  const ofPoints = kept.get(points) ?? new Map<number, PerHeat>();
  kept.set(points, ofPoints);
  const known = ofPoints.get(installedShare) ?? bendSurface(points, installedShare);
  ofPoints.set(installedShare, known);
  return known;
}

/** Kept by the list of points, so that a slider does not make the table anew. */
const kept = new WeakMap<readonly RatedPoint[], Map<number, PerHeat>>();

function bendSurface(points: readonly RatedPoint[], installedShare: number): PerHeat {
  const copAt = copThrough(points);
  const surface = fill((sourceC, flowC) => Math.min(1, 1 / (installedShare * copAt(sourceC, flowC))));
  let bent = false;
  const raise = (at: number, neighbour: number) => {
    if (surface[at]! >= surface[neighbour]!) return;
    if (surface[at]! < surface[neighbour]! * (1 - BENT) && isInUse(at)) bent = true;
    surface[at] = surface[neighbour]!;
  };
  for (let row = HEIGHT - 1; row >= 0; row--) {
    for (let column = 0; column < WIDTH; column++) {
      const at = row * WIDTH + column;
      if (column > 0) raise(at, at - 1);
      if (row < HEIGHT - 1) raise(at, at + WIDTH);
    }
  }
  return { surface, bent };
}

/** Output grows with the source, a kelvin: compressor suction density. From memory. */
const OUTPUT_PER_SOURCE_K = 0.03;

/** Most output [kW] over source and flow, through points where it is known; the source's growth between and beyond them. */
export function outputSurface(known: readonly { sourceC: number; flowC: number; outputKW: number }[]): Surface {
  const first = known[0]!;
  const grows = (sourceC: number) => Math.min(1.6, Math.max(0.4, 1 + OUTPUT_PER_SOURCE_K * (sourceC - first.sourceC)));
  const many = new Set(known.map(({ sourceC }) => sourceC)).size > 1;
  const shape = many ? () => 1 : grows;
  // Points at one source have all of that source, where the growth is 1.
  const ratio = throughPoints(known.map((point) => ({ ...point, value: point.outputKW })));
  return fill((sourceC, flowC) => ratio(sourceC, flowC) * shape(sourceC));
}
