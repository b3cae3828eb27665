/** The COP that a machine should show at the plant: the household's own machine where it is known, else any. */

import { multiplierAt, type Spread } from '../chance/multiplier.ts';
import { Z90 } from '../chance/normal-quantile.ts';
import { fullWaySpread } from '../heat-pump/full/spf-by-half-hour.ts';
import { perHeatSurface, readSurface, type Surface } from '../heat-pump/full/surface.ts';
import type { Household } from '../shapes/household.ts';
import type { Reference } from '../shapes/reference.ts';
import type { Band, ExpectedFrom, SiteBands } from '../shapes/site-readings.ts';
import { type Told, tell } from '../shapes/told.ts';

export interface OwnMachine {
  /** Electricity for one unit of heat over brine in and flow, as the full way takes it. */
  readonly perHeat: Surface;
  readonly spread: Spread;
  readonly from: Exclude<ExpectedFrom, 'any-machine'>;
}

export interface ExpectedCop {
  readonly value: number;
  readonly band: Band;
  readonly from: ExpectedFrom;
}

const KELVIN = 273.15;
const SOURCES: Readonly<Record<OwnMachine['from'], Told>> = {
  'rated-points': tell('cop-from-points'),
  'usual-machine': tell('cop-from-usual'),
};

/** What the full way knows of the household's machine; nothing of one that draws on air, since brine is what is read. */
export function ownMachine({ machine }: Pick<Household, 'machine'>, reference: Reference): OwnMachine | null {
  if (machine.source !== 'ground') return null;
  const { ratedPoints, installedShare } = machine.full ?? {};
  const points = ratedPoints?.value ?? reference.ratedPoints.ground.points;
  return {
    perHeat: perHeatSurface(points, installedShare?.value ?? reference.installedShare.value).surface,
    spread: fullWaySpread(machine),
    from: ratedPoints ? 'rated-points' : 'usual-machine',
  };
}

/**
 * COP [1] to be expected at the brine coming in and the flow [°C], with the band of 8 cases in 10: the household's own
 * machine as the full way has it, else a fraction of T_flow / (T_flow − T_brine in). Valid in steady running with the
 * flow above the brine; else null. Source: `perHeatSurface`; the fraction's own.
 */
export function expectedCop(
  brineInC: number,
  flowC: number,
  own: OwnMachine | null,
  fraction: SiteBands['carnotFraction'],
): ExpectedCop | null {
  if (flowC <= brineInC) return null;
  if (own === null) {
    const carnot = (flowC + KELVIN) / (flowC - brineInC);
    const band = { ...fraction, low: fraction.low * carnot, high: fraction.high * carnot };
    return { value: fraction.middle * carnot, band, from: 'any-machine' };
  }
  const value = 1 / readSurface(own.perHeat, brineInC, flowC);
  const band: Band = {
    low: value * multiplierAt(own.spread, -Z90),
    high: value * multiplierAt(own.spread, Z90),
    source: SOURCES[own.from],
    provenance: 'common practice, no source',
  };
  return { value, band, from: own.from };
}
