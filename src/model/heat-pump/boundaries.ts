/** The four boundaries of a seasonal performance factor: what electricity stands below the line. */
import type { Boundary } from '../shapes/household.ts';

/** Heat and electricity of a year at a heat pump, kWh. */
export interface YearBalance {
  /** Heat from the heat pump itself, for rooms and hot water. */
  readonly spaceKWh: number;
  readonly waterKWh: number;
  /** Compressor with its own controls and standby. */
  readonly compressorKWh: number;
  /** Brine or well pump, or the fan of an air unit. */
  readonly sourcePumpKWh: number;
  /** Resistance heaters: what they use is what they give. */
  readonly backupKWh: number;
  /** Circulation pumps on the heating side. */
  readonly sinkPumpKWh: number;
}

export const BOUNDARIES: readonly Boundary[] = ['H1', 'H2', 'H3', 'H4'];

/** Whether electricity counted at `line` is already inside a factor given at `boundary`. */
export const isInside = (line: Boundary, boundary: Boundary): boolean =>
  BOUNDARIES.indexOf(line) <= BOUNDARIES.indexOf(boundary);

/**
 * Seasonal performance factor [1] of one year at each boundary.
 * H1 = (Q_space + Q_water) / E_compressor; H2 adds the source pump below the line; H3 adds the resistance heaters
 * above and below it; H4 adds the circulation pumps below. Valid for electricity above 0.
 * Source: SEPEMO-Build D4.2, Concept for evaluation of SPF, version 2.2, 2012.
 */
export function factorsAtBoundaries(balance: YearBalance): Record<Boundary, number> {
  const pumped = balance.spaceKWh + balance.waterKWh;
  const h1 = balance.compressorKWh;
  const h2 = h1 + balance.sourcePumpKWh;
  const h3 = h2 + balance.backupKWh;
  const h4 = h3 + balance.sinkPumpKWh;
  const all = pumped + balance.backupKWh;
  return { H1: pumped / h1, H2: pumped / h2, H3: all / h3, H4: all / h4 };
}
