/** Heat of a year from ground and meter through the machine to rooms and taps, kWh. */

import { findSideBySide } from '../../model/comparison/beside.ts';
import type { Appraisal } from '../../model/shapes/appraisal.ts';

export interface FlowInput {
  readonly meterKWh: number;
  readonly roomsKWh: number;
  readonly tapsKWh: number;
  readonly source: 'ground' | 'air';
}

export interface Flow extends FlowInput {
  readonly sourceKWh: number;
  /** Bought, but heat of no room: a machine below a factor of 1. */
  readonly lostKWh: number;
}

export function flowInput(appraisal: Appraisal): FlowInput {
  const { demand, machine } = appraisal;
  return {
    meterKWh: findSideBySide(appraisal).pump.bought.value,
    roomsKWh: demand.space.value,
    tapsKWh: demand.water.value,
    source: machine.source,
  };
}

/** What comes in and what goes out are the same; null where there is nothing to draw or something is not known. */
export function flowSeries(input: FlowInput): Flow | null {
  const { meterKWh, roomsKWh, tapsKWh } = input;
  const heatKWh = roomsKWh + tapsKWh;
  if (![meterKWh, roomsKWh, tapsKWh].every((kWh) => Number.isFinite(kWh) && kWh >= 0) || !(heatKWh + meterKWh > 0))
    return null;
  return { ...input, sourceKWh: Math.max(heatKWh - meterKWh, 0), lostKWh: Math.max(meterKWh - heatKWh, 0) };
}
