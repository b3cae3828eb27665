/** Seasonal coefficient of performance by the bin method of EN 14825. */
import type { Sourced } from '../../shapes/reference.ts';
import { partLoadShare } from './part-load.ts';

export interface BinClimate extends Sourced {
  readonly designC: number;
  /** Hours at full load that a season amounts to, h. */
  readonly equivalentHours: number;
  readonly thermostatOffHours: number;
  readonly standbyHours: number;
  readonly crankcaseHours: number;
  readonly offHours: number;
  readonly bins: readonly { readonly outdoorC: number; readonly hours: number }[];
}

/** One declared point: outdoor temperature, output and COP at it. */
export interface DeclaredPoint {
  readonly outdoorC: number;
  readonly outputKW: number;
  readonly cop: number;
}

export interface ScopInput {
  readonly climate: BinClimate;
  readonly designKW: number;
  /** At least two, in any order. */
  readonly points: readonly DeclaredPoint[];
  /** Degradation coefficient of EN 14825, 0.9 where none was tested. */
  readonly degradation: number;
  /** Powers while nothing is heated, kW. */
  readonly thermostatOffKW: number;
  readonly standbyKW: number;
  readonly crankcaseKW: number;
  readonly offKW: number;
}

export interface ScopBin {
  readonly outdoorC: number;
  readonly hours: number;
  readonly loadKW: number;
  readonly outputKW: number;
  readonly supplementKW: number;
  readonly cop: number;
  readonly heatKWh: number;
  readonly electricityKWh: number;
}

export interface Scop {
  readonly on: number;
  readonly net: number;
  readonly scop: number;
  readonly bins: readonly ScopBin[];
  readonly heatKWh: number;
  readonly electricityKWh: number;
  readonly supplementKWh: number;
  /** Reference heat of the year Q_H and its electricity Q_HE. */
  readonly yearHeatKWh: number;
  readonly yearElectricityKWh: number;
}

/** Share of the design load [1] at an outdoor temperature [°C]: (T − 16) / (T_design − 16), never below 0. Source: EN 14825. */
export const partLoadRatio = (outdoorC: number, designC: number): number =>
  Math.max(0, (outdoorC - 16) / (designC - 16));

/**
 * SCOP [1] of a machine from its declared points: SCOPon over the bins with the supplementary heater, SCOPnet without
 * it, and SCOP with the powers of the hours off: Q_H / (Q_H / SCOPon + Σ hours × power).
 * Output and COP (part load taken off at the declared points) run straight between points and beyond the outer ones.
 * Valid for brine, water and air to water machines of fixed output. Source: EN 14825:2018, formulas as transcribed in a
 * public open-source calculation; Regulation (EU) 811/2013 Annex VII.
 */
export function seasonalScop(input: ScopInput): Scop {
  const { climate, designKW, degradation } = input;
  const load = (outdoorC: number) => designKW * partLoadRatio(outdoorC, climate.designC);
  const points = input.points
    .map((point) => ({
      ...point,
      binCop: point.cop * partLoadShare(load(point.outdoorC) / point.outputKW, degradation),
    }))
    .sort((a, b) => a.outdoorC - b.outdoorC);
  const bins = climate.bins.map(({ outdoorC, hours }): ScopBin => {
    const [low, high] = neighbours(points, outdoorC);
    const along = (outdoorC - low.outdoorC) / (high.outdoorC - low.outdoorC);
    const outputKW = low.outputKW + along * (high.outputKW - low.outputKW);
    const cop = low.binCop + along * (high.binCop - low.binCop);
    const loadKW = load(outdoorC);
    const supplementKW = Math.max(0, loadKW - outputKW);
    const electricityKW = (loadKW - supplementKW) / cop + supplementKW;
    return {
      outdoorC,
      hours,
      loadKW,
      outputKW,
      supplementKW,
      cop,
      heatKWh: hours * loadKW,
      electricityKWh: hours * electricityKW,
    };
  });
  const sum = (value: (bin: ScopBin) => number) => bins.reduce((total, bin) => total + value(bin), 0);
  const heatKWh = sum((bin) => bin.heatKWh);
  const electricityKWh = sum((bin) => bin.electricityKWh);
  const supplementKWh = sum((bin) => bin.hours * bin.supplementKW);
  const on = heatKWh / electricityKWh;
  const yearHeatKWh = designKW * climate.equivalentHours;
  const yearElectricityKWh =
    yearHeatKWh / on +
    climate.thermostatOffHours * input.thermostatOffKW +
    climate.standbyHours * input.standbyKW +
    climate.crankcaseHours * input.crankcaseKW +
    climate.offHours * input.offKW;
  return {
    on,
    net: (heatKWh - supplementKWh) / (electricityKWh - supplementKWh),
    scop: yearHeatKWh / yearElectricityKWh,
    bins,
    heatKWh,
    electricityKWh,
    supplementKWh,
    yearHeatKWh,
    yearElectricityKWh,
  };
}

/**
 * Seasonal space heating efficiency [%] on primary energy: SCOP / 2.5 × 100 − 3, and 5 less for a brine or water pump.
 * Source: Regulation (EU) 811/2013 Annex VII; 2.5, 3 and 5 from memory.
 */
export const seasonalEfficiencyPercent = (scop: number, source: 'ground' | 'air'): number =>
  (scop / 2.5) * 100 - 3 - (source === 'ground' ? 5 : 0);

/** The two points about a temperature, the outer two beyond the ends. */
function neighbours<P extends { readonly outdoorC: number }>(points: readonly P[], outdoorC: number): [P, P] {
  let at = 1;
  while (at < points.length - 1 && points[at]!.outdoorC < outdoorC) at++;
  return [points[at - 1]!, points[at]!];
}
